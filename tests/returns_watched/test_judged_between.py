"""A visit is not called another car's while a judged return hangs on it."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.repair_jobs.vehicle_actions import say_another_car, say_two_cars
from desktop_app.returns_watched import actions, judging_actions
from desktop_app.returns_watched.stored_doubts import Doubt, record_doubts
from desktop_app.returns_watched.stored_judged_between import refuse_where_judged
from desktop_app.returns_watched.stored_returns import read_returns
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.from_outside import damage
from tests.watched_shop import job, vehicle

TODAY = date(2026, 11, 16)
Pair = tuple[int, int]


@pytest.fixture
def pair(shop: ShopRecord) -> Pair:
    shop.who = "Ana"
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-01", "2026-10-02", 1_000, symptoms=["misfire"])
    return first, job(shop, car, "J-2", "2026-10-20", "2026-10-21", 1_100, symptoms=["misfire"])


def doubts(shop: ShopRecord) -> list[Doubt]:
    with shop.reading() as connection:
        return list(record_doubts(connection, TODAY))


def listed(shop: ShopRecord) -> int:
    with shop.reading() as connection:
        return len(read_returns(connection))


@pytest.mark.parametrize("visit", [1, 2], ids=["the earlier visit", "the later visit"])
def test_a_judged_return_is_not_parted_unasked(shop: ShopRecord, pair: Pair, visit: int) -> None:
    actions.judge_return(shop, *pair, "same symptom")
    with pytest.raises(ShopTrouble, match="J-2 is judged “same symptom” as a return of J-1"):
        say_another_car(shop, visit, refuse_where_judged)
    assert listed(shop) == 1
    actions.say_not_same_vehicle(shop, *pair)  # said where the judgement and its cost are shown
    say_another_car(shop, visit, refuse_where_judged)
    assert listed(shop) == 0
    assert doubts(shop) == []


def test_rows_of_one_plate_are_not_parted_by_a_visit_that_nothing_hangs_on(
    shop: ShopRecord,
) -> None:
    shop.who = "Ana"
    one, other = vehicle(shop), vehicle(shop)
    first = job(shop, one, "J-1", "2026-10-01", "2026-10-02", 1_000, symptoms=["misfire"])
    job(shop, one, "J-4", "2026-09-01", "2026-09-02", 900, symptoms=["no-start"])
    back = job(shop, other, "J-3", "2026-10-20", "2026-10-21", 1_100, symptoms=["misfire"])
    actions.judge_return(shop, first, back, "same symptom")
    before = listed(shop)
    with pytest.raises(ShopTrouble, match="J-3 is judged “same symptom” as a return of J-1"):
        say_two_cars(shop, 2, other, refuse_where_judged)
    assert listed(shop) == before
    say_another_car(shop, 2, refuse_where_judged)  # J-4 alone gets a car of its own
    with shop.reading() as connection:
        [row] = [row for row in read_returns(connection) if row.is_comeback]
    assert (row.earlier, row.later) == ("J-1", "J-3")
    actions.say_not_same_vehicle(shop, first, back)
    say_two_cars(shop, 1, other, refuse_where_judged)
    assert doubts(shop) == []


def test_a_return_that_stays_on_one_row_does_not_hold_another_row(
    shop: ShopRecord, pair: Pair
) -> None:
    other = vehicle(shop)
    job(shop, other, "J-3", "2026-11-01", "2026-11-02", 1_200, symptoms=["no-start"])
    actions.judge_return(shop, *pair, "same symptom")
    say_two_cars(shop, 1, other, refuse_where_judged)
    assert listed(shop) == 1


def test_a_plate_is_not_taken_from_a_vin_while_another_return_needs_both(
    shop: ShopRecord,
) -> None:
    shop.who = "Ana"
    one, other = vehicle(shop, vin="1M8GDM9AXKP042788"), vehicle(shop)
    first = job(shop, one, "J-1", "2026-10-01", "2026-10-02", 1_000, symptoms=["misfire"])
    back = job(shop, other, "J-3", "2026-10-20", "2026-10-21", 1_100, symptoms=["misfire"])
    later = job(shop, other, "J-5", "2026-11-01", "2026-11-02", 1_200, symptoms=["misfire"])
    actions.judge_return(shop, first, back, "same symptom")
    judging_actions.write_amount(shop, first, back, "parts_cents", 5_000)
    before = listed(shop)
    with pytest.raises(
        ShopTrouble, match=r"J-3 is judged .* take its judgement back and empty its"
    ):
        actions.say_not_same_vehicle(shop, first, later)
    assert listed(shop) == before
    actions.take_judgement_back(shop, first, back)
    with pytest.raises(ShopTrouble, match=r"J-3 has a cost .*, and empty its costs"):
        actions.say_not_same_vehicle(shop, first, later)
    actions.say_not_same_vehicle(shop, first, back)  # the named one leaves the list, as asked
    assert listed(shop) == 1  # J-5 after J-3: the plate has gone from the VIN for both
    assert doubts(shop) == []


def test_a_cost_alone_holds_them_together_and_nothing_written_does_not(
    shop: ShopRecord, pair: Pair
) -> None:
    judging_actions.write_amount(shop, *pair, "parts_cents", 5_000)
    with pytest.raises(ShopTrouble, match="J-2 has a cost"):
        say_another_car(shop, 2, refuse_where_judged)
    judging_actions.write_amount(shop, *pair, "parts_cents", None)
    say_another_car(shop, 2, refuse_where_judged)
    assert listed(shop) == 0


def test_a_judged_pair_that_stands_on_two_vehicles_is_doubted(shop: ShopRecord, pair: Pair) -> None:
    actions.judge_return(shop, *pair, "same symptom")
    with shop.deed("Another row of the same car") as deed:
        twin = deed.add(Vehicle, plate="TIN 01", plate_key="TIN01", odometer_unit="mi")
        deed.change(Visit, 2, vehicle_id=twin)
    assert doubts(shop) == []
    with shop.deed("Another plate") as deed:
        deed.change(Vehicle, twin, plate="TIN 99", plate_key="TIN99")
    [doubt] = doubts(shop)
    assert doubt.where == "return_link row 1, job J-2"
    assert "J-2 is judged as a return of J-1, but the two stand on two vehicles" in doubt.what


def test_what_was_done_on_a_day_to_come_is_doubted_not_lost(shop: ShopRecord, pair: Pair) -> None:
    with shop.deed("From a clock that ran ahead") as deed:
        deed.change(Visit, 2, left_at="2062-01-01T10:00:00+00:00")
        deed.change(Job, pair[1], left_at="2026-11-17T00:00:00+00:00")
    actions.judge_return(shop, *pair, "same symptom")
    judging_actions.set_change_day(shop, *pair, "change_due", date(2027, 1, 1))  # only planned
    found = doubts(shop)
    assert [one.where for one in found] == ["visit row 2, left_at", "job row 2, left_at"]
    assert found[0].what == "2062-01-01 is still to come."
    assert "this computer's clock" in found[0].do


def test_a_judged_pair_that_came_on_one_day_is_doubted(shop: ShopRecord, pair: Pair) -> None:
    actions.judge_return(shop, *pair, "same symptom")
    with shop.deed("Another day") as deed:
        deed.change(Visit, 2, came_at="2026-10-01T11:00:00+00:00")
    [doubt] = doubts(shop)
    assert doubt.where == "return_link row 1, job J-2"
    assert "both came on 2026-10-01: it is in no list and no rate." in doubt.what


def test_what_is_no_day_is_damage_and_not_still_to_come(shop: ShopRecord, pair: Pair) -> None:
    damage(shop, "UPDATE visit SET left_at = '2027-13-45' WHERE id = 2")
    assert doubts(shop) == []
