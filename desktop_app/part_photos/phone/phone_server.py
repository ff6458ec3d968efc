"""Listens for phones on one address, in threads beside the window, and cuts whoever is late."""

from __future__ import annotations

import errno
import logging
import os
import socket
import ssl
import sys
import threading
from contextlib import suppress
from http.server import ThreadingHTTPServer
from time import monotonic
from typing import Any

from desktop_app.language import tr
from desktop_app.part_photos.phone import limits
from desktop_app.part_photos.phone.in_tray import InTray
from desktop_app.part_photos.phone.page import read_page
from desktop_app.part_photos.phone.session import Session
from desktop_app.part_photos.phone.visit import Visit
from desktop_app.shop_record.trouble import ShopTrouble

PORT = 47_811  # the same each time, so that a firewall can be told; any other where it is taken
_LOOK_SECONDS = 0.1
_ROOM = 1 << 20  # bytes


class PhoneServer(ThreadingHTTPServer):
    """The server of one session; what travels is locked where it is given a context for that.

    `here` is its address as a browser names it, `origin` the same with how it is spoken to.
    """

    daemon_threads = True
    block_on_close = False
    allow_reuse_address = os.name != "nt"  # there it would let another program listen too
    request_queue_size = 16

    def __init__(
        self,
        address: str,
        session: Session,
        tray: InTray,
        lock: ssl.SSLContext | None = None,
    ) -> None:
        self.session = session
        self.tray = tray
        self.page = read_page()
        self._lock_with = lock
        self._late: dict[socket.socket, float] = {}
        self._counted: dict[socket.socket, str] = {}
        self._lock = threading.Lock()
        self._closed = False
        super().__init__((address, PORT), Visit, bind_and_activate=False)
        self._listen(address)
        host, port = self.server_address[:2]
        self.here = f"{host!s}:{port}"
        self.origin = f"{'https' if lock else 'http'}://{self.here}"
        self._thread = threading.Thread(target=self._serve, name="phone page", daemon=True)

    def server_bind(self) -> None:
        """Bind without asking a name server what this computer is called."""
        socket_address = self.server_address
        if self.allow_reuse_address:
            self.socket.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        # What comes while the last piece is summed up waits here, and not on the phone.
        self.socket.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, _ROOM)
        self.socket.bind(socket_address)
        self.server_address = self.socket.getsockname()

    def url(self) -> str:
        """Return what a phone opens; what stands behind # never leaves it but as the key."""
        return f"{self.origin}/#{self.session.key}"

    @property
    def locked(self) -> bool:
        """Tell whether what travels is locked."""
        return self._lock_with is not None

    def get_request(self) -> tuple[socket.socket, Any]:
        """Take the next connection; keys are agreed on later, in its own thread and its time."""
        request, address = super().get_request()
        if self._lock_with is not None:
            request = self._lock_with.wrap_socket(
                request, server_side=True, do_handshake_on_connect=False
            )
        return request, address

    def start(self) -> None:
        """Begin to listen."""
        self._thread.start()

    def end(self) -> None:
        """Stop listening and cut whoever is connected; waits a tenth of a second at most."""
        self.session.end()
        if self._thread.is_alive():
            self.shutdown()
            self._thread.join()
        self.server_close()
        with self._lock:
            self._closed = True
            left = list(self._late)
        for connection in left:
            _cut(connection)

    def allow(self, connection: socket.socket, seconds: float) -> None:
        """Give a connection so much time from now."""
        with self._lock:
            self._late[connection] = monotonic() + seconds

    def service_actions(self) -> None:
        """Cut whoever is late; called a few times a second."""
        now = monotonic()
        with self._lock:
            late = [each for each, until in self._late.items() if until < now]
        for connection in late:
            _cut(connection)

    def process_request(self, request: Any, client_address: Any) -> None:
        """Begin a thread for a connection, where there is room for one."""
        address = str(client_address[0])
        if not self.session.traffic.enter(address):
            self._no_room(request)
            return
        with self._lock:
            self._late[request] = monotonic() + limits.TURN_SECONDS + limits.HEADER_SECONDS
            closed = self._closed
        if closed:
            _cut(request)
        super().process_request(request, client_address)

    def process_request_thread(self, request: Any, client_address: Any) -> None:
        """Answer one connection when its turn has come, and count it out."""
        address = str(client_address[0])
        if not self.session.traffic.turn(address, limits.TURN_SECONDS):
            self._no_room(request)
            return
        with self._lock:
            self._counted[request] = address
        self.allow(request, limits.HEADER_SECONDS)
        try:
            super().process_request_thread(request, client_address)
        finally:
            self.count_out(request)

    def count_out(self, connection: socket.socket) -> None:
        """Make room for the next one: before a phone hears its answer, for it comes at once."""
        with self._lock:
            address = self._counted.pop(connection, None)
        if address is not None:
            self.session.traffic.leave(address)

    def shutdown_request(self, request: Any) -> None:
        """Close a connection, and forget when it would have been late."""
        with self._lock:
            self._late.pop(request, None)
        super().shutdown_request(request)

    def handle_error(self, request: Any, client_address: Any) -> None:
        """Pass over connections that broke; a mistake of the program goes into its log."""
        if not isinstance(sys.exc_info()[1], OSError):
            logging.getLogger("benchwitness").exception("a request from the phone failed")

    def _serve(self) -> None:
        self.serve_forever(_LOOK_SECONDS)

    def _listen(self, address: str) -> None:
        try:
            try:
                self._take((address, PORT))
            except OSError as error:
                if error.errno != errno.EADDRINUSE:
                    raise
                self.socket.close()
                self.socket = socket.socket(self.address_family, self.socket_type)
                self._take((address, 0))
        except OSError as error:
            self.server_close()
            raise ShopTrouble(
                tr(
                    "The page for phones can't be opened at {address}: {reason}.",
                    address=address,
                    reason=error.strerror,
                ),
                do=tr("Choose another address of this computer."),
            ) from error

    def _take(self, address: tuple[str, int]) -> None:
        self.server_address = address
        self.server_bind()
        self.server_activate()

    def _no_room(self, request: socket.socket) -> None:
        with suppress(OSError):
            if self.locked:  # no words before the keys are agreed on
                raise ConnectionAbortedError
            request.settimeout(0.1)
            request.sendall(b"HTTP/1.0 503 \r\nRetry-After: 2\r\nConnection: close\r\n\r\n")
        self.shutdown_request(request)


def _cut(connection: socket.socket) -> None:
    with suppress(OSError):
        # Past the lock's own way, which would wait for whoever is cut.
        socket.socket.shutdown(connection, socket.SHUT_RDWR)
