"""The last resort: what was not foreseen goes into the log file and a calm notice."""

from __future__ import annotations

import contextlib
import sys
import threading
from collections.abc import Callable
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING

from PySide6.QtCore import QMessageLogContext, QObject, QtMsgType, Signal, qInstallMessageHandler

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from logging import Logger

SAID = ShopTrouble(
    tr("Something went wrong that the program did not foresee."),
    kept=tr("What is saved is safe."),
    do=tr(
        "The details are in the shop's log; “Show the report” under Records In and Out has "
        "what can be sent of it."
    ),
)


class LastResort(QObject):
    """Catches mistakes of the main thread, of slots and of threads; `happened` is for the strip."""

    happened = Signal(object)  # ShopTrouble

    def install(self) -> None:
        """Take over from Python's and Qt's own ways of saying what went wrong."""
        self._busy = False
        sys.excepthook = self._from_python
        threading.excepthook = self._from_thread
        qInstallMessageHandler(_from_qt)

    def _from_python(
        self, kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        if isinstance(error, ShopTrouble):  # foreseen, but nobody was there to tell it
            self.happened.emit(error)
            return
        _log().error("not foreseen", exc_info=(kind, error, trace))
        if not self._busy:  # a raising paint would come here again and again
            self._busy = True
            self.happened.emit(SAID)
            self._busy = False

    def _from_thread(self, args: threading.ExceptHookArgs) -> None:
        _log().error("not foreseen in a thread", exc_info=args.exc_value)


def keep_log(folder: Path) -> Callable[[], None]:
    """Write the log into the shop's folder; returns what closes it. A full disk only goes quiet."""
    # Logging is loaded here and not above: the frame has to be painted before that.
    import faulthandler
    import logging
    from logging.handlers import RotatingFileHandler

    _log().setLevel(logging.INFO)
    try:
        handler = RotatingFileHandler(
            folder / "benchwitness.log", maxBytes=1_000_000, backupCount=2, encoding="utf-8"
        )
    except OSError:
        return lambda: None
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
    _log().addHandler(handler)
    with contextlib.suppress(OSError, ValueError):
        if handler.stream is not None:
            faulthandler.enable(handler.stream)

    def close() -> None:
        faulthandler.disable()
        _log().removeHandler(handler)
        handler.close()

    return close


def _log() -> Logger:
    import logging

    return logging.getLogger("benchwitness")


def _from_qt(kind: QtMsgType, _context: QMessageLogContext, words: str) -> None:
    if kind in (QtMsgType.QtDebugMsg, QtMsgType.QtInfoMsg):
        return
    if "propagateSizeHints" not in words:
        _log().warning("Qt: %s", words)
