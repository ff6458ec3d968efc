"""Which deeds take so long to undo, or to do again, that nobody waits for them at the window."""

from __future__ import annotations

from collections.abc import Callable

from sqlalchemy import Connection, func, select

from desktop_app.shop_record.past.history import Entry, done_in, entry_of, stacks
from desktop_app.shop_record.tables import HistoryEntry

# Called now and then with how many rows of how many are reversed; what it raises takes it back.
Tell = Callable[[int, int], None]

_ROWS = 1_000  # in ranges, some 20 ms
_CHANGES = 100  # one by one, some 50 ms
_LETTERS = 300_000  # of an entry that says each change; it isn't even read then


def nobody_waits(done: int, of: int) -> None:
    """Hear how far it is, for who doesn't want to know."""


def next_is_long(connection: Connection, which: int, place: str | None = None) -> bool:
    """Tell whether the next undo (0) or redo (1) takes long; `place` as in `stacks`."""
    stack = stacks(connection, place)[which]
    return bool(stack) and is_long(connection, stack[-1])


def is_long(connection: Connection, entry: Entry) -> bool:
    """Tell whether the reverse of an entry takes long.

    It is as long as the deed that was there first: what took that back holds all of its rows, and
    is long to read.
    """
    while entry.reverses is not None and (before := entry_of(connection, entry.reverses)):
        entry = before
    letters = select(func.length(HistoryEntry.body)).where(HistoryEntry.seq == entry.seq)
    if connection.execute(letters).scalar_one() > _LETTERS:
        return True
    changes, bulk = done_in(connection, entry.seq)
    return len(changes) > _CHANGES or sum(one.rows for one in bulk) > _ROWS
