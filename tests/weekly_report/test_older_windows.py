"""Jobs from before the year are under watch until both limits are passed, where both must end."""

from __future__ import annotations

import pytest

from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.week import read_week
from desktop_app.weekly_report.weekly_chart_of import weeks_charted
from tests.watched_shop import job, vehicle

BOTH = {"window_days": 90, "window_miles": 3000, "window_rule": "both"}
MILES = {"window_days": 0, "window_miles": 3000}


@pytest.mark.parametrize(
    ("window", "read_at", "watched"),
    [
        (BOTH, None, 1),  # nobody has read the miles: it stays open
        (BOTH, 11_000, 1),  # its days are over, its miles are not
        (BOTH, 14_000, 0),  # both were passed when it was read
        (MILES, 11_000, 1),
        (MILES, 14_000, 0),
        ({"window_days": 90, "window_miles": 3000}, None, 0),
    ],
)
def test_an_older_window_is_open_by_its_own_rule(
    shop: ShopRecord, window: dict[str, object], read_at: int | None, watched: int
) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2025-08-01", "2025-08-02", 10_000, 10_000, **window)
    if read_at is not None:
        nothing = {"system": "brakes", "cause": "", "correction": ""}
        job(shop, car, "J-2", "2026-02-01", "2026-02-01", read_at, **nothing)
    charted = weeks_charted(look_at_week(shop, read_week("2026-W46")))
    assert charted.watched[-1] == watched
