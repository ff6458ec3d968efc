"""The day's backup, made beside the window some while after it opened; and said where it is late.

It looks again every hour, for a window may stay open for weeks. What that takes is loaded beside
the window too.
"""

from __future__ import annotations

from collections.abc import Generator

from PySide6.QtCore import QObject, QTimer, Slot

from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.notice import Notice

_HOUR_MS = 3_600_000


class DailyBackup(QObject):
    """Backs a shop up once a day; it goes with its desk."""

    def __init__(self, desk: Desk, after_ms: int) -> None:
        super().__init__(desk)
        self._desk = desk
        self._late = False
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._look)
        self._timer.start(after_ms)

    @Slot()
    def _look(self) -> None:
        self._timer.start(_HOUR_MS)
        record = self._desk.record

        def work() -> Generator[Step, None, object]:
            from desktop_app.shop_record.backups_made import daily_backup

            return daily_backup(record)

        self._desk.errands.run("Backing the shop up", work, self._look_how_old)

    @Slot(object)
    def _look_how_old(self, _made: object) -> None:
        record = self._desk.record

        def work() -> ShopTrouble | None:
            from desktop_app.shop_record.backups_made import too_long_ago

            return too_long_ago(record)

        self._desk.errands.run("Looking how old the backups are", work, self._say)

    @Slot(object)
    def _say(self, trouble: ShopTrouble | None) -> None:
        self._late = trouble is not None
        if trouble is not None:
            self._desk.told.emit(Notice(trouble.what, do=trouble.do, holds=lambda: self._late))
