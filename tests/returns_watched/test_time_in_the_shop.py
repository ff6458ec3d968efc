"""Time in the shop is no use of a car; what its customer tells of the odometer is."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from desktop_app.repair_jobs.odometer import OdometerReading, OdometerReplaced, miles_per_day
from desktop_app.repair_jobs.rate_of_use import Stretch, stretches_of
from desktop_app.repair_jobs.stored_odometer import read_odometers, read_shop_use
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.stored_returns import read_watch
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_record.record import ShopRecord
from tests.returns_watched.watch_one_by_one import watch_one_by_one
from tests.watched_shop import job, odometer_replaced, vehicle

START = date(2026, 1, 1)


def read(day: int, value: float, left: int | None = None, source: str = "read") -> OdometerReading:
    """Return a reading of a visit that ended on the day `left`."""
    stood = None if left is None else START + timedelta(left)
    return OdometerReading(START + timedelta(day), value, "mi", source, stood)  # type: ignore[arg-type]


def test_from_the_way_in_to_the_way_out_of_one_visit_is_no_use() -> None:
    copied = [read(0, 50_000, 30), read(30, 50_000, 30), read(60, 52_700)]
    tried = [read(0, 50_000, 30), read(30, 50_012, 30), read(60, 52_712)]
    unread = [read(0, 50_000, 30), read(60, 52_700)]
    for readings in (copied, tried, unread):
        assert stretches_of(readings) == (Stretch(30, 2_700),)
        assert miles_per_day(readings) == 90


def test_short_drives_are_put_together_over_the_time_in_the_shop() -> None:
    readings = [read(0, 50_000, 20), read(28, 50_720, 48), read(56, 51_440)]
    assert stretches_of(readings) == (Stretch(16, 1_440),)
    assert miles_per_day(readings[:2]) is None


def test_a_told_reading_counts_on_from_a_replaced_odometer() -> None:
    new = OdometerReplaced(START + timedelta(10), 50_500, 0)
    readings = [read(0, 50_000), read(40, 1_500), read(70, 3_000, source="told")]
    found = stretches_of(readings, [new])
    assert [(one.days, one.miles) for one in found] == [(40, 2_000), (30, 1_500)]
    assert found[1].off_by > found[0].off_by == 0
    assert len(stretches_of([read(0, 50_000), read(40, 49_000, source="told")])) == 0


def test_a_long_repair_does_not_slow_a_car_down(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-09-09", "2026-09-30", 50_000, 50_000)
    job(shop, car, "J-2", "2026-10-30", "2026-10-31", 52_700, 52_700, system="brakes")
    with shop.reading() as connection:
        known = read_odometers(connection, car)
    assert stretches_of(known.readings(), known.replaced) == (Stretch(30, 2_700),)
    use = watched(shop, date(2026, 11, 3)).use
    assert use is not None
    assert use.days == 30


def test_the_shops_typical_car_goes_by_days_on_the_road_and_replaced_odometers(
    shop: ShopRecord,
) -> None:
    for number in range(14):
        car = vehicle(shop, plate=f"TIN {number:02}")
        job(shop, car, f"A-{number}", "2026-03-01", "2026-03-31", 50_000)
        # With a new odometer since the way in, at which the old one had 51,000 miles.
        job(shop, car, f"B-{number}", "2026-04-30", "2026-05-01", 500)
        odometer_replaced(shop, car, "2026-04-10", 51_000, 0)
    with shop.reading() as connection:
        found = read_shop_use(connection)
    assert found.vehicles == 14
    assert 2.718281828459045**found.log_miles == pytest.approx(1_500 / 30)


def test_an_odometer_told_by_telephone_says_how_the_car_is_driven(shop: ShopRecord) -> None:
    first = job(shop, vehicle(shop), "J-1", "2026-09-01", "2026-09-01", 50_000, 50_000)
    today = date(2026, 11, 3)
    before = watched(shop, today)
    note_answer(shop, first, "fine", on=date(2026, 10, 31), odometer_told=52_500)
    after = watched(shop, today)
    assert before.use is not None
    assert after.use is not None
    assert (before.use.days, after.use.days) == (0, 60)
    assert after.use.miles_a_day > before.use.miles_a_day
    # It ends no window: what is left of the miles is as somebody of the shop read it.
    assert (before.miles_left, after.miles_left) == (None, None)
    assert watched(shop, date(2026, 10, 30)).use == before.use
    with shop.reading() as connection:
        assert watch_one_by_one(connection, today) == (after,)


def watched(shop: ShopRecord, today: date) -> WatchedJob:
    """Return the first job that is on watch."""
    with shop.reading() as connection:
        found = read_watch(connection, today)
    return min(found, key=lambda one: one.job)
