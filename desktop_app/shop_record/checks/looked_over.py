"""A copy of the record to look at in peace: whoever works in the shop waits for nothing."""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Generator, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_pieces import told_of_disk
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.databases.dialect_snapshot import snapshot_steps
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

Take = Callable[[], Generator[Step, None, ShopRecord]]


@contextmanager
def looked_over(record: ShopRecord) -> Iterator[Take]:
    """Give what takes a copy of the record as it is then, with the photos of the shop itself.

    Damage is copied with everything else. Where there is no room for a copy the record itself is
    given; that of a server can only be looked at as a copy, and a ShopTrouble says why there is
    none.
    """
    with (
        tempfile.TemporaryDirectory(prefix="benchwitness-check-") as folder,
        ExitStack() as opened,
    ):

        def take() -> Generator[Step, None, ShopRecord]:
            copy = Path(folder) / FILE_NAME
            try:
                with told_of_disk(tr("A copy of the record, to look at in peace,")):
                    yield from snapshot_steps(record.folder / FILE_NAME, copy)
                engine = dialect.open_engine(copy)
            except ShopTrouble:
                if record.on_server:
                    raise
                return record
            looked = ShopRecord(record.folder, engine, record.clock)
            looked.know_tables = record.know_tables
            opened.callback(looked.close)
            return looked

        yield take
