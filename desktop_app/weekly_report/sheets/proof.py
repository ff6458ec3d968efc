"""Sheet 9: how far repairs were proved, and whether those left unproven came back more often."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from desktop_app.language import tr
from desktop_app.repair_jobs.proof import RECORDED_LEVELS, ProofLevel
from desktop_app.returns_watched.honest_numbers.group_names import NOT_COMPARED, compared_as
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, GroupRate
from desktop_app.returns_watched.proved_by_time import proved_by_time
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import COUNTED, JOB, PROOF_REACHED
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheet_names import PROOF
from desktop_app.weekly_report.sheets.does_it_pay import does_it_pay
from desktop_app.weekly_report.sheets.group_table import Groups, group_table
from desktop_app.weekly_report.sheets.sheet_words import about, columns, year_words
from desktop_app.weekly_report.year_behind import JobDone

COMPARED = {
    "fits": tr("old and new compared: fits"),
    "stop and look": tr("compared: stop and look"),
    "not enough measured": tr("compared: not enough measured"),
    NOT_COMPARED: tr("no parts compared"),
}
#: The level that nobody records: "5 time".
BY_TIME = f"{int(ProofLevel.TIME)} {ProofLevel.TIME.word}"


def proof_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates by level of proof, then by what the comparison of the parts said."""
    levels, compared, unproven = _levels(figures), _compared(figures), _unproven(figures)
    line = about(figures, len(levels.rows), year_words(figures))
    return Sheet(PROOF, line, tables=(levels, unproven, compared))


def _levels(figures: WeekFigures) -> Table:
    groups = Groups(figures.year, "symptom", lambda job: _level(job.proof_level))
    order = {f"{int(level)} {level.word}": int(level) for level in RECORDED_LEVELS}
    groups.rates = tuple(sorted(groups.rates, key=lambda group: order.get(group.name, 9)))

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        own = groups.jobs(group.name)
        return (group.name, sum(job.caught_here for job in own), sum(map(by_time, own)))

    def seen_fine(row: int) -> tuple[str, ...]:
        return tuple(job.number for job in groups.jobs(groups.rates[row].name) if by_time(job))

    table = group_table(
        "ProofLevels",
        columns((PROOF_REACHED, "words"), (tr("Caught here"), "count"), (BY_TIME, "count")),
        groups,
        cells,
        title=tr("By how far it was proved"),
        said=(
            tr(
                "By the level that was chosen at the hand-over. Where what is written down does "
                "not bear all of it out, Left this week says “in doubt”."
            ),
            tr(
                "Caught here: proofs that failed before the car left. That is a good sign, "
                "never a comeback. {by_time}: seen fine after the window. It comes by "
                "itself and stands in for none of the levels of the hand-over.",
                by_time=BY_TIME,
            ),
        )
        if groups.rates
        else (),
    )
    return replace(table, behind_of={**table.behind_of, BY_TIME: seen_fine})


def by_time(job: JobDone) -> bool:
    """True where a job is proved by time: the car was seen fine after its window."""
    return proved_by_time(job.state) is not None


def _unproven(figures: WeekFigures) -> Table:
    jobs = [job for job in figures.left if job.proof_level == ProofLevel.UNPROVEN]
    return Table(
        "LeftUnproven",
        columns(
            (JOB, "words"),
            (tr("Left on"), "day"),
            (COUNTED, "words"),
            (tr("What was written"), "long words"),
        ),
        tuple(
            (
                job.number,
                job.left_on,
                tr("yes") if job.counted else tr("no"),
                " ".join(job.proof_words.split()) or tr("no reason is written"),
            )
            for job in jobs
        ),
        title=tr("Left unproven in the week"),
        nothing=tr("No job left unproven in this week."),
    )


@cache
def _level(level: int | None) -> tuple[str]:
    return (NOT_SAID if level is None else f"{level} {ProofLevel(level).word}",)


def _compared(figures: WeekFigures) -> Table:
    groups = Groups(figures.year, "verdict", lambda job: (job_compared_as(job),))
    order = list(COMPARED)
    groups.rates = tuple(sorted(groups.rates, key=lambda group: order.index(group.name)))
    return group_table(
        "Compared",
        columns((tr("Parts"), "words")),
        groups,
        lambda group: (COMPARED[group.name],),
        title=tr("Does comparing the parts pay?"),
        again=True,
        said=does_it_pay(groups.jobs("fits"), groups.jobs(NOT_COMPARED)) if groups.rates else (),
    )


def job_compared_as(job: JobDone) -> str:
    """Return what the comparison of a job's parts said: the worst verdict of its pairs."""
    return compared_as([part.verdict for part in job.parts])
