"""What could not be saved is tried again: its disk may have room by now, its folder be back."""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer, Slot
from PySide6.QtWidgets import QWidget

from desktop_app.shop_record.trouble import NotSaved, RecordBusy
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import save_everything, unsaved_fields

AGAIN_MS = 4000


class SavedAgain(QObject):
    """Tries the fields of a window again, without saying anew what is said already.

    What waits for a server is sent when that is back; while somebody else writes a person decides.
    """

    def __init__(self, desk: Desk, window: QWidget) -> None:
        super().__init__(desk)
        self._desk, self._window = desk, window
        self._timer = QTimer(self)
        self._timer.setInterval(AGAIN_MS)
        self._timer.timeout.connect(self._again)
        desk.told.connect(self._hear)
        desk.closing.connect(self._timer.stop)

    @Slot(object)
    def _hear(self, news: object) -> None:
        waits = isinstance(news, RecordBusy)  # each try would hold the window up
        if isinstance(news, NotSaved) and not waits and not self._timer.isActive():
            self._timer.start()

    @Slot()
    def _again(self) -> None:
        desk = self._desk
        if desk.record.away is None and desk.why_shut is None and unsaved_fields(self._window):
            with desk.quietly():
                save_everything(self._window)
        if desk.not_saved is None or not unsaved_fields(self._window):
            self._timer.stop()
