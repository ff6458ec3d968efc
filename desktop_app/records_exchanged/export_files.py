"""Everything of a shop written into a folder that is readable without this program."""

from __future__ import annotations

from collections.abc import Generator, Iterable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from desktop_app.language import tr
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.export_cells import cells_of
from desktop_app.records_exchanged.export_folder_files import ExportFolder, export_folder
from desktop_app.records_exchanged.export_job_lines import job_lines
from desktop_app.records_exchanged.export_names import (
    HISTORY,
    IDS_GIVEN,
    JOBS,
    PHOTO_FILES,
    READ_ME,
    kind_file,
    table_file,
)
from desktop_app.records_exchanged.export_read_me import read_me
from desktop_app.records_exchanged.stored_export import (
    Rows,
    count_of,
    history_rows,
    history_table,
    ids_given,
    kept_tables,
    rules_of,
    table_rows,
)
from desktop_app.records_exchanged.stored_export_jobs import jobs_told
from desktop_app.records_exchanged.stored_export_photos import PhotoTold, photos_told
from desktop_app.shop_record.databases.dialect import copy_whole, open_engine
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.upgrade import NEWEST

PHOTO_COLUMNS = ("photo_id", "sha256", "file")
IDS_COLUMNS = ("table", "highest_id")
Steps = Generator[Step, None, None]


@dataclass(slots=True)
class ExportTold:
    """What was written; `missing` names the photos that are gone or no longer as they came."""

    folder: Path
    jobs: int = 0
    photos: int = 0
    history_entries: int = 0
    files: int = 0
    bytes_written: int = 0
    rows: dict[str, int] = field(default_factory=dict)
    missing: list[str] = field(default_factory=list)

    def as_json(self) -> dict[str, Any]:
        """Return it as the command prints it."""
        return {
            **{"folder": str(self.folder), "files": self.files, "bytes": self.bytes_written},
            **{"jobs": self.jobs, "photos": self.photos, "rows": self.rows},
            **{"history_entries": self.history_entries, "photos_missing": self.missing},
        }


def export_everything(record: ShopRecord, to: Path) -> Generator[Step, None, ExportTold]:
    """Write everything into a new or an empty folder, step by step; whole or not at all.

    It is the record's one state at the beginning that is written, from a copy, so that nobody
    waits who writes meanwhile. Who no longer wants it closes the generator. Raises ShopTrouble
    where the folder is not empty or can't be written.
    """
    record.know_tables()
    told = ExportTold(to)
    with export_folder(to) as (folder, beside), _copy_of(record, beside) as copy:
        progress = _Progress(copy)
        yield progress.step(tr("copied the record"))
        yield from _jobs(copy, folder, told, progress)
        yield from _tables(copy, folder, told, progress)
        yield from _photos(copy, folder, told, progress, record)
        for file in sorted((record.folder / "part_kinds").glob("*.toml")):
            folder.write_whole(kind_file(file.name), file.read_bytes())
        folder.write_whole(READ_ME, read_me(told.rows, NEWEST).encode())
        told.files, told.bytes_written = folder.files, folder.bytes_written
    return told


class _Progress:
    """How far it is: rows and photos, each photo as much work as many rows."""

    ROWS_A_PHOTO = 500

    def __init__(self, copy: ShopRecord) -> None:
        with copy.reading() as connection:
            counts = {table.name: count_of(connection, table) for table in kept_tables()}
            self.of = sum(counts.values()) + count_of(connection, history_table())
        self.of += counts.get("job", 0) + counts.get("photo", 0) * self.ROWS_A_PHOTO + 1
        self.done = 0

    def step(self, words: str, rows: int = 1) -> Step:
        """Go some rows further."""
        self.done = min(self.of, self.done + rows)
        return Step(self.done, self.of, words)


@contextmanager
def _copy_of(record: ShopRecord, beside: Path) -> Iterator[ShopRecord]:
    """Give a copy of the record to read from; it goes with the folder that it lies in."""
    path = beside / FILE_NAME
    with record.reading() as connection:
        copy_whole(connection, path)
    copy = ShopRecord(beside, open_engine(path), record.clock)
    try:
        yield copy
    finally:
        copy.close()


def _jobs(copy: ShopRecord, folder: ExportFolder, told: ExportTold, progress: _Progress) -> Steps:
    def pieces(connection: Any) -> Iterator[Iterable[Sequence[Any]]]:
        for jobs in jobs_told(connection):
            told.jobs += len(jobs.own)
            yield job_lines(jobs)

    with copy.reading() as connection:
        before = 0
        for _ in folder.write_rows(JOBS, FIELDS, pieces(connection)):
            yield progress.step(tr("writing the jobs"), told.jobs - before)
            before = told.jobs


def _tables(copy: ShopRecord, folder: ExportFolder, told: ExportTold, progress: _Progress) -> Steps:
    with copy.reading() as connection:
        for table in kept_tables():
            file = table_file(table.name)
            with closing(table_rows(connection, table)) as rows:  # before the copy
                told.rows[table.name] = yield from _table(folder, file, table, rows, progress)
        with closing(history_rows(connection)) as rows:
            table = history_table()
            told.history_entries = yield from _table(folder, HISTORY, table, rows, progress)
        for _ in folder.write_rows(IDS_GIVEN, IDS_COLUMNS, [ids_given(connection)]):
            yield progress.step(tr("writing the tables"), 0)


def _table(
    folder: ExportFolder, file: str, table: Any, pieces: Iterable[Rows], progress: _Progress
) -> Generator[Step, None, int]:
    rules = rules_of(table)
    header = [rule.name for rule in rules]
    count = 0
    for rows in folder.write_rows(file, header, (cells_of(piece, rules) for piece in pieces)):
        yield progress.step(tr("writing {file}", file=file), rows - count)
        count = rows
    return count


def _photos(
    copy: ShopRecord,
    folder: ExportFolder,
    told: ExportTold,
    progress: _Progress,
    record: ShopRecord,
) -> Steps:
    def written(photo: PhotoTold) -> tuple[int, str, str]:
        name = folder.copy_photo(record.photos.path(photo.sha256), photo.file, photo.sha256)
        if name is None:
            told.missing.append(
                tr("photo {hash} of job {job}", hash=photo.sha256[:12], job=photo.job)
            )
        else:
            told.photos += 1
        return photo.id, photo.sha256, name or ""

    with copy.reading() as connection, closing(photos_told(connection)) as photos:
        pieces = ([written(photo)] for photo in photos)
        for _ in folder.write_rows(PHOTO_FILES, PHOTO_COLUMNS, pieces):
            yield progress.step(tr("copying the photos"), _Progress.ROWS_A_PHOTO)
