"""The week's book with returns that were only told, and with what was dangerous."""

from __future__ import annotations

from datetime import date

import pytest
from sqlalchemy import select

from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.judging_actions import say_dangerous
from desktop_app.returns_watched.told_actions import judge_told, say_told_dangerous
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheet, week_sheets
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.row_jobs import jobs_of_row
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import a_week_of_returns, as_made, job, judge_return, vehicle


@pytest.fixture
def told(shop: ShopRecord) -> tuple[int, int]:
    """J-150, whose customer showed another shop's bill in the week."""
    a_week_of_returns(shop)
    car = vehicle(shop, plate="TIN 07")
    one = job(shop, car, "J-150", "2026-10-20", "2026-10-20", 10_000)
    day = {"on": date(2026, 11, 11), "words": "they put a cap on", "source": "paper"}
    return one, as_made(note_answer(shop, one, "same trouble", odometer_told=11_000, **day))


def book(shop: ShopRecord) -> WeekFigures:
    return look_at_week(shop, read_week("2026-W46"))


def test_it_stands_among_the_weeks_returns_in_place_of_a_later_job(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    judge_told(shop, *told, "same part", cause_class="part-died-early", by="Ana")
    found = book(shop)
    pairs = week_sheet(found, "Came back").table("CameBack")
    place = pairs.column("Later job").index("on paper 2026-11-11")
    row = dict(zip((one.header for one in pairs.columns), pairs.rows[place], strict=True))
    assert row | {"Window used": None, "Cost": None} == {
        **{"Earlier job": "J-150", "Later job": "on paper 2026-11-11", "Days": 22, "Miles": 1000},
        **{"Vehicle": "TIN 07 · 1.8-litre compact hatchback", "Came on": date(2026, 11, 11)},
        **{"Window used": None, "Then": "misses in the rain", "Now": "they put a cap on"},
        **{"Reasons": "customer says it's the same", "Judgement": "same part"},
        **{"Counts as": "comeback", "Cause": "part died early", "Dangerous": "not said"},
        "Cost": None,
    }
    assert any("this shop never saw that return" in note for note in pairs.notes)
    assert found.counted_as("comeback") == 1
    assert any(
        "0 visits of the week count as comebacks, and 1 return that was only told" in one
        for one in read_first(found)
    )
    assert not any("no cost written" in one for one in read_first(found))
    chains = week_sheet(found, "Chains").table("Chains")
    assert chains.column("Jobs in turn") == ("J-150 → on paper 2026-11-11",)
    assert chains.behind == (("J-150",),)  # what was only told is no job to be opened
    assert "in 1 return visit, 1 of them only told." in chains.notes[0]
    by_cause = week_sheet(found, "Costs").table("CostByCause")
    assert (by_cause.rows[0][:2], by_cause.behind) == (("part died early", 1), (("J-150",),))
    assert week_sheet(found, "Raw").table("Returns").column("Counts").count(1) == 1


def test_what_waits_is_judged_or_the_car_is_had_in(shop: ShopRecord, told: tuple[int, int]) -> None:
    found = book(shop)
    assert found.as_json()["waiting"] == 3
    [words] = [one for one in read_first(found) if "only told" in one]
    assert words.startswith("1 return that was only told waits for a judgement too")
    later = look_at_week(shop, read_week("2026-W47"))
    waiting = week_sheet(later, "Came back").table("StillWaiting")
    assert "on paper 2026-11-11" in waiting.column("Later job")


def test_the_book_says_first_what_was_dangerous(shop: ShopRecord, told: tuple[int, int]) -> None:
    assert read_first(book(shop))[0] == (
        "Of the week's 3 returns nobody said whether somebody could have been hurt: read what the "
        "customer says."
    )
    say_told_dangerous(shop, *told, True)
    first, then = read_first(book(shop))[:2]
    assert first == "1 return was dangerous: on paper 2026-11-11 after J-150, to be judged."
    assert then.startswith("Of 2 of the week's 3 returns nobody said whether")
    later = look_at_week(shop, read_week("2026-W47"))  # it leads until somebody has judged it
    assert read_first(later)[0] == first
    assert "yes" in week_sheet(later, "Came back").table("StillWaiting").column("Dangerous")
    judge_return(shop, 1, 3, "same part")
    say_dangerous(shop, 1, 3, True)
    say_dangerous(shop, 2, 3, False)
    say_dangerous(shop, 5, 6, False)
    assert read_first(book(shop))[0] == (
        "2 returns were dangerous: J-160 after J-104, on paper 2026-11-11 after J-150, to be "
        "judged."
    )
    say_told_dangerous(shop, *told, False)
    say_dangerous(shop, 1, 3, False)
    assert read_first(book(shop))[0] == (
        "Of the week's 3 returns none was dangerous, as was said of each."
    )
    say_told_dangerous(shop, *told, True)
    say_dangerous(shop, 1, 3, True)
    column = week_sheet(book(shop), "Came back").table("CameBack").column("Dangerous")
    assert sorted(map(str, column)) == ["no", "no", "yes", "yes"]


def test_a_week_without_returns_says_nothing_of_danger(shop: ShopRecord) -> None:
    assert not any("dangerous" in one for one in read_first(book(shop)))


def test_long_windows_and_others_take_what_was_told_alike(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    from desktop_app.returns_watched.window import Window
    from desktop_app.weekly_report.other_windows import jobs_in_window

    judge_told(shop, *told, "same part", by="Ana")
    found = book(shop)
    place = [one.number for one in found.year.counted].index("J-150")
    for window, back in ((Window(30, 0), True), (Window(30, 999), False), (Window(21, 0), False)):
        assert bool(jobs_in_window(found.year, window).came_back[place]) is back


def test_a_danger_that_was_told_stays_with_the_visit_that_speaks_for_it(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    say_told_dangerous(shop, *told, True)
    first, _ = told
    with shop.reading() as connection:
        of = select(Visit.vehicle_id).join(Job, Job.visit_id == Visit.id).where(Job.id == first)
        car = connection.execute(of).scalar_one()
    later = job(shop, car, "J-170", "2026-11-14", None, concern="again")
    judge_return(shop, first, later, "same part")
    assert "on paper" not in read_first(book(shop))[0]
    assert read_first(book(shop))[0].startswith("1 return was dangerous: J-170 after J-150")


def test_a_changed_judgement_of_what_was_told_says_from_what(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    judge_told(shop, *told, "cannot tell", by="Ana")
    judge_told(shop, *told, "same part", by="Bo")
    rows = week_sheet(book(shop), "Came back").table("HowJudged")
    place = rows.column("Later job").index("on paper 2026-11-11")
    words = str(rows.column("Who judged, and when")[place])
    assert "“cannot tell”" in words
    assert "revised to “same part”" in words


def test_whatever_is_opened_for_it_is_a_job_that_is_there(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    with shop.reading() as connection:
        known = set(connection.execute(select(Job.number)).scalars())
    waits = look_at_week(shop, read_week("2026-W47"))
    judge_told(shop, *told, "same part", cause_class="part-died-early", by="Ana")
    for found in (waits, book(shop)):
        for sheet in week_sheets(found):
            for table in sheet.tables:
                opened = {job for n in range(len(table.rows)) for job in jobs_of_row(table, n)}
                assert opened <= known, table.name
            totals = {total.words: total.jobs() for total in sheet.totals if total.jobs}
            assert set(sum(totals.values(), ())) <= known
    [comebacks] = [t for t in week_sheet(book(shop), "Read first").totals if t.words == "Comebacks"]
    assert comebacks.jobs is not None
    assert comebacks.jobs() == ("J-150",)
