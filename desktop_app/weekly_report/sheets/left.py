"""Sheet 2: the jobs that left in the week."""

from __future__ import annotations

from collections.abc import Callable

from desktop_app.figures_shown import figure
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
from desktop_app.weekly_report.sheet_form import Cell, Column, Sheet, Table
from desktop_app.weekly_report.sheet_names import LEFT_THIS_WEEK
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    amount,
    distance,
    joined,
    origin_words,
)
from desktop_app.weekly_report.year_behind import JobDone

_IN_DOUBT = tr(
    "Proof, “in doubt”: that level was chosen, and what is written down does not bear all of it "
    "out. The page of the job says what is missing or speaks against it."
)

_CellOf = Callable[[JobLeft, JobDone], Cell]


def left_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each job that was handed over in the week."""
    monday = figures.week.monday
    done = {job.number: job for job in figures.year.jobs if job.left_on >= monday}
    named = _columns(figures)
    table = Table(
        "LeftThisWeek",
        tuple(column for column, _ in named),
        tuple(tuple(cell(job, done[job.number]) for _, cell in named) for job in figures.left),
        notes=(_IN_DOUBT,) if any(job.proof_in_doubt for job in figures.left) else (),
        nothing=tr("No job was handed over in this week."),
    )
    return Sheet(LEFT_THIS_WEEK, about(figures, len(table.rows)), tables=(table,))


def _columns(figures: WeekFigures) -> list[tuple[Column, _CellOf]]:
    """Return each column with what makes its cell of a job: as it left, and as the year has it."""
    return [
        (Column(JOB, "words"), lambda job, _: job.number),
        (Column(tr("Left on"), "day"), lambda job, _: job.left_on),
        (Column(tr("Vehicle"), "long words"), lambda job, _: job.vehicle),
        (Column(tr("Class"), "long words"), lambda job, _: vehicle_class(job.vehicle)),
        (Column(tr("Concern"), "long words"), lambda job, _: job.concern),
        (Column(tr("Symptoms"), "long words"), lambda _, done: joined(done.symptoms)),
        (Column(CAUSE, "long words"), lambda job, _: _cause(job)),
        (Column(tr("Correction"), "long words"), lambda job, _: job.correction),
        (Column(tr("Part kinds"), "long words"), lambda _, done: _parts(figures, done)),
        (Column(PROOF_REACHED, "words"), lambda job, _: _proof(job)),
        (Column(HOURS, "hours"), lambda job, _: job.hours),
        (Column(UNBILLED_HOURS, "hours"), lambda job, _: job.unbilled_hours),
        (Column(PRICE, "money"), lambda job, _: amount(job.price_cents)),
        (Column(tr("Window ends"), "words"), lambda job, _: _window(figures, job)),
        (Column(tr("Declined"), "long words"), lambda job, _: job.declined),
        (Column(COUNTED, "words"), lambda job, _: _counted(job)),
    ]


def _cause(job: JobLeft) -> str:
    return tr("not caught") if job.cause_found is False else job.cause


def _proof(job: JobLeft) -> str:
    if job.proof_level is None:
        return tr("not said")
    level = f"{job.proof_level} {ProofLevel(job.proof_level).word}"
    return tr("{level}, in doubt", level=level) if job.proof_in_doubt else level


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
    far = f"{figure(distance(figures, job.window_miles), ',.0f')} {figures.shop.distance_unit}"
    day = f"{job.window_ends:%Y-%m-%d}" if job.window_ends is not None else ""
    if not job.window_miles:
        return day
    if not day:
        return far
    if job.window_rule == "both":
        return tr("{day} and {distance}", day=day, distance=far)
    return tr("{day} or {distance}", day=day, distance=far)
