"""What stands beside the rates: first tries, what is kept out, one axis for days and miles."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import numpy as np
import pandas as pd
import pytest

from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.sheet_form import Table
from desktop_app.weekly_report.year_behind import JobDone
from tests.weekly_report.year_made import LAST, came, done, figures

NOTHING = {"counted": False, "cause_found": False, "correction": ""}


def rows_of(table: Table) -> list[dict[str, Any]]:
    headers = [column.header for column in table.columns]
    return [dict(zip(headers, row, strict=True)) for row in table.rows]


@pytest.fixture(scope="module")
def year() -> WeekFigures:
    """Some hundred jobs of all sorts; a tenth of the later ones are comebacks themselves."""
    chance = np.random.default_rng(11)
    jobs: list[JobDone] = []
    for n in range(300):
        gone = int(chance.integers(1, 360))
        sort = chance.random()
        more: dict[str, Any] = {"symptoms": (("misfire", "stall", "no start")[n % 3],)}
        if sort < 0.1:
            more |= NOTHING
        elif sort < 0.15:
            more |= {"counted": False, "correction": ["", "changed oil"][n % 2]}
        elif sort < 0.18:
            more |= {"counted": False, "work": ["inspection", "maintenance"][n % 2]}
            more |= {"cause_found": None}
        elif sort < 0.3 and gone > 5:
            more["back_after"] = int(chance.integers(1, min(gone, 90)))
        elif sort < 0.35:
            more["state"] = "seen fine"
        jobs.append(done(f"J-{n}", gone, proof_level=int(chance.integers(0, 5)), **more))
    back = [job for job in jobs if job.back_after is not None]
    returns = [
        came(job, f"J-{(7 * n) % 300}" if n % 2 else f"K-{n}", job.back_after or 0)
        for n, job in enumerate(back)
    ]
    return figures(jobs, returns)


def test_first_tries_are_those_that_a_plain_count_finds(year: WeekFigures) -> None:
    again = {one.row.later for one in year.year.returns}
    frame = pd.DataFrame(
        {
            "symptom": job.symptoms[0],
            "not caught": job.cause_found is False,
            "back": job.came_back,
            "known": job.days_gone > 90 and (job.counted or job.cause_found is False),
            "again": job.number in again,
        }
        for job in year.year.jobs
    )
    assert len(again & {job.number for job in year.year.jobs}) > 5
    first = frame[frame["known"] & ~frame["again"]]
    wanted = first.groupby("symptom").agg(
        tries=("known", "size"), caught=("not caught", "sum"), back=("back", "sum")
    )
    rows = rows_of(week_sheet(year, "Symptoms").table("FirstFixed"))
    assert {row["Symptom"] for row in rows} == set(wanted.index)
    for row in rows:
        tries, not_caught, back = wanted.loc[row["Symptom"]]
        assert (row["First tries"], row["Not caught then"], row["Came back then"]) == (
            *(tries, not_caught, back),
        )
        low, high = wilson(int(tries - not_caught - back), int(tries))
        if high - low > 0.2:
            assert row["First-time fixed"] is None
            assert row["Note"] == f"too few jobs to tell: anything from {low:.0%} to {high:.0%}"
        else:
            assert row["First-time fixed"] == (tries - not_caught - back) / tries
            assert (row["Low"], row["High"]) == (low, high)


def test_few_first_tries_have_no_share() -> None:
    few = [done(f"J-{n}", symptoms=("misfire",)) for n in range(19)]
    [row] = rows_of(week_sheet(figures(few), "Symptoms").table("FirstFixed"))
    assert (row["First tries"], row["First-time fixed"], row["Low"]) == (19, None, None)


def test_a_job_not_caught_waits_for_its_days_as_its_neighbours_do() -> None:
    jobs = [done("J-1", 90, **NOTHING), done("J-2", 91, **NOTHING)]
    [row] = rows_of(week_sheet(figures(jobs), "Symptoms").table("FirstFixed"))
    assert (row["First tries"], row["Not caught then"]) == (1, 1)


def test_every_job_is_counted_or_stands_where_it_is_kept_out(year: WeekFigures) -> None:
    table = week_sheet(year, "Rate").table("KeptOut")
    kept_out = [job for job in year.year.jobs if not job.counted]
    assert sum(row["Jobs"] for row in rows_of(table)) == len(kept_out)
    assert {row["Why"]: row["Jobs"] for row in rows_of(table)} == {
        "not caught": sum(job.cause_found is False for job in kept_out),
        "nothing put right": sum(
            job.cause_found is not False and not job.correction for job in kept_out
        ),
        "no cause written": sum(job.correction == "changed oil" for job in kept_out),
        "inspection only": sum(job.work == "inspection" for job in kept_out),
        "maintenance": sum(job.work == "maintenance" for job in kept_out),
        "new trouble from our hands": 0,
    }
    assert sum(job.work is not None for job in kept_out) > 5
    assert sorted(sum(table.behind, ())) == sorted(job.number for job in kept_out)
    raw = pd.Series(week_sheet(year, "Raw").table("Raw").column("Kept out")).value_counts()
    assert raw[""] == len(year.year.counted)


def test_proof_by_time_is_what_was_seen_fine(year: WeekFigures) -> None:
    table = week_sheet(year, "Proof").table("ProofLevels")
    for place, row in enumerate(rows_of(table)):
        own = [job for job in year.year.counted if f"{job.proof_level} " in row["Proof"]]
        fine = [job.number for job in own if job.state == "seen fine"]
        assert row["5 time"] == len(fine)
        assert sorted(table.behind_of["5 time"](place)) == sorted(fine)
    assert sum(row["5 time"] for row in rows_of(table)) > 5


def shares(*jobs: JobDone, **returns: Any) -> list[dict[str, Any]]:
    met = [returns[job.number] for job in jobs if job.number in returns]
    return rows_of(week_sheet(figures(jobs, met), "Rate").table("CurveByShare"))


def test_whichever_of_days_and_miles_is_further_says_how_much_is_used() -> None:
    read = {"miles_known": 1800.0, "known_on": LAST}  # 60 % of 3,000 miles
    one, quick = done("A", 27, state="open", **read), done("B", 27, state="open")
    rows = shares(one, quick)
    watched = {round(row["Window used up"], 1): row["Still watched"] for row in rows}
    assert (watched[0.3], watched[0.4], watched[0.6]) == (2, 1, 1)
    assert 0.7 not in watched


def test_a_comeback_stands_at_the_share_of_its_visit() -> None:
    back = done("A", 200, back_after=9)
    rows = shares(back, *(done(f"J-{n}", 200) for n in range(3)), A=came(back, "K", 9, 1500.0))
    # year_made says that each visit used a tenth of its window.
    assert [row["Came back"] for row in rows] == [0.0, *[0.25] * 10]
    table = week_sheet(figures([back], [came(back, "K", 9)]), "Rate").table("CurveByShare")
    assert table.behind[1] == ("A",)


def test_without_news_a_job_counts_to_the_last_of_it_beside_the_curve() -> None:
    back = done("A", 200, back_after=60)
    known = {"well_until": LAST - timedelta(days=150)}  # well for 50 of its 90 days
    quiet = [done(f"J-{n}", 200, **known) for n in range(3)]
    back_at = came(back, "K", 60)
    rows = shares(back, *quiet, A=back_at)
    assert rows[-1]["Came back"] == rows[-1]["Curve while known well"] == 0.25
    silent = shares(back, *(one._replace(well_until=None) for one in quiet), A=back_at)
    assert silent[-1]["Curve while known well"] == 1.0


def test_a_window_that_time_cannot_end_is_left_out_and_said() -> None:
    both = done("A", 100, counts_from=1_000_000, state="open")
    table = week_sheet(figures([both, done("B", 100)]), "Rate").table("CurveByShare")
    assert any("Left out: 1 job" in note for note in table.notes)
    assert rows_of(table)[0]["Still watched"] == 1
