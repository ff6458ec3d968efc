"""A table brought in with its progress told, and the rows that were turned away written down."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from desktop_app.language import tr
from desktop_app.records_exchanged.import_actions import import_rows
from desktop_app.records_exchanged.import_told import ImportTold
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.records_exchanged.table_files import write_rejected
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

Tell = Callable[[Step], None]  # what it raises takes everything back


def bring_in(
    record: ShopRecord,
    table: Table,
    reads: Callable[[], ReadWith],
    tell: Tell,
    *,
    dry_run: bool = False,
) -> ImportTold:
    """Bring a table in, or try what that would do; `tell` hears of the backup and of the rows."""
    rows = table.found.rows

    def told(read: int) -> None:
        words = (
            tr("finishing")
            if read >= rows
            else tr("{read:,} of {rows:,} rows", read=read, rows=rows)
        )
        tell(Step(min(read, rows), max(1, rows), words))

    tell(Step(0, max(1, rows), tr("0 of {rows:,} rows", rows=rows)))
    name = table.source.name
    return import_rows(record, table, name, reads(), told, dry_run=dry_run, backing_up=tell)


def write_turned_away(table: Table, told: ImportTold, source: Path, to: Path) -> None:
    """Write the rows that were turned away, each with its reason; never over their own file."""
    if to.exists() and to.samefile(source):
        raise ShopTrouble(
            tr("{file} is the file that the rows came from.", file=to.name),
            kept=tr("It was left as it is."),
            do=tr("Name another file."),
        )
    write_rejected(table, told.whys(), to)
