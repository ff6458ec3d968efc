"""Sheet 2: the jobs that left in the week."""

from __future__ import annotations

from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.repair_jobs.who_did_what import work_words
from desktop_app.symptom_search.filters import vehicle_class
from desktop_app.weekly_report.figures import JobLeft, WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    amount,
    columns,
    distance,
    joined,
)
from desktop_app.weekly_report.year_behind import JobDone


def left_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each job that was handed over in the week."""
    monday = figures.week.monday
    done = {job.number: job for job in figures.year.jobs if job.left_on >= monday}
    table = Table(
        "LeftThisWeek",
        columns(
            ("Job", "words"),
            ("Left on", "day"),
            ("Vehicle", "long words"),
            ("Class", "long words"),
            ("Concern", "long words"),
            ("Symptoms", "long words"),
            ("Cause", "long words"),
            ("Correction", "long words"),
            ("Part kinds", "long words"),
            ("Proof", "words"),
            ("Hours", "hours"),
            ("Unbilled hours", "hours"),
            ("Price", "money"),
            ("Window ends", "words"),
            ("Declined", "long words"),
            ("Counted", "words"),
        ),
        tuple(_row(figures, job, done.get(job.number)) for job in figures.left),
        nothing="No job was handed over in this week.",
    )
    return Sheet("Left this week", about(figures, len(table.rows)), tables=(table,))


def _row(figures: WeekFigures, job: JobLeft, done: JobDone | None) -> tuple[Cell, ...]:
    level = job.proof_level
    return (
        job.number,
        job.left_on,
        job.vehicle,
        vehicle_class(job.vehicle),
        job.concern,
        "" if done is None else joined(done.symptoms),
        "not caught" if job.cause_found is False else job.cause,
        job.correction,
        _parts(figures, job, done),
        "not said" if level is None else f"{level} {ProofLevel(level).word}",
        job.hours,
        job.unbilled_hours,
        amount(job.price_cents),
        _window(figures, job),
        job.declined,
        _counted(job),
    )


def _counted(job: JobLeft) -> str:
    if job.work is None:
        return "yes" if job.counted else "no"
    return f"no: {work_words(job.work)}"


def _parts(figures: WeekFigures, job: JobLeft, done: JobDone | None) -> str:
    """Name the kinds of part that were fitted, each with its origin where that was said."""
    name = figures.shop.kind
    if done is None:
        return joined(map(name, job.part_kinds))
    return joined(
        f"{name(part.kind)} ({part.origin})" if part.origin else name(part.kind)
        for part in done.parts
    )


def _window(figures: WeekFigures, job: JobLeft) -> str:
    """Say both limits of a job's window: the first of them ends it ("or"), or both must ("and")."""
    far = f"{distance(figures, job.window_miles):,.0f} {figures.shop.distance_unit}"
    day = f"{job.window_ends:%Y-%m-%d}" if job.window_ends is not None else ""
    limits = (day, far if job.window_miles else "")
    joined = " and " if job.window_rule == "both" else " or "
    return joined.join(limit for limit in limits if limit)
