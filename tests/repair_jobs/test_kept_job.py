"""What no deed can have written of a job is damage, and is told with what is accepted there."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest

from desktop_app.repair_jobs.kept_job import (
    kept_every,
    kept_hand_over,
    kept_kind_of_work,
    kept_level,
    kept_promise,
    kept_window,
    kept_work,
)
from desktop_app.repair_jobs.proof import RECORDED_LEVELS
from desktop_app.repair_jobs.road_test import FaultEvery
from desktop_app.shop_record.trouble import ShopDamaged

CAME, BEFORE = date(2026, 11, 2), date(2026, 11, 1)


@pytest.mark.parametrize(
    ("read", "says"),
    [
        (lambda place: kept_window(-1, 3000, "first", place), "a window of 0 to"),
        (lambda place: kept_window(90, 200_001, "first", place), "200,000 miles"),
        (lambda place: kept_window(0, 0, "first", place), "a window with a limit"),
        (lambda place: kept_window(90, 0, "never", place), "“first” or “both”"),
        (lambda place: kept_promise(0, "shop", place), "calendar months"),
        (lambda place: kept_promise(None, "the moon", place), "“job”, “shop” or a part kind"),
        (lambda place: kept_promise(None, "part kind  ", place), "a part kind"),
        (lambda place: kept_work(-1, None, None, place), "hours from 0"),
        (lambda place: kept_work(None, float("inf"), None, place), "hours from 0"),
        (lambda place: kept_work(None, None, -1, place), "a price from 0"),
        (lambda place: kept_kind_of_work("magic", None, place), "“inspection” or “maintenance”"),
        (lambda place: kept_hand_over(CAME, BEFORE, place), "2026-11-02, when the car came"),
        (lambda place: kept_level(5, place), "a level of proof"),  # time is never written down
        (lambda place: kept_every(0, "mi", place), "a number above 0"),
        (lambda place: kept_every(4, "moons", place), "a unit of how often"),
    ],
)
def test_what_no_deed_writes_is_told_with_where_it_stands(
    read: Callable[[str], object], says: str
) -> None:
    with pytest.raises(ShopDamaged) as told:
        read("job row 1")
    assert says in told.value.sentence()
    assert "job row 1" in told.value.sentence()


def test_what_a_deed_can_have_written_is_read() -> None:
    kept_window(0, 3000, "both")
    kept_window(90, 0, "first")
    for whose in (None, "shop", "job", "part kind brake-pads"):
        kept_promise(12, whose)
    kept_work(None, 0.0, 100_000_000)
    kept_kind_of_work("inspection", 1.5)
    kept_kind_of_work(None, None)
    kept_hand_over(CAME, CAME)
    kept_hand_over(CAME, None)
    assert [kept_level(int(level)) for level in RECORDED_LEVELS] == list(RECORDED_LEVELS)
    assert kept_level(None) is None
    assert kept_every(40, "km") == FaultEvery(40, "km")
    assert kept_every(None, "km") is kept_every(None, None) is None
