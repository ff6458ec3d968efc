"""An hour of a return is reckoned at what it cost when the return was judged."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest

from desktop_app.returns_watched.hour_cost import HourCosts
from desktop_app.returns_watched.judging_actions import write_unpaid_hours
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import a_week_of_returns, judge_return

NOON = datetime(2026, 11, 16, 12, tzinfo=UTC)
HOUR = timedelta(hours=1)


def test_up_to_a_change_the_older_cost_held() -> None:
    costs = HourCosts(9000, ((NOON, 6000), (NOON + 2 * HOUR, 7000)))
    moments = (NOON - HOUR, NOON, NOON + HOUR, NOON + 2 * HOUR, NOON + 3 * HOUR, None)
    assert [costs.at(moment) for moment in moments] == [6000, 7000, 7000, 9000, 9000, 9000]


@pytest.fixture
def later(shop: ShopRecord, monkeypatch: pytest.MonkeyPatch) -> Callable[[], None]:
    """What lets an hour pass on the shop's clock."""
    passed = [NOON]
    monkeypatch.setattr(shop, "clock", lambda: passed[-1])
    return lambda: passed.append(passed[-1] + HOUR)


def _costs(shop: ShopRecord) -> tuple[int | None, list[int]]:
    """Return what the page says an hour cost, and the work of the week's returns in cents."""
    with shop.reading() as connection:
        judging = read_judging(connection, 1, 2)
    year = look_at_week(shop, read_week("2026-W46")).year
    assert judging is not None
    return judging.hour_cost_cents, [one.cost.work_cents for one in year.returns if one.cost]


def test_a_new_cost_of_an_hour_changes_no_return_that_was_judged(
    shop: ShopRecord, later: Callable[[], None]
) -> None:
    a_week_of_returns(shop)
    judge_return(shop, 1, 2, "same part")
    write_unpaid_hours(shop, 1, 2, 1.5)
    assert _costs(shop) == (6000, [9000])
    later()
    change_rule(shop, "hour_cost_cents", 8000)
    assert _costs(shop) == (6000, [9000])
    later()
    change_rule(shop, "hour_cost_cents", 10_000)
    shop.undo()
    assert _costs(shop) == (6000, [9000])
    later()
    judge_return(shop, 1, 2, "same symptom")  # judged anew, it goes by what an hour costs by then
    assert _costs(shop) == (8000, [12_000])
