"""Writing into a record past its one door, as no part of the program does."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from sqlalchemy import Connection

from desktop_app.shop_record.record import ShopRecord


@contextmanager
def past_any_deed(record: ShopRecord) -> Iterator[Connection]:
    """Give a connection that writes without an entry; all of it stays when the block ends well."""
    with record.listening() as plain:
        connection = plain.execution_options(writing=True)
        with connection.begin():
            yield connection
