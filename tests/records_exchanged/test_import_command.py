"""The command `import` as the command line runs it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from tests.records_exchanged.importing import lines
from tests.records_exchanged.test_writing import BACK, FIRST


def command(*words: str) -> int:
    return run(words, lambda folder: 0, lambda folder, file: None)


def test_the_command_says_what_it_did(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    shop, file = str(tmp_path / "shop"), tmp_path / "jobs.csv"
    file.write_text(lines(FIRST, {**BACK, "return_of": "B9"}), "utf-8")
    assert command("new-shop", shop) == 0
    capsys.readouterr()
    for words, added in ((["--dry-run"], 1), ([], 1), ([], 0)):
        assert command("import", str(file), "--shop", shop, "--json", *words) == 0
        said = json.loads(capsys.readouterr().out)
        assert (said["read"], said["added"], said["unchanged"]) == (2, added, 1 - added)
        assert [(one["row"], one["column"]) for one in said["rejected"]] == [(3, "return_of")]


def test_a_file_that_is_none_is_refused_in_one_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    shop = str(tmp_path / "shop")
    command("new-shop", shop)
    capsys.readouterr()
    assert command("import", str(tmp_path / "none.csv"), "--shop", shop) == 2
    assert capsys.readouterr().err.count("\n") == 1
