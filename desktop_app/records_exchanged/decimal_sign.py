"""Which decimal sign a file writes: of money and hours, asked about once; of odometers, told."""

from __future__ import annotations

from collections import Counter

from desktop_app.language import tr
from desktop_app.records_exchanged.number_words import (
    DECIMAL_SIGNS,
    SIGN_WRITTEN,
    DecimalSign,
    hours_in,
    money_in,
    odometer_in,
    odometer_ways,
    plain_sign,
    signs_of,
)
from desktop_app.records_exchanged.question import Question


class SignSeen:
    """What cells of money and hours say about the sign, looked at one after another."""

    def __init__(self) -> None:
        self._left = set(DECIMAL_SIGNS)
        self._unclear: tuple[str, int, tuple[str, ...]] | None = None
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
            readings = (f"{value.normalize():f}" for value in ways.values())
            self._unclear = (figures, row, tuple(readings))

    def decided(self) -> tuple[DecimalSign | None, Question | None]:
        """Return the sign, and the question where it must be answered first."""
        if len(self._left) == 1:
            return next(iter(self._left)), None
        if self._unclear is None:
            return None, None
        figures, row, ways = self._unclear
        why = (
            tr("no other number of the file tells") if self._left else tr("the file has both signs")
        )
        says = tr(
            "“{figures}” may be {ways}; {why}.",
            figures=figures,
            ways=tr(" or ").join(ways),
            why=why,
        )
        return None, Question("decimal_sign", DECIMAL_SIGNS, row, figures, says)


class OdometersSeen:
    """What the odometers of a column say about their own signs, looked at one after another.

    They are whole numbers, so that prices tell nothing about them: 249.000 is 249,000 wherever
    the column has no decimals with a point, and in doubt where it parts thousands by commas too.
    """

    def __init__(self) -> None:
        self._decimal, self._parting, self._either = (set[DecimalSign]() for _ in range(3))
        self.in_doubt = ""

    def look(self, text: str, _row: int) -> None:
        """Take in one cell: 118,420 parts thousands, 118420.0 has decimals, 120.000 is either."""
        found = None if text.isdigit() else odometer_in(text.strip())
        if found is None:
            return
        ways = odometer_ways(found[0])
        written = {sign for sign, mark in SIGN_WRITTEN.items() if mark in found[0]}
        if len(set(ways.values())) > 1:
            self._either |= written
            self.in_doubt = self.in_doubt or found[0]
        elif len(ways) == 1:
            self._decimal |= written & ways.keys()
            self._parting |= written - ways.keys()

    def decided(self) -> DecimalSign | None:
        """Return the decimal sign; None where the column has it both ways, or nothing tells."""
        if self._decimal:
            return _only(self._decimal) if not self._decimal & self._parting else None
        return _only(set(DECIMAL_SIGNS) - self._parting - self._either)


def _only(signs: set[DecimalSign]) -> DecimalSign | None:
    return next(iter(signs)) if len(signs) == 1 else None
