"""The check of a shop: its database, its history, its rows and its photo files."""

from __future__ import annotations

from collections.abc import Generator, Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor
from typing import TypeVar

from sqlalchemy import Connection

from desktop_app.shop_record import dialect
from desktop_app.shop_record.photo_files import PhotoFiles
from desktop_app.shop_record.problem import GO_BACK, Checked, Problem
from desktop_app.shop_record.record import FILE_NAME, ShopRecord
from desktop_app.shop_record.record_check import (
    THE_DATABASE,
    RecordLooked,
    look_at_database,
    look_at_entries_and_rows,
)
from desktop_app.shop_record.step import Step

__all__ = ["Checked", "Problem", "check_photos", "check_record", "check_shop", "cut_short"]
SIDE_BY_SIDE = 2  # photos that are read at once
SAID_EACH = 100  # photos

Named = Iterable[tuple[str, str]]
Came = TypeVar("Came")


def check_shop(record: ShopRecord, photos: Named) -> Checked:
    """Check a whole shop; `photos` are (SHA-256, where it is named) of all photos in the record."""
    looked = _walked(check_record(record))
    found, checked = _walked(check_photos(record.photos, photos))
    return Checked((*looked.problems, *found), checked, looked.entries)


def check_record(record: ShopRecord) -> Generator[Step, None, RecordLooked]:
    """Check the record; who writes into it meanwhile waits, so that large ones are copied first."""
    record.know_tables()
    with record.reading() as connection, ThreadPoolExecutor(1) as beside:
        looking = beside.submit(_database, record)
        others = yield from look_at_entries_and_rows(connection)
        yield Step(0, 1, "Looking at the database")
        found = looking.result()
    found.add(others)
    return found


def cut_short(record: ShopRecord, connection: Connection) -> Iterator[Problem]:
    """Tell where the file of the record has lost its end; a copy of it would not show that."""
    if dialect.is_cut_short(connection, record.folder / FILE_NAME):
        yield Problem(THE_DATABASE, "The end of its file is missing.", True, GO_BACK)


def check_photos(
    files: PhotoFiles, photos: Named
) -> Generator[Step, None, tuple[list[Problem], int]]:
    """Read every photo once; return what is wrong where it is named, and how many there were."""
    named: dict[str, list[str]] = {}
    for sha256, where in photos:
        named.setdefault(sha256, []).append(where)
    problems: list[Problem] = []
    with ThreadPoolExecutor(SIDE_BY_SIDE) as readers:
        try:
            whole = readers.map(files.is_whole, named)
            for number, (sha256, good) in enumerate(zip(named, whole, strict=True)):
                if number % SAID_EACH == 0:
                    yield Step(number, len(named), "Holding the photos against their hashes")
                if good is not True:
                    problems += [_photo_problem(sha256, where, good) for where in named[sha256]]
        finally:
            readers.shutdown(cancel_futures=True)
    return problems, len(named)


def _photo_problem(sha256: str, where: str, whole: bool | None) -> Problem:
    what = "is missing" if whole is None else "was changed after it was taken in"
    name = f"photos/{sha256[:2]}/{sha256}"
    return Problem(where, f"The photo file {name} {what}.", True, "Bring it back from a copy.")


def _database(record: ShopRecord) -> RecordLooked:
    """Look at it by a connection of its own: it takes a core of its own too."""
    with record.reading() as connection:
        return look_at_database(connection)


def _walked(steps: Generator[Step, None, Came]) -> Came:
    while True:
        try:
            next(steps)
        except StopIteration as end:
            came: Came = end.value
            return came
