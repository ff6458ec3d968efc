"""The book claims no more than is written: no level that is in doubt, no nought for a silence."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from desktop_app.repair_jobs.actions import tick_check, write_code
from desktop_app.repair_jobs.proof import CODES_READ, ProofLevel, level_reached
from desktop_app.repair_jobs.proof_actions import (
    enter_self_test,
    meet_condition,
    write_provoked,
)
from desktop_app.repair_jobs.proof_said import proof_reached
from desktop_app.repair_jobs.provocation import read_provoked
from desktop_app.repair_jobs.self_tests import SelfTestState
from desktop_app.repair_jobs.stored import Job, JobCondition
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.sheet_form import Total
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import job, judge_return, vehicle
from tests.weekly_report.week_written import opened, table_rows, written

WEEK = "2026-W46"


def left(record: ShopRecord, number: str, **values: Any) -> int:
    """Add a job of its own car that left in the week; its id."""
    car = vehicle(record, plate=f"TIN {number}")
    return job(record, car, number, "2026-11-10", "2026-11-11", **values)


def happens(record: ShopRecord, job_id: int, *conditions: str) -> None:
    """Say under which conditions it happens."""
    with record.deed("Tell conditions") as deed:
        for name in conditions:
            deed.add(JobCondition, job_id=job_id, condition=name, happens=1)


# What is chosen, by what is written of it and what the book then says.
PROVED = {
    "two of three conditions met": (4, "4 same conditions, in doubt"),
    "all conditions met": (4, "4 same conditions"),
    "no test of the car's own": (3, "3 full trip, in doubt"),
    "its own test passed": (3, "3 full trip"),
    "driven": (2, "2 road"),
    "driven, and a code came": (2, "2 road, in doubt"),
    "in the bay": (1, "1 bay"),
    "in the bay, and it still comes": (1, "1 bay, in doubt"),
    "nothing tried": (0, "0 unproven"),
    "nobody said": (None, "not said"),
}


@pytest.fixture
def proved(shop: ShopRecord) -> dict[str, int]:
    """A job of the week for each of PROVED, written while its car was here; ids in their order."""
    ids = {}
    for number, (name, (level, _)) in enumerate(PROVED.items()):
        car = vehicle(shop, plate=f"TIN {number}")
        system = "brakes" if level == 4 else "ignition"
        day = "2026-11-11"
        ids[name] = job(shop, car, f"J-{number}", day, system=system, proof_level=level)
    for name in ("two of three conditions met", "all conditions met"):
        happens(shop, ids[name], "cold", "rain", "idle")
        for condition in ("cold", "rain"):
            meet_condition(shop, ids[name], condition, True)
    meet_condition(shop, ids["all conditions met"], "idle", True)
    passed = ids["its own test passed"]
    enter_self_test(shop, passed, "after repair", "misfire", SelfTestState.COMPLETE)
    tick_check(shop, passed, "proof", CODES_READ, "done")
    write_code(shop, ids["driven, and a code came"], "P0300", "pending", "after repair")
    write_provoked(
        shop, ids["in the bay, and it still comes"], read_provoked("5 in 10 min, then 2 in 10 min")
    )
    with shop.deed("Gone") as deed:
        for job_id in ids.values():
            deed.change(Job, job_id, left_at="2026-11-11T16:00:00+00:00")
    return ids


def test_a_level_in_doubt_is_called_so_where_the_page_does(
    shop: ShopRecord, proved: dict[str, int]
) -> None:
    table = week_sheet(look_at_week(shop, read_week(WEEK)), "Left this week").table("LeftThisWeek")
    cells = dict(zip(proved, table.column("Proof"), strict=True))
    assert cells == {name: said for name, (_, said) in PROVED.items()}
    assert any("does not bear all of it out" in note for note in table.notes)
    with shop.reading() as connection:
        for name, job_id in proved.items():
            seen, kept = read_job(connection, job_id), read_proof(connection, job_id)
            if seen.proof_level is not None:
                said = level_reached(proof_reached(seen, kept, ProofLevel(seen.proof_level)))
                in_doubt = "does not bear all of it out" in said
                assert in_doubt == str(cells[name]).endswith("in doubt"), name


def test_the_rates_by_level_say_by_which_level_they_are(shop: ShopRecord) -> None:
    left(shop, "J-1", proof_level=4)
    notes = week_sheet(look_at_week(shop, read_week(WEEK)), "Proof").table("ProofLevels").notes
    assert any("By the level that was chosen at the hand-over." in note for note in notes)


def totals(shop: ShopRecord) -> dict[str, Total]:
    """The totals of the week, by their words."""
    sheet = week_sheet(look_at_week(shop, read_week(WEEK)), "Read first")
    return {total.words: total for total in sheet.totals}


SUMS = ("Hours worked", "Hours not billed", "Price of the jobs")


def test_what_nobody_wrote_has_no_sum_and_says_so(shop: ShopRecord, tmp_path: Path) -> None:
    left(shop, "J-1")
    found = totals(shop)
    assert {found[words].value for words in SUMS} == {None}
    assert {found[words].note for words in SUMS} == {"Not written on any job."}
    cost = found["Cost of the week's returns"]
    assert (cost.value, cost.note) == (None, "No car came back in this week.")
    cost = found["Cost of the year's comebacks"]
    assert (cost.value, cost.note) == (None, "No cost of a comeback was written.")
    written(shop, WEEK, tmp_path / "week.xlsx")
    rows = table_rows(opened(tmp_path / "week.xlsx"), "Read first", "ReadFirstTotals")
    assert [row["Figure"] for row in rows if row["What"] in SUMS] == [None] * 3


def test_a_sum_says_of_how_many_jobs_it_is_the_sum(shop: ShopRecord) -> None:
    left(shop, "J-1", hours=2.0, price_cents=0)
    left(shop, "J-2")
    found = totals(shop)
    hours, price = found["Hours worked"], found["Price of the jobs"]
    assert (hours.value, hours.note) == (2.0, "As written on 1 of 2 jobs.")
    assert (price.value, price.note) == (0, "As written on 1 of 2 jobs.")  # nought was written


def test_a_cost_that_is_written_with_some_returns_says_with_how_many(shop: ShopRecord) -> None:
    pairs = []
    for number in ("1", "2"):
        car = vehicle(shop, plate=f"TIN {number}")
        first = job(shop, car, f"J-{number}", "2026-10-12", "2026-10-13")
        pairs.append((first, job(shop, car, f"K-{number}", "2026-11-10", "2026-11-11")))
    assert totals(shop)["Cost of the week's returns"].note == "Not written with any return."
    judge_return(shop, *pairs[0], "same part", cost_cents=5_000)
    judge_return(shop, *pairs[1], "same part")
    cost = totals(shop)["Cost of the week's returns"]
    assert (cost.value, cost.note) == (
        50.0,
        "As written with 1 of 2 pairs, those that are no comebacks included.",
    )


def first_words(shop: ShopRecord, part: str) -> str:
    """The one sentence of Read first that has the part."""
    [one] = [words for words in read_first(look_at_week(shop, read_week(WEEK))) if part in words]
    return one


def test_jobs_that_are_not_counted_say_why(shop: ShopRecord) -> None:
    left(shop, "J-1")
    left(shop, "J-2")
    assert first_words(shop, "left in the week") == "2 jobs left in the week, 2 counted."
    left(shop, "J-3", work="maintenance")  # with a cause and a correction, as the others have
    left(shop, "J-4", cause_found=0)
    left(shop, "J-5", cause_found=0)
    assert first_words(shop, "left in the week") == (
        "5 jobs left in the week, 2 counted; not counted: 1 maintenance, 2 not caught."
    )


def test_a_comeback_after_a_job_that_is_not_counted_is_said_beside_the_others(
    shop: ShopRecord,
) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-12", "2026-10-13", work="maintenance")
    judge_return(shop, first, job(shop, car, "J-2", "2026-11-10", "2026-11-11"), "from our hands")
    assert first_words(shop, "of the week count").startswith(
        "0 visits of the week count as comebacks. 1 was judged a comeback after a job that is not "
        "counted, and is not among them."
    )
