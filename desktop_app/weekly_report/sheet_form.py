"""What a sheet of the workbook is made of: sentences, one table, totals, a chart; plain values."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal

Cell = str | int | float | date | None
Kind = Literal["words", "long words", "day", "count", "number", "hours", "share", "money"]

LONGEST_TEXT = 32_767  # characters; what spreadsheet programs state as the most in one cell
WIDEST = 30  # width of a column of long words, in characters; longer ones wrap


@dataclass(frozen=True, slots=True)
class Column:
    """One column: its header, what its cells are, and the formula that makes them, if one does.

    A formula names other columns of its row in square brackets with an @, `[@Closed]`; the cells
    then hold its results.
    """

    header: str
    kind: Kind
    formula: str | None = None


@dataclass(frozen=True, slots=True)
class Table:
    """A table with a name that formulas can use; every row has one cell for each column.

    `title` stands above it where a sheet has several, `notes` beneath it, `nothing` in place of
    its rows where there are none. `behind` holds for each row the numbers of the jobs that it
    counts; empty where a row is a job itself.
    """

    name: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[Cell, ...], ...]
    title: str = ""
    notes: tuple[str, ...] = ()
    nothing: str = "Nothing to list."
    behind: tuple[tuple[str, ...], ...] = ()

    def reach(self, header: str) -> str:
        """Return how a formula speaks of one column."""
        self.place(header)
        return f"{self.name}[{header}]"

    def place(self, header: str) -> int:
        """Return the place of a column; KeyError where there is none with this header."""
        for place, column in enumerate(self.columns):
            if column.header == header:
                return place
        raise KeyError(header)

    def column(self, header: str) -> tuple[Cell, ...]:
        """Return the cells of one column."""
        place = self.place(header)
        return tuple(row[place] for row in self.rows)


@dataclass(frozen=True, slots=True)
class Total:
    """One figure with the formula that makes it from the tables, and its result as of now.

    None where there is nothing to divide by; the formula then gives an empty text.
    """

    words: str
    formula: str
    value: float | None
    kind: Kind
    note: str = ""


Style = Literal["columns", "bars", "lines", "steps"]


@dataclass(frozen=True, slots=True)
class Chart:
    """A chart of some columns of a table over another one; `share` where the values are shares.

    Headers named in `limits` are drawn thin and broken, as the bounds of the others. "steps" has a
    number on either axis and stays at a value until the next.
    """

    title: str
    style: Style
    table: str
    over: str
    headers: tuple[str, ...]
    across: str
    upwards: str
    limits: tuple[str, ...] = ()
    share: bool = False


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet: its name, the line that every sheet repeats, and what stands below it."""

    name: str
    about: str
    sentences: tuple[str, ...] = ()
    totals: tuple[Total, ...] = ()
    charts: tuple[Chart, ...] = ()
    tables: tuple[Table, ...] = ()

    def table(self, name: str) -> Table:
        """Return the table with this name; KeyError where there is none."""
        for table in self.tables:
            if table.name == name:
                return table
        raise KeyError(name)


def fitting_text(text: str) -> str:
    """Return the text as a cell can hold it: without control characters, cut with a note.

    The limit counts UTF-16 units, as spreadsheet programs do.
    """
    clean = "".join(c if _can_stand(c) else " " for c in text.replace("\r\n", "\n"))
    units = _units(clean)
    if units <= LONGEST_TEXT:
        return clean
    note = f" … (cut here; the whole text of {len(text):,} characters is in the job)"
    room = (LONGEST_TEXT - len(note)) * 2
    return clean.encode("utf-16-le")[:room].decode("utf-16-le", "ignore") + note


def column_width(column: Column, cells: Sequence[str]) -> int:
    """Return a width in characters that fits the cells as shown and the header, which may wrap."""
    longest = max((len(line) for cell in cells for line in cell.split("\n")), default=0)
    header = max(len(word) for word in column.header.split())
    if column.kind == "long words":
        longest = min(longest, WIDEST)
    return max(header + 5, longest + 3)


def lines_needed(text: str, width: int) -> int:
    """Return about how many lines a text takes in a column of that width."""
    fits = max(1, width)
    return sum(max(1, -(-len(line) // fits)) for line in text.split("\n"))


def _units(text: str) -> int:
    return len(text) + sum(c > "\uffff" for c in text)


def _can_stand(char: str) -> bool:
    """Tell whether XML 1.0 lets the character stand (section 2.2, production 2)."""
    return (
        char in "\t\n"
        or "\x20" <= char <= "\ud7ff"
        or "\ue000" <= char <= "\ufffd"
        or (char >= "\U00010000")
    )
