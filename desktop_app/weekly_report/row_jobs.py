"""Which jobs a row of a table speaks of, for whoever wants to open them."""

from __future__ import annotations

from desktop_app.weekly_report.headers import JOB_COLUMNS
from desktop_app.weekly_report.sheet_form import Table


def stands_for_jobs(table: Table, row: int) -> bool:
    """Tell whether a row stands for the jobs behind it, and is no job itself."""
    return bool(table.behind and table.behind[row])


def jobs_of_row(table: Table, row: int) -> tuple[str, ...]:
    """Return the numbers of the jobs that a row counts, or of its own job and those beside it."""
    if stands_for_jobs(table, row):
        return table.behind[row]
    headers = [column.header for column in table.columns]
    cells = (table.rows[row][headers.index(one)] for one in JOB_COLUMNS if one in headers)
    return tuple(dict.fromkeys(str(number) for number in cells if number))
