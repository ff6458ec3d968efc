"""Returns that the shop never saw: told by the customer, or read on another shop's bill."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from desktop_app.repair_jobs.odometer import RunningMiles, miles_between
from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid, HeardBy
from desktop_app.returns_watched.job_facts import CUSTOMER_SAYS_SAME, JobFacts
from desktop_app.returns_watched.judgement import UNRELATED_CAUSE, Judgement, counts_against
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.window import MAIN_WINDOW, SALE, Window


@dataclass(frozen=True, slots=True)
class ToldReturn:
    """The same trouble, told once or again and again, oldest first; at least once."""

    answers: tuple[CustomerSaid, ...]

    @property
    def on(self) -> date:
        """The day on which it was told first."""
        return self.answers[0].on

    @property
    def judged_on(self) -> CustomerSaid:
        """The answer that carries what a person says of it, else the first: none comes too late."""
        judged = (one for one in self.answers if one.judgement is not None)
        said = (one for one in self.answers if one.why or one.cause_class or one.dangerous)
        return next(judged, next(said, self.answers[0]))

    @property
    def dangerous(self) -> bool | None:
        """Whether somebody could have been hurt, as was said of it at any time."""
        return any(one.dangerous for one in self.answers) or self.judged_on.dangerous

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


def told_returns(
    answers: Iterable[CustomerSaid], left_on: date, came: Collection[date] = ()
) -> tuple[ToldReturn, ...]:
    """Return what was told of the same trouble since a car left, oldest first.

    Told again it is the same return, until the customer says something else of the car, it was
    here in between (`came` are the days on which it came), or a person judged it something else
    than a comeback; who was not reached said nothing. What was told stands until it is judged:
    another shop may have mended it since. No two judgements are ever one return. `answers` stand
    in any order.
    """
    found: list[list[CustomerSaid]] = []
    goes_on = False
    for said in sorted(answers, key=lambda one: (one.on, one.id)):
        if said.on < left_on or said.answer is Answer.NOT_REACHED:
            continue
        if said.answer is not Answer.SAME_TROUBLE:
            goes_on = False
        elif goes_on and _is_told_again(found[-1], said, came):
            found[-1].append(said)
        else:
            found.append([said])
            goes_on = True
    return tuple(ToldReturn(tuple(told)) for told in found)


def _is_told_again(
    told: Sequence[CustomerSaid], said: CustomerSaid, came: Collection[date]
) -> bool:
    last = told[-1].on
    if last != said.on and any(last <= day <= said.on for day in came):
        return False
    judged = next((one.judgement for one in told if one.judgement is not None), None)
    return judged is None or (judged.is_comeback and said.judgement is None)


def speaking_for(told: ReturnRow, seen: Iterable[ReturnRow]) -> ReturnRow | None:
    """Return the first visit, on that day or later, that speaks for what was told of a job.

    Only a visit inside the window does, unless it was told beyond it. A judged comeback gives way
    to another one alone; what else was judged, to a visit that was judged and has to do with the
    repair; what nobody has judged, to one that waits for a judgement too.
    """
    since = (one for one in seen if one.came_on >= told.came_on)
    speaks = (one for one in since if _speaks_for(one, told))
    return min(speaks, key=lambda one: (one.came_on, one.later), default=None)


def _speaks_for(visit: ReturnRow, told: ReturnRow) -> bool:
    if told.in_window and not visit.in_window:
        return False
    if visit.candidate.in_chain:  # a comeback of a comeback of the job
        return True
    if counts_against(told.judgement, told.cause_class):
        return counts_against(visit.judgement, visit.cause_class)
    if visit.judgement is None:
        return told.judgement is None and visit.waits
    return visit.judgement is not Judgement.UNRELATED and visit.cause_class != UNRELATED_CAUSE


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
    window, said = job.window or MAIN_WINDOW, told.judged_on
    by_window = window.in_window(days, miles) and (last_day is None or told.on <= last_day)
    sold = job.sold_on is not None and told.on > job.sold_on
    return ReturnRow(
        candidate=Candidate(
            earlier=job.number,
            later=f"{_IN_CONTRACT[told.source]} {told.on.isoformat()}",
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
        judged_id=said.id,
        dangerous=told.dangerous,
    )


# What stands in the place of a later job's number, in whatever language it is shown.
_IN_CONTRACT = {HeardBy.TOLD: "told", HeardBy.PAPER: "on paper"}


def in_other_window(row: ReturnRow, window: Window) -> ReturnRow:
    """Return a row as it lies in another window than the one that its job left with."""
    one = row.candidate
    inside = window.in_window(one.days, one.distance_miles) and not one.after_sale
    return replace(row, candidate=replace(one, in_window=inside))
