"""A table of comeback rates by some grouping of the year's jobs, with the sentences beneath it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.group_names import as_first_written
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    TOO_FEW,
    WIDEST_INTERVAL,
    By,
    GroupRate,
    compared_at_once,
    group_rates,
)
from desktop_app.returns_watched.honest_numbers.many_compared import caution
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.weekly_report.headers import COMEBACKS, HIGH, LOW, NOT_SETTLED, SETTLED
from desktop_app.weekly_report.sheet_form import Cell, Column, JobsOfRow, Table
from desktop_app.weekly_report.sheets.sheet_words import columns
from desktop_app.weekly_report.year_behind import JobDone, YearBehind
from desktop_app.weekly_report.year_columns import year_columns, year_numbers

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int64]

#: The rate where it can be told, as a formula over its row; too few jobs have no bounds either.
RATE_FORMULA = f'=IF(OR([@{SETTLED}]<{FEW_JOBS},[@{HIGH}]=""),"",[@{COMEBACKS}]/[@{SETTLED}])'
#: The columns that every such table has after its first ones.
RATE_COLUMNS: tuple[Column, ...] = columns(
    (tr("Read it as"), "words"),
    (SETTLED, "count"),
    (NOT_SETTLED, "count"),
    (COMEBACKS, "count"),
    Column(tr("Rate"), "share", RATE_FORMULA),
    (LOW, "share"),
    (HIGH, "share"),
    (tr("Likely rate"), "share"),
    (tr("Expected"), "number"),
    (tr("Fewest by luck"), "count"),
    (tr("Most by luck"), "count"),
)
_OPEN_NOTE = tr(
    "Not settled: the window is still open, a visit waits for a judgement, the car is "
    "out of sight, or it came back for a reason that is not ours or that nobody can "
    "tell. Those jobs are no successes and not in the rate. Low to High: where the "
    "true rate lies 19 times of 20."
)
_LUCK_NOTE = tr(
    "Expected: the comebacks that the same work has outside the row. Fewest and Most "
    "by luck: how many luck alone makes of that, 19 times of 20; between the two "
    "nobody is better or worse. Likely rate: once all rows are weighed, a row of few "
    "jobs drawn towards the others."
)
_FEW_NOTE = tr(
    "“{too_few}”: fewer than {few_jobs} settled jobs, or a rate that nobody can tell "
    "within {widest_interval:.0f} points. Such rows have no rate, no likely rate and "
    "no rank: “anything from … to” is all that is known.",
    too_few=TOO_FEW.capitalize(),
    few_jobs=FEW_JOBS,
    widest_interval=WIDEST_INTERVAL * 100,
)

_AGAIN_NOTE = tr("The columns mean the same as in the table above.")


class Groups:
    """The year's jobs by the names they have in one respect, with the rates of these groups."""

    def __init__(self, year: YearBehind, by: By, names: Callable[[JobDone], Iterable[str]]) -> None:
        """`by` says what is left out of the mix of work; blank names count as not said."""
        said = [tuple(names(job)) for job in year.counted]
        shown: dict[str, str] = {}
        # Many jobs have the same names together: those are made tidy once.
        tidy = {raw: as_first_written(raw, shown) for raw in dict.fromkeys(said)}
        named = tuple(map(tidy.__getitem__, said))
        self._year, self._places = year, _places(named)
        counted = replace(year_columns(year), groups=named) if named else None
        self.rates: tuple[GroupRate, ...] = group_rates(counted, by) if counted else ()
        self.compared = compared_at_once(self.rates)

    def keep(self, wanted: Callable[[GroupRate], bool]) -> int:
        """Keep the rows that are wanted and return how many others there are; all were compared."""
        kept = tuple(group for group in self.rates if wanted(group))
        left_out, self.rates = len(self.rates) - len(kept), kept
        return left_out

    def jobs(self, name: str) -> Sequence[JobDone]:
        """Return the jobs that count under a name, oldest hand-over first."""
        jobs = self._year.counted
        return [jobs[place] for place in self._at(name).tolist()]

    def numbers(self, name: str) -> tuple[str, ...]:
        """Return the numbers of these jobs."""
        return tuple(year_numbers(self._year)[self._at(name)].tolist())

    def _at(self, name: str) -> Whole:
        import numpy as np

        return self._places.get(name, np.empty(0, dtype=np.int64))

    def behind_of(self, shown: Sequence[GroupRate]) -> dict[str, JobsOfRow]:
        """Return how to find, for some rows, the jobs that a column counts which counts a part."""
        parts: dict[str, Callable[[JobDone], bool]] = {
            SETTLED: lambda job: job.settled,
            NOT_SETTLED: lambda job: not job.settled,
            COMEBACKS: lambda job: job.settled and job.came_back,
        }

        def jobs(counts: Callable[[JobDone], bool], row: int) -> tuple[str, ...]:
            return tuple(job.number for job in self.jobs(shown[row].name) if counts(job))

        return {header: partial(jobs, counts) for header, counts in parts.items()}


