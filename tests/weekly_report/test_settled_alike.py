"""One rule for what is settled, in the book and in the rates; what is not ours leaves both."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.counted import BLANKS
from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import group_rates
from desktop_app.returns_watched.stored_rates import read_counted_jobs
from desktop_app.returns_watched.stored_standing import read_standing
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.sheets.rate_months import OWN
from desktop_app.weekly_report.week import read_week
from desktop_app.weekly_report.year_behind import JobDone, counted_jobs
from tests.watched_shop import job, judge_return, vehicle
from tests.weekly_report.year_made import done

SUNDAY = date(2026, 11, 15)
MISFIRE: dict[str, Any] = {"symptoms": ["misfire"]}
DAY = st.none() | st.integers(0, 90)


def in_book(shop: ShopRecord) -> dict[str, JobDone]:
    return {one.number: one for one in look_at_week(shop, read_week("2026-W46")).year.jobs}


def rates(shop: ShopRecord) -> CountedJobs:
    with shop.reading() as connection:
        return read_counted_jobs(connection, "system", SUNDAY)


@given(
    st.lists(
        st.builds(
            done,
            st.just("J-1"),
            st.integers(0, 200),
            back_after=DAY,
            waits_after=DAY,
            aside_after=DAY,
            unsure_after=DAY,
            lost_after=DAY,
        ),
        max_size=20,
    )
)
def test_a_job_is_settled_as_the_columns_say(jobs: list[JobDone]) -> None:
    columns = counted_jobs(jobs, lambda _job: ())
    assert [one.settled for one in jobs] == columns.settled.tolist()
    parts = (columns.settled, columns.still_open, columns.waiting, columns.not_ours)
    several = sum(part.astype(int) for part in (*parts, columns.cannot_tell, columns.lost_sight))
    assert set(several.tolist()) <= {1}


def test_a_car_that_came_again_after_its_sale_is_settled_nowhere(shop: ShopRecord) -> None:
    change_rule(shop, "sale_ends_window", "yes")
    for n in range(4):
        car = vehicle(shop, plate=f"T {n}")
        first = job(shop, car, f"J-{n}", "2026-06-01", "2026-06-01", **MISFIRE)
        if n:
            continue
        with shop.deed("Sold") as deed:
            deed.add(VehicleEvent, vehicle_id=car, kind="sold", happened_on="2026-06-05")
        later = job(shop, car, "K-0", "2026-06-20", "2026-11-14", **MISFIRE)
        judge_return(shop, first, later, "same symptom")
    book = look_at_week(shop, read_week("2026-W46"))
    months = week_sheet(book, "Rate").table("RateByMonth")
    main = months.column("Settled")[months.column("Window").index(OWN)]
    totals = {one.words: one.value for one in week_sheet(book, "Read first").totals}
    raw = week_sheet(book, "Raw").table("Raw").column("Settled")
    assert main == totals["of these settled"] == sum(map(int, map(str, raw))) == 3
    assert int(rates(shop).settled.sum()) == 3


@pytest.mark.parametrize("said", ["same symptom", "other hands", "unrelated", "cannot tell"])
def test_a_cause_that_is_not_ours_leaves_the_rate_whatever_was_judged(
    shop: ShopRecord, said: str
) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-05-01", "2026-05-01", **MISFIRE)
    later = job(shop, car, "K-1", "2026-05-20", "2026-05-21", **MISFIRE)
    judge_return(shop, first, later, said, cause_class="new")
    assert in_book(shop)["J-1"].state == "came back, not ours"
    assert not in_book(shop)["J-1"].settled
    found = rates(shop)
    assert (found.not_ours.tolist(), found.settled.tolist()) == ([True, False], [False, True])


def test_what_nobody_can_tell_is_neither_comeback_nor_success(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-05-01", "2026-05-01", **MISFIRE)
    later = job(shop, car, "K-1", "2026-05-20", "2026-05-21", cause="", correction="", **MISFIRE)
    judge_return(shop, first, later, "cannot tell", cause_class="unknown")
    with shop.reading() as connection:
        page = read_standing(connection, first, SUNDAY).standing.value
    assert page == in_book(shop)["J-1"].state == "came back, cannot tell"
    assert not in_book(shop)["J-1"].settled
    [group] = group_rates(rates(shop), "system")
    assert (group.jobs, group.settled, group.cannot_tell) == (1, 0, 1)
    states = week_sheet(look_at_week(shop, read_week("2026-W46")), "Windows")
    assert ("came back, cannot tell", 1) in [
        row[:2] for row in states.table("HowWindowsStand").rows
    ]


def test_an_unrelated_visit_without_such_a_cause_stays_quiet(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-05-01", "2026-05-01", **MISFIRE)
    later = job(shop, car, "K-1", "2026-05-20", "2026-05-21", **MISFIRE)
    judge_return(shop, first, later, "unrelated")
    assert in_book(shop)["J-1"].settled
    assert rates(shop).settled.tolist() == [True, True]


def test_what_is_blank_is_blank_to_the_record_too(shop: ShopRecord) -> None:
    job(shop, vehicle(shop), "J-1", "2026-05-01", "2026-05-01", cause="\u00a0\u2009")
    assert len(rates(shop).days_gone) == 0
    assert not in_book(shop)["J-1"].counted
    assert BLANKS.strip() == ""
    assert {chr(n) for n in range(0x3001) if chr(n).isspace()} == set(BLANKS)
