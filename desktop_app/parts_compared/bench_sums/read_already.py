"""What a bench sum asks for that the pairs of the job hold already: nobody types it twice."""

from __future__ import annotations

import math
from collections.abc import Sequence

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Reading, Side
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
    """Return the fields that the readings of the job's pairs fill, as they would be typed.

    Of several pairs of one kind only one fills the sum, so that nothing is averaged or set side
    by side that is not of the same pair.
    """
    wanted = {field: asked for (named, field), asked in _READ.items() if named == sum_id}
    filled = {}
    for field, (kind, dimension, side) in wanted.items():
        of_kind = [asked for asked in wanted.values() if asked[0] == kind]
        values = _values(_chosen(sum_id, kind, of_kind, pairs), dimension, side)
        if values:
            filled[field] = _typed(values, each=(sum_id, field) in _EACH)
    if sum_id == "turned-or-mirrored":
        filled |= _angles(pairs)
    return filled


def _chosen(
    sum_id: str, kind: str, asked: Sequence[tuple[str, str, Side]], pairs: Sequence[PairRead]
) -> Sequence[Reading]:
    """Return the readings of the last pair that holds most of what is asked.

    For the life of pads it is the pair that wore the most: the thinnest lining taken off.
    """
    best: Sequence[Reading] = ()
    rank: tuple[float, int] = (0.0, 0)
    for one, readings in pairs:
        if one.sort != kind:
            continue
        held = sum(bool(_values(readings, dimension, side)) for _, dimension, side in asked)
        worn = _values(readings, "lining-thickness", "removed") if sum_id == "pad-life" else []
        thinnest = min((float(value) for value in worn), default=math.inf)
        mine = (-thinnest if sum_id == "pad-life" else 0.0, held)
        if held and (not best or mine >= rank):
            best, rank = readings, mine
    return best


def _angles(pairs: Sequence[PairRead]) -> dict[str, str]:
    for kind, readings in reversed(pairs):
        for one in kind.dimensions:
            if one.role != "orientation":
                continue
            old, new = (_values(readings, one.name, side) for side in SIDES)
            if old and new:
                return {"old": _typed(old), "new": _typed(new)}
    return {}


def _values(readings: Sequence[Reading], dimension: str, side: Side) -> list[float | str]:
    return [
        value
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
