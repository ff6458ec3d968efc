"""A whole export brought back into a new shop: all tables, the history and the photos, one deed."""

from __future__ import annotations

import shutil
from collections.abc import Generator, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from desktop_app.language import tr
from desktop_app.records_exchanged.export_cells import CellRule
from desktop_app.records_exchanged.export_files import IDS_COLUMNS, PHOTO_COLUMNS
from desktop_app.records_exchanged.export_names import (
    CHECKSUMS,
    HISTORY,
    IDS_GIVEN,
    PART_KINDS,
    PHOTO_FILES,
    table_file,
)
from desktop_app.records_exchanged.stored_export import (
    BROUGHT_BACK,
    history_table,
    kept_tables,
    rules_of,
)
from desktop_app.records_exchanged.stored_whole import (
    is_untouched,
    photos_differ,
    raise_ids_given,
    refuse_what_no_deed_writes,
    write_history,
    write_table,
)
from desktop_app.records_exchanged.whole_checksums import NOTHING_DONE, refused, row_of
from desktop_app.records_exchanged.whole_folder_files import WholeFolder
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

_PHOTO_RULES = (
    CellRule(PHOTO_COLUMNS[0], "whole"),
    *(CellRule(name, "text") for name in PHOTO_COLUMNS[1:]),
)
_IDS_RULES = (CellRule(IDS_COLUMNS[0], "text"), CellRule(IDS_COLUMNS[1], "whole"))


@dataclass(slots=True)
class BroughtBack:
    """What came back: rows by table, photos, entries of the history."""

    rows: dict[str, int] = field(default_factory=dict)
    photos: int = 0
    history_entries: int = 0

    def as_json(self) -> dict[str, Any]:
        """Return it as the command prints it, jobs counted as the rows of any import are."""
        jobs = self.rows.get("job", 0)
        return {
            **{"read": jobs, "added": jobs, "unchanged": 0, "updated": 0, "rejected": []},
            **{"rows": self.rows, "photos": self.photos},
            "history_entries": self.history_entries,
        }


class _OnlyTried(Exception):
    """Ends a dry run, so that nothing of it stays."""


def is_new(record: ShopRecord) -> bool:
    """Tell whether nothing was ever written into a shop, so that an export can be brought back."""
    record.know_tables()
    with record.reading() as connection:
        return is_untouched(connection)


def bring_back(
    record: ShopRecord, folder: Path, *, dry_run: bool = False
) -> Generator[Step, None, BroughtBack]:
    """Bring an export back into a shop in which nothing was written, step by step; all or nothing.

    Who no longer wants it closes the generator. Raises ShopTrouble, with file, row and reason,
    where anything of the export isn't as it was written or contradicts the rest.
    """
    record.know_tables()
    whole = WholeFolder(folder, [table_file(table.name) for table in kept_tables()])
    yield from whole.hold_against_checksums()
    told = BroughtBack()
    with _files_go_too(record, dry_run):
        try:
            with record.deed(f"{BROUGHT_BACK}{folder.resolve().name}") as deed:
                if not is_untouched(deed.connection):
                    raise ShopTrouble(
                        tr("Something is written in this shop already."),
                        kept=tr("It was left as it is."),
                        do=tr("A whole export is brought back into a new shop (new-shop FOLDER)."),
                    )
                yield from _write(deed, whole, told)
                yield from _photos(record, whole, told, dry_run)
                if dry_run:
                    raise _OnlyTried
        except _OnlyTried:
            pass
    return told


def _write(deed: Deed, whole: WholeFolder, told: BroughtBack) -> Generator[Step, None, None]:
    tables = kept_tables()
    for done, table in enumerate(tables):
        file = table_file(table.name)
        told.rows[table.name] = 0
        for count in write_table(deed, table, whole.rows(file, rules_of(table))):
            told.rows[table.name] = count
            yield Step(done, len(tables), tr("reading {file}", file=file))
    for count in write_history(deed.connection, whole.rows(HISTORY, rules_of(history_table()))):
        told.history_entries = count
        yield Step(len(tables), len(tables), tr("reading {file}", file=HISTORY))
    raise_ids_given(deed.connection, whole.rows(IDS_GIVEN, _IDS_RULES))
    refuse_what_no_deed_writes(deed.connection)
    named = ((row[0], row[1]) for _, row in _photo_files(whole))
    if (photo := photos_differ(deed.connection, named)) is not None:
        raise refused(
            PHOTO_FILES, tr("it doesn't say of photo {photo} what the table says", photo=photo)
        )


def _photo_files(whole: WholeFolder) -> Iterator[tuple[int, tuple[int, str, str]]]:
    for rows in whole.rows(PHOTO_FILES, _PHOTO_RULES):
        yield from rows


def _photos(
    record: ShopRecord, whole: WholeFolder, told: BroughtBack, dry_run: bool
) -> Generator[Step, None, None]:
    """Put the photos and the files of part kinds into the shop's folder."""
    of = max(1, told.rows["photo"])
    for number, (_, sha256, file) in _photo_files(whole):
        if not file:
            continue  # it was missing when the export was written
        if whole.listed.get(file) != sha256:
            where = row_of(PHOTO_FILES, number, "file")
            raise refused(
                where, tr("{checksums} has no such photo with this hash", checksums=CHECKSUMS)
            )
        if not dry_run and record.photos.keep(whole.content(file)) != sha256:
            raise refused(file, tr("it was changed while it was read"))
        told.photos += 1
        yield Step(told.photos, of, tr("bringing back the photos"))
    for name in whole.listed:
        if name.startswith(f"{PART_KINDS}/") and not dry_run:
            _put(record.folder / name, whole.content(name))


def _put(to: Path, content: bytes) -> None:
    """Write one of the shop's own files of part kinds; one that is there stays as it is."""
    if to.exists():
        raise ShopTrouble(
            tr("{file} is there already.", file=to), NOTHING_DONE, tr("Move it away first.")
        )
    try:
        to.parent.mkdir(exist_ok=True)
        to.write_bytes(content)
    except OSError as error:
        raise ShopTrouble(
            tr("{file} was not written: {reason}.", file=to, reason=error.strerror or error),
            NOTHING_DONE,
            tr("Make room."),
        ) from error


@contextmanager
def _files_go_too(record: ShopRecord, dry_run: bool) -> Iterator[None]:
    """Take the files out of the shop's folder again where their rows did not stay."""
    folders = (record.photos.folder, record.folder / PART_KINDS)
    ours = [one for one in folders if not one.exists() or (one.is_dir() and not any(one.iterdir()))]
    done = False
    try:
        yield
        done = True
    finally:
        if not done and not dry_run:
            for folder in ours:
                shutil.rmtree(folder, ignore_errors=True)
