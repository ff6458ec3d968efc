"""Sheet 13: cars that came back more than once hang together."""

from __future__ import annotations

from datetime import date
from itertools import chain

from desktop_app.language import tr
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import FIRST_JOB
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheet_names import CHAINS
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    columns,
    distance,
    joined,
    plural,
    unit_words,
    year_words,
)
from desktop_app.weekly_report.year_behind import ReturnDone

_BEGUN_BEFORE = tr(
    "A chain that began before the year stands here whole; return visits from before "
    "the year are in its row, and not in the sum above."
)


def chains_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each first job whose car came back, the most returns first."""
    chains: dict[str, list[ReturnDone]] = {}
    for one in figures.year.returns:
        if one.row.is_comeback and one.row.earlier not in figures.year.left_out:
            chains.setdefault(one.row.candidate.root, []).append(one)
    order = sorted(chains.items(), key=lambda item: (-len(_visits(item[1])), item[0]))
    rows = tuple(_row(figures, root, some) for root, some in order)
    visits = len(_visits([one for some in chains.values() for one in some]))
    table = Table(
        "Chains",
        columns(
            (FIRST_JOB, "words"),
            (tr("Vehicle"), "long words"),
            (tr("Return visits"), "count"),
            (tr("Jobs in turn"), "long words"),
            (tr("Days in all"), "count"),
            (tr("{unit} in all", unit=unit_words(figures).capitalize()), "count"),
            (tr("Causes"), "long words"),
            (tr("Window still open"), "words"),
        ),
        rows,
        notes=(
            tr(
                "{first_jobs} came back at least once, in {visits}{only_told}. Rates count first "
                "jobs, work counts visits.",
                first_jobs=plural(len(rows), tr("first job"), tr("first jobs")),
                visits=plural(visits, tr("return visit"), tr("return visits")),
                only_told=_told(order),
            ),
            *((_BEGUN_BEFORE,) if any(_before(*one) for one in order) else ()),
        )
        if rows
        else (),
        nothing=tr("No car came back in this year."),
        behind=tuple(_opened(root, some) for root, some in order),
    )
    return Sheet(CHAINS, about(figures, len(rows), year_words(figures)), tables=(table,))


def _told(chains: list[tuple[str, list[ReturnDone]]]) -> str:
    told = len(_visits([one for _, some in chains for one in some if one.row.is_told]))
    return tr(", {told} of them only told", told=told) if told else ""


def _row(figures: WeekFigures, root: str, some: list[ReturnDone]) -> tuple[Cell, ...]:
    open_now = {job.job for job in figures.on_watch}
    miles = _miles_from(root, some)
    jobs = _jobs(root, some)
    first = _left_on(figures, root, some)
    last = max(one.row.came_on for one in some)
    return (
        root,
        some[0].row.vehicle,
        len(_visits(some)) + len(_before(root, some)),
        " → ".join(jobs),
        tr("not known") if first is None else (last - first).days,
        tr("not known") if miles is None else distance(figures, miles),
        joined(one.row.cause_words for one in some) or tr("not said"),
        tr("yes") if open_now & set(jobs) else tr("no"),
    )


def _left_on(figures: WeekFigures, root: str, some: list[ReturnDone]) -> date | None:
    """Return when the first job was handed over, which may be before the year."""
    met = (one.row.left_on for one in some if one.row.earlier == root)
    older = (job.left_on for job in figures.year.older if job.number == root)
    return next(chain(met, older), None)


def _before(root: str, some: list[ReturnDone]) -> set[str]:
    """Return the jobs of the chain that came back before the year."""
    in_chain = {number for one in some for number in one.row.candidate.chain}
    return in_chain - {root} - {one.row.later for one in some}


def _miles_from(root: str, some: list[ReturnDone]) -> float | None:
    """Return the miles from the first job to the furthest return; None where one is not known."""
    reached: dict[str, float | None] = {root: 0.0}
    for one in sorted(some, key=lambda one: one.row.came_on):
        before, more = reached.get(one.row.earlier), one.row.candidate.distance_miles
        known = None if before is None or more is None else before + more
        reached.setdefault(one.row.later, known)
    known_miles = [miles for miles in reached.values() if miles is not None]
    return max(known_miles) if len(known_miles) == len(reached) else None


def _jobs(root: str, some: list[ReturnDone]) -> tuple[str, ...]:
    """Return the jobs of the chain in turn, those from before the year too."""
    found = [root]
    for one in sorted(some, key=lambda one: (one.row.came_on, one.row.later)):
        found += (*one.row.candidate.chain, one.row.later)
    return tuple(dict.fromkeys(found))


def _opened(root: str, some: list[ReturnDone]) -> tuple[str, ...]:
    """Return the jobs of the chain that there are: what was only told is no job."""
    told = {one.row.later for one in some if one.row.is_told}
    return tuple(number for number in _jobs(root, some) if number not in told)


def _visits(some: list[ReturnDone]) -> set[object]:
    """Return the visits: one can meet two earlier jobs, and so stand in two chains."""
    return {one.row.visit for one in some}
