"""Many pairs of one part kind judged at once, with the verdicts that each would get alone."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias, get_args

from desktop_app.parts_compared.comparison import (
    SETTLED_FOR,
    UNSETTLED,
    DimensionVerdict,
    PairVerdict,
)
from desktop_app.parts_compared.condition_check import check_conditions
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.many_pairs.many_decisions import DIMENSION_VERDICTS, code
from desktop_app.parts_compared.many_pairs.many_dimensions import JudgedColumn, judge_column
from desktop_app.parts_compared.many_pairs.many_sides import sides_of
from desktop_app.parts_compared.many_pairs.many_tools import tools_of
from desktop_app.parts_compared.many_pairs.one_by_one import judge_one_by_one
from desktop_app.parts_compared.many_pairs.pair_columns import PairColumns
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, ConditionSeen

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]

PAIR_VERDICTS: tuple[PairVerdict, ...] = get_args(PairVerdict)


@dataclass(frozen=True, slots=True)
class ManyVerdicts:
    """What judging many pairs of a kind came to.

    `pairs` holds places in PAIR_VERDICTS. By (dimension, pair): places in DIMENSION_VERDICTS, the
    differences replacement minus removed in the dimension's unit, and the probabilities of lying
    within what is allowed (to some seven digits); NaN where there is none. `one_by_one` is how
    many cells lay so close to a decision that they were judged alone.
    """

    kind: str
    pairs: NDArray[np.int8]
    dimensions: NDArray[np.int8]
    differences: Column
    probabilities: Column
    one_by_one: int

    def verdicts(self) -> list[PairVerdict]:
        """Return the verdict on each pair, in their order."""
        return [PAIR_VERDICTS[place] for place in self.pairs.tolist()]

    def dimension_verdicts(self, pair: int) -> list[DimensionVerdict]:
        """Return the verdicts on one pair's dimensions, in the kind's order."""
        return [DIMENSION_VERDICTS[place] for place in self.dimensions[:, pair].tolist()]


def judge_many(
    kind: PartKind,
    pairs: PairColumns,
    instruments: Mapping[str, Instrument] | None = None,
    confidence: float = CONFIDENCE,
) -> ManyVerdicts:
    """Judge pairs of one kind, each with the verdicts that `compare` gives it.

    `confidence` lies between 0 and 1. What a rounding error could turn is left to the rules for
    one pair, which also raise for readings that no dimension can use.
    """
    import numpy as np

    drawer = instruments or {}
    tools = tools_of(kind, pairs.readings.instruments, drawer)
    with np.errstate(all="ignore"):
        sides = sides_of(kind, pairs, tools)
        columns = [
            judge_column(kind, place, sides, pairs, tools, confidence)
            for place in range(len(kind.dimensions))
        ]
    alone = judge_one_by_one(kind, pairs, [one.unsure for one in columns], drawer, confidence)
    for place, pair, judged in alone:
        columns[place].put(pair, judged)
    return _together(kind, pairs, columns, len(alone))


def _together(
    kind: PartKind, pairs: PairColumns, columns: Sequence[JudgedColumn], alone: int
) -> ManyVerdicts:
    import numpy as np

    shape = (len(columns), pairs.pairs)
    codes = np.array([one.verdict for one in columns], dtype=np.int8).reshape(shape)
    settled = _codes(SETTLED_FOR)
    against = ~np.isin(codes, [*settled, *_codes(UNSETTLED)])
    for pair, dimension in pairs.explained:
        if against[dimension, pair]:
            codes[dimension, pair] = code("explained")
            against[dimension, pair] = False
    needed = [place for place, one in enumerate(kind.dimensions) if one.essential]
    speaks_for = np.isin(codes, settled)[needed or slice(None)].all(axis=0)
    stop = against.any(axis=0) | _damaged(kind, pairs)
    fits, look, open_yet = (
        PAIR_VERDICTS.index(one) for one in ("fits", "stop and look", "not enough measured")
    )
    return ManyVerdicts(
        kind.id,
        np.where(stop, look, np.where(speaks_for, fits, open_yet)).astype(np.int8),
        codes,
        np.array([one.difference for one in columns]).reshape(shape),
        np.array([one.probability for one in columns]).reshape(shape),
        alone,
    )


def _codes(verdicts: frozenset[str]) -> list[int]:
    return [code(one) for one in DIMENSION_VERDICTS if one in verdicts]


def _damaged(kind: PartKind, pairs: PairColumns) -> Marks:
    """Mark pairs whose replacement shows what no new part may."""
    import numpy as np

    marks = np.zeros(pairs.pairs, dtype=bool)
    speaks_against: dict[str, bool] = {}
    for pair, term in pairs.new_terms:
        if term not in speaks_against:
            seen = ConditionSeen(SIDES[1], (term,))
            speaks_against[term] = bool(check_conditions(kind, [seen]).against)
        marks[pair] |= speaks_against[term]
    return marks
