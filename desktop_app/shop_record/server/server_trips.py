"""A connection to a server that waits for answers only where something is asked.

Over a network each answer that is waited for costs a way there and back. What gives no rows goes
out at once but its answer is heard with the next question's, or with the commit; a deed then waits
three times and not nine. A refusal comes later too, but always before anything is committed.
"""

from __future__ import annotations

import re
import selectors
from contextlib import AbstractContextManager, suppress
from typing import Any, cast

import psycopg
from psycopg.pq import TransactionStatus

from desktop_app.shop_record.server.server_patience import PatientConnection

_GIVES_NO_ROWS = re.compile(
    r"\s*(BEGIN|LOCK|SET|SAVEPOINT|RELEASE|(INSERT|UPDATE|DELETE)\b(?!.*\bRETURNING\b))\b",
    re.IGNORECASE | re.DOTALL,
)


class FewTrips(PatientConnection):
    """A connection in pipeline mode from its first transaction on; `waiting` for some answer."""

    waiting = False
    _pipeline_way_out: AbstractContextManager[psycopg.Pipeline] | None = None
    _together: psycopg.Pipeline | None = None

    def ask_together(self) -> None:
        """Wait from now on for the answers to questions alone."""
        if self._together is None:
            self._pipeline_way_out = self.pipeline()
            self._together = self._pipeline_way_out.__enter__()

    def one_by_one(self) -> None:
        """Wait for every answer again: COPY, LISTEN and rows read in pieces know no other way."""
        if self._pipeline_way_out is not None:
            way_out, self._pipeline_way_out = self._pipeline_way_out, None
            self._together, self.waiting = None, False
            way_out.__exit__(None, None, None)

    def ask_ahead(self, query: str) -> psycopg.Cursor[Any]:
        """Return a cursor that the answer comes to, together with the next that is waited for."""
        cursor = psycopg.Cursor(self)
        cursor.execute(query)
        self.waiting = True
        return cursor

    def said(self, query: str) -> None:
        """Hear the answers so far where what was said last gives rows."""
        if self._together is not None:
            self.waiting = True
            if not _GIVES_NO_ROWS.match(query):
                self.hear()

    def hear(self) -> None:
        """Hear the answers to all that was said; the first refusal is raised."""
        if self._together is not None and self.waiting:
            self.waiting = False
            self._together.sync()

    def commit(self) -> None:
        """Commit, hearing all answers that are due."""
        if self._is_idle():
            self.hear()  # the answer to BEGIN itself may be due
        self.waiting = False
        super().commit()

    def rollback(self) -> None:
        """Take back what was not committed; where that is nothing, the server isn't asked."""
        if self.waiting or not self._is_idle():
            self.waiting = False
            self._hear_the_rest()
            super().rollback()

    def _hear_the_rest(self) -> None:
        """Hear the answers that follow a refusal: of what was said after it nothing was done."""
        while self._together is not None:
            try:
                return self._together.sync()
            except psycopg.errors.PipelineAborted:
                continue
            except psycopg.Error:
                return None

    def cursor(self, *args: Any, **more: Any) -> Any:
        """Return a cursor; one with a name stays at the server, and reads in pieces."""
        if args or "name" in more:
            self.one_by_one()
        return super().cursor(*args, **more)

    def close(self) -> None:
        """Close without waiting for anything."""
        super().close()
        with suppress(psycopg.Error):
            self.one_by_one()

    def __del__(self, _warn: Any = None) -> None:
        """Close with a pool that was given up while somebody still used this connection."""
        with suppress(AttributeError, psycopg.Error):  # it may never have come about
            self.pgconn.finish()

    def was_cut_off(self) -> bool:
        """Tell, without asking, whether the server has closed this idle connection."""
        if self.closed:
            return True
        with selectors.DefaultSelector() as idle:
            idle.register(self.fileno(), selectors.EVENT_READ)
            return bool(idle.select(0))

    def _is_idle(self) -> bool:
        return self.pgconn.transaction_status == TransactionStatus.IDLE


class FewTripsCursor(psycopg.Cursor[Any]):
    """A cursor of such a connection."""

    def execute(self, query: Any, *args: Any, **more: Any) -> Any:
        """Say something, waiting where it gives rows."""
        super().execute(query, *args, **more)
        cast(FewTrips, self.connection).said(str(query))
        return self

    def executemany(self, query: Any, *args: Any, **more: Any) -> None:
        """Say the same with many values."""
        super().executemany(query, *args, **more)
        cast(FewTrips, self.connection).said(str(query))

    def copy(self, *args: Any, **more: Any) -> Any:
        """Write or read many rows."""
        cast(FewTrips, self.connection).one_by_one()
        return super().copy(*args, **more)
