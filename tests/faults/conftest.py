"""Disks of a test's own, where this computer lets a test have one."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest


@pytest.fixture
def own_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 2 MB."""
    yield from _disk(tmp_path / "own-disk", "2m")


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 6 MB."""
    yield from _disk(tmp_path / "disk", "6m")


def _disk(folder: Path, size: str) -> Iterator[Path]:
    folder.mkdir()
    words = ("mount", "-t", "tmpfs", "-o", f"size={size}", "tmpfs", str(folder))
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
