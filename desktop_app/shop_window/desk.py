"""The desk: the window's side of the record, for doing deeds and hearing what changed."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime
from typing import Any

from PySide6.QtCore import QObject, Signal

from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.errands import Errands


class Desk(QObject):
    """Does deeds on the record and says what changed (`changed`) or what went wrong (`told`)."""

    changed = Signal(object)  # Done
    told = Signal(object)  # ShopTrouble, or a plain sentence

    def __init__(self, record: ShopRecord, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.record = record
        self.errands = Errands(self)
        self.errands.told.connect(self.told)
        self._rules: HouseRules | None = None

    @property
    def rules(self) -> HouseRules:
        """The shop's house rules as they are now."""
        if self._rules is None:
            with self.record.reading() as connection:
                self._rules = read_rules(connection)
        return self._rules

    def now(self) -> datetime:
        """Return the moment by the record's clock."""
        return self.record.clock()

    def today(self) -> date:
        """Return the day by the record's clock."""
        return self.record.clock().date()

    def do(self, deed: Callable[..., Done], *args: Any, **more: Any) -> Done | None:
        """Do a deed of an `actions` file; None where it was refused (the notice strip says why)."""
        return self._try(lambda: deed(self.record, *args, **more))

    def undo(self) -> Done | None:
        """Take the last deed back."""
        return self._try(self.record.undo)

    def redo(self) -> Done | None:
        """Bring the undone deed back."""
        return self._try(self.record.redo)

    def ask(self, read: Callable[..., Any], *args: Any) -> Any:
        """Read from the record: `read(connection, *args)`; None (and a notice) where that fails."""
        try:
            with self.record.reading() as connection:
                return read(connection, *args)
        except ShopTrouble as trouble:
            self.told.emit(trouble)
            return None

    def _try(self, work: Callable[[], Done]) -> Done | None:
        try:
            done = work()
        except ShopTrouble as trouble:
            self.told.emit(trouble)
            return None
        if done.seq is not None:
            if "setting" in done.touched:
                self._rules = None
            self.changed.emit(done)
        return done
