"""The weekly workbook against XlsxWriter writing the same cells, and Monday Book's first look.

A history of a million jobs takes two minutes to make and three to write twice; it is measured with
BENCHWITNESS_WEEK_JOBS=1000000 in the environment.
"""

from __future__ import annotations

import os
import time
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from io import BytesIO
from pathlib import Path

import pytest

from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.weekly_report.actions import look_at_week, write_week
from desktop_app.weekly_report.pages import week_sheet, week_sheets
from desktop_app.weekly_report.sheet_form import Sheet
from desktop_app.weekly_report.sheet_names import READ_FIRST
from desktop_app.weekly_report.week import read_week
from tests.large_history import large_history

JOBS = 100_000
WRITTEN = int(os.environ.get("BENCHWITNESS_WEEK_JOBS", JOBS))
WEEK = read_week("2026-W46")


def _opened(folder: Path, jobs: int) -> ShopRecord:
    large_history(folder, jobs, searchable=False)
    return open_shop(folder, lambda: datetime(2026, 11, 16, 12, tzinfo=UTC))


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopRecord]:
    """A shop of 100,000 jobs."""
    record = _opened(tmp_path_factory.mktemp("history") / "shop", JOBS)
    yield record
    record.close()


@pytest.fixture(scope="module")
def written(shop: ShopRecord, tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopRecord]:
    """The shop whose week is written; as many jobs as the environment says."""
    if WRITTEN == JOBS:
        yield shop
        return
    record = _opened(tmp_path_factory.mktemp("long") / "shop", WRITTEN)
    yield record
    record.close()


def _seconds(work: Callable[[], object]) -> float:
    """Return the processor's time: what else runs on the machine must not decide."""
    start = time.process_time()
    work()
    return time.process_time() - start


def _plainly(sheets: tuple[Sheet, ...]) -> None:
    """Write the same cells with nothing but XlsxWriter: no widths, heights, tables or charts."""
    from xlsxwriter import Workbook

    book = Workbook(BytesIO(), {"in_memory": True, "default_date_format": "yyyy-mm-dd"})
    for sheet in sheets:
        page = book.add_worksheet(sheet.name)
        row = 0
        for table in sheet.tables:
            page.write_row(row, 0, [column.header for column in table.columns])
            for cells in table.rows:
                row += 1
                for place, cell in enumerate(cells):
                    page.write(row, place, cell)
            row += 2
    book.close()


def test_the_workbook_costs_little_more_than_its_cells(written: ShopRecord, tmp_path: Path) -> None:
    """At most 2 s more than XlsxWriter needs for the cells, reading and reckoning included."""

    def ours() -> None:
        for _ in write_week(written, WEEK, tmp_path / "week.xlsx"):
            pass

    sheets = week_sheets(look_at_week(written, WEEK))
    mine, plain = _seconds(ours), _seconds(lambda: _plainly(sheets))
    cells = sum(len(t.rows) * len(t.columns) for s in sheets for t in s.tables)
    print(f"\nweek of {WRITTEN:,} jobs: {mine:.2f} s; {cells:,} cells plainly: {plain:.2f} s")
    assert mine <= plain + 2.0 * 1.3


def test_monday_book_is_there_within_a_second(shop: ShopRecord, tmp_path: Path) -> None:
    def first_look() -> None:
        week_sheet(look_at_week(shop, WEEK), READ_FIRST)

    first_look()  # libraries are loaded
    taken = min(_seconds(first_look) for _ in range(3))
    print(f"\nMonday Book at {JOBS:,} jobs: {taken:.2f} s")
    assert taken <= 1.0 * 1.3
