"""A car that comes back on the day of its hand-over is a return, where the clock knows it."""

from __future__ import annotations

from datetime import date

import numpy as np
import pytest

from desktop_app.repair_jobs.actions import add_job, hand_over, write_up
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.actions import say_not_same_vehicle
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.many_visits.same_day import no_same_day
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored_doubts import record_doubts
from desktop_app.returns_watched.stored_rates import read_counted_jobs
from desktop_app.returns_watched.stored_returns import (
    count_waiting,
    read_returns,
    read_returns_of_job,
    read_waiting,
)
from desktop_app.returns_watched.waiting import oldest_waiting_first, still_waiting_beside
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.weekly_report.figures import count_later_jobs
from tests.watched_shop import as_made, judge_return

DAY = "2026-11-13"
TODAY = date(2026, 11, 16)


def at(clock: str, day: str = DAY) -> str:
    return f"{day}T{clock}:00-05:00" if clock else day


def came(shop: ShopRecord, clock: str, odometer: int, day: str = DAY) -> int:
    """Take the car in at a time of the day, or on the day alone; the job's id."""
    with shop.reading() as connection:
        known = connection.exec_driver_sql("SELECT id FROM vehicle").scalar()
    said = WriteUp(
        "misses in the rain",
        vehicle_id=known,
        plate="TIN 01",
        odometer=odometer,
        symptoms=("misfire",),
        came_at=at(clock, day),
    )
    return as_made(write_up(shop, said))


def left(shop: ShopRecord, job: int, clock: str, odometer: int, day: str = DAY) -> None:
    with shop.deed("Repair it") as deed:
        deed.change(Job, job, cause="cap tracked", correction="cap replaced", cause_found=1)
        deed.change(Job, job, window_days=90, window_miles=3000, window_rule="first")
    hand_over(shop, job, odometer, left_at=at(clock, day))


def returns(shop: ShopRecord) -> tuple[ReturnRow, ...]:
    with shop.reading() as connection:
        return read_returns(connection)


def pairs(shop: ShopRecord) -> list[tuple[str, str]]:
    return [(row.earlier, row.later) for row in returns(shop)]


@pytest.fixture
def back(shop: ShopRecord) -> tuple[int, int]:
    """A car that left at ten and is back at three, thirty miles later: both jobs."""
    first = came(shop, "08:00", 50_000)
    left(shop, first, "10:00", 50_003)
    return first, came(shop, "15:00", 50_033)


def test_it_is_proposed_with_its_miles_and_no_days(shop: ShopRecord, back: tuple[int, int]) -> None:
    (found,) = returns(shop)
    with shop.reading() as connection:
        assert read_returns_of_job(connection, back[1]) == (found,)
        assert count_waiting(connection, TODAY) == 1
    assert found.as_json() == {
        "earlier": "J-101",
        "later": "J-102",
        "days": 0,
        "distance_miles": 30,
        "in_window": True,
        "decided_by": "distance",
        "reasons": ["same symptom: misfire"],
        "window_used": 0.01,
        "root": "J-101",
        "judgement": None,
    }


def test_it_is_judged_and_taken_back_as_any_return(shop: ShopRecord, back: tuple[int, int]) -> None:
    judge_return(shop, *back, "same symptom")
    (found,) = returns(shop)
    assert found.is_comeback
    assert count_later_jobs([found]) == ("comeback",)
    with shop.reading() as connection:
        assert list(record_doubts(connection, TODAY)) == []
    shop.undo()
    (found,) = returns(shop)
    assert found.waits
    say_not_same_vehicle(shop, *back)
    assert pairs(shop) == []


def test_the_rates_count_it_on_day_nought(shop: ShopRecord, back: tuple[int, int]) -> None:
    judge_return(shop, *back, "same symptom")
    left(shop, back[1], "17:00", 50_035)
    with shop.reading() as connection:
        counted = read_counted_jobs(connection, "system", date(2027, 6, 1))
    assert counted.back_after.tolist() == [0, -1]
    assert counted.settled.tolist() == [True, True]
    assert [column.tolist() for column in counted.watched()] == [[0, 90], [True, False]]


