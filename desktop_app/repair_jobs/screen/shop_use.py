"""How the shop's vehicles are used, read once for a desk and again when a visit has changed."""

from __future__ import annotations

from PySide6.QtCore import QObject, Slot

from desktop_app.repair_jobs.rate_of_use import ShopUse
from desktop_app.repair_jobs.stored_odometer import read_shop_use
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk


def shop_use(desk: Desk) -> ShopUse:
    """Return how the vehicles of the desk's shop are used; what is usual where nobody can say."""
    kept = desk.findChild(ShopUseKept) or ShopUseKept(desk)
    return kept.now()


class ShopUseKept(QObject):
    """It is the same for every job that is opened, and takes longer to read than the job."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._kept: ShopUse | None = None
        desk.changed.connect(self._hear)

    def now(self) -> ShopUse:
        """Return how they are used; what is usual where the record cannot be read."""
        if self._kept is None:
            self._kept = self._desk.ask(read_shop_use)
        return self._kept or ShopUse()

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if done.touched & {"visit", "vehicle"}:
            self._kept = None
