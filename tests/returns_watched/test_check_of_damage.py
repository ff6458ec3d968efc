"""What was changed from outside is listed by row, and refused in words wherever it is read."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.change_promised import read_day
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.stored_check import record_problems
from desktop_app.returns_watched.stored_columns import read_columns
from desktop_app.returns_watched.stored_facts import read_facts
from desktop_app.returns_watched.stored_windows import read_kind_windows
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from tests.from_outside import damage
from tests.watched_shop import a_week_of_returns, judge_return

JOB = ("UPDATE job SET {} WHERE id = 1", "job row 1, job J-104")
VISIT = ("UPDATE visit SET {} WHERE id = 1", "visit row 1")


def listed(shop: ShopRecord) -> list[str]:
    """Return what the check lists, each as one line."""
    with shop.reading() as connection:
        return [f"{where}: {what}" for where, what in record_problems(connection)]


@pytest.mark.parametrize(
    ("change", "named"),
    [
        (
            "INSERT INTO job_condition (job_id, condition, happens) VALUES (1, 'moonlight', 1)",
            "job_condition row 1, job J-104, condition",
        ),
        (
            "INSERT INTO condition_met (job_id, condition, met) VALUES (1, 'moonlight', 1)",
            "condition_met row 1, job J-104, condition",
        ),
        ("UPDATE customer_asked SET source = 'dream'", "customer_asked row 1, job J-131, source"),
        ("UPDATE customer_asked SET dangerous = 7", "customer_asked row 1, job J-131, dangerous"),
        ("UPDATE customer_asked SET judgement = ''", "customer_asked row 1, job J-131, judgement"),
        ("UPDATE customer_asked SET judged_at = '?'", "customer_asked row 1, job J-131, judged_at"),
        ("UPDATE return_link SET cause_class = ''", "return_link row 1, job J-131, cause_class"),
    ],
)
def test_words_that_no_deed_writes_are_listed(shop: ShopRecord, change: str, named: str) -> None:
    a_week_of_returns(shop)
    judge_return(shop, 1, 2, "same part")
    note_answer(shop, 2, "same trouble", on=date(2026, 11, 5))
    damage(shop, change)
    [line] = listed(shop)
    assert line.startswith(f"{named}: ")


def test_an_undamaged_record_has_nothing_listed(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    assert listed(shop) == []


@pytest.mark.parametrize(
    ("row", "values", "shown"),
    [
        (JOB, "window_days = -3", "-3"),
        (JOB, f"window_days = {2**62}", str(2**62)),
        (JOB, f"window_miles = {2**62}", str(2**62)),
        (JOB, "window_days = 0, window_miles = 0", "0 days, 0 miles"),
        (JOB, "window_rule = 'nope'", "nope"),
        (JOB, "left_at = '9999-12-31T00:00:00'", "9999-12-31"),
        (JOB, "left_at = '20261116'", "20261116"),
        (JOB, "left_at = '2026-W47-1'", "2026-W47-1"),
        (JOB, "says_same = 7", "7"),
        (JOB, "left_at = '2026-08-31T23:00:00+00:00'", "2026-08-31"),
        (VISIT, "odometer_source = 'nope'", "nope"),
        (VISIT, "odometer_in = -5", "-5"),
    ],
)
def test_a_damaged_job_is_refused_by_each_reader(
    shop: ShopRecord, row: tuple[str, str], values: str, shown: str
) -> None:
    a_week_of_returns(shop)
    damage(shop, row[0].format(values))
    assert any(one.startswith(row[1]) and shown in one for one in listed(shop))
    with shop.reading() as connection:
        with pytest.raises(ShopDamaged, match=shown):
            read_facts(connection)
        with pytest.raises(ShopDamaged, match=shown):
            read_columns(connection, None, None, {})
        with pytest.raises(ShopDamaged, match=rf"{shown}.*J-104"):
            read_job(connection, 1)


@pytest.mark.parametrize(
    ("values", "shown"),
    [
        ("odometer_out = 10000000", "10000000"),
        ("window_months = 0", "0"),
        ("window_from = 'the moon'", "the moon"),
        ("window_from = 'part kind '", "part kind"),
        ("work = 'magic'", "magic"),
        ("search_hours = -1", "-1"),
        ("proof_level = 5", "5"),  # proved by time is never written down
        ("proof_level = -1", "-1"),
        ("cause_found = 2", "2"),
    ],
)
def test_a_job_that_no_deed_wrote_is_listed_and_its_page_refused(
    shop: ShopRecord, values: str, shown: str
) -> None:
    a_week_of_returns(shop)
    damage(shop, JOB[0].format(values))
    [one] = listed(shop)
    assert one.startswith(f"{JOB[1]}, ")
    assert f"“{shown}" in one
    with shop.reading() as connection, pytest.raises(ShopDamaged, match=rf"“{shown}.*J-104"):
        read_job(connection, 1)


@pytest.mark.parametrize(
    ("change", "shown"),
    [
        ("UPDATE job SET fault_every = 0, fault_every_unit = 'mi' WHERE id = 1", "0.0"),
        ("UPDATE job SET fault_every = 40, fault_every_unit = 'nope' WHERE id = 1", "nope"),
        ("INSERT INTO condition_met (job_id, condition, met) VALUES (1, 'wet', 7)", "7"),
        ("INSERT INTO proof_step (job_id, step, done_at) VALUES (1, 'no', '2026-11-01')", "no"),
        ("INSERT INTO proof_step (job_id, step, done_at) VALUES (1, 'saved', 'then')", "then"),
        (
            "INSERT INTO self_test (job_id, stage, monitor, state)"
            " VALUES (1, 'found', 'misfire', 'passed')",
            "passed",
        ),
        (
            "INSERT INTO self_test (job_id, stage, monitor, state)"
            " VALUES (1, 'found', 'nope', 'complete')",
            "nope",
        ),
        (
            "INSERT INTO self_tests (job_id, stage, typed, read_at)"
            " VALUES (1, 'found', '00 07 FF 00', 'soon')",
            "soon",
        ),
        ("INSERT INTO caught_here (job_id, caught_at, words) VALUES (1, '2026-13-45', '')", "2026"),
    ],
)
def test_a_damaged_proof_is_refused_and_its_job_named(
    shop: ShopRecord, change: str, shown: str
) -> None:
    a_week_of_returns(shop)
    damage(shop, change)
    assert any(f"“{shown}" in one and "job J-104" in one for one in listed(shop))
    with shop.reading() as connection, pytest.raises(ShopDamaged, match=rf"{shown}.*J-104"):
        read_proof(connection, 1)


@pytest.mark.parametrize("columns", ["12, 3000, 'nope'", "-3, 3000, 'first'", "NULL, NULL, 'both'"])
def test_a_damaged_promise_names_its_part_kind(shop: ShopRecord, columns: str) -> None:
    damage(
        shop,
        f"INSERT INTO kind_window (part_kind, months, miles, rule) VALUES ('rotor', {columns})",
    )
    assert len(listed(shop)) == 1
    with shop.reading() as connection, pytest.raises(ShopDamaged, match="part kind rotor"):
        read_kind_windows(connection)


def test_a_damaged_house_rule_is_listed(shop: ShopRecord) -> None:
    change_rule(shop, "hour_cost_cents", 7000)
    damage(shop, "UPDATE setting SET value = 'dear'")
    [one] = listed(shop)
    assert one.startswith("the house rules: ")
    assert "dear" in one


def test_returns_that_cannot_be_are_listed(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    for earlier, later in ((1, 1), (2, 1)):
        damage(
            shop,
            "INSERT INTO return_link (earlier_job_id, later_job_id, judgement, why, judged_by,"
            f" change_promised, same_vehicle) VALUES ({earlier}, {later}, NULL, '', '', '', 1)",
        )
    found = " ".join(listed(shop))
    assert "J-104 is kept as a return of itself" in found
    assert "J-104 came before J-131 had left" in found


@pytest.mark.parametrize(
    "typed", ["2026-W47", "2026-W47-1", "20261116", "0001-01-01", "9999-12-31"]
)
def test_a_day_is_typed_in_one_way_only(typed: str) -> None:
    assert read_day("2026-11-16") == date(2026, 11, 16)
    with pytest.raises(ShopTrouble, match="is not a day"):
        read_day(typed)


def test_half_a_sign_is_no_currency(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="holds a sign that no text can"):
        change_rule(shop, "currency", chr(0xD800))
