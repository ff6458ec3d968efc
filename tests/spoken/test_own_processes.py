"""A process of its own that the program starts speaks the language of the program."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QTranslator

from desktop_app.shop_window.own_language import languages
from tests.records_exchanged.workbooks import by_hand
from tests.spoken.spoken_files import ROOT, SPOKEN

NO_SHEET = "The workbook has no sheet “{sheet}”."
#: As the window does it; commands speak English.
SPEAKING = """
import sys
from desktop_app.shop_window.own_language import speak_language
speak_language(sys.argv[1])
from desktop_app.commands.command_line import run
sys.exit(run(sys.argv[2:], lambda shop: 0, lambda shop, picture: None))
"""


@pytest.mark.parametrize("code", languages())
def test_why_a_workbook_is_refused(code: str, tmp_path: Path) -> None:
    words = QTranslator()
    words.load(str(SPOKEN / f"{code}.qm"))
    wanted = words.translate("", NO_SHEET) or NO_SHEET
    (tmp_path / "jobs.xlsx").write_bytes(by_hand(""))
    (tmp_path / "map.toml").write_text('sheet = "Third"', encoding="utf-8")
    for words_said in (
        ["new-shop", "shop"],
        ["import", "jobs.xlsx", "--columns", "map.toml", "--shop", "shop"],
    ):
        done = subprocess.run(
            [sys.executable, "-P", "-c", SPEAKING, code, *words_said],
            cwd=tmp_path,
            env={**os.environ, "PYTHONPATH": str(ROOT)},
            capture_output=True,
            check=False,
        )
    assert done.returncode != 0
    assert f"jobs.xlsx: {wanted.format(sheet='Third')}" in done.stderr.decode()
