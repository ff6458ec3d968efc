"""An import as one deed: all of it or nothing, the shop backed up before."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterable
from contextlib import closing
from pathlib import Path

from desktop_app.language import tr
from desktop_app.records_exchanged.import_told import ImportTold, Told
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.large_files import rows_beside
from desktop_app.records_exchanged.row_words import Moments
from desktop_app.records_exchanged.stored_import import Importer, ReadWith
from desktop_app.records_exchanged.stored_known import has_jobs
from desktop_app.shop_record.backups.backups_made import backup_before
from desktop_app.shop_record.backups.generations import take_away
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.own_program.no_walk import no_walk_through_everything
from desktop_app.shop_record.past.history import last_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.under_way import LongWriting


class _OnlyTried(Exception):
    """Ends a dry run, so that nothing of it stays."""


def import_rows(
    record: ShopRecord,
    rows: Iterable[JobRow | RowRejected],
    file: str,
    reads: ReadWith,
    told: Told = lambda rows_read: None,
    *,
    dry_run: bool = False,
    backing_up: Callable[[Step], None] = lambda step: None,
) -> ImportTold:
    """Bring rows into the record; `file` is the name that the history says.

    `told` hears every few thousand rows how many were read and written; what it raises takes
    everything back, as does whatever ends the program. A dry run does the same and then takes it
    back. `backing_up` hears how far the backup is that is made before.
    """
    before = _last_entry(record)
    backup = None if dry_run else _back_up(record, backing_up)
    outcome = ImportTold()

    def work(deed: Deed) -> None:
        nonlocal outcome
        long.say(words)
        now = record.clock()
        stamp = now.isoformat(timespec="seconds")
        followers = () if dry_run else record.bulk_followers
        importer = Importer(deed, read_with, Moments(now), stamp, followers)
        outcome = importer.take(these, swept)
        if dry_run:
            raise _OnlyTried

    def swept(read: int) -> None:
        gc.collect(1)
        told(read)

    written = False
    words, long = tr("Import {file}", file=file), LongWriting(record.folder)
    try:
        with rows_beside(rows, reads) as (these, read_with), no_walk_through_everything(), long:
            written = record.do(words, work).seq is not None
    except _OnlyTried:
        pass
    except KeyboardInterrupt:
        # Where it came while the last pages were written, all was brought in.
        written = _last_entry(record) != before
        if not written:
            raise
    finally:
        if backup is not None and not written:
            take_away(backup)
    outcome.backup = backup if written else None
    return outcome


def _last_entry(record: ShopRecord) -> int:
    with record.reading() as connection:
        return last_number(connection)


def _back_up(record: ShopRecord, tell: Callable[[Step], None]) -> Path | None:
    """Back the shop up, and return where that lies; None where there is no job yet."""
    with record.reading() as connection:
        if not has_jobs(connection):
            return None
    with closing(backup_before(record, tr("an import"))) as steps:
        while True:
            try:
                tell(next(steps))
            except StopIteration as end:
                folder: Path = end.value
                return folder
