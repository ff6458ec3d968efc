"""Which later jobs may be returns of which earlier ones, and why; never a verdict."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TypedDict

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_names import NO_KINDS
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.odometer import ReadingSource, miles_between
from desktop_app.returns_watched.job_facts import (
    JobFacts,
    may_return,
    reasons,
    shares_anything,
    spoken,
)
from desktop_app.returns_watched.judgement import Chains, Judgement, ReturnJudged
from desktop_app.returns_watched.window import (
    LONG_WINDOW,
    MAIN_WINDOW,
    NOT_DECIDED,
    SALE,
    TIME_ONLY,
    DecidedBy,
    Window,
    holds,
)

Judged = Mapping[tuple[str, str], Judgement]
Causes = Mapping[tuple[str, str], str]
_NOBODY: Judged = {}
_NOT_SAID: Causes = {}
_NOT_READ: Mapping[tuple[DecidedBy, ReadingSource], str] = {
    (TIME_ONLY, "told"): tr("time only: odometer told, not read"),
    (TIME_ONLY, "estimated"): tr("time only: odometer estimated, not read"),
    (NOT_DECIDED, "told"): tr("not decided: odometer told, not read"),
    (NOT_DECIDED, "estimated"): tr("not decided: odometer estimated, not read"),
}


class CandidateJson(TypedDict):
    """A candidate as the `returns` command prints it."""

    earlier: str
    later: str
    days: int
    distance_miles: float | None
    in_window: bool
    decided_by: DecidedBy
    reasons: list[str]
    window_used: float | None
    root: str
    judgement: str | None


@dataclass(frozen=True, slots=True)
class Candidate:
    """An earlier job and a later one of the same vehicle, how far apart, and what they share.

    `window_used` is None where nobody can know it. `chain` holds the jobs from the root to the
    earlier one; `in_chain` is True where the later one hangs on it already, through judged returns.
    `after_sale` is True where a sale that ends windows lies between the two.
    `odometer_source` says how an odometer came that nobody of the shop read, if there was one.
    """

    earlier: str
    later: str
    days: int
    distance_miles: float | None
    in_window: bool
    decided_by: DecidedBy
    reasons: tuple[str, ...]
    window_used: float | None
    root: str
    judgement: Judgement | None = None
    chain: tuple[str, ...] = ()
    in_chain: bool = False
    after_sale: bool = False
    odometer_source: ReadingSource = "read"

    @property
    def decided_words(self) -> str:
        """What decides, as a person reads it: an odometer that nobody read is called so."""
        not_read = _NOT_READ.get((self.decided_by, self.odometer_source))
        if self.distance_miles is not None or not_read is None:
            return tr(self.decided_by)
        return not_read

    @property
    def waits(self) -> bool:
        """True where nobody has judged it yet, not even by judging the returns between the two."""
        return self.judgement is None and not self.in_chain

    def why(self, kinds: Mapping[str, PartKind] = NO_KINDS) -> str:
        """Return the reasons as a person reads them, one after the other."""
        same = {one: kinds[one] for one in kinds if f"same part kind: {one}" in self.reasons}
        return "; ".join(spoken(reason, same) for reason in self.reasons)

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
    causes: Causes = _NOT_SAID,
) -> list[Candidate]:
    """Return the pairs with a reason within the long window, and those already judged.

    Oldest hand-over first. `causes` says why a judged one came back. Jobs of other vehicles, of the
    same visit, not handed over, or handed over after the later one was opened are left out.
    """
    done = _handed_over(earlier_jobs)
    chains = chains_of(judged, done, causes)
    found = []
    for earlier in done:
        pair = _pair(earlier, later, window, long_window, judged, chains)
        if pair is not None:
            found.append(pair)
    return found


def came_of(
    earlier: JobFacts,
    jobs: Iterable[JobFacts],
    window: Window = MAIN_WINDOW,
    long_window: Window = LONG_WINDOW,
    judged: Judged = _NOBODY,
    causes: Causes = _NOT_SAID,
) -> list[Candidate]:
    """Return the pairs of one job with later ones of its vehicle, as `all_candidates` has them."""
    chains = chains_of(judged, jobs, causes)
    pairs = (_pair(earlier, one, window, long_window, judged, chains) for one in jobs)
    return [pair for pair in pairs if pair is not None]


def all_candidates(
    jobs: Iterable[JobFacts],
    window: Window = MAIN_WINDOW,
    long_window: Window = LONG_WINDOW,
    judged: Judged = _NOBODY,
    causes: Causes = _NOT_SAID,
) -> list[Candidate]:
    """Return all candidates of a whole history, by vehicle, then later job, then earlier one.

    Within a vehicle only jobs handed over within the longest window are looked at, so that a
    placeholder vehicle with thousands of jobs costs no more than its windows hold.
    """
    ordered = sorted(jobs, key=lambda job: (job.opened_on, job.number))
    by_vehicle: dict[str, list[JobFacts]] = {}
    for job in ordered:
        by_vehicle.setdefault(job.vehicle, []).append(job)
    chains = chains_of(judged, ordered, causes)
    judged_before = _judged_before(judged, ordered)
    found: list[Candidate] = []
    for group in by_vehicle.values():
        if len(group) == 1:
            continue
        reach = _reach(group, window, long_window)
        for earlier, later in _close_pairs(group, reach, judged_before):
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
    pair = met(earlier, later, earlier.window or window, decided, chains)
    if pair.in_window or decided is not None:
        return pair
    return pair if long_window.in_window(pair.days, pair.distance_miles) else None


def met(
    earlier: JobFacts,
    later: JobFacts,
    window: Window,
    decided: Judgement | None,
    chains: Chains,
) -> Candidate:
    """Return a pair as it is listed, whether it lies in a window or not."""
    days, miles = _apart(earlier, later)
    used = window.share_used(days, miles)
    by_window = holds(used)
    sold = earlier.sold_on is not None and later.opened_on > earlier.sold_on
    chain = chains.chain_of(earlier.number)
    return Candidate(
        earlier=earlier.number,
        later=later.number,
        days=days,
        distance_miles=miles,
        in_window=by_window and not sold,
        decided_by=SALE if sold and by_window else window.decided_by(days, miles),
        reasons=reasons(earlier, later),
        window_used=used,
        root=chain[0],
        judgement=decided,
        chain=chain,
        odometer_source=_source(earlier, later),
        in_chain=earlier.number in chains.chain_of(later.number)[:-1],
        after_sale=sold,
    )


def _apart(earlier: JobFacts, later: JobFacts) -> tuple[int, float | None]:
    assert earlier.handed_over_on is not None
    days = (later.opened_on - earlier.handed_over_on).days
    return days, miles_between(earlier.odometer_out, later.odometer_in, days)


def _source(earlier: JobFacts, later: JobFacts) -> ReadingSource:
    """Return how the odometer came that nobody read; the later one's where both were not read."""
    if later.odometer_in is None and later.odometer_source != "read":
        return later.odometer_source
    return earlier.odometer_source if earlier.odometer_out is None else "read"


