"""Jobs that no rate counts stand in rows of their own, so that nobody has to miss them."""

from __future__ import annotations

from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Column, Table
from desktop_app.weekly_report.sheets.sheet_words import columns
from desktop_app.weekly_report.year_behind import JobDone

_WHYS = ("not caught", "nothing put right", "no cause written")
_JOBS = Column("Jobs", "count", "=COUNTIFS(Raw[Kept out],[@Why])")


def why_kept_out(job: JobDone) -> str:
    """Say why a job enters no rate; empty words where it does."""
    if job.counted:
        return ""
    if job.cause_found is False:
        return "not caught"
    return "no cause written" if job.correction.strip() else "nothing put right"


def kept_out_table(figures: WeekFigures) -> Table:
    """Return a row for each reason, with its jobs of the year."""
    behind: dict[str, list[str]] = {why: [] for why in _WHYS}
    for job in figures.year.jobs:
        if not job.counted:
            behind[why_kept_out(job)].append(job.number)
    return Table(
        "KeptOut",
        columns(("Why", "words"), _JOBS),
        tuple((why, len(jobs)) for why, jobs in behind.items()),
        title="Kept out of every rate",
        notes=(
            "These jobs of the year are in no rate, above or below the line. Not caught: handed "
            "over with nothing found. Nothing put right: no correction is written, as after a mere "
            "look or an estimate. No cause written: something was done and no cause named, as in "
            "plain maintenance; the record has no mark for that.",
        ),
        behind=tuple(map(tuple, behind.values())),
    )
