"""Jobs that no rate counts stand in rows of their own, so that nobody has to miss them."""

from __future__ import annotations

from collections.abc import Container

from desktop_app.language import tr
from desktop_app.repair_jobs.who_did_what import WORKS, work_words
from desktop_app.weekly_report.figures import JobLeft, WeekFigures
from desktop_app.weekly_report.headers import KEPT_OUT, WHY
from desktop_app.weekly_report.sheet_form import Column, Table
from desktop_app.weekly_report.sheets.sheet_words import columns
from desktop_app.weekly_report.year_behind import JobDone

HANDS_ON = tr("new trouble from our hands")
_WHYS = (
    *(tr("not caught"), tr("nothing put right"), tr("no cause written")),
    *(work_words(work) for work in WORKS),
    HANDS_ON,
)
_JOBS = Column(tr("Jobs"), "count", f"=COUNTIFS(Raw[{KEPT_OUT}],[@{WHY}])")


def why_kept_out(job: JobDone | JobLeft, hands_on: Container[str] = ()) -> str:
    """Say why a job enters no rate; empty words where it does.

    `hands_on` are the numbers of the jobs that came back with new trouble from our hands.
    """
    if job.counted:
        return ""
    if job.work is not None:
        return HANDS_ON if job.number in hands_on else work_words(job.work)
    if job.cause_found is False:
        return tr("not caught")
    return tr("no cause written") if job.correction.strip() else tr("nothing put right")


def kept_out_table(figures: WeekFigures) -> Table:
    """Return a row for each reason, with its jobs of the year."""
    behind: dict[str, list[str]] = {why: [] for why in _WHYS}
    for job in figures.year.jobs:
        if not job.counted:
            behind[why_kept_out(job, figures.year.hands_on)].append(job.number)
    return Table(
        "KeptOut",
        columns((WHY, "words"), _JOBS),
        tuple((why, len(jobs)) for why, jobs in behind.items()),
        title=tr("Kept out of every rate"),
        notes=(
            tr(
                "These jobs of the year are in no rate, above or below the line. Not "
                "caught: handed over with nothing found. Nothing put right: no correction "
                "is written, as after a mere look or an estimate. No cause written: "
                "something was done and no cause named. Inspection only, maintenance: "
                "marked so on the job."
            ),
            tr(
                "New trouble from our hands: inspections and maintenance whose car came "
                "back inside the window with trouble that a person judged to be from our "
                "hands. They are no repairs, so no rate can hold them; they are counted "
                "here, and only here."
            ),
        ),
        behind=tuple(map(tuple, behind.values())),
    )
