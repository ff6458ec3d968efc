"""The window is walked through with a decimal comma, in Spanish, in a process of its own."""

from __future__ import annotations

import os
import subprocess
from pathlib import Path

import desktop_app.figures_shown as figures
from desktop_app.language import VARIABLE
from tests.spoken.test_fields_read_again import AGAIN
from tests.spoken.test_walked_through import PYTEST, ROOT


def test_figures_have_a_comma_and_are_read_again(tmp_path: Path) -> None:
    walk = ("-p", "tests.spoken.speaking", "tests/spoken/figures_walked.py", *AGAIN)
    done = subprocess.run(
        (*PYTEST, *walk, f"--basetemp={tmp_path / 'walk'}"),
        cwd=ROOT,
        env={**os.environ, VARIABLE: "es", figures.VARIABLE: ",", "PYTEST_ADDOPTS": ""},
        capture_output=True,
        text=True,
        check=False,
        timeout=600,
    )
    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
