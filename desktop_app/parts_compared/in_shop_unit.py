"""Lengths in the unit that the shop speaks: kept in mm, shown and judged aloud in inches."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from desktop_app.parts_compared.comparison import DimensionComparison, PairComparison
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.instruments.instrument import (
    USUAL_INSTRUMENTS,
    Instrument,
    usual_instrument,
)
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.pair_view import PairView, judge
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind, Span
from desktop_app.parts_compared.reading import MakerLimit, Reading

MM_PER_INCH = 25.4  # exactly (international yard and pound agreement, 1959)
_SPOKEN = {"in": "inch", "deg": "°", "ohm": "Ω", "kohm": "kΩ", "C": "°C"}


def shop_unit(unit: str, length_unit: str) -> tuple[str, float]:
    """Return the unit to show and what a kept value is multiplied by for it."""
    if unit == "mm" and length_unit == "inch":
        return "in", 1 / MM_PER_INCH
    return unit, 1.0


def name_with_unit(dimension: Dimension, length_unit: str) -> str:
    """Return the dimension's label with the unit that its field expects."""
    said = dimension.label[:1].upper() + dimension.label[1:]
    if dimension.role in ("word", "count"):
        return said
    unit, _ = shop_unit(dimension.unit, length_unit)
    return f"{said}, {_SPOKEN.get(unit, unit)}"


def typed_shown(typed: str, dimension: Dimension, length_unit: str) -> str:
    """Return a kept reading as its field shows it, so that it means the same when read again.

    A length that was typed without a unit is in mm.
    """
    bare = dimension.unit == "mm" and not typed[-1:].isalpha() and typed[-1:] not in ('"', "″", "'")
    return f"{typed} mm" if bare and length_unit == "inch" else typed


def said_in_inches(text: str) -> str:
    """Return typed lengths, parted by semicolons, with "in" after each that has no unit."""
    return _with_unit(text, "in")


def said_in_mm(text: str) -> str:
    """Return lengths that are meant in mm, so that a shop that reads inches sees the unit."""
    return _with_unit(text, "mm")


def _with_unit(text: str, unit: str) -> str:
    pieces = [piece.strip() for piece in text.split(";")]
    bare = [bool(piece) and all(c in "0123456789.,/+- " for c in piece) for piece in pieces]
    return "; ".join(
        f"{piece} {unit}" if alone else piece for piece, alone in zip(pieces, bare, strict=True)
    )


def judge_aloud(
    pair: PairView,
    kind: PartKind,
    drawer: Mapping[str, Instrument],
    length_unit: str,
    confidence: float = CONFIDENCE,
) -> PairComparison:
    """Compare a pair as kept, in mm; the sentences speak the shop's `length_unit`."""
    judged = judge(pair, kind, drawer, confidence)
    if length_unit != "inch":
        return judged
    lengths = {one.name for one in kind.dimensions if one.unit == "mm"}
    spoken = compare(
        replace(kind, dimensions=tuple(map(_dimension, kind.dimensions))),
        tuple(_reading(one) if one.dimension in lengths else one for one in pair.readings),
        pair.conditions,
        _tools(drawer),
        pair.explained,
        tuple(_limit(one) if one.dimension in lengths else one for one in pair.limits),
        confidence,
    )
    if [one.verdict for one in spoken.dimensions] != [one.verdict for one in judged.dimensions]:
        return judged  # rounding at the very edge of a limit: what is kept in mm decides
    return replace(
        judged,
        dimensions=tuple(map(_spoken, judged.dimensions, spoken.dimensions)),
        reasons=(*judged.questions, *spoken.reasons),
        next_steps=spoken.next_steps,
    )


def _spoken(kept: DimensionComparison, said: DimensionComparison) -> DimensionComparison:
    return replace(kept, sentence=said.sentence)


def _dimension(one: Dimension) -> Dimension:
    if one.unit != "mm":
        return one
    allowed = _span(one.allowed)
    if allowed is not None and one.role != "limit":
        low, high = allowed
        allowed = (_three_digits(low), _three_digits(high))
    return replace(one, unit="in", allowed=allowed, typical=_span(one.typical))


def _reading(one: Reading) -> Reading:
    values = tuple(v if isinstance(v, str) else v / MM_PER_INCH for v in one.values)
    return replace(one, values=values)


def _limit(one: MakerLimit) -> MakerLimit:
    low, high = _span((one.at_least, one.at_most)) or (None, None)
    return replace(one, at_least=low, at_most=high)


def _span(span: Span | None) -> Span | None:
    if span is None:
        return None
    low, high = span
    return (
        None if low is None else low / MM_PER_INCH,
        None if high is None else high / MM_PER_INCH,
    )


def _three_digits(value: float | None) -> float | None:
    """Return an allowed difference as one says it; whoever decides has the kept one."""
    return None if value is None else float(f"{value:.3g}")


def _tools(drawer: Mapping[str, Instrument]) -> dict[str, Instrument]:
    """Return every instrument that reads lengths with its figures in inches, and the others."""
    usual = {name: usual_instrument(name, "mm") for name in USUAL_INSTRUMENTS}
    lengths = {name: tool for name, tool in usual.items() if tool is not None}
    found = {name: _tool(one) for name, one in lengths.items()}
    return {**found, **{name: _tool(one) for name, one in drawer.items()}}


def _tool(one: Instrument) -> Instrument:
    if one.unit != "mm":
        return one
    spread = None if one.repeatability is None else one.repeatability / MM_PER_INCH
    return replace(
        one,
        unit="in",
        resolution=one.resolution / MM_PER_INCH,
        max_error=one.max_error / MM_PER_INCH,
        repeatability=spread,
    )
