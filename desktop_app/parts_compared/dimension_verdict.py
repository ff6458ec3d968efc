"""The verdict on one dimension of a pair, by the role that the dimension has."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import partial

from desktop_app.language import tr
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
        dimension = replace(dimension, allowed=limits)
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
    with_more = partial(_difference, dimension, old, new)
    estimate = with_more(0)
    decide: Decide
    if dimension.role == "restored" and dimension.direction is not None:
        decide = partial(
            decide_restored, span=span, direction=dimension.direction, confidence=confidence
        )
    else:
        off: DimensionVerdict = "turned" if dimension.role == "orientation" else "differs"
        decide = partial(decide_span, span=span, inside="same", outside=off, confidence=confidence)
    verdict = decide(estimate)
    close = verdict == "too close to tell"
    needed = readings_needed(with_more, decide) if close else None
    finer = _settling(dimension, old, new, decide, drawer) if close and needed is None else None
    same_tool = old.instrument.is_one_with(new.instrument)
    said = sentence.judged_sentence(
        sentence.Judged(
            dimension,
            estimate.value,
            estimate.expanded(),
            span,
            verdict,
            needed,
            same_tool,
            finer=finer,
        )
    )
    if verdict == "turned" and looks_mirrored(dimension, old.mean, new.mean):
        said += tr(" It looks like the mirror image of the old one.")
    said += _why_wider(dimension, {"removed": old, "replacement": new})
    result = bare_result(dimension, _shown(old), _shown(new), verdict, said)
    return replace(
        result,
        difference=estimate.value,
        difference_expanded_uncertainty=estimate.expanded(),
        probability_within=estimate.within(*span),
        readings_needed=needed,
        finer=finer,
    )


def _settling(
    dimension: Dimension,
    old: SideReading,
    new: SideReading,
    decide: Decide,
    drawer: Mapping[str, Instrument],
) -> str | None:
    """Name the instrument that would settle it with three readings a side, the coarsest such."""
    for tool in finer_ones(old.instrument, drawer):
        before, after = (_as_read_with(tool, one) for one in (old, new))
        if decide(_difference(dimension, before, after, 0)) != "too close to tell":
            return tool.name
    return None


def _judge_limit(
    dimension: Dimension,
    old: SideReading | None,
    new: SideReading | None,
    confidence: float,
    drawer: Mapping[str, Instrument],
) -> DimensionComparison:
    between = difference_estimate(old, new) if old and new else None
    result = bare_result(dimension, _shown(old), _shown(new), "not measured", "")
    if between is not None:
        result = replace(
            result,
            difference=between.value,
            difference_expanded_uncertainty=between.expanded(),
        )
    if new is None:
        said = sentence.missing_sentence(dimension, old is not None, False)
        return replace(result, sentence=said)
    if dimension.allowed is None:
        estimate = side_estimate(new)
        said = sentence.no_limit_sentence(dimension, estimate.value, estimate.expanded())
        return replace(result, sentence=said)
    return _within_limits(dimension, new, result, confidence, drawer)


def _within_limits(
    dimension: Dimension,
    new: SideReading,
    result: DimensionComparison,
    confidence: float,
    drawer: Mapping[str, Instrument],
) -> DimensionComparison:
    span = dimension.allowed or (None, None)
    with_more = partial(side_estimate, new)
    estimate = with_more(0)
    decide: Decide = partial(
        decide_span,
        span=span,
        inside="within limits",
        outside="outside limits",
        confidence=confidence,
    )
    verdict = decide(estimate)
    close = verdict == "too close to tell"
    needed = readings_needed(with_more, decide) if close else None
    finer = None
    if close and needed is None:
        better = finer_ones(new.instrument, drawer)
        settling = (t for t in better if decide(side_estimate(_as_read_with(t, new))) != verdict)
        finer = next((tool.name for tool in settling), None)
    judged = sentence.Judged(
        dimension,
        estimate.value,
        estimate.expanded(),
        span,
        verdict,
        needed,
        entered=new.mean if new.instrument.goes_in else None,
        finer=finer,
    )
    return replace(
        result,
        verdict=verdict,
        sentence=sentence.judged_sentence(judged) + _why_wider(dimension, {"replacement": new}),
        probability_within=estimate.within(*span),
        readings_needed=needed,
        finer=finer,
    )


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
