"""Rows that come by the hundred thousand: remembered as ranges of ids with one hash each.

The history says of such rows which ids they have and the SHA-256 of what stood in them; their
values are written into it only when they are taken out again, so that they can be brought back.
"""

from __future__ import annotations

import base64
import json
import zlib
from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any, NamedTuple

from sqlalchemy import Connection, delete, select
from sqlalchemy.sql.schema import Table

from desktop_app.language import tr
from desktop_app.shop_record.databases.dialect import insert_rows
from desktop_app.shop_record.past.older_forms import HashOfForms, names_then
from desktop_app.shop_record.past.rows_hash import AT_A_TIME, RowsHash, canonical
from desktop_app.shop_record.tables import Base
from desktop_app.shop_record.trouble import ShopTrouble

Tell = Callable[[int], None]  # called with how many rows more are done


class BulkRows(NamedTuple):
    """All rows of a table from the first to the last id: added, or taken out.

    `sha256` is over their canonical form: JSON arrays (RFC 8259) of up to AT_A_TIME rows by id,
    each row an array of its columns in the table's order, each piece on a line. `gone` is None for
    rows that were added, else that form (UTF-8, zlib, base64) of those taken out. `followed` is
    True where what is derived from them was written with them; `said` gives by id what the words
    of a row are made of, where who added it knows. No entry says either.
    """

    table: str
    first: int
    last: int
    rows: int
    sha256: str
    gone: str | None = None
    followed: bool = False
    said: Mapping[int, Any] | None = None

    def as_facts(self) -> dict[str, Any]:
        """Return it as it stands in the body of an entry."""
        names = ("table", "first", "last", "rows", "sha256", "gone")
        return {name: getattr(self, name) for name in names}


def rows_added(connection: Connection, table: Table, first: int, last: int) -> BulkRows:
    """Return what is to be remembered of rows that were just added."""
    digest, count = RowsHash(), 0
    for rows in _in_pieces(connection, table, first, last):
        digest.take(rows)
        count += len(rows)
    return BulkRows(table.name, first, last, count, digest.hexdigest())


def reverse_bulk(connection: Connection, done: Sequence[BulkRows], tell: Tell) -> list[BulkRows]:
    """Take the rows out that were added, or bring back those taken out; return what was done.

    The ranges stand in the order in which they were written; `tell` hears of each few rows. Raises
    ShopTrouble where a row is no longer as the entry left it.
    """
    return [
        _taken_out(connection, one, tell)
        if one.gone is None
        else _brought_back(connection, one, tell)
        for one in reversed(done)
    ]


def _taken_out(connection: Connection, added: BulkRows, tell: Tell) -> BulkRows:
    table = Base.metadata.tables[added.table]
    names = [column.name for column in table.columns]
    digest, packer, count = HashOfForms(added.table, names), zlib.compressobj(), 0
    packed = bytearray()
    for rows in _in_pieces(connection, table, added.first, added.last):
        digest.take(rows)
        packed += packer.compress(canonical(rows))
        count += len(rows)
        tell(len(rows))
    packed += packer.flush()
    if not digest.holds(added.sha256):
        raise ShopTrouble(
            tr(
                "This can't be undone: something of what it added was changed since ({table}).",
                table=added.table,
            ),
            kept=tr("Nothing was changed."),
            do=tr("Undo the later changes first, or change by hand what is wrong."),
        )
    connection.execute(delete(table).where(table.c.id.between(added.first, added.last)))
    gone = base64.b64encode(packed).decode("ascii")
    return BulkRows(added.table, added.first, added.last, count, digest.now(), gone)


def _brought_back(connection: Connection, taken: BulkRows, tell: Tell) -> BulkRows:
    table = Base.metadata.tables[taken.table]
    names = [column.name for column in table.columns]
    for rows in _unpacked(taken.gone or ""):
        insert_rows(connection, taken.table, names_then(taken.table, names, len(rows[0])), rows)
        tell(len(rows))
    digest, count = HashOfForms(taken.table, names), 0
    for stored in _in_pieces(connection, table, taken.first, taken.last):
        digest.take(stored)
        count += len(stored)
    if not digest.holds(taken.sha256):
        raise ShopTrouble(
            tr(
                "This can't be brought back: something else stands there by now ({table}).",
                table=taken.table,
            ),
            kept=tr("Nothing was changed."),
        )
    return BulkRows(taken.table, taken.first, taken.last, count, digest.now())


def _unpacked(gone: str) -> Iterator[list[list[Any]]]:
    unpacker, text = zlib.decompressobj(), b""
    packed = base64.b64decode(gone)
    for start in range(0, len(packed), 1 << 16):
        text += unpacker.decompress(packed[start : start + (1 << 16)])
        *whole, text = text.split(b"\n")
        for line in whole:
            yield json.loads(line)
    for line in (text + unpacker.flush()).splitlines():
        yield json.loads(line)


def _in_pieces(
    connection: Connection, table: Table, first: int, last: int
) -> Iterator[list[Sequence[Any]]]:
    wanted = select(table).where(table.c.id.between(first, last)).order_by(table.c.id)
    with connection.execute(wanted.execution_options(yield_per=AT_A_TIME)) as found:
        for rows in found.partitions():
            yield list(map(tuple, rows))
