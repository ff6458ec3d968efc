"""The readings behind a mean, as they were read: what a figure of the table rests on."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.language import tr
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.parts_compared.comparison import DimensionComparison, PairComparison
from desktop_app.parts_compared.in_shop_unit import typed_shown
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.sheet_blocks import Block, Words
from desktop_app.parts_compared.sheet_values import clipped, label_cell

LONGEST_READ = 200  # characters of one side; what is longer is in the job


def readings_blocks(pair: PairView, kind: PartKind, compared: PairComparison) -> Iterator[Block]:
    """Give the readings of each dimension that was read several times on a side, if any was."""
    said = [line for one in compared.dimensions if (line := _line(pair, kind, one))]
    if said:
        yield Words(f"{'. '.join(said)}.", tr("Single readings"), "quiet")


def _line(pair: PairView, kind: PartKind, one: DimensionComparison) -> str:
    sides = (_of_side(pair, kind, one, side) for side in SIDES)
    read = " ".join(filter(None, sides))
    return f"{label_cell(one)}: {read}" if read else ""


def _of_side(pair: PairView, kind: PartKind, one: DimensionComparison, side: Side) -> str:
    dimension, typed = kind.dimension(one.name), pair.typed.get((one.name, side), ())
    if dimension is None or one.role in ("word", "count") or len(typed) < 2:
        return ""
    unit = "inch" if one.unit == "in" else "mm"
    read = "; ".join(typed_shown(each, dimension, unit) for each in typed)
    return f"{SIDE_SIGNS[side]}\N{NO-BREAK SPACE}{clipped(read, LONGEST_READ)}"
