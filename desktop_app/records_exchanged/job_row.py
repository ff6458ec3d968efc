"""What one row of a table of jobs says, or why it says nothing."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import NamedTuple

AT_A_TIME = 2000  # rows that are written while the next are read


class JobRow(NamedTuple):
    """One row as it was understood. `row` is its row in the file as a spreadsheet counts, from 1.

    A cell or a column that is empty gives "" or None; what `given` leaves out, the file has no
    column for, and it changes nothing in a job that is known already.
    """

    row: int
    job_number: str
    opened_on: date | None
    closed_on: date | None
    vin: str
    plate: str
    vehicle: str
    odometer: int | None
    odometer_unit: str  # "mi", "km" or "" (not said)
    technician: str
    concern: str
    cause: str
    correction: str
    codes: tuple[str, ...]
    system: str
    part_kind: str
    part_number: str
    supplier: str
    part_origin: str
    price_cents: int | None
    hours: float | None
    return_of: str
    judgement: str
    given: frozenset[str]


@dataclass(frozen=True, slots=True)
class RowRejected:
    """Why a row was not taken: the column that is wrong, what stood there, what is wrong with it.

    A row with several wrong columns has one of these for each; "" is the row as a whole.
    `job_number` is the row's, where it could be read.
    """

    row: int
    column: str
    value: str
    why: str
    job_number: str = ""
