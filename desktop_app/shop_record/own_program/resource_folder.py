"""Where the program's data files are: beside the package in a checkout, inside it in a wheel."""

from __future__ import annotations

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parents[2]


def resource_path(*parts: str) -> Path:
    """Return the path of a file or folder of `resources`, wherever the program runs from."""
    inside = _PACKAGE / "resources"
    base = inside if inside.is_dir() else _PACKAGE.parent / "resources"
    return base.joinpath(*parts)
