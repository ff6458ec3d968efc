"""What became of a job is told from its car's days; a damaged row of the year is named."""

from __future__ import annotations

from datetime import date

import pytest
from sqlalchemy import func, select

from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.met_by import NOBODY
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.job_fate import JobFate
from desktop_app.weekly_report.week import week_of
from tests.from_outside import damage
from tests.watched_shop import a_week_of_returns


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ("proof_level = 9", ("“9”", "a level of proof")),
        ("odometer_out = -5", ("“-5”", "an odometer reading")),
        ("odometer_out = 999999999", ("“999999999”", "an odometer reading")),
    ],
)
def test_the_first_damaged_job_of_the_year_is_named(
    shop: ShopRecord, change: str, told: tuple[str, str]
) -> None:
    a_week_of_returns(shop)
    damage(shop, f"UPDATE job SET {change} WHERE left_at IS NOT NULL")
    with shop.reading() as connection:
        row = connection.execute(select(func.min(Job.id)).where(Job.left_at.is_not(None))).scalar()
    with pytest.raises(ShopDamaged) as trouble:
        look_at_week(shop, week_of(shop.clock().date()))
    for part in (*told, f"job row {row}"):
        assert part in trouble.value.sentence()


@pytest.mark.parametrize(
    ("came", "told_fine", "well"),
    [
        ((), (), None),
        ((3, 9), (), 9),
        ((3, 9), (12,), 12),
        ((), (5,), 5),
    ],
)
def test_a_car_was_well_when_it_was_last_seen_or_told_of(
    came: tuple[int, ...], told_fine: tuple[int, ...], well: int | None
) -> None:
    fate = JobFate(
        date(2026, 1, 1),
        tuple(date(2026, 1, day) for day in came),
        tuple(date(2026, 1, day) for day in told_fine),
    )
    assert fate.well_until(NOBODY) == (None if well is None else date(2026, 1, well))
