"""How a table's rows and columns are called in the history of a job."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, TypeAlias

from desktop_app.language import tr
from desktop_app.part_photos.signs import SIDE_NAMES

# How a value is told: as words, as a word of ours that is kept, as words of ours or typed ones,
# what stands on a list of checks, an instrument, what was seen of a dimension, the state of a
# part and its place on the car, yes or no, money in cents, an odometer in the car's unit, miles,
# hours, millimetres, a plain number, a day or moment; the name of a row of another table, or of
# something that has an id in the program; the row that it hangs on; figures that no one reads, and
# words that only the program compares.
How: TypeAlias = Literal[
    "words", "term", "ours", "on a list", "instrument", "seen", "state of a part", "place",
    "yes", "money", "odometer", "miles", "hours", "mm", "number", "moment", "row", "above", "kind",
    "system", "symptom", "condition", "monitor", "step", "origin", "dimension", "reading", "limit",
    "cause", "causes", "level", "work", "figures", "inner",
]  # fmt: skip


@dataclass(frozen=True, slots=True)
class ColumnWords:
    """A column's name and how its values are told; `says` has the words of single values."""

    name: str
    how: How = "words"
    says: Mapping[object, str] | None = None
    table: str = ""  # whose row it names, for "row" and "above"


@dataclass(frozen=True, slots=True)
class TableWords:
    """What a row is called; `named_by` are the columns that tell it from others of its sort.

    A row that hangs on another is called by that one's name too.
    """

    noun: str
    columns: Mapping[str, ColumnWords]
    named_by: tuple[str, ...] = ()


def words(name: str, **says: str) -> ColumnWords:
    """Return a column of words; `says` tells what some of them mean."""
    return ColumnWords(name, "words", _by_value(says))


def term(name: str, **says: str) -> ColumnWords:
    """Return a column that keeps a few words of the program's own, and no typed ones."""
    return ColumnWords(name, "term", _by_value(says))


def _by_value(says: Mapping[str, str]) -> Mapping[object, str]:
    return {key.replace("_", " "): value for key, value in says.items()}


def told(name: str, how: How) -> ColumnWords:
    """Return a column whose values are told in a way of their own."""
    return ColumnWords(name, how)


def chosen(name: str, says: Mapping[object, str]) -> ColumnWords:
    """Return a column with few values, each with its words."""
    return ColumnWords(name, "words", says)


def above(table: str, name: str) -> ColumnWords:
    """Return the column by which a row hangs on another."""
    return ColumnWords(name, "above", None, table)


def row(table: str, name: str) -> ColumnWords:
    """Return a column that names a row of another table."""
    return ColumnWords(name, "row", None, table)


SIDES: Mapping[object, str] = dict(SIDE_NAMES.items())
STAGES: Mapping[object, str] = {"found": tr("as found"), "after repair": tr("after the repair")}
