"""What a file would become, before anything is written: the first rows, cell by cell."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from desktop_app.figures_shown import figure
from desktop_app.records_exchanged.date_order import still_to_come
from desktop_app.records_exchanged.question import Question
from desktop_app.records_exchanged.row_reader import RowReader
from desktop_app.records_exchanged.survey import Survey
from desktop_app.records_exchanged.taken_for_granted import taken_for_granted


@dataclass(frozen=True, slots=True)
class CellPreview:
    """What a field of a row would become; where it isn't understood, `why` says the reason."""

    field: str
    written: str
    becomes: str
    why: str = ""


@dataclass(frozen=True, slots=True)
class RowPreview:
    """A row of the file with its cells as they stand there, and its fields as they are read."""

    row: int
    cells: tuple[str, ...]
    fields: tuple[CellPreview, ...]
    why: str = ""


@dataclass(frozen=True, slots=True)
class TablePreview:
    """`feeds` names for each column the fields that it is read into; `()` is a column left out."""

    headers: tuple[str, ...]
    feeds: tuple[tuple[str, ...], ...]
    rows: tuple[RowPreview, ...]
    questions: tuple[Question, ...]
    said: tuple[str, ...]


SaysDay = Callable[[date], str]


def preview(
    found: Survey, today: date | None = None, says_day: SaysDay = date.isoformat
) -> TablePreview:
    """Return what the survey's first rows would become; after `today` no day is one."""
    reader = RowReader(found)
    feeds = tuple(
        tuple(field for field, at in found.columns.items() if index in at)
        for index in range(len(found.headers))
    )
    return TablePreview(
        headers=found.headers,
        feeds=feeds,
        rows=tuple(_row(found, reader, each, today, says_day) for each in found.first_rows),
        questions=found.questions,
        said=taken_for_granted(found),
    )


def _row(
    found: Survey,
    reader: RowReader,
    numbered: tuple[int, tuple[str, ...]],
    today: date | None,
    says_day: SaysDay,
) -> RowPreview:
    number, cells = numbered
    read = reader.read(number, list(cells))
    why = read[0].why if isinstance(read, list) and read else ""
    if len(cells) < len(found.headers):
        return RowPreview(number, cells, (), why)
    fields = tuple(_cell(found, reader, field, cells, today, says_day) for field in found.columns)
    return RowPreview(number, cells, fields, why or _first_why(fields))


def _first_why(fields: Sequence[CellPreview]) -> str:
    return next((one.why for one in fields if one.why), "")


def _cell(
    found: Survey,
    reader: RowReader,
    field: str,
    cells: Sequence[str],
    today: date | None,
    says_day: SaysDay,
) -> CellPreview:
    written = " | ".join(cells[index] for index in found.columns[field])
    try:
        value = reader.read_cell(field, cells)
    except ValueError as error:
        return CellPreview(field, written, "", str(error))
    if today is not None and isinstance(value, date) and (why := still_to_come(value, today)):
        return CellPreview(field, written, "", why)
    return CellPreview(field, written, _shown(field, value, found.odometer_unit, says_day))


def _shown(field: str, value: Any, file_unit: str, says_day: SaysDay) -> str:
    """Return a value as it is shown: money with two decimals."""
    if value is None:
        return ""
    if isinstance(value, date):
        return says_day(value)
    if field == "price":
        return figure(value / 100, ",.2f")
    if field == "hours":
        return figure(value, ".2f")
    if field == "codes":
        return ", ".join(value)
    if field == "odometer":
        number, unit = value
        return "" if number is None else f"{figure(number, ',')} {unit or file_unit}".strip()
    return str(value)
