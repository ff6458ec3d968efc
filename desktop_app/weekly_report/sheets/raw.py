"""Sheet 15: the rows behind everything, flat and without names, for whoever distrusts the rest."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from functools import lru_cache
from operator import attrgetter

from desktop_app.language import tr
from desktop_app.repair_jobs.who_did_what import work_words
from desktop_app.symptom_search.filters import vehicle_class
from desktop_app.weekly_report.figures import WeekFigures, count_later_jobs
from desktop_app.weekly_report.headers import (
    BACK,
    CAME_ON,
    CAUSE,
    COST,
    COUNTED,
    COUNTS,
    DAYS,
    EARLIER_JOB,
    FIRST_JOB,
    HOURS,
    JOB,
    JUDGEMENT,
    KEPT_OUT,
    LATER_JOB,
    PRICE,
    PROOF_REACHED,
    SETTLED,
    STATE,
    UNBILLED_HOURS,
    WAITING,
    WEEKS_AGO,
)
from desktop_app.weekly_report.sheet_form import Cell, Column, Sheet, Table
from desktop_app.weekly_report.sheet_names import RAW
from desktop_app.weekly_report.sheets.kept_out import why_kept_out
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    amount,
    behind_told,
    columns,
    distance,
    joined,
    unit_words,
    weeks_ago,
    year_words,
)
from desktop_app.weekly_report.year_behind import STATES, JobDone, ReturnDone
from desktop_app.weekly_report.year_columns import year_columns, year_numbers

_PAGES_ACROSS = 2  # to be looked up in, not to be read; small print would be worse


def raw_sheet(figures: WeekFigures) -> Sheet:
    """Return the year's returns, then its jobs, one row each, with ids in place of words."""
    returns, jobs = _returns(figures), _jobs(figures)
    line = about(
        figures,
        len(jobs.rows),
        tr(
            "{period}, prints {pages_across} pages wide",
            period=year_words(figures),
            pages_across=_PAGES_ACROSS,
        ),
    )
    return Sheet(RAW, line, tables=(returns, jobs), pages_across=_PAGES_ACROSS)


def _returns(figures: WeekFigures) -> Table:
    met = figures.year.returns
    counts = count_later_jobs([one.row for one in met], figures.year.left_out)
    return Table(
        "Returns",
        columns(
            (EARLIER_JOB, "words"),
            (CAME_ON, "day"),
            (LATER_JOB, "words"),
            (tr("In window"), "count"),
            (COUNTS, "count"),
            (tr("Waits"), "count"),
            (WEEKS_AGO, "count"),
            (DAYS, "count"),
            (unit_words(figures).capitalize(), "count"),
            (COST, "money"),
            (FIRST_JOB, "words"),
            (JUDGEMENT, "words"),
            (CAUSE, "words"),
        ),
        tuple(_return(figures, one, what) for one, what in zip(met, counts, strict=True)),
        title=tr("Returns of the year"),
        notes=(
            tr(
                "1 is yes, 0 is no. One visit counts once, however many earlier jobs it "
                "meets. Cost stands with the pair that it was written for."
            ),
        )
        if met
        else (),
        nothing=tr("No car came back in this year."),
        behind=tuple(behind_told(one.row) for one in met),
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
        "" if row.judgement is None else tr(row.judgement.value),
        row.cause_words or (tr("not said") if comeback else ""),
    )


def raw_counts(figures: WeekFigures) -> Table:
    """Return the jobs of the raw rows that are counted, with the columns that are added up.

    Of the others every one of these columns says 0.
    """
    found = year_columns(figures.year)
    marks = (found.settled, found.came_back, found.waiting)
    numbers = year_numbers(figures.year).tolist()
    counts = (column.astype(int).tolist() for column in marks)
    return Table(
        "Raw",
        columns(
            (JOB, "words"),
            *((name, "count") for name in (COUNTED, SETTLED, BACK, WAITING)),
        ),
        tuple(zip(numbers, [1] * len(numbers), *counts, strict=True)),
    )


def _jobs(figures: WeekFigures) -> Table:
    named = _columns(figures)
    made = (map(cell, figures.year.jobs) for _, cell in named)
    return Table(
        "Raw",
        tuple(column for column, _ in named),
        tuple(zip(*made, strict=True)),
        title=tr("Jobs handed over in the year"),
        nothing=tr("No job was handed over in this year."),
    )


def _columns(figures: WeekFigures) -> list[tuple[Column, Callable[[JobDone], Cell]]]:
    """Return the columns of the jobs, each with what stands in it."""
    unit = unit_words(figures)
    states = {state: tr(state) for state in STATES}

    def far(miles: float | None) -> Cell:
        return None if miles is None else distance(figures, miles)

    return [
        (Column(JOB, "words"), attrgetter("number")),
        (Column(tr("Left on"), "day"), attrgetter("left_on")),
        (Column(tr("Month"), "words"), lambda job: _month(job.left_on)),
        (Column(COUNTED, "count"), lambda job: int(job.counted)),
        (Column(KEPT_OUT, "words"), lambda job: why_kept_out(job, figures.year.hands_on)),
        (Column(tr("Kind of work"), "words"), lambda job: work_words(job.work)),
        (Column(tr("Class"), "words"), lambda job: _class(job.vehicle)),
        (Column(SETTLED, "count"), lambda job: int(job.counted and job.settled)),
        (Column(BACK, "count"), lambda job: int(job.counted and job.came_back)),
        (Column(WAITING, "count"), lambda job: int(job.counted and job.state == "maybe")),
        (Column(tr("Days to the return"), "count"), attrgetter("back_after")),
        (Column(tr("Days to the waiting visit"), "count"), attrgetter("waits_after")),
        (Column(tr("Days since"), "count"), attrgetter("days_gone")),
        (Column(tr("Window days"), "count"), attrgetter("window_days")),
        (Column(tr("Window {unit}", unit=unit), "count"), lambda job: far(job.window_miles)),
        (Column(STATE, "words"), lambda job: states[job.state]),
        (Column(tr("System"), "words"), attrgetter("system")),
        (Column(tr("Part kinds"), "words"), lambda job: _joined(job.part_kinds)),
        (Column(tr("Symptoms"), "words"), lambda job: _joined(job.symptoms)),
        (Column(PROOF_REACHED, "count"), attrgetter("proof_level")),
        (Column(tr("Intermittent"), "count"), lambda job: int(job.now_and_then)),
        (Column(HOURS, "hours"), attrgetter("hours")),
        (Column(tr("Search hours"), "hours"), attrgetter("search_hours")),
        (Column(UNBILLED_HOURS, "hours"), attrgetter("unbilled_hours")),
        (Column(PRICE, "money"), lambda job: amount(job.price_cents)),
        (
            Column(tr("{unit} known", unit=unit.capitalize()), "count"),
            lambda job: far(job.miles_known),
        ),
        (
            Column(tr("{unit} to the return", unit=unit.capitalize()), "count"),
            lambda job: far(job.back_miles),
        ),
    ]


# Most days, and most words that stand together, do so in many jobs.
@lru_cache(maxsize=512)
def _month(day: date) -> str:
    return day.isoformat()[:7]


@lru_cache(maxsize=4096)
def _class(description: str) -> str:
    return vehicle_class(description)


@lru_cache(maxsize=4096)
def _joined(words: tuple[str, ...]) -> str:
    return joined(words)
