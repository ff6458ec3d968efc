"""What a command hands on to other programs keeps its terms, whatever language it speaks."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from desktop_app.language import VARIABLE
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.own_language import AS_WRITTEN, LANGUAGES
from tests import servers
from tests.spoken.spoken_files import ROOT
from tests.watched_shop import a_week_of_returns, judge_return

SYMPTOM = ("rates", "--by", "symptom", "--today", "2026-11-16")
COMPARE = ("compare", "pair.toml")
ASKED = (
    ("returns",),
    ("watch", "--today", "2026-07-01"),
    ("rates", "--by", "technician", "--today", "2026-11-16"),
    ("rates", "--by", "verdict", "--today", "2026-11-16"),
    SYMPTOM,
    ("find", "misses when damp, spark plug"),
    ("find", "1M8GDM9AXKP042788"),
    ("check",),
    COMPARE,
    ("week", "2026-W46", "--out", "week.xlsx"),
    ("export", "export"),
    ("kinds", "distributor-rotor"),
    ("code", "P0300"),
    ("vin", "1M8GDM9AXKP042788"),
    ("spark", "--rotor-gap-mm", "1", "--plug-gap-mm", "1", "--compression-ratio", "9"),
)
#: What a person reads: it is said in the language spoken.
SENTENCES = {
    *("why", "reasons", "next_steps", "notes", "warnings", "where", "what", "do"),
    *("name", "also", "label", "basis", "how", "wear", "means", "wrongs", "sides", "cautions"),
}
#: Where a name is no sentence.
TERMS = {"rates": {"name"}}
PAIR = """
kind = "distributor-rotor"
readings = [
 { side = "removed", dimension = "bore", values = [12.7] },
 { side = "replacement", dimension = "bore", values = [0.5] },
]
conditions = [{ side = "replacement", terms = ["burned tip"] }]
"""


def said(shop: Path, at: Path, code: str) -> tuple[dict[tuple[str, ...], Any], str]:
    """What is handed on for each question asked in a folder, and what a person is told of one."""
    at.mkdir()
    (at / "pair.toml").write_text(PAIR, "utf-8")
    known = ("--shop", str(shop))
    without = {"code", "vin", "spark"}  # they are asked of no shop
    words = [(*one, "--json", *(() if one[0] in without else known)) for one in ASKED]
    ask = f"from desktop_app.__main__ import main\nfor one in {[*words, (*SYMPTOM, *known)]}:"
    done = subprocess.run(
        (sys.executable, "-P", "-c", f"{ask} main(one), print('=====')"),
        cwd=at,
        env={**os.environ, VARIABLE: code, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=True,
        timeout=120,
    )
    *documents, told, _ = done.stdout.split("=====\n")
    at_home = str(at.resolve())
    return {
        one: json.loads(document.replace(at_home, ""))
        for one, document in zip(ASKED, documents, strict=True)
    }, told


def terms(value: Any, kept: set[str]) -> Any:
    """Return a document without its sentences."""
    if isinstance(value, list):
        return [terms(one, kept) for one in value]
    if not isinstance(value, dict):
        return value
    sentences = SENTENCES - kept
    return {key: key in sentences or terms(one, kept) for key, one in value.items()}


def files_of(folder: Path) -> dict[str, bytes]:
    """Return the files of a folder by their places in it."""
    inside = (file for file in folder.rglob("*") if file.is_file())
    return {file.relative_to(folder).as_posix(): file.read_bytes() for file in inside}


@pytest.mark.skipif(servers.wanted(), reason="a process of its own is not told of the server")
@pytest.mark.parametrize("code", [code for code in LANGUAGES if code != AS_WRITTEN])
def test_terms_are_handed_on_as_they_are_written(
    code: str, shop: ShopRecord, tmp_path: Path
) -> None:
    a_week_of_returns(shop)
    judge_return(shop, 1, 2, "from our hands", cause_class="new")
    english, told = said(shop.folder, tmp_path / AS_WRITTEN, AS_WRITTEN)
    other, told_other = said(shop.folder, tmp_path / code, code)
    for one in ASKED:
        kept = TERMS.get(one[0], set())
        assert terms(other[one], kept) == terms(english[one], kept), one
    assert told_other != told
    assert other[COMPARE]["reasons"] != english[COMPARE]["reasons"]
    exported = files_of(tmp_path / code / "export")
    assert "jobs.csv" in exported
    assert exported == files_of(tmp_path / AS_WRITTEN / "export")
