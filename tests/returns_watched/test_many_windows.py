"""Many jobs at once: in a window that is the same for all, and with numbers of any size."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

import numpy as np
import pytest

from desktop_app.repair_jobs.stored import Visit
from desktop_app.returns_watched.actions import name_cause_class
from desktop_app.returns_watched.candidate import all_candidates
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER
from desktop_app.returns_watched.many_visits.many_candidates import many_candidates
from desktop_app.returns_watched.many_visits.running_places import ReadingColumns, in_order
from desktop_app.returns_watched.many_visits.sharing_pairs import sharing_pairs
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, Places, VisitColumns
from desktop_app.returns_watched.stored_columns import read_columns
from desktop_app.returns_watched.stored_facts import read_facts
from desktop_app.returns_watched.stored_in_window import fates_in_window
from desktop_app.returns_watched.stored_look import look_at
from desktop_app.returns_watched.stored_many import read_many
from desktop_app.returns_watched.stored_recent import Period
from desktop_app.returns_watched.window import LONG_WINDOW, MAIN_WINDOW, Window
from desktop_app.shop_record.record import ShopRecord
from tests.watched_shop import job, judge_return, vehicle

TODAY = date(2026, 11, 16)
MANY = 2**31 - 2  # the largest numbers that the columns hold


def whole(*numbers: int) -> Any:
    return np.array(numbers, dtype=np.int32)


@pytest.fixture
def first(shop: ShopRecord) -> int:
    """A job that left on 1 September at 10,000 miles; its car is here again twice."""
    car = vehicle(shop)
    one = job(shop, car, "J-1", "2026-08-31", "2026-09-01", 9_990, 10_000)
    job(shop, car, "J-2", "2026-09-21", "2026-09-22", 10_500)
    job(shop, car, "J-3", "2026-10-11", "2026-10-12", 11_500)
    return one


def became(shop: ShopRecord, window: Window) -> dict[str, int | None]:
    """After how many days which thing became of the first job in a window."""
    with shop.reading() as connection:
        found = read_many(connection, None, TODAY, LONG_WINDOW, {})
        at = np.zeros(1, dtype=np.int64)
        fates = fates_in_window(connection, found, at, window, TODAY)
    assert fates.window_days.tolist() == [window.days]
    names = ("back_after", "waits_after", "lost_after", "aside_after", "unsure_after")
    days = {name.removesuffix("_after"): int(getattr(fates, name)[0]) for name in names}
    return {name: day for name, day in days.items() if day != NEVER}


@pytest.mark.parametrize(
    ("window", "after"),
    [
        (Window(90, 3000), {"waits": 20}),
        (Window(20, 500), {"waits": 20}),
        (Window(19, 3000), {}),
        (Window(90, 499), {}),
        (Window(19, 3000, "both"), {"waits": 20}),
    ],
)
def test_the_window_asked_about_decides_and_not_the_jobs_own(
    shop: ShopRecord, first: int, window: Window, after: dict[str, int]
) -> None:
    assert became(shop, window) == after


def test_each_judgement_has_its_day_in_the_window(shop: ShopRecord, first: int) -> None:
    judge_return(shop, first, 2, "cannot tell")
    judge_return(shop, first, 3, "same part")
    assert became(shop, Window(90, 3000)) == {"unsure": 20, "back": 40}
    assert became(shop, Window(39, 3000)) == {"unsure": 20}
    name_cause_class(shop, first, 3, "other-use")
    assert became(shop, Window(90, 3000)) == {"unsure": 20, "aside": 40}


def test_a_car_that_is_gone_is_watched_to_the_day_before(shop: ShopRecord) -> None:
    left = job(shop, vehicle(shop), "J-1", "2026-09-01", "2026-09-01")
    note_answer(shop, left, "car is gone", on=date(2026, 9, 11))
    assert became(shop, Window(90, 3000)) == {"lost": 9}
    assert became(shop, Window(9, 3000)) == {}


def test_what_was_only_told_counts_in_the_window_asked_about(shop: ShopRecord) -> None:
    left = job(shop, vehicle(shop), "J-1", "2026-09-01", "2026-09-01")
    note_answer(shop, left, "same trouble", on=date(2026, 9, 21))
    assert became(shop, Window(20, 3000)) == {"waits": 20}
    assert became(shop, Window(19, 3000)) == {}


@pytest.mark.parametrize("long", [Window(0, 900), Window(10, 900, "both"), Window(10, 900)])
def test_a_long_window_without_days_reaches_as_far_as_its_miles(
    shop: ShopRecord, long: Window
) -> None:
    car = vehicle(shop)
    for month, odometer in ((1, 10_000), (5, 10_800), (9, 11_200)):
        came = f"2026-{month:02d}-01"
        job(shop, car, f"J-{month}", came, came, odometer, window_days=20)
    with shop.reading() as connection:
        rows = read_facts(connection)
        columns = read_columns(connection, None, None, {})
    found = many_candidates(columns.jobs, long)
    pairs = zip(found.earlier.tolist(), found.later.tolist(), strict=True)
    expected = all_candidates(rows.jobs, MAIN_WINDOW, long)
    numbers = ("J-1", "J-5", "J-9")
    assert [(numbers[one], numbers[other]) for one, other in pairs] == sorted(
        (one.earlier, one.later) for one in expected
    )
    assert len(expected) == (0 if long.rule == "first" and long.days else 2)


def test_a_visit_without_a_job_is_a_visit(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-10-01", "2026-10-02")
    with shop.deed("A visit alone") as deed:
        deed.add(Visit, vehicle_id=car, came_at="2026-11-09T08:00:00+00:00")
    with shop.reading() as connection:
        look = look_at(connection, Period(date(2026, 9, 1), TODAY, 365), LONG_WINDOW, {})
    days = sorted(date.fromordinal(day) for day in look.came.day.tolist())
    assert days == [date(2026, 10, 1), date(2026, 11, 9)]


def test_vehicles_and_traits_may_have_any_number() -> None:
    places = Places(whole(*[-1] * 4), np.zeros(4))
    few = VisitColumns(
        vehicle=whole(0, 1, 0, 1),
        opened=whole(10, 10, 20, 30),
        handed_over=whole(10, 10, NO_DAY, NO_DAY),
        came_with=places,
        left_with=places,
        window_days=whole(*[90] * 4),
        window_miles=np.zeros(4),
        ends_both=np.zeros(4, dtype=bool),
        sold=whole(*[NO_DAY] * 4),
        says_same=np.zeros(4, dtype=bool),
        trait_job=whole(0, 1, 2, 3),
        trait=whole(0, 1, 0, 0),
    )
    many = replace(few, vehicle=few.vehicle * MANY, trait=few.trait * MANY)
    last = whole(*[100] * 4)
    for jobs in (few, many):
        pairs = [
            (one, other)
            for earlier, later in sharing_pairs(jobs, last)
            for one, other in zip(earlier.tolist(), later.tolist(), strict=True)
        ]
        assert pairs == [(0, 2)]  # the other car's later job shares nothing


def test_readings_of_any_vehicle_day_and_moment_are_put_in_order() -> None:
    def order(scale: int) -> list[int]:
        readings = ReadingColumns(
            vehicle=whole(1, 0, 1, 1, 0) * scale,
            day=whole(1, 2, 1, 0, 1) * min(scale, 3_000_000),
            moment=whole(1, 0, 0, 9, 0) * (scale // 9 or 1),
            value=np.zeros(5, dtype=np.int64),
            in_km=np.zeros(5, dtype=bool),
            source=np.zeros(5, dtype=np.int8),
        )
        return in_order(readings).tolist()

    assert order(1) == order(MANY) == [4, 1, 3, 2, 0]
