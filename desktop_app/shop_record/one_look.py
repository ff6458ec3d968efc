"""One look at the record: what a thread asks in many places, asked on one connection."""

from __future__ import annotations

import sys
import threading
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, ExitStack, contextmanager, suppress

from sqlalchemy import Connection
from sqlalchemy.exc import SQLAlchemyError

from desktop_app.shop_record.trouble import ShopTrouble

Begin = Callable[[], AbstractContextManager[Connection]]
Told = Callable[[], AbstractContextManager[None]]


class OneLook(threading.local):
    """The connection that a thread's questions share while it takes a look; each thread its own.

    `told` is what an error goes through, so that everybody hears of a server that was lost.
    """

    def __init__(self) -> None:
        self._taken = False
        self._asking = 0  # questions under way, one within the other
        self._failed = False
        self._opened = ExitStack()
        self._connection: Connection | None = None

    @contextmanager
    def taken(self, told: Told) -> Iterator[None]:
        """Take a look: what this thread reads meanwhile, it reads in one go; within one, go on."""
        outer, self._taken = self._taken, True
        try:
            yield
        finally:
            self._taken = outer
            if not outer:
                self.end(told)

    @contextmanager
    def reading(self, begin: Begin, told: Told) -> Iterator[Connection]:
        """Give a connection to read from: the look's, or one for this question alone.

        What failed is given back at once: a database may answer nothing more there, and a record
        that is still being read can't be written.
        """
        if not self._taken:
            with begin() as connection:
                yield connection
            return
        if self._connection is None:
            self._connection = self._opened.enter_context(begin())
        self._asking += 1
        try:
            yield self._connection
        except BaseException:
            self._failed = True
            raise
        finally:
            self._asking -= 1
            if self._failed and not self._asking:
                self.end(told)

    def end(self, told: Told) -> None:
        """Let go of what the look was read from; what is asked further is asked anew."""
        opened, self._opened = self._opened, ExitStack()
        failed, self._failed, self._connection = self._failed, False, None
        # Nothing was written: whatever goes wrong now, nothing is lost.
        with suppress(SQLAlchemyError, ShopTrouble), told():
            opened.__exit__(*(sys.exc_info() if failed else (None, None, None)))
