"""A process of its own that the program starts speaks the language of the program."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QTranslator

from desktop_app.language import VARIABLE
from tests.records_exchanged.workbooks import by_hand
from tests.spoken.spoken_files import ROOT, SPOKEN

NO_SHEET = "The workbook has no sheet “{sheet}”."


@pytest.mark.parametrize("code", ["", "es"])
def test_why_a_workbook_is_refused(code: str, tmp_path: Path) -> None:
    words = QTranslator()
    assert not code or words.load(str(SPOKEN / f"{code}.qm"))
    wanted = words.translate("", NO_SHEET) if code else NO_SHEET
    (tmp_path / "jobs.xlsx").write_bytes(by_hand(""))
    (tmp_path / "map.toml").write_text('sheet = "Third"', encoding="utf-8")
    start = [sys.executable, "-P", "-m", "desktop_app"]
    environ = {**os.environ, "PYTHONPATH": str(ROOT), VARIABLE: code}
    for words_said in (
        ["new-shop", "shop"],
        ["import", "jobs.xlsx", "--columns", "map.toml", "--shop", "shop"],
    ):
        done = subprocess.run(
            [*start, *words_said], cwd=tmp_path, env=environ, capture_output=True, check=False
        )
    assert done.returncode != 0
    assert f"jobs.xlsx: {wanted.format(sheet='Third')}" in done.stderr.decode()
