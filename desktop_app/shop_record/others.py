"""What others write into the same record, heard as it happens; and whether its server is there.

A server tells of each deed by itself (LISTEN); the embedded record is asked twice a second whether
its file has changed, which costs some microseconds and holds nothing.
"""

from __future__ import annotations

import json
import sqlite3
import threading
from collections.abc import Callable, Collection
from contextlib import suppress
from time import monotonic
from typing import Any

from sqlalchemy import Connection, select
from sqlalchemy.exc import DBAPIError

from desktop_app.shop_record.databases import dialect_postgres
from desktop_app.shop_record.past.history import last_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_folder import read_place
from desktop_app.shop_record.server.server_refusal import as_refusal
from desktop_app.shop_record.server.server_trouble import ServerLost, ServerRefuses, server_lost
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble

ASKED_S = 0.4
BEAT_S = 2.0  # after which it is asked whether it is there: a server that hangs closes nothing
AGAIN_S = 1.0  # after which a server that was lost is tried again
REFUSED_S = 5.0  # ... one that lets nobody in: too many tries lock a login out
SHORT_S = 0.05  # that may be waited for in the window
MOST_READ = 300  # entries; of more of them nobody reads which tables they touched


class Others(threading.Thread):
    """Watches one open record until it is stopped; all it tells comes from its own thread.

    `wrote(number)` tells the last entry of the history, whoever wrote it; `there(False)` and
    `there(True)` tell that the server went and came back.
    """

    def __init__(
        self, record: ShopRecord, wrote: Callable[[int], None], there: Callable[[bool], None]
    ) -> None:
        super().__init__(name="others", daemon=True)
        self._record, self._wrote, self._there = record, wrote, there
        self._ended = threading.Event()
        self._telling = threading.Lock()
        self._lost: ServerLost | None = None

    def stop(self) -> None:
        """Stop: nothing is told any more once this returns. The thread may be connecting yet."""
        self._ended.set()
        with self._telling:
            self._record.is_watched = False
        self.join(SHORT_S)  # else it finds out by itself, and closes what it has open

    def run(self) -> None:
        """Watch, and begin again wherever that breaks off."""
        self._record.is_watched = self._record.on_server
        self._record.hurry()
        while not self._ended.is_set():
            why = None
            try:
                self._watch()
            except DBAPIError as error:
                why = self._refusal(error)
            except (sqlite3.Error, OSError):
                pass  # it is asked again
            if self._record.on_server:
                self._tell_lost(why or server_lost())
            self._ended.wait(AGAIN_S if why is None else REFUSED_S)

    def _watch(self) -> None:
        connection = self._record.listening()
        try:
            raw: Any = connection.connection.driver_connection
            if self._record.on_server:
                self._listen(raw)
            else:
                self._ask(raw)
        finally:
            with suppress(Exception):
                connection.invalidate()  # a listener is no connection for anybody else
            connection.close()

    def _listen(self, raw: Any) -> None:
        import psycopg

        try:
            raw.one_by_one()
            raw.execute(f"LISTEN {dialect_postgres.CHANNEL}")
            self._tell_back()
            heard, asked = True, monotonic()
            while not self._ended.is_set():
                if heard:  # any login may say anything there: the record itself is believed
                    last = raw.execute("SELECT COALESCE(max(seq), 0) FROM history").fetchone()
                    self._tell(self._wrote, int(last[0]))
                heard = any(list(raw.notifies(timeout=ASKED_S, stop_after=1)))
                is_doubted = self._record.away is not None  # somebody else met trouble: is it so?
                if is_doubted or monotonic() - asked > BEAT_S:
                    raw.execute("SELECT 1")
                    asked = monotonic()
                if is_doubted:
                    self._tell_back()
        except psycopg.Error:
            return

    def _ask(self, raw: sqlite3.Connection) -> None:
        seen = None
        while not self._ended.wait(ASKED_S):
            now = raw.execute("PRAGMA data_version").fetchone()[0]
            if now != seen:
                last = raw.execute("SELECT COALESCE(max(seq), 0) FROM history").fetchone()
                seen = now
                self._tell(self._wrote, int(last[0]))

    def _refusal(self, error: DBAPIError) -> ServerLost | None:
        """Return why a server that is there lets nobody in; None where it is not there."""
        if not self._record.on_server:
            return None
        try:
            address = read_place(self._record.folder).address
        except ShopTrouble:  # the file was damaged meanwhile: nobody knows why, so it is away
            return None
        refused = as_refusal(error, address)
        return None if isinstance(refused, ServerLost) else ServerRefuses.of(refused)

    def _tell_lost(self, why: ServerLost) -> None:
        if self._ended.is_set():
            return
        self._record.away = why.anew()
        self._record.forget_idle()
        if type(why) is not type(self._lost):
            self._lost = why
            self._tell(self._there, False)

    def _tell_back(self) -> None:
        was_away = self._record.away is not None
        self._record.away = None
        if self._lost is not None or was_away:
            self._lost = None
            self._tell(self._there, True)

    def _tell(self, whom: Callable[[Any], None], what: Any) -> None:
        """Tell something, unless it was stopped: who would hear it may be gone by then."""
        with self._telling:
            if not self._ended.is_set():
                whom(what)


def touched_by_others(
    connection: Connection, since: int, own: Collection[int]
) -> tuple[int, frozenset[str] | None]:
    """Return the last entry, and the tables that entries after `since` touched, our own left out.

    None stands for "perhaps all of them", where there are very many entries.
    """
    last = last_number(connection)
    if last - since > MOST_READ:
        return last, None
    wanted = select(HistoryEntry.seq, HistoryEntry.body).where(HistoryEntry.seq > since)
    touched: set[str] = set()
    for seq, body in connection.execute(wanted):
        if seq not in own:
            facts = json.loads(body)
            touched |= {one["table"] for one in (*facts["changes"], *facts.get("bulk", ()))}
    return last, frozenset(touched)
