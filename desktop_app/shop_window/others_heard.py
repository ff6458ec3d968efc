"""What was written at other desks appears in the window, and whether the server is there is told.

Nothing that is being typed is lost by either: a field shows something new only while nothing of
its own waits in it, and what the server could not take is sent as soon as it is back.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.others import Others, touched_by_others
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import save_everything, unsaved_fields
from desktop_app.shop_window.notice import Notice

ELSEWHERE = "Written at another desk"
UNSENT = "not sent"


class OthersHeard(QObject):
    """Listens as long as its desk is there; `stop` before the record is closed."""

    _wrote = Signal(int)
    _there = Signal(bool)

    def __init__(self, desk: Desk, page: Callable[[], QWidget | None]) -> None:
        super().__init__(desk)
        self._desk, self._page = desk, page
        self._drafts = Drafts(desk.record.folder)
        self._own: set[int] = set()
        self._heard = 0
        self._reading = False
        self._wrote.connect(self._hear)
        self._there.connect(self._tell_there)
        desk.changed.connect(self._note_own)
        desk.told.connect(self._keep_unsent)
        self._others = Others(desk.record, self._wrote.emit, self._there.emit)
        self._tell_unsent()
        self._others.start()

    def stop(self) -> None:
        """Stop listening."""
        self._others.stop()

    @Slot(object)
    def _note_own(self, done: object) -> None:
        seq = getattr(done, "seq", None)
        if seq is not None:
            self._own.add(seq)

    @Slot(int)
    def _hear(self, last: int) -> None:
        if self._heard == 0:  # the pages were read after this
            self._heard = last
        self._own = {number for number in self._own if number > self._heard}
        if last <= self._heard or self._reading:
            return
        if self._own.issuperset(range(self._heard + 1, last + 1)):
            self._heard = last
            return
        self._reading = True
        record, since, own = self._desk.record, self._heard, frozenset(self._own)

        def work() -> tuple[int, frozenset[str] | None]:
            with record.reading() as connection:
                return touched_by_others(connection, since, own)

        errand = self._desk.errands.run("Reading what was written at other desks", work, self._show)
        errand.failed.connect(self._give_up)

    @Slot(object)
    def _give_up(self, _trouble: object) -> None:
        self._reading = False

    @Slot(object)
    def _show(self, found: tuple[int, frozenset[str] | None]) -> None:
        self._reading = False
        self._heard, touched = max(self._heard, found[0]), found[1]
        if touched is None:
            from desktop_app.shop_record.tables import Base

            touched = frozenset(Base.metadata.tables)
        if touched:
            self._desk.changed.emit(Done(ELSEWHERE, touched, None))

    @Slot(bool)
    def _tell_there(self, there: bool) -> None:
        if there:
            self._send_what_waits()
            return
        away = self._desk.record.away
        if away is not None:
            since = f"{self._desk.now():%H:%M}"
            self._desk.told.emit(
                Notice(
                    f"The shop's server can't be reached since {since}.",
                    kept="What you type stays in its field, and on this computer.",
                    do="Go on typing: it is sent when the server is back.",
                    holds=lambda: self._desk.record.away is not None,
                )
            )

    def _send_what_waits(self) -> None:
        page = self._page()
        left = 0
        if page is not None:
            save_everything(page)
            left = len(unsaved_fields(page))
        if left == 0:
            self._drafts.keep(UNSENT, {})
            self._desk.told.emit("The server is back; what was typed meanwhile is saved.")
        else:
            self._desk.told.emit("The server is back. Something typed here was not accepted: look.")
        self._desk.changed.emit(Done(ELSEWHERE, frozenset(), None))

    @Slot(object)
    def _keep_unsent(self, news: object) -> None:
        """Keep what waits in fields on this computer, for the case that the program ends too."""
        page = self._page()
        if page is None or not isinstance(news, ShopTrouble) or self._desk.record.away is None:
            return
        waits = {
            field.accessibleName(): field.toPlainText()
            if hasattr(field, "toPlainText")
            else field.text()
            for field in unsaved_fields(page)
        }
        self._drafts.keep(UNSENT, waits)

    def _tell_unsent(self) -> None:
        waits = self._drafts.read(UNSENT)
        if waits:
            said = "; ".join(f"{name}: “{text}”" for name, text in waits.items())
            self._desk.told.emit(
                ShopTrouble(
                    f"Typed while the server was away, and not sent before the end: {said}",
                    do="Enter it again where it belongs.",
                )
            )
            self._drafts.keep(UNSENT, {})
