"""A long table's rows as XML of its sheet (ISO/IEC 29500-1, 18.3.1.4 and 18.3.1.73).

Columns hold few values many times: a cell is put into words once for each value of its column, and
only the number of its row is filled in later.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from datetime import date
from math import isfinite
from typing import NamedTuple

from desktop_app.weekly_report.sheet_form import Cell

_AT_ONCE = 2_000  # rows in one piece
_ROW = "\0"  # where a row's number goes: XML cannot hold this sign
_NAMES_TEXT = ' t="s"'  # of a cell: its value is the number of a text
_DAY_0 = date(1899, 12, 31).toordinal()
_END_OF_FEBRUARY = 59  # the format counts a 29 February 1900 that never was (18.17.4.1)
_LIKE_AN_ESCAPE = re.compile("(_x[0-9a-fA-F]{4}_)")


class Model(NamedTuple):
    """One column of a table: its letters in the sheet, its looks for figures and for texts."""

    letters: str
    figures: int
    texts: int


class SharedTexts:
    """The texts of a workbook's cells: each stands once, in order of its number (18.4).

    `first` is the number of the first, `uses` the number of cells that name a text.
    """

    def __init__(self, first: int, clean: Callable[[str], str], uses: int = 0) -> None:
        self.first, self.clean, self.uses = first, clean, uses
        self.numbers: dict[str, int] = {}

    def number(self, text: str) -> int:
        """Return the number by which a cell names this text, as `clean` lets it stand."""
        return self.numbers.setdefault(self.clean(text), self.first + len(self.numbers))

    def xml(self) -> bytes:
        """Return the texts as items of the table of texts."""
        return "".join(map(_item, self.numbers)).encode()


def _item(text: str) -> str:
    """Return one text; what only looks like an escape sign (22.9.2.19) is told apart from one."""
    kept = _LIKE_AN_ESCAPE.sub(r"_x005F\1", text) if "_x" in text else text
    kept = kept.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    space = ' xml:space="preserve"' if text != text.strip() else ""
    return f"<si><t{space}>{kept}</t></si>"


class _Cells(dict[Cell, str]):
    """The cells of one column by their values, each made when it is met first."""

    def __init__(self, model: Model, texts: SharedTexts) -> None:
        self.at = f'<c r="{model.letters}{_ROW}" s="'
        self.model, self.texts = model, texts

    def __missing__(self, value: Cell) -> str:
        made = self[value] = self._made(value)
        return made

    def _made(self, value: Cell) -> str:
        if value is None or value == "":
            return f'{self.at}{self.model.figures}"/>'
        if isinstance(value, str):
            number = self.texts.number(value)
            return f'{self.at}{self.model.texts}"{_NAMES_TEXT}><v>{number}</v></c>'
        if isinstance(value, date):
            days = value.toordinal() - _DAY_0
            value = days + (days > _END_OF_FEBRUARY)
        elif not isfinite(value):
            raise ValueError(f"No cell can hold {value}.")
        return f'{self.at}{self.model.figures}"><v>{value:.16G}</v></c>'


def rows_xml(
    first: int,
    rows: Sequence[Sequence[Cell]],
    heights: Sequence[float],
    models: Sequence[Model],
    texts: SharedTexts,
) -> Iterator[bytes]:
    """Yield the rows in pieces; `first` counts from 1, `heights` are points, one for each row.

    ValueError where a figure is not a number or has no end.
    """
    cells = [_Cells(model, texts) for model in models]
    for start in range(0, len(rows), _AT_ONCE):
        piece = rows[start : start + _AT_ONCE]
        made = [
            map(one.__getitem__, column)
            for one, column in zip(cells, zip(*piece, strict=True), strict=True)
        ]
        number = first + start
        xml = "".join(
            f'<row r="{at}" ht="{high:.16g}" customHeight="1">{row.replace(_ROW, str(at))}</row>'
            for at, high, row in zip(
                range(number, number + len(piece)),
                heights[start : start + _AT_ONCE],
                map("".join, zip(*made, strict=True)),
                strict=True,
            )
        )
        texts.uses += xml.count(_NAMES_TEXT)
        yield xml.encode()
