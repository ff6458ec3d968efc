"""Keeps the search's index up beside the window: made where it is missing, renewed where late."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal, Slot

from desktop_app.shop_window.desk import Desk
from desktop_app.symptom_search.index_actions import WORDS, renew_index


class IndexErrand(QObject):
    """`looked` says that the index was looked after: answers may be over all jobs from now on."""

    looked = Signal(bool)  # whether it was made

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._on_its_way = False

    @Slot()
    def look(self) -> None:
        """Make the index where that is due; one look at a time."""
        if self._on_its_way:
            return
        self._on_its_way = True
        record = self._desk.record
        errand = self._desk.errands.run(WORDS, lambda: renew_index(record), self._ended)
        errand.failed.connect(self._failed)

    def _ended(self, made: bool) -> None:
        self._on_its_way = False
        self.looked.emit(made)

    @Slot(object)
    def _failed(self, _trouble: object) -> None:
        self._on_its_way = False
