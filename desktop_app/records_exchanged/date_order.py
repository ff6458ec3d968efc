"""In which order a file writes its days: told by the file's own cells, or asked about once."""

from __future__ import annotations

from datetime import date

from desktop_app.language import tr
from desktop_app.records_exchanged.blank_words import is_no_day
from desktop_app.records_exchanged.date_words import (
    DATE_ORDERS,
    DateOrder,
    DayFigures,
    day_in,
    whole_day,
)
from desktop_app.records_exchanged.question import Question

_ENOUGH_DAYS = 10  # different days of the month


def read_day(text: str, order: DateOrder | None) -> date | None:
    """Return the day of a cell, None for an empty one; a ValueError says why it is none.

    Without an order only a cell that can be read in one way is a day.
    """
    bare = text.strip()
    if is_no_day(bare):
        return None
    found = day_in(bare)
    if isinstance(found, date):
        return found
    ways = found.days()
    if order in ways:
        return whole_day(*ways[order])
    if not ways:
        raise ValueError(tr("The calendar has no such day."))
    if order is not None:
        raise ValueError(
            tr("The days of this file are read {order}, and so this is none.", order=tr(order))
        )
    days = {whole_day(*way) for way in _long_years_first(ways)}
    if len(days) > 1:
        raise ValueError(tr("This day can be read in several ways."))
    return days.pop()


def still_to_come(day: date, today: date) -> str:
    """Return why a day can't be one of a job that is written down; nothing where it can."""
    if day <= today:
        return ""
    return tr(
        "This day is still to come: by the clock of this computer it is {today}.",
        today=today.isoformat(),
    )


def _long_years_first(
    ways: dict[DateOrder, tuple[int, int, int]],
) -> list[tuple[int, int, int]]:
    """Return the ways that count: nobody means a year first where the year can stand last."""
    last = [way for order, way in ways.items() if order != "year first"]
    return last or list(ways.values())


class OrderSeen:
    """What the cells of a file's date columns say about the order, looked at one after another."""

    def __init__(self) -> None:
        self._left = set(DATE_ORDERS)
        self._unclear: dict[str, tuple[int, DayFigures]] = {}
        self._firsts: set[int] = set()
        self._thirds: set[int] = set()
        self._year_leads = False

    @property
    def short_years(self) -> bool:
        """Whether a year of two figures was among them."""
        return bool(self._thirds)

    def look(self, text: str, row: int) -> None:
        """Take in one cell; what is no day is left to whoever reads the row."""
        bare = text.strip()
        if is_no_day(bare):
            return
        try:
            found = day_in(bare)
        except ValueError:
            return
        if isinstance(found, DayFigures):
            self._weigh(found, bare, row)

    def _weigh(self, found: DayFigures, text: str, row: int) -> None:
        ways = found.days()
        if not ways:
            return
        if found.short_year:
            self._firsts.add(found.first)
            self._thirds.add(found.third)
            self._year_leads = self._year_leads or set(ways) == {"year first"}
        self._left &= ways.keys()
        if len(set(ways.values())) > 1 and len(self._unclear) < 20_000:
            self._unclear.setdefault(text, (row, found))

    def decided(self) -> tuple[DateOrder | None, Question | None]:
        """Return the order, and the question where one must be answered first.

        Where years of two figures might stand first or last, the place with half as many different
        figures as the other is the year's: a history has more days of the month than years. With
        few different figures nothing is made of that.
        """
        left = set(self._left)
        if "year first" in left and not self._year_leads:
            fewer, more = sorted((len(self._firsts), len(self._thirds)))
            if more >= _ENOUGH_DAYS and 2 * fewer <= more:
                years_last = len(self._thirds) == fewer
                left = left - {"year first"} if years_last else {"year first"}
        if len(left) == 1:
            return left.pop(), None
        for text, (row, figures) in self._unclear.items():
            ways = {o: way for o, way in figures.days().items() if o in left or not left}
            if len(set(ways.values())) > 1:
                return None, _question(text, row, ways, mixed=not left)
        return None, None


def _question(
    text: str, row: int, ways: dict[DateOrder, tuple[int, int, int]], mixed: bool
) -> Question:
    readings = tr(" or ").join(_said(way) for way in dict.fromkeys(ways.values()))
    why = (
        tr("the other days of the file contradict each other")
        if mixed
        else tr("no other day of it tells")
    )
    choices = tuple(order for order in DATE_ORDERS if order in ways)
    return Question(
        "date_order",
        choices,
        row,
        text,
        tr("“{text}” may be {readings}; {why}.", text=text, readings=readings, why=why),
    )


def _said(way: tuple[int, int, int]) -> str:
    try:
        return whole_day(*way).isoformat()
    except ValueError:
        return tr("no day at all")
