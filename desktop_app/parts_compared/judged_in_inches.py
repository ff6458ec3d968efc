"""A pair, its kind and the instruments turned into inches, so that the sentences come out so."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.instruments.instrument import (
    USUAL_INSTRUMENTS,
    Instrument,
    usual_instrument,
)
from desktop_app.parts_compared.pair_view import PairView, judge
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind, Span
from desktop_app.parts_compared.reading import MakerLimit, Reading
from desktop_app.repair_jobs.distance import mm_to_inch


def judge_in_inches(
    pair: PairView,
    kind: PartKind,
    drawer: Mapping[str, Instrument],
    confidence: float = CONFIDENCE,
) -> PairComparison:
    """Compare a pair kept in mm as if it had been read in inches; what is allowed is rounded."""
    lengths = {one.name for one in kind.dimensions if one.unit == "mm"}
    return judge(_pair(pair, lengths), _kind(kind), _drawer(drawer), confidence)


def tool_in_inches(tool: Instrument) -> Instrument:
    """Return an instrument that reads mm with its figures in inches."""
    spread = None if tool.repeatability is None else mm_to_inch(tool.repeatability)
    return replace(
        tool,
        unit="in",
        resolution=mm_to_inch(tool.resolution),
        max_error=mm_to_inch(tool.max_error),
        repeatability=spread,
    )


def _pair(pair: PairView, lengths: set[str]) -> PairView:
    def reading(one: Reading) -> Reading:
        if one.dimension not in lengths:
            return one
        values = (each if isinstance(each, str) else mm_to_inch(each) for each in one.values)
        doubts = tuple(each.times(mm_to_inch(1.0)) for each in one.photo) if one.photo else None
        return replace(one, values=tuple(values), photo=doubts)

    def limit(one: MakerLimit) -> MakerLimit:
        if one.dimension not in lengths:
            return one
        low, high = _span((one.at_least, one.at_most))
        return replace(one, at_least=low, at_most=high)

    readings = tuple(reading(one) for one in pair.readings)
    return replace(pair, readings=readings, limits=tuple(limit(one) for one in pair.limits))


def _kind(kind: PartKind) -> PartKind:
    return kind._replace(dimensions=tuple(_dimension(one) for one in kind.dimensions))


def _dimension(one: Dimension) -> Dimension:
    if one.unit != "mm":
        return one
    allowed = None if one.allowed is None else _span(one.allowed)
    return one._replace(unit="in", allowed=allowed, typical=None)


def _span(span: Span) -> Span:
    low, high = span
    return (None if low is None else _short(low), None if high is None else _short(high))


def _short(millimetres: float) -> float:
    """Return inches with three digits: nobody reads 0.00787402."""
    return float(f"{mm_to_inch(millimetres):.3g}")


def _drawer(drawer: Mapping[str, Instrument]) -> dict[str, Instrument]:
    tools = {name: usual_instrument(name, "mm") for name in USUAL_INSTRUMENTS} | dict(drawer)
    return {
        name: tool_in_inches(tool) if tool.unit == "mm" else tool
        for name, tool in tools.items()
        if tool is not None
    }
