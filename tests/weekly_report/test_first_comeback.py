"""The book of the week in which a shop's very first comeback came: nothing gainsays another."""

from __future__ import annotations

import pytest

from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import job, judge_return, vehicle


@pytest.fixture
def first_week(shop: ShopRecord) -> WeekFigures:
    """One job handed over, unproven, that came back after 18 days and was judged."""
    car = vehicle(shop)
    earlier = job(shop, car, "J-1", "2026-10-22", "2026-10-24", symptoms=["misfire"], proof_level=0)
    later = job(shop, car, "J-2", "2026-11-11", symptoms=["misfire"], cause="", correction="")
    judge_return(shop, earlier, later, "same symptom")
    return look_at_week(shop, read_week("2026-W46"))


def test_a_comeback_of_a_job_that_is_not_settled_is_said_to_count(first_week: WeekFigures) -> None:
    said = read_first(first_week)
    assert any(words.startswith("1 visit of the week counts as a comeback.") for words in said)
    assert "The year: no job is settled yet: 1 open and came back already." in said
    early = (
        "1 job of the year came back already though its window is still open: the comeback counts "
        "in the week in which it came, and enters the rate when the window is over, with its quiet "
        "neighbours."
    )
    assert early in said
    assert (
        "1 job of the year left unproven and came back already; it is not settled yet, and in no "
        "rate."
    ) in said
    kinds = week_sheet(first_week, "Kinds of part").table("KindsOfPart")
    assert kinds.column("Came back as") == ("1 too early for a rate",)


def test_the_curves_reach_the_day_of_the_only_return(first_week: WeekFigures) -> None:
    rate = week_sheet(first_week, "Rate")
    curve = rate.table("CurveOfReturns")
    assert (curve.rows[-1][0], curve.rows[-1][2], curve.behind[-1]) == (18, 1.0, ("J-1",))
    assert 20 in rate.table("ReturnsPerJob").column("Days")
    assert any(value for value in rate.table("CurveByShare").column("Came back"))
