"""The list of returns by keys: its end is the last of them all, and what is typed finds any."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QListView


class ReturnsView(QListView):
    """Has the rows tell of all that there are before a key goes where only some are known."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_End:
            self._know_all()
        super().keyPressEvent(event)

    def keyboardSearch(self, search: str) -> None:
        self._know_all()
        super().keyboardSearch(search)

    def _know_all(self) -> None:
        rows, top = self.model(), QModelIndex()
        while rows.canFetchMore(top):
            rows.fetchMore(top)
