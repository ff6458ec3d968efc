"""An import as one deed: all of it or nothing, a copy of the record set aside before."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from desktop_app.records_exchanged.import_told import ImportTold, Told
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.row_words import Moments
from desktop_app.records_exchanged.stored_import import Importer, ReadWith
from desktop_app.records_exchanged.stored_known import has_jobs
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.dialect import copy_whole
from desktop_app.shop_record.history import last_number
from desktop_app.shop_record.record import ShopRecord
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
) -> ImportTold:
    """Bring rows into the record; `file` is the name that the history says.

    `told` hears every few thousand rows how many were read and written; what it raises takes
    everything back, as does whatever ends the program. A dry run does the same and then takes it
    back.
    """
    before = _last_entry(record)
    aside = None if dry_run else _set_aside(record)
    outcome = ImportTold()

    def work(deed: Deed) -> None:
        nonlocal outcome
        long.say(words)
        now = record.clock()
        stamp = now.isoformat(timespec="seconds")
        followers = () if dry_run else record.bulk_followers
        importer = Importer(deed, reads, Moments(now), stamp, followers)
        outcome = importer.take(rows, told)
        if dry_run:
            raise _OnlyTried

    written = False
    words, long = f"Import {file}", LongWriting(record.folder)
    try:
        with long:
            written = record.do(words, work).seq is not None
    except _OnlyTried:
        pass
    except KeyboardInterrupt:
        # Where it came while the last pages were written, all was brought in.
        written = _last_entry(record) != before
        if not written:
            raise
    finally:
        if aside is not None and not written:
            aside.unlink(missing_ok=True)
    return outcome


def _last_entry(record: ShopRecord) -> int:
    with record.reading() as connection:
        return last_number(connection)


def _set_aside(record: ShopRecord) -> Path | None:
    """Copy the record beside itself, and return the copy; None where there is no job yet."""
    with record.reading() as connection:
        if not has_jobs(connection):
            return None
        aside = record.folder / f"shop-before-import-{record.clock():%Y%m%d-%H%M%S}.sqlite"
        aside.unlink(missing_ok=True)
        copy_whole(connection, aside)
    return aside
