"""Which decimal sign a file writes: told by the file's own cells, or asked about once."""

from __future__ import annotations

from collections import Counter

from desktop_app.records_exchanged.number_words import (
    DECIMAL_SIGNS,
    DecimalSign,
    hours_in,
    money_in,
    plain_sign,
    signs_of,
)
from desktop_app.records_exchanged.question import Question


class SignSeen:
    """What a file's cells of money and hours say about the sign, looked at one after another."""

    def __init__(self) -> None:
        self._left = set(DECIMAL_SIGNS)
        self._unclear: tuple[str, int] | None = None
        self.currencies: Counter[str] = Counter()

    def look_at_money(self, text: str, row: int) -> None:
        """Take in one cell of money, with the currency beside it."""
        if (sign := plain_sign(text)) is not None:
            self._left &= {sign}
            return
        found = money_in(text.strip())
        if found is not None:
            self._weigh(found[0], row)
            if found[1]:
                self.currencies[found[1]] += 1

    def look_at_hours(self, text: str, row: int) -> None:
        """Take in one cell of hours; "1:30" and "90 min" say nothing about the sign."""
        figures = hours_in(text.strip())
        if figures is not None:
            self._weigh(figures, row)

    def _weigh(self, figures: str, row: int) -> None:
        ways = signs_of(figures)
        if not ways:
            return
        self._left &= ways.keys()
        if self._unclear is None and len(set(ways.values())) > 1:
            self._unclear = (figures, row)

    def decided(self) -> tuple[DecimalSign | None, Question | None]:
        """Return the sign, and the question where it must be answered first."""
        if len(self._left) == 1:
            return next(iter(self._left)), None
        if self._unclear is None:
            return None, None
        figures, row = self._unclear
        why = "no other number of the file tells" if self._left else "the file has both signs"
        ways = " or ".join(f"{value.normalize():f}" for value in signs_of(figures).values())
        says = f"“{figures}” may be {ways}; {why}."
        return None, Question("decimal_sign", DECIMAL_SIGNS, row, figures, says)
