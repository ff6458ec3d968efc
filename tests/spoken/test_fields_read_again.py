"""What fields show in another language means the same when it is read again; so do verdicts.

Tests that look at no words of one language are run once more in others, in a process of its own.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from desktop_app.language import VARIABLE
from desktop_app.shop_window.own_language import AS_WRITTEN, languages

ROOT = Path(__file__).resolve().parents[2]
OWN_KINDS = "tests/parts_compared/test_own_kinds.py::"
AGAIN = (
    OWN_KINDS + "test_what_a_field_shows_as_allowed_means_the_same_when_read",
    OWN_KINDS + "test_allowed_is_read_as_it_is_said",
    OWN_KINDS + "test_lines_that_are_shown_and_kept_again_change_nothing",
    "tests/parts_compared/test_verdicts_of_record.py",
)


@pytest.mark.parametrize("code", [code for code in languages() if code != AS_WRITTEN])
def test_what_is_shown_is_read_as_it_was_meant(code: str, tmp_path: Path) -> None:
    options = ("-q", "-p", "no:xdist", "-p", "no:cacheprovider", "-p", "tests.spoken.speaking")
    done = subprocess.run(
        (sys.executable, "-m", "pytest", *options, f"--basetemp={tmp_path / 'again'}", *AGAIN),
        cwd=ROOT,
        env={**os.environ, VARIABLE: code, "PYTEST_ADDOPTS": ""},
        capture_output=True,
        text=True,
        check=False,
        timeout=300,
    )
    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
