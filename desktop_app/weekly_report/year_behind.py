"""The year behind a week: each job that was handed over in it, and what became of it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Literal, NamedTuple

from desktop_app.language import marked
from desktop_app.repair_jobs.who_did_what import Did
from desktop_app.returns_watched.change_promised import ChangePromised
from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID
from desktop_app.returns_watched.judged_before import JudgedOnce
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.owed import Owed
from desktop_app.returns_watched.return_cost import ReturnCost
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.weekly_report.before_the_year import CostBefore, OlderJob, Promised, as_it_stood
from desktop_app.weekly_report.cost_once import costs_once
from desktop_app.weekly_report.looked_back import LookedBack
from desktop_app.weekly_report.supplied import Supplied

WEEKS_IN_YEAR = 52
DAYS_IN_YEAR = 7 * WEEKS_IN_YEAR

State = Literal[
    "open",
    "maybe",
    "came back",
    "came back, not ours",
    "came back, cannot tell",
    "came back after the window",
    "seen fine",
    "nothing heard",
    "lost sight",
]
_LATER: State = "came back after the window"
STATES: tuple[State, ...] = (
    marked("open"),
    marked("maybe"),
    marked("came back"),
    marked("came back, not ours"),
    marked("came back, cannot tell"),
    marked("came back after the window"),
    marked("seen fine"),
    marked("nothing heard"),
    marked("lost sight"),
)


@dataclass(frozen=True, slots=True)
class PartFitted:
    """A part that was fitted in a job; empty words where nobody said."""

    kind: str
    origin: str = ""
    supplier: str = ""
    lot: str = ""
    verdict: str = ""


class JobDone(NamedTuple):
    """A job handed over in the year; money in cents, days counted from its hand-over.

    `back_after` are the days to its first comeback, `waits_after` those to its first visit that
    nobody judged, or to the same trouble told, `aside_after` those to its first return that is not
    ours, and `unsure_after` those to the first that nobody can tell, all inside its window; None
    where there is none. `counts_from` are the days after which its window counts as
    over, NO_LAST_DAY where nobody knows. `well_until` is the last day on which its car was
    known to be well. `window_days` 0 is no limit in time. `now_and_then` is True where the fault
    did not come every time. `miles_known` are the miles since the hand-over at the last later
    reading that can be trusted, taken on `known_on`, None where there is none, and `back_miles`
    those to its first comeback's visit, None where the odometer cannot say. `lost_after` are the
    days until the car was last in sight where it was lost in its window, None while in sight;
    `in_sight` are the same, inside or not. `work` is None for a repair; `named` says who did which
    of the four things of the job, where somebody was named.
    """

    number: str
    left_on: date
    vehicle: str
    counted: bool
    cause_found: bool | None
    correction: str
    system: str
    symptoms: tuple[str, ...]
    parts: tuple[PartFitted, ...]
    technician: str
    hours: float | None
    unbilled_hours: float | None
    price_cents: int | None
    proof_level: int | None
    now_and_then: bool
    window_days: int
    window_miles: float
    days_gone: int
    state: State
    counts_from: int
    back_after: int | None = None
    waits_after: int | None = None
    well_until: date | None = None
    miles_known: float | None = None
    known_on: date | None = None
    back_miles: float | None = None
    lost_after: int | None = None
    aside_after: int | None = None
    unsure_after: int | None = None
    in_sight: int | None = None
    caught_here: int = 0
    work: str | None = None
    search_hours: float | None = None
    named: tuple[tuple[Did, str], ...] = ()

    @property
    def not_caught(self) -> bool:
        """True where a repair was handed over with nothing found."""
        return self.work is None and self.cause_found is False

    @property
    def part_kinds(self) -> tuple[str, ...]:
        """The kinds of part that were fitted, each once, as far as they were said."""
        kinds = tuple([part.kind for part in self.parts if part.kind])
        return kinds if len(kinds) < 2 else tuple(dict.fromkeys(kinds))

    @property
    def settled(self) -> bool:
        """True where its window is over in sight of the shop, and its visits are judged.

        It is the rule of `CountedJobs.settled`, for one job.
        """
        if self.days_gone <= self.counts_from:
            return False
        unknown = (self.waits_after, self.aside_after, self.unsure_after, self.lost_after)
        return self.came_back or unknown == (None, None, None, None)

    @property
    def came_back(self) -> bool:
        """True where a person said that it came back."""
        return self.back_after is not None


@dataclass(frozen=True, slots=True)
class ReturnDone:
    """A return with what was written beside its judgement; `cost` is None where nobody wrote it.

    `decisions` are what was decided about a return of the week itself, oldest first.
    """

    row: ReturnRow
    also: tuple[Judgement, ...] = ()
    helping: tuple[str, ...] = ()
    second_look: str = ""
    cost: ReturnCost | None = None
    change: ChangePromised = field(default_factory=ChangePromised)
    decisions: tuple[JudgedOnce, ...] = ()

    @property
    def kinds(self) -> tuple[Judgement, ...]:
        """The kinds of comeback that it is, the main one first; none where it is not counted."""
        main = self.row.judgement
        if main is None or not self.row.is_comeback:
            return ()
        return (main, *(one for one in self.also if one is not main))


@dataclass(frozen=True, slots=True)
class YearBehind:
    """The jobs of a year, oldest hand-over first, and what goes with them.

    `returns` are those that came or were told in the year, `older` the jobs from before it that
    matter for them or are still under watch, `promised_before` the promises from before it that are
    still open. `looked_back` are the jobs whose long window ended in the year. `supplied` is what
    came from suppliers. `came_again` are the numbers of jobs that left in the year as comebacks
    whose visit lies before it. `left_out` are the numbers of jobs that no rate counts, and
    `hands_on` of those that came back inside their window with new trouble from our hands.
    `costs_before` are the costs of the comebacks of the year before.
    `hour_cost_cents` is what an hour costs the shop; `hour_is_preset` where that is the price
    that the program comes with.
    """

    first: date
    last: date
    jobs: tuple[JobDone, ...] = ()
    returns: tuple[ReturnDone, ...] = ()
    owed: tuple[Owed, ...] = ()
    hour_cost_cents: int = 0
    hour_is_preset: bool = False
    names_shown: bool = False
    early: tuple[int, int] = (30, 1000)
    long: tuple[int, int] = (365, 12_000)
    older: tuple[OlderJob, ...] = ()
    promised_before: tuple[Promised, ...] = ()
    looked_back: LookedBack | None = field(default=None, compare=False)
    supplied: Supplied = field(default_factory=Supplied)
    came_again: frozenset[str] = frozenset()
    costs_before: tuple[CostBefore, ...] = ()
    counted: tuple[JobDone, ...] = field(init=False)
    left_out: frozenset[str] = field(init=False)
    hands_on: frozenset[str] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "counted", tuple(job for job in self.jobs if job.counted))
        every: tuple[JobDone | OlderJob, ...] = (*self.jobs, *self.older)
        left_out = frozenset(job.number for job in every if not job.counted)
        object.__setattr__(self, "left_out", left_out)
        ours = (one for one in self.returns if Judgement.FROM_OUR_HANDS in one.kinds)
        hands_on = frozenset(one.row.earlier for one in ours if one.row.in_window)
        object.__setattr__(self, "hands_on", hands_on)
        object.__setattr__(self, "returns", costs_once(self.returns, left_out))

    def promised(self) -> tuple[Promised, ...]:
        """Return the changes promised after a return, as they stood on the last day."""
        own = (
            Promised(
                one.row.earlier,
                one.row.later,
                one.row.came_on,
                one.row.cause_class,
                as_it_stood(one.change, self.last),
            )
            for one in self.returns
            if one.change.is_said
        )
        return (*self.promised_before, *own)


def counted_jobs(
    jobs: Sequence[JobDone], groups: Callable[[JobDone], Iterable[str]] | None = None
) -> CountedJobs:
    """Return jobs as columns for the figures, each under the names that `groups` gives it.

    All are under one name without it.
    """
    import numpy as np

    def days(values: Iterable[int | None]) -> np.ndarray[tuple[int], np.dtype[np.int64]]:
        known = [NEVER if value is None else value for value in values]
        return np.array(known, dtype=np.int64)

    every = zip(*jobs, strict=True) if jobs else ((),) * len(JobDone._fields)
    of = dict(zip(JobDone._fields, every, strict=True))
    return CountedJobs(
        days_gone=days(of["days_gone"]),
        window_days=days(of["counts_from"]),
        back_after=days(of["back_after"]),
        waits_after=days(of["waits_after"]),
        part_kinds=tuple(job.part_kinds for job in jobs),
        systems=of["system"],
        groups=((NOT_SAID,),) * len(jobs)
        if groups is None
        else tuple(tuple(dict.fromkeys(groups(job))) or (NOT_SAID,) for job in jobs),
        lost_after=days(of["lost_after"]),
        aside_after=days(of["aside_after"]),
        unsure_after=days(of["unsure_after"]),
        came_later=np.array([state == _LATER for state in of["state"]], dtype=bool),
    )
