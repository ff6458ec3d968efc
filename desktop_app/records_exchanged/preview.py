"""What a file would become, before anything is written: the first rows, cell by cell."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from desktop_app.records_exchanged.question import Question
from desktop_app.records_exchanged.row_reader import RowReader
from desktop_app.records_exchanged.survey import Survey


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


def preview(found: Survey) -> TablePreview:
    """Return what the survey's first rows would become."""
    reader = RowReader(found)
    feeds = tuple(
        tuple(field for field, at in found.columns.items() if index in at)
        for index in range(len(found.headers))
    )
    return TablePreview(
        headers=found.headers,
        feeds=feeds,
        rows=tuple(_row(found, reader, number, cells) for number, cells in found.first_rows),
        questions=found.questions,
        said=_said(found, feeds),
    )


def _row(found: Survey, reader: RowReader, number: int, cells: tuple[str, ...]) -> RowPreview:
    refused = reader.read(number, list(cells))
    why = getattr(refused, "why", "")
    if len(cells) < len(found.headers):
        return RowPreview(number, cells, (), why)
    fields = tuple(_cell(found, reader, field, cells) for field in found.columns)
    return RowPreview(number, cells, fields, why)


def _cell(found: Survey, reader: RowReader, field: str, cells: Sequence[str]) -> CellPreview:
    written = " | ".join(cells[index] for index in found.columns[field])
    try:
        value = reader.read_cell(field, cells)
    except ValueError as error:
        return CellPreview(field, written, "", str(error))
    return CellPreview(field, written, _shown(field, value, found.odometer_unit))


def _shown(field: str, value: Any, file_unit: str) -> str:
    """Return a value as it is shown: days ISO 8601, money with two decimals."""
    if value is None:
        return ""
    if isinstance(value, date):
        return value.isoformat()
    if field == "price":
        return f"{value / 100:,.2f}"
    if field == "hours":
        return f"{value:.2f}"
    if field == "codes":
        return ", ".join(value)
    if field == "odometer":
        number, unit = value
        return "" if number is None else f"{number:,} {unit or file_unit}".strip()
    return str(value)


def _said(found: Survey, feeds: Sequence[Sequence[str]]) -> tuple[str, ...]:
    """Return what was taken for granted, in sentences."""
    signs = {",": "commas", ";": "semicolons", "\t": "tabs", "|": "bars"}
    parted = signs.get(found.shape.delimiter, f"“{found.shape.delimiter}”")
    said = [f"{found.rows:,} rows below the headers, parted by {parted}, read as {found.encoding}."]
    if found.date_order:
        said.append(f"Days are read {found.date_order}.")
    if found.decimal_sign:
        said.append(f"Numbers have a decimal {found.decimal_sign}.")
    if found.odometer_unit:
        said.append(f"Odometers are in {found.odometer_unit} where nothing else is said.")
    left = [name for name, fields in zip(found.headers, feeds, strict=True) if not fields]
    if left:
        said.append(f"Left out: {', '.join(left)}.")
    return tuple(said)
