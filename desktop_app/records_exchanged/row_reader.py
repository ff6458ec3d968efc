"""Rows of cells made into what they say of a job, or refused with the cell that is wrong.

Rows are read many at a time, a column after the other: that takes half the time of one by one.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import partial
from itertools import repeat
from operator import attrgetter
from types import MappingProxyType
from typing import Any

from desktop_app.language import tr
from desktop_app.records_exchanged.blank_words import names_no_car, names_nobody
from desktop_app.records_exchanged.code_words import read_codes
from desktop_app.records_exchanged.csv_rows import Broken, is_blank
from desktop_app.records_exchanged.date_order import read_day
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.formula_text import unguarded
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.number_words import (
    money_in,
    read_cents,
    read_hours,
    read_odometer,
    read_unit,
)
from desktop_app.records_exchanged.remembered import Remembered
from desktop_app.records_exchanged.survey import Survey

LONGEST_NAME = 200
_LONG_TEXTS = ("concern", "cause", "correction")
_NO_NUMBER = tr("A job has a number of its own.")
_DISTANCE = ("odometer", "odometer_unit")  # these two are read together
_OF_A_CAR = ("vin", "plate")  # hardly any cell of these comes twice, nor a job's number
_OF_SOMEBODY = ("technician", "supplier")
_NOTHING: Mapping[int, str] = MappingProxyType({})
_EMPTY: dict[str, Any] = {
    **{"opened_on": None, "closed_on": None, "codes": (), "price": None, "hours": None},
}

# The fields of a row in their order, as columns are named: the price is kept in cents.
_ORDER = [field.removesuffix("_cents") for field in JobRow._fields]
_made: Callable[[Iterable[Any]], JobRow] = partial(tuple.__new__, JobRow)
_number = attrgetter("job_number")

Read = Callable[[str], Any]
Cells = list[str] | Broken


class RowReader:
    """Reads the rows of one file, as its survey says."""

    def __init__(self, found: Survey) -> None:
        self._found = found
        self._width = len(found.headers)
        columns = found.columns
        self._whole: dict[str, Callable[[Any], Any]] = {
            field: self._read(field) if len(at) == 1 else self._gather(field)
            for field, at in columns.items()
            if field not in _DISTANCE
        }
        self._unit: Remembered[str, str] = Remembered(lambda text: read_unit(unguarded(text)))
        given = frozenset(columns)
        self._given = {"": given}
        self._given_with_unit = given | {"odometer_unit"}

    def read_many(self, rows: Sequence[tuple[int, Cells]]) -> Iterable[JobRow | RowRejected]:
        """Give what each of these numbered rows says, or one by one all that is wrong with it."""
        width = self._width
        whole = [cells for _, cells in rows if isinstance(cells, list) and len(cells) == width]
        if len(whole) == len(rows):
            try:
                jobs = self._understood([row for row, _ in rows], whole)
            except ValueError:
                jobs = []
            if jobs and all(map(_number, jobs)):
                return jobs
        return self._one_by_one(rows)

    def _one_by_one(self, rows: Iterable[tuple[int, Cells]]) -> Iterable[JobRow | RowRejected]:
        for row, cells in rows:
            read = self.read(row, cells)
            if isinstance(read, JobRow):
                yield read
            else:
                yield from read

    def read(self, row: int, cells: Cells) -> JobRow | list[RowRejected]:
        """Return what the row says, else all reasons why it is refused; none for a blank one."""
        no_values = _NOTHING
        if isinstance(cells, Broken):
            broken, cells = cells, cells.cells
            if broken.why:
                return [RowRejected(row, "", _joined(cells), broken.why)]
            no_values = broken.no_values
        if len(cells) != self._width:
            if is_blank(cells):
                return []
            if len(cells) < self._width or any(cells[self._width :]):
                why = tr(
                    "The row has {cells} cells where the headers are {headers}.",
                    cells=len(cells),
                    headers=self._width,
                )
                return [RowRejected(row, "", _joined(cells), why)]
        try:
            [job] = self._understood([row], [cells])
        except ValueError:
            return self._refused(row, cells, no_values)
        if job.job_number and not no_values:
            return job
        return [] if is_blank(cells) else self._refused(row, cells, no_values) or job

    def _understood(self, rows: list[int], cells: list[list[str]]) -> list[JobRow]:
        """Return the jobs of rows that have all columns; ValueError where one isn't understood."""
        columns = list(zip(*cells, strict=False))  # what stands beyond the headers is empty
        at = self._found.columns
        nothing = ("",) * len(rows)
        odometers, said = (columns[at[f][0]] if f in at else nothing for f in _DISTANCE)
        distances = list(map(self._distance, odometers, said))
        units = [unit for _, unit in distances]
        read: dict[str, Iterable[Any]] = {
            "row": rows,
            "odometer": [number for number, _ in distances],
            "odometer_unit": units,
            "given": [self._given.get(unit, self._given_with_unit) for unit in units],
        }
        for field in FIELDS:
            if field in _DISTANCE:
                continue
            if field not in at:
                read[field] = repeat(_EMPTY.get(field, ""), len(rows))
            elif len(at[field]) == 1:
                read[field] = map(self._whole[field], columns[at[field][0]])
            else:
                parts = zip(*(columns[column] for column in at[field]), strict=True)
                read[field] = map(self._whole[field], parts)
        return list(map(_made, zip(*map(read.__getitem__, _ORDER), strict=True)))

    def _refused(
        self, row: int, cells: list[str], no_values: Mapping[int, str]
    ) -> list[RowRejected]:
        """Return a reason for each field of a row that is not understood.

        `no_values` says why a cell is none; where nothing is read from it, it does no harm.
        """
        number, at = "", self._found.columns
        whys: dict[str, str] = {}
        for field, those in at.items():
            whys[field] = next((no_values[index] for index in those if index in no_values), "")
            try:
                value = self.read_cell(field, cells)
            except ValueError as error:
                whys[field] = whys[field] or str(error)
            else:
                if field == "job_number":
                    number = value
                    whys[field] = whys[field] or ("" if value else _NO_NUMBER)
        if not any(whys.get(field) for field in _DISTANCE):
            try:
                self._distance(*("".join(cells[i] for i in at.get(f, ())) for f in _DISTANCE))
            except ValueError as error:
                whys[_DISTANCE[0]] = str(error)
        return [
            RowRejected(row, field, self._written(field, cells), why, number)
            for field, why in whys.items()
            if why
        ]

    def read_cell(self, field: str, cells: Sequence[str]) -> Any:
        """Return what one field of a row is read as; a ValueError says why it is not understood."""
        at = self._found.columns[field]
        if len(at) > 1:
            return self._gather(field)([cells[index] for index in at])
        return self._read(field)(cells[at[0]])

    def _read(self, field: str) -> Read:
        """Return what reads one cell of a field."""
        found = self._found
        reads: dict[str, Read] = {
            "opened_on": lambda text: read_day(unguarded(text), found.date_order),
            "closed_on": lambda text: read_day(unguarded(text), found.date_order),
            "codes": lambda text: read_codes(unguarded(text), self._codes_kept_elsewhere()),
            "hours": lambda text: read_hours(unguarded(text), found.decimal_sign),
            "odometer_unit": lambda text: read_unit(unguarded(text)),
        }
        if field in reads:
            return Remembered(reads[field]).__getitem__
        if field == "odometer":
            return self._odometer
        if field == "price":
            return self._cents
        if field in _LONG_TEXTS:
            return unguarded
        if field in _OF_A_CAR:
            return _car_name
        if field in _OF_SOMEBODY:
            return Remembered(_somebody).__getitem__
        return _name if field == "job_number" else Remembered(_name).__getitem__

    def _gather(self, field: str) -> Callable[[Iterable[str]], Any]:
        """Return what reads one field from the cells of several columns."""
        if field == "codes":
            read = self._read("codes")
            return lambda cells: tuple(dict.fromkeys(code for cell in cells for code in read(cell)))
        between = " " if field == "vehicle" else "\n"
        return lambda cells: between.join(_name_or_text(field, c) for c in cells if c.strip())

    def _codes_kept_elsewhere(self) -> bool:
        """Whether the columns of the codes are read as words too, so that none is lost."""
        at = self._found.columns
        words = {column for field in _LONG_TEXTS for column in at.get(field, ())}
        return words.issuperset(at.get("codes", ()))

    def _odometer(self, text: str) -> tuple[int | None, str]:
        return read_odometer(unguarded(text), self._found.odometer_sign)

    def _cents(self, text: str) -> int | None:
        text = unguarded(text)
        cents = read_cents(text, self._found.decimal_sign)
        if cents is None or (text[0].isdigit() and text[-1].isdigit()):
            return cents
        currency = (money_in(text.strip()) or ("", ""))[1]
        if currency and currency != self._found.currency:
            raise ValueError(
                tr("The other prices of the file are in {currency}.", currency=self._found.currency)
            )
        return cents

    def _distance(self, odometer: str, unit_said: str) -> tuple[int | None, str]:
        """Return the odometer and its unit: beside it, in its own column, or the file's."""
        unit = self._unit[unit_said]
        number, beside = self._odometer(odometer)
        if beside and unit and beside != unit:
            raise ValueError(
                tr("The odometer says {its_own} and its unit {unit}.", its_own=beside, unit=unit)
            )
        if number is None:
            return None, unit
        return number, beside or unit or self._found.odometer_unit

    def _written(self, field: str, cells: list[str]) -> str:
        return _joined([cells[index] for index in self._found.columns.get(field, ())])


def _name(cell: str) -> str:
    """Return a short text: a name, a number, an identity."""
    bare = cell.strip()
    if len(bare) > LONGEST_NAME:
        raise ValueError(tr("This has more than {most} letters.", most=LONGEST_NAME))
    return unguarded(bare) if bare[:1] == "'" else bare


def _car_name(cell: str) -> str:
    """Return a VIN or a plate; nothing for "unknown" and the like, which would join two cars."""
    name = _name(cell)
    return "" if names_no_car(name) else name


def _somebody(cell: str) -> str:
    """Return who it was; nothing for "n/a" and the like."""
    name = _name(cell)
    return "" if names_nobody(name) else name


def _name_or_text(field: str, cell: str) -> str:
    return _name(cell) if field == "vehicle" else unguarded(cell.strip())


def _joined(cells: Sequence[str]) -> str:
    """Return the beginning of cells, as it is shown beside a reason; NUL is shown by its sign."""
    shown = (cell[:LONGEST_NAME].removeprefix("\0").replace("\0", "␀") for cell in cells[:50])
    return " | ".join(shown)[:LONGEST_NAME]
