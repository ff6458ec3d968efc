"""What a page asks about a car until somebody answers: its VIN, its odometer; and what is gone."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from desktop_app.repair_jobs import actions, odometer_actions, vehicle_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer import ReadingSource
from desktop_app.repair_jobs.rate_of_use import ShopUse
from desktop_app.repair_jobs.stored import Vehicle
from desktop_app.repair_jobs.stored_known_car import still_here
from desktop_app.repair_jobs.stored_odometer import read_unit
from desktop_app.repair_jobs.stored_questions import (
    odometer_asked,
    odometer_still_asked,
    read_odometer_said,
    vin_still_asked,
)
from desktop_app.repair_jobs.stored_reading import job_by_number, read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

TODAY = date(2026, 11, 16)


def take_in(shop: ShopRecord, day: str = "2026-11-02", **said: Any) -> JobView:
    values = {"plate": "TH 1", "odometer": 84_210} | said
    came = f"{day}T09:00:00+00:00"
    made = actions.write_up(shop, WriteUp("misses", came_at=came, **values)).made
    assert made is not None
    return job(shop, made)


def job(shop: ShopRecord, job_id: int) -> JobView:
    with shop.reading() as connection:
        return read_job(connection, job_id)


def test_an_odd_vin_is_asked_about_until_somebody_says_it_is_right(shop: ShopRecord) -> None:
    def asked(seen: JobView) -> str | None:
        with shop.reading() as connection:
            return vin_still_asked(connection, seen)

    assert asked(take_in(shop)) is None
    assert asked(take_in(shop, vin="1M8GDM9AXKP042788")) is None
    odd = take_in(shop, vin="1M8GDM9AXKP042789")
    question = asked(odd)
    assert question is not None
    actions.keep_as_typed(shop, f"vehicle:{odd.vehicle.id}:vin", question)
    assert asked(odd) is None


def test_figures_in_the_words_for_no_reading_are_offered_as_the_reading(shop: ShopRecord) -> None:
    def said(seen: JobView) -> tuple[str | None, list[tuple[int, str]]]:
        with shop.reading() as connection:
            found = read_odometer_said(connection, seen, TODAY, ShopUse())
        assert found.unit == "mi"
        return found.asked, [(one.value, one.why) for one in found.proposals]

    dead = take_in(shop, odometer=None, odometer_unread="display dead")
    assert said(dead) == (None, [])
    words = take_in(shop, odometer=None, odometer_unread="about 84,000 they say")
    question, meant = said(words)
    assert question == (
        "No reading is kept, because “about 84,000 they say”. Does the odometer say 84,000 mi?"
    )
    assert meant == [(84_000, "the figures in these words")]
    actions.keep_as_typed(shop, f"visit:{words.visit_id}:odometer", question)
    assert said(words) == (None, [])


def test_how_a_car_is_used_is_told_beside_what_is_odd(shop: ShopRecord) -> None:
    take_in(shop, "2026-05-06")
    second = take_in(shop, "2026-11-02", vehicle_id=1, odometer=93_210)
    third = take_in(shop, "2026-11-12", vehicle_id=1, odometer=39_710)
    with shop.reading() as connection:
        plain = read_odometer_said(connection, second, TODAY, ShopUse())
        odd = read_odometer_said(connection, third, TODAY, ShopUse())
        assert odometer_still_asked(connection, second, TODAY) is None
        assert odometer_still_asked(connection, third, TODAY) == odd.asked
    assert (plain.asked, plain.proposals) == (None, ())
    assert 45 < plain.rate.miles_a_day < 55  # 9,000 miles in 180 days
    assert odd.asked is not None
    assert "39,710 mi, but on 2 November 2026 it said 93,210 mi" in odd.asked
    assert 93_710 in [one.value for one in odd.proposals]


@pytest.mark.parametrize(
    ("reading", "source", "odd"),
    [(84_100, "read", True), (84_100, "told", False), (84_300, "read", False)],
)
def test_a_reading_at_the_counter_is_held_against_the_cars_earlier_ones(
    shop: ShopRecord, reading: int, source: ReadingSource, odd: bool
) -> None:
    take_in(shop)
    with shop.reading() as connection:
        asked = odometer_asked(connection, 1, reading, TODAY, TODAY, source)
    assert (asked.asked is not None) is odd


def test_a_replaced_odometer_leaves_nothing_to_ask(shop: ShopRecord) -> None:
    take_in(shop)
    second = take_in(shop, "2026-11-10", vehicle_id=1, odometer=120)
    with shop.reading() as connection:
        assert odometer_still_asked(connection, second, TODAY) is not None
    odometer_actions.note_vehicle_event(
        shop, 1, "odometer replaced", "2026-11-05", before=84_300, after=0
    )
    with shop.reading() as connection:
        assert odometer_still_asked(connection, second, TODAY) is None


def test_only_a_car_with_an_open_job_is_still_here(shop: ShopRecord) -> None:
    take_in(shop, "2026-10-05")
    second = take_in(shop, vehicle_id=1)
    actions.add_job(shop, second.visit_id, "squeals")

    def numbers() -> tuple[str, ...] | None:
        with shop.reading() as connection:
            here = still_here(connection, 1)
        return None if here is None else here.numbers

    assert numbers() == ("J-102", "J-103")  # those of the newest visit
    for left in (2, 3, 1):
        actions.hand_over(shop, left)
    assert numbers() is None


def test_a_job_is_found_by_its_number_in_any_case(shop: ShopRecord) -> None:
    seen = take_in(shop)
    with shop.reading() as connection:
        assert job_by_number(connection, " j-101 ") == seen.id
        assert read_unit(connection, seen.vehicle.id) == "mi"
        with pytest.raises(ShopTrouble, match="There is no job 'J-999'"):
            job_by_number(connection, "J-999")
        with pytest.raises(ShopTrouble, match="not in the record any more"):
            read_job(connection, 999)


@pytest.mark.parametrize(
    "deed",
    [
        lambda shop: actions.hand_over(shop, 99),
        lambda shop: vehicle_actions.say_another_car(shop, 99),
        lambda shop: odometer_actions.change_odometer_out(shop, 99, 5),
        lambda shop: actions.add_job(shop, 99, "squeals"),
    ],
)
def test_what_another_desk_took_out_is_named_and_nothing_written(
    shop: ShopRecord, deed: Any
) -> None:
    take_in(shop)
    before = shop.can_undo()
    with pytest.raises(ShopTrouble):
        deed(shop)
    assert shop.can_undo() == before


def test_a_car_without_plate_tag_or_vin_has_a_name_all_the_same(shop: ShopRecord) -> None:
    names = {
        "TH 1 · van": {"plate": "TH 1", "tag": "grey box", "description": "van"},
        "grey box": {"tag": "grey box"},
        "VIN …042788": {"vin": "1M8GDM9AXKP042788"},
        "no plate": {},
    }
    for name, written in names.items():
        with shop.deed("A car") as deed:
            car = deed.add(Vehicle, odometer_unit="mi", **written)
        seen = take_in(shop, vehicle_id=car, plate=written.get("plate", ""))
        assert seen.vehicle.name == name
