"""The black and white modules of a marker, as OpenCV's predefined dictionaries have them."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from cv2.aruco import Dictionary

Modules = tuple[tuple[bool, ...], ...]


def marker_count(dictionary: str) -> int | None:
    """Return how many markers a predefined dictionary has; None where there is no such name."""
    known = _dictionary(dictionary)
    return None if known is None else len(known.bytesList)


def marker_modules(dictionary: str, marker_id: int) -> Modules:
    """Return a marker's rows from its top, border included; True is black."""
    from cv2.aruco import generateImageMarker

    known = _dictionary(dictionary)
    assert known is not None, dictionary
    across = known.markerSize + 2
    picture = generateImageMarker(known, marker_id, across)
    return tuple(tuple(bool(value < 128) for value in row) for row in picture)


def black_blocks(modules: Modules) -> list[tuple[int, int, int, int]]:
    """Return the black modules as few blocks (left, top, right, bottom), counted in modules."""
    open_runs: dict[tuple[int, int], int] = {}
    blocks = []
    for y, row in enumerate((*modules, ())):
        runs = set(_runs(row))
        for run in [run for run in open_runs if run not in runs]:
            blocks.append((run[0], open_runs.pop(run), run[1], y))
        for run in runs:
            open_runs.setdefault(run, y)
    return sorted(blocks)


def _runs(row: tuple[bool, ...]) -> list[tuple[int, int]]:
    edges = [
        x for x in range(len(row) + 1) if (row[x : x + 1] == (True,)) != (x > 0 and row[x - 1])
    ]
    return list(zip(edges[::2], edges[1::2], strict=True))


def _dictionary(name: str) -> Dictionary | None:
    from cv2 import aruco

    number = getattr(aruco, name, None) if name.startswith("DICT_") else None
    return aruco.getPredefinedDictionary(number) if isinstance(number, int) else None
