"""Of the first tries at a symptom, how many were right: fixed at once, and not back since."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.group_names import as_first_written
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    TOO_FEW,
    anything_from,
    can_be_told,
)
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import BACK_THEN, FIRST_TRIES, HIGH, LOW, NOT_CAUGHT_THEN
from desktop_app.weekly_report.sheet_form import Cell, Column, Table
from desktop_app.weekly_report.sheets.sheet_words import columns
from desktop_app.weekly_report.year_behind import JobDone, YearBehind

_FIXED = (
    f'=IF(OR([@{FIRST_TRIES}]<{FEW_JOBS},[@{HIGH}]=""),"",'
    f"([@{FIRST_TRIES}]-[@{NOT_CAUGHT_THEN}]-[@{BACK_THEN}])/[@{FIRST_TRIES}])"
)


def first_fixed_table(figures: WeekFigures) -> Table:
    """Return one row for each symptom with a first try whose window is over, the most at the top.

    A job that is itself a comeback of an earlier one is no first try. One in which nothing was
    found enters when its window is over, together with those that were put right.
    """
    tries: dict[str, list[JobDone]] = {}
    first = list(first_tries(figures.year))
    shown: dict[str, str] = {}
    # Many jobs have the same symptoms together: those are made tidy once.
    said = dict.fromkeys(job.symptoms for job in first)
    tidy = {symptoms: as_first_written(symptoms, shown) for symptoms in said}
    for job in first:
        for name in tidy[job.symptoms]:
            tries.setdefault(name, []).append(job)
    order = sorted(tries, key=lambda name: (-len(tries[name]), name))
    return Table(
        "FirstFixed",
        columns(
            (tr("Symptom"), "words"),
            (FIRST_TRIES, "count"),
            (NOT_CAUGHT_THEN, "count"),
            (BACK_THEN, "count"),
            Column(tr("First-time fixed"), "share", _FIXED),
            (LOW, "share"),
            (HIGH, "share"),
            (tr("Note"), "words"),
        ),
        tuple((name, *_cells(tries[name])) for name in order),
        title=tr("Fixed the first time"),
        notes=(
            tr(
                "First tries: jobs whose window is over, put right and settled or not "
                "caught, that are no comeback of an earlier job. Fixed: put right, and not "
                "back in the window. A job counts in every row whose symptom it has. Low "
                "to High: where the true share lies 19 times of 20."
            ),
        )
        if order
        else (),
        nothing=tr("No window of this year's jobs is over yet."),
        behind=tuple(tuple(job.number for job in tries[name]) for name in order),
    )


def first_tries(year: YearBehind) -> Iterator[JobDone]:
    """Yield the jobs of which it is known whether the first try was right, in their order."""
    again = {one.row.later for one in year.returns if one.row.is_comeback} | year.came_again
    for job in year.jobs:
        if job.days_gone <= job.counts_from:
            continue
        known = job.settled if job.counted else job.not_caught
        if known and job.number not in again:
            yield job


def _cells(jobs: Sequence[JobDone]) -> tuple[Cell, ...]:
    said = Counter("back" if job.counted and job.came_back else job.counted for job in jobs)
    not_caught, back = said[False], said["back"]
    fixed = len(jobs) - not_caught - back
    low, high = wilson(fixed, len(jobs))
    counts = (len(jobs), not_caught, back)
    if not can_be_told(len(jobs), low, high):
        return (*counts, None, None, None, f"{TOO_FEW}: {anything_from(low, high)}")
    return (*counts, fixed / len(jobs), low, high, "")
