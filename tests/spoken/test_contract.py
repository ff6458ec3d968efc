"""Commands speak English, whatever is asked for: what they hand on is the same to the byte.

Only those that write a paper for people speak the language that is asked for, but not to programs.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

from desktop_app.commands.command_words import PAPERS
from desktop_app.language import VARIABLE
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.own_language import AS_WRITTEN, languages
from tests import servers
from tests.spoken.spoken_files import ROOT
from tests.watched_shop import a_week_of_returns, judge_return

OTHERS = [code for code in languages() if code != AS_WRITTEN]
ASKED = (
    ("returns",),
    ("returns", "--since", "last week"),
    ("watch", "--today", "2026-07-01"),
    ("rates", "--by", "technician", "--today", "2026-11-16"),
    ("rates", "--by", "verdict", "--today", "2026-11-16"),
    ("rates", "--by", "part-kind", "--today", "2026-11-16"),
    ("rates", "--by", "system", "--today", "2026-11-16"),
    ("rates", "--by", "symptom", "--today", "2026-11-16"),
    ("find", "misses when damp, spark plug"),
    ("find", "1M8GDM9AXKP042788"),
    ("check",),
    ("compare", "pair.toml"),
    ("compare", "kinds.toml"),
    ("import", "jobs.csv", "--dry-run"),
    ("export", "export"),
    ("export", "export"),
    ("kinds",),
    ("kinds", "distributor-rotor"),
)
#: What is asked of no shop.
WITHOUT = (
    ("code", "P0300"),
    ("code", "rough"),
    ("vin", "1M8GDM9AXKP042788"),
    ("spark", "--rotor-gap-mm", "1", "--plug-gap-mm", "1", "--compression-ratio", "9"),
)
WRITTEN = (
    ("week", "2026-W46", "--out", "week.xlsx"),
    ("sheet", "J-160", "--out", "sheet.pdf"),
    ("sealed-copy", "J-160", "--out", "sealed"),
)
CARD = ("card", "--paper", "a4", "--out", "card.pdf", "--layout", "card.json")
PAIR = """
kind = "distributor-rotor"
readings = [
 { side = "removed", dimension = "bore", values = [12.7] },
 { side = "replacement", dimension = "bore", values = [0.5] },
]
conditions = [{ side = "replacement", terms = ["burned tip"] }]
"""
TABLE = """job_number,opened_on,plate,odometer,concern
X-1,2026-11-02,TH 9,12k?,misfires
X-2,2026-11-03,TH 9,120500,misfires when damp
"""
SAY = """
import contextlib, io, json, sys
from desktop_app.__main__ import main
said = []
for words in json.loads(sys.argv[1]):
    out, err = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
        status = main(words)
    said.append([status, out.getvalue(), err.getvalue()])
print(json.dumps(said))
"""


@dataclass(frozen=True)
class Told:
    """What one command said: its status, standard output and standard error."""

    status: int
    out: str
    err: str


def told(at: Path, code: str, asked: list[tuple[str, ...]]) -> list[Told]:
    """What commands say in a folder, one after the other, where a language is asked for."""
    done = subprocess.run(
        (sys.executable, "-P", "-c", SAY, json.dumps(asked)),
        cwd=at,
        env={**os.environ, VARIABLE: code, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    assert done.returncode == 0, done.stderr
    return [Told(*one) for one in json.loads(done.stdout.replace(str(at.resolve()), ""))]


def files_of(folder: Path) -> dict[str, bytes]:
    """Return the files of a folder by their places in it."""
    inside = (file for file in folder.rglob("*") if file.is_file())
    return {file.relative_to(folder).as_posix(): file.read_bytes() for file in inside}


@pytest.fixture
def asked(shop: ShopRecord, tmp_path: Path) -> list[tuple[str, ...]]:
    """Every question, once for a program and once for a person."""
    a_week_of_returns(shop)
    judge_return(shop, 1, 2, "from our hands", cause_class="new")
    for code in languages():
        (tmp_path / code).mkdir()
        (tmp_path / code / "pair.toml").write_text(PAIR, "utf-8")
        (tmp_path / code / "kinds.toml").write_text('kind = "distributor"', "utf-8")
        (tmp_path / code / "jobs.csv").write_text(TABLE, "utf-8")
    known = ("--shop", str(shop.folder))
    every = [*((*one, *known) for one in ASKED), *WITHOUT]
    return [one for words in every for one in ((*words, "--json"), words)]


@pytest.mark.skipif(servers.wanted(), reason="a process of its own is not told of the server")
@pytest.mark.parametrize("code", OTHERS)
def test_commands_say_the_same_in_every_language(
    code: str, asked: list[tuple[str, ...]], tmp_path: Path
) -> None:
    english = told(tmp_path / AS_WRITTEN, AS_WRITTEN, asked)
    other = told(tmp_path / code, code, asked)
    for words, said, as_written in zip(asked, other, english, strict=True):
        assert said == as_written, words
    assert {one.status for one in english} >= {0, 2}
    exported = files_of(tmp_path / code / "export")
    assert "jobs.csv" in exported
    assert exported == files_of(tmp_path / AS_WRITTEN / "export")


@pytest.mark.skipif(servers.wanted(), reason="a process of its own is not told of the server")
@pytest.mark.parametrize("code", OTHERS)
def test_papers_are_written_and_told_of_in_the_language_asked_for(
    code: str, asked: list[tuple[str, ...]], shop: ShopRecord, tmp_path: Path
) -> None:
    papers = [*((*one, "--shop", str(shop.folder)) for one in WRITTEN), CARD]
    assert {one[0] for one in papers} == set(PAPERS)
    for_programs = [(*one, "--json") for one in papers if one[0] != "sealed-copy"]
    english, other = (
        told(tmp_path / spoken, spoken, [*for_programs, *papers]) for spoken in (AS_WRITTEN, code)
    )
    assert {one.status for one in english} == {0}
    programs = len(for_programs)
    assert other[:programs] == english[:programs]
    for words, said, as_written in zip(papers, other[programs:], english[programs:], strict=True):
        assert not set(said.out.splitlines()) & set(as_written.out.splitlines()), words
        assert said.status == as_written.status
    english_files, files = (files_of(tmp_path / spoken) for spoken in (AS_WRITTEN, code))
    for name in ("week.xlsx", "sheet.pdf", "card.pdf", "sealed/history.txt"):
        assert files[name] != english_files[name], name
    assert files["card.json"] == english_files["card.json"]
