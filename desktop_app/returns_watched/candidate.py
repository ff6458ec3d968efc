"""Which later jobs may be returns of which earlier ones, and why; never a verdict."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import TypedDict

from desktop_app.repair_jobs.odometer import miles_between
from desktop_app.returns_watched.job_facts import (
    JobFacts,
    may_return,
    reasons,
    shares_anything,
)
from desktop_app.returns_watched.judgement import Chains, Judgement, ReturnJudged
from desktop_app.returns_watched.window import LONG_WINDOW, MAIN_WINDOW, DecidedBy, Window

Judged = Mapping[tuple[str, str], Judgement]
_NOBODY: Judged = {}


class CandidateJson(TypedDict):
    """A candidate as the `returns` command prints it."""

    earlier: str
    later: str
    days: int
    distance_miles: float | None
    in_window: bool
    decided_by: DecidedBy
    reasons: list[str]
    window_used: float
    root: str
    judgement: str | None


@dataclass(frozen=True, slots=True)
class Candidate:
    """An earlier job and a later one of the same vehicle, how far apart, and what they share."""

    earlier: str
    later: str
    days: int
    distance_miles: float | None
    in_window: bool
    decided_by: DecidedBy
    reasons: tuple[str, ...]
    window_used: float
    root: str
    judgement: Judgement | None = None

    @property
    def waits(self) -> bool:
        """True where nobody has judged it yet."""
        return self.judgement is None

    def as_json(self) -> CandidateJson:
        """Return the fields of the command contract."""
        return {
            "earlier": self.earlier,
            "later": self.later,
            "days": self.days,
            "distance_miles": self.distance_miles,
            "in_window": self.in_window,
            "decided_by": self.decided_by,
            "reasons": list(self.reasons),
            "window_used": self.window_used,
            "root": self.root,
            "judgement": None if self.judgement is None else self.judgement.value,
        }


def candidates(
    earlier_jobs: Iterable[JobFacts],
    later: JobFacts,
    window: Window = MAIN_WINDOW,
    long_window: Window = LONG_WINDOW,
    judged: Judged = _NOBODY,
) -> list[Candidate]:
    """Return the pairs with a reason within the long window, and those already judged.

    Oldest hand-over first. Jobs of other vehicles, of the same visit, not handed over, or handed
    over after the later one was opened are left out.
    """
    done = _handed_over(earlier_jobs)
    chains = _chains(judged, done)
    found = []
    for earlier in done:
        pair = _pair(earlier, later, window, long_window, judged, chains)
        if pair is not None:
            found.append(pair)
    return found


def other_visits(
    earlier_jobs: Iterable[JobFacts], later: JobFacts, window: Window = MAIN_WINDOW
) -> list[Candidate]:
    """Return the earlier jobs within the window that share nothing with the later one."""
    chains = Chains(())
    return [
        _built(earlier, later, earlier.window or window, (), None, chains)
        for earlier in _handed_over(earlier_jobs)
        if may_return(earlier, later)
        and not reasons(earlier, later)
        and (earlier.window or window).in_window(*_apart(earlier, later))
    ]


def all_candidates(
    jobs: Iterable[JobFacts],
    window: Window = MAIN_WINDOW,
    long_window: Window = LONG_WINDOW,
    judged: Judged = _NOBODY,
) -> list[Candidate]:
    """Return all candidates of a whole history, by vehicle, then later job, then earlier one.

    Within a vehicle only jobs handed over within the longest window are looked at, so that a
    placeholder vehicle with thousands of jobs costs no more than its windows hold.
    """
    by_vehicle: dict[str, list[JobFacts]] = {}
    by_number: dict[str, JobFacts] = {}
    for job in jobs:
        by_vehicle.setdefault(job.vehicle, []).append(job)
        by_number[job.number] = job
    chains = _chains(judged, by_number.values())
    judged_before: dict[str, list[JobFacts]] = {}
    for earlier_number, later_number in judged:
        if earlier_number in by_number:
            judged_before.setdefault(later_number, []).append(by_number[earlier_number])
    found: list[Candidate] = []
    for group in by_vehicle.values():
        if len(group) > 1:
            walk = _close_pairs(group, window, long_window, judged_before)
            for earlier, later in walk:
                pair = _pair(earlier, later, window, long_window, judged, chains)
                if pair is not None:
                    found.append(pair)
    return found


def _pair(
    earlier: JobFacts,
    later: JobFacts,
    window: Window,
    long_window: Window,
    judged: Judged,
    chains: Chains,
) -> Candidate | None:
    decided = judged.get((earlier.number, later.number)) if judged else None
    if not may_return(earlier, later) or (decided is None and not shares_anything(earlier, later)):
        return None
    own = earlier.window or window
    days, miles = _apart(earlier, later)
    inside = own.in_window(days, miles) or long_window.in_window(days, miles)
    if decided is None and not inside:
        return None
    return _built(earlier, later, own, reasons(earlier, later), decided, chains)


def _built(
    earlier: JobFacts,
    later: JobFacts,
    window: Window,
    why: tuple[str, ...],
    decided: Judgement | None,
    chains: Chains,
) -> Candidate:
    days, miles = _apart(earlier, later)
    return Candidate(
        earlier=earlier.number,
        later=later.number,
        days=days,
        distance_miles=miles,
        in_window=window.in_window(days, miles),
        decided_by=window.decided_by(days, miles),
        reasons=why,
        window_used=window.share_used(days, miles),
        root=chains.root_of(earlier.number),
        judgement=decided,
    )


def _apart(earlier: JobFacts, later: JobFacts) -> tuple[int, float | None]:
    assert earlier.handed_over_on is not None
    days = (later.opened_on - earlier.handed_over_on).days
    return days, miles_between(earlier.odometer_out, later.odometer_in, days)


def _handed_over(jobs: Iterable[JobFacts]) -> list[JobFacts]:
    return sorted((j for j in jobs if j.handed_over_on is not None), key=_by_hand_over)


def _by_hand_over(job: JobFacts) -> tuple[date, str]:
    return (job.handed_over_on or date.min, job.number)


def _chains(judged: Judged, jobs: Iterable[JobFacts]) -> Chains:
    order = {job.number: _by_hand_over(job) for job in jobs} if judged else {}
    links = sorted(judged.items(), key=lambda link: order.get(link[0][0], (date.min, link[0][0])))
    return Chains(ReturnJudged(earlier, later, said) for (earlier, later), said in links)


def _close_pairs(
    group: Sequence[JobFacts],
    window: Window,
    long_window: Window,
    judged_before: Mapping[str, Sequence[JobFacts]],
) -> Iterator[tuple[JobFacts, JobFacts]]:
    """Yield the pairs of one vehicle whose hand-over is near enough, and those judged."""
    done = _handed_over(group)
    handed = [job.handed_over_on or date.min for job in done]
    windows = {window, long_window} | {job.window for job in done if job.window is not None}
    # Where both must end, miles may keep a window open for ever: then every hand-over is near.
    reach = None if any(w.rule == "both" for w in windows) else max(w.days for w in windows)
    for later in sorted(group, key=lambda job: (job.opened_on, job.number)):
        start = 0
        if reach is not None and later.opened_on.toordinal() > reach:
            start = bisect_left(handed, later.opened_on - timedelta(days=reach))
        end = bisect_right(handed, later.opened_on)
        near = done[start:end]
        judged = [job for job in judged_before.get(later.number, ()) if job not in near]
        for earlier in sorted(judged, key=_by_hand_over):
            yield earlier, later
        for earlier in near:
            yield earlier, later
