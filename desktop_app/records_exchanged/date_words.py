"""A cell that holds a day, taken apart: the three figures of it, before their order is known."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from desktop_app.language import marked, tr

DateOrder = Literal["day first", "month first", "year first"]
DATE_ORDERS: tuple[DateOrder, ...] = (
    marked("day first"),
    marked("month first"),
    marked("year first"),
)

FIRST_YEAR, LAST_YEAR = 1950, 2100
# Excel counts days from 1899-12-30 (ECMA-376 part 1, 18.17.4.1, dates after February 1900).
SERIAL_START = date(1899, 12, 30)
_SERIALS = range(18264, 73415)  # the days of those years

_TIME = (
    r"(?:[T,\s]+[0-9]{1,2}(?:[:.h][0-9]{2}){1,2}(?:[.,][0-9]{1,9})?"
    r"\s*(?:[ap]\.?m\.?)?\s*(?:Z|UTC|[+-][0-9]{2}:?[0-9]{2})?)?"
)
_WEEKDAY = r"(?:[^\W\d_]{2,10}\.?,?\s+)?"
_YEAR_FIRST = re.compile(
    rf"{_WEEKDAY}([0-9]{{4}})([-/. ])\s?([0-9]{{1,2}})\2\s?([0-9]{{1,2}})\.?{_TIME}", re.IGNORECASE
)
_NUMBERS = re.compile(
    rf"{_WEEKDAY}([0-9]{{1,2}})([-/. ])\s?([0-9]{{1,2}})\2\s?([0-9]{{4}}|[0-9]{{2}}){_TIME}",
    re.IGNORECASE,
)
_MONTH = r"([^\W\d_]{3,10})\.?"
_DAY_THEN_MONTH = re.compile(
    rf"{_WEEKDAY}([0-9]{{1,2}})(?:st|nd|rd|th|\.)?[-/\s]*(?:of |de )?{_MONTH}[-/,\s]*(?:de )?"
    rf"([0-9]{{4}}|'?[0-9]{{2}}){_TIME}",
    re.IGNORECASE,
)
_MONTH_THEN_DAY = re.compile(
    rf"{_WEEKDAY}{_MONTH}[-/\s]*([0-9]{{1,2}})(?:st|nd|rd|th)?[-/,\s]+([0-9]{{4}}|'?[0-9]{{2}}){_TIME}",
    re.IGNORECASE,
)
_YEAR_MONTH_DAY = re.compile(
    rf"([0-9]{{4}})[-/\s]*{_MONTH}[-/\s]*([0-9]{{1,2}}){_TIME}", re.IGNORECASE
)
_COMPACT = re.compile(r"[0-9]{8}")
_SERIAL = re.compile(r"([0-9]{5})(?:[.,][0-9]+)?")

# English, German, French, Spanish, Italian, Portuguese, Dutch; by how the name begins.
_MONTH_STARTS = (
    ("jan", "ene", "gen"),
    ("feb", "fév", "fev"),
    ("mar", "mär", "maa", "mrt", "mrz"),
    ("apr", "avr", "abr"),
    ("may", "mai", "mag", "mei"),
    ("jun", "juin", "giu"),
    ("jul", "juil", "lug"),
    ("aug", "aoû", "aou", "ago"),
    ("sep", "set"),
    ("oct", "okt", "ott", "out"),
    ("nov",),
    ("dec", "dez", "déc", "dic"),
)


@dataclass(frozen=True, slots=True)
class DayFigures:
    """Three figures whose order isn't known yet, the last of them a year of two or four figures.

    `short_year` says that the year has two figures, so that it may as well be the first.
    """

    first: int
    second: int
    third: int
    short_year: bool
    sign: str

    def days(self) -> dict[DateOrder, tuple[int, int, int]]:
        """Return year, month and day for each order in which the figures can be a day at all."""
        read: dict[DateOrder, tuple[int, int, int]] = {}
        last = _full_year(self.third) if self.short_year else self.third
        if self.first <= 31 and 1 <= self.second <= 12:
            read["day first"] = (last, self.second, self.first)
        if self.second <= 31 and 1 <= self.first <= 12:
            read["month first"] = (last, self.first, self.second)
        if self.short_year and self.sign in "-/" and 1 <= self.second <= 12 and self.third <= 31:
            read["year first"] = (_full_year(self.first), self.second, self.third)
        return read


def day_in(text: str) -> date | DayFigures:
    """Return the day that a stripped cell names, or its figures where their order matters.

    A time of day beside it is passed over. Raises ValueError, with the reason, for anything else.
    """
    if match := _YEAR_FIRST.fullmatch(text):
        return whole_day(int(match[1]), int(match[3]), int(match[4]))
    if match := _NUMBERS.fullmatch(text):
        figures = (int(match[1]), int(match[3]), int(match[4]))
        return DayFigures(*figures, short_year=len(match[4]) == 2, sign=match[2])
    if match := _DAY_THEN_MONTH.fullmatch(text):
        return _named(match[3], match[2], match[1])
    if match := _MONTH_THEN_DAY.fullmatch(text):
        return _named(match[3], match[1], match[2])
    if match := _YEAR_MONTH_DAY.fullmatch(text):
        return _named(match[1], match[2], match[3])
    if _COMPACT.fullmatch(text):
        return _compact(text)
    if (match := _SERIAL.fullmatch(text)) and int(match[1]) in _SERIALS:
        return SERIAL_START + timedelta(days=int(match[1]))
    raise ValueError(tr("This is not a day. Write it like 2025-03-04."))


def whole_day(year: int, month: int, day: int) -> date:
    """Return the day of a year of four figures; a ValueError where there is none."""
    if not FIRST_YEAR <= year <= LAST_YEAR:
        raise ValueError(
            tr(
                "The year {year} is not between {first} and {last}.",
                year=year,
                first=FIRST_YEAR,
                last=LAST_YEAR,
            )
        )
    try:
        return date(year, month, day)
    except ValueError:
        raise ValueError(tr("The calendar has no such day.")) from None


def _full_year(two_figures: int) -> int:
    """Return the year from 1950 to 2049 that two figures stand for.

    Days after today are refused as such by whoever knows the clock, so that 49 is never 1949.
    """
    return two_figures + (2000 if two_figures < FIRST_YEAR - 1900 else 1900)


def _named(year: str, month: str, day: str) -> date:
    word = month.casefold()
    for number, starts in enumerate(_MONTH_STARTS, 1):
        if word.startswith(starts):
            figures = int(year.lstrip("'"))
            return whole_day(figures if len(year) == 4 else _full_year(figures), number, int(day))
    raise ValueError(tr("“{month}” is not a month's name.", month=month[:20]))


def _compact(text: str) -> date | DayFigures:
    if FIRST_YEAR <= int(text[:4]) <= LAST_YEAR and 1 <= int(text[4:6]) <= 12:
        return whole_day(int(text[:4]), int(text[4:6]), int(text[6:]))
    return DayFigures(int(text[:2]), int(text[2:4]), int(text[4:]), short_year=False, sign="")
