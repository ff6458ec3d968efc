"""Sheet 8: symptom by symptom: fixed at once, came back, not caught, and what fixed it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from statistics import fmean

from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, GroupRate
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet
from desktop_app.weekly_report.sheets.group_table import group_table, groups_of
from desktop_app.weekly_report.sheets.sheet_words import about, columns, year_words
from desktop_app.weekly_report.year_behind import JobDone

_MOST_FIXES, _LONGEST = 3, 60


def symptoms_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates by symptom group, with what finally fixed it."""
    jobs = figures.year.counted
    of: dict[str, list[JobDone]] = {}
    for job in figures.year.jobs:
        for name in job.symptoms or (NOT_SAID,):
            of.setdefault(name, []).append(job)

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        own = of.get(group.name, [])
        settled = [job for job in own if job.counted and job.settled]
        hours = [job.hours for job in own if job.hours is not None]
        return (
            group.name,
            sum(not job.came_back for job in settled),
            sum(job.cause_found is False for job in own),
            round(fmean(hours), 2) if hours else None,
            _fixes(settled),
        )

    table = group_table(
        "Symptoms",
        columns(
            ("Symptom", "words"),
            ("Fixed the first time", "count"),
            ("Not caught", "count"),
            ("Hours on the average", "hours"),
            ("What fixed it", "long words"),
        ),
        groups_of(jobs, "symptom", lambda job: job.symptoms),
        cells,
        lambda name: (job for job in of.get(name, ()) if job.counted),
    )
    return Sheet("Symptoms", about(figures, len(table.rows), year_words(figures)), tables=(table,))


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
