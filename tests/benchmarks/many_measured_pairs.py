"""A kind with many dimensions and many pairs of it, measured in steps, for the benchmarks."""

from __future__ import annotations

import numpy as np

from desktop_app.parts_compared.many_pairs.pair_columns import (
    NO_MARK,
    NO_WORD,
    PairColumns,
    ReadingColumns,
)
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.reading import SIDES, Reading
from tests.parts_compared.invented_kinds import dimension, kind, worn


def mixed_kind(lengths: int = 4, worn_ones: int = 2) -> PartKind:
    """A kind with so many lengths, and one dimension each of the other roles."""
    return kind(
        *(dimension(name=f"length-{n}", label=f"length {n}") for n in range(lengths)),
        *(worn(name=f"tip-{n}", label=f"tip {n}") for n in range(worn_ones)),
        dimension(
            name="angle",
            label="angle",
            role="orientation",
            unit="deg",
            allowed=(-5.0, 5.0),
            instrument="protractor",
        ),
        dimension(name="runout", label="runout", role="limit", allowed=(9.9, 10.1)),
        dimension(name="teeth", label="teeth", role="count", unit="", instrument="eye"),
        dimension(name="colour", label="colour", role="word", unit="", instrument="eye"),
    )


def measured_pairs(part: PartKind, pairs: int, repeats: int, seed: int = 5) -> PairColumns:
    """Draw pairs with so many readings on each side of every dimension."""
    chance = np.random.default_rng(seed)
    sides = pairs * len(part.dimensions) * 2
    pair = np.repeat(np.arange(pairs), len(part.dimensions) * 2 * repeats)
    place = np.tile(np.repeat(np.arange(len(part.dimensions)), 2 * repeats), pairs)
    side = np.tile(np.repeat([0, 1], repeats), pairs * len(part.dimensions))
    sizes = 10 + np.repeat(chance.normal(0, 0.1, sides), repeats)
    value = np.round(sizes + chance.normal(0, 0.01, len(sizes)), 2)
    word = np.full(len(value), NO_WORD)
    for number, one in enumerate(part.dimensions):
        mine = place == number
        if one.role == "orientation":
            value[mine] = np.round(chance.normal(0, 3, mine.sum())) % 360
        elif one.role == "count":
            value[mine] = 4.0
        elif one.role == "word":
            word[mine] = 0
        elif one.role == "restored":
            value[mine] += 0.5 * side[mine]
    tool = np.zeros_like(word)
    mark = np.full_like(word, NO_MARK)
    readings = ReadingColumns(pair, place, side, value, word, tool, mark, ("black",))
    return PairColumns(pairs, readings)


def readings_of(part: PartKind, columns: PairColumns, pair: int) -> list[Reading]:
    """Return what was read of one pair, the repeats of a side together."""
    seen = columns.readings
    return [
        reading
        for number, one in enumerate(part.dimensions)
        for side in range(2)
        for reading in _reading(
            one,
            side,
            columns,
            np.flatnonzero((seen.pair == pair) & (seen.dimension == number) & (seen.side == side)),
        )
    ]


def _reading(one: Dimension, side: int, columns: PairColumns, rows: np.ndarray) -> list[Reading]:
    seen = columns.readings
    values = tuple(
        seen.words[seen.word[row]] if seen.word[row] != NO_WORD else float(seen.value[row])
        for row in rows
    )
    return [Reading(SIDES[side], one.name, values)] if values else []
