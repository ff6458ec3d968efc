"""On the sheets of a week: who played which part, hours of searching, and what is no repair."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs import actions, who_actions
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.who_did_what import DIDS, TECHNICIANS
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.sheets.people import parts_played
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import job, judge_return, vehicle
from tests.weekly_report.test_beside_rates import rows_of
from tests.weekly_report.year_made import came, done, figures

HANDS = Judgement.FROM_OUR_HANDS
MAINTAINED = {"counted": False, "work": "maintenance", "cause_found": None}


def rows(week: WeekFigures, sheet: str, table: str) -> list[dict[str, Any]]:
    return rows_of(week_sheet(week, sheet).table(table))


def named(week: WeekFigures) -> WeekFigures:
    """The owner's copy of it, with names."""
    return replace(week, year=replace(week.year, names_shown=True))


def test_each_part_played_has_a_row_of_its_own() -> None:
    searched = [done(f"S-{n}", named=(("searched", "Bo"),)) for n in range(20)]
    all_named = tuple((did, "Cy") for did in TECHNICIANS)
    cys = [done(f"C-{n}", named=all_named, back_after=9 if n == 0 else None) for n in range(21)]
    alone = [done(f"A-{n}") for n in range(5)]
    week = figures([*searched, *cys, *alone])
    found = {
        (row["Who"], row["Part played"]): (row["Settled"], row["Comebacks"])
        for row in rows(named(week), "People", "People")
    }
    assert found == {
        ("Bo", "searched"): (20, 0),
        ("Cy", "searched"): (21, 1),
        ("Cy", "refitted"): (21, 1),
        ("Cy", "proved"): (21, 1),
        ("Ada", "technician"): (25, 0),  # of the rest of Bo's jobs, and of her own
    }
    table = week_sheet(named(week), "People").table("People")
    for row, numbers in zip(rows_of(table), table.behind, strict=True):
        assert len(numbers) == row["Settled"] + row["Not settled"]


def test_without_names_one_letter_is_one_person() -> None:
    all_named = tuple((did, "Cy") for did in TECHNICIANS)
    jobs = [done(f"C-{n}", named=all_named) for n in range(20)]
    jobs += [done(f"A-{n}") for n in range(20)]
    shown = rows(figures(jobs), "People", "People")
    parts = {row["Part played"]: row["Who"] for row in shown}
    assert parts["searched"] == parts["refitted"] == parts["proved"] != parts["technician"]
    assert {row["Who"] for row in shown} == {"A", "B"}


def test_rows_of_few_jobs_are_only_counted() -> None:
    jobs = [done(f"A-{n}", named=(("proved", "Bo"),) if n < 19 else ()) for n in range(20)]
    sheet = week_sheet(figures(jobs), "People").table("People")
    assert [row["Part played"] for row in rows_of(sheet)] == ["technician"]
    assert sheet.notes[-1].startswith("1 row with fewer than 20 settled jobs is not listed")
    two = [*jobs, done("C-1", technician="Cy")]
    said = week_sheet(figures(two), "People").table("People").notes[-1]
    assert said.startswith("2 rows with fewer than 20 settled jobs are not listed")


@given(st.dictionaries(st.sampled_from(DIDS), st.sampled_from(["Ada", "Bo"])))
def test_the_technician_has_what_nobody_is_named_for(said: dict[Any, str]) -> None:
    played = parts_played(done("J-1", named=tuple(said.items())))
    others = {did: person for did, person in said.items() if person != "Ada"}
    assert {one for one in played if not one.endswith("technician")} == {
        f"{person} · {did}" for did, person in others.items()
    }
    assert ("Ada · technician" in played) == any(did not in others for did in TECHNICIANS)


def test_search_hours_are_averaged_where_somebody_wrote_them() -> None:
    misfire = {"symptoms": ("misfire",)}
    jobs = [
        *(done(f"J-{n}", **misfire, search_hours=hours) for n, hours in enumerate((1.0, 2.5))),
        *(done(f"K-{n}", **misfire) for n in range(3)),
        done("L-1", symptoms=("stall",)),
    ]
    table = week_sheet(figures(jobs), "Symptoms").table("Searched")
    assert [tuple(row.values()) for row in rows_of(table)] == [
        ("misfire", 2, 1.75),
        ("stall", 0, None),
    ]
    assert table.behind == (("J-0", "J-1"), ())
    assert not rows(figures(jobs[2:]), "Symptoms", "Searched")  # nobody cares: nothing stands there


