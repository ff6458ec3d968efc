"""Decisions under uncertainty: which way a measured dimension falls (JCGM 106:2012).

A yes and a no both need the confidence; what is left between them is too close to tell.
That is the guard band of ISO 14253-1 applied on either side.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeAlias

from desktop_app.parts_compared.comparison import DimensionVerdict
from desktop_app.parts_compared.part_kinds.part_kind import Direction, Span
from desktop_app.parts_compared.uncertainty import Estimate

CONFIDENCE = 0.95
MOST_READINGS = 1000

Decide: TypeAlias = Callable[[Estimate], DimensionVerdict]


def decide_span(
    estimate: Estimate,
    span: Span,
    inside: DimensionVerdict,
    outside: DimensionVerdict,
    confidence: float = CONFIDENCE,
) -> DimensionVerdict:
    """Decide whether the true value lies in the span: inside, outside or too close to tell."""
    low, high = span
    if estimate.within(low, high) >= confidence:
        return inside
    if _is_below(estimate, low, confidence) or _is_above(estimate, high, confidence):
        return outside
    return "too close to tell"


def decide_restored(
    estimate: Estimate, span: Span, direction: Direction, confidence: float = CONFIDENCE
) -> DimensionVerdict:
    """Decide what a difference says about a worn dimension; the span is of the difference."""
    if direction == "smaller":
        low, high = span
        mirrored = (None if high is None else -high, None if low is None else -low)
        turned = Estimate(-estimate.value, estimate.u, estimate.dof)
        return decide_restored(turned, mirrored, "bigger", confidence)
    low, high = span
    if estimate.within(low, high) >= confidence:
        return "restored"
    if _is_below(estimate, 0.0, confidence):
        return "worse than the old one"
    if _is_below(estimate, low, confidence):
        return "not restored"
    if _is_above(estimate, high, confidence):
        return "more than wear explains"
    return "too close to tell"


def readings_needed(with_more: Callable[[int], Estimate], decide: Decide) -> int | None:
    """Return how many more readings would settle it if the means stayed; None where none would."""

    def settles(more: int) -> bool:
        return decide(with_more(more)) != "too close to tell"

    enough = 1
    while not settles(enough):
        if enough >= MOST_READINGS:
            return None
        enough = min(enough * 2, MOST_READINGS)
    too_few = enough // 2
    while enough - too_few > 1:
        middle = (enough + too_few) // 2
        too_few, enough = (too_few, middle) if settles(middle) else (middle, enough)
    return enough


def _is_below(estimate: Estimate, limit: float | None, confidence: float) -> bool:
    return limit is not None and estimate.below(limit) >= confidence


def _is_above(estimate: Estimate, limit: float | None, confidence: float) -> bool:
    if limit is None:
        return False
    mirrored = Estimate(-estimate.value, estimate.u, estimate.dof)
    return mirrored.below(-limit) >= confidence
