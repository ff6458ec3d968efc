"""A way to a server that takes its time: how often somebody waits for it can then be counted."""

from __future__ import annotations

import queue
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from time import monotonic, sleep


@contextmanager
def far_away(port: int, one_way_s: float) -> Iterator[int]:
    """Give a port of this computer that leads to another, so many seconds each way."""
    with socket.create_server(("127.0.0.1", 0)) as door:
        threading.Thread(target=_let_in, args=(door, port, one_way_s), daemon=True).start()
        yield door.getsockname()[1]


def _let_in(door: socket.socket, port: int, one_way_s: float) -> None:
    with suppress(OSError):  # the door is closed at the end
        while True:
            here, _ = door.accept()
            there = socket.create_connection(("127.0.0.1", port))
            for one in (here, there):
                one.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
            for ends in ((here, there), (there, here)):
                on_the_way: queue.Queue[tuple[float, bytes]] = queue.Queue()
                for leg in (_set_off, _arrive):
                    way = (*ends, on_the_way, one_way_s)
                    threading.Thread(target=leg, args=way, daemon=True).start()


def _set_off(
    here: socket.socket, _there: socket.socket, way: queue.Queue[tuple[float, bytes]], takes: float
) -> None:
    said = b"?"
    while said:
        try:
            said = here.recv(65536)
        except OSError:
            said = b""
        way.put((monotonic() + takes, said))


def _arrive(
    _here: socket.socket, there: socket.socket, way: queue.Queue[tuple[float, bytes]], _: float
) -> None:
    with suppress(OSError):
        while True:
            due, said = way.get()
            sleep(max(0.0, due - monotonic()))
            if not said:
                there.close()
                return
            there.sendall(said)
