"""Sheet 8: symptom by symptom: fixed at once, came back, not caught, and what fixed it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import replace
from statistics import fmean

from desktop_app.language import tr
from desktop_app.repair_jobs.systems import system_name
from desktop_app.returns_watched.honest_numbers.group_names import as_first_written
from desktop_app.returns_watched.honest_numbers.group_rates import GroupRate
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import NOT_CAUGHT
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheet_names import SYMPTOMS
from desktop_app.weekly_report.sheets.first_fixed import first_fixed_table
from desktop_app.weekly_report.sheets.group_table import Groups, group_table
from desktop_app.weekly_report.sheets.searched import search_table
from desktop_app.weekly_report.sheets.sheet_words import about, columns, year_words
from desktop_app.weekly_report.year_behind import JobDone

_MOST_FIXES, _LONGEST = 3, 60


def symptoms_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates by system and symptom, what fixed it, how often at once, how long sought."""
    symptoms = _by_symptom(figures)
    line = about(figures, len(symptoms.rows), year_words(figures))
    tables = (_by_system(figures), symptoms, first_fixed_table(figures), search_table(figures))
    return Sheet(SYMPTOMS, line, tables=tables)


def _by_system(figures: WeekFigures) -> Table:
    return group_table(
        "Systems",
        columns((tr("System"), "words")),
        Groups(figures.year, "system", lambda job: (system_name(job.system),)),
        lambda group: (group.name,),
        title=tr("By system that was worked on"),
    )


def _by_symptom(figures: WeekFigures) -> Table:
    groups = Groups(figures.year, "symptom", lambda job: job.symptoms)
    shown = {group.name.casefold(): group.name for group in groups.rates}
    everyone: dict[str, list[JobDone]] = {}
    said = dict.fromkeys(job.symptoms for job in figures.year.jobs)
    tidy = {symptoms: as_first_written(symptoms, shown) for symptoms in said}
    for job in figures.year.jobs:
        for name in tidy[job.symptoms]:
            everyone.setdefault(name, []).append(job)
    # A symptom of which no job is counted has its row too: what was not caught is seen there.
    groups.rates += tuple(
        GroupRate(name, *(0,) * 8) for name in sorted(everyone) if not groups.jobs(name)
    )
    not_caught = [_not_caught(everyone.get(group.name, ())) for group in groups.rates]

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        own = everyone.get(group.name, [])
        hours = [job.hours for job in own if job.hours is not None]
        return (
            group.name,
            len(_not_caught(own)),
            round(fmean(hours), 2) if hours else None,
            _fixes([job for job in groups.jobs(group.name) if job.settled]),
        )

    table = group_table(
        "Symptoms",
        columns(
            (tr("Symptom"), "words"),
            (NOT_CAUGHT, "count"),
            (tr("Hours on the average"), "hours"),
            (tr("What fixed it"), "long words"),
        ),
        groups,
        cells,
        title=tr("By symptom"),
        shared=True,
        again=True,
        said=(
            tr(
                "What fixed it: the corrections of settled jobs that did not come back. "
                "Not caught and the hours are of all jobs with the symptom."
            ),
        )
        if groups.rates
        else (),
    )
    return replace(table, behind_of={**table.behind_of, NOT_CAUGHT: not_caught.__getitem__})


def _not_caught(jobs: Iterable[JobDone]) -> tuple[str, ...]:
    return tuple(job.number for job in jobs if job.not_caught)


def _fixes(jobs: Sequence[JobDone]) -> str:
    """Return the corrections that held, the commonest first, with their counts."""
    words: dict[str, str] = {}
    held: Counter[str] = Counter()
    # The very same text stands in many jobs.
    for text, many in Counter(job.correction for job in jobs if not job.came_back).items():
        said = " ".join(text.split())
        held[said.casefold()] += many
        words.setdefault(said.casefold(), said)
    commonest = sorted(held.items(), key=lambda item: (-item[1], item[0]))[:_MOST_FIXES]
    return "; ".join(f"{count} × {words[key][:_LONGEST]}" for key, count in commonest)
