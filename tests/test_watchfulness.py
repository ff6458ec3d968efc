"""The watch that all tests stand under: a logged warning fails a test, a missing tool is told."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

HERE = Path(__file__).resolve().parent
LOGS = (
    "import logging\nimport pytest\n\n\ndef test_it():\n    logging.warning('the belt squeals')\n"
)
MARKED = LOGS.replace("\ndef", "\n@pytest.mark.expects_trouble_log\ndef")
TOOL = "import pytest\n\n\n@pytest.mark.needs_tool('no-such-tool')\ndef test_it():\n    pass\n"
IN_FIXTURE = LOGS.replace("def", "@pytest.fixture(autouse=True)\ndef").replace("test_it", "noise")
IN_FIXTURE += "\n\ndef test_it():\n    pass\n"
DIES = "import os\n\n\ndef test_it():\n    os._exit(0)\n\n\ndef test_other():\n    pass\n"


def watched(folder: Path, text: str, in_ci: str, *more: str) -> subprocess.CompletedProcess[str]:
    """Run a file of tests under this watch alone."""
    shutil.copy(HERE / "conftest.py", folder)
    (folder / "test_one.py").write_text(text, encoding="utf-8")
    order = [sys.executable, "-m", "pytest", "-rs", "-c", os.devnull, "--rootdir", str(folder)]
    outside = {name: value for name, value in os.environ.items() if "XDIST" not in name}
    return subprocess.run(
        [*order, *more, "."],
        cwd=folder,
        env={**outside, "CI": in_ci},
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.mark.parametrize(
    ("text", "in_ci", "status", "words"),
    [
        (LOGS, "false", 1, "the belt squeals"),
        (IN_FIXTURE, "false", 1, "the belt squeals"),
        (MARKED, "false", 0, "1 passed"),
        (TOOL, "false", 0, "needs no-such-tool"),
        (TOOL, "true", 1, "needs no-such-tool"),
    ],
)
def test_what_the_watch_lets_pass(
    tmp_path: Path, text: str, in_ci: str, status: int, words: str
) -> None:
    ran = watched(tmp_path, text, in_ci)
    assert ran.returncode == status, ran.stdout
    assert words in ran.stdout


@pytest.mark.parametrize(
    ("text", "words"), [(LOGS, "the belt squeals"), (DIES, "crashed while running")]
)
def test_workers_side_by_side_let_no_more_pass(tmp_path: Path, text: str, words: str) -> None:
    ran = watched(tmp_path, text, "true", "-n", "1")
    assert ran.returncode == 1, ran.stdout
    assert words in ran.stdout
