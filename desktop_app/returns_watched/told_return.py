"""Returns that the shop never saw: told by the customer, or read on another shop's bill."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from desktop_app.repair_jobs.odometer import RunningMiles, miles_between
from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid, HeardBy
from desktop_app.returns_watched.job_facts import CUSTOMER_SAYS_SAME, JobFacts
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.window import MAIN_WINDOW, SALE, Window


@dataclass(frozen=True, slots=True)
class ToldReturn:
    """The same trouble, told once or again and again, oldest first; at least once.

    It is judged on the last answer: what is told after a judgement is told anew.
    """

    answers: tuple[CustomerSaid, ...]

    @property
    def on(self) -> date:
        """The day on which it was told first."""
        return self.answers[0].on

    @property
    def last(self) -> CustomerSaid:
        """The answer that carries the judgement."""
        return self.answers[-1]

    @property
    def source(self) -> HeardBy:
        """On paper, where a bill was seen at any time."""
        seen = any(one.source is HeardBy.PAPER for one in self.answers)
        return HeardBy.PAPER if seen else HeardBy.TOLD

    @property
    def odometer(self) -> int | None:
        """What was told of the odometer on the first day, in the vehicle's own unit."""
        told = (one.odometer_told for one in self.answers if one.on == self.on)
        return next((one for one in told if one is not None), None)

    @property
    def words(self) -> str:
        """What was told last, in the customer's words."""
        return next((one.words for one in reversed(self.answers) if one.words), "")


def told_returns(answers: Iterable[CustomerSaid], left_on: date) -> tuple[ToldReturn, ...]:
    """Return what was told of the same trouble since a car left, oldest first.

    What nobody has judged stands until the customer says something else of the car, what was
    judged stands for good; who was not reached said nothing. `answers` stand in any order.
    """
    found: list[ToldReturn] = []
    told: list[CustomerSaid] = []
    for said in sorted(answers, key=lambda one: (one.on, one.id)):
        if said.on < left_on:
            continue
        if said.answer is Answer.SAME_TROUBLE:
            told.append(said)
            if said.judgement is not None:
                found.append(ToldReturn(tuple(told)))
                told = []
        elif said.answer is not Answer.NOT_REACHED:
            told = []
    if told:
        found.append(ToldReturn(tuple(told)))
    return tuple(found)


def still_told(told: Iterable[ReturnRow], seen: Sequence[ReturnRow]) -> tuple[ReturnRow, ...]:
    """Return what was told of a job and no visit of the car speaks for, so that it counts once.

    Told and not judged is done with by a visit on that day or later that waits for a judgement or
    was judged. Told and judged gives way to a judged visit alone: to one inside the window, unless
    it was told beyond it, and not to one that has nothing to do with the repair.
    """
    return tuple(row for row in told if not any(_speaks_for(one, row) for one in seen))


def _speaks_for(visit: ReturnRow, told: ReturnRow) -> bool:
    if visit.came_on < told.came_on:
        return False
    if told.judgement is None:
        return visit.waits or not visit.is_open
    if visit.judgement in (None, Judgement.UNRELATED):
        return False
    return visit.in_window or not told.in_window


def told_row(
    told: ToldReturn,
    job: JobFacts,
    *,
    job_id: int,
    vehicle: str,
    concern: str = "",
    reading: RunningMiles | None = None,
    last_day: date | None = None,
    chain: tuple[str, ...] = (),
) -> ReturnRow:
    """Return what was told as a row of the list of returns; there is no later job.

    `reading` is the odometer as told, on the vehicle's running scale; `last_day` the last day on
    which the job's window is open, None where it is not known to end.
    """
    assert job.handed_over_on is not None
    days = (told.on - job.handed_over_on).days
    miles = miles_between(job.odometer_out, reading, days)
    window, said = job.window or MAIN_WINDOW, told.last
    by_window = window.in_window(days, miles) and (last_day is None or told.on <= last_day)
    sold = job.sold_on is not None and told.on > job.sold_on
    return ReturnRow(
        candidate=Candidate(
            earlier=job.number,
            later=heard_words(told),
            days=days,
            distance_miles=miles,
            in_window=by_window and not sold,
            decided_by=SALE if sold and by_window else window.decided_by(days, miles),
            reasons=(CUSTOMER_SAYS_SAME,),
            window_used=window.share_used(days, miles),
            root=(chain or (job.number,))[0],
            judgement=said.judgement,
            chain=chain or (job.number,),
            after_sale=sold,
        ),
        earlier_id=job_id,
        later_id=0,
        vehicle=vehicle,
        left_on=job.handed_over_on,
        came_on=told.on,
        concern_then=concern,
        concern_now=told.words,
        why=said.why,
        cause_class=said.cause_class,
        judged_by=said.judged_by,
        judged_at=said.judged_at,
        vehicle_key=f"told of {job.vehicle}",
        heard_by=told.source,
        asked_id=told.answers[0].id,
        dangerous=said.dangerous,
    )


_HEARD_WORDS = {HeardBy.TOLD: "told", HeardBy.PAPER: "on paper"}


def heard_words(told: ToldReturn) -> str:
    """Return what stands in the place of a later job's number: "told 2026-11-03"."""
    return f"{_HEARD_WORDS[told.source]} {told.on.isoformat()}"


def in_other_window(row: ReturnRow, window: Window) -> ReturnRow:
    """Return a row as it lies in another window than the one that its job left with."""
    one = row.candidate
    inside = window.in_window(one.days, one.distance_miles) and not one.after_sale
    return replace(row, candidate=replace(one, in_window=inside))
