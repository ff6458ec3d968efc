"""Sheet 2: the jobs that left in the week."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.repair_jobs.who_did_what import work_words
from desktop_app.symptom_search.filters import vehicle_class
from desktop_app.weekly_report.figures import JobLeft, WeekFigures
from desktop_app.weekly_report.headers import (
    CAUSE,
    COUNTED,
    HOURS,
    JOB,
    PRICE,
    PROOF_REACHED,
    UNBILLED_HOURS,
)
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheet_names import LEFT_THIS_WEEK
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    amount,
    columns,
    distance,
    joined,
    origin_words,
)
from desktop_app.weekly_report.year_behind import JobDone


def left_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each job that was handed over in the week."""
    monday = figures.week.monday
    done = {job.number: job for job in figures.year.jobs if job.left_on >= monday}
    table = Table(
        "LeftThisWeek",
        columns(
            (JOB, "words"),
            (tr("Left on"), "day"),
            (tr("Vehicle"), "long words"),
            (tr("Class"), "long words"),
            (tr("Concern"), "long words"),
            (tr("Symptoms"), "long words"),
            (CAUSE, "long words"),
            (tr("Correction"), "long words"),
            (tr("Part kinds"), "long words"),
            (PROOF_REACHED, "words"),
            (HOURS, "hours"),
            (UNBILLED_HOURS, "hours"),
            (PRICE, "money"),
            (tr("Window ends"), "words"),
            (tr("Declined"), "long words"),
            (COUNTED, "words"),
        ),
        tuple(_row(figures, job, done[job.number]) for job in figures.left),
        nothing=tr("No job was handed over in this week."),
    )
    return Sheet(LEFT_THIS_WEEK, about(figures, len(table.rows)), tables=(table,))


def _row(figures: WeekFigures, job: JobLeft, done: JobDone) -> tuple[Cell, ...]:
    level = job.proof_level
    return (
        job.number,
        job.left_on,
        job.vehicle,
        vehicle_class(job.vehicle),
        job.concern,
        joined(done.symptoms),
        tr("not caught") if job.cause_found is False else job.cause,
        job.correction,
        _parts(figures, done),
        tr("not said") if level is None else f"{level} {ProofLevel(level).word}",
        job.hours,
        job.unbilled_hours,
        amount(job.price_cents),
        _window(figures, job),
        job.declined,
        _counted(job),
    )


def _counted(job: JobLeft) -> str:
    if job.work is None:
        return tr("yes") if job.counted else tr("no")
    return tr("no: {kind_of_work}", kind_of_work=work_words(job.work))


def _parts(figures: WeekFigures, done: JobDone) -> str:
    """Name the kinds of part that were fitted, each with its origin where that was said."""
    name = figures.shop.kind
    return joined(
        f"{name(part.kind)} ({origin_words(part.origin)})" if part.origin else name(part.kind)
        for part in done.parts
    )


def _window(figures: WeekFigures, job: JobLeft) -> str:
    """Say both limits of a job's window: the first of them ends it ("or"), or both must ("and")."""
    far = f"{distance(figures, job.window_miles):,.0f} {figures.shop.distance_unit}"
    day = f"{job.window_ends:%Y-%m-%d}" if job.window_ends is not None else ""
    if not job.window_miles:
        return day
    if not day:
        return far
    if job.window_rule == "both":
        return tr("{day} and {distance}", day=day, distance=far)
    return tr("{day} or {distance}", day=day, distance=far)
