"""The readings of one dimension, side by side: which have a say, and by which instruments."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import TypeAlias

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.instruments.photo_marks import instrument_of_marks
from desktop_app.parts_compared.instruments.tool_choice import finest, finest_together
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.reading import SIDES, Reading, Side
from desktop_app.parts_compared.uncertainty import SideReading, side_reading, unwound

#: The instruments by the name that a reading gives them; None is the one the kind suggests.
Named: TypeAlias = Mapping[str | None, Instrument]


def fitting(dimension: Dimension, readings: Sequence[Reading]) -> list[Reading]:
    """Return the readings of a dimension that it can use.

    Words kept for what is measured now (its kind was changed), and numbers for what is looked at,
    have no say.
    """
    worded, mine = dimension.role == "word", []
    for one in readings:
        if one.dimension == dimension.name:
            values = tuple(v for v in one.values if isinstance(v, str) == worded)
            if values:
                mine.append(one if len(values) == len(one.values) else replace(one, values=values))
    return mine


def by_tool(
    dimension: Dimension, readings: Sequence[Reading], side: Side, tools: Named
) -> dict[Instrument, list[float]]:
    """Group the values of one side by instrument; what no instrument is known for is left out.

    All marks on photos together are one instrument.
    """
    found: dict[Instrument, list[float]] = {}
    mine = [one for one in readings if one.side == side]
    doubts = [doubt for one in mine for doubt in one.photo or ()]
    marks = instrument_of_marks(doubts, dimension.unit) if doubts else None
    for one in mine:
        tool = marks if one.photo else tools.get(one.instrument)
        if tool is not None:
            values = found.setdefault(tool, [])
            values.extend(float(value) for value in one.values)
    return found


def both_sides(
    dimension: Dimension, readings: Sequence[Reading], tools: Named
) -> tuple[SideReading | None, SideReading | None]:
    """Pool the readings of both sides; of several instruments those with the least doubt count."""
    old, new = (by_tool(dimension, readings, side, tools) for side in SIDES)
    if old and new and dimension.role != "limit":
        chosen: tuple[Instrument | None, Instrument | None] = finest_together(old, new)
    else:
        chosen = (finest(old) if old else None, finest(new) if new else None)
    turns = dimension.unit == "deg"
    one, other = (
        None if tool is None else side_reading(unwound(read[tool]) if turns else read[tool], tool)
        for tool, read in zip(chosen, (old, new), strict=True)
    )
    return one, other
