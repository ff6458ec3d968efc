"""The first rows of a file as a table: above each column its field, in each cell what is read."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from PySide6.QtGui import QStandardItem, QStandardItemModel

from desktop_app.language import tr
from desktop_app.records_exchanged.column_choice import field_words
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.preview import CellPreview, RowPreview, TablePreview
from desktop_app.records_exchanged.survey import Survey
from desktop_app.shop_window.texts import tooltip

LEFT_OUT = tr("left out")
UNREAD = "⚠"
_LONGEST = 200  # letters of a cell that are shown
_MOST_CELLS = 800


def rows_shown(found: Survey) -> Survey:
    """Return a survey with as many first rows as are shown at once: fewer of a wide file."""
    rows = max(10, _MOST_CELLS // len(found.headers))
    return replace(found, first_rows=found.first_rows[:rows])


class FirstRows(QStandardItemModel):
    """`sureness(column)` says how a column came to its field.

    The cells are Qt's own: they are drawn without waiting for Python while a file is read beside
    the window.
    """

    def __init__(self, sureness: Callable[[int], str]) -> None:
        super().__init__()
        self._sureness = sureness
        self._shown: TablePreview | None = None
        self._cells: list[list[CellPreview | None]] = []  # what stands below each header
        self._gathered: set[str] = set()  # fields read from several columns

    def show_preview(self, shown: TablePreview) -> None:
        """Show what the first rows would become; the cell that is chosen stays so."""
        self._shown = shown
        columns, rows = len(shown.headers), shown.rows
        at = {field: [c for c, fed in enumerate(shown.feeds) if field in fed] for field in FIELDS}
        self._gathered = {field for field in FIELDS if len(at[field]) > 1}
        self._cells = [_by_column(row, at, columns) for row in rows]
        self.setRowCount(len(rows))
        self.setColumnCount(columns)
        for column, header in enumerate(shown.headers):
            sure = self._sureness(column) or "–"
            above = f"{self.field_of(column)}\n{header[:40]}\n{sure}"
            self.setHorizontalHeaderItem(column, QStandardItem(above))
        for down, row in enumerate(rows):
            number = f"{UNREAD} {row.row}" if row.why else str(row.row)
            self.setVerticalHeaderItem(down, QStandardItem(number))
            for column in range(columns):
                self._show_cell(down, column)

    def _show_cell(self, row: int, column: int) -> None:
        item: QStandardItem | None = self.item(row, column)
        if item is None:
            item = QStandardItem()
            item.setEditable(False)
            self.setItem(row, column, item)
        item.setText(self._words(row, column))
        cell = self._cells[row][column]
        font = item.font()
        if font.italic() != (cell is None):
            font.setItalic(cell is None)
            item.setFont(font)
        troubled = cell is not None and bool(cell.why)
        said = self.said(row, column) if troubled else ""
        if item.accessibleText() != said:
            item.setToolTip(tooltip(said) if troubled else "")
            item.setAccessibleText(said)

    def field_of(self, column: int) -> str:
        """Return what a column is read as, in words."""
        assert self._shown is not None
        return " + ".join(map(field_words, self._shown.feeds[column])) or LEFT_OUT

    def _words(self, row: int, column: int) -> str:
        written, cell = self._written(row, column)[:_LONGEST], self._cells[row][column]
        if cell is None:
            return written
        if cell.why:
            return f"{UNREAD} {written}"
        # Of what is gathered from several columns each shows its own part.
        parted = cell.field in self._gathered
        return written if parted else " ".join(cell.becomes[:_LONGEST].split())

    def said(self, row: int, column: int) -> str:
        """Return in a sentence what stands in a cell and what is read from it."""
        assert self._shown is not None
        each, cell = self._shown.rows[row], self._cells[row][column]
        where = tr("Row {row}, “{header}”", row=each.row, header=self._shown.headers[column])
        written = self._written(row, column)[:_LONGEST]
        if cell is None:
            left_out = tr("{where}: “{written}” is left out.", where=where, written=written)
            away = tr("The row is turned away: {why}", why=each.why)
            return f"{left_out} {UNREAD} {away}" if each.why else left_out
        if cell.why:
            return tr(
                "{where}: ⚠ “{written}” can’t be read. {why}",
                where=where,
                written=written,
                why=cell.why,
            )
        becomes = cell.becomes[:_LONGEST] or tr("nothing")
        return tr(
            "{where}: “{written}” is read as {field}: {becomes}.",
            where=where,
            written=written,
            field=field_words(cell.field),
            becomes=becomes,
        )

    def trouble(self) -> str:
        """Return how many of the first rows are turned away, and why the first is; or nothing."""
        rows = [row for row in self._shown.rows if row.why] if self._shown else []
        if not rows or self._shown is None:
            return ""
        return tr(
            "⚠ {rows} of the first {of} rows can’t be read; row {row}: {why}",
            rows=len(rows),
            of=len(self._shown.rows),
            row=rows[0].row,
            why=_why(rows[0]),
        )

    def _written(self, row: int, column: int) -> str:
        assert self._shown is not None
        cells = self._shown.rows[row].cells
        return " ".join(cells[column].split()) if column < len(cells) else ""


def _by_column(
    row: RowPreview, at: Mapping[str, Sequence[int]], columns: int
) -> list[CellPreview | None]:
    """Return for each column what its first field would become, one that can't be read before."""
    cells: list[CellPreview | None] = [None] * columns
    for each in row.fields:
        for column in at[each.field]:
            before = cells[column]
            if before is None or (each.why and not before.why):
                cells[column] = each
    return cells


def _why(row: RowPreview) -> str:
    """Return why a row is turned away, after the cell that can't be read where it is one."""
    cell = next((each for each in row.fields if each.why), None)
    if cell is None:
        return row.why
    field = field_words(cell.field)
    return tr("“{written}” as {field}. {why}", written=cell.written[:60], field=field, why=row.why)
