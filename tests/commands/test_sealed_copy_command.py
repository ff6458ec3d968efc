"""`sealed-copy` from the command line: a folder or a file, or one line that says why not."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.shop_place import new_place
from tests.conftest import NOON
from tests.job_history.told import verified
from tests.parts_compared.sheet_story import a_rotor

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def place(tmp_path: Path) -> str:
    record = new_place(tmp_path / "shop", lambda: NOON)
    a_rotor(record)
    record.close()
    return str(tmp_path / "shop")


def told(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str, str]:
    status = run(words, lambda _folder: 0, lambda _folder, _picture: None)
    captured = capsys.readouterr()
    return status, captured.out, captured.err


def test_the_real_command_line_writes_a_copy_that_its_own_verifier_holds(
    place: str, tmp_path: Path
) -> None:
    order = [sys.executable, "-m", "desktop_app", "sealed-copy", "j-104", "--shop", place]
    done = subprocess.run(
        [*order, "--out", str(tmp_path / "copy")],
        cwd=ROOT,
        env={**os.environ, "PYTHONWARNINGS": "error"},
        capture_output=True,
        text=True,
        check=True,
        encoding="utf-8",
    )
    assert done.stderr == ""
    seal = (tmp_path / "copy" / "seal.txt").read_text("utf-8").strip()
    assert f"Its seal is {seal}." in done.stdout
    assert verified(tmp_path / "copy")[0] == 0


def test_it_says_the_same_as_json(
    place: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    to = tmp_path / "copy.zip"
    status, out, err = told(
        capsys, "sealed-copy", "J-104", "--shop", place, "--out", str(to), "--json"
    )
    assert (status, err) == (0, "")
    said = json.loads(out)
    assert (said["out"], said["job"], said["photos"]) == (str(to), "J-104", 0)
    with zipfile.ZipFile(to) as archive:
        sealed = archive.read("sealed-copy-J-104/manifest.json")
    assert json.loads(sealed)["head"] == said["head"]


@pytest.mark.parametrize(
    ("words", "why"),
    [
        (("J-999", "--out", "copy"), "There is no job"),
        (("J-104", "--out", ""), "is empty"),
        (("J-104", "--out", "no/such/copy"), "There is no folder"),
        (("J-104", "--out", "shop"), "is there already"),
        (("J-104",), "--out"),
    ],
)
def test_what_cannot_be_is_refused_in_one_line(
    place: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
    words: tuple[str, ...],
    why: str,
) -> None:
    monkeypatch.chdir(tmp_path)
    status, out, err = told(capsys, "sealed-copy", *words, "--shop", place)
    assert (status, out, err.count("\n")) == (2, "", 1)
    assert why in err
    assert [one.name for one in tmp_path.iterdir()] == ["shop"]
