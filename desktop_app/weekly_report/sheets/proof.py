"""Sheet 9: how far repairs were proved, and whether those left unproven came back more often."""

from __future__ import annotations

from desktop_app.repair_jobs.proof import RECORDED_LEVELS, ProofLevel
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, GroupRate
from desktop_app.returns_watched.honest_numbers.proportion import newcombe
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.group_table import group_table, groups_of
from desktop_app.weekly_report.sheets.sheet_words import about, columns, plural, year_words
from desktop_app.weekly_report.year_behind import JobDone

_NOT_COMPARED = "not compared"
_VERDICTS = {
    "fits": "old and new compared: fits",
    "stop and look": "compared: stop and look",
    "not enough measured": "compared: not enough measured",
    _NOT_COMPARED: "no parts compared",
}


def proof_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates by level of proof, then by what the comparison of the parts said."""
    levels, compared = _levels(figures), _compared(figures)
    line = about(figures, len(levels.rows), year_words(figures))
    return Sheet("Proof", line, tables=(levels, compared))


def _levels(figures: WeekFigures) -> Table:
    jobs = figures.year.counted
    groups = groups_of(jobs, "symptom", lambda job: (_level(job),))
    order = {f"{int(level)} {level.word}": int(level) for level in RECORDED_LEVELS}
    groups = tuple(sorted(groups, key=lambda group: order.get(group.name, 9)))

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        own = [job for job in jobs if _level(job) == group.name]
        return (group.name, sum(job.caught_here for job in own))

    return group_table(
        "ProofLevels",
        columns(("Proof", "words"), ("Caught here", "count")),
        groups,
        cells,
        lambda name: (job for job in jobs if _level(job) == name),
        title="By how far it was proved",
    )


def _level(job: JobDone) -> str:
    level = job.proof_level
    return NOT_SAID if level is None else f"{level} {ProofLevel(level).word}"


def _compared(figures: WeekFigures) -> Table:
    jobs = figures.year.counted
    groups = groups_of(jobs, "symptom", lambda job: (compared_as(job),))
    order = list(_VERDICTS)
    groups = tuple(sorted(groups, key=lambda group: order.index(group.name)))
    table = group_table(
        "Compared",
        columns(("Parts", "words")),
        groups,
        lambda group: (_VERDICTS[group.name],),
        lambda name: (job for job in jobs if compared_as(job) == name),
        title="Does comparing the parts pay?",
    )
    said = (*table.notes, *does_it_pay(groups))
    return Table(
        table.name,
        table.columns,
        table.rows,
        title=table.title,
        notes=said,
        nothing=table.nothing,
        behind=table.behind,
    )


def compared_as(job: JobDone) -> str:
    """Return what the comparison of a job's parts said: the worst verdict of its pairs."""
    found = {part.verdict for part in job.parts if part.verdict}
    worst = ("stop and look", "not enough measured", "fits")
    return next((verdict for verdict in worst if verdict in found), _NOT_COMPARED)


def does_it_pay(groups: tuple[GroupRate, ...]) -> tuple[str, ...]:
    """Say how much more or less often jobs with a pair that fits came back than those without."""
    by_name = {group.name: group for group in groups}
    fits, none = by_name.get("fits"), by_name.get(_NOT_COMPARED)
    if fits is None or none is None or not fits.settled or not none.settled:
        return ("Nothing can be said yet: it needs settled jobs of both sorts.",)
    low, high = newcombe(fits.comebacks, fits.settled, none.comebacks, none.settled)
    apart = fits.comebacks / fits.settled - none.comebacks / none.settled
    word = "fewer" if apart < 0 else "more"
    said = (
        f"Where old and new were compared and fit, {abs(apart) * 100:.1f} in a hundred {word} "
        f"came back than where nothing was compared ({plural(fits.settled, 'settled job')} against "
        f"{none.settled:,}); the difference lies between {low * 100:+.1f} and {high * 100:+.1f}."
    )
    luck = "That may be luck." if low <= 0 <= high else "Luck alone makes such a difference rarely."
    why = (
        "It is no experiment: who compares may also work more carefully otherwise, and some work "
        "has nothing to compare."
    )
    return said, f"{luck} {why}"
