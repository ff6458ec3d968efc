"""Tables of jobs written for the tests, and what is read from them."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence

from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.survey import survey
from desktop_app.records_exchanged.table_source import TableSource


def source_of(content: str | bytes) -> TableSource:
    """A file that lies in memory."""
    data = content.encode() if isinstance(content, str) else content
    return TableSource("jobs.csv", len(data), lambda: io.BytesIO(data))


def table_of(content: str | bytes, column_map: ColumnMap | None = None) -> Table:
    source, laid_down = source_of(content), column_map or ColumnMap()
    return Table(source, laid_down, survey(source, laid_down))


def all_rows(
    content: str | bytes, column_map: ColumnMap | None = None
) -> list[JobRow | RowRejected]:
    return list(table_of(content, column_map))


def jobs_of(content: str | bytes, column_map: ColumnMap | None = None) -> list[JobRow]:
    """The rows of a file in which each is understood."""
    rows = all_rows(content, column_map)
    assert not [row for row in rows if isinstance(row, RowRejected)]
    return [row for row in rows if isinstance(row, JobRow)]


def refused_of(content: str | bytes, column_map: ColumnMap | None = None) -> list[RowRejected]:
    rows = all_rows(content, column_map)
    return [row for row in rows if isinstance(row, RowRejected)]


def written(rows: Sequence[Sequence[str]], delimiter: str = ",") -> str:
    """The rows as the csv module writes them."""
    out = io.StringIO()
    csv.writer(out, delimiter=delimiter).writerows(rows)
    return out.getvalue()


def column(header: str, *cells: str) -> str:
    """A table of numbered jobs with one more column."""
    return written([["job_number", header], *([f"J-{n}", c] for n, c in enumerate(cells, 1))])
