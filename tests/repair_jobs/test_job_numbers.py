"""The numbers on the jobs go on without a gap, whatever was refused, undone or brought in."""

from __future__ import annotations

import pytest
from sqlalchemy import select

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.stored_lookup import next_number
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.watched_shop import job, vehicle


def written_up(shop: ShopRecord) -> str:
    """Write a car up and return its job's number."""
    said = WriteUp(concern="hums", plate="TIN 01", odometer=50_000)
    made = actions.write_up(shop, said).made
    with shop.reading() as connection:
        return str(connection.execute(select(Job.number).where(Job.id == made)).scalar_one())


def test_a_refused_deed_and_an_undone_one_leave_no_gap(shop: ShopRecord) -> None:
    assert written_up(shop) == "J-101"

    def refused(deed: Deed) -> None:
        like = {"visit_id": 1, "concern": "", "window_days": 1, "window_miles": 1}
        deed.add(Job, number=next_number(deed), window_rule="first", **like)
        raise ShopTrouble("refused")

    with pytest.raises(ShopTrouble, match="refused"):
        shop.do("Write a car up", refused)
    assert written_up(shop) == "J-102"
    shop.undo()
    assert [written_up(shop) for _ in range(3)] == ["J-102", "J-103", "J-104"]


@pytest.mark.parametrize(
    ("brought", "following"),
    [
        (["A-7", "2019/3"], "J-101"),
        (["J-500", "A-7"], "J-501"),
        (["J-500", "J-120"], "J-121"),
        (["J-99", "J-500", "J-1000", "J-499"], "J-1001"),
        (["J-old", "J-12345678901"], "J-101"),
        (["J-101", "J-x"], "J-102"),
        (["J-101", "J-102", "J-12345678901"], "J-103"),
    ],
)
def test_they_go_on_from_what_came_from_elsewhere(
    shop: ShopRecord, brought: list[str], following: str
) -> None:
    car = vehicle(shop)
    for number in brought:
        job(shop, car, number, "2026-01-05")
    assert written_up(shop) == following
