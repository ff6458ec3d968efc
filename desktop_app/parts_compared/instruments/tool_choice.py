"""Which instruments count where a dimension was read with several: chosen before any value."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from itertools import product
from typing import TypeAlias

from desktop_app.parts_compared.instruments.instrument import Instrument, usual_instrument
from desktop_app.parts_compared.photo_doubt import left_between

#: The readings of one side, by the instrument they were taken with.
ByTool: TypeAlias = Mapping[Instrument, Sequence[float]]


def finest(read: ByTool) -> Instrument:
    """Return the instrument that leaves the least doubt of one side, by its usual figures."""
    return min(read, key=lambda tool: (_alone(tool, len(read[tool])), tool.name))


def finest_together(old: ByTool, new: ByTool) -> tuple[Instrument, Instrument]:
    """Return the instruments of both sides that leave the least doubt of the difference.

    One instrument for both often beats a finer one on one side: its own error cancels. Only
    usual figures and counts are looked at, so that no reading can choose who judges it.
    """

    def doubt(tools: tuple[Instrument, Instrument]) -> tuple[float, str, str]:
        one, other = tools
        counts = len(old[one]), len(new[other])
        if one.is_one_with(other):
            spreads = (
                tool.usual_spread / math.sqrt(count)
                for tool, count in zip(tools, counts, strict=True)
            )
            steps = (tool.resolution / math.sqrt(12) for tool in tools)
            photos = left_between(one.photo, other.photo) if one.photo and other.photo else ()
            return math.hypot(*spreads, *steps, *photos), one.name, other.name
        each = (_alone(tool, count) for tool, count in zip(tools, counts, strict=True))
        return math.hypot(*each), one.name, other.name

    return min(product(old, new), key=doubt)


#: What a shop takes when an instrument is too coarse, the next one first (common practice).
_FINER: dict[str, tuple[str, ...]] = {
    "tape": ("steel rule", "calliper", "micrometer"),
    "steel rule": ("calliper", "micrometer"),
    "rib gauge": ("depth rod",),
    "photo": ("calliper", "micrometer"),
    "calliper": ("micrometer",),
    "depth rod": ("dial indicator",),
    "pin gauge": ("bore gauge",),
}


def finer_ones(tool: Instrument, drawer: Mapping[str, Instrument]) -> tuple[Instrument, ...]:
    """Return the instruments that see more than this one, the coarsest first.

    The shop's own of the same unit count, and what is usually taken next.
    """
    chain = next((names for sort, names in _FINER.items() if sort in tool.name), ())
    usual = [drawer.get(name) or usual_instrument(name, tool.unit) for name in chain]
    own = [one for one in drawer.values() if one.unit == tool.unit and one.resolution > 0]
    found = {one.name: one for one in (*usual, *own) if one is not None}
    better = [one for one in found.values() if _alone(one, 1) < _alone(tool, 1)]
    return tuple(sorted(better, key=lambda one: (-_alone(one, 1), one.name)))


def _alone(tool: Instrument, count: int) -> float:
    return math.hypot(
        tool.usual_spread / math.sqrt(count),
        tool.resolution / math.sqrt(12),
        tool.max_error / math.sqrt(3),
        *(tool.photo.lasting if tool.photo else ()),
    )
