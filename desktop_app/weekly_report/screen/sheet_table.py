"""One table of the Monday Book: as wide as the page, with its words wrapped."""

from __future__ import annotations

from math import ceil

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QWidget

from desktop_app.shop_window.shop_table import ShopTable
from desktop_app.weekly_report.paper_fit import (
    Asked,
    asked_widths,
    fitted_widths,
    pixels,
    text_pixels,
)
from desktop_app.weekly_report.screen.sheet_rows import SheetRows
from desktop_app.weekly_report.sheet_form import Column, Table

ROW_HEIGHT = 34
MOST_HEIGHT = 16 * ROW_HEIGHT  # shown without scrolling inside the table
MOST_WRAPPED = 150  # rows; a longer table keeps one line a row and tells the rest as a tip
_AIR = 1.1  # where it scrolls sideways anyhow, words need not be squeezed
_SNUG = 0.85  # figures ask less than on paper: their headers are neither bold nor beside a button
_LOOKED_AT = 200  # rows whose words decide the widths


class SheetTable(ShopTable):
    """Shows one table; its columns share the room as they do on paper."""

    def __init__(
        self, table: Table, currency: str, name: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(name, parent)
        rows = SheetRows(self)
        self._wraps = len(table.rows) <= MOST_WRAPPED
        some = table.rows[:_LOOKED_AT]
        cells = list(zip(*some, strict=True)) or [()] * len(table.columns)
        self._asked = [
            _on_screen(column, asked_widths(column, seen, currency))
            for column, seen in zip(table.columns, cells, strict=True)
        ]
        self._fitted_to = 0
        self.setWordWrap(self._wraps)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
        self.verticalHeader().setMinimumSectionSize(ROW_HEIGHT)
        rows.show_table(table, currency)
        self.show_rows_of(rows)
        self._fit(self.width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.width() != self._fitted_to:
            self._fit(self.width())

    def _fit(self, width: int) -> None:
        self._fitted_to = width
        bar = self.verticalScrollBar().sizeHint().width()
        scale = self.fontMetrics().horizontalAdvance("0") / text_pixels("0")
        room = int((width - bar - 4) / scale)
        least = sum(pixels(one.least) for one in self._asked)
        scrolls = least > room
        room = int(least * _AIR) if scrolls else room
        for number, digits in enumerate(fitted_widths(self._asked, room)):
            self.setColumnWidth(number, int(pixels(digits) * scale))
        if self._wraps:
            self.resizeRowsToContents()
        rows = self.model().rowCount()
        shown = sum(map(self.rowHeight, range(min(rows, MOST_HEIGHT // ROW_HEIGHT))))
        head = self.horizontalHeader().sizeHint().height()
        below = self.horizontalScrollBar().sizeHint().height() if scrolls else 0
        self.setFixedHeight(head + min(shown, MOST_HEIGHT) + below + 6)


def _on_screen(column: Column, asked: Asked) -> Asked:
    """Return what a column asks for on the screen."""
    if column.kind in ("words", "long words"):
        return asked
    return asked._replace(least=ceil(asked.least * _SNUG), wide=ceil(asked.wide * _SNUG))
