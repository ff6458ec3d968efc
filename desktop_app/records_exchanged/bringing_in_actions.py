"""A table brought in with its progress told, and what it left behind: the copy, the map."""

from __future__ import annotations

import gc
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from desktop_app.records_exchanged.import_actions import import_rows
from desktop_app.records_exchanged.import_told import ImportTold
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.reading_actions import write_rejected
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.shop_record.no_walk import no_walk_through_everything
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

Tell = Callable[[Step], None]  # what it raises takes everything back
_COPIES = "shop-before-import-*.sqlite"


@dataclass(frozen=True, slots=True)
class BroughtIn:
    """What became of the rows, and the copy of the record that was set aside before, if any."""

    told: ImportTold
    aside: Path | None


def bring_in(
    record: ShopRecord,
    table: Table,
    reads: Callable[[], ReadWith],
    tell: Tell,
    *,
    dry_run: bool = False,
) -> BroughtIn:
    """Bring a table in, or try what that would do; `tell` hears how many rows were read."""
    rows = table.found.rows

    def told(read: int) -> None:
        gc.collect(1)
        words = "finishing" if read >= rows else f"{read:,} of {rows:,} rows"
        tell(Step(min(read, rows), max(1, rows), words))

    before = set(record.folder.glob(_COPIES))
    tell(Step(0, max(1, rows), f"0 of {rows:,} rows"))
    read_with = reads()  # made before, or the first walk would be a long one
    with no_walk_through_everything():
        came_of = import_rows(record, table, table.source.name, read_with, told, dry_run=dry_run)
    aside = sorted(set(record.folder.glob(_COPIES)) - before)
    return BroughtIn(came_of, aside[-1] if aside else None)


def write_turned_away(table: Table, told: ImportTold, source: Path, to: Path) -> None:
    """Write the rows that were turned away, each with its reason; never over their own file."""
    if to.exists() and to.samefile(source):
        raise ShopTrouble(
            f"{to.name} is the file that the rows came from.",
            kept="It was left as it is.",
            do="Name another file.",
        )
    write_rejected(table, told.whys(), to)
