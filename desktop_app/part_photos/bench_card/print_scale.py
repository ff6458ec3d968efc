"""How large a card came out of the printer, and how surely that is known."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.ruler_length import (
    CALLIPER_U_MM,
    UNMEASURED_U,
    shown_length,
)


@dataclass(frozen=True, slots=True)
class PrintScale:
    """`factor` is printed over drawn length, `u` its relative standard uncertainty."""

    factor: float = 1.0
    u: float = UNMEASURED_U


def print_scale(measured_mm: float | None, nominal_mm: float) -> PrintScale:
    """Return the scale of one print from its ruler; None: nobody measured it."""
    if measured_mm is None:
        return PrintScale()
    return PrintScale(measured_mm / nominal_mm, CALLIPER_U_MM / nominal_mm)


def one_of(prints: Sequence[PrintScale]) -> PrintScale:
    """Return what is known where one of these prints lies in a photo, and nobody said which.

    The middle, and half the range beside the least sure print: of two values, each as likely, that
    half range is the standard uncertainty itself. Without any print nothing was measured.
    """
    if not prints:
        return PrintScale()
    low, high = (end(one.factor for one in prints) for end in (min, max))
    return PrintScale((low + high) / 2, math.hypot((high - low) / 2, max(one.u for one in prints)))


def print_words(
    card_id: int, measured_mm: float | None, measured_on: date | None, length_unit: str = "mm"
) -> str:
    """Return "card 2, ruler 149.8 mm measured 2026-11-20" or "card 2, print not measured"."""
    if measured_mm is None:
        return tr("card {card_id}, print not measured", card_id=card_id)
    when = f" {measured_on.isoformat()}" if measured_on is not None else ""
    return tr(
        "card {card_id}, ruler {length} measured{when}",
        card_id=card_id,
        length=shown_length(measured_mm, length_unit),
        when=when,
    )


def said_of_prints(words: Sequence[str]) -> str:
    """Return on which printed card a scale rests, as a sentence; `words` are `print_words`."""
    if not words:
        return tr("The printed card is not noted, so its print counts as not measured.")
    if len(words) == 1:
        return f"{words[0][:1].upper()}{words[0][1:]}."
    return tr(
        "Which printed card it was is not said: ± covers all {number} of them.", number=len(words)
    )
