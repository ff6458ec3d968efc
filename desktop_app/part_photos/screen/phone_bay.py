"""The phone in the bay: opens the page and closes it, and brings what comes to its part."""

from __future__ import annotations

import threading
from collections.abc import Sequence
from contextlib import suppress
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from desktop_app.language import tr
from desktop_app.part_photos.phone.in_tray import InTray, Waiting
from desktop_app.part_photos.phone.offer import read_place
from desktop_app.part_photos.phone.session import Session
from desktop_app.part_photos.screen.phone_intake import Looked, Wanted, look_over
from desktop_app.part_photos.screen.phone_place import PhonePlace
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk

if TYPE_CHECKING:
    from desktop_app.part_photos.phone.own_certificate import Lock
    from desktop_app.part_photos.phone.phone_server import PhoneServer

SECOND_MS = 1000
CLOSED = tr("The page for phones was closed: no photo came for half an hour.")


class PhoneBay(QObject):
    """One of a desk. What comes is put to its part by a deed, or waits until somebody does."""

    changed = Signal()  # on or off, the place, the counts, what waits
    _came = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._tray = InTray(desk.record.folder)
        self._session: Session | None = None
        self._server: PhoneServer | None = None
        self._lock: Lock | None = None
        self._places: dict[str, PhonePlace] = {}
        self._now: PhonePlace | None = None
        self._coming: list[Wanted] = []
        self._in_hand: list[Wanted] = []
        self._waiting: dict[str, Looked] = {}
        self._clock = QTimer(self)
        self._clock.setInterval(SECOND_MS)
        self._clock.timeout.connect(self._second)
        self._came.connect(self._heard)
        desk.changed.connect(self._follow)
        desk.was_shut.connect(self.switch_off)
        desk.closing.connect(self._close)

    def offer(self, place: PhonePlace | None) -> None:
        """Say what photos are taken for from now on."""
        self._now = place
        if place is not None:
            self._places[place.offer.key] = place
        if self._session is not None:
            self._session.offer(place.offer if place else None)
            self._session.used()
        self.changed.emit()

    def place(self) -> PhonePlace | None:
        """Return what photos are taken for now."""
        return self._now

    def is_on(self) -> bool:
        """Tell whether the page is open."""
        return self._server is not None

    def url(self) -> str:
        """Return the address for the phone, key and all; empty while the page is closed."""
        return self._server.url() if self._server else ""

    def counts(self) -> tuple[int, int]:
        """Return how many photos came since the page was opened, and how many lacked the key."""
        return self._session.counts() if self._session else (0, 0)

    def seconds_left(self) -> float:
        """Return when the page closes by itself, if nobody uses it."""
        return self._session.seconds_left() if self._session else 0.0

    def waiting(self) -> tuple[Looked, ...]:
        """Return the photos that wait for a place."""
        return tuple(self._waiting.values())

    def certificate(self) -> str:
        """Return the SHA-256 of the certificate that locks what travels; empty where none does."""
        return self._lock.sha256 if self._lock and self._server else ""

    def switch_on(self, address: str, *, locked: bool = False) -> None:
        """Open the page at one address of this computer; a refusal is told.

        Where what travels is to be locked, the certificate is looked for beside the window first.
        """
        if not locked:
            self._open(address, None)
            return
        from desktop_app.part_photos.phone.own_certificate import lock_for

        folder, now = self._desk.record.folder, self._desk.now()
        self._desk.errands.run(
            tr("Looking for the certificate"),
            lambda: lock_for(folder, address, now),
            lambda lock: self._open(address, lock),
        )

    def _open(self, address: str, lock: Lock | None) -> None:
        # Loaded when it is wanted for the first time: the library of HTTP is not needed before.
        from desktop_app.part_photos.phone.phone_server import PhoneServer

        if self._server is not None:
            return
        session = Session(self._tell)
        try:
            server = PhoneServer(address, session, self._tray, lock.context if lock else None)
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)
            return
        session.offer(self._now.offer if self._now else None)
        self._tray.sweep()
        server.start()
        self._session, self._server, self._lock = session, server, lock
        self._clock.start()
        self.changed.emit()

    @Slot()
    def switch_off(self) -> None:
        """Close the page: from now on nobody is let in, and the address is free in a moment."""
        server, self._server, self._session = self._server, None, None
        self._clock.stop()
        if server is not None:
            server.session.end()
            threading.Thread(target=server.end, name="phone page ends").start()
            self.changed.emit()

    def look(self) -> None:
        """Look what waits in the tray, from before or because something came in between."""
        self._desk.errands.run(
            tr("Looking for photos from phones"), self._tray.waiting, self._found
        )

    def put_here(self, names: Sequence[str]) -> None:
        """Put photos that wait to the part that is chosen now."""
        if self._now is None:
            return
        offer = self._now.offer
        for name in names:
            if self._waiting.pop(name, None) is not None:
                self._coming.append(Wanted(name, self._now, offer.side, offer.view))
        self._next()

    def throw_away(self, names: Sequence[str]) -> None:
        """Move photos that wait into the shop's trash."""
        try:
            for name in names:
                self._tray.throw_away(name, self._desk.now())
                self._waiting.pop(name, None)
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)
        self.changed.emit()

    def _tell(self, name: str) -> None:
        """Pass on, from the server's thread, that a photo is in the tray."""
        with suppress(RuntimeError):  # the window went; it is found with the next start
            self._came.emit(name)

    @Slot(str)
    def _heard(self, name: str) -> None:
        known = [one.name for one in (*self._coming, *self._in_hand)]
        if name not in known and name not in self._waiting:
            self._coming.append(self._meant(name))
            self._next()
        self.changed.emit()

    def _meant(self, name: str) -> Wanted:
        at = read_place(name.partition(".")[2])
        place = self._places.get(at.key) if at else None
        if at is None or place is None or at.view >= len(place.offer.views):
            return Wanted(name, None)
        return Wanted(name, place, place.offer.side_of(at), place.offer.views[at.view])

    def _next(self) -> None:
        if self._in_hand or not self._coming:
            return
        hand, self._coming = self._coming, []
        self._in_hand = hand
        record, tray = self._desk.record, self._tray
        errand = self._desk.errands.run(
            tr("Taking photos in from the phone"),
            lambda: look_over(record, tray, hand),
            self._looked,
        )
        errand.failed.connect(self._failed)

    @Slot(object)
    def _failed(self, _trouble: object) -> None:
        self._in_hand = []  # they are in the tray, where the next look finds them
        self.changed.emit()
        self._next()

    def _looked(self, found: tuple[Looked, ...]) -> None:
        """Write the rows of what has a place, a deed for each place; keep the rest waiting."""
        groups: dict[tuple[int, str, str], list[Looked]] = {}
        for one in found:
            wanted = one.wanted
            if one.trouble is not None:
                self._not_taken(one)
            elif wanted.place is None:
                self._waiting[wanted.name] = one
            else:
                groups.setdefault((id(wanted.place), wanted.side, wanted.view), []).append(one)
        for group in groups.values():
            self._put(group)
        self._in_hand = []
        self.changed.emit()
        self._next()

    def _put(self, group: list[Looked]) -> None:
        wanted = group[0].wanted
        assert wanted.place is not None
        taken = [one.taken for one in group]
        done = self._desk.do(wanted.place.put, taken, wanted.side, wanted.view)
        for one in group:
            if done is None:
                self._waiting[one.wanted.name] = one
            else:
                self._tray.let_go(one.wanted.name)

    def _not_taken(self, one: Looked) -> None:
        assert one.trouble is not None
        if one.unfit:
            if self._session is not None:
                self._session.refuse(one.photo.sha256, one.trouble.sentence())
            self.throw_away([one.wanted.name])
        else:
            self._waiting[one.wanted.name] = one
        self._desk.told.emit(one.trouble)

    def _found(self, found: list[Waiting]) -> None:
        for photo in found:
            self._heard(photo.name)

    @Slot(object)
    def _follow(self, done: Done) -> None:
        """Take no photos any more for a pair that was taken away."""
        gone = self._now is not None and "pair" in done.touched
        if gone and self._now is not None and self._desk.ask(self._now.there) is False:
            self.offer(None)

    @Slot()
    def _second(self) -> None:
        if self.seconds_left() <= 0:
            self.switch_off()
            self._desk.told.emit(CLOSED)
        else:
            self.changed.emit()

    @Slot()
    def _close(self) -> None:
        """End with the window: who is just sending is cut, and sends again another time."""
        server, self._server, self._session = self._server, None, None
        self._clock.stop()
        if server is not None:
            server.end()


def phone_of(desk: Desk) -> PhoneBay:
    """Return the one bay of a desk."""
    found = desk.findChild(PhoneBay)
    return found if isinstance(found, PhoneBay) else PhoneBay(desk)
