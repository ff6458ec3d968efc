"""A week as it is written for tests: the workbook, read back with openpyxl."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import write_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.week import read_week


def written(record: ShopRecord, week: str, to: Path) -> WeekFigures:
    """Write a week to the end and return its figures."""
    steps = write_week(record, read_week(week), to)
    while True:
        try:
            next(steps)
        except StopIteration as end:
            figures: WeekFigures = end.value
            return figures


def opened(path: Path, *, results: bool = True) -> Any:
    """Open a workbook with the kept results of its formulas, or with the formulas."""
    import openpyxl

    return openpyxl.load_workbook(path, data_only=results)


def table_rows(book: Any, sheet: str, name: str = "") -> list[dict[str, Any]]:
    """Return the rows of a sheet's first table, or of that name; without rows it has none."""
    page = book[sheet]
    table = page.tables[name] if name else next(iter(page.tables.values()))
    header, *rows = [[cell.value for cell in row] for row in page[table.ref]]
    found = [dict(zip(header, row, strict=True)) for row in rows]
    return [row for row in found if any(value is not None for value in row.values())]
