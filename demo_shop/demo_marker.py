"""The file that marks a folder as a demo shop, and says how it was made."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from datetime import date
from pathlib import Path

FILE_NAME = "demo-shop.toml"
VERSION = 1


@dataclass(frozen=True, slots=True)
class DemoMarker:
    """How a demo shop was made: the seed, the day, the version of the demo."""

    seed: int
    made_on: date
    version: int = VERSION


def write_marker(folder: Path, marker: DemoMarker) -> None:
    """Mark a folder as a demo shop."""
    lines = (
        "# This shop is invented: it was written by the demo and may be made again.",
        f"version = {marker.version}",
        f"seed = {marker.seed}",
        f"made_on = {marker.made_on.isoformat()}",
    )
    (folder / FILE_NAME).write_text("\n".join(lines) + "\n", encoding="utf-8")


def read_marker(folder: Path) -> DemoMarker | None:
    """Return how the demo shop in a folder was made; None where it is no demo shop."""
    try:
        facts = tomllib.loads((folder / FILE_NAME).read_text(encoding="utf-8"))
        return DemoMarker(int(facts["seed"]), facts["made_on"], int(facts["version"]))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError, KeyError, TypeError, ValueError):
        return None
