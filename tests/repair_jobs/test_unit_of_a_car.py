"""The unit of a car is mended: readings are figures of its odometer, a drive is a distance."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs import actions, proof_actions, vehicle_actions
from desktop_app.repair_jobs.distance import (
    distance_in_words,
    from_miles,
    mm_to_inch,
    to_miles,
    unit_words,
)
from desktop_app.repair_jobs.proof_said import drive_said
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

SAID = WriteUp("misses", plate="TH 1", odometer=100_000, odometer_unit="km")


def distances(shop: ShopRecord) -> list[float | None]:
    with shop.reading() as connection:
        return [read_job(connection, job).proof_distance for job in (1, 2, 3)]


def drive(shop: ShopRecord) -> str:
    with shop.reading() as connection:
        return " ".join(drive_said(read_job(connection, 1), read_proof(connection, 1)))


@pytest.fixture
def driven(shop: ShopRecord) -> ShopRecord:
    """Two jobs of a car, the first handed over after 30 km; and another car, driven 30 km."""
    actions.write_up(shop, SAID)
    actions.add_job(shop, 1, "squeals")
    actions.write_up(shop, SAID)
    proof_actions.say_fault_every(shop, 1, 20, "km")
    for job in (1, 3):
        proof_actions.write_distance(shop, job, 30.0)
    actions.hand_over(shop, 1, 100_050)
    return shop


def test_a_drive_stays_as_far_as_it_was(driven: ShopRecord) -> None:
    before = drive(driven)
    vehicle_actions.count_in(driven, 1, "mi")
    assert distances(driven) == [18.64, None, 30.0]
    assert "30 kilometres without it happen by luck in 22 %" in before
    assert "miles without it happen by luck in 22 %" in drive(driven)
    with driven.reading() as connection:
        assert read_job(connection, 1).odometer_in == 100_000
    driven.undo()
    assert (distances(driven), drive(driven)) == ([30.0, None, 30.0], before)


def test_said_once_more_it_changes_nothing(driven: ShopRecord) -> None:
    assert vehicle_actions.count_in(driven, 1, "km").seq is None
    assert distances(driven) == [30.0, None, 30.0]


@given(st.integers(1, 5_000_000))
def test_there_and_back_it_is_the_same_drive(hundredths: int) -> None:
    km = hundredths / 100
    miles = round(to_miles(km, "km"), 2)
    assert abs(from_miles(miles, "km") - km) <= 0.009


def test_a_drive_too_long_for_the_other_unit_is_said(driven: ShopRecord) -> None:
    vehicle_actions.count_in(driven, 2, "mi")
    proof_actions.write_distance(driven, 3, 100_000)
    with pytest.raises(ShopTrouble, match="A drive of 100,000 miles is not accepted"):
        vehicle_actions.count_in(driven, 2, "km")


def test_a_unit_has_words_and_miles_come_in_either() -> None:
    assert (unit_words("mi"), unit_words("km")) == ("miles", "km")
    assert (from_miles(10, "mi"), from_miles(10, "km")) == (10, pytest.approx(16.09344))
    assert distance_in_words(3180.4, "mi") == "3,180 mi"
    assert mm_to_inch(25.4) == 1
