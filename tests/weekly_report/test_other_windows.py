"""The early and the long window say of each job what its own window would."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

import pytest

from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.window import Window
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.other_windows import jobs_in_window
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.sheets.rate_months import OWN
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import job, judge_return, vehicle
from tests.weekly_report.year_made import came, done, figures

MISFIRE: dict[str, Any] = {"symptoms": ["misfire"]}
WANTED = ("Settled", "Waiting", "Comebacks")
COLUMNS = ("back_after", "waits_after", "lost_after", "aside_after", "unsure_after")


def book(shop: ShopRecord) -> WeekFigures:
    return look_at_week(shop, read_week("2026-W46"))


def rows(found: WeekFigures) -> list[dict[str, Any]]:
    table = week_sheet(found, "Rate").table("RateByMonth")
    heads = [column.header for column in table.columns]
    return [dict(zip(heads, row, strict=True)) for row in table.rows]


def counts(found: WeekFigures, window: str) -> tuple[int, ...]:
    first = next(row for row in rows(found) if row["Window"] == window)
    return tuple(first[header] for header in WANTED)


def test_the_same_trouble_told_in_the_early_window_waits_in_it(shop: ShopRecord) -> None:
    for n in range(5):
        one = job(shop, vehicle(shop, plate=f"T {n}"), f"J-{n}", "2026-07-01", "2026-07-01")
        if n < 2:
            note_answer(shop, one, "same trouble", on=date(2026, 7, 10 if n else 20))
    assert counts(book(shop), "early") == counts(book(shop), OWN) == (3, 2, 0)


def test_what_came_after_a_sale_came_back_in_no_window(shop: ShopRecord) -> None:
    change_rule(shop, "sale_ends_window", "yes")
    a_year_with_all_fates(shop)
    early, main = counts(book(shop), "early"), counts(book(shop), OWN)
    assert early[2] == main[2] == 1  # the sold car's return is none


@pytest.mark.parametrize("state", ["lost sight", "came back, not ours", "came back, cannot tell"])
def test_what_becomes_known_between_two_windows_counts_in_the_longer(state: str) -> None:
    jobs = [done(f"J-{n}", 250) for n in range(4)]
    if state == "lost sight":
        jobs[0], returns = jobs[0]._replace(in_sight=120), []
    else:
        [one] = [came(jobs[0], "K-0", 120, cause="new" if state.endswith("ours") else None)]
        judgement = None if state.endswith("ours") else "cannot tell"
        met = replace(one.row.candidate, in_window=False)
        met = replace(met, judgement=type(met.judgement)(judgement)) if judgement else met
        returns = [replace(one, row=replace(one.row, candidate=met))]
    found = figures(jobs, returns)
    found = replace(found, year=replace(found.year, long=(180, 12_000)))
    assert counts(found, OWN) == (4, 0, 0)
    assert counts(found, "long") == (3, 0, 0)


def a_year_with_all_fates(shop: ShopRecord) -> None:
    """One car of each sort, all handed over on 2 July."""
    said: dict[str, tuple[str, str | None]] = {
        "back": ("same symptom", None),
        "aside": ("other hands", "other-use"),
        "unsure": ("cannot tell", None),
        "unrelated": ("unrelated", None),
        "sold": ("same part", None),
    }
    for name in ("quiet", "told", "gone", "waits", *said):
        car = vehicle(shop, plate=name)
        first = job(shop, car, f"J-{name}", "2026-07-01", "2026-07-02", 10_000, **MISFIRE)
        if name == "sold":
            with shop.deed("Sold") as deed:
                deed.add(VehicleEvent, vehicle_id=car, kind="sold", happened_on="2026-07-06")
        if name in ("waits", *said):
            later = job(shop, car, f"K-{name}", "2026-07-20", "2026-11-10", 10_300, **MISFIRE)
            if name in said:
                judge_return(shop, first, later, said[name][0], cause_class=said[name][1])
        answers = {"told": "same trouble", "gone": "car is gone"}
        if name in answers:
            note_answer(shop, first, answers[name], on=date(2026, 7, 20))


@pytest.mark.parametrize("days", [10, 30, 60])
def test_jobs_read_from_before_the_year_have_the_fates_of_those_in_it(
    shop: ShopRecord, days: int
) -> None:
    change_rule(shop, "sale_ends_window", "yes")
    change_rule(shop, "long_days", days)
    a_year_with_all_fates(shop)
    year = book(shop).year
    back = year.looked_back
    assert back is not None
    assert back.numbers == tuple(one.number for one in year.counted if one.number[0] == "J")
    own = jobs_in_window(year, Window(days, 12_000))
    places = [i for i, one in enumerate(year.counted) if one.number[0] == "J"]
    for name in COLUMNS:
        assert getattr(back.jobs, name).tolist() == getattr(own, name)[places].tolist(), name
    assert back.jobs.settled.tolist() == own.settled[places].tolist()


def test_the_long_window_has_a_row_of_the_year_before(shop: ShopRecord) -> None:
    out = date(2025, 3, 1)
    for n in range(4):
        car = vehicle(shop, plate=f"T {n}")
        first = job(shop, car, f"J-{n}", *[out.isoformat()] * 2, 10_000, **MISFIRE)
        if n < 2:  # the second beyond the twelve months
            on = (out + timedelta(days=200 if n else 380)).isoformat()
            later = job(shop, car, f"K-{n}", on, None, 14_000, **MISFIRE)
            judge_return(shop, first, later, "same symptom")
    job(shop, vehicle(shop, plate="NEW"), "J-9", "2026-06-01", "2026-06-02")
    [row] = [row for row in rows(book(shop)) if row["Window"] == "long"]
    assert row["Left in"] == "2024-11-17 to 2025-11-14"
    assert (row["Jobs"], *(row[header] for header in WANTED)) == (4, 4, 0, 1)
    table = week_sheet(book(shop), "Rate").table("RateByMonth")
    place = [cells[1] for cells in table.rows].index("long")
    assert table.behind[place] == ("J-0", "J-1", "J-2", "J-3")
    assert table.behind_of["Comebacks"](place) == ("J-1",)
    said = "the jobs that left 2024-11-17 to 2025-11-14: the window is over for all of them."
    assert any(said in note for note in table.notes)


def test_silence_is_dropped_where_the_last_news_was(shop: ShopRecord) -> None:
    for n, heard in enumerate((None, "2025-09-01", "2026-04-01")):
        car = vehicle(shop, plate=f"T {n}")
        job(shop, car, f"J-{n}", "2025-03-01", "2025-03-01", 10_000)
        if heard:
            job(shop, car, f"K-{n}", heard, None, 10_900, system="brakes", cause="")
    back = book(shop).year.looked_back
    assert back is not None
    assert back.silent().tolist() == [0, 184, 365]
