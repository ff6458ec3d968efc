"""The first look at a shop that was just opened, beside the window; what is wrong is told."""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer, Slot

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble, ShopUnwritable
from desktop_app.shop_window.desk import Desk


class FirstLook(QObject):
    """Looks once, some while after the shop was opened; it goes with its desk."""

    def __init__(self, desk: Desk, after_ms: int) -> None:
        super().__init__(desk)
        self._desk = desk
        QTimer.singleShot(after_ms, self, self._look)

    @Slot()
    def _look(self) -> None:
        record = self._desk.record

        def work() -> ShopTrouble | None:
            from desktop_app.shop_record.first_look import first_look

            return first_look(record)

        self._desk.errands.run(tr("Looking whether the shop is whole"), work, self._say)

    @Slot(object)
    def _say(self, trouble: ShopTrouble | None) -> None:
        if trouble is None:
            return
        if isinstance(trouble, ShopDamaged | ShopUnwritable):
            self._desk.shut(trouble)
        self._desk.told.emit(trouble)
