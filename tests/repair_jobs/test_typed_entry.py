"""What people type into the fields of a job, and what is refused with what would be accepted."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.road_test_words import read_every
from desktop_app.repair_jobs.typed_entry import (
    is_a_reading,
    read_distance,
    read_hours,
    read_money,
    read_odometer,
)
from desktop_app.shop_record.trouble import ShopTrouble


@pytest.mark.parametrize(
    "text", ["118420", "118,420", "118 420", "118.420", " 118420 mi", "118'420 miles", "mi 118420"]
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
        ("km 190,000", "mi", 118_061),
        ("km: 190000", "km", 190_000),
    ],
)
def test_a_reading_that_names_its_unit_is_brought_into_the_cars_own(
    text: str, unit: DistanceUnit, reading: int
) -> None:
    assert read_odometer(text, unit) == reading


@pytest.mark.parametrize(
    "text", ["12k?", "118,42", "-5", "1e5", "", "118420.5", "99999999", "١٢", "km", "km 5 km"]
)
def test_what_is_no_odometer_is_refused(text: str) -> None:
    with pytest.raises(ShopTrouble):
        read_odometer(text)


@pytest.mark.parametrize(
    ("text", "is_one"),
    [
        *(("118,420", True), ("km 100200", True), ("mi100200", True), ("-5", True)),
        *(("12k?", True), ("display dead since 2025", False), ("mi", False), ("", False)),
    ],
)
def test_a_number_with_or_without_its_unit_is_no_reason(text: str, is_one: bool) -> None:
    assert is_a_reading(text) is is_one


@given(st.integers(0, 9_999_999))
def test_every_reading_survives_being_shown(number: int) -> None:
    assert read_odometer(f"{number:,}") == number
    assert read_odometer(str(number)) == number


@pytest.mark.parametrize(
    ("text", "cents"),
    [
        ("1,200", 120_000),
        ("$1,333.00", 133_300),
        ("1 200,5", 120_050),
        ("1.234,56", 123_456),
        ("1'234.56", 123_456),
        ("1,5", 150),
    ],
)
def test_thousands_are_taken_where_they_are_unmistakable(text: str, cents: int) -> None:
    assert read_money(text) == cents
    if not text.startswith("$"):
        assert read_distance(text) == cents / 100


@pytest.mark.parametrize("read", [read_money, read_hours, read_distance, read_every])
def test_a_number_that_can_be_read_in_two_ways_is_refused_with_both(
    read: Callable[[str], object],
) -> None:
    with pytest.raises(ShopTrouble, match=r"Type 1500, or 1\.5"):
        read("1.500")


def test_hours_are_never_taken_by_the_thousand() -> None:
    with pytest.raises(ShopTrouble, match="two ways"):
        read_hours("1,500")
    assert read_every("1,500") == 1500


@pytest.mark.parametrize("read", [read_odometer, read_money, read_hours, read_distance])
def test_what_is_too_much_is_refused_in_words(read: Callable[[str], object]) -> None:
    for text in ("9" * 5000, "99999999"):
        with pytest.raises(ShopTrouble):
            read(text)


def test_a_drive_that_names_the_other_unit_is_brought_into_the_cars_own() -> None:
    assert read_distance("50 km", "mi") == 31.07
    assert read_distance("31", "mi") == 31


def test_money_hours_and_distance() -> None:
    assert read_money("120,50") == 12_050
    assert read_money("$ 120") == 12_000
    assert read_money("") is None
    assert read_hours("1,5") == 1.5
    assert read_distance("31") == 31
    for read in (read_money, read_hours, read_distance):
        with pytest.raises(ShopTrouble, match="such as"):
            read("a lot")
