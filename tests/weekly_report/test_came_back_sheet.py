"""Sheet “Came back”: what has waited longest for a judgement stands on top."""

from __future__ import annotations

from datetime import UTC, datetime

from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.stored import read_week_figures
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import a_week_of_returns


def test_a_visit_of_earlier_weeks_that_nobody_judged_stands_on_top(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    with shop.reading() as connection:
        later = datetime(2026, 11, 30, 9, 0, tzinfo=UTC)
        figures = read_week_figures(connection, read_week("2026-W48"), later)
    waiting, *_ = week_sheet(figures, "Came back").tables
    # The longest first; visits and not pairs: J-160 may be a return of two jobs and waits once.
    assert waiting.column("Later job") == ("J-131", "J-160", "J-162")
    assert waiting.column("Days waiting") == (47, 19, 17)
    assert figures.came_back == ()
