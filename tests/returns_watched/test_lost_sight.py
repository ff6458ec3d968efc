"""A car that is gone, or sold where a sale ends the window: neither watched, open nor a success."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.repair_jobs.stored import VehicleEvent, Visit
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, CountedJobs
from desktop_app.returns_watched.honest_numbers.rates import Rates, rates_of
from desktop_app.returns_watched.standing import Standing
from desktop_app.returns_watched.stored_promise import read_promise
from desktop_app.returns_watched.stored_rates import read_counted_jobs
from desktop_app.returns_watched.stored_returns import read_returns, read_watch
from desktop_app.returns_watched.stored_standing import read_standing
from desktop_app.returns_watched.stored_watch_place import read_watch_place
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.week import week_of
from desktop_app.weekly_report.year_behind import JobDone
from tests.watched_shop import job, judge_return, vehicle

GONE = date(2026, 9, 20)


@pytest.fixture
def left(shop: ShopRecord) -> int:
    """A job that left on the first of September with 90 days, until the end of November."""
    return job(shop, vehicle(shop), "J-1", "2026-09-01", "2026-09-01")


def sold(shop: ShopRecord, car: int, on: str) -> None:
    with shop.deed("Note a sale") as deed:
        deed.add(VehicleEvent, vehicle_id=car, kind="sold", happened_on=on)


def on_watch(shop: ShopRecord, today: date) -> list[str]:
    with shop.reading() as connection:
        return [one.job for one in read_watch(connection, today)]


def standing(shop: ShopRecord, job_id: int, today: date) -> Standing:
    with shop.reading() as connection:
        return read_standing(connection, job_id, today).standing


def rates(shop: ShopRecord, today: date) -> tuple[CountedJobs, Rates]:
    with shop.reading() as connection:
        jobs = read_counted_jobs(connection, "system", today)
        return jobs, rates_of(jobs, "system", read_promise(connection).main, today)


def in_the_year(shop: ShopRecord) -> list[JobDone]:
    year = look_at_week(shop, week_of(shop.clock().date())).year
    return sorted(year.jobs, key=lambda one: one.number)


def test_a_car_that_is_gone_is_watched_no_longer(shop: ShopRecord, left: int) -> None:
    note_answer(shop, left, "car is gone", on=GONE)
    assert on_watch(shop, date(2026, 9, 19)) == ["J-1"]
    assert standing(shop, left, date(2026, 9, 19)) == "under watch"
    for today in (GONE, date(2026, 11, 1), date(2027, 1, 1)):
        assert on_watch(shop, today) == []
        assert standing(shop, left, today) == "lost sight"
    with shop.reading() as connection:
        place = read_watch_place(connection, date(2026, 11, 29))
    assert (place.jobs, place.to_ask) == ((), ())


@pytest.mark.parametrize("answer", ["fine", "other trouble"])
def test_who_speaks_of_the_car_again_has_it_still(shop: ShopRecord, left: int, answer: str) -> None:
    note_answer(shop, left, "car is gone", on=GONE)
    note_answer(shop, left, answer, on=date(2026, 9, 25))
    assert on_watch(shop, date(2026, 10, 1)) == ["J-1"]
    assert standing(shop, left, date(2026, 10, 1)) == "under watch"


def test_a_car_that_comes_again_was_not_gone(shop: ShopRecord, left: int) -> None:
    note_answer(shop, left, "car is gone", on=GONE)
    job(shop, 1, "J-2", "2026-10-10", system="brakes")
    assert on_watch(shop, date(2026, 10, 9)) == []
    assert on_watch(shop, date(2026, 10, 10)) == ["J-1"]
    assert standing(shop, left, date(2026, 10, 10)) == "under watch"
    assert rates(shop, date(2026, 11, 1))[0].lost_after.tolist() == [NEVER]


def test_jobs_lost_sight_of_are_no_success_and_the_numbers_add_up(shop: ShopRecord) -> None:
    cars = [vehicle(shop, plate=f"TIN {n}") for n in range(6)]
    ids = [job(shop, car, f"J-{n}", "2026-07-01", "2026-07-02") for n, car in enumerate(cars)]
    job(shop, vehicle(shop, plate="TIN 9"), "J-6", "2026-10-20", "2026-10-21")
    note_answer(shop, ids[0], "car is gone", on=date(2026, 7, 22))
    note_answer(shop, ids[1], "car is gone", on=date(2026, 11, 1))  # after its window
    back = job(shop, cars[2], "J-7", "2026-07-12", system="ignition")
    judge_return(shop, ids[2], back, "same part")
    note_answer(shop, ids[2], "car is gone", on=date(2026, 8, 1))  # came back before
    job(shop, cars[3], "J-8", "2026-07-12", system="ignition")  # waits
    note_answer(shop, ids[3], "car is gone", on=date(2026, 8, 1))

    jobs, found = rates(shop, date(2026, 11, 10))
    [group] = found.as_json()["groups"]
    assert {name: group[name] for name in ("jobs", "settled", "open", "waiting", "lost_sight")} == {
        "jobs": 7,
        "settled": 4,
        "open": 1,
        "waiting": 1,
        "lost_sight": 1,
    }
    assert group["comebacks"] == 1
    said = found.lines()
    assert "1 open, 1 waiting, 1 lost sight of" in said[0]
    assert any(line.startswith("Lost sight of: the car is gone") for line in said)
    ages, came_back = jobs.watched()
    # Told on its 20th day that it is gone: until the day before it was in sight.
    assert ages.tolist() == [19, 90, 10, 10, 90, 90, 20]
    assert came_back.tolist() == [False, False, True, False, False, False, False]

    done = in_the_year(shop)
    assert [(one.number, one.state, one.settled, one.lost_after) for one in done[:4]] == [
        ("J-0", "lost sight", False, 19),
        ("J-1", "nothing heard", True, None),
        ("J-2", "came back", True, 29),
        ("J-3", "maybe", False, 29),
    ]


def test_a_sale_that_ends_the_window_ends_the_watch(shop: ShopRecord, left: int) -> None:
    sold(shop, 1, "2026-09-21")
    assert on_watch(shop, date(2026, 9, 22)) == ["J-1"]
    assert standing(shop, left, date(2026, 9, 22)) == "under watch"  # goes with the car
    jobs, _ = rates(shop, date(2026, 12, 10))
    assert jobs.settled.tolist() == [True]

    change_rule(shop, "sale_ends_window", "yes")
    assert on_watch(shop, date(2026, 9, 21)) == ["J-1"]
    assert standing(shop, left, date(2026, 9, 21)) == "under watch"
    assert on_watch(shop, date(2026, 9, 22)) == []
    assert standing(shop, left, date(2026, 9, 22)) == "lost sight"
    jobs, _ = rates(shop, date(2026, 12, 10))
    assert (jobs.settled.tolist(), jobs.still_open.tolist()) == ([False], [False])
    assert jobs.lost_sight.tolist() == [True]
    assert jobs.watched()[0].tolist() == [20]


def test_a_visit_after_the_sale_proves_nothing_of_the_old_promise(
    shop: ShopRecord, left: int
) -> None:
    change_rule(shop, "sale_ends_window", "yes")
    sold(shop, 1, "2026-09-21")
    job(shop, 1, "J-2", "2026-12-15", system="brakes")
    assert standing(shop, left, date(2026, 12, 20)) == "lost sight"


def test_a_car_known_by_two_rows_is_one_car_in_the_year(shop: ShopRecord, left: int) -> None:
    """It came by its plate, and later with its VIN on the same plate."""
    later = vehicle(shop, vin="1M8GDM9AXKP042788")
    job(shop, later, "J-2", "2026-10-10", system="brakes")
    first, _ = (*in_the_year(shop), None)[:2]
    assert first is not None
    assert first.well_until == date(2026, 10, 10)
    assert left == 1


def test_miles_are_known_by_the_last_trusted_reading_since(shop: ShopRecord) -> None:
    car = vehicle(shop)
    then = job(shop, car, "J-1", "2026-09-01", "2026-09-01", 100_000)
    back = job(shop, car, "J-2", "2026-09-20", "2026-09-21", 100_800)
    job(shop, car, "J-3", "2026-10-20", "2026-10-20", 101_500, system="brakes")
    judge_return(shop, then, back, "same part")
    job(shop, car, "J-4", "2026-10-29", "2026-10-29", 1_020, system="brakes")  # a digit is missing
    first, second, third, fourth = in_the_year(shop)
    assert (first.miles_known, first.known_on, first.back_miles) == (
        1500,
        date(2026, 10, 20),
        800,
    )
    assert (second.miles_known, second.back_miles) == (700, None)
    assert (third.miles_known, fourth.miles_known) == (None, None)


@pytest.mark.parametrize(
    ("source", "words"),
    [
        ("told", "time only: odometer told, not read"),
        ("estimated", "time only: odometer estimated, not read"),
        (None, "time"),
    ],
)
def test_an_odometer_that_nobody_read_is_called_so(
    shop: ShopRecord, source: str | None, words: str
) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-09-01", "2026-09-01", 100_000)
    job(shop, car, "J-2", "2026-09-20", None, 100_100)
    with shop.deed("Say how it was read") as deed:
        deed.change(Visit, 2, odometer_source=source)
    with shop.reading() as connection:
        [row] = read_returns(connection)
    assert row.candidate.decided_words == words
    json = "time" if source is None else "time only: odometer unknown"
    assert row.as_json()["decided_by"] == json
