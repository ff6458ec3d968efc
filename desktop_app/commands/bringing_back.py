"""`import`: a table of jobs, or the folder of an export into a new shop."""

from __future__ import annotations

import copy
from pathlib import Path
from typing import TYPE_CHECKING

from desktop_app.commands.exporting import walked
from desktop_app.commands.named_file import at_home
from desktop_app.commands.opened_shop import shop_of
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.shop_record.counted_words import (
    entries_counted,
    jobs_counted,
    photos_counted,
    rows_counted,
)
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.shop_record.record import ShopRecord


def import_any(asked: Asked) -> Outcome:
    """Bring in what lies at the named place.

    All of an export comes back into a shop in which nothing is written; into another only its jobs.
    """
    from desktop_app.commands.importing import import_file
    from desktop_app.records_exchanged.export_names import JOBS_LACK

    folder = at_home(asked.file)
    if not folder.is_dir():
        return import_file(asked)
    _refuse_what_is_no_export(asked, folder)
    with shop_of(asked) as record:
        if (brought_back := _whole(asked, record, folder)) is not None:
            return brought_back
    only_jobs = copy.copy(asked)
    setattr(only_jobs, "file", str(folder / "jobs.csv"))  # noqa: B010 - what is asked has no type
    outcome = import_file(only_jobs)
    why = "Only jobs.csv was read: something is written in this shop already."
    return Outcome(outcome.json, (*outcome.lines, f"{why} {JOBS_LACK}"), outcome.status)


def _refuse_what_is_no_export(asked: Asked, folder: Path) -> None:
    from desktop_app.records_exchanged.whole_folder_files import is_export

    if not is_export(folder):
        raise ShopTrouble(
            f"{str(folder)[:200]} is a folder, and not one that export wrote.",
            do="Accepted: a table with headers as CSV or XLSX, or the folder of an export.",
        )
    if asked.columns:
        raise ShopTrouble(
            "--columns is for tables of jobs.", do="An export needs no map; leave it out."
        )


def _whole(asked: Asked, record: ShopRecord, folder: Path) -> Outcome | None:
    from desktop_app.records_exchanged.whole_actions import bring_back, is_new

    if not is_new(record):
        return None
    told = walked(bring_back(record, folder, dry_run=asked.dry_run))
    would = "Would bring" if asked.dry_run else "Brought"
    line = (
        f"{would} back everything as it was: {jobs_counted(told.rows['job'])}, "
        f"{rows_counted(sum(told.rows.values()))} in all, {photos_counted(told.photos)}, and "
        f"{entries_counted(told.history_entries)}; one more says that this was brought back."
    )
    return Outcome(told.as_json(), (line,))