def test_trouble_that_maintenance_caused_is_counted_in_its_own_row() -> None:
    plain, caused = done("M-1", **MAINTAINED), done("M-2", **MAINTAINED)
    looked = done("I-1", **(MAINTAINED | {"work": "inspection"}))
    other, late = done("M-3", **MAINTAINED), done("M-4", **MAINTAINED)
    back = [
        came(caused, "K-1", 12, judgement=HANDS),
        came(other, "K-2", 12, judgement=Judgement.SAME_SYSTEM),
        replace(came(late, "K-3", 120, judgement=HANDS)),
    ]
    outside = replace(back[2].row, candidate=replace(back[2].row.candidate, in_window=False))
    back[2] = replace(back[2], row=outside)
    week = figures([plain, caused, looked, other, late, done("J-1")], back)
    why = {row["Why"]: row["Jobs"] for row in rows(week, "Rate", "KeptOut") if row["Jobs"]}
    assert why == {"maintenance": 3, "inspection only": 1, "new trouble from our hands": 1}
    [first] = [words for words in read_first(week) if "trouble from our hands" in words]
    assert first.startswith("1 job of the year that were inspection or maintenance came back")
    table = week_sheet(week, "Rate").table("KeptOut")
    places = {row["Why"]: place for place, row in enumerate(rows_of(table))}
    assert table.behind[places["new trouble from our hands"]] == ("M-2",)
    raw = {row["Job"]: row for row in rows(week, "Raw", "Raw")}
    assert raw["M-2"]["Kept out"] == "new trouble from our hands"
    assert [raw[job]["Kind of work"] for job in ("M-2", "I-1", "J-1")] == [
        *("maintenance", "inspection only", "repair"),
    ]
    assert sum(row["Came back"] for row in raw.values()) == 0  # and in no rate


def test_an_inspection_that_found_nothing_is_no_first_try_and_not_not_caught() -> None:
    nothing = {"cause_found": False, "correction": "", "symptoms": ("misfire",)}
    jobs = [done("I-1", **(MAINTAINED | nothing)), done("J-1", **nothing, counted=False)]
    [tries] = rows(figures(jobs), "Symptoms", "FirstFixed")
    [symptom] = rows(figures(jobs), "Symptoms", "Symptoms")
    assert (tries["First tries"], symptom["Not caught"]) == (1, 1)


@pytest.fixture
def written(shop: ShopRecord) -> ShopRecord:
    """A shop with a repair and a maintenance of the week."""
    for name in ("Ada", "Bo"):
        actions.add_person(shop, name)
    car = vehicle(shop, description="1.8-litre compact hatchback, 1990s")
    job(shop, car, "J-1", "2026-11-09", "2026-11-10", technician_id=1, hours=2.0)
    job(shop, car, "J-2", "2026-11-11", "2026-11-11", work="maintenance")
    who_actions.say_who(shop, 1, "searched", 2)
    who_actions.write_search_hours(shop, 1, 0.75)
    return shop


def test_what_was_said_on_the_job_reaches_the_sheets(written: ShopRecord) -> None:
    week = look_at_week(written, read_week("2026-W46"))
    first, second = week.year.jobs
    assert (first.named, first.search_hours, first.counted) == ((("searched", "Bo"),), 0.75, True)
    assert (second.named, second.work, second.counted) == ((), "maintenance", False)
    left = {row["Job"]: row for row in rows(week, "Left this week", "LeftThisWeek")}
    assert {row["Class"] for row in left.values()} == {"compact hatchback"}
    assert [left[name]["Counted"] for name in ("J-1", "J-2")] == ["yes", "no: maintenance"]
    raw = {row["Job"]: row for row in rows(week, "Raw", "Raw")}
    assert [raw["J-1"][name] for name in ("Search hours", "Class")] == [0.75, "compact hatchback"]
    assert week.as_json()["counted"] == 1


def test_a_return_of_maintenance_counts_in_no_week(written: ShopRecord) -> None:
    again = job(written, 1, "J-3", "2026-11-13")
    judge_return(written, 2, again, "from our hands")
    week = look_at_week(written, read_week("2026-W46"))
    assert week.year.hands_on == {"J-2"}
    assert week.counted_as("comeback") == 0
    why = {row["Why"]: row["Jobs"] for row in rows(week, "Rate", "KeptOut")}
    assert (why["new trouble from our hands"], why["maintenance"]) == (1, 0)


@pytest.mark.parametrize("damage", [{"work": "odd"}, {"search_hours": 10_001.0}])
def test_what_no_deed_has_written_is_told_with_its_job(
    written: ShopRecord, damage: dict[str, object]
) -> None:
    with written.deed("Damage it") as deed:
        deed.change(Job, 2, **damage)
    with pytest.raises(ShopDamaged, match="J-2"):
        look_at_week(written, read_week("2026-W46"))
