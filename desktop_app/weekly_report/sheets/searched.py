"""How long the cause of a symptom is searched for, of the jobs in which somebody wrote it."""

from __future__ import annotations

from statistics import fmean

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.group_names import as_first_written
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Table
from desktop_app.weekly_report.sheets.sheet_words import columns
from desktop_app.weekly_report.year_behind import JobDone


def search_table(figures: WeekFigures) -> Table:
    """Return one row for each symptom of the year once search hours are written for any job.

    The longest search stands at the top; a symptom for which nobody wrote them has no average.
    """
    shown: dict[str, str] = {}
    said = dict.fromkeys(job.symptoms for job in figures.year.jobs)
    tidy = {symptoms: as_first_written(symptoms, shown) for symptoms in said}
    written: dict[str, list[JobDone]] = {}
    for job in figures.year.jobs:
        for name in tidy[job.symptoms]:
            own = written.setdefault(name, [])
            if job.search_hours is not None:
                own.append(job)
    means = {name: _mean(own) for name, own in written.items()}
    order = (
        sorted(means, key=lambda name: (-(means[name] or 0), name)) if any(written.values()) else []
    )
    return Table(
        "Searched",
        columns(
            (tr("Symptom"), "words"),
            (tr("Search hours written"), "count"),
            (tr("Search hours on the average"), "hours"),
        ),
        tuple((name, len(written[name]), means[name]) for name in order),
        title=tr("Hours of searching, by symptom"),
        notes=(
            tr(
                "Of a job's hours, those that went into finding the cause, in the jobs in "
                "which somebody wrote them; Search hours written says how many these are. "
                "No average: nobody wrote them. The other jobs may have been quicker or "
                "slower."
            ),
        )
        if order
        else (),
        nothing=tr("Nobody has written search hours on a job of this year."),
        behind=tuple(tuple(job.number for job in written[name]) for name in order),
    )


def _mean(jobs: list[JobDone]) -> float | None:
    hours = [job.search_hours for job in jobs if job.search_hours is not None]
    return round(fmean(hours), 2) if hours else None
