"""The verdict on one dimension of a pair, by the role that the dimension has."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from functools import partial

from desktop_app.parts_compared import dimension_sentence as sentence
from desktop_app.parts_compared.comparison import (
    DimensionComparison,
    DimensionVerdict,
    SideValue,
)
from desktop_app.parts_compared.decision import (
    CONFIDENCE,
    Decide,
    decide_restored,
    decide_span,
    readings_needed,
)
from desktop_app.parts_compared.dimension_result import bare_result, missing
from desktop_app.parts_compared.instruments.instrument import Instrument, instrument_for
from desktop_app.parts_compared.instruments.tool_choice import finer_ones
from desktop_app.parts_compared.looked_at import judge_count, judge_word
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, Span
from desktop_app.parts_compared.reading import Reading, Side
from desktop_app.parts_compared.sides import both_sides, fitting
from desktop_app.parts_compared.uncertainty import (
    Estimate,
    SideReading,
    difference_estimate,
    side_estimate,
    wrapped,
)


def judge_dimension(
    dimension: Dimension,
    readings: Sequence[Reading],
    instruments: Mapping[str, Instrument],
    limits: Span | None = None,
    confidence: float = CONFIDENCE,
) -> DimensionComparison:
    """Judge the readings of one dimension; `limits` are the maker's, for the role `limit`.

    Words kept for what is measured now (its kind was changed), and numbers for what is looked at,
    have no say.
    """
    mine = fitting(dimension, readings)
    if limits is not None and dimension.role == "limit":
        dimension = dimension._replace(allowed=limits)
    if dimension.role == "word":
        return judge_word(dimension, mine)
    if dimension.role == "count":
        return judge_count(dimension, mine)
    tools: dict[str | None, Instrument] = {}
    for name in {one.instrument: None for one in mine if not one.photo}:
        tool = instrument_for(name, dimension, instruments)
        if tool is None:
            said = sentence.unknown_instrument_sentence(dimension, name or dimension.instrument)
            return bare_result(dimension, None, None, "not measured", said)
        tools[name] = tool
    old, new = both_sides(dimension, mine, tools)
    if dimension.role == "limit":
        return _judge_limit(dimension, old, new, confidence, instruments)
    if old is None or new is None:
        return missing(dimension, _shown(old), _shown(new))
    return _judge_difference(dimension, old, new, confidence, instruments)


def looks_mirrored(dimension: Dimension, removed: float, replacement: float) -> bool:
    """Whether the new angle (degrees) is the old one seen in a mirror, within what is allowed."""
    allowed = (dimension.allowed or (0.0, 0.0))[1] or 0.0
    return abs(wrapped(removed + replacement)) <= max(allowed, 1.0)


def _judge_difference(
    dimension: Dimension,
    old: SideReading,
    new: SideReading,
    confidence: float,
    drawer: Mapping[str, Instrument],
) -> DimensionComparison:
    span = dimension.allowed or (None, None)
    between = partial(_difference, dimension)
    decide: Decide
    if dimension.role == "restored" and dimension.direction is not None:
        decide = partial(
            decide_restored, span=span, direction=dimension.direction, confidence=confidence
        )
    else:
        off: DimensionVerdict = "turned" if dimension.role == "orientation" else "differs"
        decide = partial(decide_span, span=span, inside="same", outside=off, confidence=confidence)
    undecided = _undecided(dimension, old, new, between(old, new, 0))
    sides: dict[Side, SideReading] = {"removed": old, "replacement": new}
    return _decided(undecided, dimension, sides, between, decide, drawer)


def _judge_limit(
    dimension: Dimension,
    old: SideReading | None,
    new: SideReading | None,
    confidence: float,
    drawer: Mapping[str, Instrument],
) -> DimensionComparison:
    between = difference_estimate(old, new) if old and new else None
    undecided = _undecided(dimension, old, new, between)
    if new is None:
        said = sentence.missing_sentence(dimension, old is not None, False)
        return replace(undecided, sentence=said)
    if dimension.allowed is None:
        estimate, decimals = side_estimate(new), undecided.shown.decimals
        said = sentence.no_limit_sentence(dimension, estimate.value, estimate.expanded(), decimals)
        return replace(undecided, sentence=said)
    decide: Decide = partial(
        decide_span,
        span=dimension.allowed,
        inside="within limits",
        outside="outside limits",
        confidence=confidence,
    )
    return _decided(undecided, dimension, {"replacement": new}, side_estimate, decide, drawer)


def _undecided(
    dimension: Dimension,
    old: SideReading | None,
    new: SideReading | None,
    between: Estimate | None,
) -> DimensionComparison:
    return bare_result(dimension, _shown(old), _shown(new), "not measured", "", between)


def _decided(
    undecided: DimensionComparison,
    dimension: Dimension,
    sides: Mapping[Side, SideReading],
    estimated: Callable[..., Estimate],
    decide: Decide,
    drawer: Mapping[str, Instrument],
) -> DimensionComparison:
    """Decide what is `estimated` of one side or two, and say what would settle a doubt.

    `estimated` takes the sides and how many readings are added to each.
    """
    span, read = dimension.allowed or (None, None), tuple(sides.values())
    estimate = estimated(*read, 0)
    verdict = decide(estimate)
    needed = finer = None
    if verdict == "too close to tell":
        needed = readings_needed(partial(estimated, *read), decide)
        finer = None if needed else _settling(read, estimated, decide, drawer)
    first, last = read[0], read[-1]
    judged = sentence.Judged(
        dimension,
        estimate.value,
        estimate.expanded(),
        undecided.shown,
        span,
        verdict,
        needed,
        same_instrument=first.instrument.is_one_with(last.instrument),
        entered=last.mean if len(read) == 1 and last.instrument.goes_in else None,
        finer=finer,
        mirrored=verdict == "turned" and looks_mirrored(dimension, first.mean, last.mean),
    )
    return replace(
        undecided,
        verdict=verdict,
        sentence=sentence.judged_sentence(judged) + _why_wider(dimension, sides),
        probability_within=estimate.within(*span),
        readings_needed=needed,
        finer=finer,
        settling=sentence.settling_sentence(judged) if verdict == "too close to tell" else "",
    )


def _settling(
    read: Sequence[SideReading],
    estimated: Callable[..., Estimate],
    decide: Decide,
    drawer: Mapping[str, Instrument],
) -> str | None:
    """Name the instrument that would settle it with three readings a side, the coarsest such."""
    for tool in finer_ones(read[0].instrument, drawer):
        again = (_as_read_with(tool, one) for one in read)
        if decide(estimated(*again, 0)) != "too close to tell":
            return tool.name
    return None


def _why_wider(dimension: Dimension, sides: Mapping[Side, SideReading]) -> str:
    """Say of which side the repeats scatter more than their instrument usually does."""
    return "".join(
        " "
        + sentence.scatter_sentence(
            side,
            dimension.unit,
            one.spread,
            one.instrument.name,
            one.instrument.usual_spread,
        )
        for side, one in sides.items()
        if one.stands_alone
    )


def _as_read_with(tool: Instrument, side: SideReading) -> SideReading:
    """Return what three readings with another instrument would probably say."""
    return SideReading(side.mean, tool.usual_spread, tool.usual_dof, 3, tool, 1.0)


def _difference(dimension: Dimension, old: SideReading, new: SideReading, more: int) -> Estimate:
    estimate = difference_estimate(old, new, more)
    if dimension.role != "orientation":
        return estimate
    return Estimate(wrapped(estimate.value), estimate.u, estimate.dof)


def _shown(side: SideReading | None) -> SideValue | None:
    if side is None:
        return None
    estimate = side_estimate(side)
    # What is read as the largest size that enters is shown as read; the doubt reaches further.
    beyond = abs(estimate.value - side.mean)
    return SideValue(side.mean, estimate.expanded() + beyond, side.count, side.instrument.name)
