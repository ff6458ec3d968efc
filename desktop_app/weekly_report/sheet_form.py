"""What a sheet of the workbook is made of: sentences, one table, totals, a chart; plain values."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Literal

from desktop_app.language import tr

Cell = str | int | float | date | None
JobsOfRow = Callable[[int], tuple[str, ...]]
Kind = Literal["words", "long words", "day", "count", "number", "hours", "share", "money"]

# What XML 1.0 does not let stand (section 2.2, production 2).
_CANNOT_STAND = re.compile("[^\t\n\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
LONGEST_TEXT = 32_767  # characters; what spreadsheet programs state as the most in one cell


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
    counts; empty where a row is a job itself and names it. `behind_of` finds the same for single
    columns that count fewer jobs than their row does, by header and then by row: few are asked for.
    """

    name: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[Cell, ...], ...]
    title: str = ""
    notes: tuple[str, ...] = ()
    nothing: str = tr("Nothing to list.")
    behind: tuple[tuple[str, ...], ...] = ()
    behind_of: Mapping[str, JobsOfRow] = field(default_factory=dict)

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

    def figures(self, header: str) -> list[float]:
        """Return those cells of a column in which a figure is written."""
        return [cell for cell in self.column(header) if isinstance(cell, (int, float))]

    def sum_of(self, header: str) -> tuple[str, float | None]:
        """Return the formula of a column's sum, and its result; where nothing is written none."""
        reach, written = self.reach(header), self.figures(header)
        return f'=IF(COUNT({reach})=0,"",SUM({reach}))', sum(written) if written else None


@dataclass(frozen=True, slots=True)
class Total:
    """One figure with the formula that makes it from the tables, and its result as of now.

    None where there is nothing to divide by or to add up; the formula then gives an empty text.
    `jobs` finds the numbers of those behind it. `short` is how it is said where it is seen first.
    """

    words: str
    formula: str
    value: float | None
    kind: Kind
    note: str = ""
    jobs: Callable[[], tuple[str, ...]] | None = None
    short: str = ""


@dataclass(frozen=True, slots=True)
class ToDo:
    """What somebody has to do, the numbers of the jobs, and the sheet that tells more of it."""

    words: str
    jobs: tuple[str, ...]
    sheet: str


Style = Literal["bars", "lines", "steps"]


@dataclass(frozen=True, slots=True)
class Chart:
    """A chart of some columns of a table over another one; `share` where the values are shares.
    `currency` stands before amounts of money.

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
    currency: str = ""


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet: its name, the line that every sheet repeats, and what stands below it.

    It prints as many pages wide as `pages_across`: one, where it is meant to be read on paper.
    `totals_name` is the name that formulas can use for its totals, whatever language is spoken.
    It opens on those totals that are `short` and on `to_do`, on paper as in the window.
    """

    name: str
    about: str
    sentences: tuple[str, ...] = ()
    totals: tuple[Total, ...] = ()
    charts: tuple[Chart, ...] = ()
    tables: tuple[Table, ...] = ()
    pages_across: int = 1
    totals_name: str = "Totals"
    to_do: tuple[ToDo, ...] = ()

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
    if len(text) <= LONGEST_TEXT and text.isascii() and text.isprintable():
        return text
    clean = _CANNOT_STAND.sub(" ", text.replace("\r\n", "\n"))
    if len(clean) * 2 <= LONGEST_TEXT or _units(clean) <= LONGEST_TEXT:
        return clean
    note = tr(" … (cut here; the whole text of {text:,} characters is in the job)", text=len(text))
    room = (LONGEST_TEXT - len(note)) * 2
    return clean.encode("utf-16-le")[:room].decode("utf-16-le", "ignore") + note


def _units(text: str) -> int:
    return len(text) + sum(c > "\uffff" for c in text)
