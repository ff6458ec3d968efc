"""Sheet 15: the rows behind everything, flat and without names, for whoever distrusts the rest."""

from __future__ import annotations

from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import about, amount, columns, joined, year_words
from desktop_app.weekly_report.year_behind import JobDone


def raw_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each job of the year, with ids in place of words."""
    table = Table(
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
            ("Window miles", "count"),
            ("State", "words"),
            ("System", "words"),
            ("Part kinds", "words"),
            ("Symptoms", "words"),
            ("Proof", "count"),
            ("Now and then", "count"),
            ("Hours", "hours"),
            ("Unbilled hours", "hours"),
            ("Price", "money"),
        ),
        tuple(_row(job) for job in figures.year.jobs),
        nothing="No job was handed over in this year.",
    )
    line = about(figures, len(table.rows), year_words(figures))
    return Sheet("Raw", line, tables=(table,))


def _row(job: JobDone) -> tuple[Cell, ...]:
    return (
        job.number,
        job.left_on,
        f"{job.left_on:%Y-%m}",
        int(job.counted),
        int(job.counted and job.settled),
        int(job.counted and job.came_back),
        int(job.counted and job.state == "maybe"),
        job.back_after,
        job.waits_after,
        job.days_gone,
        job.window_days,
        job.window_miles,
        job.state,
        job.system,
        joined(job.part_kinds),
        joined(job.symptoms),
        job.proof_level,
        int(job.now_and_then),
        job.hours,
        job.unbilled_hours,
        amount(job.price_cents),
    )
