"""Which decimal sign a file writes: told by the file's own cells, or asked about once."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from decimal import Decimal

from desktop_app.language import tr
from desktop_app.records_exchanged.number_words import (
    DECIMAL_SIGNS,
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
    """What cells say about the sign, looked at one after another: money and hours, or odometers."""

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

    def look_at_odometer(self, text: str, row: int) -> None:
        """Take in one cell of an odometer: 118,420 tells, 120,000 may be asked about."""
        found = None if text.isdigit() else odometer_in(text.strip())
        if found is not None:
            self._weigh(found[0], row, odometer_ways(found[0]))

    def _weigh(
        self, figures: str, row: int, whole: Mapping[DecimalSign, int] | None = None
    ) -> None:
        ways: Mapping[DecimalSign, Decimal | int] = signs_of(figures) if whole is None else whole
        if not ways:
            return
        self._left &= ways.keys()
        if self._unclear is None and len(set(ways.values())) > 1:
            readings = (f"{Decimal(value).normalize():f}" for value in ways.values())
            self._unclear = (figures, row, tuple(readings))

    @property
    def contradictory(self) -> bool:
        """Whether the cells were written with both signs."""
        return not self._left

    @property
    def in_doubt(self) -> str:
        """The first figures that the sign decides about, or nothing."""
        return self._unclear[0] if self._unclear else ""

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
