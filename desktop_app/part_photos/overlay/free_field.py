"""Where on a card the part lies: the free field, said by the layout or found between markers."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, bench_card

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

Rect = tuple[float, float, float, float]  # left, top, right, bottom in mm

CLEAR_MM = 3.0  # blank paper round a marker
LEAST_MM = 20.0  # a field narrower than this is looked for beside the markers
BESIDE_MM = 120.0
STEP_MM = 1.0


def free_field(layout: CardLayout | None) -> Rect:
    """Return the room for the part, mm on the card as it was printed: so must be the layout.

    Without a layout it is the field that all of the program's own cards share. A layout that does
    not say its field gets the largest rectangle between its markers, or beside them where there is
    no room between.
    """
    if layout is None:
        fields = [free_field(bench_card(paper)) for paper in PAGES_MM]
        left, top = max(one[0] for one in fields), max(one[1] for one in fields)
        return (left, top, min(one[2] for one in fields), min(one[3] for one in fields))
    if layout.free_field_mm is not None:
        return layout.free_field_mm
    between = _largest_gap(layout, 0.0)
    if min(between[2] - between[0], between[3] - between[1]) >= LEAST_MM:
        return between
    return _largest_gap(layout, BESIDE_MM)


def _largest_gap(layout: CardLayout, beside_mm: float) -> Rect:
    """Return the largest rectangle without markers within `beside_mm` of their bounds."""
    import numpy as np

    corners = np.array([marker.corners_mm for marker in layout.markers])
    low = corners.min(axis=(0, 1)) - beside_mm
    high = corners.max(axis=(0, 1)) + beside_mm
    size = np.maximum(np.ceil((high - low) / STEP_MM).astype(int), 1)
    free = np.ones((size[1], size[0]), bool)
    for marker in corners:
        x0, y0 = np.floor((marker.min(axis=0) - CLEAR_MM - low) / STEP_MM).astype(int)
        x1, y1 = np.ceil((marker.max(axis=0) + CLEAR_MM - low) / STEP_MM).astype(int)
        free[max(y0, 0) : y1, max(x0, 0) : x1] = False
    x0, y0, x1, y1 = _largest_rectangle(free)
    left, top = low + np.array([x0, y0]) * STEP_MM
    right, bottom = low + np.array([x1, y1]) * STEP_MM
    return (float(left), float(top), float(right), float(bottom))


def _largest_rectangle(free: NDArray[np.bool_]) -> tuple[int, int, int, int]:
    """Return x0, y0, x1, y1 of the largest all-free rectangle: row by row, columns as bars."""
    import numpy as np

    best, found = 0, (0, 0, 0, 0)
    bars = np.zeros(free.shape[1], int)
    for y, row in enumerate(free):
        bars = np.where(row, bars + 1, 0)
        waiting: list[tuple[int, int]] = []  # where a bar began, and how high it is
        for x, high in enumerate([*bars.tolist(), 0]):
            start = x
            while waiting and waiting[-1][1] >= high:
                start, tall = waiting.pop()
                if tall * (x - start) > best:
                    best, found = tall * (x - start), (start, y + 1 - tall, x, y + 1)
            waiting.append((start, high))
    return found
