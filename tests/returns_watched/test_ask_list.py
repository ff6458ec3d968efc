"""Whom to ask how the car does, and a promise as it is typed."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.stored import Customer, Job, Visit
from desktop_app.returns_watched.ask_list import ToAsk
from desktop_app.returns_watched.customer_actions import change_answer, note_answer
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.promise_typed import (
    promise_in_words,
    promise_typed,
    shown_distance,
)
from desktop_app.returns_watched.stored_returns import read_watch
from desktop_app.returns_watched.stored_watch_place import read_watch_place
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.watched_shop import job, judge_return, vehicle

LEFT = "2026-11-02"
FIFTEEN = date(2026, 11, 17)


def asked(shop: ShopRecord, today: date) -> tuple[ToAsk, ...]:
    with shop.reading() as connection:
        return read_watch_place(connection, today).to_ask


def now_and_then(shop: ShopRecord, **values: object) -> int:
    more = {"fault_every": 40, "fault_every_unit": "mi"} | values
    return job(shop, vehicle(shop), "J-1", LEFT, LEFT, 100_000, **more)


def test_a_fault_that_came_now_and_then_is_asked_about_after_the_days_of_the_rule(
    shop: ShopRecord,
) -> None:
    now_and_then(shop, proof_level=3)
    assert asked(shop, date(2026, 11, 15)) == ()
    [one] = asked(shop, date(2026, 11, 16))
    assert "left 14 days ago" in one.why
    assert one.question.startswith("Has it happened again since 2 November 2026: “misses in the")
    change_rule(shop, "ask_after_days", 30)
    assert asked(shop, date(2026, 11, 30)) == ()


@pytest.mark.parametrize("values", [{"proof_level": 4}, {"fault_every": None}])
def test_what_was_proved_or_always_there_is_not_asked_about(
    shop: ShopRecord, values: dict[str, object]
) -> None:
    now_and_then(shop, **values)
    assert asked(shop, FIFTEEN) == ()


@pytest.mark.parametrize("answer", ["fine", "other trouble", "car is gone"])
def test_who_has_answered_is_not_asked_again(shop: ShopRecord, answer: str) -> None:
    note_answer(shop, now_and_then(shop), answer, on=date(2026, 11, 10))
    assert asked(shop, FIFTEEN) == ()


def test_who_told_of_the_same_trouble_stands_first_until_the_car_is_seen(
    shop: ShopRecord,
) -> None:
    ended = now_and_then(shop, fault_every=None)
    first = note_answer(shop, ended, "same trouble", on=date(2026, 11, 10))
    [one] = asked(shop, FIFTEEN)
    assert one.why.startswith("Told: the same trouble, on 10 November 2026. Not seen yet")
    with shop.reading() as connection:
        [watched] = read_watch(connection, FIFTEEN)
    assert watched.waits  # neither quiet nor come back
    note_answer(shop, ended, "not reached", on=date(2026, 11, 11))
    assert len(asked(shop, FIFTEEN)) == 1
    assert first.made is not None
    change_answer(shop, first.made, "other trouble")
    assert asked(shop, FIFTEEN) == ()


def test_who_was_not_reached_comes_again_the_next_day(shop: ShopRecord) -> None:
    note_answer(shop, now_and_then(shop), "not reached", on=date(2026, 11, 16))
    assert asked(shop, date(2026, 11, 16)) == ()
    [one] = asked(shop, FIFTEEN)
    assert one.tried == "Not reached on 16 November 2026."


def test_a_window_that_ends_within_a_week_is_asked_about_where_nothing_was_heard(
    shop: ShopRecord,
) -> None:
    quiet, seen = vehicle(shop), vehicle(shop, plate="TIN 02")
    job(shop, quiet, "J-1", LEFT, LEFT, window_days=20, window_miles=0)
    job(shop, seen, "J-2", LEFT, LEFT, window_days=20, window_miles=0, system="brakes")
    job(shop, seen, "J-3", "2026-11-05", None, system="lights", concern="lamp out")
    # The 20 days end on 22 November.
    assert asked(shop, date(2026, 11, 14)) == ()
    [one] = asked(shop, date(2026, 11, 15))
    assert one.job.job == "J-1"
    assert "22 Nov 2026. Nothing was heard since." in one.why


def test_a_job_that_came_back_is_not_asked_about_nor_one_that_waits(shop: ShopRecord) -> None:
    car = vehicle(shop)
    same = {"symptoms": ["misfire"], "fault_every": 40, "fault_every_unit": "mi"}
    first = job(shop, car, "J-1", LEFT, LEFT, **same)
    again = job(shop, car, "J-2", "2026-11-10", None, symptoms=["misfire"])
    assert asked(shop, FIFTEEN) == ()
    judge_return(shop, first, again, "same part")
    assert asked(shop, FIFTEEN) == ()


def test_the_number_to_ring_is_that_of_the_visit(shop: ShopRecord) -> None:
    now_and_then(shop)
    [bare] = asked(shop, FIFTEEN)
    assert bare.phone == "no number written down"
    with shop.deed("Write the customer down") as deed:
        customer = deed.add(Customer, name="Ms Tin", phone="555-0101")
        deed.change(Visit, 1, customer_id=customer)
        deed.change(Job, 1, concern="")
    [one] = asked(shop, FIFTEEN)
    assert (one.beside.customer, one.phone) == ("Ms Tin", "555-0101")
    assert "what it was here for" in one.question


def test_the_order_is_that_of_the_watch(shop: ShopRecord) -> None:
    for number, days in enumerate((60, 18, 40)):
        left = (FIFTEEN - timedelta(days=15)).isoformat()
        car = vehicle(shop, plate=f"P {number}")
        often = {"fault_every": 3, "fault_every_unit": "days"}
        job(shop, car, f"J-{number}", left, left, window_days=days, **often)
    assert [one.job.job for one in asked(shop, FIFTEEN)] == ["J-1", "J-2", "J-0"]


def test_a_promise_is_typed_in_the_shops_unit() -> None:
    assert promise_typed("", "24", "12,000", "first", "mi") == Promise(None, 24, 12_000)
    # 20,000 km are 12,427.4 miles.
    promise = promise_typed("90", " ", "20 000".replace(" ", ""), "both", "km")
    assert promise == Promise(90, None, 12_427, "both")
    assert promise_in_words(promise, "km") == "90 days and 20,000 km, until both have ended"
    assert promise_in_words(promise, "mi") == "90 days and 12,427 miles, until both have ended"


@pytest.mark.parametrize(
    ("days", "months", "far"), [("", "", ""), ("90", "3", ""), ("-1", "", ""), ("", "", "far")]
)
def test_what_is_no_promise_is_refused(days: str, months: str, far: str) -> None:
    with pytest.raises(ShopTrouble):
        promise_typed(days, months, far, "first", "mi")


@given(km=st.integers(1, 300).map(lambda thousands: thousands * 1000))
def test_round_kilometres_come_back_as_they_were_typed(km: int) -> None:
    promise = promise_typed("", "", str(km), "first", "km")
    assert promise.miles is not None
    assert shown_distance(promise.miles, "km") == km
