"""The day's backup, made beside the window some while after it opened; and what is said of backups.

It looks again every hour, for a window may stay open for weeks, and soon where another window makes
the backup just now. What that takes is loaded beside the window too.
"""

from __future__ import annotations

from collections.abc import Generator

from PySide6.QtCore import QObject, QTimer, Slot

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.notice import Notice

_HOUR_MS = 3_600_000
_SOON_MS = 2_000


class DailyBackup(QObject):
    """Backs a shop up once a day, and brings a backup back on trial once a month.

    It goes with its desk.
    """

    def __init__(self, desk: Desk, after_ms: int) -> None:
        super().__init__(desk)
        self._desk = desk
        self._said: str | None = None  # None before the first look
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._look)
        self._timer.start(after_ms)
        desk.changed.connect(self._hear)

    @Slot()
    def _look(self) -> None:
        self._timer.start(_HOUR_MS)
        record = self._desk.record

        def work() -> Generator[Step, None, bool]:
            from desktop_app.shop_record.backups.backup_turn import AnothersTurn
            from desktop_app.shop_record.backups.backups_made import daily_backup
            from desktop_app.shop_record.backups.restore_drill import monthly_drill

            try:
                yield from daily_backup(record)
                yield from monthly_drill(record)
            except AnothersTurn:
                return False
            return True

        self._desk.errands.run(tr("Backing the shop up"), work, self._looked)

    @Slot(object)
    def _looked(self, all_done: bool) -> None:
        if all_done:
            self._look_how_old()
        else:
            self._timer.start(_SOON_MS)

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if "setting" in done.touched and self._said is not None:
            self._look_how_old()

    def _look_how_old(self) -> None:
        record = self._desk.record

        def work() -> list[ShopTrouble]:
            from desktop_app.shop_record.backups.backups_late import backup_troubles

            return backup_troubles(record)

        self._desk.errands.run(tr("Looking how old the backups are"), work, self._say)

    @Slot(object)
    def _say(self, troubles: list[ShopTrouble]) -> None:
        """Say all of it in one notice, which holds until it is said otherwise."""
        said = self._said = " ".join(one.what for one in troubles)
        if said:
            do = " ".join(dict.fromkeys(one.do for one in troubles))
            self._desk.told.emit(Notice(said, do=do, holds=lambda: self._said == said))
