"""The folder of an export opened: each file held against its checksum, tables read row by row."""

from __future__ import annotations

import csv
import hashlib
from collections.abc import Generator, Iterator, Sequence
from io import BufferedReader
from pathlib import Path
from typing import Any

from desktop_app.language import tr
from desktop_app.records_exchanged.export_cells import CellRule, read_cell
from desktop_app.records_exchanged.export_names import CHECKSUMS
from desktop_app.records_exchanged.whole_checksums import read_checksums, refused, row_of
from desktop_app.shop_record.step import Step

AT_A_TIME = 2000
MOST_PHOTO_BYTES = 100_000_000
_LONGEST_CELL = 2**31 - 1
NumberedRow = tuple[int, tuple[Any, ...]]


def is_export(folder: Path) -> bool:
    """Tell whether a folder looks like an export."""
    return (folder / CHECKSUMS).is_file()


class WholeFolder:
    """An export: `listed` is the SHA-256 of each file, by its name in the folder."""

    def __init__(self, folder: Path, tables: Sequence[str]) -> None:
        self._folder = folder.resolve()
        try:
            with self._open(CHECKSUMS) as file:
                lines = (line.decode("utf-8") for line in file)
                self.listed = read_checksums(lines, tables)
        except UnicodeDecodeError as error:
            raise refused(CHECKSUMS, tr("it is not written in UTF-8")) from error

    def hold_against_checksums(self) -> Generator[Step, None, None]:
        """Read every file once; a ShopTrouble names the first one that is not as it was written."""
        for done, (name, sha256) in enumerate(self.listed.items()):
            with self._open(name) as file:
                if hashlib.file_digest(file, "sha256").hexdigest() != sha256:
                    raise refused(name, tr("it is not as it was written (its checksum differs)"))
            yield Step(done, len(self.listed), tr("holding the files against their checksums"))

    def rows(self, name: str, rules: Sequence[CellRule]) -> Iterator[list[NumberedRow]]:
        """Give the rows of a CSV file as values, some thousands at a time, each with its number.

        Rows count as a spreadsheet counts them. A ShopTrouble names the row and the column where
        something else stands than may. What an older program's export lacks (a column that may
        hold nothing, a whole table) is read as nothing.
        """
        if name not in self.listed:
            return
        with self._open(name) as binary:
            lines = (line.decode("utf-8") for line in binary)
            reader = _of_any_length(csv.reader(_without_mark(lines), strict=True))
            number, piece = 1, list[NumberedRow]()
            try:
                header = next(reader, [])
                _check_header(name, header, rules)
                later = [at for at, rule in enumerate(rules) if rule.name not in header]
                for number, cells in enumerate(reader, 2):
                    _check_length(name, number, cells, header)
                    for at in later:
                        cells.insert(at, "")
                    piece.append((number, _values(name, number, cells, rules)))
                    if len(piece) == AT_A_TIME:
                        yield piece
                        piece = []
            except UnicodeDecodeError as error:
                raise refused(_after(name, number), tr("it is not UTF-8")) from error
            except csv.Error as error:
                why = tr("this is no CSV ({reason})", reason=error)
                raise refused(_after(name, number), why) from error
            yield piece

    def content(self, name: str) -> bytes:
        """Return a photo's or a small file's bytes."""
        with self._open(name) as file:
            content = file.read(MOST_PHOTO_BYTES + 1)
        if len(content) > MOST_PHOTO_BYTES:
            raise refused(name, tr("it is larger than any photo"))
        return content

    def _open(self, name: str) -> BufferedReader:
        """Open a file that lies in the folder itself: no link leads out of it."""
        path = self._folder / name
        try:
            if path.resolve() != path or not path.is_file():
                what = (
                    tr("it is missing")
                    if not path.exists()
                    else tr("it is no plain file in the folder")
                )
                raise refused(name, what)
            return path.open("rb")
        except RuntimeError as error:  # how a link that leads to itself is told
            raise refused(name, tr("it is no plain file in the folder")) from error
        except OSError as error:
            why = tr("it can't be read ({reason})", reason=error.strerror or error)
            raise refused(name, why) from error


def _after(name: str, number: int) -> str:
    return tr("{file}, after row {row}", file=name, row=number)


def _of_any_length(rows: Iterator[list[str]]) -> Iterator[list[str]]:
    """Give rows with cells as long as they were written: an entry may tell of many rows.

    The limit is that of the whole process, so it is back between two rows.
    """
    while True:
        before = csv.field_size_limit(_LONGEST_CELL)
        try:
            row = next(rows, None)
        finally:
            csv.field_size_limit(before)
        if row is None:
            return
        yield row


def _without_mark(lines: Iterator[str]) -> Iterator[str]:
    first = next(lines, "")
    yield first.removeprefix("\ufeff")
    yield from lines


def _check_header(name: str, header: Sequence[str], rules: Sequence[CellRule]) -> None:
    wanted = [rule.name for rule in rules]
    for column in header:
        if column not in wanted:
            raise refused(
                row_of(name, 1), tr("the column “{column}” is not known", column=column[:60])
            )
    for rule in rules:
        if rule.name not in header and not rule.may_be_nothing:
            raise refused(row_of(name, 1), tr("the column “{column}” is missing", column=rule.name))
    if list(header) != [column for column in wanted if column in header]:
        raise refused(row_of(name, 1), tr("the columns stand in another order, or one twice"))


def _check_length(name: str, number: int, cells: Sequence[str], header: Sequence[str]) -> None:
    if len(cells) != len(header):
        why = tr(
            "it has {cells} cells where the headers are {headers}",
            cells=len(cells),
            headers=len(header),
        )
        raise refused(row_of(name, number), why)


def _values(
    name: str, number: int, cells: Sequence[str], rules: Sequence[CellRule]
) -> tuple[Any, ...]:
    values = []
    for cell, rule in zip(cells, rules, strict=True):
        try:
            values.append(read_cell(cell, rule))
        except ValueError as error:
            why = tr("“{cell}” can't stand here. {why}", cell=cell[:40], why=str(error)[:-1])
            raise refused(row_of(name, number, rule.name), why) from error
    return tuple(values)
