"""How the shop's vehicles are used, read once for a desk and again when a visit has changed."""

from __future__ import annotations

from PySide6.QtCore import QObject, Slot

from desktop_app.repair_jobs.rate_of_use import ShopUse
from desktop_app.repair_jobs.stored_odometer import read_shop_use
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk


def shop_use(desk: Desk) -> ShopUse:
    """Return how the vehicles of the desk's shop are used; what is usual where nobody can say."""
    return shop_use_kept(desk).now()


def shop_use_kept(desk: Desk) -> ShopUseKept:
    """Return where a desk keeps it."""
    return desk.findChild(ShopUseKept) or ShopUseKept(desk)


class ShopUseKept(QObject):
    """It is the same for every job that is opened, and takes longer to read than the job."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._kept: ShopUse | None = None
        self.changes = 0  # that were heard since the desk was opened
        desk.changed.connect(self._hear)

    def now(self) -> ShopUse:
        """Return how they are used; what is usual where the record cannot be read."""
        if self._kept is None:
            self._kept = self._desk.ask(read_shop_use)
        return self._kept or ShopUse()

    def know(self, read: ShopUse | None, changes: int) -> None:
        """Take what was read beside the window after so many changes, unless more were heard."""
        if changes == self.changes:
            self._kept = self._kept or read

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if done.touched & {"visit", "vehicle"}:
            self._kept = None
            self.changes += 1
