"""What was written at other desks appears in the window, and whether the server is there is told.

Nothing that is being typed is lost by either: a field shows something new only while nothing of
its own waits in it, and what the server could not take is sent as soon as it is back.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.others import Others, touched_by_others
from desktop_app.shop_record.server.server_trouble import ServerLost, ServerRefuses
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.notice import Notice
from desktop_app.shop_window.unsent import Pages, Unsent

ELSEWHERE = tr("Written at another desk")
BACK = tr("The server is back.")
AGAIN_MS = 30_000  # after which what could not be read is read again


class OthersHeard(QObject):
    """Listens as long as its desk is there; `stop` before the record is closed.

    `pages` gives the pages that were made so far; `since` is the last entry of the history before
    they read anything, None where nobody knows.
    """

    _wrote = Signal(int)
    _there = Signal(bool)

    def __init__(self, desk: Desk, pages: Callable[[], Pages], since: int | None) -> None:
        super().__init__(desk)
        self._desk, self._pages = desk, pages
        self.unsent = Unsent(Drafts(desk.record.folder))
        self._own: set[int] = set()
        self._shown = since  # the last entry that the pages show
        self._last = 0  # the last entry that was told
        self._reading = False
        self._waits = 0  # in so many fields and choices something was kept on this computer
        self._wrote.connect(self._hear)
        self._there.connect(self._tell_there)
        desk.changed.connect(self._note_own)
        desk.told.connect(self._keep_unsent)
        desk.waits.connect(self._keep_what_waits)
        self._others = Others(desk.record, self._wrote.emit, self._there.emit)
        self._others.start()

    def stop(self) -> None:
        """Stop listening; nothing is heard any more."""
        self._others.stop()

    @Slot(object)
    def _note_own(self, done: object) -> None:
        seq = getattr(done, "seq", None)
        if seq is not None:
            self._own.add(seq)
        if seq is not None and self._waits:
            self._keep_what_waits()  # something may have been sent just now

    @Slot(int)
    def _hear(self, last: int) -> None:
        self._last = max(self._last, last)
        if self._shown is None:
            self._shown = last
        self._look()

    @Slot()
    def _look(self) -> None:
        """Read what others wrote up to the last entry that was told."""
        if self._shown is None or self._reading or self._desk.record.away is not None:
            return  # it goes on when that is read, and with what is told when the server is back
        since = self._shown
        self._own = {number for number in self._own if number > since}
        own_told = sum(number <= self._last for number in self._own)  # others are not told yet
        if own_told >= self._last - since:  # all of it was written here
            self._shown = max(since, self._last)
            return
        self._reading = True
        record, own = self._desk.record, frozenset(self._own)

        def work() -> tuple[int, frozenset[str] | None]:
            with record.reading() as connection:
                return touched_by_others(connection, since, own)

        errand = self._desk.errands.run(
            tr("Reading what was written at other desks"), work, self._show
        )
        errand.failed.connect(self._give_up)

    @Slot(object)
    def _give_up(self, _trouble: object) -> None:
        self._reading = False
        QTimer.singleShot(AGAIN_MS, self, self._look)

    @Slot(object)
    def _show(self, found: tuple[int, frozenset[str] | None]) -> None:
        self._reading = False
        self._shown, touched = max(self._shown or 0, found[0]), found[1]
        if touched is None:
            touched = _all_tables()
        if touched:
            self._desk.changed.emit(Done(ELSEWHERE, touched, None))
        self._look()  # something may have been told while that was read

    @Slot(bool)
    def _tell_there(self, there: bool) -> None:
        away = self._desk.record.away
        if there:
            self._send_what_waits()
        elif away is not None:
            self._keep_what_waits()
            self._desk.told.emit(self._notice(away))

    def _notice(self, away: ServerLost) -> Notice:
        """Say that the server is away, or lets nobody in; it holds until it is otherwise."""
        sort, record = type(away), self._desk.record
        what, kept, do = away.what, away.kept, away.do
        if not isinstance(away, ServerRefuses):
            what = tr("The shop's server can't be reached since {now:%H:%M}.", now=self._desk.now())
            kept = tr("What you type stays in its field, and on this computer.")
            chosen = tr("So is what you choose; what springs back has to wait until then.")
            do = f"{do} {chosen}"
        return Notice(what, kept, do, holds=lambda: type(record.away) is sort)

    def _send_what_waits(self) -> None:
        waited, left = self.unsent.send(self._pages())
        self._keep_what_waits()  # choices, if any
        if left:
            what = tr("The server is back. Something typed is not accepted; it stays in its field.")
            self._desk.told.emit(ShopTrouble(what, do=tr("Look it over.")))
        elif waited:
            self._desk.told.emit(tr("The server is back; what was typed meanwhile is saved."))
        elif self._waits:
            chosen = tr("What was chosen meanwhile is sent with its page.")
            self._desk.told.emit(f"{BACK} {chosen}")
        else:
            self._desk.told.emit(BACK)
        self._desk.changed.emit(Done(ELSEWHERE, _all_tables(), None))

    @Slot(object)
    def _keep_unsent(self, news: object) -> None:
        """Keep what waits in fields on this computer, for the case that the program ends too."""
        if isinstance(news, ServerLost) and self._desk.record.away is not None:
            self._keep_what_waits()

    @Slot()
    def _keep_what_waits(self) -> None:
        self._waits = self.unsent.keep(self._pages())


def _all_tables() -> frozenset[str]:
    from desktop_app.shop_record.tables import Base

    return frozenset(Base.metadata.tables)
