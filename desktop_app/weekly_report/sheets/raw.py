"""Sheet 15: the rows behind everything, flat and without names, for whoever distrusts the rest."""

from __future__ import annotations

from desktop_app.weekly_report.figures import WeekFigures, count_later_jobs
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    amount,
    columns,
    distance,
    joined,
    unit_words,
    weeks_ago,
    year_words,
)
from desktop_app.weekly_report.year_behind import JobDone, ReturnDone

_PAGES_ACROSS = 2  # to be looked up in, not to be read; small print would be worse


def raw_sheet(figures: WeekFigures) -> Sheet:
    """Return the year's returns, then its jobs, one row each, with ids in place of words."""
    returns, jobs = _returns(figures), _jobs(figures)
    line = about(
        figures, len(jobs.rows), f"{year_words(figures)}, prints {_PAGES_ACROSS} pages wide"
    )
    return Sheet("Raw", line, tables=(returns, jobs), pages_across=_PAGES_ACROSS)


def _returns(figures: WeekFigures) -> Table:
    met = figures.year.returns
    counts = count_later_jobs([one.row for one in met], figures.year.left_out)
    return Table(
        "Returns",
        columns(
            ("Earlier job", "words"),
            ("Came on", "day"),
            ("Later job", "words"),
            ("In window", "count"),
            ("Counts", "count"),
            ("Waits", "count"),
            ("Weeks ago", "count"),
            ("Days", "count"),
            (unit_words(figures).capitalize(), "count"),
            ("Cost", "money"),
            ("First job", "words"),
            ("Judgement", "words"),
            ("Cause", "words"),
        ),
        tuple(_return(figures, one, what) for one, what in zip(met, counts, strict=True)),
        title="Returns of the year",
        notes=(
            "1 is yes, 0 is no. One visit counts once, however many earlier jobs it meets. Cost "
            "stands with the pair that it was written for.",
        )
        if met
        else (),
        nothing="No car came back in this year.",
    )


def _return(figures: WeekFigures, one: ReturnDone, counts_as: str) -> tuple[Cell, ...]:
    row, miles = one.row, one.row.candidate.distance_miles
    comeback = counts_as == "comeback"
    return (
        row.earlier,
        row.came_on,
        row.later,
        int(row.in_window),
        int(comeback),
        int(counts_as == "waiting"),
        weeks_ago(figures, row.came_on),
        row.candidate.days,
        None if miles is None else distance(figures, miles),
        None if one.cost is None else amount(one.cost.total_cents),
        row.candidate.root,
        "" if row.judgement is None else row.judgement.value,
        row.cause_words or ("not said" if comeback else ""),
    )


def _jobs(figures: WeekFigures) -> Table:
    unit = unit_words(figures)
    return Table(
        "Raw",
        columns(
            ("Job", "words"),
            ("Left on", "day"),
            ("Month", "words"),
            ("Counted", "count"),
            ("Settled", "count"),
            ("Came back", "count"),
            ("Waiting", "count"),
            ("Days to the return", "count"),
            ("Days to the waiting visit", "count"),
            ("Days since", "count"),
            ("Window days", "count"),
            (f"Window {unit}", "count"),
            ("State", "words"),
            ("System", "words"),
            ("Part kinds", "words"),
            ("Symptoms", "words"),
            ("Proof", "count"),
            ("Now and then", "count"),
            ("Hours", "hours"),
            ("Unbilled hours", "hours"),
            ("Price", "money"),
            (f"{unit.capitalize()} known", "count"),
            (f"{unit.capitalize()} to the return", "count"),
        ),
        tuple(_row(figures, job) for job in figures.year.jobs),
        title="Jobs handed over in the year",
        nothing="No job was handed over in this year.",
    )


def _row(figures: WeekFigures, job: JobDone) -> tuple[Cell, ...]:
    return (
        job.number,
        job.left_on,
        job.left_on.isoformat()[:7],
        int(job.counted),
        int(job.counted and job.settled),
        int(job.counted and job.came_back),
        int(job.counted and job.state == "maybe"),
        job.back_after,
        job.waits_after,
        job.days_gone,
        job.window_days,
        distance(figures, job.window_miles),
        job.state,
        job.system,
        joined(job.part_kinds),
        joined(job.symptoms),
        job.proof_level,
        int(job.now_and_then),
        job.hours,
        job.unbilled_hours,
        amount(job.price_cents),
        None if job.miles_known is None else distance(figures, job.miles_known),
        None if job.back_miles is None else distance(figures, job.back_miles),
    )
