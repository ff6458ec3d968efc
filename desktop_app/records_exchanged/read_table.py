"""A table of jobs as an iterator of rows: understood, or refused with the reason."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import dropwhile, islice

from desktop_app.language import tr
from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.row_reader import RowReader
from desktop_app.records_exchanged.survey import Survey
from desktop_app.records_exchanged.table_source import OpenTable, Progress, TableSource
from desktop_app.shop_record.trouble import ShopTrouble

_AT_A_TIME = 250  # one row that is refused lets all of these be read one by one


class Table:
    """The jobs of a file that was surveyed; each iteration reads it from the start.

    Raises ShopTrouble where the file can't be read without asking first.
    """

    def __init__(self, source: TableSource, column_map: ColumnMap, found: Survey) -> None:
        refuse_unclear(source.name, found)
        self.source = source
        self.column_map = column_map
        self.found = found

    def __iter__(self) -> Iterator[JobRow | RowRejected]:
        return self.rows()

    def rows(self, progress: Progress | None = None) -> Iterator[JobRow | RowRejected]:
        """Give each row, or one by one all that is wrong with it.

        `progress` is told now and then which share of the file is read, and may raise to end it.
        """
        found = self.found
        reader = RowReader(found)
        width = len(found.headers)
        with OpenTable(self.source, found.encoding, found.shape, progress, width) as rows:
            below = dropwhile(lambda numbered: numbered[0] <= found.header_row, rows)
            while some := list(islice(below, _AT_A_TIME)):
                yield from reader.read_many(some)

    def settled_map(self) -> ColumnMap:
        """Return the map with all that was found out about the file, for the next one like it."""
        return self.found.settled_map(self.column_map)


def refuse_unclear(file: str, found: Survey) -> None:
    """Raise ShopTrouble where a file has no job numbers, or leaves something to be asked."""
    if "job_number" not in found.columns:
        raise ShopTrouble(
            tr(
                "{file} has no column of job numbers; it has: {there}.",
                file=file,
                there=", ".join(found.headers)[:300],
            ),
            do=tr(
                'Write job_number = "its header" under [columns] into a map (--columns); '
                "the others are understood as before. Or header_row = 3 where the headers "
                "stand further down."
            ),
        )
    for question in found.questions:
        raise question.refusal(file)
