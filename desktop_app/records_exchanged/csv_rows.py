"""Rows of cells from lines, where a quotation mark that is never closed costs one line only."""

from __future__ import annotations

import csv
from collections import deque
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from desktop_app.language import tr
from desktop_app.records_exchanged.table_shape import TableShape
from desktop_app.records_exchanged.text_lines import CUT, TextLines

LONGEST_CELL = 32_767  # what a cell of a workbook holds (ECMA-376)
MOST_LINES_IN_A_ROW = 1_000
_BATCH = 100  # lines at a time: the csv module alone is several times as fast as a look at each
_NO_ROW = tr("The line is too long to be a row.")
_WIDE = 6  # in a table as wide as this, a line of a cell that has all its delimiters is a row


@dataclass(frozen=True, slots=True)
class Broken:
    """A row that could not be cut into cells, the pieces that its line has, and why.

    Where it was cut well and only some cells are no values, `no_values` says why for each of them.
    """

    cells: list[str]
    why: str = ""
    no_values: Mapping[int, str] = field(default_factory=dict)


class _EndlessRow(csv.Error):
    """More lines than any cell has: somewhere a quotation mark was left open."""


class CsvRows:
    """The rows of a table, one after another: cells, or Broken. Blank lines are empty rows.

    `width` is how many cells a row has, once that is known: a row of several lines that has
    another width has swallowed its neighbours.
    """

    def __init__(self, lines: TextLines, shape: TableShape, width: int = 0) -> None:
        self.width = width
        self._lines = lines
        self._shape = shape
        self._again: deque[str] = deque()
        self._taken: list[str] = []
        self._odd = False
        self._alone = 0

    def __iter__(self) -> Iterator[list[str] | Broken]:
        while batch := self._lines.batch(_BATCH):
            rows = self._plain(batch)
            if rows is None:
                self._again.extend(batch)
                yield from self._one_by_one()
            else:
                yield from rows

    def _plain(self, lines: list[str]) -> list[list[str]] | None:
        """Return the rows of lines that are one row each, as nearly all are; None for others."""
        if max(map(len, lines)) > LONGEST_CELL or "\0" in "".join(lines):
            return None
        try:
            rows = list(self._shape.reader(lines))
        except csv.Error:
            return None
        return rows if len(rows) == len(lines) else None

    def _one_by_one(self) -> Iterator[list[str] | Broken]:
        """Give the rows that begin in the lines laid aside, with a look at each."""
        taken = self._taken
        reader = self._shape.reader(self._feed())
        while self._again:
            taken.clear()
            self._odd = False
            self._alone = max(0, self._alone - 1)
            try:
                cells = next(reader)
            except csv.Error as error:
                yield self._broken(error)
                reader = self._shape.reader(self._feed())
                continue
            if len(taken) > 1 and self.width and self._swallowed(cells, self.width):
                yield self._broken(None)
                reader = self._shape.reader(self._feed())
            elif self._odd and (no_values := _no_values(cells)):
                cut = any(line.startswith(CUT) for line in taken)
                yield _cut(cells) if cut else Broken(cells, no_values=no_values)
            else:
                yield cells

    def _feed(self) -> Iterator[str]:
        """Give the lines to the reader, and remember those of the row that is being read."""
        taken, again = self._taken, self._again
        while True:
            if taken and (self._alone or len(taken) >= MOST_LINES_IN_A_ROW):
                raise _EndlessRow
            if not again:
                again.extend(self._lines.batch(_BATCH))
            if not again:
                return
            line = again.popleft()
            taken.append(line)
            if len(line) > LONGEST_CELL or "\0" in line:
                self._odd = True
            yield line

    def _swallowed(self, cells: list[str], width: int) -> bool:
        """Whether a row of several lines has taken in others that were rows of their own."""
        if len(cells) != width:
            return True
        if width < _WIDE:
            return False
        full = [line.count(self._shape.delimiter) >= width - 1 for line in self._taken]
        return any(full[1:-1]) or (full[0] and full[-1])

    def _broken(self, error: csv.Error | None) -> Broken:
        """Give up the row's first line, and let the others be read again.

        After a row without end each of its lines is read alone, or a file of nothing but open
        quotation marks would be gone through a thousand times.
        """
        if isinstance(error, _EndlessRow) and len(self._taken) > 1:
            self._alone = len(self._taken)
        first = self._taken[0]
        self._again.extendleft(reversed(self._taken[1:]))
        cells = first.rstrip("\r\n").split(self._shape.delimiter)
        if "field larger" in str(error) and len(self._taken) == 1:
            return Broken([cell[:LONGEST_CELL] for cell in cells], _too_long())
        return Broken(cells, tr("A quotation mark is not closed, or not doubled inside a cell."))


def is_blank(cells: Sequence[str]) -> bool:
    """Whether nothing stands in a row."""
    return not any(map(str.strip, cells))


def _no_values(cells: Sequence[str]) -> dict[int, str]:
    odd = {at: _nul_says(cell) for at, cell in enumerate(cells) if "\0" in cell}
    long = (at for at, cell in enumerate(cells) if len(cell) > LONGEST_CELL)
    return dict.fromkeys(long, _too_long()) | odd


def _cut(cells: list[str]) -> Broken:
    """Return a row with a line that was cut, without its mark; NUL bytes of its own are told."""
    cells = [cell.replace(CUT, "") for cell in cells]
    return Broken(cells, next(iter(_no_values(cells).values()), _NO_ROW))


def _too_long() -> str:
    return tr("A cell has more than {most:,} letters.", most=LONGEST_CELL)


def _nul_says(cell: str) -> str:
    """Say what a NUL byte is about; the reader of workbooks marks by it what is no value."""
    if cell.startswith("\0="):
        return tr("A formula has no result stored with it; it is not worked out here.")
    if cell.startswith("\0#"):
        return tr("The spreadsheet shows an error here ({error}).", error=cell[1:20])
    return tr("A cell holds a NUL byte.")
