"""The Monday Book's sheets: their names beside each other, and the one that was chosen."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QWidget

from desktop_app.shop_window.page import ReadingPage
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheets
from desktop_app.weekly_report.screen.sheet_view import SheetView
from desktop_app.weekly_report.sheet_form import Sheet

LIST_WIDTH = 170


class FiguresView(QWidget):
    """A list of the sheets and the chosen one; only that one is laid out."""

    job_wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sheets: tuple[Sheet, ...] = ()
        self._currency = ""
        self._list = QListWidget()
        self._list.setAccessibleName("Sheets of the book")
        self._list.setFixedWidth(LIST_WIDTH)
        self._list.setSpacing(2)
        self._list.currentRowChanged.connect(self._choose)
        self._sheet = SheetView()
        self._sheet.job_wanted.connect(self.job_wanted)
        self._page = ReadingPage()
        self._page.column.addWidget(self._sheet)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._list)
        row.addWidget(self._page, 1)

    def show_figures(self, figures: WeekFigures, sheets: tuple[Sheet, ...] | None = None) -> None:
        """Show the figures of a week, on the sheet that was chosen before."""
        chosen = max(0, self._list.currentRow())
        self._sheets = week_sheets(figures) if sheets is None else sheets
        self._currency = figures.shop.currency
        names = [sheet.name for sheet in self._sheets]
        if [self._list.item(i).text() for i in range(self._list.count())] != names:
            self._list.blockSignals(True)
            self._list.clear()
            self._list.addItems(names)
            self._list.setCurrentRow(chosen)
            self._list.blockSignals(False)
        self._choose(chosen)

    @Slot(int)
    def _choose(self, row: int) -> None:
        if 0 <= row < len(self._sheets):
            self._sheet.show_sheet(self._sheets[row], self._currency)
            self._page.verticalScrollBar().setValue(0)
