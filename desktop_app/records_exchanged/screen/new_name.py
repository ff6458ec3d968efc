"""A name in a folder that nothing has yet: nothing is ever written over."""

from __future__ import annotations

from pathlib import Path


def new_name(folder: Path, name: str) -> Path:
    """Return the name below the folder, with a number where something has it already."""
    to, number = folder / name, 1
    while to.exists():
        number += 1
        to = folder / f"{name}-{number}"
    return to
