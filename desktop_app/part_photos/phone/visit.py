"""One request of a phone: looked at in a fixed order, answered in a sentence, then over."""

from __future__ import annotations

import hashlib
import json
import logging
import re
import socket
import time
from collections.abc import Callable
from contextlib import suppress
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler
from typing import TYPE_CHECKING, ClassVar
from urllib.parse import unquote

from desktop_app.language import tr
from desktop_app.part_photos.intake import kind_before_decoding
from desktop_app.part_photos.phone import door, limits
from desktop_app.part_photos.phone.door import TurnedAway
from desktop_app.part_photos.phone.in_tray import NOWHERE, Coming
from desktop_app.part_photos.photo_trouble import Unfit

if TYPE_CHECKING:
    from desktop_app.part_photos.phone.phone_server import PhoneServer

_SHA = re.compile(r"[0-9a-f]{64}")
_PIECE = 1 << 20


class Visit(BaseHTTPRequestHandler):
    """Gives the page to anybody; says the place and takes photos from who has the key.

    One connection is one request (HTTP/1.0), so what is left unread of one is never the next.
    """

    server: PhoneServer
    protocol_version = "HTTP/1.0"
    timeout = 30  # of one silence; the server cuts whoever is late as a whole
    wbufsize = 1 << 14  # head and answer go as one: in two, the second waits 40 ms for the first
    let_in = False  # past the door
    heard_all = False  # nothing of the request is still to come
    ROOMS: ClassVar[dict[str, str]] = {"/place": "POST", "/photo": "PUT"}

    def do_GET(self) -> None:
        """Give the page, which says nothing of the shop."""
        self._answered(self._page)

    def do_POST(self) -> None:
        """Say what photos are taken for."""
        self._answered(self._place)

    def do_PUT(self) -> None:
        """Take one photo."""
        self._answered(self._photo)

    def send_error(self, code: int, message: str | None = None, explain: str | None = None) -> None:
        """Answer what is no request of the page, without saying again what was sent."""
        self._say(code, {"words": tr("This is no request of the page.")})

    def log_message(self, format: str, *args: object) -> None:
        """Write nothing: who sends what is nobody's business, and a log fills the disk."""

    def version_string(self) -> str:
        """Tell nobody which programs answer."""
        return "bay"

    def _answered(self, work: Callable[[], None]) -> None:
        try:
            work()
        except TurnedAway as refusal:
            self._say(refusal.status, {"words": refusal.words})
            self._hear_out()

    def _page(self) -> None:
        door.check_host(self.headers.get_all("Host") or [], self.server.here)
        if self.path != "/":
            raise TurnedAway(404, tr("There is nothing here."))
        self._send(200, "text/html; charset=utf-8", self.server.page.content)

    def _place(self) -> None:
        self._check_door()
        if door.claimed_length(self.headers):
            raise TurnedAway(400, tr("This is no request of the page."))
        if self.headers.get("X-Bay-Opened"):
            self.server.session.used()
        self._say(200, self.server.session.label())

    def _photo(self) -> None:
        self._check_door()
        session = self.server.session
        length = door.claimed_length(self.headers)
        sha256 = self.headers.get("X-Photo-SHA256") or ""
        if not length:
            raise TurnedAway(400, tr("The photo is empty. Take it again."))
        if not _SHA.fullmatch(sha256):
            raise TurnedAway(400, tr("This is no request of the page."))
        self.server.allow(self.connection, limits.body_seconds(length))
        with self.server.tray.coming() as coming:
            content, summed = self._body(length, coming)
            self.server.allow(self.connection, limits.ANSWER_SECONDS)
            if not session.traffic.another_photo():  # what was cut on its way does not count
                most = limits.PHOTOS_AN_HOUR
                raise TurnedAway(
                    429, tr("{most} photos came within an hour. Wait a while.", most=most)
                )
            if summed != sha256:
                raise TurnedAway(422, tr("It was garbled on its way."))
            try:
                kind_before_decoding(content)
            except Unfit as unfit:
                raise TurnedAway(415, f"{unfit.reason} {unfit.do}".strip()) from unfit
            name = self._keep(coming, sha256)
        session.arrived(sha256, name)
        self._say(200, {"sha256": sha256, "bytes": length})

    def _keep(self, coming: Coming, sha256: str) -> str:
        meant = self.server.session.meant(self.headers.get("X-Photo-Place") or "")
        place, words = (NOWHERE, "")
        if meant is not None:
            at, offer = meant
            place = at.text()
            words = offer.words(offer.side_of(at), offer.views[at.view])
        sent = (self.headers.get("X-Photo-Name") or "")[: limits.LONGEST_HEAD_NAME]
        try:
            return coming.keep(sha256, place, unquote(sent, errors="replace"), words)
        except OSError as error:
            logging.getLogger("benchwitness").warning("phone's photo not kept: %s", error.strerror)
            raise TurnedAway(
                507, tr("The shop's computer could not save it: look at its disk.")
            ) from error

    def _check_door(self) -> None:
        """Check key, host, origin and room, in this order: the right key is never kept waiting."""
        session = self.server.session
        try:
            door.check_key(self.headers.get(door.KEY), session.key)
        except TurnedAway:
            session.turn_away()
            raise
        door.check_host(self.headers.get_all("Host") or [], self.server.here)
        door.check_origin(self.headers.get_all("Origin") or [], self.server.origin)
        if self.ROOMS.get(self.path) != self.command:
            raise TurnedAway(404, tr("There is nothing here."))
        self.let_in = True

    def _body(self, length: int, coming: Coming) -> tuple[bytes, str]:
        """Read exactly so many bytes; write them and sum them up meanwhile.

        A connection that ends before leaves nothing.
        """
        content, at, summed = bytearray(length), 0, hashlib.sha256()
        view = memoryview(content)
        while at < length:
            got = self.rfile.readinto1(view[at : at + _PIECE])
            if not got:
                raise ConnectionResetError("cut short")
            coming.write(view[at : at + got])
            summed.update(view[at : at + got])
            at += got
        self.heard_all = True
        return bytes(content), summed.hexdigest()

    def _say(self, status: int, said: dict[str, object]) -> None:
        if status == HTTPStatus.OK:
            self.server.count_out(self.connection)
        self._send(status, "application/json", json.dumps(said).encode("utf-8"))

    def _send(self, status: int, kind: str, content: bytes) -> None:
        self.send_response(status, "")
        for name, value in (
            ("Content-Type", kind),
            ("Content-Length", str(len(content))),
            ("Content-Security-Policy", self.server.page.policy),
            ("X-Content-Type-Options", "nosniff"),
            ("Referrer-Policy", "no-referrer"),
            ("Cache-Control", "no-store"),
            ("Cross-Origin-Resource-Policy", "same-origin"),
            ("Connection", "close"),
        ):
            self.send_header(name, value)
        self.end_headers()
        self.wfile.write(content)

    def _hear_out(self) -> None:
        """Let a refused sender end: a connection shut on what it still sends loses the answer."""
        if self.heard_all or self.command != "PUT":
            return
        length = self.headers.get("Content-Length") or ""
        known = self.let_in and length.isascii() and length.isdigit() and len(length) < 9
        seconds = limits.body_seconds(int(length)) if known else limits.REFUSED_SECONDS
        self.server.allow(self.connection, seconds)
        self.wfile.flush()
        with suppress(OSError):
            if not self.server.locked:  # a lock has no half of it to close
                self.connection.shutdown(socket.SHUT_WR)
            end = time.monotonic() + seconds
            while time.monotonic() < end and self.rfile.read1(_PIECE):
                pass
