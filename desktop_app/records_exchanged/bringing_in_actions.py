"""A table brought in with its progress told, and what it left behind: the copy, the map."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from desktop_app.records_exchanged.import_actions import import_rows
from desktop_app.records_exchanged.import_told import ImportTold
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.reading_actions import write_rejected
from desktop_app.records_exchanged.stored_import import ReadWith
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
    with _no_walk_through_everything():
        came_of = import_rows(record, table, table.source.name, reads(), told, dry_run=dry_run)
    aside = sorted(set(record.folder.glob(_COPIES)) - before)
    return BroughtIn(came_of, aside[-1] if aside else None)


@contextmanager
def _no_walk_through_everything() -> Iterator[None]:
    """Let only what is young be looked through for garbage meanwhile, at each step.

    To walk through all objects holds up the window for a fifth of a second each time.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def write_turned_away(table: Table, told: ImportTold, source: Path, to: Path) -> None:
    """Write the rows that were turned away, each with its reason; never over their own file."""
    if to.exists() and to.samefile(source):
        raise ShopTrouble(
            f"{to.name} is the file that the rows came from.",
            kept="It was left as it is.",
            do="Name another file.",
        )
    why = {one.row: f"{one.column}: {one.why}" if one.column else one.why for one in told.rejected}
    write_rejected(table, why, to)
