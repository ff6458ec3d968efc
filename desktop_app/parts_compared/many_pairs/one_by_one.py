"""What can't be settled in columns, judged by the rules for a single dimension of a single pair."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from desktop_app.parts_compared.comparison import DimensionComparison
from desktop_app.parts_compared.dimension_verdict import judge_dimension
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.many_pairs.pair_columns import NO_MARK, NO_WORD, PairColumns
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Reading

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray


def judge_one_by_one(
    kind: PartKind,
    pairs: PairColumns,
    unsure: Sequence[NDArray[np.bool_]],
    drawer: Mapping[str, Instrument],
    confidence: float,
) -> list[tuple[int, int, DimensionComparison]]:
    """Judge the marked cells; `unsure` holds one column of marks a dimension.

    Returns (dimension, pair, what it came to) of each.
    """
    import numpy as np

    if not any(marks.any() for marks in unsure):
        return []
    limits = {(pair, place): (low, high) for pair, place, low, high in pairs.limits}
    judged = []
    for place, marks in enumerate(unsure):
        rows = np.flatnonzero(pairs.readings.dimension == place) if marks.any() else np.arange(0)
        rows = rows[marks[pairs.readings.pair[rows]]]
        found: dict[int, list[Reading]] = {pair: [] for pair in np.flatnonzero(marks).tolist()}
        for pair, reading in _readings(kind, pairs, rows):
            found[pair].append(reading)
        dimension = kind.dimensions[place]
        judged += [
            (
                place,
                pair,
                judge_dimension(dimension, mine, drawer, limits.get((pair, place)), confidence),
            )
            for pair, mine in found.items()
        ]
    return judged


def _readings(
    kind: PartKind, pairs: PairColumns, rows: NDArray[np.int64]
) -> Iterator[tuple[int, Reading]]:
    """Give (pair, reading) of these rows, as they were before they went into columns."""
    seen = pairs.readings
    for row in rows.tolist():
        word = int(seen.word[row])
        value = float(seen.value[row]) if word == NO_WORD else seen.words[word]
        name = kind.dimensions[int(seen.dimension[row])].name
        tool = seen.instruments[int(seen.instrument[row])]
        side, mark = SIDES[int(seen.side[row])], int(seen.mark[row])
        photo = None if mark == NO_MARK else (seen.doubts[mark],)
        yield int(seen.pair[row]), Reading(side, name, (value,), tool, photo)
