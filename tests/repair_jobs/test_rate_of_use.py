"""How much a car is driven: from its own visits, and from the shop's where there are few."""

from __future__ import annotations

import math
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.odometer import OdometerReading, OdometerReplaced
from desktop_app.repair_jobs.rate_of_use import (
    USUAL_UNSTEADY_DAYS,
    ShopUse,
    Stretch,
    driven_by,
    rate_of_use,
    shop_use,
    stretches_of,
    use_in_words,
)

START = date(2026, 1, 1)


def read(day: int, value: float, source: str = "read") -> OdometerReading:
    return OdometerReading(START + timedelta(day), value, "mi", source)  # type: ignore[arg-type]


def test_a_car_without_visits_is_the_shops_usual_car() -> None:
    rate = rate_of_use([], ShopUse(math.log(40), 0.5, 10, 80))
    assert rate.miles_a_day == pytest.approx(40)
    assert rate.low == pytest.approx(40 * math.exp(-1.96 * 0.5), rel=1e-3)
    assert use_in_words(rate) == ("How far it goes is not known; about 40 miles a day is taken.")


def test_a_long_history_speaks_for_itself() -> None:
    shop = ShopUse(math.log(40), 0.5, 10, 80)
    rate = rate_of_use([Stretch(365, 3650), Stretch(365, 3650)], shop)
    assert rate.miles_a_day == pytest.approx(10, rel=0.1)
    assert use_in_words(rate) == (
        "Driven about 11 miles a day (9 to 13), as its odometer showed over 730 days."
    )


def test_a_short_history_is_drawn_towards_the_shop() -> None:
    shop = ShopUse(math.log(40), 0.5, 10, 80)
    short, long = (rate_of_use([Stretch(days, 10.0 * days)], shop) for days in (20, 400))
    assert 10 < long.miles_a_day < short.miles_a_day < 40
    assert "mostly judged by other cars" in use_in_words(short)


def test_where_no_other_cars_were_read_none_are_spoken_of() -> None:
    alone = rate_of_use([Stretch(20, 200.0)], shop_use([[Stretch(20, 200.0)]]))
    said = use_in_words(alone)
    assert "judged by other cars" not in said
    assert said.endswith(
        "mostly the program's usual figure: its own odometer says little yet, and too few other "
        "cars were read here."
    )


def test_a_car_that_stood_still_has_a_small_rate() -> None:
    rate = rate_of_use([Stretch(300, 0)])
    assert 0 < rate.miles_a_day < 1


def test_stretches_leave_out_what_is_not_trusted() -> None:
    readings = [
        read(0, 50_000),
        read(5, 50_200),
        read(60, 52_000),
        read(90, 5_300),
        read(120, 54_000),
    ]
    assert stretches_of(readings) == (Stretch(60, 2_000), Stretch(60, 2_000))


def test_a_replaced_odometer_ends_a_stretch_that_nobody_knows() -> None:
    gone = OdometerReplaced(START + timedelta(30), None, 0)
    readings = [read(0, 50_000), read(25, 50_700), read(60, 900), read(100, 2_100)]
    assert stretches_of(readings, [gone]) == (Stretch(25, 700), Stretch(40, 1_200))


def test_what_the_customer_told_counts_with_its_doubt() -> None:
    told = stretches_of([read(0, 50_000), read(100, 54_000, "told")])
    assert [(s.days, s.miles) for s in told] == [(100, 4_000)]
    sure = rate_of_use([Stretch(100, 4_000)])
    assert rate_of_use(told).log_sd > sure.log_sd


def test_too_few_cars_say_nothing_of_the_shop() -> None:
    assert shop_use([[Stretch(100, 6_000)]] * 5) == ShopUse()


@given(
    st.lists(st.tuples(st.integers(14, 500), st.integers(0, 30_000)), max_size=6),
    st.floats(1, 200),
)
def test_the_rate_lies_between_the_cars_own_and_the_shops(
    pieces: list[tuple[int, int]], usual: float
) -> None:
    own = [Stretch(days, miles) for days, miles in pieces]
    rate = rate_of_use(own, ShopUse(math.log(usual), 0.6, 10, 50))
    assert 0 < rate.low <= rate.miles_a_day <= rate.high
    if own:
        alone = max(sum(s.miles for s in own), 1) / sum(s.days for s in own)
        low, high = sorted((alone, usual))
        assert low * 0.999999 <= rate.miles_a_day <= high * 1.000001


def test_the_bounds_hold_what_they_say() -> None:
    """Cars of a shop with known figures, driven by chance: the bounds must hold 19 of 20."""
    chance = np.random.default_rng(11)
    true = np.exp(chance.normal(math.log(35), 0.6, 400))
    cars = []
    for miles_a_day in true:
        days = chance.integers(20, 200, chance.integers(1, 5))
        # Driving in bursts: a gamma of mean R t and variance c (R^2) t, with c = 10 days.
        cars.append([Stretch(t, miles_a_day * 10 * chance.gamma(t / 10)) for t in days])
    shop = shop_use(cars)
    assert shop.vehicles == 400
    assert math.exp(shop.log_miles) == pytest.approx(35, rel=0.1)
    assert shop.spread == pytest.approx(0.6, abs=0.08)
    assert shop.unsteady_days == pytest.approx(10, rel=0.3)
    rates = [rate_of_use(car, shop) for car in cars]
    held = np.mean([r.low <= t <= r.high for r, t in zip(rates, true, strict=True)])
    assert 0.92 <= held <= 0.98
    own = [sum(s.miles for s in car) / sum(s.days for s in car) for car in cars]
    off = np.std(np.log([r.miles_a_day for r in rates]) - np.log(true))
    assert off < np.std(np.log(own) - np.log(true))  # drawing towards the shop pays


def test_the_day_a_distance_is_driven_by_has_bounds_that_hold() -> None:
    chance = np.random.default_rng(12)
    rate = rate_of_use([Stretch(300, 9_000)], ShopUse(math.log(35), 0.6, 10, 400))
    said = driven_by(START, 2_000, rate)
    days = 0
    for _ in range(600):
        true = math.exp(chance.normal(math.log(rate.miles_a_day), rate.log_sd))
        gone, day = 0.0, 0
        while gone < 2_000:
            gone += true * 10 * chance.gamma(0.1)
            day += 1
        days += said.earliest <= START + timedelta(day) <= said.latest
    assert 0.92 <= days / 600 <= 0.99


def test_nothing_left_is_driven_already() -> None:
    assert driven_by(START, 0, rate_of_use([])).latest == START


def test_cars_with_one_stretch_each_do_not_say_how_uneven_driving_is() -> None:
    cars = [[Stretch(100, 100.0 * rate)] for rate in range(20, 40)]
    assert shop_use(cars).unsteady_days == USUAL_UNSTEADY_DAYS
    bursts = [[Stretch(50, 50.0 * rate), Stretch(50, 150.0 * rate)] for rate in range(20, 40)]
    assert shop_use(bursts).unsteady_days > USUAL_UNSTEADY_DAYS
