"""What the record says about returns, through the rules and as the commands print it."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from sqlalchemy import event

from desktop_app.returns_watched.actions import say_not_same_vehicle
from desktop_app.returns_watched.stored_facts import read_facts
from desktop_app.returns_watched.stored_returns import (
    read_returns,
    read_returns_of_job,
    read_watch,
)
from desktop_app.shop_record.record import ShopRecord
from tests.watched_shop import a_week_of_returns, job, judge_return, odometer_replaced, vehicle


def _pairs(shop: ShopRecord) -> list[tuple[str, str]]:
    with shop.reading() as connection:
        return [(row.earlier, row.later) for row in read_returns(connection)]


def test_a_later_visit_for_the_same_fault_is_listed_as_the_contract_says(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    with shop.reading() as connection:
        first = read_returns(connection)[0].as_json()
    assert first == {
        "earlier": "J-104",
        "later": "J-131",
        "days": 41,
        "distance_miles": 880,
        "in_window": True,
        "decided_by": "time",
        "reasons": [
            "same symptom: misfire",
            "same system: ignition",
            "same code: P0300",
            "same part kind: distributor-rotor",
        ],
        "window_used": pytest.approx(41 / 90),
        "root": "J-104",
        "judgement": None,
    }


def test_a_judgement_stands_in_the_list_and_makes_the_chain(shop: ShopRecord) -> None:
    ids = a_week_of_returns(shop)
    judge_return(shop, ids["J-104"], ids["J-131"], "same part")
    with shop.reading() as connection:
        rows = {(row.earlier, row.later): row for row in read_returns(connection)}
    assert rows["J-104", "J-131"].is_comeback
    assert rows["J-131", "J-160"].candidate.root == "J-104"
    assert rows["J-131", "J-160"].waits


def test_the_period_goes_by_the_day_on_which_the_later_job_came(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    with shop.reading() as connection:
        rows = read_returns(connection, date(2026, 10, 13), date(2026, 10, 13))
    assert [(row.earlier, row.later) for row in rows] == [("J-104", "J-131")]


def test_one_job_asked_for_gives_the_same_as_the_whole_list(shop: ShopRecord) -> None:
    ids = a_week_of_returns(shop)
    with shop.reading() as connection:
        whole = read_returns(connection)
        one = read_returns_of_job(connection, ids["J-160"])
        nobody = read_returns_of_job(connection, 999_999)
    assert one == tuple(row for row in whole if row.later == "J-160")
    assert [row.earlier for row in one] == ["J-104", "J-131"]
    assert nobody == ()


def test_two_parts_whose_kind_nobody_said_are_no_reason(shop: ShopRecord) -> None:
    car = vehicle(shop)
    nothing_alike: dict[str, Any] = {"system": "", "kinds": [""]}
    job(shop, car, "J-1", "2026-05-01", "2026-05-01", **nothing_alike)
    later = job(shop, car, "J-2", "2026-06-01", **nothing_alike)
    with shop.reading() as connection:
        assert read_returns(connection) == ()
        assert read_returns_of_job(connection, later) == ()
    with shop.deed("Place both") as deed:
        deed.connection.exec_driver_sql("UPDATE pair SET position = 'front left'")
    with shop.reading() as connection:
        assert read_returns_of_job(connection, later) == ()


def test_an_odometer_in_kilometres_gives_miles(shop: ShopRecord) -> None:
    car = vehicle(shop, odometer_unit="km")
    job(shop, car, "J-1", "2026-05-01", "2026-05-01", 100_000)
    job(shop, car, "J-2", "2026-06-01", None, 101_609)
    with shop.reading() as connection:
        [row] = read_returns(connection)
    # 1,609 km are 999.79 miles (international mile, 1.609344 km).
    assert row.candidate.distance_miles == pytest.approx(999.786, abs=0.001)


def test_a_lower_odometer_leaves_time_alone_to_decide(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-05-01", "2026-05-01", 100_000)
    job(shop, car, "J-2", "2026-06-01", None, 90_000)
    with shop.reading() as connection:
        [row] = read_returns(connection)
    assert row.candidate.distance_miles is None
    assert row.candidate.decided_by == "time only: odometer unknown"
    assert row.distance_words("mi") == "no odometer to say how far"


def test_a_replaced_odometer_counts_over_its_stretches(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-05-01", "2026-05-01", 100_000)
    odometer_replaced(shop, car, "2026-05-11", before=100_400, after=41_000)
    job(shop, car, "J-2", "2026-06-01", None, 41_250)
    with shop.reading() as connection:
        [row] = read_returns(connection)
    assert row.candidate.distance_miles == 650


def test_an_unknown_stretch_leaves_time_alone_to_decide(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-05-01", "2026-05-01", 100_000)
    odometer_replaced(shop, car, "2026-05-11", before=None, after=41_000)
    job(shop, car, "J-2", "2026-06-01", None, 41_250)
    with shop.reading() as connection:
        [row] = read_returns(connection)
    assert row.candidate.distance_miles is None


@pytest.mark.parametrize(
    ("first", "second", "joined"),
    [
        ({"plate": "TIN 01"}, {"plate": "tin-01"}, True),
        ({"vin": "1M8GDM9AXKP042788", "plate": "A"}, {"vin": "1m8gdm9axkp042788"}, True),
        ({"plate": "TIN 01"}, {"vin": "1M8GDM9AXKP042788", "plate": "TIN 01"}, True),
        (
            {"vin": "1M8GDM9AXKP042788", "plate": "TIN 01"},
            {"vin": "11111111111111111", "plate": "TIN 01"},
            False,
        ),
        ({"plate": None}, {"plate": None}, False),
        ({"plate": "TIN 01"}, {"plate": "TIN 02"}, False),
    ],
)
def test_rows_of_one_vehicle_are_joined_by_vin_else_by_plate(
    shop: ShopRecord, first: dict[str, str], second: dict[str, str], joined: bool
) -> None:
    # 1M8GDM9AXKP042788 is the published sample of 49 CFR 565; the other VIN is all ones.
    job(shop, vehicle(shop, **first), "J-1", "2026-05-01", "2026-05-01", 100_000)
    later = job(shop, vehicle(shop, **second), "J-2", "2026-06-01", None, 100_500)
    assert _pairs(shop) == ([("J-1", "J-2")] if joined else [])
    with shop.reading() as connection:
        alone = read_returns_of_job(connection, later)
    assert len(alone) == joined


def test_someone_can_say_that_these_are_two_vehicles(shop: ShopRecord) -> None:
    old = job(shop, vehicle(shop, plate="TIN 01"), "J-1", "2026-05-01", "2026-05-01")
    with_vin = vehicle(shop, plate="TIN 01", vin="1M8GDM9AXKP042788")
    new = job(shop, with_vin, "J-2", "2026-06-01", "2026-06-02")
    job(shop, with_vin, "J-3", "2026-06-20")
    say_not_same_vehicle(shop, old, new)
    assert _pairs(shop) == [("J-2", "J-3")]
    shop.undo()
    assert _pairs(shop) == [("J-1", "J-2"), ("J-1", "J-3"), ("J-2", "J-3")]


def test_symptom_groups_are_named_in_plain_words(shop: ShopRecord) -> None:
    car = vehicle(shop)
    for number, day in (("J-1", "2026-05-01"), ("J-2", "2026-06-01")):
        job(shop, car, number, day, day, symptoms=["misfire-random"], system="")
    with shop.reading() as connection:
        [row] = read_returns(connection, names={"misfire-random": "misfire"})
    assert row.candidate.reasons == ("same symptom: misfire",)


@pytest.mark.embedded
def test_looking_up_one_vehicle_takes_a_handful_of_look_ups_by_index(shop: ShopRecord) -> None:
    ids = a_week_of_returns(shop)
    asked: list[str] = []
    with shop.reading() as connection:
        event.listen(connection, "before_cursor_execute", lambda *a: asked.append(a[2]))
        read_returns_of_job(connection, ids["J-160"])
    assert 0 < len(asked) <= 16
    with shop.reading() as connection:
        plans = []
        for words in asked:
            marks = ("1",) * words.count("?")
            plan = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {words}", marks)
            plans += [(row[3], words) for row in plan]
    large = ("vehicle", "visit", "job", "job_symptom", "trouble_code", "pair")
    scans = [p for p in plans if p[0].startswith("SCAN") and p[0].split()[1] in large]
    assert scans == []


def test_facts_until_a_day_know_nothing_of_what_came_later(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    with shop.reading() as connection:
        facts = read_facts(connection, until=date(2026, 9, 1))
    assert [(job.number, job.handed_over_on) for job in facts.jobs] == [("J-104", None)]


def test_the_watch_says_what_is_left_of_each_window(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-10-01", "2026-10-01", 100_000)
    job(shop, car, "J-2", "2026-10-31", None, 100_900, system="brakes")
    with shop.reading() as connection:
        [one] = read_watch(connection, date(2026, 11, 10))
    # 900 miles in 30 days are 30 a day, drawn towards the usual 33; at 31.5 miles a day 2,100 more
    # take 67 days from 31 October, so that the 90 days end first.
    assert one.as_json() == {
        "job": "J-1",
        "vehicle": "TIN 01 · 1.8-litre compact hatchback",
        "days_left": 50,
        "miles_left": 2100,
        "expected_close": "2026-12-30",
        "expected_close_by": "time",
    }


def test_a_fast_car_is_expected_to_use_its_miles_first(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-10-01", "2026-10-01", 100_000)
    job(shop, car, "J-2", "2026-10-31", None, 101_500, system="brakes")
    with shop.reading() as connection:
        [one] = read_watch(connection, date(2026, 11, 10))
    # 30 days at 50 miles a day weigh 0.36 / (0.36 + 10 / 30) = 0.519 against a usual car's 33:
    # exp(0.519 ln 50 + 0.481 ln 33) = 41 miles a day; 1,500 more take 36 days from 31 October.
    assert (one.expected_close, one.expected_close_by) == (date(2026, 12, 6), "distance")
    assert one.ends is not None
    assert one.ends.earliest < one.ends.on < one.ends.latest <= date(2026, 12, 30)


def test_where_the_odometer_cannot_say_time_alone_is_expected(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-08-01", None, 100_000, system="brakes")
    job(shop, car, "J-2", "2026-09-01", None, 104_000, system="brakes")
    job(shop, car, "J-3", "2026-10-01", "2026-10-01", 108_000)
    odometer_replaced(shop, car, "2026-10-20", None, None)
    job(shop, car, "J-4", "2026-10-21", None, 20, system="brakes")
    with shop.reading() as connection:
        [one] = read_watch(connection, date(2026, 10, 22))
    # At more than 100 miles a day the 3,000 miles would be gone by the end of October.
    assert (one.expected_close, one.expected_close_by) == (date(2026, 12, 30), "time")
    assert one.known is None


def test_a_list_for_a_past_day_stays_as_it_was(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-10-01", "2026-10-01", 100_000)
    with shop.reading() as connection:
        then = read_watch(connection, date(2026, 10, 15))
    job(shop, car, "J-2", "2026-10-31", None, 109_000, system="brakes")
    for number in range(20):
        other = vehicle(shop, plate=f"P {number}")
        job(shop, other, f"K-{number}", "2026-09-01", "2026-10-16", 10_000)
        job(shop, other, f"L-{number}", "2026-10-20", None, 19_000, system="brakes")
    with shop.reading() as connection:
        assert [one for one in read_watch(connection, date(2026, 10, 15)) if one.job == "J-1"] == [
            *then
        ]


@pytest.mark.parametrize(
    ("today", "open_then"),
    [
        (date(2026, 9, 30), False),
        (date(2026, 10, 1), True),
        (date(2026, 12, 30), True),
        (date(2026, 12, 31), False),
    ],
)
def test_a_window_is_open_from_the_hand_over_to_its_last_day(
    shop: ShopRecord, today: date, open_then: bool
) -> None:
    job(shop, vehicle(shop), "J-1", "2026-09-29", "2026-10-01")
    with shop.reading() as connection:
        assert bool(read_watch(connection, today)) is open_then


def test_a_used_up_window_is_watched_no_longer_but_the_day_before_it_was(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-10-01", "2026-10-01", 100_000)
    job(shop, car, "J-2", "2026-10-20", None, 103_001, system="brakes")
    with shop.reading() as connection:
        assert read_watch(connection, date(2026, 10, 20)) == ()
        [before] = read_watch(connection, date(2026, 10, 19))
    assert before.miles_left is None  # nobody has read it since: what is left is not known


def test_without_an_odometer_the_miles_left_are_not_known(shop: ShopRecord) -> None:
    job(shop, vehicle(shop), "J-1", "2026-10-01", "2026-10-01")
    with shop.reading() as connection:
        [one] = read_watch(connection, date(2026, 10, 2))
    assert one.miles_left is None
    assert one.as_json()["expected_close_by"] == "time"


def test_what_ends_first_stands_first(shop: ShopRecord) -> None:
    job(shop, vehicle(shop, plate="B"), "J-1", "2026-10-05", "2026-10-05")
    job(shop, vehicle(shop, plate="A"), "J-2", "2026-10-01", "2026-10-01")
    job(shop, vehicle(shop, plate="C"), "J-3", "2026-10-02", "2026-10-02", window_days=10)
    with shop.reading() as connection:
        found = read_watch(connection, date(2026, 10, 6))
    assert [one.job for one in found] == ["J-3", "J-2", "J-1"]
