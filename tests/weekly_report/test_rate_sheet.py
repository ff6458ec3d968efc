"""The sheet Rate: the year's rate, the weeks that stand out, and the curves by days and miles."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop_app.returns_watched.honest_numbers.counted_jobs import NO_LAST_DAY
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.sheet_form import Table
from desktop_app.weekly_report.sheets.rate import rate_sheet
from desktop_app.weekly_report.sheets.rate_months import OWN
from desktop_app.weekly_report.week import week_of
from desktop_app.weekly_report.weekly_chart_of import weeks_charted
from desktop_app.weekly_report.year_behind import JobDone, ReturnDone
from tests.weekly_report.year_made import SHOP, WEEK, came, done, figures

YEAR = "the whole year"


def cells(table: Table, row: int = 0) -> dict[str, object]:
    """One row by its headers."""
    return dict(zip((column.header for column in table.columns), table.rows[row], strict=True))


def steady(
    rise_from: int | None = None, rise_to: int = 0
) -> tuple[list[JobDone], list[ReturnDone]]:
    """A year of 20 jobs a week with one comeback a week, or four.

    Four from so many weeks before the last, until so many before it.
    """
    jobs: list[JobDone] = []
    returns: list[ReturnDone] = []
    for week in range(52):
        gone = 7 * (51 - week)
        back = 4 if rise_from is not None and rise_to <= 51 - week < rise_from else 1
        for n in range(20):
            after = 0 if n < back else None
            job = done(f"J-{week}-{n}", gone, back_after=after)
            jobs.append(job)
            if after is not None:
                returns.append(came(job, f"K-{week}-{n}", after))
    return jobs, returns


def test_the_year_stands_first_and_is_the_rate_of_read_first() -> None:
    # Two jobs had a longer window than the shop's: they are not settled yet.
    jobs = [done(f"J-{n}", 100, back_after=20 if n < 4 else None) for n in range(40)]
    jobs += [done("J-80", 100, window_days=365, back_after=20), done("J-81", 100, window_days=365)]
    table = rate_sheet(figures(jobs)).table("RateByMonth")
    rows = [cells(table, n) for n in range(3)]
    [main] = [row for row in rows if (row["Left in"], row["Window"]) == (YEAR, OWN)]
    assert (main["Jobs"], main["Settled"], main["Comebacks"]) == (42, 40, 4)
    assert main["Rate"] == 0.1
    assert any("4 of 40 settled jobs came back. Rate 10.0%" in w for w in read_first(figures(jobs)))


def test_a_chart_that_shows_nothing_says_what_is_missing_and_when_it_is_there() -> None:
    nobody = rate_sheet(figures([]))
    assert (nobody.charts, len(nobody.sentences)) == ((), 1)
    assert nobody.sentences[0].startswith("The weeks are not drawn yet: in none of them a counted")
    assert "once the week is over" in nobody.sentences[0]
    quiet = rate_sheet(figures([done(f"J-{n}", 30) for n in range(3)]))
    assert quiet.charts[0].table == "Weeks"
    assert quiet.sentences[0].startswith("The line of the weeks lies on nought")
    assert len(quiet.sentences) == 1
    jobs, returns = steady()
    assert rate_sheet(figures(jobs, returns)).sentences == ()


def test_a_curve_of_one_point_is_not_drawn_and_says_from_when_it_is() -> None:
    # A point each 5 days up to the 90 of the promise: to the fifth day nobody has come yet.
    young = rate_sheet(figures([done(f"J-{n}", 4, state="open") for n in range(3)]))
    assert [chart.table for chart in young.charts] == ["Weeks"]
    assert any(words.startswith("A curve of returns that has one") for words in young.sentences)
    for name in ("CurveOfReturns", "ReturnsPerJob"):
        assert young.table(name).notes[-1] == (
            "Not drawn yet: no counted job was still watched 5 days after it left. It is, once one "
            "is."
        )
    older = rate_sheet(figures([done(f"J-{n}", 5, state="open") for n in range(3)]))
    assert {"CurveOfReturns", "ReturnsPerJob"} <= {chart.table for chart in older.charts}
    assert not any("Not drawn yet" in note for table in older.tables for note in table.notes)


def test_a_curve_by_miles_of_one_point_says_how_many_must_go_how_far() -> None:
    seen = done("", 20).left_on
    near = [done(f"J-{n}", 80, miles_known=40.0, known_on=seen) for n in range(12)]
    sheet = rate_sheet(figures(near))
    assert "CurveByMiles" not in {chart.table for chart in sheet.charts}
    assert sheet.table("CurveByMiles").notes[-1] == (
        "Not drawn yet: fewer than 10 jobs were watched over 500 miles. It is, once so many are."
    )


def test_a_steady_year_shows_nothing() -> None:
    found = figures(*steady())
    assert weeks_charted(found).noticed() == ()
    table = rate_sheet(found).table("Noticed")
    assert table.rows == ()
    assert table.nothing == "No week stands out, and no slow rise is seen."
    assert table.nothing in read_first(found)


def test_a_slow_rise_is_said_with_its_week_and_opens_to_its_jobs() -> None:
    found = figures(*steady(rise_from=8))
    table = rate_sheet(found).table("Noticed")
    row = cells(table, len(table.rows) - 1)
    assert row["From week"] == str(WEEK.moved(-7))
    assert row["To week"] == str(WEEK)
    assert row["Comebacks"] == len(table.behind[-1]) == 32
    assert "twice as many comebacks as before" in str(row["What it shows"])
    assert row["What it shows"] in read_first(found)


def test_a_single_bad_week_is_said_with_what_luck_gives() -> None:
    jobs, returns = steady()
    worst = [job for job in jobs if job.days_gone == 70]
    bad = [came(job, f"B-{n}", 3) for n, job in enumerate(worst)]
    found = figures(jobs, [*returns, *bad])
    [first, *_] = weeks_charted(found).noticed()
    assert first.first == first.last == WEEK.moved(-9)
    assert "more than luck makes of these weeks' average (0 to" in first.words
    assert set(first.jobs) >= {f"B-{n}" for n in range(20)}


def test_a_rise_that_is_over_is_said_as_over_with_the_weeks_that_it_lasted() -> None:
    found = figures(*steady(rise_from=24, rise_to=21))
    [rise] = [one for one in weeks_charted(found).noticed() if one.first != one.last]
    assert (rise.first, rise.last) == (WEEK.moved(-23), WEEK.moved(-21))
    assert rise.comebacks == len(rise.jobs) == 12
    assert rise.words == (
        f"In weeks {rise.first} to {rise.last} comebacks looked twice as many as before; the weeks "
        "since then do not carry it on."
    )


def test_a_week_with_fewer_than_luck_makes_is_said_too() -> None:
    jobs = [done(f"J-{n}", 7 * (n // 20)) for n in range(26 * 20)]
    quiet = WEEK.moved(-5)
    back = [came(job, f"K-{job.number}", 0) for n, job in enumerate(jobs) if n % 20 < 12]
    found = figures(jobs, [one for one in back if week_of(one.row.came_on) != quiet])
    [one] = [one for one in weeks_charted(found).noticed() if one.first == quiet]
    assert (one.comebacks, one.jobs) == (0, ())
    assert one.words.startswith(f"Week {quiet}: 0 comebacks of ")
    assert "is fewer than luck makes of these weeks' average" in one.words
    assert one.words in read_first(found)


def test_the_weeks_are_charted_once_for_a_book() -> None:
    found = figures(*steady())
    assert weeks_charted(found) is weeks_charted(found)
    assert weeks_charted(figures(*steady())) is not weeks_charted(found)


@pytest.mark.parametrize("days", [0, 10_000])
def test_a_window_without_an_end_leaves_no_weeks_to_compare_with(days: int) -> None:
    jobs, returns = steady()
    shop = replace(SHOP, window_days=days)
    charted = weeks_charted(
        figures(
            [j._replace(window_days=days, counts_from=days or NO_LAST_DAY) for j in jobs],
            returns,
            shop,
        )
    )
    assert charted.before == ()
    assert charted.watched[-1] == 52 * 20


def by_miles(jobs: list[JobDone], returns: list[ReturnDone] | None = None) -> Table:
    """The curve by miles."""
    return rate_sheet(figures(jobs, returns or ())).table("CurveByMiles")


def test_the_curve_by_miles_counts_quiet_cars_as_far_as_they_went() -> None:
    seen = done("", 111).left_on  # on the 89th day
    jobs = [done(f"J-{n}", 200, miles_known=3500.0 + n, known_on=seen) for n in range(19)]
    jobs.append(done("J-99", 200, back_after=40, back_miles=1200.0))
    table = by_miles(jobs)
    at = {row[0]: (row[1], row[2]) for row in table.rows}
    assert at[1000] == (20, 0.0)
    assert at[1500] == (19, pytest.approx(0.05))
    assert at[3000] == (19, pytest.approx(0.05))
    assert table.behind[-1] == ("J-99",)
    assert not any("left out" in note.lower() for note in table.notes)


def test_cars_never_read_again_are_taken_at_the_middle_of_the_others_and_said() -> None:
    # Left out, they would leave nearly nothing but the comebacks: here 4 of 14 instead of 4 of 100.
    read = [
        done(f"J-{n}", 80, known_on=done("", 20).left_on, miles_known=1800.0) for n in range(10)
    ]
    back = [done(f"B-{n}", 80, back_after=30, back_miles=900.0) for n in range(4)]
    unread = [done(f"U-{n}", 80) for n in range(86)]
    table = by_miles([*read, *back, *unread])
    assert table.rows[-1][2] == pytest.approx(0.04)
    said = " ".join(table.notes)
    assert "86 jobs of 100 were never read again and were taken to be driven as the others" in said


def test_one_car_never_read_again_is_said_as_one() -> None:
    seen = done("", 20).left_on
    read = [done(f"J-{n}", 80, known_on=seen, miles_known=1800.0) for n in range(12)]
    assert not any("never read again" in note for note in by_miles(read).notes)
    [said] = [note for note in by_miles([*read, done("U-1", 80)]).notes if "never read" in note]
    # 1,800 miles in 60 days.
    assert said.startswith("1 job of 13 was never read again and was taken to be driven as")
    assert "900 miles a month in the middle" in said


def test_cars_never_read_again_are_driven_as_differently_as_the_others() -> None:
    # All at the middle, none would reach the last miles, where a single comeback would weigh much.
    seen = done("", 20).left_on
    read = [done(f"J-{n}", 80, known_on=seen, miles_known=300.0 * n) for n in range(11)]
    watched = {
        row[0]: row[1] for row in by_miles([*read, *(done(f"U-{n}", 90) for n in range(100))]).rows
    }
    assert 40 <= watched[1500] - 5 <= 70
    assert watched[2500] >= 10


def test_a_reading_after_the_windows_end_counts_to_its_end_alone() -> None:
    # Seen after 180 days with 1,800 miles: at the 90th, the window's last day, it had 900.
    jobs = [
        done(f"J-{n}", 200, miles_known=1800.0, known_on=done("", 20).left_on) for n in range(12)
    ]
    watched = {row[0]: row[1] for row in by_miles(jobs).rows}
    assert max(watched) <= 900


def test_what_ends_the_curve_by_days_ends_the_one_by_miles() -> None:
    seen = done("", 110).left_on  # on the 90th day, after 3,100 miles
    read = {"miles_known": 3100.0, "known_on": seen}
    jobs = [done(f"J-{n}", 200, **read) for n in range(20)]
    jobs += [done(f"L-{n}", 200, **read, lost_after=3, state="lost sight") for n in range(20)]
    jobs += [done(f"N-{n}", 200, **read, aside_after=3) for n in range(20)]
    jobs += [done(f"U-{n}", 200, **read, unsure_after=3) for n in range(20)]
    jobs += [done(f"B-{n}", 200, back_after=80, back_miles=2600.0) for n in range(4)]
    sheet = rate_sheet(figures(jobs))
    days, miles = sheet.table("CurveOfReturns").rows[-1], sheet.table("CurveByMiles").rows[-1]
    assert miles[2] == days[2] == pytest.approx(4 / 24)
    at = {row[0]: row[1] for row in sheet.table("CurveByMiles").rows}
    assert (at[0], at[500]) == (84, 24)


def test_a_visit_that_ends_the_watch_ends_it_at_its_own_miles() -> None:
    seen = done("", 20).left_on
    quiet = [done(f"J-{n}", 80, known_on=seen, miles_known=1800.0) for n in range(12)]
    waits = done("W-1", 80, waits_after=20, state="maybe", known_on=seen, miles_known=1800.0)
    met = came(waits, "K-1", 20, 750.0, judgement=None)
    at = {row[0]: row[1] for row in by_miles([*quiet, waits], [met]).rows}
    assert (at[500], at[1000]) == (13, 12)


def test_with_hardly_a_car_read_again_there_is_no_curve_by_miles() -> None:
    table = by_miles([done("J-1", miles_known=1000.0), done("J-2")])
    assert table.rows == ()
    assert "Too few cars were read again" in table.nothing
    sheet = rate_sheet(figures([done("J-1"), done("J-2")]))
    assert "CurveByMiles" not in {chart.table for chart in sheet.charts}


def test_a_comeback_whose_odometer_cannot_say_is_left_out_and_said() -> None:
    seen = done("", 111).left_on
    jobs = [done(f"J-{n}", 200, miles_known=3000.0, known_on=seen) for n in range(12)]
    jobs.append(done("J-99", 200, back_after=40))
    assert "Left out: 1 job, 1 comeback among them" in by_miles(jobs).notes[-1]


def test_a_car_out_of_sight_is_no_quiet_success() -> None:
    jobs = [done(f"J-{n}", 200, state="lost sight", lost_after=60) for n in range(30)]
    table = rate_sheet(figures(jobs)).table("RateByMonth")
    year = {row[1]: cells(table, n) for n, row in enumerate(table.rows) if row[0] == YEAR}
    # Sold on the 60th day: the first 30 were watched to their end, the 90 were not.
    assert (year["early"]["Settled"], year[OWN]["Settled"]) == (30, 0)


def test_each_return_of_a_job_counts_in_returns_per_job() -> None:
    jobs = [done(f"J-{n}", 200, back_after=10 if n == 0 else None) for n in range(50)]
    returns = [came(jobs[0], "K-1", 10), came(jobs[0], "K-2", 50)]
    sheet = rate_sheet(figures(jobs, returns))
    assert sheet.table("CurveOfReturns").rows[-1][2] == pytest.approx(0.02)
    last = sheet.table("ReturnsPerJob")
    assert last.rows[-1][2] == pytest.approx(4.0)
    assert last.behind[-1] == ("K-1", "K-2")


def test_the_later_returns_of_a_chain_count_for_its_first_job_too() -> None:
    first = done("J-1", 200, back_after=10)
    second = done("K-1", 189, back_after=20)
    jobs = [first, second, *(done(f"Q-{n}", 200) for n in range(48))]
    again = came(second, "K-2", 20)
    chained = replace(again.row, candidate=replace(again.row.candidate, root="J-1"))
    table = rate_sheet(figures(jobs, [came(first, "K-1", 10), replace(again, row=chained)]))
    rows = table.table("ReturnsPerJob").rows
    # K-2 came on the 31st day after J-1 left: three returns of 50 jobs, of which two are J-1's.
    assert [row[2] for row in rows if row[0] in (25, 30, 35)] == pytest.approx([4.0, 4.0, 6.0])


def test_before_the_first_return_the_curves_claim_no_certainty() -> None:
    sheet = rate_sheet(figures([done(f"J-{n}", 200) for n in range(3)]))
    for row in sheet.table("CurveOfReturns").rows:
        # 0 of 3: the exact upper bound is 1 - 0.025 ** (1 / 3).
        assert row[2:] == pytest.approx((0.0, 0.0, 1 - 0.025 ** (1 / 3)))
    for row in sheet.table("ReturnsPerJob").rows:
        # None seen: a Poisson count of up to 3.689 (Garwood 1936), in three jobs.
        assert row[2:] == pytest.approx((0.0, 0.0, 122.96), abs=0.01)


def test_every_point_and_row_opens_to_its_jobs() -> None:
    sheet = rate_sheet(figures(*steady(rise_from=8)))
    for table in sheet.tables:
        assert len(table.behind) == len(table.rows), table.name
