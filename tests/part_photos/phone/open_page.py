"""The page for phones, open on this computer alone, and a phone that speaks plain HTTP."""

from __future__ import annotations

import hashlib
import http.client
import json
import socket
import ssl
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from desktop_app.part_photos.phone.in_tray import InTray
from desktop_app.part_photos.phone.offer import Offer
from desktop_app.part_photos.phone.own_certificate import FILE, Lock
from desktop_app.part_photos.phone.phone_server import PhoneServer
from desktop_app.part_photos.phone.session import Session
from tests.part_photos.bench_pictures import encoded, noisy

OFFER = Offer(
    "0123456789abcdef", "J-101", "brake pads front left", ("face", "back"), "removed", "face"
)
PLACE = "0123456789abcdef.0.1"
PHOTO = encoded(noisy(320, 240))


@dataclass
class OpenPage:
    """A running server with what it told the window."""

    shop: Path
    came: list[str] = field(default_factory=list)
    lock: Lock | None = None

    def __post_init__(self) -> None:
        self.shop.mkdir(exist_ok=True)
        self.tray = InTray(self.shop)
        self.session = Session(self.came.append)
        self.session.offer(OFFER)
        context = self.lock.context if self.lock else None
        self.server = PhoneServer("127.0.0.1", self.session, self.tray, context)
        self.server.start()

    @property
    def at(self) -> tuple[str, int]:
        """Where it listens."""
        host, _, port = self.server.here.partition(":")
        return host, int(port)

    def heads(self, content: bytes = PHOTO, **other: str | None) -> dict[str, str]:
        """The heads of a sending that is taken; `other` puts one in its place, None leaves it out.

        Underscores stand for dashes.
        """
        heads: dict[str, str | None] = {
            "Host": self.server.here,
            "X-Bay-Key": self.session.key,
            "Origin": self.server.origin,
            "X-Photo-SHA256": hashlib.sha256(content).hexdigest(),
            "X-Photo-Place": PLACE,
            "X-Photo-Name": "IMG_1.jpg",
            "Content-Length": str(len(content)),
        }
        heads |= {name.replace("_", "-"): value for name, value in other.items()}
        return {name: value for name, value in heads.items() if value is not None}

    def ask(
        self, method: str, path: str, heads: dict[str, str], body: bytes = b""
    ) -> tuple[int, dict[str, Any]]:
        """Send one request as it stands here and return the status and what is said."""
        line = self.line()
        try:
            line.putrequest(method, path, skip_host=True, skip_accept_encoding=True)
            for name, value in heads.items():
                line.putheader(name, value)
            line.endheaders(body)
            answer = line.getresponse()
            return answer.status, json.loads(answer.read() or b"{}")
        finally:
            line.close()

    def line(self) -> http.client.HTTPConnection:
        """A connection as a phone makes it that was shown the certificate."""
        if self.lock is None:
            return http.client.HTTPConnection(*self.at, timeout=30)
        trusts = ssl.create_default_context(cafile=str(self.shop / FILE))
        return http.client.HTTPSConnection(*self.at, timeout=30, context=trusts)

    def send(self, content: bytes = PHOTO, **other: str | None) -> tuple[int, dict[str, Any]]:
        """Send a photo."""
        return self.ask("PUT", "/photo", self.heads(content, **other), content)

    def label(self, **other: str | None) -> tuple[int, dict[str, Any]]:
        """Ask what photos are taken for."""
        heads = self.heads(b"", X_Photo_SHA256=None, X_Photo_Place=None, X_Photo_Name=None)
        heads |= {name.replace("_", "-"): value for name, value in other.items() if value}
        return self.ask("POST", "/place", heads)

    def raw(self, sent: bytes, *, shut: bool = False) -> bytes:
        """Send bytes that need be no request, and return all that comes back."""
        with socket.create_connection(self.at, timeout=30) as line:
            line.sendall(sent)
            if shut:
                line.shutdown(socket.SHUT_WR)
            return heard(line)

    def head_bytes(self, **other: str | None) -> bytes:
        """The head of a sending as bytes."""
        lines = "".join(f"{name}: {value}\r\n" for name, value in self.heads(**other).items())
        return f"PUT /photo HTTP/1.1\r\n{lines}\r\n".encode("latin-1")

    def files(self) -> list[str]:
        """Every file below the folder of the shop."""
        found = self.shop.rglob("*")
        return sorted(file.relative_to(self.shop).as_posix() for file in found if file.is_file())

    def photos(self) -> list[bytes]:
        """The photos in the tray."""
        return [self.tray.read(one.name) for one in self.tray.waiting()]


def heard(line: socket.socket) -> bytes:
    """Return what comes until the other side ends, however it does."""
    found = b""
    try:
        while piece := line.recv(1 << 16):
            found += piece
    except (ConnectionError, ssl.SSLError):
        pass
    return found


@contextmanager
def open_page(shop: Path, lock: Lock | None = None) -> Iterator[OpenPage]:
    """Open the page and close it at the end."""
    page = OpenPage(shop, lock=lock)
    try:
        yield page
    finally:
        page.server.end()
