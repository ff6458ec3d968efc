"""One vehicle on which many are written: its returns are listed without having them in memory."""

from __future__ import annotations

import tracemalloc
from datetime import date, timedelta

import pytest

from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched import stored_returns
from desktop_app.returns_watched.stored_facts import read_facts
from desktop_app.returns_watched.stored_returns import (
    find_returns,
    read_returns,
    read_returns_of_vehicle,
)
from desktop_app.shop_record.record import ShopRecord
from tests.watched_shop import vehicle

VISITS = 130
FIRST = date(2026, 1, 5)


@pytest.fixture
def no_plate(shop: ShopRecord) -> ShopRecord:
    """A shop that writes whoever has no plate on one vehicle: one visit each day."""
    car = vehicle(shop, plate="NONE 1")
    with shop.deed("Add many visits") as deed:
        for n in range(VISITS):
            day = (FIRST + timedelta(days=n)).isoformat()
            left, miles = f"{day}T17:00:00+00:00", 100_000 + 5 * n
            times = {"came_at": f"{day}T08:00:00+00:00", "left_at": left}
            visit = deed.add(Visit, vehicle_id=car, odometer_in=miles, **times)
            kept = {"number": f"J-{n * 7 % VISITS}", "left_at": left, "system": "ignition"}
            window = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}
            deed.add(Job, visit_id=visit, concern="misses", correction="cap", **kept, **window)
    return shop


def test_they_are_gone_through_one_by_one_and_again(no_plate: ShopRecord) -> None:
    pairs = VISITS * (VISITS - 1) // 2
    with no_plate.reading() as connection:
        found = find_returns(connection)
    tracemalloc.start()
    passed = sum(1 for _ in found.rows())
    _, one_by_one = tracemalloc.get_traced_memory()
    kept = tuple(found.rows())
    _, at_once = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert passed == len(kept) == pairs
    assert one_by_one < at_once / 3


@pytest.mark.parametrize("since", [None, FIRST + timedelta(days=100)])
def test_they_are_those_of_a_vehicle_read_alone_in_the_lists_order(
    no_plate: ShopRecord, monkeypatch: pytest.MonkeyPatch, since: date | None
) -> None:
    with no_plate.reading() as connection:
        alone = read_returns_of_vehicle(connection, read_facts(connection))
        few = read_returns(connection, since)
        monkeypatch.setattr(stored_returns, "FEW_JOBS", 50)
        many = read_returns(connection, since)
    wanted = [row for row in alone if since is None or row.came_on >= since]
    wanted.sort(key=lambda row: (row.came_on, row.later, row.left_on, row.earlier))
    assert list(few) == list(many) == wanted
