"""The Monday Book's sheets: their names beside each other, and the one that was chosen."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Signal, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.page import ReadingPage
from desktop_app.shop_window.texts import plain_label
from desktop_app.weekly_report.pages import SHEET_NAMES
from desktop_app.weekly_report.screen.sheet_view import SheetView
from desktop_app.weekly_report.sheet_form import Sheet

LIST_WIDTH = 170  # at least; longer names get what they need
PAGE_LEAST = 200  # pixels that a sheet is read in; a lower window scrolls the whole page
_BESIDE_NAMES = 24


class FiguresView(QWidget):
    """A list of the sheets and the chosen one; only that one is worked out and laid out."""

    sheet_wanted = Signal(str)
    job_wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._list = QListWidget()
        self._list.setAccessibleName(tr("Sheets of the book"))
        self._list.setSpacing(2)
        self._list.addItems(SHEET_NAMES)
        self._list.setCurrentRow(0)
        self._list.currentRowChanged.connect(self._choose)
        self._sheet = SheetView()
        self._sheet.job_wanted.connect(self.job_wanted)
        self._sheet.sheet_wanted.connect(self._turn_to)
        self._waits = plain_label("", wrap=True)
        self._page = ReadingPage()
        self._page.setMinimumHeight(PAGE_LEAST)
        self._page.column.addWidget(self._waits)
        self._page.column.addWidget(self._sheet)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._list)
        row.addWidget(self._page, 1)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._fit_names()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._fit_names()

    def _fit_names(self) -> None:
        longest = self._list.sizeHintForColumn(0) + _BESIDE_NAMES
        self._list.setFixedWidth(max(LIST_WIDTH, longest))

    def chosen(self) -> str:
        """Return the name of the sheet that is chosen."""
        return SHEET_NAMES[max(0, self._list.currentRow())]

    def show_sheet(self, sheet: Sheet, currency: str) -> None:
        """Show the chosen sheet from its top."""
        self._sheet.show_sheet(sheet, currency)
        self._waits.hide()
        self._sheet.show()
        self._page.verticalScrollBar().setValue(0)

    def wait(self, words: str) -> None:
        """Say what is waited for in place of a sheet that is not the wanted one."""
        self._waits.setText(words)
        self._waits.show()
        self._sheet.hide()

    @Slot(str)
    def _turn_to(self, name: str) -> None:
        self._list.setCurrentRow(SHEET_NAMES.index(name))

    @Slot(int)
    def _choose(self, row: int) -> None:
        if 0 <= row < len(SHEET_NAMES):
            self.sheet_wanted.emit(SHEET_NAMES[row])
