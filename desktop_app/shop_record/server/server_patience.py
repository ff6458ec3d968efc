"""How long an answer of the server is waited for: a silence longer than that ends the connection.

A server may hang while its computer still answers for it, or its cable may be pulled: then nobody
says anything, ever. So each connection minds how long it has heard nothing. What the window waits
for is short; long work beside it has its own patience.
"""

from __future__ import annotations

import threading
from collections.abc import Generator
from time import monotonic
from typing import Any, TypeVar

import psycopg
from psycopg.errors import OperationalError, QueryCanceled
from psycopg.waiting import Ready

from desktop_app.language import tr

T = TypeVar("T")

SHORT_S = 4.0  # the window stands still for no longer where the server says nothing to anybody
SLOW_S = 20.0  # ... and for no longer where it answers others, so that it is only slow
BESIDE_S = 60.0  # the same beside a window, from which somebody asks every two seconds
LONG_S = 900.0  # no single answer takes longer
CONNECT_S, CONNECT_SHORT_S = 5, 3


class Patience:
    """What all connections of one engine have heard, and how long each thread may wait."""

    def __init__(self) -> None:
        self._in_a_window = False  # somebody listens there, and asks now and then
        self._is_ending = False  # nobody may wait long any more: the window is being closed
        self._here = threading.local()  # it goes with its thread
        self._heard = 0.0
        self._lost_at = 0.0  # no connection from before is asked any more

    def forget_idle(self) -> None:
        """Let no connection be taken up again that was made before now."""
        self._lost_at = monotonic()

    def is_stale(self, made_at: float) -> bool:
        """Tell whether a connection comes from before its server was lost."""
        return made_at <= self._lost_at

    def hurry(self, everybody: bool) -> None:
        """Let nothing be waited for long that is asked from this thread, or from now on at all."""
        self._here.is_hurried = self._in_a_window = True
        self._is_ending |= everybody

    def heard(self) -> None:
        """Note that the server said something, to whomever."""
        self._heard = monotonic()

    def connect_seconds(self) -> int:
        """Return how long a connection may take to come about."""
        return CONNECT_SHORT_S if self._is_hurried() else CONNECT_S

    def end(self, silent_since: float) -> Exception | None:
        """Return what ends a silence of one connection; None while it may go on."""
        now, hurried = monotonic(), self._is_hurried()
        beside = BESIDE_S if self._in_a_window else LONG_S
        if now - max(silent_since, self._heard) > (SHORT_S if hurried else beside):
            return _given_up(OperationalError(tr("The server is silent.")))
        if now - silent_since > (SLOW_S if hurried else LONG_S):
            return _given_up(QueryCanceled(tr("The server takes too long.")))
        return None

    def _is_hurried(self) -> bool:
        return self._is_ending or getattr(self._here, "is_hurried", False)


class PatientConnection(psycopg.Connection[Any]):
    """A connection that is closed as soon as its silence has lasted too long."""

    patience: Patience | None = None
    made_at = 0.0  # by the clock that only goes on

    def wait(self, gen: Generator[Any, Any, T], *args: Any, **more: Any) -> T:
        """Wait as the driver does, and no longer than the patience of this thread."""
        patience = self.patience
        return super().wait(gen if patience is None else self._minded(gen, patience), *args, **more)

    def _minded(self, gen: Generator[Any, Any, T], patience: Patience) -> Generator[Any, Any, T]:
        """Go through what the driver waits for, and look at the clock whenever nothing comes."""
        try:
            wanted = next(gen)
            since = monotonic()
            while True:
                ready = yield wanted
                if ready:
                    since = monotonic()
                    if ready & Ready.R:
                        patience.heard()
                elif (end := patience.end(since)) is not None:
                    self.pgconn.finish()
                    raise end
                wanted = gen.send(ready)
        except StopIteration as over:
            return over.value  # type: ignore[no-any-return]


def _given_up(error: psycopg.Error) -> psycopg.Error:
    """Mark an error of the driver's own as ours: whether the server did it nobody knows."""
    error.gave_up = True  # type: ignore[attr-defined]
    return error
