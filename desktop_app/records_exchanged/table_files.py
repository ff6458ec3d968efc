"""A file of jobs opened: looked at, a workbook turned into CSV, then surveyed and read."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

from desktop_app.language import tr
from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.no_table import LOOKED_AT, no_table
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.rejected_rows import rejected_rows
from desktop_app.records_exchanged.survey import survey
from desktop_app.records_exchanged.table_source import Progress, TableSource
from desktop_app.records_exchanged.workbook_files import turn_workbook
from desktop_app.shop_record.trouble import ShopTrouble

ACCEPTED = tr("Accepted: a table with headers as CSV or XLSX.")
MOST_TEXT = 4_000_000_000
MOST_WORKBOOK = 500_000_000
_ZIP = b"PK\x03\x04"
_NAMED_WORKBOOK = (".xlsx", ".xlsm", ".xltx")
_OLD_WORKBOOK = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"


@contextmanager
def open_table(
    path: Path, column_map: ColumnMap | None = None, progress: Progress | None = None
) -> Iterator[Table]:
    """Open a CSV or XLSX file of jobs; iterating over the table reads its rows.

    Raises ShopTrouble, in one sentence that names the file and what would be accepted, where the
    file is none, has no job numbers, or leaves open in which order its days stand. `progress` is
    told of the looking through (0 to 1) and may raise to end it; for the reading see `Table.rows`.
    """
    laid_down = column_map or ColumnMap()
    with open_source(path, laid_down.sheet or "", progress) as source:
        yield Table(source, laid_down, survey(source, laid_down, progress))


@contextmanager
def open_source(
    path: Path, sheet: str = "", progress: Progress | None = None
) -> Iterator[TableSource]:
    """Open a file so that it can be surveyed with one map after another."""
    kind = _looked_at(path)
    if kind == _OLD_WORKBOOK:
        raise ShopTrouble(
            tr("{file} is an old workbook, or one that is locked by a password.", file=path.name),
            do=tr("Open it in a spreadsheet program and save it as XLSX or CSV."),
        )
    if kind != _ZIP and path.suffix.casefold() in _NAMED_WORKBOOK:
        raise ShopTrouble(
            tr("{file} is no workbook, or a damaged one.", file=path.name),
            do=tr("Open it in a spreadsheet program and save it as XLSX; a text is named .csv."),
        )
    if kind != _ZIP:
        yield TableSource(path.name, path.stat().st_size, _Unchanged(path))
        return
    with tempfile.TemporaryDirectory(prefix="benchwitness-") as folder:
        text = Path(folder) / "sheet.csv"
        sheets = turn_workbook(path, text, sheet, progress)
        yield TableSource(path.name, text.stat().st_size, _Unchanged(text), True, sheets)


def write_rejected(table: Table, reasons: Mapping[int, str], to: Path) -> None:
    """Write the rows with these numbers and why they were not taken; whole or not at all."""
    beside = to.with_name(f".{to.name}.{os.getpid()}.part")
    try:
        with beside.open("wb") as file:
            file.writelines(rejected_rows(table, reasons))
        beside.replace(to)
    except OSError as error:
        raise ShopTrouble(
            tr("{file} was not written: {reason}.", file=to, reason=error.strerror or error),
            do=tr("Name another place."),
        ) from error
    finally:
        beside.unlink(missing_ok=True)


def _looked_at(path: Path) -> bytes:
    """Return how a workbook begins, nothing for a text; else it is refused in words."""
    shown = str(path)[:200]
    if path.is_dir():
        raise ShopTrouble(tr("{file} is a folder.", file=shown), do=ACCEPTED)
    if not path.exists():
        raise ShopTrouble(tr("There is no file {file}.", file=shown), do=ACCEPTED)
    if not path.is_file():
        raise ShopTrouble(tr("{file} is a device or a pipe.", file=shown), do=ACCEPTED)
    with _opened(path) as file:
        try:
            first = file.read(LOOKED_AT)
        except OSError as error:
            raise _cannot_read(path, error) from error
    size = path.stat().st_size
    if not size:
        raise ShopTrouble(tr("{file} is empty.", file=shown), do=ACCEPTED)
    if is_another := no_table(first):
        raise ShopTrouble(tr("{file} is {another}.", file=shown, another=is_another), do=ACCEPTED)
    kind = next((one for one in (_ZIP, _OLD_WORKBOOK) if first.startswith(one)), b"")
    most = MOST_WORKBOOK if kind == _ZIP else MOST_TEXT
    if size > most:
        raise ShopTrouble(
            tr("{file} has more than {most:,} MB.", file=shown, most=most // 1_000_000),
            do=tr("Split it in two."),
        )
    return kind


def _opened(path: Path) -> BinaryIO:
    try:
        return path.open("rb")
    except OSError as error:
        raise _cannot_read(path, error) from error


def _cannot_read(path: Path, error: OSError) -> ShopTrouble:
    return ShopTrouble(
        tr(
            "{file} can't be read: {reason}.",
            file=str(path)[:200],
            reason=error.strerror or error,
        ),
        do=tr("Let it be read, or name another."),
    )


class _Unchanged:
    """Opens the file each time it is read through, as long as nobody writes to it meanwhile."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._first = self._state(path.stat())

    def __call__(self) -> BinaryIO:
        file = _opened(self._path)
        if self._state(os.fstat(file.fileno())) != self._first:
            file.close()
            raise ShopTrouble(
                tr("{file} was changed while it was read.", file=self._path.name),
                do=tr("Start again."),
            )
        return file

    @staticmethod
    def _state(stat: os.stat_result) -> tuple[int, int]:
        return stat.st_size, stat.st_mtime_ns
