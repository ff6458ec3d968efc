"""How a workbook shows its numbers: as a number, a day, a moment or a span of hours."""

from __future__ import annotations

import re
from datetime import date, timedelta
from enum import Enum

from desktop_app.records_exchanged.workbook_read.parts import MOST_IN_SMALL_PART, Parts
from desktop_app.records_exchanged.workbook_read.xml_read import XmlReader

# ECMA-376 part 1, 18.8.30: the forms that have a number and no text; 27 to 36 and 50 to 58 are
# days in East Asian workbooks.
_DAYS = frozenset({*range(14, 18), 22, *range(27, 32), 34, 35, 36, *range(50, 59)})
_CLOCKS = frozenset({18, 19, 20, 21, 32, 33, 45, 46, 47})
_SPAN = re.compile(r"\[(h+|m+|s+)\]", re.IGNORECASE)
_NOT_SHOWN = re.compile(r'"[^"]*"|\\.|_.|\*.|\[[^\]]*\]')
_ALL_ZEROS = re.compile(r"0{2,20}")


class Form(Enum):
    """What a number stands for."""

    NUMBER = "number"
    DAY = "day"
    CLOCK = "clock"


def form_of(code: str) -> tuple[Form, int]:
    """Return the form that a format's text gives, and how many figures it fills up with zeros."""
    first = code.split(";")[0]
    if _SPAN.search(first):
        return Form.CLOCK, 0
    bare = _NOT_SHOWN.sub("", first).casefold()
    if "general" in bare:
        return Form.NUMBER, 0
    if "y" in bare or "d" in bare:
        return Form.DAY, 0
    if "h" in bare or "s" in bare:
        return Form.CLOCK, 0
    if "m" in bare:
        return Form.DAY, 0
    return Form.NUMBER, len(bare) if _ALL_ZEROS.fullmatch(bare) else 0


class _Forms:
    """Gathers the form of each cell style."""

    def __init__(self) -> None:
        self.styles: list[tuple[Form, int]] = []
        self._codes: dict[str, tuple[Form, int]] = {}
        self._in_cells = False

    def start(self, name: str, values: dict[str, str]) -> None:
        if name == "numFmt":
            self._codes[values.get("numFmtId", "")] = form_of(values.get("formatCode", "")[:500])
        elif name == "cellXfs":
            self._in_cells = True
        elif name == "xf" and self._in_cells:
            self.styles.append(self._of(values.get("numFmtId", "0")))

    def end(self, name: str) -> None:
        if name == "cellXfs":
            self._in_cells = False

    def _of(self, number: str) -> tuple[Form, int]:
        if number in self._codes:
            return self._codes[number]
        known = int(number) if re.fullmatch(r"[0-9]{1,4}", number) else 0
        if known in _DAYS:
            return Form.DAY, 0
        return (Form.CLOCK, 0) if known in _CLOCKS else (Form.NUMBER, 0)


def read_forms(parts: Parts, part: str) -> dict[str, tuple[Form, int]]:
    """Return the form of each style by its number as cells name it."""
    forms = _Forms()
    XmlReader(forms).read(parts.pieces(part, MOST_IN_SMALL_PART))
    return {str(index): form for index, form in enumerate(forms.styles)}


def number_text(written: str, form: Form, zeros: int, day_zero: date) -> str:
    """Return a number cell as text: 5, 1.5, 2025-03-04, 2025-03-04 10:15:00 or 1:30:00.

    What is no number, or no day that a calendar has, stays as it is written.
    """
    try:
        value = float(written)
    except ValueError:
        return written
    if not abs(value) < 1e15:  # NaN and infinite ones too
        return written
    if form is Form.CLOCK and value >= 0:
        seconds = round(value * 86_400)
        return f"{seconds // 3600}:{seconds // 60 % 60:02}:{seconds % 60:02}"
    if form is Form.DAY and 1 <= value < 2_958_466:
        return _moment(value, day_zero)
    if value == int(value):
        return str(int(value)).zfill(zeros)
    return repr(round(value, 10))


def _moment(value: float, day_zero: date) -> str:
    days, seconds = divmod(round(value * 86_400), 86_400)
    if day_zero.year < 1904 and days < 60:
        days += 1  # the 29th of February 1900, which was none, has the number 60
    try:
        day = day_zero + timedelta(days=days)
    except OverflowError:
        return repr(value)
    if not seconds:
        return day.isoformat()
    return f"{day} {seconds // 3600:02}:{seconds // 60 % 60:02}:{seconds % 60:02}"
