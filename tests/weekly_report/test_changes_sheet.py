"""Sheet “Changes”: which cause grew, and whether a promise helped; luck is not called either."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.change_promised import ChangePromised
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.weekly_report.before_the_year import Promised
from desktop_app.weekly_report.figures import ShopWords, WeekFigures
from desktop_app.weekly_report.sheets.changes import changes_sheet, told_apart
from desktop_app.weekly_report.sheets.raw import raw_sheet
from desktop_app.weekly_report.week import Week
from desktop_app.weekly_report.year_behind import ReturnDone, YearBehind

WEEK = Week(2026, 46)
SHOP = ShopWords("Tin Heron Garage", "mi", "$", "A4", 90, 3000, "first")


def back(number: int, came: date, cause: str = "fitted-badly") -> ReturnRow:
    candidate = Candidate(
        f"J-{number}", f"J-{number + 500}", 10, 100.0, True, "time", (), 0.1, f"J-{number}",
        Judgement.SAME_PART,
    )  # fmt: skip
    car = f"car {number}"
    return ReturnRow(candidate, number, number, car, came, came, cause_class=cause)


def figures(*returns: ReturnDone) -> WeekFigures:
    year = YearBehind(WEEK.moved(-51).monday, WEEK.sunday, returns=returns)
    made = datetime(2026, 11, 16, 7, 30, tzinfo=UTC)
    rows = tuple(one.row for one in returns)
    return WeekFigures(WEEK, made, WEEK.sunday, SHOP, (), rows, (), (), (), year)


def with_year(found: WeekFigures, **more: Any) -> WeekFigures:
    """The same figures over a year with something more in it."""
    return replace(found, year=replace(found.year, **more))


@pytest.mark.parametrize(
    ("before", "since", "said"),
    [
        # Of n comebacks none fall to one side with a chance of 2 / 2**n, worked out by hand:
        # n = 7 gives 0.016, n = 8 gives 0.0078.
        (7, 0, "too few to tell"),
        (8, 0, "clearly fewer"),
        (0, 8, "clearly more"),
        (8, 1, "may be luck"),
        (2, 1, "too few to tell"),
        (0, 0, "too few to tell"),
    ],
)
def test_only_what_luck_hardly_makes_is_said(before: int, since: int, said: str) -> None:
    assert told_apart(before, since) == said


@given(st.integers(0, 200), st.integers(0, 200))
def test_before_and_since_are_told_alike(before: int, since: int) -> None:
    mirrored = {"clearly more": "clearly fewer", "clearly fewer": "clearly more"}
    there = told_apart(before, since)
    assert told_apart(since, before) == mirrored.get(there, there)


def test_each_comeback_lies_in_one_quarter_and_the_formula_counts_the_same() -> None:
    days = [WEEK.sunday, WEEK.moved(-12).monday, WEEK.moved(-13).sunday, WEEK.moved(-25).monday]
    lost = WEEK.moved(-26).sunday
    found = figures(*(ReturnDone(back(n, day)) for n, day in enumerate((*days, lost))))
    [cause] = changes_sheet(found).table("CausesThen").rows
    assert cause == ("fitted badly", 2, 2, "too few to tell")
    weeks = raw_sheet(found).table("Returns").column("Weeks ago")
    assert weeks == (0, 12, 13, 25, 26)


def test_a_promise_is_held_against_as_many_days_before_it() -> None:
    done = date(2026, 11, 6)  # ten days with the Sunday of the week, 15 November
    kept = ChangePromised("Torque is read aloud.", "Tuuli", done, done)
    came = [date(2026, 10, 26), date(2026, 10, 27), date(2026, 11, 5), done, WEEK.sunday]
    found = [ReturnDone(back(n, day)) for n, day in enumerate(came)]
    found += [ReturnDone(back(9, date(2026, 11, 10), "wrong-part"))]
    found += [ReturnDone(back(8, date(2026, 10, 1)), change=kept)]
    [row] = changes_sheet(figures(*found)).table("Changes").rows
    assert row[:6] == ("Torque is read aloud.", 2, 10, 2, 10, "too few to tell")


def test_what_is_not_done_yet_has_no_figures() -> None:
    promised = ChangePromised("Leads are numbered.", "Marek", date(2026, 12, 1))
    [row] = changes_sheet(figures(ReturnDone(back(1, WEEK.monday), change=promised))).tables[1].rows
    assert row[:6] == ("Leads are numbered.", None, None, None, None, "not done yet")


def test_all_days_since_a_change_count_though_the_book_knows_fewer_before() -> None:
    done = date(2025, 12, 10)  # the year of the book begins on 17 November 2025, 23 days before
    kept = ChangePromised("Torque is read aloud.", "Tuuli", done, done)
    found = [ReturnDone(back(n, date(2026, n, 20))) for n in range(2, 8)]
    found += [ReturnDone(back(8, date(2025, 12, 1)), change=kept)]
    [row] = changes_sheet(figures(*found)).table("Changes").rows
    # Each of the 7 falls into the 23 days by luck with a chance of 23 / 364.
    assert row[1:6] == (6, 341, 1, 23, "may be luck")


def test_a_change_from_before_the_year_is_not_held_against_a_part_of_its_time() -> None:
    kept = ChangePromised("Torque is read aloud.", "", None, date(2025, 11, 1), WEEK.sunday)
    old = Promised("J-1", "J-2", date(2025, 10, 10), "fitted-badly", kept)
    found = figures(ReturnDone(back(1, WEEK.monday)))
    [row] = changes_sheet(with_year(found, promised_before=(old,))).table("Changes").rows
    assert row[1:6] == (None, None, None, None, "done before the year of this book")


def test_times_of_different_length_are_weighed() -> None:
    # With 10 days before and 90 since, 9 in each are 9 where 1.8 of 18 are expected before.
    assert told_apart(9, 9, (10, 90)) == "clearly fewer"
    assert told_apart(1, 9, (10, 90)) == "may be luck"
    # Even one of one before would be luck once in ten times.
    assert told_apart(1, 0, (10, 90)) == "too few to tell"


def test_names_are_in_the_book_by_the_house_rule_alone() -> None:
    promised = ChangePromised("Leads are numbered.", "Marek", date(2026, 12, 1))
    found = figures(ReturnDone(back(1, WEEK.monday), change=promised))
    table = changes_sheet(found).table("Changes")
    assert table.column("Who") == ("",)
    assert any("Names are left out" in note for note in table.notes)
    table = changes_sheet(with_year(found, names_shown=True)).table("Changes")
    assert table.column("Who") == ("Marek",)


def test_what_was_done_after_the_day_that_is_looked_from_was_open_then() -> None:
    done = ChangePromised("Leads are numbered.", "", date(2026, 11, 10), date(2026, 11, 20))
    found = figures(ReturnDone(back(1, WEEK.monday), change=done))
    table = changes_sheet(found).table("Changes")
    assert table.column("State") == ("Not done, 5 days late.",)
    assert table.column("Done on") == (None,)
