"""A clock that was set back is said, with both days; a clock that is right is not."""

from __future__ import annotations

from datetime import timedelta

from desktop_app.repair_jobs import actions
from desktop_app.shop_record.past.clock_behind import clock_behind
from desktop_app.shop_record.record import ShopRecord


def test_a_clock_behind_the_last_entry_is_said_with_both_days(shop: ShopRecord) -> None:
    now = shop.clock()
    with shop.reading() as connection:
        assert clock_behind(connection, now - timedelta(days=400)) is None  # nothing written yet
    actions.add_person(shop, "Tuuli")
    with shop.reading() as connection:
        said = clock_behind(connection, now - timedelta(days=365))
        assert clock_behind(connection, now) is None
        assert clock_behind(connection, now - timedelta(hours=2)) is None  # two desks differ
    assert said is not None
    assert "2025-11-16" in said.what
    assert "2026-11-16" in said.what
    assert said.do
