"""One window for a shop on this computer: a second start brings the first one forward.

Two windows would do no harm, but a person who starts the program twice wants the one that is there.
"""

from __future__ import annotations

import getpass
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCryptographicHash, QDir, QObject, QTimer, Signal, Slot

if TYPE_CHECKING:
    from PySide6.QtNetwork import QLocalServer

_SOON_MS, _ANSWER_MS = 300, 1500
_LATER_MS = 500  # the page that somebody opened the window for is shown first


def brought_forward(folder: Path) -> bool:
    """Tell whether a window of this user has the shop of a folder open; it comes forward then."""
    if not _may_be_there(folder):
        return False
    from PySide6.QtNetwork import QLocalServer, QLocalSocket

    caller = QLocalSocket()
    caller.connectToServer(_name(folder))
    # A window that hangs is connected to all the same, by the system: it has to answer.
    there = caller.waitForConnected(_SOON_MS) and caller.waitForReadyRead(_ANSWER_MS)
    if caller.error() == QLocalSocket.LocalSocketError.ConnectionRefusedError:
        QLocalServer.removeServer(_name(folder))  # of a program that was killed
    caller.abort()
    return there


class OneWindow(QObject):
    """Answers for a window; `wanted` says that somebody has started the program once more."""

    wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._server: QLocalServer | None = None
        self._folder = Path()
        self._later = QTimer(self, singleShot=True, interval=_LATER_MS)
        self._later.timeout.connect(self._hold)

    def close(self) -> None:
        """Answer no more: the window is going."""
        self._later.stop()
        if self._server is not None:
            self._server.close()

    @Slot(object)
    def hold_later(self, folder: Path) -> None:
        """Answer for the shop of a folder as soon as its first page was shown."""
        self._folder = folder
        self._later.start()

    @Slot()
    def _hold(self) -> None:
        self.hold(self._folder)

    def hold(self, folder: Path) -> None:
        """Answer for the shop of a folder from now on, and for no other."""
        from PySide6.QtNetwork import QLocalServer

        self.close()
        self._server = server = QLocalServer(self)
        server.setSocketOptions(QLocalServer.SocketOption.UserAccessOption)
        server.newConnection.connect(self._called)
        if not server.listen(_name(folder)) and not brought_forward(folder):
            QLocalServer.removeServer(_name(folder))  # of a program that was killed, or hangs
            server.listen(_name(folder))

    @Slot()
    def _called(self) -> None:
        assert self._server is not None
        caller = self._server.nextPendingConnection()
        caller.disconnected.connect(caller.deleteLater)
        caller.write(b"!")
        caller.flush()
        self.wanted.emit()


def _name(folder: Path) -> str:
    said = f"{getpass.getuser()} {folder.resolve()}".encode()
    # Qt's own, which is there already: Python's would be loaded before the frame is painted.
    digest = QCryptographicHash.hash(said, QCryptographicHash.Algorithm.Sha256).toHex()
    name = f"benchwitness-{bytes(digest.data()).decode()[:16]}"
    return str(Path(QDir.tempPath()) / name) if _is_a_file() else name


def _is_a_file() -> bool:
    """Tell whether the place where windows answer is a file, which can be looked for."""
    return sys.platform == "linux"


def _may_be_there(folder: Path) -> bool:
    """Tell whether a call may be answered: mostly nobody is there, and calling takes loading."""
    return not _is_a_file() or Path(_name(folder)).exists()
