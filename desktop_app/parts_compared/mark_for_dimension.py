"""Which sort of mark on a photo measures a dimension."""

from __future__ import annotations

from desktop_app.part_photos.marks.mark import MarkType
from desktop_app.parts_compared.part_kinds.part_kind import Dimension

#: What the words of a length say of its shape, the first that fits.
_BY_WORD: tuple[tuple[str, MarkType], ...] = (
    ("diameter", "circle"),
    ("bolt circle", "circle"),
    ("thickness", "parallel-distance"),
    ("protrusion", "point-to-line"),
)


def mark_for(dimension: Dimension) -> MarkType | None:
    """Return the sort of mark to begin with; None for what no mark can give (words, volts ...)."""
    if dimension.role == "word":
        return None
    if dimension.role == "count":
        return "count"
    if dimension.unit == "deg":
        return "angle"
    if dimension.unit != "mm":
        return None
    words = dimension.plain.lower()
    return next((mark for word, mark in _BY_WORD if word in words), "length")
