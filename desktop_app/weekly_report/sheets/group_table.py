"""A table of comeback rates by some grouping of the year's jobs, with the sentences beneath it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from desktop_app.returns_watched.honest_numbers.group_rates import By, GroupRate, group_rates
from desktop_app.returns_watched.honest_numbers.many_compared import caution
from desktop_app.weekly_report.sheet_form import Cell, Column, Table
from desktop_app.weekly_report.sheets.sheet_words import FEW_JOBS, columns
from desktop_app.weekly_report.year_behind import JobDone, counted_jobs

#: The columns that every such table has after its first ones.
RATE_COLUMNS: tuple[Column, ...] = columns(
    ("Jobs", "count"),
    ("Settled", "count"),
    ("Open", "count"),
    ("Waiting", "count"),
    ("Comebacks", "count"),
    Column(
        "Rate",
        "share",
        '=IF(OR([@Settled]=0,[@Note]="too few to tell"),"",[@Comebacks]/[@Settled])',
    ),
    ("Low", "share"),
    ("High", "share"),
    ("Expected", "number"),
    ("Seen over expected", "number"),
    ("Drawn in", "share"),
    ("Note", "words"),
)
TOO_FEW = "too few to tell"
_OPEN_NOTE = (
    "Open windows are not successes: they are neither settled nor in the rate. Low to High holds "
    "the true rate 19 times of 20 (Wilson)."
)
_DRAWN_NOTE = (
    "Expected: what jobs with this mix of work have here on the average. Drawn in: the rate as it "
    "is believed once the other groups are known; small groups are drawn to the shop's own."
)


def groups_of(
    jobs: Sequence[JobDone], by: By, names: Callable[[JobDone], Iterable[str]]
) -> tuple[GroupRate, ...]:
    """Return the rates of the groups; `by` says what is left out of the mix of work."""
    return group_rates(counted_jobs(jobs, names), by) if jobs else ()


def rate_cells(group: GroupRate) -> tuple[Cell, ...]:
    """Return a group's cells under RATE_COLUMNS."""
    drawn = group.drawn_in.mean if group.drawn_in is not None else None
    return (
        group.jobs,
        group.settled,
        group.still_open,
        group.waiting,
        group.comebacks,
        None if _note(group) == TOO_FEW else group.rate,
        group.low,
        group.high,
        None if group.expected is None else round(group.expected, 2),
        None if group.against is None else round(group.against.ratio, 2),
        drawn,
        _note(group),
    )


def _note(group: GroupRate) -> str:
    if group.note is not None or group.settled < FEW_JOBS:
        return TOO_FEW
    return "stands out" if group.stands_out else ""


def rate_notes(groups: Sequence[GroupRate]) -> tuple[str, ...]:
    """Return the sentences that belong beneath a table of groups."""
    if not groups:
        return ()
    ranked = [group for group in groups if _note(group) != TOO_FEW]
    said = [_OPEN_NOTE, _DRAWN_NOTE]
    warning = caution(len(ranked))
    if warning is not None:
        said.append(warning)
    if len(ranked) < len(groups):
        said.append(
            f"Groups of fewer than {FEW_JOBS} settled jobs, or whose rate nobody can tell within "
            "20 points, have no rank and no rate, only its bounds: they stand last."
        )
    return tuple(said)


def group_table(
    name: str,
    first: Sequence[Column],
    groups: Sequence[GroupRate],
    cells: Callable[[GroupRate], tuple[Cell, ...]],
    jobs_of: Callable[[str], Iterable[JobDone]],
    *,
    title: str = "",
    nothing: str = "No job of this year was counted.",
) -> Table:
    """Return the table: `cells` gives a group's first columns, `jobs_of` the jobs behind it."""
    return Table(
        name,
        (*first, *RATE_COLUMNS),
        tuple((*cells(group), *rate_cells(group)) for group in groups),
        title=title,
        notes=rate_notes(groups),
        nothing=nothing,
        behind=tuple(tuple(job.number for job in jobs_of(group.name)) for group in groups),
    )
