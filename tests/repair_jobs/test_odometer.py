"""What an odometer is trusted for, over the years and over replacements."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.odometer import (
    OdometerReading,
    OdometerReplaced,
    RunningMiles,
    distance_between,
    miles_per_day,
    reading_source,
    running_miles,
)
from desktop_app.shop_record.trouble import ShopDamaged

START = date(2026, 3, 2)


def read(day: int, value: float | None, unit: str = "mi") -> OdometerReading:
    return OdometerReading(START + timedelta(days=day), value, "km" if unit == "km" else "mi")


def replaced(day: int, before: float | None, after: float | None) -> OdometerReplaced:
    return OdometerReplaced(START + timedelta(days=day), before, after)


@pytest.mark.parametrize(
    ("earlier", "later", "miles"),
    [
        (read(0, 118_420), read(110, 121_600), 3180),
        (read(0, 118_420), read(0, 118_451), 31),
        (read(0, 118_420), read(10, 118_419), None),
        (read(0, 100_000), read(10, 104_000), 4000),
        (read(0, 100_000), read(10, 104_001), None),
        (read(0, None), read(10, 104_000), None),
        (read(0, 100_000), read(10, None), None),
        (read(0, 160_934.4, "km"), read(10, 101_000), 1000),
    ],
)
def test_two_readings_give_the_miles_between_or_nothing(
    earlier: OdometerReading, later: OdometerReading, miles: float | None
) -> None:
    found = distance_between(earlier, later)
    assert found == (None if miles is None else pytest.approx(miles))


def test_a_replaced_odometer_counts_over_its_stretches() -> None:
    changes = [replaced(10, 100_500, 20), replaced(40, 1_020, 0)]
    assert distance_between(read(0, 100_000), read(60, 700), changes) == 500 + 1000 + 700


@pytest.mark.parametrize(("before", "after"), [(None, 20), (100_500, None), (None, None)])
def test_an_unknown_stretch_leaves_time_only(before: float | None, after: float | None) -> None:
    changes = [replaced(10, before, after)]
    assert distance_between(read(0, 100_000), read(60, 700), changes) is None
    assert distance_between(read(20, 100), read(60, 700), changes) == 600


def test_a_reading_on_the_day_of_the_replacement_goes_with_the_odometer_it_is_near() -> None:
    change = [replaced(10, 100_500, 20)]
    assert distance_between(read(10, 100_500), read(60, 700), change) == 680
    assert distance_between(read(10, 25), read(60, 700), change) == 675


@pytest.mark.parametrize(
    ("before", "after", "value", "goes_with_the_old"),
    [
        (None, 20, 100_500, True),
        (None, 20, 400, False),  # as far from the new one as a car can go in a day
        (100_500, None, 100_800, True),
        (100_500, None, 25, False),
        (None, None, 100_500, False),
    ],
)
def test_on_the_day_of_a_replacement_half_of_which_is_known_a_reading_goes_where_it_can_be(
    before: float | None, after: float | None, value: float, goes_with_the_old: bool
) -> None:
    change = [replaced(10, before, after)]
    places = running_miles([read(0, 100_400), read(10, value), read(60, 700)], change)
    assert places[1] is not None
    assert places[1].leg == (0 if goes_with_the_old else 1)


def test_what_nobody_said_of_a_reading_was_read_and_another_word_is_damage() -> None:
    assert [reading_source(kept) for kept in (None, "read", "told", "estimated")] == [
        *("read", "read", "told", "estimated"),
    ]
    with pytest.raises(ShopDamaged, match="dreamt"):
        reading_source("dreamt", "visit row 1")


def test_only_the_odd_reading_is_left_out() -> None:
    readings = [read(0, 100_000), read(10, 200_000), read(20, 99_000), read(60, 101_000)]
    assert running_miles(readings) == (
        RunningMiles(0, 100_000),
        None,
        None,
        RunningMiles(0, 101_000),
    )


def test_the_rate_of_use_needs_two_weeks() -> None:
    assert miles_per_day([read(0, 100_000), read(100, 103_000)]) == 30
    assert miles_per_day([read(0, 100_000), read(13, 100_500)]) is None
    assert miles_per_day([]) is None


rises = st.lists(st.tuples(st.integers(0, 60), st.integers(0, 20)), min_size=2, max_size=8)


@given(rises, st.permutations(range(8)), st.integers(0, 7))
def test_neither_the_order_of_entry_nor_the_unit_matters(
    steps: list[tuple[int, int]], order: list[int], in_km: int
) -> None:
    day = value = 0
    readings = []
    for index, (days, rate) in enumerate(steps):
        day += days
        value += days * rate
        unit, factor = ("km", 1.609344) if index == in_km else ("mi", 1.0)
        readings.append(read(day, value * factor, unit))
    plain = running_miles(readings)
    for index, place in enumerate(plain):
        # A day apart of rounding between units may cost a reading that stood still.
        assert place is None or place.miles == pytest.approx(
            sum(days * rate for days, rate in steps[: index + 1])
        )
    wanted = [i for i in order if i < len(readings)]
    days_differ = len({r.on for r in readings}) == len(readings)
    if days_differ:
        shuffled = running_miles([readings[i] for i in wanted])
        assert shuffled == tuple(plain[i] for i in wanted)
