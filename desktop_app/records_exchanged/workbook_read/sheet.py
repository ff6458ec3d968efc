"""A sheet's cells, row by row, as texts."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from desktop_app.language import tr
from desktop_app.records_exchanged.header_row import MOST_COLUMNS, column_letters
from desktop_app.records_exchanged.remembered import Remembered
from desktop_app.records_exchanged.workbook_read.number_forms import Form, number_text
from desktop_app.records_exchanged.workbook_read.parts import SAVE_AS_CSV, WorkbookCannot
from desktop_app.records_exchanged.workbook_read.texts import Texts, unescaped
from desktop_app.records_exchanged.workbook_read.xml_read import XmlReader

MOST_ROWS = 1_048_576  # of a sheet (ECMA-376)
_LONGEST = 200_000
_PLAIN = (Form.NUMBER, 0)
_BEYOND_ALL = 10**9
_LAST_COLUMN = column_letters(MOST_COLUMNS - 1)
_COLUMNS = {column_letters(index): index for index in range(MOST_COLUMNS)}

# What stands before a text that is no value: NUL, which no workbook can hold itself.
NO_VALUE = "\0"


class Sheet:
    """Told of a sheet's elements, gives each row to `row`: its number and the texts of its cells.

    Of a formula the stored result counts; it is never worked out. A formula without one gives
    NUL and the formula, a cell that shows an error NUL and the error.
    """

    def __init__(
        self,
        texts: Texts,
        forms: dict[str, tuple[Form, int]],
        day_zero: date,
        row: Callable[[int, list[str]], None],
    ) -> None:
        self.reader = XmlReader(self)
        self._texts = texts
        self._forms = forms
        self._numbers = Remembered(self._number_text)
        self._day_zero = day_zero
        self._row = row
        self._number = 0
        self._cells: list[str] = []
        self._column = -1
        self._kind = "n"
        self._style = ""
        self._runs: list[str] = []
        self._formula: list[str] = []
        self._into = self._runs
        self._aside = False

    def start(self, name: str, values: dict[str, str]) -> None:
        if name == "c":
            self._column = self._column_of(values.get("r", ""))
            self._kind = values.get("t", "n")
            self._style = values.get("s", "")
            self._runs.clear()
            self._formula.clear()
        elif name == "v" or (name == "t" and not self._aside):
            self._into = self._runs
            self.reader.listen(self._take)
        elif name == "f":
            self._into = self._formula
            self.reader.listen(self._take)
        elif name == "row":
            self._begin(values.get("r", ""))
        elif name == "rPh":
            self._aside = True

    def end(self, name: str) -> None:
        if name in ("v", "t", "f"):
            self.reader.listen(None)
        elif name == "c":
            cells = self._cells
            while len(cells) < self._column:
                cells.append("")
            if self._runs or self._formula:
                cells.append(self._said())
        elif name == "row":
            self._row(self._number, self._cells)
        elif name == "rPh":
            self._aside = False

    def _take(self, text: str) -> None:
        if len(text) > _LONGEST or len(self._into) > 10_000:
            raise WorkbookCannot(
                tr("A cell of row {row} has more text than a cell holds.", row=self._number)
            )
        self._into.append(text)

    def _begin(self, written: str) -> None:
        number = self._number + 1 if (named := _whole(written)) is None else named
        if not self._number < number <= MOST_ROWS:
            raise WorkbookCannot(tr("The workbook's rows are out of order."), do=SAVE_AS_CSV)
        self._number = number
        self._cells.clear()
        self._column = -1

    def _column_of(self, written: str) -> int:
        if not written:
            column: int | None = self._column + 1
        else:
            column = _COLUMNS.get(written.rstrip("0123456789"))
        if column is None or column >= MOST_COLUMNS:
            letters = written.rstrip("0123456789")[:10]
            raise WorkbookCannot(
                tr("Row {row} has a cell in column {column}.", row=self._number, column=letters)
                if letters
                else tr(
                    "Row {row} has a cell beyond column {column}.",
                    row=self._number,
                    column=_LAST_COLUMN,
                ),
                do=tr("At most {most} columns are read.", most=MOST_COLUMNS),
            )
        if column < len(self._cells):
            raise WorkbookCannot(tr("The workbook's cells are out of order."), do=SAVE_AS_CSV)
        return column

    def _number_text(self, cell: tuple[str, str]) -> str:
        form, zeros = self._forms.get(cell[1], _PLAIN)
        return number_text(cell[0], form, zeros, self._day_zero)

    def _said(self) -> str:
        """Return the text of the cell that just ended."""
        written = self._runs[0] if len(self._runs) == 1 else "".join(self._runs)
        kind = self._kind
        if kind == "s":
            return "" if (named := _whole(written)) is None else self._texts[named]
        if self._formula and not written and kind != "str":
            return f"{NO_VALUE}={''.join(self._formula)[:200]}"
        if kind == "n":
            return self._numbers[written, self._style]
        if kind == "e":
            return f"{NO_VALUE}{written if written.startswith('#') else '#'}"
        if kind == "b":
            return "TRUE" if written == "1" else "FALSE"
        return unescaped(written)


def _whole(written: str) -> int | None:
    """Return a whole number as the file writes it, at most beyond all rows and texts; else None."""
    if not (written.isascii() and written.isdigit()):
        return None
    return int(written) if len(written) < 10 else _BEYOND_ALL
