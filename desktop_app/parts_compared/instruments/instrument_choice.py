"""Which instruments can be chosen for a dimension."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.parts_compared.instruments.instrument import (
    USUAL_INSTRUMENTS,
    Instrument,
    usual_instrument,
)
from desktop_app.parts_compared.part_kinds.part_kind import Dimension


def instruments_for(
    dimension: Dimension, drawer: Mapping[str, Instrument], used: tuple[str, ...] = ()
) -> tuple[str, ...]:
    """Return the names to choose from: suggested, the shop's own in that unit, the usual, used."""
    own = sorted(name for name, tool in drawer.items() if tool.unit == dimension.unit)
    usual = [
        name
        for name in USUAL_INSTRUMENTS
        if (tool := usual_instrument(name, dimension.unit)) is not None and tool.resolution > 0
    ]
    return tuple(dict.fromkeys((dimension.instrument, *own, *usual, *used)))
