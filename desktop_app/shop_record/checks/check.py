"""The check of a shop: its database, its history, its rows and its photo files."""

from __future__ import annotations

from collections.abc import Generator, Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.shop_record.checks.photos_held import PhotosHeld
from desktop_app.shop_record.checks.problem import GO_BACK, Checked, Problem
from desktop_app.shop_record.checks.record_check import (
    THE_DATABASE,
    RecordLooked,
    look_at_database,
    look_at_entries_and_rows,
)
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.step import Step, walked

__all__ = ["Checked", "Problem", "check_photos", "check_record", "check_shop", "cut_short"]

Named = Iterable[tuple[str, str]]


def check_shop(record: ShopRecord, photos: Named) -> Checked:
    """Check a whole shop; `photos` are (SHA-256, where it is named) of all photos in the record."""
    looked = walked(check_record(record))
    found, checked = walked(check_photos(record.photos, photos))
    return Checked((*looked.problems, *found), checked, looked.entries)


def check_record(record: ShopRecord) -> Generator[Step, None, RecordLooked]:
    """Check the record; who writes into it meanwhile waits, so that large ones are copied first."""
    record.know_tables()
    with record.reading() as connection, ThreadPoolExecutor(1) as beside:
        looking = beside.submit(_database, record)
        others = yield from look_at_entries_and_rows(connection)
        yield Step(0, 1, tr("Looking at the database"))
        found = looking.result()
    found.add(others)
    return found


def cut_short(record: ShopRecord, connection: Connection) -> Iterator[Problem]:
    """Tell where the file of the record has lost its end; a copy of it would not show that."""
    if dialect.is_cut_short(connection, record.folder / FILE_NAME):
        yield Problem(THE_DATABASE, tr("The end of its file is missing."), True, GO_BACK)


def check_photos(
    files: PhotoFiles, photos: Named
) -> Generator[Step, None, tuple[list[Problem], int]]:
    """Read every photo once; return what is wrong where it is named, and how many there were."""
    with PhotosHeld(files) as held:
        return (yield from held.problems(photos))


def _database(record: ShopRecord) -> RecordLooked:
    """Look at it by a connection of its own: it takes a core of its own too."""
    with record.reading() as connection:
        return look_at_database(connection)
