"""A list that marks the row at which whoever comes by a key stands."""

from __future__ import annotations

from PySide6.QtCore import QItemSelectionModel
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QListView


class MarkedList(QListView):
    """Qt stands at the first row without marking it: Down would seem to begin at the second."""

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        here = self.currentIndex()
        if here.isValid() and not self.selectionModel().hasSelection():
            self.selectionModel().select(here, QItemSelectionModel.SelectionFlag.ClearAndSelect)