@pytest.mark.parametrize(
    ("out", "again"),
    [("", "15:00"), ("10:00", ""), ("12:00", "15:00"), ("10:00", "12:00"), ("15:00", "10:00")],
)
def test_where_the_clock_cannot_tell_one_day_is_one_visit(
    shop: ShopRecord, out: str, again: str
) -> None:
    first = came(shop, "08:00", 50_000)
    left(shop, first, out, 50_003)
    second = came(shop, again, 50_033)
    assert pairs(shop) == []
    with pytest.raises(ShopTrouble, match=r"J-102 cannot be a return of J-101\.") as refused:
        judge_return(shop, first, second, "same symptom")
    assert refused.value.do == "A return is a later visit of the same vehicle, after the hand-over."


def test_two_jobs_of_one_visit_are_no_returns_of_each_other(shop: ShopRecord) -> None:
    first = came(shop, "08:00", 50_000)
    with shop.reading() as connection:
        visit = connection.exec_driver_sql("SELECT visit_id FROM job").scalar_one()
    beside = as_made(add_job(shop, visit, "misses still", ("misfire",)))
    left(shop, first, "10:00", 50_003)
    left(shop, beside, "11:00", 50_003)
    assert pairs(shop) == []
    with pytest.raises(ShopTrouble):
        judge_return(shop, first, beside, "same symptom")
    came(shop, "15:00", 50_010)
    assert pairs(shop) == [("J-101", "J-103"), ("J-102", "J-103")]
    assert sorted(count_later_jobs(returns(shop))) == ["not counted", "waiting"]


def test_each_visit_of_a_day_counts_once(shop: ShopRecord, back: tuple[int, int]) -> None:
    first, second = back
    left(shop, second, "16:00", 50_034)
    third = came(shop, "17:30", 50_040)
    assert pairs(shop) == [("J-101", "J-102"), ("J-101", "J-103"), ("J-102", "J-103")]
    with shop.reading() as connection:
        assert count_waiting(connection, TODAY) == 2
    for earlier, later in ((first, second), (first, third), (second, third)):
        judge_return(shop, earlier, later, "same symptom")
    assert sorted(count_later_jobs(returns(shop))) == ["comeback", "comeback", "not counted"]


def test_what_waits_of_one_day_stands_by_visit_the_earlier_one_first(
    shop: ShopRecord, back: tuple[int, int]
) -> None:
    left(shop, back[1], "16:00", 50_034)
    came(shop, "17:30", 50_040)
    listed = oldest_waiting_first(reversed(returns(shop)))
    assert [(row.earlier, row.later) for row in listed] == pairs(shop)
    beside = still_waiting_beside(listed)
    assert [beside[row.key] for row in listed] == [(), ("J-102",), ("J-101",)]


def test_a_day_on_which_one_visit_has_no_time_counts_as_one(shop: ShopRecord) -> None:
    """Two of the three visits are told apart, but the third may be either of them."""
    before = came(shop, "08:00", 49_000, "2026-10-01")
    left(shop, before, "10:00", 49_000, "2026-10-01")
    morning = came(shop, "08:00", 50_000)
    left(shop, morning, "10:00", 50_003)
    came(shop, "", 50_020)
    came(shop, "15:00", 50_033)
    assert pairs(shop) == [
        *(("J-101", "J-102"), ("J-101", "J-103"), ("J-101", "J-104")),
        ("J-102", "J-104"),
    ]
    assert sorted(count_later_jobs(returns(shop))) == [*["not counted"] * 3, "waiting"]
    with shop.reading() as connection:
        assert count_waiting(connection, TODAY) == 1


def test_what_was_told_by_telephone_is_seen_the_same_day(
    shop: ShopRecord, back: tuple[int, int]
) -> None:
    note_answer(shop, back[0], "same trouble", on=date(2026, 11, 13))
    with shop.reading() as connection:
        (row,) = read_waiting(connection, TODAY)  # the visit speaks for it
    assert not row.is_told
    assert row.candidate.days == 0


def test_where_no_car_came_twice_on_a_day_the_clock_tells_nothing() -> None:
    jobs = np.arange(3, dtype=np.int32)
    assert no_same_day().came_later(jobs, jobs[::-1]).tolist() == [False, False, False]
    assert no_same_day().times(1) == (None, None, False)
