"""What comebacks of the year before a book cost, on which its sums of 52 weeks stand."""

from __future__ import annotations

from desktop_app.returns_watched import judging_actions
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.before_the_year import CostBefore
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import job, judge_return, vehicle

WEEK = read_week("2026-W46")  # its book begins on Monday 17 November 2025


def came_back(
    record: ShopRecord,
    plate: str,
    left: str,
    came: str,
    cents: int,
    judgement: str = "same symptom",
) -> None:
    """Add a job and the visit that was judged a return of it, with a cost."""
    car = vehicle(record, plate=plate)
    first = job(record, car, f"{plate}-1", left, left)
    back = job(record, car, f"{plate}-2", came, came)
    judge_return(record, first, back, judgement)
    judging_actions.write_amount(record, first, back, "parts_cents", cents)


def before(record: ShopRecord) -> list[tuple[str, int]]:
    costs = look_at_week(record, WEEK).year.costs_before
    return [(one.later, one.cents) for one in costs]


def test_comebacks_of_the_year_before_are_read_and_no_others(shop: ShopRecord) -> None:
    came_back(shop, "A", "2025-08-01", "2025-08-20", 5_000)
    came_back(shop, "B", "2024-10-01", "2024-11-18", 700)  # the first day of that year
    came_back(shop, "C", "2024-10-01", "2024-11-17", 900)  # a day too old
    came_back(shop, "D", "2025-01-01", "2025-06-01", 900)  # beyond its window
    came_back(shop, "E", "2025-08-01", "2025-08-20", 900, judgement="unrelated")
    came_back(shop, "F", "2025-11-01", "2025-11-17", 300)  # in the book's own year
    assert before(shop) == [("B-2", 700), ("A-2", 5_000)]


def test_the_same_amounts_of_one_visit_count_once(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2025-07-01", "2025-07-02")
    other = job(shop, car, "J-2", "2025-07-05", "2025-07-06")
    back = job(shop, car, "J-3", "2025-08-01", "2025-08-01")
    for earlier in (first, other):
        judge_return(shop, earlier, back, "same symptom")
        judging_actions.write_amount(shop, earlier, back, "parts_cents", 5_000)
    assert before(shop) == [("J-3", 5_000)]


def test_after_a_job_in_which_nothing_was_put_right_nothing_counts(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2025-07-01", "2025-07-02", cause="", correction="")
    back = job(shop, car, "J-2", "2025-08-01", "2025-08-01")
    judge_return(shop, first, back, "same symptom")
    judging_actions.write_amount(shop, first, back, "parts_cents", 5_000)
    assert before(shop) == []


def test_the_last_week_sums_up_both_years_parts(shop: ShopRecord) -> None:
    came_back(shop, "A", "2025-11-01", "2025-11-15", 5_000)  # two days before the book's year
    came_back(shop, "F", "2025-11-01", "2025-11-18", 300)
    figures = look_at_week(shop, WEEK)
    assert figures.year.costs_before == (
        CostBefore("A-2", "A-1", figures.year.first.replace(day=15), 5_000),
    )
    weeks = week_sheet(figures, "Costs").table("CostByWeek")
    assert list(zip(weeks.column("Week"), weeks.column("52 weeks to then"), strict=True)) == [
        ("2025-W47", 53.0),
        ("2026-W46", 3.0),
    ]