def _places(named: Sequence[tuple[str, ...]]) -> dict[str, Whole]:
    """Return by name where the jobs that have it stand, rising."""
    import numpy as np

    together = list(dict.fromkeys(named))
    alike = {names: place for place, names in enumerate(together)}
    which = np.fromiter(map(alike.__getitem__, named), np.int64, len(named))
    order = np.argsort(which, kind="stable")
    ends = np.cumsum(np.bincount(which, minlength=len(together)))
    found: dict[str, list[Whole]] = {}
    for names, part in zip(together, np.split(order, ends[:-1]), strict=True) if together else ():
        for name in names:
            found.setdefault(name, []).append(part)
    return {name: np.sort(np.concatenate(parts)) for name, parts in found.items()}


def rate_cells(group: GroupRate) -> tuple[Cell, ...]:
    """Return a group's cells under RATE_COLUMNS."""
    fewest, most = group.luck_told or (None, None)
    few = group.note is not None
    return (
        group.read_as,
        group.settled,
        group.jobs - group.settled,
        group.comebacks,
        *((None,) * 3 if few else (group.rate, group.low, group.high)),
        None if few or group.drawn_in is None else group.drawn_in.mean,
        None if group.luck_told is None or group.expected is None else round(group.expected, 1),
        fewest,
        most,
    )


def rate_notes(groups: Groups, *, shared: bool = False, again: bool = False) -> tuple[str, ...]:
    """Return the sentences beneath a table of groups.

    `shared` where a job can be in several, `again` where the columns were explained on the sheet.
    """
    if not groups.rates:
        return ()
    said = [_AGAIN_NOTE] if again else [_OPEN_NOTE, _LUCK_NOTE, _FEW_NOTE]
    said += held_against(groups.rates)
    if shared:
        said.append(tr("A job counts in every row whose name it has, so the rows can share jobs."))
    warning = caution(groups.compared)
    if warning is not None:
        said.append(
            tr("{warning} “More” or “fewer than luck explains” allows for that.", warning=warning)
        )
    return tuple(said)


def held_against(rates: Iterable[GroupRate]) -> Iterator[str]:
    """Say for how many jobs of the rows which work of others stood in for the same work."""
    held = [group for group in rates if group.luck_told is not None]
    jobs, alike = sum(group.settled for group in held), sum(group.alike for group in held)
    by_system = sum(group.by_system for group in held)
    if jobs > alike:
        yield tr(
            "Held against: {alike:,} of {jobs} against the same work alone. Fewer "
            "than {few_jobs} others did the work of the rest: those few count together "
            "with the other work of its system ({by_system:,}), or with all other work "
            "too ({by_all:,}), and the range of luck is wider.",
            alike=alike,
            jobs=jobs_counted(jobs),
            few_jobs=FEW_JOBS,
            by_system=by_system,
            by_all=jobs - alike - by_system,
        )


def group_table(
    name: str,
    first: Sequence[Column],
    groups: Groups,
    cells: Callable[[GroupRate], tuple[Cell, ...]],
    *,
    title: str = "",
    shared: bool = False,
    again: bool = False,
    said: Sequence[str] = (),
) -> Table:
    """Return the table: `cells` gives a group's first columns, `said` more sentences beneath."""
    return Table(
        name,
        (*first, *RATE_COLUMNS),
        tuple((*cells(group), *rate_cells(group)) for group in groups.rates),
        title=title,
        notes=(*rate_notes(groups, shared=shared, again=again), *said),
        nothing=tr("No job of this year was counted."),
        behind=tuple(groups.numbers(group.name) for group in groups.rates),
        behind_of=groups.behind_of(groups.rates),
    )
