"""The history: entries chained by SHA-256, and what can be undone or redone now."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterable
from datetime import date, datetime
from typing import Any, NamedTuple

from sqlalchemy import Connection, func, insert, select

from desktop_app.language import tr
from desktop_app.shop_record.bulk import BulkRows, reverse_bulk
from desktop_app.shop_record.checks.rows_expected import EntryHeard
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.databases.plain_text import plain_text
from desktop_app.shop_record.deed import Deed, RowChange
from desktop_app.shop_record.past.taken_back import taken_back_among
from desktop_app.shop_record.tables import Base, HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble

GENESIS = "0" * 64
UNDO_REACH = 2000  # entries looked back on for undo: at least a thousand deeds


class Entry(NamedTuple):
    """One entry as undo needs it."""

    seq: int
    words: str
    who: str
    reverses: int | None


def chained_hash(previous: str, seq: int, body: str) -> str:
    """Return the entry's hash: SHA-256(1, previous hash, number, SHA-256(0, body)), as hex.

    The body is hashed on its own first, so that one entry can be shown with only the hashes of
    the others.
    """
    inner = hashlib.sha256(b"\x00" + body.encode()).digest()
    outer = b"\x01" + bytes.fromhex(previous) + str(seq).encode() + inner
    return hashlib.sha256(outer).hexdigest()


def write_entry(deed: Deed, at: datetime, who: str, place: str, reverses: int | None) -> int:
    """Append the deed's entry in the deed's own transaction and return its number."""
    ahead = dialect.entry_asked_ahead(deed.connection)
    number, previous = last_entry(deed.connection) if ahead is None else ahead
    seq, previous = number + 1, previous or GENESIS
    stamp = at.isoformat(timespec="seconds")
    who, words = plain_text(who), plain_text(deed.words)
    facts: dict[str, Any] = {
        "at": stamp,
        "who": who,
        "place": place,
        "words": words,
        "reverses": reverses,
        "changes": [change._asdict() for change in deed.changes],
    }
    if deed.bulk:
        facts["bulk"] = [one.as_facts() for one in deed.bulk]
    body = json.dumps(facts, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    deed.entry = (seq, chained_hash(previous, seq, body))
    deed.connection.execute(
        insert(HistoryEntry).values(
            seq=seq,
            at=stamp,
            who=who,
            words=words,
            body=body,
            reverses=reverses,
            hash=deed.entry[1],
        )
    )
    return seq


def last_number(connection: Connection) -> int:
    """Return the number of the last entry; it goes up with every deed of every desk."""
    return connection.execute(select(func.max(HistoryEntry.seq))).scalar() or 0


def last_entry(connection: Connection) -> tuple[int, str]:
    """Return number and hash of the last entry; 0 and nothing where there is none."""
    wanted = select(HistoryEntry.seq, HistoryEntry.hash).order_by(HistoryEntry.seq.desc())
    last = connection.execute(wanted.limit(1)).first()
    return (0, "") if last is None else (last.seq, last.hash)


def hash_of(connection: Connection, seq: int) -> str | None:
    """Return the hash of an entry; None where there is no such entry."""
    return connection.execute(
        select(HistoryEntry.hash).where(HistoryEntry.seq == seq)
    ).scalar_one_or_none()


def first_entry(connection: Connection, since: date) -> int:
    """Return the number of the first entry of a day, halving the history: days have no index."""
    last = connection.execute(select(func.max(HistoryEntry.seq))).scalar() or 0
    low, high = 1, last + 1
    while low < high:
        middle = (low + high) // 2
        at = connection.execute(
            select(HistoryEntry.at)
            .where(HistoryEntry.seq >= middle)
            .order_by(HistoryEntry.seq)
            .limit(1)
        ).scalar()
        if at is not None and at < since.isoformat():
            low = middle + 1
        else:
            high = middle
    return low


def done_in(connection: Connection, seq: int) -> tuple[list[RowChange], list[BulkRows]]:
    """Return what one entry did: row changes and ranges of rows, in the order of the doing."""
    body = connection.execute(select(HistoryEntry.body).where(HistoryEntry.seq == seq)).scalar_one()
    facts = json.loads(body)
    changes = [RowChange(**change) for change in facts["changes"]]
    return changes, [BulkRows(**rows) for rows in facts.get("bulk", ())]


def entry_of(connection: Connection, seq: int) -> Entry | None:
    """Return one entry by its number, or None."""
    wanted = select(
        HistoryEntry.seq, HistoryEntry.words, HistoryEntry.who, HistoryEntry.reverses
    ).where(HistoryEntry.seq == seq)
    row = connection.execute(wanted).first()
    return None if row is None else Entry(*row)


def stacks(connection: Connection, place: str | None = None) -> tuple[list[Entry], list[Entry]]:
    """Return what can be undone and what can be redone, the next one last in each list.

    Of the deeds of one computer alone where that is named: nobody undoes by a key what somebody
    did at another desk. The body of an entry has sorted names and no spaces, and quotes inside of
    what people typed are escaped in it: so the computer is found by its letters.
    """
    wanted = select(HistoryEntry.seq, HistoryEntry.words, HistoryEntry.who, HistoryEntry.reverses)
    if place is not None:
        named = f'"place":{json.dumps(place, ensure_ascii=False)},"reverses":'
        wanted = wanted.where(HistoryEntry.body.contains(named, autoescape=True))
    reach = wanted.order_by(HistoryEntry.seq.desc()).limit(UNDO_REACH)
    if place is not None:
        last = select(func.max(HistoryEntry.seq)).scalar_subquery()
        reach = reach.where(HistoryEntry.seq > last - UNDO_REACH)
    rows = connection.execute(reach).all()
    return sort_out([Entry(*row) for row in reversed(rows)])


def sort_out(entries: Iterable[Entry]) -> tuple[list[Entry], list[Entry]]:
    """Replay entries into the two stacks: a new deed empties redo, a reverse moves one across.

    One that takes back a deed from further down is a deed of its own: it can be undone itself, and
    as long as it holds, the deed that it took back is not offered.
    """
    undo: list[Entry] = []
    redo: list[Entry] = []
    for entry in entries:
        if undo and undo[-1].seq == entry.reverses:
            undo.pop()
            redo.append(entry)
        elif redo and redo[-1].seq == entry.reverses:
            redo.pop()
            undo.append(entry)
        else:
            undo.append(entry)
            redo.clear()
    taken_back = taken_back_among(undo)
    return [entry for entry in undo if entry.seq not in taken_back], redo


def reverse(deed: Deed, seq: int) -> None:
    """Carry out the reverse of what entry `seq` did, last change first.

    Ranges of rows are added before and taken out after the rows that may hang on them. Refused
    with a ShopTrouble where a row no longer has the values that the entry left behind.
    """
    changes, bulk = done_in(deed.connection, seq)
    done, of = 0, len(changes) + sum(one.rows for one in bulk)

    def tell(rows: int) -> None:
        nonlocal done
        done += rows
        deed.tell(done, of)

    brings_back = any(one.gone is not None for one in bulk)
    if brings_back:
        deed.bulk.extend(reverse_bulk(deed.connection, bulk, tell))
    for change in reversed(changes):
        table = Base.metadata.tables[change.table]
        _refuse_if_changed_since(deed, change, seq)
        deed.apply(RowChange(change.table, change.row_id, change.after, change.before), table)
        tell(1)
    if not brings_back:
        deed.bulk.extend(reverse_bulk(deed.connection, bulk, tell))


def _refuse_if_changed_since(deed: Deed, change: RowChange, seq: int) -> None:
    table = Base.metadata.tables[change.table]
    now = (
        deed.connection.execute(select(table).where(table.c.id == change.row_id)).mappings().first()
    )
    left = change.after
    if now is None or left is None:
        same, other = now is None and left is None, frozenset[str]()
    else:
        other = frozenset(name for name, value in left.items() if now[name] != value)
        same = not other
    if not same:
        who, words = _who_changed(deed.connection, change, other, seq)
        raise ShopTrouble(
            tr("This can't be undone: {who} has changed it since ({words}).", who=who, words=words),
            kept=tr("Nothing was changed."),
            do=tr("Change the value by hand if it is wrong."),
        )


def _who_changed(
    connection: Connection, change: RowChange, columns: frozenset[str], seq: int
) -> tuple[str, str]:
    """Return who wrote last into these columns of a row, or took it out, and in which words."""
    later = connection.execute(
        select(HistoryEntry.who, HistoryEntry.words, HistoryEntry.body)
        .where(HistoryEntry.seq > seq)
        .order_by(HistoryEntry.seq.desc())
        .limit(UNDO_REACH)
    )
    for who, words, body in later:
        for other in json.loads(body)["changes"]:
            if other["table"] == change.table and other["row_id"] == change.row_id:
                written = other["after"]
                if not columns or written is None or not columns.isdisjoint(written):
                    return who or tr("someone"), words
    return tr("someone"), tr("outside the program")


def chain_problems(
    connection: Connection, hear: Callable[[EntryHeard], None] = lambda _entry: None
) -> tuple[int, list[str]]:
    """Check the chain: the number of entries, and a sentence for each entry that doesn't match.

    `hear` is told of every entry in its order, whether it matches or not.
    """
    problems: list[str] = []
    previous, count, expected = GENESIS, 0, 1
    wanted = (
        select(
            *(HistoryEntry.seq, HistoryEntry.body, HistoryEntry.hash, HistoryEntry.words),
            *(HistoryEntry.at, HistoryEntry.who, HistoryEntry.reverses),
        )
        .order_by(HistoryEntry.seq)
        .execution_options(yield_per=1000)
    )
    with connection.execute(wanted) as entries:
        for entry in map(EntryHeard._make, entries):
            count += 1
            if entry.seq != expected:
                problems.append(
                    tr(
                        "history entries {first} to {last} are missing",
                        first=expected,
                        last=entry.seq - 1,
                    )
                )
            if not _matches(previous, entry.seq, entry.body, entry.hash):
                problems.append(
                    tr(
                        "history entry {seq} (“{words}”) was changed after it was written",
                        seq=entry.seq,
                        words=entry.words,
                    )
                )
            hear(entry)
            previous, expected = entry.hash, entry.seq + 1
    return count, problems


def _matches(previous: str, seq: int, body: str, kept_hash: str) -> bool:
    try:
        return chained_hash(previous, seq, body) == kept_hash
    except (ValueError, TypeError, AttributeError):
        return False  # what stands there is no hash or no text any more
