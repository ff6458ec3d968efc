"""Which way many measured values fall: the decisions under uncertainty, in columns."""

from __future__ import annotations

from typing import TYPE_CHECKING, TypeAlias, get_args

from desktop_app.parts_compared.comparison import DimensionVerdict
from desktop_app.parts_compared.part_kinds.part_kind import Direction

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.parts_compared.many_pairs.many_estimates import ManyEstimates

    Column: TypeAlias = NDArray[np.float64]
    Codes: TypeAlias = NDArray[np.int8]
    #: verdicts, the probabilities of lying within, and marks where it is a near thing
    Decided: TypeAlias = tuple[Codes, Column, NDArray[np.bool_]]

DIMENSION_VERDICTS: tuple[DimensionVerdict, ...] = get_args(DimensionVerdict)
#: Two ways of working out one probability differ by less than this.
_NEAR = 1e-6


def code(verdict: DimensionVerdict) -> int:
    """Return the place of a verdict in DIMENSION_VERDICTS."""
    return DIMENSION_VERDICTS.index(verdict)


def decide_span_columns(
    estimates: ManyEstimates,
    low: Column,
    high: Column,
    sayings: tuple[DimensionVerdict, DimensionVerdict],
    confidence: float,
) -> Decided:
    """Decide for each value as decide_span does; `sayings` are what inside and outside mean."""
    import numpy as np

    chances = estimates.chances(low, high)
    outside = np.maximum(chances.below, chances.above)
    inside_word, outside_word = sayings
    verdicts = np.select(
        [chances.within >= confidence, outside >= confidence],
        [code(inside_word), code(outside_word)],
        code("too close to tell"),
    )
    near = np.zeros(len(low), dtype=bool)
    for chance in (chances.within, chances.below, chances.above):
        near |= np.abs(chance - confidence) <= _NEAR
    return verdicts.astype(np.int8), chances.within, near | estimates.shaky


def decide_restored_columns(
    estimates: ManyEstimates,
    low: Column,
    high: Column,
    direction: Direction,
    confidence: float,
) -> Decided:
    """Decide for each difference as decide_restored does."""
    import numpy as np

    if direction == "smaller":
        estimates, low, high = estimates.mirrored(), -high, -low
    chances = estimates.chances(low, high)
    worse = estimates.below(np.zeros_like(low))
    verdicts = np.select(
        [one >= confidence for one in (chances.within, worse, chances.below, chances.above)],
        [
            code("restored"),
            code("worse than the old one"),
            code("not restored"),
            code("more than wear explains"),
        ],
        code("too close to tell"),
    )
    near = np.zeros(len(low), dtype=bool)
    for chance in (chances.within, worse, chances.below, chances.above):
        near |= np.abs(chance - confidence) <= _NEAR
    return verdicts.astype(np.int8), chances.within, near | estimates.shaky
