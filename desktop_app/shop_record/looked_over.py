"""A copy of the record to look at in peace: whoever works in the shop waits for nothing."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from desktop_app.shop_record import dialect
from desktop_app.shop_record.dialect_snapshot import take_snapshot
from desktop_app.shop_record.record import FILE_NAME, ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


@contextmanager
def looked_over(record: ShopRecord) -> Iterator[ShopRecord]:
    """Give a copy of the record as it is now, with the photos of the shop itself.

    Damage is copied with everything else. Where there is no room for a copy the record itself is
    given.
    """
    with tempfile.TemporaryDirectory(prefix="benchwitness-check-") as folder:
        copy = Path(folder) / FILE_NAME
        try:
            take_snapshot(record.folder / FILE_NAME, copy)
            engine = dialect.open_engine(copy)
        except (ShopTrouble, OSError):
            yield record
            return
        looked = ShopRecord(record.folder, engine, record.clock)
        looked.know_tables = record.know_tables
        try:
            yield looked
        finally:
            looked.close()
