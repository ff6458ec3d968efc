"""Jobs from before the year are under watch until both limits are passed, where both must end."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.sheets.first_fixed import first_tries
from desktop_app.weekly_report.week import read_week
from desktop_app.weekly_report.weekly_chart_of import weeks_charted
from tests.watched_shop import job, judge_return, vehicle

BOTH = {"window_days": 90, "window_miles": 3000, "window_rule": "both"}
MILES = {"window_days": 0, "window_miles": 3000}


@pytest.mark.parametrize(
    ("window", "read_at", "watched"),
    [
        (BOTH, None, 1),  # nobody has read the miles: it stays open
        (BOTH, 11_000, 1),  # its days are over, its miles are not
        (BOTH, 14_000, 0),  # both were passed when it was read
        (MILES, 11_000, 1),
        (MILES, 14_000, 0),
        ({"window_days": 90, "window_miles": 3000}, None, 0),
    ],
)
def test_an_older_window_is_open_by_its_own_rule(
    shop: ShopRecord, window: dict[str, object], read_at: int | None, watched: int
) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2025-08-01", "2025-08-02", 10_000, 10_000, **window)
    if read_at is not None:
        nothing = {"system": "brakes", "cause": "", "correction": ""}
        job(shop, car, "J-2", "2026-02-01", "2026-02-01", read_at, **nothing)
    charted = weeks_charted(look_at_week(shop, read_week("2026-W46")))
    assert charted.watched[-1] == watched


def test_what_is_left_of_an_older_window_says_on_which_day_it_was_read(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2025-10-01", "2025-10-02", 1000, window_days=730, window_miles=24_000)
    job(shop, car, "J-2", "2026-10-01", "2026-10-02", 9000, system="brakes")
    watch = week_sheet(look_at_week(shop, read_week("2026-W46")), "Windows").table("UnderWatch")
    rows = dict(zip(watch.column("Job"), watch.rows, strict=True))
    left = [column.header for column in watch.columns].index("Miles left (last read)")
    assert rows["J-1"][left : left + 2] == (16_000, date(2026, 10, 1))
    assert rows["J-2"][left : left + 2] == ("not read", None)


@pytest.mark.parametrize(("judged", "tries"), [("same symptom", []), ("unrelated", ["J-2"])])
def test_a_comeback_that_came_before_the_year_is_no_first_try(
    shop: ShopRecord, judged: str, tries: list[str]
) -> None:
    car = vehicle(shop)
    one = job(shop, car, "J-1", "2025-10-01", "2025-10-02", symptoms=["misfire"])
    two = job(shop, car, "J-2", "2025-11-14", "2025-11-19", symptoms=["misfire"])
    judge_return(shop, one, two, judged)
    year = look_at_week(shop, read_week("2026-W46")).year
    assert [done.number for done in year.jobs] == ["J-2"]
    assert [done.number for done in first_tries(year)] == tries
