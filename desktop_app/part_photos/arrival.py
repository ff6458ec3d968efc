"""Something that was dropped, chosen or pasted and may turn out to be a photo."""

from __future__ import annotations

import os
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from desktop_app.language import tr
from desktop_app.part_photos.photo_trouble import PhotoTrouble, shown_name


@dataclass(frozen=True, slots=True)
class Arrival:
    """One thing that came: a file or folder by its path, or the bytes themselves with a name."""

    name: str
    path: Path | None = None
    content: bytes | None = None


def arrived(path: Path) -> Arrival:
    """Return a file or folder that came by its path."""
    return Arrival(shown_name(str(path)), path)


def spread_out(arrivals: Iterable[Arrival]) -> tuple[list[Arrival], list[PhotoTrouble]]:
    """Replace each folder by the files directly in it, and say what was left aside.

    Hidden files are passed over; folders inside a folder are named but not searched.
    """
    pieces: list[Arrival] = []
    aside: list[PhotoTrouble] = []
    for arrival in arrivals:
        if arrival.path is None or not os.path.isdir(arrival.path):
            pieces.append(arrival)
            continue
        try:
            inside = sorted(p for p in arrival.path.iterdir() if not p.name.startswith("."))
        except OSError as error:
            aside.append(
                PhotoTrouble(
                    arrival.name,
                    tr("the folder can't be read: {reason}.", reason=error.strerror),
                )
            )
            continue
        files = [path for path in inside if not os.path.isdir(path)]
        pieces.extend(arrived(path) for path in files)
        aside.extend(
            PhotoTrouble(
                path.name, tr("a folder inside a folder is not searched."), tr("Drop it itself.")
            )
            for path in inside
            if os.path.isdir(path)
        )
        if not inside:
            aside.append(PhotoTrouble(arrival.name, tr("the folder is empty.")))
    return pieces, aside
