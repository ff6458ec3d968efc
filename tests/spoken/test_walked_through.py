"""The window is walked through in other languages, each in a process of its own."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from desktop_app.language import VARIABLE
from desktop_app.shop_window.own_language import AS_WRITTEN, languages

ROOT = Path(__file__).resolve().parents[2]
PYTEST = (sys.executable, "-m", "pytest", "-q", "-p", "no:xdist", "-p", "no:cacheprovider")


@pytest.mark.parametrize(
    "spoken", ["marked", *(code for code in languages() if code != AS_WRITTEN)]
)
def test_every_place_speaks_it(spoken: str, tmp_path: Path) -> None:
    walk = ("-p", "tests.spoken.speaking", "tests/spoken/walked_through.py")
    done = subprocess.run(
        (*PYTEST, *walk, f"--basetemp={tmp_path / 'walk'}"),
        cwd=ROOT,
        env={**os.environ, VARIABLE: spoken, "PYTEST_ADDOPTS": ""},
        capture_output=True,
        text=True,
        check=False,
        timeout=600,
    )
    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
