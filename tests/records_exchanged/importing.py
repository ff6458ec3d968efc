"""A shop and tables of jobs brought into it, for the tests."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from sqlalchemy import text

from desktop_app.commands.shop_place import kinds_of, new_place
from desktop_app.records_exchanged.import_actions import import_rows
from desktop_app.records_exchanged.import_told import ImportTold
from desktop_app.records_exchanged.row_words import kind_ids
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.shop_record.backups.backup_opened import open_backup
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.databases.dialect_search import (
    Wanted,
    jobs_indexed,
    newest,
    read_texts,
)
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.records_exchanged.tables import table_of

COLUMNS = (
    "job_number,opened_on,closed_on,vin,plate,vehicle,odometer,odometer_unit,technician,concern,"
    "cause,correction,codes,system,part_kind,part_number,supplier,part_origin,price,hours,"
    "return_of,judgement"
)
TABLES = (
    *("vehicle", "person", "visit", "job", "job_symptom", "job_condition", "trouble_code"),
    *("pair", "return_link"),
)
_ALL_OF = "SELECT id, * FROM {} ORDER BY id"


def a_shop(folder: Path) -> Iterator[ShopRecord]:
    """An empty shop whose clock says a day of 2026."""
    record = new_place(folder / "shop", lambda: datetime(2026, 11, 16, 12, tzinfo=UTC))
    yield record
    record.close()


def lines(*said: dict[str, Any]) -> str:
    """A CSV file with all columns, from what each row says."""
    names = COLUMNS.split(",")
    rows = [",".join(f'"{row.get(name, "")}"' for name in names) for row in said]
    return "\r\n".join([COLUMNS, *rows, ""])


def bring_in(record: ShopRecord, content: str, **said: Any) -> ImportTold:
    """Import a file that lies in memory."""
    words = shop_vocabulary()
    reads = ReadWith(
        lambda text: tuple(group.id for group in words.groups_in(text)),
        words.conditions_in,
        kind_ids(kinds_of().values()),
    )
    return import_rows(record, table_of(content), "jobs.csv", reads, **said)


def everything(record: ShopRecord) -> dict[str, list[tuple[Any, ...]]]:
    """All rows of the tables that an import writes to, and of the search index."""
    with record.reading() as connection:
        rows = {
            table: [tuple(row) for row in connection.execute(text(_ALL_OF.format(table)))]
            for table in TABLES
        }
        texts = read_texts(connection, sorted(jobs_indexed(connection)))
    return rows | {"job_text": [(job, *said) for job, said in sorted(texts.items())]}


def found_by(record: ShopRecord, word: str) -> list[int]:
    """The jobs that the search index has this word of."""
    with record.reading() as connection:
        return newest(connection, [Wanted(whole=(word,))], 100)


def backed_up_before(record: ShopRecord) -> list[Path]:
    """The backups that lie in a shop because of an import, the oldest first."""
    made = [folder for _, folder in generations_in(record.folder / "backups")]
    return [one for one in made if open_backup(one).manifest.reason == "before an import"]


def counts(told: ImportTold) -> tuple[int, int, int, int]:
    """Added, updated, unchanged, rejected."""
    return told.added, told.updated, told.unchanged, len(told.rejected)
