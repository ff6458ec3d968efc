"""One look at the record: what a thread asks in many places, asked on one connection."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, ExitStack, contextmanager, suppress

from sqlalchemy import Connection
from sqlalchemy.exc import DBAPIError

from desktop_app.shop_record.trouble import ShopTrouble

Begin = Callable[[], AbstractContextManager[Connection]]


class OneLook(threading.local):
    """Begins to read: with each question, or once while a look is taken; each thread for itself."""

    def __init__(self, begin: Begin) -> None:
        self._begin = begin
        self._taken = False
        self._opened = ExitStack()
        self._connection: Connection | None = None

    @contextmanager
    def taken(self) -> Iterator[None]:
        """Take a look: what this thread reads meanwhile, it reads in one go; within one, go on."""
        outer, self._taken = self._taken, True
        try:
            yield
        finally:
            self._taken = outer
            if not outer:
                self.end()

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """Give a connection to read from: the look's, or one for this question alone."""
        if not self._taken:
            with self._begin() as connection:
                yield connection
            return
        if self._connection is None:
            self._connection = self._opened.enter_context(self._begin())
        try:
            yield self._connection
        except BaseException:
            self._connection = None  # a database may answer nothing more on it
            raise

    def end(self) -> None:
        """Let go of what the look was read from; what is asked further is asked anew."""
        opened, self._opened, self._connection = self._opened, ExitStack(), None
        with suppress(DBAPIError, ShopTrouble):  # nothing was written: whatever is lost, is not
            opened.close()
