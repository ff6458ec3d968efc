"""Damage is named by its row by all that would count it: the lists, the watch, the book, a page."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.money_owed_actions import write_owed
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.returns_watched.stored_money_owed import owed_for_job
from desktop_app.returns_watched.stored_rates import read_counted_jobs
from desktop_app.returns_watched.stored_returns import read_returns, read_watch
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.week import read_week
from tests.from_outside import damage
from tests.returns_watched.test_check_of_damage import listed
from tests.watched_shop import a_week_of_returns, judge_return

TODAY, WEEK = date(2026, 11, 16), read_week("2026-W46")


@pytest.mark.parametrize(
    "change",
    [
        "UPDATE job SET left_at = '2026-11-01' WHERE id = 4",
        "UPDATE visit SET came_at = '2062-01-01T10:00:00+00:00' WHERE id = 4",
        "UPDATE visit SET came_at = '2026-11-14T10:00:00+00:00' WHERE id = 4",
        "UPDATE visit SET came_at = '2062-01-01T10:00:00+00:00'",
    ],
)
def test_a_car_that_left_before_it_came_is_named_wherever_it_would_count(
    shop: ShopRecord, change: str
) -> None:
    a_week_of_returns(shop)
    damage(shop, change)
    assert any("job J-161: It was handed over on 2026-11-" in one for one in listed(shop))
    with shop.reading() as connection:
        with pytest.raises(ShopDamaged, match=r"when the car came.*job row [14]"):
            read_counted_jobs(connection, "system", TODAY)
        with pytest.raises(ShopDamaged, match=r"when the car came.*job row [14]"):
            read_watch(connection, TODAY)
    with pytest.raises(ShopDamaged, match=r"when the car came.*job row [14]"):
        look_at_week(shop, WEEK)


def test_a_visit_that_ended_before_it_began_is_listed(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    damage(shop, "UPDATE visit SET left_at = '2026-08-01T10:00:00+00:00' WHERE id = 2")
    assert listed(shop) == ["visit row 2: It ended on 2026-08-01, before it began on 2026-10-13."]


@pytest.mark.parametrize("column", ["hours", "unbilled_hours", "price_cents"])
@pytest.mark.parametrize("value", ["9e999", "-1", "1e308", str(2**63 - 1)])
def test_work_that_nobody_can_have_done_is_named_in_check_page_and_book(
    shop: ShopRecord, column: str, value: str
) -> None:
    a_week_of_returns(shop)
    if column != "price_cents" or value.lstrip("-").isdigit():
        damage(shop, f"UPDATE job SET {column} = {value} WHERE id = 4")
        [one] = listed(shop)
        assert one.startswith("job row 4, job J-161, hours or price")
        with shop.reading() as connection, pytest.raises(ShopDamaged, match="J-161"):
            read_job(connection, 4)
        with pytest.raises(ShopDamaged, match="job row 4, job J-161"):
            look_at_week(shop, WEEK)


@pytest.mark.parametrize("value", ["9e999", "-1"])
def test_a_drive_that_nobody_can_have_driven_is_named(shop: ShopRecord, value: str) -> None:
    a_week_of_returns(shop)
    damage(shop, f"UPDATE job SET proof_distance = {value} WHERE id = 1")
    [one] = listed(shop)
    assert one.startswith("job row 1, job J-104, proof_distance")
    with shop.reading() as connection, pytest.raises(ShopDamaged, match="a drive of 0"):
        read_job(connection, 1)


@pytest.mark.parametrize("days", [-(2**63), -1, 2**62])
@pytest.mark.parametrize("where", ["", "WHERE id = 1"])
def test_a_window_that_no_promise_has_is_named_by_the_watch(
    shop: ShopRecord, days: int, where: str
) -> None:
    a_week_of_returns(shop)
    damage(shop, f"UPDATE job SET window_days = {days} {where}")
    with shop.reading() as connection, pytest.raises(ShopDamaged, match="job row 1, job J-104"):
        read_watch(connection, TODAY)


@pytest.mark.parametrize(
    "values",
    [
        "judgement = 'nope'",
        "cause_class = 'nope'",
        "also = '[1]'",
        "helping_causes = '{}'",
        "judged_at = 'then'",
        "same_vehicle = 7",
        "parts_cents = -1",
        "unbilled_hours = -1",
        "change_due = '2026-13-45'",
    ],
)
def test_a_damaged_judgement_is_named_by_its_row(shop: ShopRecord, values: str) -> None:
    ids = a_week_of_returns(shop)
    judge_return(shop, ids["J-131"], ids["J-160"], "same symptom")
    damage(shop, f"UPDATE return_link SET {values}")
    with pytest.raises(ShopDamaged, match="return_link row 1"):
        look_at_week(shop, WEEK)
    with shop.reading() as connection, pytest.raises(ShopDamaged, match="return_link row 1"):
        read_returns(connection)
    with shop.reading() as connection, pytest.raises(ShopDamaged, match="row 1, job J-160"):
        read_judging(connection, ids["J-131"], ids["J-160"])


@pytest.mark.parametrize(
    "values",
    [
        *("answer = 'nope'", "asked_on = '2026-13-45'", "source = 'nope'", "judgement = 'nope'"),
        *("cause_class = 'nope'", "judged_at = 'nope'", "dangerous = 3"),
    ],
)
def test_a_damaged_answer_is_named_by_its_row(shop: ShopRecord, values: str) -> None:
    ids = a_week_of_returns(shop)
    note_answer(shop, ids["J-131"], "same trouble", on=date(2026, 11, 5))
    damage(shop, f"UPDATE customer_asked SET {values}")
    with (
        shop.reading() as connection,
        pytest.raises(ShopDamaged, match="customer_asked row 1, job J-131"),
    ):
        answers_of_job(connection, ids["J-131"])


@pytest.mark.parametrize(
    "values",
    [
        *("what = 'nope'", "state = 'nope'", "amount_cents = -1"),
        "state = 'paid', ended_on = '2026-01-01'",
    ],
)
def test_damaged_money_owed_is_named_by_its_row(shop: ShopRecord, values: str) -> None:
    a_week_of_returns(shop)
    write_owed(shop, 1, "core", 5_000)
    damage(shop, f"UPDATE money_owed SET {values}")
    [one] = listed(shop)
    assert one.startswith("money_owed row 1, job J-104, ")
    with shop.reading() as connection, pytest.raises(ShopDamaged, match="money_owed row 1, job J"):
        owed_for_job(connection, 1)
