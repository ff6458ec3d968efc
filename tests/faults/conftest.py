"""Disks of a test's own, where this computer lets a test have one."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest


@pytest.fixture
def own_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 2 MB."""
    folder = tmp_path / "own-disk"
    folder.mkdir()
    words = ("mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", str(folder))
    try:
        mounted = subprocess.run(words, capture_output=True, check=False).returncode == 0
    except OSError:
        mounted = False
    if not mounted:
        pytest.skip("only who may mount a disk can fill a small one")
    yield folder
    subprocess.run(("umount", "--lazy", str(folder)), check=True)


def make_read_only(disk: Path) -> None:
    """Let nothing be written on a disk any more."""
    subprocess.run(("mount", "-o", "remount,ro", str(disk)), check=True)
