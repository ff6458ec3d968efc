"""Starting the window reads no sources; PySide6 would read that of every module."""

from __future__ import annotations

import subprocess
import sys

_READ = """
import linecache, sys
{told}
import PySide6.QtCore, colorsys
print(any(name.endswith("colorsys.py") for name in linecache.cache))
"""
_TOLD = (
    "from desktop_app.shop_window.sources_unread import leave_sources_unread as l; l()",
    "",
)


def _was_read(told: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", _READ.format(told=told)], capture_output=True, text=True, check=True
    )
    return done.stdout.strip()


def test_no_source_is_read_once_it_was_told() -> None:
    assert [_was_read(told) for told in _TOLD] == ["False", "True"]
