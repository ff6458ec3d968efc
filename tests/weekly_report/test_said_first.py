"""What stands first in the book: all that is not in a rate is named, and nothing too few is one."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime
from typing import Any

import pytest

from desktop_app.commands.shop_place import kinds_of
from desktop_app.repair_jobs.stored import CaughtHere
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.honest_numbers.group_rates import FEW_JOBS
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.owed import Owed, State, What
from desktop_app.returns_watched.stored_returns import count_waiting
from desktop_app.returns_watched.window_actions import promise_for_kind
from desktop_app.shop_record.house_rules import change_rule, change_rules
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import JobLeft, WeekFigures, WeekRows, week_figures
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.sheets import definition_words
from desktop_app.weekly_report.sheets.definition_words import DEFINITIONS, edition
from desktop_app.weekly_report.week import read_week
from desktop_app.weekly_report.year_behind import JobDone, YearBehind
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle
from tests.weekly_report.year_made import LAST, SHOP, WEEK, came, done, figures


def said(found: WeekFigures, part: str) -> str:
    """The one sentence that has the part."""
    [one] = [words for words in read_first(found) if part in words]
    return one


def some(name: str, many: int, **more: Any) -> list[JobDone]:
    return [done(f"{name}-{n}", **{"days_gone": 200, **more}) for n in range(many)]


def test_too_few_to_tell_have_no_rate_of_the_year() -> None:
    jobs = [*some("J", 21), *some("B", 9, back_after=20)]
    assert "too few to tell; anything from 17% to 48%" in said(figures(jobs), "The year:")
    [total] = [
        one
        for one in week_sheet(figures(jobs), "Read first").totals
        if one.words == "Rate of the year"
    ]
    assert total.value is None
    assert "0.2" in total.formula


def test_silence_is_said_beside_the_rate() -> None:
    jobs = [*some("S", 60), *some("F", 50, state="seen fine"), *some("B", 10, back_after=20)]
    assert said(figures(jobs), "The year:").startswith("The year: 10 of 120 settled jobs came back")
    # Wilson's interval of 10 of 60, by statsmodels: 9.3 % to 28.0 %.
    assert said(figures(jobs), "No news is not good news") == (
        "Of 60 of these 120 nothing was heard since, and the rate takes them for well; among those "
        "heard of, 10 of 60 came back (16.7%, 9.3% to 28.0%). No news is not good news: the truth "
        "probably lies between the two."
    )
    assert not any("heard" in words for words in read_first(figures(jobs[60:])))
    assert "of any of these 60 since" in said(figures(jobs[:60]), "no news is not good news")


def test_what_is_not_in_the_rate_is_named() -> None:
    jobs = [
        *some("J", 25),
        *some("O", 2, days_gone=30, state="open"),
        *some("W", 3, state="maybe", waits_after=10),
        *some("L", 4, state="lost sight", lost_after=20),
        *some("N", 5, state="came back, not ours", aside_after=20),
        *some("U", 1, state="came back, cannot tell", unsure_after=20),
    ]
    assert said(figures(jobs), "The year:").endswith(
        "Not in it: 2 open, 3 waiting, 4 lost sight of, 5 not ours, 1 of which nobody can tell."
    )
    notes = " ".join(week_sheet(figures(jobs), "Symptoms").table("Systems").notes)
    assert all(words in notes for words in ("out of sight", "not ours", "nobody can tell"))


def test_jobs_left_unproven_are_all_there() -> None:
    jobs = [
        *some("J", 2, proof_level=0),
        *some("O", 30, proof_level=0, days_gone=10, state="open"),
        *some("B", 4, proof_level=0, days_gone=20, back_after=5),
    ]
    found = said(figures(jobs), "unproven")
    assert found == (
        "Of 2 settled jobs of the year left unproven, none came back, too few to tell: anything "
        "from 0% to 66%. 34 more are not settled."
    )
    assert "none of them is settled yet" in said(figures(jobs[2:]), "unproven")
    assert said(figures(jobs[:3]), "unproven").endswith("from 0% to 66%. 1 more is not settled.")
    assert said(figures(jobs[:2]), "unproven").endswith("too few to tell: anything from 0% to 66%.")


def test_what_suppliers_owe_is_said_with_what_nobody_knows_the_amount_of() -> None:
    def owing(*sums: int | None) -> WeekFigures:
        owed = tuple(
            Owed(n, n, "J-1", "alternator", "", What.CORE, cents, LAST, State.OPEN)
            for n, cents in enumerate(sums)
        )
        found = figures([])
        return replace(found, year=replace(found.year, owed=owed))

    assert said(owing(6_000, 120_050), "owe") == "Suppliers owe $1,260.50."
    assert said(owing(6_000, None), "owe") == "Suppliers owe $60.00, and 1 without an amount."
    assert not any("owe" in words for words in read_first(figures([])))


def test_only_a_week_of_few_jobs_is_told_to_be_small() -> None:
    left = JobLeft(
        *("J", LAST, "car", "stalls", True, "wire broken", "wire replaced", "ignition", 2),
        *(None, None, None, None, 0.0, "first", None),
    )
    few = replace(figures([]), left=(left,) * (FEW_JOBS - 1))
    assert "with 19 jobs counted" in said(few, "Small numbers")
    many = replace(few, left=(left,) * FEW_JOBS)
    assert not any("Small numbers" in words for words in read_first(many))
    uncounted = replace(left, work="inspection")
    assert "with 19 jobs counted" in said(replace(few, left=(*few.left, uncounted)), "Small")


def test_what_waits_in_the_week_is_among_what_waits_at_all() -> None:
    nothing, counted = done("U-1", 20, counted=False), done("C-1", 25)
    met = [came(nothing, "K-1", 17), came(counted, "K-1", 22, judgement=None)]
    met = [replace(one, row=replace(one.row, vehicle="car")) for one in met]
    year = YearBehind(WEEK.moved(-51).monday, LAST, (nothing, counted), tuple(met))
    rows = tuple(one.row for one in met)
    now = datetime(2026, 11, 16, 12, tzinfo=UTC)
    read = WeekRows((), rows, (), (), rows, year)
    found = week_figures(WEEK, now, LAST, SHOP, read)
    assert "1 visit waits for a person to judge, 1 of the week" in said(found, "to judge")
    assert week_figures(WEEK, now, date(2026, 12, 20), SHOP, read).waiting_long == 1


def test_a_customer_who_tells_the_same_is_said(shop: ShopRecord) -> None:
    one = job(shop, vehicle(shop), "J-1", "2026-10-01", "2026-10-02")
    note_answer(shop, one, "same trouble", on=date(2026, 10, 20))
    found = look_at_week(shop, read_week("2026-W46"))
    assert "1 return that was only told waits for a judgement too" in said(found, "only told")
    waits = [t for t in week_sheet(found, "Read first").totals if t.words == "Jobs that wait"]
    assert [total.value for total in waits] == [1]


def test_one_car_with_two_jobs_is_not_called_two_customers(shop: ShopRecord) -> None:
    car = vehicle(shop)
    for number in ("J-1", "J-2"):
        one = job(shop, car, number, "2026-10-01", "2026-10-02")
        note_answer(shop, one, "same trouble", on=date(2026, 10, 20))
    found = look_at_week(shop, read_week("2026-W46"))
    assert said(found, "only told").startswith("1 return that was only told waits")
    with shop.reading() as connection:
        assert count_waiting(connection, date(2026, 11, 15)) == 1


def test_what_was_caught_here_in_the_week_is_said(shop: ShopRecord) -> None:
    ids = a_week_of_returns(shop)
    with shop.deed("Caught") as deed:
        at = "2026-11-12T10:00:00+00:00"
        deed.add(CaughtHere, job_id=ids["J-161"], caught_at=at, words="still soft")
    found = look_at_week(shop, read_week("2026-W46"))
    assert said(found, "caught here").startswith("1 fault was caught here in jobs of the week")


def test_rules_that_changed_in_the_week_are_said_and_no_others(shop: ShopRecord) -> None:
    week = read_week("2026-W47")  # the week of the shop's clock
    assert look_at_week(shop, week).rules_changed == ()
    change_rule(shop, "hour_cost_cents", 7000)
    change_rule(shop, "early_days", 20)
    change_rule(shop, "early_days", 30)  # as it was
    promise_for_kind(shop, "brake-pads", Promise(days=180))
    [words] = look_at_week(shop, week).rules_changed
    assert words == (
        "Changed in the house rules in this week: hour cost from $60.00 to $70.00; "
        "the promise for brake pads."
    )
    assert words in read_first(look_at_week(shop, week))
    assert look_at_week(shop, read_week("2026-W46")).rules_changed == ()


def test_a_changed_promise_is_said_as_a_whole_and_a_kind_by_its_name(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(shop, "clock", lambda: datetime(2026, 11, 11, 12, tzinfo=UTC))
    change_rule(shop, "shop_name", "Tin Heron")
    change_rules(shop, "The promise", {"window_days": 60})
    promise_for_kind(shop, "brake-pads", Promise(days=180))
    monkeypatch.setattr(shop, "clock", lambda: datetime(2026, 11, 18, 12, tzinfo=UTC))
    change_rules(shop, "The promise", {"window_miles": 4000})  # a week later
    found = look_at_week(shop, read_week("2026-W46"), kinds=kinds_of())
    assert found.rules_changed == (
        "Changed in the house rules in this week: the shop's promise from “90 days or 3,000 miles, "
        "whichever ends first” to “60 days or 3,000 miles, whichever ends first”; shop name from "
        "“Our shop” to “Tin Heron”; the promise for disc brake pads.",
    )


def test_the_edition_of_the_definitions_changes_with_their_words(monkeypatch: Any) -> None:
    now = edition()
    assert now in said(figures([]), "of the definitions")
    changed = (DEFINITIONS[0]._replace(means="Something else."), *DEFINITIONS[1:])
    monkeypatch.setattr(definition_words, "DEFINITIONS", changed)
    assert edition() != now


def test_a_visit_beyond_the_window_is_not_called_waiting(shop: ShopRecord) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-06-01", "2026-06-02", symptoms=["misfire"])
    b = job(shop, car, "J-2", "2026-10-20", "2026-10-20", symptoms=["misfire"])
    c = job(shop, car, "J-3", "2026-11-10", "2026-11-11", symptoms=["misfire"])
    table = week_sheet(look_at_week(shop, read_week("2026-W46")), "Came back").table("CameBack")
    assert table.column("Judgement") == ("not judged", "not judged")
    judge_return(shop, b, c, "same symptom")
    table = week_sheet(look_at_week(shop, read_week("2026-W46")), "Came back").table("CameBack")
    assert set(table.column("Judgement")) == {"not judged", "same symptom"}
    assert "waiting" not in table.column("Judgement")


def test_a_windows_limits_are_joined_by_its_rule(shop: ShopRecord) -> None:
    days: dict[str, Any] = {"window_rule": "both"}
    for n, more in enumerate((days, {}, {"window_days": 0}, {"window_miles": 0})):
        car = vehicle(shop, plate=f"T {n}")
        job(shop, car, f"J-{n}", "2026-11-10", f"2026-11-1{n + 1}", **more)
    left = week_sheet(look_at_week(shop, read_week("2026-W46")), "Left this week").tables[0]
    assert left.column("Window ends") == (
        "2027-02-09 and 3,000 mi",
        "2027-02-10 or 3,000 mi",
        "3,000 mi",
        "2027-02-12",
    )


def test_the_windows_of_the_rates_are_said_as_the_shop_says_them() -> None:
    def windows(**more: int) -> str:
        found = figures(some("J", 25), (), replace(SHOP, **more))
        return week_sheet(found, "Rate").table("RateByMonth").notes[0]

    assert "now 3,000 miles." in windows(window_days=0)
    assert "now 3 calendar months or 3,000 miles" in windows(window_days=92, window_months=3)
