"""The verdicts on one dimension of many pairs, by the role that the dimension has."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.parts_compared.comparison import DimensionComparison, DimensionVerdict
from desktop_app.parts_compared.many_pairs.many_decisions import (
    code,
    decide_restored_columns,
    decide_span_columns,
)
from desktop_app.parts_compared.many_pairs.many_estimates import ManyEstimates
from desktop_app.parts_compared.many_pairs.many_measured import Measured
from desktop_app.parts_compared.many_pairs.many_sides import LOOKED_AT, ManySides
from desktop_app.parts_compared.many_pairs.many_tools import Tools
from desktop_app.parts_compared.many_pairs.pair_columns import PairColumns
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class JudgedColumn:
    """One dimension of each pair: verdict codes, differences, probabilities of lying within.

    NaN where there is none; `unsure` marks what must be judged alone.
    """

    verdict: NDArray[np.int8]
    difference: Column
    probability: Column
    unsure: Marks

    def put(self, pair: int, judged: DimensionComparison) -> None:
        """Set what one pair came to."""
        self.verdict[pair] = code(judged.verdict)
        for column, value in (
            (self.difference, judged.difference),
            (self.probability, judged.probability_within),
        ):
            column[pair] = math.nan if value is None else value


def judge_column(
    kind: PartKind,
    place: int,
    sides: ManySides,
    pairs: PairColumns,
    tools: Tools,
    confidence: float,
) -> JudgedColumn:
    """Judge the dimension in that place for every pair."""
    import numpy as np

    column = JudgedColumn(
        np.full(pairs.pairs, code("not measured"), dtype=np.int8),
        np.full(pairs.pairs, np.nan),
        np.full(pairs.pairs, np.nan),
        sides.unsure[place].copy(),
    )
    dimension = kind.dimensions[place]
    if dimension.role in LOOKED_AT:
        _looked_at(dimension, sides, place, column)
    elif dimension.role == "limit":
        spans = _spans_of_pairs(dimension, place, pairs)
        _limit(Measured(sides, place, tools), spans, column, confidence)
    else:
        _difference(dimension, Measured(sides, place, tools), column, confidence)
    return column


def _looked_at(dimension: Dimension, sides: ManySides, place: int, column: JudgedColumn) -> None:
    """Judge what is counted or put in a word: equal or not, no uncertainty in between."""
    import numpy as np

    both = (sides.count[place] > 0).all(axis=0)
    agree = (sides.least[place] == sides.most[place]).all(axis=0)
    old, new = sides.least[place]
    counted = dimension.role == "count"
    off = code("count off") if counted else code("differs")
    settled = both & agree
    column.verdict[both] = code("too close to tell")
    column.verdict[settled] = np.where(old == new, code("same"), off)[settled]
    column.probability[settled] = (old == new)[settled]
    if counted:
        column.difference[settled] = (new - old)[settled]
        # Which of two counts of one part is shown depends on how they are written.
        column.unsure[both & ~agree] = True


def _difference(
    dimension: Dimension, measured: Measured, column: JudgedColumn, confidence: float
) -> None:
    import numpy as np

    chosen = np.flatnonzero(measured.old & measured.new)
    estimates = measured.differences(chosen)
    if dimension.role == "orientation":
        turned = (estimates.value + 180.0) % 360.0 - 180.0
        back = 180.0 - np.abs(turned) < 1e-6
        column.unsure[chosen[back]] = True
        shaky = estimates.shaky | ((estimates.u > 0) & (estimates.u < 1e-4))
        estimates = ManyEstimates(turned, estimates.u, estimates.dof, shaky)
    low, high = (np.full(len(chosen), one) for one in _ends(dimension))
    if dimension.role == "restored" and dimension.direction is not None:
        decided = decide_restored_columns(estimates, low, high, dimension.direction, confidence)
    else:
        off: DimensionVerdict = "turned" if dimension.role == "orientation" else "differs"
        decided = decide_span_columns(estimates, low, high, ("same", off), confidence)
    column.difference[chosen] = estimates.value
    column.verdict[chosen], column.probability[chosen], unsure = decided
    column.unsure[chosen] |= unsure


def _limit(
    measured: Measured, spans: tuple[Column, Column], column: JudgedColumn, confidence: float
) -> None:
    import numpy as np

    both = np.flatnonzero(measured.old & measured.new)
    column.difference[both] = measured.differences(both).value
    low, high = spans
    chosen = np.flatnonzero(measured.new & ~np.isnan(low))
    decided = decide_span_columns(
        measured.estimates(1, chosen),
        low[chosen],
        high[chosen],
        ("within limits", "outside limits"),
        confidence,
    )
    column.verdict[chosen], column.probability[chosen], unsure = decided
    column.unsure[chosen] |= unsure


def _ends(dimension: Dimension) -> tuple[float, float]:
    """Return both ends of what is allowed, infinite where open."""
    low, high = dimension.allowed or (None, None)
    return -math.inf if low is None else low, math.inf if high is None else high


def _spans_of_pairs(dimension: Dimension, place: int, pairs: PairColumns) -> tuple[Column, Column]:
    """Return the limits of every pair, infinite where open and NaN where none are known."""
    import numpy as np

    usual = (math.nan, math.nan) if dimension.allowed is None else _ends(dimension)
    low, high = (np.full(pairs.pairs, one) for one in usual)
    for pair, wanted, at_least, at_most in pairs.limits:
        if wanted == place:
            low[pair] = -math.inf if at_least is None else at_least
            high[pair] = math.inf if at_most is None else at_most
    return low, high
