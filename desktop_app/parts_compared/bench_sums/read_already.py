"""What a bench sum asks for that the pairs of the job hold already: nobody types it twice."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import Reading, Side
from desktop_app.parts_compared.shown_value import number

# (sum, field) -> (part kind, dimension, side)
_READ: dict[tuple[str, str], tuple[str, str, Side]] = {
    ("rotor-gap", "terminal_radius"): ("distributor-cap", "terminal-radius", "replacement"),
    ("rotor-gap", "old_tip_radius"): ("distributor-rotor", "tip-radius", "removed"),
    ("rotor-gap", "new_tip_radius"): ("distributor-rotor", "tip-radius", "replacement"),
    ("rotor-phase", "terminal_radius"): ("distributor-cap", "terminal-radius", "replacement"),
    ("rotor-phase", "tip_radius"): ("distributor-rotor", "tip-radius", "replacement"),
    ("rotor-phase", "tip_width"): ("distributor-rotor", "tip-width", "replacement"),
    ("spark-voltage", "plug_old"): ("spark-plug", "gap", "removed"),
    ("spark-voltage", "plug_new"): ("spark-plug", "gap", "replacement"),
    ("pad-life", "first"): ("brake-pads", "lining-thickness", "replacement"),
    ("pad-life", "now"): ("brake-pads", "lining-thickness", "removed"),
    ("belt-identity", "new_marking"): ("serpentine-belt", "marking", "replacement"),
    ("belt-identity", "old_marking"): ("serpentine-belt", "marking", "removed"),
    ("belt-identity", "ribs"): ("serpentine-belt", "ribs", "removed"),
    ("belt-identity", "width"): ("serpentine-belt", "width", "removed"),
    ("belt-identity", "length"): ("serpentine-belt", "length", "removed"),
    ("belt-run", "belt"): ("serpentine-belt", "length", "replacement"),
}
_EACH = frozenset({("pad-life", "now")})  # every reading counts, not their mean

PairRead = tuple[PartKind, Sequence[Reading]]


def read_already(sum_id: str, pairs: Sequence[PairRead]) -> dict[str, str]:
    """Return the fields that the readings of the job's pairs fill, as they would be typed."""
    filled = {}
    for (sum_named, field), (kind, dimension, side) in _READ.items():
        values = _values(pairs, kind, dimension, side) if sum_named == sum_id else []
        if values:
            filled[field] = _typed(values, each=(sum_id, field) in _EACH)
    if sum_id == "turned-or-mirrored":
        filled |= _angles(pairs)
    return filled


def _angles(pairs: Sequence[PairRead]) -> dict[str, str]:
    for kind, readings in pairs:
        for one in kind.dimensions:
            if one.role != "orientation":
                continue
            old, new = (
                _values([(kind, readings)], kind.id, one.name, side)
                for side in ("removed", "replacement")
            )
            if old and new:
                return {"old": _typed(old), "new": _typed(new)}
    return {}


def _values(pairs: Sequence[PairRead], kind: str, dimension: str, side: str) -> list[float | str]:
    return [
        value
        for one, readings in pairs
        if one.id == kind
        for reading in readings
        if (reading.dimension, reading.side) == (dimension, side)
        for value in reading.values
    ]


def _typed(values: Sequence[float | str], *, each: bool = False) -> str:
    if isinstance(values[0], str):
        return values[0]
    figures = [float(value) for value in values]
    if each:
        return "; ".join(number(one) for one in figures)
    return number(sum(figures) / len(figures))
