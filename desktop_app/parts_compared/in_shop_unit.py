"""Lengths in the unit that the shop speaks: kept in mm, shown and judged aloud in inches."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import DimensionComparison, PairComparison
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.instruments.instrument import (
    Instrument,
)
from desktop_app.parts_compared.judged_in_inches import judge_in_inches
from desktop_app.parts_compared.pair_view import PairView, judge
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind

MM_PER_INCH = 25.4  # exactly (international yard and pound agreement, 1959)
SPOKEN_UNITS = {"in": tr("inch"), "deg": "°", "ohm": "Ω", "kohm": "kΩ", "C": "°C"}


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
    return f"{said}, {SPOKEN_UNITS.get(unit, unit)}"


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


#: What a figure without its unit is written with.
_BARE = "0123456789.,/+- \u00a0\u202f"


def _with_unit(text: str, unit: str) -> str:
    pieces = [piece.strip() for piece in text.split(";")]
    bare = [bool(piece) and all(letter in _BARE for letter in piece) for piece in pieces]
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
    spoken = judge_in_inches(pair, kind, drawer, confidence)
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
