"""Sheet 8: symptom by symptom: fixed at once, came back, not caught, and what fixed it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from statistics import fmean

from desktop_app.repair_jobs.systems import system_name
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, GroupRate
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.group_table import Groups, group_table
from desktop_app.weekly_report.sheets.sheet_words import about, columns, year_words
from desktop_app.weekly_report.year_behind import JobDone

_MOST_FIXES, _LONGEST = 3, 60


def symptoms_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates by symptom group, with what finally fixed it, and by system."""
    symptoms = _by_symptom(figures)
    line = about(figures, len(symptoms.rows), year_words(figures))
    return Sheet("Symptoms", line, tables=(_by_system(figures), symptoms))


def _by_system(figures: WeekFigures) -> Table:
    return group_table(
        "Systems",
        columns(("System", "words")),
        Groups(figures.year, "system", lambda job: (system_name(job.system),)),
        lambda group: (group.name,),
        title="By system that was worked on",
    )


def _by_symptom(figures: WeekFigures) -> Table:
    groups = Groups(figures.year, "symptom", lambda job: job.symptoms)
    everyone: dict[str, list[JobDone]] = {}
    for job in figures.year.jobs:
        for name in job.symptoms or (NOT_SAID,):
            everyone.setdefault(name, []).append(job)

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        own = everyone.get(group.name, [])
        hours = [job.hours for job in own if job.hours is not None]
        return (
            group.name,
            sum(job.cause_found is False for job in own),
            round(fmean(hours), 2) if hours else None,
            _fixes([job for job in groups.jobs(group.name) if job.settled]),
        )

    return group_table(
        "Symptoms",
        columns(
            ("Symptom", "words"),
            ("Not caught", "count"),
            ("Hours on the average", "hours"),
            ("What fixed it", "long words"),
        ),
        groups,
        cells,
        title="By symptom",
        shared=True,
        again=True,
        said=(
            "What fixed it: the corrections of settled jobs that did not come back. Not caught and "
            "the hours are of all jobs with the symptom.",
        )
        if groups.rates
        else (),
    )


def _fixes(jobs: Sequence[JobDone]) -> str:
    """Return the corrections that held, the commonest first, with their counts."""
    words: dict[str, str] = {}
    held: Counter[str] = Counter()
    for job in jobs:
        said = " ".join(job.correction.split())
        if said and not job.came_back:
            held[said.casefold()] += 1
            words.setdefault(said.casefold(), said)
    commonest = sorted(held.items(), key=lambda item: (-item[1], item[0]))[:_MOST_FIXES]
    return "; ".join(f"{count} × {words[key][:_LONGEST]}" for key, count in commonest)
