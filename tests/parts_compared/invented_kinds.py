"""Small invented part kinds and readings for the tests of this folder."""

from __future__ import annotations

from typing import Any

from desktop_app.parts_compared.part_kinds.part_kind import ConditionTerm, Dimension, PartKind
from desktop_app.parts_compared.reading import Reading, Side


def dimension(**changes: Any) -> Dimension:
    """Return a length that must be the same within 0.20 mm, with some fields changed."""
    fields: dict[str, Any] = {
        "name": "width",
        "label": "width",
        "unit": "mm",
        "role": "same",
        "allowed": (-0.2, 0.2),
        "direction": None,
        "instrument": "calliper",
        "essential": True,
        "basis": "common practice, no source",
    }
    return Dimension(**(fields | changes))


def worn(low: float = 0.1, high: float = 1.5, **changes: Any) -> Dimension:
    """Return a length that wear makes smaller and that a new part brings back."""
    fields = {"name": "tip", "label": "tip", "role": "restored", "direction": "bigger"}
    return dimension(**(fields | {"allowed": (low, high)} | changes))


def kind(*dimensions: Dimension) -> PartKind:
    """Return an invented kind with these dimensions."""
    return PartKind(
        id="invented-part",
        name="invented part",
        also=(),
        system="ignition",
        sides=(),
        pieces="1",
        views=(),
        cautions=(),
        dimensions=dimensions,
        conditions=(
            ConditionTerm("burned tip", ("eroded tip",), "the gap is wider"),
            ConditionTerm("storage film", allowed_when_new=True),
        ),
        wrongs=(),
        refit=(),
        proof=(),
    )


def read(side: Side, name: str, *values: float | str, instrument: str | None = None) -> Reading:
    """Return a reading."""
    return Reading(side, name, values, instrument)


def both(name: str, old: Any, new: Any, instrument: str | None = None) -> list[Reading]:
    """Return readings of both sides; a single value or a list of values on each."""
    sides = [one if isinstance(one, list) else [one] for one in (old, new)]
    return [
        read("removed", name, *sides[0], instrument=instrument),
        read("replacement", name, *sides[1], instrument=instrument),
    ]