def _handed_over(jobs: Iterable[JobFacts]) -> list[JobFacts]:
    return sorted((j for j in jobs if j.handed_over_on is not None), key=_by_hand_over)


def _by_hand_over(job: JobFacts) -> tuple[date, str]:
    return (job.handed_over_on or date.min, job.number)


def chains_of(judged: Judged, jobs: Iterable[JobFacts], causes: Causes = _NOT_SAID) -> Chains:
    """Return the chains of what was judged, by the hand-over of the earlier jobs."""
    order = {job.number: _by_hand_over(job) for job in jobs} if judged else {}
    links = sorted(judged.items(), key=lambda link: order.get(link[0][0], (date.min, link[0][0])))
    return Chains(ReturnJudged(*pair, said, causes.get(pair)) for pair, said in links)


def _judged_before(judged: Judged, jobs: Iterable[JobFacts]) -> dict[str, list[JobFacts]]:
    by_number = {job.number: job for job in jobs} if judged else {}
    before: dict[str, list[JobFacts]] = {}
    for earlier, later in judged:
        if earlier in by_number:
            before.setdefault(later, []).append(by_number[earlier])
    return before


def _reach(jobs: Iterable[JobFacts], window: Window, long_window: Window) -> int | None:
    """Return how many days back any window can reach; None where time alone may never end one."""
    windows = {window, long_window} | {job.window for job in jobs if job.window is not None}
    if any(one.may_stay_open for one in windows):
        return None
    return max(one.days for one in windows)


def _close_pairs(
    group: Sequence[JobFacts],
    reach: int | None,
    judged_before: Mapping[str, Sequence[JobFacts]],
) -> Iterator[tuple[JobFacts, JobFacts]]:
    """Yield the pairs of one vehicle whose hand-over is near enough, and those judged."""
    done = _handed_over(group)
    handed = [job.handed_over_on.toordinal() for job in done if job.handed_over_on is not None]
    for later in group:
        day = later.opened_on.toordinal()
        end = bisect_right(handed, day)
        start = 0 if reach is None else bisect_left(handed, day - reach)
        if judged_before:
            far = (*done[:start], *done[end:])
            for earlier in judged_before.get(later.number, ()):
                if earlier in far:
                    yield earlier, later
        for earlier in done[start:end]:
            yield earlier, later
