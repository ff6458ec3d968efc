"""A small shop in which everything was done once, for the tests that damage it; and its check."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta
from pathlib import Path

from desktop_app.commands.shop_place import new_place, open_place
from desktop_app.commands.whole_check import whole_check
from desktop_app.part_photos.stored import Photo
from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.shop_record.backups.generations import make_generation
from desktop_app.shop_record.checks.problem import Problem
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.records_exchanged.importing import bring_in, lines
from tests.shop_record.backed_up import named, through, with_photo

MUCH_LATER = NOON + timedelta(days=3)  # by then nothing is being written any more


def busy_shop(folder: Path, photos: int = 12) -> None:
    """Make a shop with people, jobs, photos, jobs from a table, undone deeds and a backup."""
    record = new_place(folder, lambda: NOON)
    record.who = "Odile"
    for name in ("Odile", "Bram", "Wanda"):
        named(record, name)
    for number in range(photos):
        with_photo(record, bytes([65 + number]) * 3000)
    table = [
        {"job_number": f"R-{n}", "opened_on": "2025-04-03", "plate": f"TH {n}", "vehicle": "van"}
        | {"concern": f"misses when damp {n}", "correction": "coil renewed", "codes": "P0301"}
        for n in range(20)
    ]
    bring_in(record, lines(*table))
    with record.reading() as connection:
        first = connection.exec_driver_sql("SELECT min(id) FROM job").scalar_one()
        last = connection.exec_driver_sql("SELECT max(id) FROM job").scalar_one()
    for job, words in ((first, "worn rotor"), (last, "wet coil"), (last, "cracked coil")):
        with record.deed("Name the cause") as deed:
            deed.change(Job, job, cause=words)
    record.do("Take Wanda out", lambda deed: deed.remove(Person, 3))
    record.undo()
    record.undo()
    record.redo()
    through(make_generation(folder, folder / "backups", NOON))
    record.close()


@contextmanager
def opened(folder: Path, now: datetime = NOON) -> Iterator[ShopRecord]:
    """Open a shop as the program does, and close it."""
    record = open_place(folder, lambda: now)
    try:
        yield record
    finally:
        record.close()


def found_in(folder: Path, now: datetime = NOON) -> list[Problem]:
    """What the check finds; a shop that is refused at its door is one problem."""
    try:
        with opened(folder, now) as record:
            return list(through(whole_check(record)).problems)
    except ShopTrouble as trouble:
        return [Problem("at the door", trouble.what, True, trouble.do)]


@contextmanager
def by_hand(folder: Path) -> Iterator[sqlite3.Connection]:
    """The database in the hands of somebody who knows how to write into it."""
    raw = sqlite3.connect(folder / FILE_NAME)
    raw.execute("PRAGMA foreign_keys = OFF")
    try:
        with raw:
            yield raw
    finally:
        raw.close()


def photos_of(record: ShopRecord) -> list[tuple[str, str]]:
    """The photos that rows name, with the job each belongs to."""
    with record.reading() as connection:
        rows = connection.exec_driver_sql(f"SELECT sha256, job_id FROM {Photo.__tablename__}")
        return [(sha256, f"job row {job}") for sha256, job in rows]
