"""Entries of the history read a piece at a time, so that nobody who writes waits for the reader."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from typing import Any, NamedTuple

from sqlalchemy import Select, select

from desktop_app.language import tr
from desktop_app.shop_record.past.history import GENESIS, chained_hash
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopDamaged

AT_A_TIME = 1000  # entries


class EntryKept(NamedTuple):
    """One entry as it is kept; `at` is an ISO moment by the clock of its computer."""

    seq: int
    at: str
    words: str
    who: str
    reverses: int | None
    body: str
    hash: str

    @property
    def inner_hash(self) -> str:
        """The hash of the body alone, as `chained_hash` takes it."""
        return hashlib.sha256(b"\x00" + self.body.encode()).hexdigest()


_ENTRIES = select(
    HistoryEntry.seq,
    HistoryEntry.at,
    HistoryEntry.words,
    HistoryEntry.who,
    HistoryEntry.reverses,
    HistoryEntry.body,
    HistoryEntry.hash,
)


def hash_before(record: ShopRecord, seq: int) -> str:
    """Return the hash that the entry `seq` was chained to."""
    wanted = select(HistoryEntry.hash).where(HistoryEntry.seq == seq - 1)
    with record.reading() as connection:
        return str(connection.execute(wanted).scalar() or GENESIS)


def newest_first(record: ShopRecord, below: int) -> Iterator[list[EntryKept]]:
    """Give the entries below a number, the newest first, some at a time."""
    while below > 1:
        wanted = _ENTRIES.where(HistoryEntry.seq < below).order_by(HistoryEntry.seq.desc())
        piece = _read(record, wanted)
        if not piece:
            return
        yield piece
        below = piece[-1].seq


def oldest_first(record: ShopRecord, first: int, last: int) -> Iterator[list[EntryKept]]:
    """Give the entries from the first to the last number, some at a time, each held to its hash.

    Raises ShopDamaged at the first that is missing or is not as it was written.
    """
    previous, expected = hash_before(record, first), first
    while expected <= last:
        wanted = _ENTRIES.where(HistoryEntry.seq.between(expected, last)).order_by(HistoryEntry.seq)
        piece = _read(record, wanted)
        if not piece:
            raise _not_whole(expected)
        for entry in piece:
            if entry.seq != expected or not _holds(previous, entry):
                raise _not_whole(expected)
            previous, expected = entry.hash, expected + 1
        yield piece


def _read(record: ShopRecord, wanted: Select[*tuple[Any, ...]]) -> list[EntryKept]:
    with record.reading() as connection:
        return list(map(EntryKept._make, connection.execute(wanted.limit(AT_A_TIME))))


def _holds(previous: str, entry: EntryKept) -> bool:
    try:
        return chained_hash(previous, entry.seq, entry.body) == entry.hash
    except (ValueError, TypeError, AttributeError):
        return False  # what stands there is no hash or no text any more


def _not_whole(seq: int) -> ShopDamaged:
    return ShopDamaged(
        tr("Entry {seq} of the history is missing or was changed after it was written.", seq=seq),
        kept=tr("No sealed copy was made."),
        do=tr("See what “benchwitness check” says, and go back to your last good backup."),
    )
