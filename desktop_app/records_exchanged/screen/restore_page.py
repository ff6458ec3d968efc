"""A page to bring a backup back from where no shop can be opened."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import Signal

from desktop_app.language import tr
from desktop_app.records_exchanged.screen.restore_box import BackupsToShow, RestoreBox
from desktop_app.shop_window.errands import Errands
from desktop_app.shop_window.page import ReadingPage
from desktop_app.shop_window.texts import plain_label


class RestorePage(ReadingPage):
    """One box on a page of its own; `open_wanted` names the folder of a shop that is back."""

    open_wanted = Signal(object)  # Path

    def __init__(
        self, errands: Errands, folders: Sequence[Path], now: Callable[[], datetime]
    ) -> None:
        """`folders` are those in which generations of backups may lie."""
        super().__init__()
        self.errands = errands
        self._box = RestoreBox(self, lambda: BackupsToShow(folders), now)
        self._box.open_wanted.connect(self.open_wanted)
        self.column.addWidget(plain_label(tr("From a Backup"), "title"))
        self.column.addWidget(self._box)

    def came_here(self) -> None:
        """Look which backups there are."""
        self._box.look()
