"""A pair judged for printing: in millimetres, or told in inches where the shop reads inches."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date

from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.instruments.instrument import (
    USUAL_INSTRUMENTS,
    Instrument,
    usual_instrument,
)
from desktop_app.parts_compared.instruments.instrument_check import is_overdue
from desktop_app.parts_compared.pair_view import PairView, judge
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind, Span
from desktop_app.parts_compared.reading import MakerLimit, Reading
from desktop_app.parts_compared.shown_value import amount
from desktop_app.repair_jobs.distance import mm_to_inch


def judge_in(
    length_unit: str,
    pair: PairView,
    kind: PartKind,
    drawer: Mapping[str, Instrument],
    confidence: float = CONFIDENCE,
) -> PairComparison:
    """Compare the two parts and tell lengths in the shop's unit ("mm" or "inch").

    What was decided in millimetres stands. A dimension whose inches would come out otherwise,
    by rounding or for want of an instrument, is told in millimetres.
    """
    compared = judge(pair, kind, drawer, confidence)
    if length_unit != "inch":
        return compared
    lengths = {one.name for one in kind.dimensions if one.unit == "mm"}
    told = judge(_pair(pair, lengths), _kind(kind), _drawer(drawer), confidence)
    both = zip(compared.dimensions, told.dimensions, strict=True)
    dimensions = tuple(
        inches if inches.verdict == millimetres.verdict else millimetres
        for millimetres, inches in both
    )
    return replace(compared, dimensions=dimensions)


def instrument_words(
    name: str, unit: str, length_unit: str, own: Instrument | None, today: date
) -> str:
    """Describe an instrument by what it can see; `own` is the shop's, else the usual figures.

    What the shop's own repeats to is said, and that its check is overdue.
    """
    tool = own if own is not None and own.unit == unit else usual_instrument(name, unit)
    if tool is None or (tool.resolution == 0 and tool.max_error == 0):
        return name
    if length_unit == "inch" and unit == "mm":
        tool = _in_inches(tool)
    step, error = (
        amount(float(f"{figure:.3g}"), tool.unit) for figure in (tool.resolution, tool.max_error)
    )
    said = [f"reads to {step}", f"permitted error ± {error}"]
    if own is None or own.unit != unit:
        said.append("usual figures")
    if tool.repeatability is not None:
        spread = amount(float(f"{tool.repeatability:.2g}"), tool.unit)
        said.append(f"repeats to {spread} by our own study")
    if is_overdue(tool.checked_on, today):
        said.append(f"last checked {tool.checked_on}, so its check is overdue")
    return f"{name} ({', '.join(said)})"


def _pair(pair: PairView, lengths: set[str]) -> PairView:
    def reading(one: Reading) -> Reading:
        if one.dimension not in lengths:
            return one
        values = (each if isinstance(each, str) else mm_to_inch(each) for each in one.values)
        return replace(one, values=tuple(values))

    def limit(one: MakerLimit) -> MakerLimit:
        if one.dimension not in lengths:
            return one
        low, high = _span((one.at_least, one.at_most))
        return replace(one, at_least=low, at_most=high)

    readings = tuple(reading(one) for one in pair.readings)
    return replace(pair, readings=readings, limits=tuple(limit(one) for one in pair.limits))


def _kind(kind: PartKind) -> PartKind:
    return replace(kind, dimensions=tuple(_dimension(one) for one in kind.dimensions))


def _dimension(one: Dimension) -> Dimension:
    if one.unit != "mm":
        return one
    allowed = None if one.allowed is None else _span(one.allowed)
    return replace(one, unit="in", allowed=allowed, typical=None)


def _span(span: Span) -> Span:
    low, high = span
    return (None if low is None else _short(low), None if high is None else _short(high))


def _short(millimetres: float) -> float:
    """Return inches with three digits: nobody reads 0.00787402."""
    return float(f"{mm_to_inch(millimetres):.3g}")


def _drawer(drawer: Mapping[str, Instrument]) -> dict[str, Instrument]:
    tools = {name: usual_instrument(name, "mm") for name in USUAL_INSTRUMENTS} | dict(drawer)
    return {
        name: _in_inches(tool) if tool.unit == "mm" else tool
        for name, tool in tools.items()
        if tool is not None
    }


def _in_inches(tool: Instrument) -> Instrument:
    spread = None if tool.repeatability is None else mm_to_inch(tool.repeatability)
    return replace(
        tool,
        unit="in",
        resolution=mm_to_inch(tool.resolution),
        max_error=mm_to_inch(tool.max_error),
        repeatability=spread,
    )
