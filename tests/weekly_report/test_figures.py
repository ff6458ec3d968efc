"""What a week comes to: what left, what came back and as what it counts."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import count_later_jobs, weeks_behind
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.stored import read_week_figures
from desktop_app.weekly_report.week import Week, read_week
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle


def row(
    earlier: str,
    later: str,
    judgement: Judgement | None = None,
    *,
    in_window: bool = True,
    came: date = date(2026, 11, 10),
) -> ReturnRow:
    candidate = Candidate(
        earlier, later, 10, 100.0, in_window, "time", ("same system: x",), 0.1, earlier, judgement
    )
    return ReturnRow(candidate, 1, 2, "a car", date(2026, 10, 31), came)


JUDGED = st.sampled_from([None, *Judgement])
ROWS = st.lists(
    st.builds(
        row,
        st.sampled_from("ABC"),
        st.sampled_from("XYZ"),
        JUDGED,
        in_window=st.booleans(),
        came=st.dates(date(2026, 6, 1), date(2026, 11, 15)),
    ),
    max_size=12,
)


@pytest.mark.parametrize("judgement", list(Judgement))
def test_only_the_four_comebacks_count(judgement: Judgement) -> None:
    comebacks = {"same symptom", "same system", "same part", "from our hands"}
    expected = "comeback" if judgement.value in comebacks else "not counted"
    assert count_later_jobs([row("A", "X", judgement)]) == (expected,)


def test_a_visit_that_meets_two_earlier_jobs_counts_once() -> None:
    rows = [row("A", "X"), row("B", "X", Judgement.SAME_PART), row("C", "X", Judgement.SAME_PART)]
    assert count_later_jobs(rows) == ("not counted", "comeback", "not counted")


def test_what_lies_beyond_the_window_is_listed_and_not_counted() -> None:
    rows = [row("A", "X", Judgement.SAME_PART, in_window=False), row("A", "Y", in_window=False)]
    assert count_later_jobs(rows) == ("not counted", "not counted")


@given(ROWS)
def test_every_visit_counts_once_at_most(rows: list[ReturnRow]) -> None:
    counts = count_later_jobs(rows)
    counted = [r.came_on for r, c in zip(rows, counts, strict=True) if c != "not counted"]
    assert len(counted) == len(set(counted))
    back = {r.came_on for r in rows if r.is_comeback}
    assert {r.came_on for r, c in zip(rows, counts, strict=True) if c == "comeback"} == back
    waits = {r.came_on for r in rows if r.waits} - back
    assert {r.came_on for r, c in zip(rows, counts, strict=True) if c == "waiting"} == waits


@given(ROWS, st.lists(st.dates(date(2026, 6, 1), date(2026, 11, 15)), max_size=20))
def test_26_weeks_hold_every_row_in_its_week(rows: list[ReturnRow], left: list[date]) -> None:
    week = Week(2026, 46)
    weeks = weeks_behind(week, left, rows)
    assert [each.week for each in weeks] == [week.moved(-back) for back in range(25, -1, -1)]
    for each in weeks:
        assert each.left == sum(each.week.monday <= day <= each.week.sunday for day in left)
    counts = count_later_jobs(rows)
    assert sum(each.comebacks for each in weeks) == counts.count("comeback")
    assert sum(each.waiting for each in weeks) == counts.count("waiting")


def test_a_week_from_the_record(shop: ShopRecord) -> None:
    ids = a_week_of_returns(shop)
    judge_return(shop, ids["J-131"], ids["J-160"], "same part")
    figures = look_at_week(shop, read_week("2026-W46"))
    assert [job.number for job in figures.left] == ["J-160", "J-161", "J-162"]
    assert [job.counted for job in figures.left] == [True, True, False]
    pairs = [(r.earlier, r.later) for r in figures.came_back]
    assert sorted(pairs) == [("J-104", "J-160"), ("J-131", "J-160"), ("J-140", "J-162")]
    assert (figures.counted_as("comeback"), figures.counted_as("waiting")) == (1, 1)
    assert [w.job for w in figures.on_watch] == [
        "J-104",
        "J-131",
        "J-140",
        "J-160",
        "J-161",
        "J-162",
    ]
    last = figures.weeks[-1]
    assert (last.left, last.comebacks, last.waiting) == (3, 1, 1)
    assert sum(w.left for w in figures.weeks) == 6


def test_the_watch_of_a_past_week_is_that_of_its_sunday(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    figures = look_at_week(shop, read_week("2026-W36"))
    assert figures.as_of == date(2026, 9, 6)
    assert [w.job for w in figures.on_watch] == ["J-104"]


@pytest.mark.parametrize("week", ["2026-W48", "2031-W01"])
def test_a_week_that_is_still_to_come_says_only_that_and_who_is_watched_now(
    shop: ShopRecord, week: str
) -> None:
    a_week_of_returns(shop)
    now, figures = look_at_week(shop, read_week("2026-W47")), look_at_week(shop, read_week(week))
    assert (figures.left, figures.came_back) == ((), ())
    assert sum(w.left + w.comebacks + w.waiting for w in figures.weeks) == 0
    assert (figures.on_watch, figures.calls_due) == (now.on_watch, now.calls_due)
    assert figures.as_json()["under_watch"] == now.as_json()["under_watch"] == 6
    said = read_first(figures)
    assert any("still to come" in words for words in said)
    assert said[-1].startswith("6 jobs were under watch on 16 November 2026")
    assert not any(words in " ".join(said) for words in ("left in the week", "The year:", "Small"))
    first = week_sheet(figures, "Read first")
    assert (first.totals, first.to_do) == ((), ())


def test_the_first_sheet_says_which_warnings_apply(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    with shop.reading() as connection:
        late = datetime(2026, 12, 7, 9, 0, tzinfo=UTC)
        words = " ".join(read_first(read_week_figures(connection, Week(2026, 49), late)))
    assert "still to come" not in words
    assert "Small numbers" in words
    assert "An open window never counts as a success" in words
    assert "3 returns of the last 26 weeks have waited for a judgement" in words


def test_who_is_to_be_asked_is_counted_as_the_sheet_of_windows_has_it(shop: ShopRecord) -> None:
    job(shop, vehicle(shop), "J-1", "2026-08-17", "2026-08-17")  # its 90 days end on 15 November
    for week, asked in (("2026-W40", False), ("2026-W46", True)):
        figures = look_at_week(shop, read_week(week))
        assert any(day <= figures.as_of for day in figures.calls_due.values()) is asked
        said = any("1 job: ask the customer now" in words for words in read_first(figures))
        assert said is asked


def test_kilometres_where_the_house_rule_says_so(shop: ShopRecord) -> None:
    from desktop_app.shop_record.house_rules import change_rule

    job(shop, vehicle(shop), "J-1", "2026-11-10", "2026-11-10")
    change_rule(shop, "distance_unit", "km")
    figures = look_at_week(shop, read_week("2026-W46"))
    # 3,000 miles are 4,828.032 km.
    assert any("90 days or 3,000 miles (4,828 km)" in words for words in read_first(figures))
