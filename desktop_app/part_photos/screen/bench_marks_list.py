"""The list of marks on both photos; the one chosen here is chosen on its photo."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QListWidget, QListWidgetItem

from desktop_app.language import tr
from desktop_app.shop_window.look import larger

_HIGHEST = 190  # screen pixels, with text of the usual size
_LARGER = 1.4  # than the usual text
_ID = Qt.ItemDataRole.UserRole


class MarksList(QListWidget):
    """One line a mark; Delete takes the chosen one out, Enter goes to it on the photo."""

    keys_said = ((tr("Delete"), tr("takes the chosen mark off")),)

    chosen = Signal(object)  # id of a mark, or None
    opened = Signal(int)
    unwanted = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Marks on both photos"))
        self.setWordWrap(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.currentItemChanged.connect(self._turned)
        self.itemActivated.connect(self._activated)

    def show_marks(self, lines: Sequence[tuple[int, str]], chosen: int | None) -> None:
        """Show these marks; nothing is said about the one that is chosen."""
        self.blockSignals(True)
        if [self.item(row).data(_ID) for row in range(self.count())] != [one for one, _ in lines]:
            self.clear()
            for mark_id, _words in lines:
                item = QListWidgetItem()
                item.setData(_ID, mark_id)
                self.addItem(item)
        row_of = -1
        for row, (mark_id, words) in enumerate(lines):
            self.item(row).setText(self._breaking(words))
            if mark_id == chosen:
                row_of = row
        self.setCurrentRow(row_of)
        self.blockSignals(False)
        self._fit_height()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_height()

    def _fit_height(self) -> None:
        """Be as high as the lines, and scroll where they are many."""
        self.doItemsLayout()
        rows = (self.visualItemRect(self.item(row)).height() for row in range(self.count()))
        most = round(_HIGHEST * larger(self))
        self.setFixedHeight(min(sum(rows) + 2 * self.frameWidth() + 2, most))

    def say(self, mark_id: int, words: str) -> None:
        """Change the words of one mark."""
        for row in range(self.count()):
            if self.item(row).data(_ID) == mark_id:
                self.item(row).setText(self._breaking(words))

    def _breaking(self, words: str) -> str:
        """Let a value and its doubt stand in two lines where words are too large for one."""
        return words if larger(self) <= _LARGER else words.replace("\u00a0", " ")

    def choose(self, mark_id: int | None) -> None:
        """Choose a mark from outside; nothing is said about it."""
        ids = [self.item(row).data(_ID) for row in range(self.count())]
        self.blockSignals(True)
        self.setCurrentRow(ids.index(mark_id) if mark_id in ids else -1)
        self.blockSignals(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        item = self.currentItem()
        key = event.key()
        if item is not None and key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.unwanted.emit(item.data(_ID))
        elif Qt.Key.Key_0 <= key <= Qt.Key.Key_9:
            event.ignore()  # the tools' keys, not the beginning of a name
        else:
            super().keyPressEvent(event)

    @Slot(QListWidgetItem, QListWidgetItem)
    def _turned(self, now: QListWidgetItem | None, _before: QListWidgetItem | None) -> None:
        self.chosen.emit(now.data(_ID) if now is not None else None)

    @Slot(QListWidgetItem)
    def _activated(self, item: QListWidgetItem) -> None:
        self.opened.emit(item.data(_ID))
