"""What people type into the fields of a job, and what is refused with what would be accepted."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.typed_entry import (
    read_distance,
    read_hours,
    read_money,
    read_odometer,
)
from desktop_app.shop_record.trouble import ShopTrouble


@pytest.mark.parametrize(
    "text", ["118420", "118,420", "118 420", "118.420", " 118420 mi", "118'420 miles"]
)
def test_an_odometer_in_all_its_spellings(text: str) -> None:
    assert read_odometer(text) == 118_420


@pytest.mark.parametrize(
    ("text", "unit", "reading"),
    [
        ("190,000 km", "km", 190_000),
        ("190,000 km", "mi", 118_061),
        ("118,060 mi", "km", 189_999),
        ("118,060", "km", 118_060),
    ],
)
def test_a_reading_that_names_its_unit_is_brought_into_the_cars_own(
    text: str, unit: DistanceUnit, reading: int
) -> None:
    assert read_odometer(text, unit) == reading


@pytest.mark.parametrize("text", ["12k?", "118,42", "-5", "1e5", "", "118420.5", "99999999", "١٢"])
def test_what_is_no_odometer_is_refused(text: str) -> None:
    with pytest.raises(ShopTrouble):
        read_odometer(text)


@given(st.integers(0, 9_999_999))
def test_every_reading_survives_being_shown(number: int) -> None:
    assert read_odometer(f"{number:,}") == number
    assert read_odometer(str(number)) == number


def test_money_hours_and_distance() -> None:
    assert read_money("120,50") == 12_050
    assert read_money("$ 120") == 12_000
    assert read_money("") is None
    assert read_hours("1,5") == 1.5
    assert read_distance("31") == 31
    for read in (read_money, read_hours, read_distance):
        with pytest.raises(ShopTrouble, match="such as"):
            read("a lot")
