"""Comeback rates of groups of jobs, each with its doubt and with what its work lets expect."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal, cast

from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.expected import (
    SeenAgainstExpected,
    expected_shares,
    seen_against_expected,
)
from desktop_app.returns_watched.honest_numbers.many_compared import ALARM, adjusted
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.returns_watched.honest_numbers.shrunken import (
    Shrunken,
    shrunken,
    spread_of_groups,
)

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

By = Literal["technician", "supplier", "part-kind", "system", "symptom"]
NOT_SAID = "not said"
TOO_FEW = "too few jobs to tell"
# From low to high end; common practice, no source. None of 20 jobs is just narrow enough.
WIDEST_INTERVAL = 0.20


@dataclass(frozen=True, slots=True)
class GroupRate:
    """One group: `comebacks` are those of its `settled` jobs, and `rate` their share.

    `low` to `high` is the rate's Wilson interval of 95 %. `expected` is what the settled jobs
    would have had if their work came back as often as all such work here. Figures are None where
    nothing is settled; `against` and `drawn_in` also where there is nothing to compare with.
    """

    name: str
    jobs: int
    settled: int
    still_open: int
    waiting: int
    comebacks: int
    expected: float | None = None
    low: float | None = None
    high: float | None = None
    against: SeenAgainstExpected | None = None
    drawn_in: Shrunken | None = None
    stands_out: bool = False

    @property
    def rate(self) -> float | None:
        """The share of the settled jobs that came back."""
        return self.comebacks / self.settled if self.settled else None

    @property
    def note(self) -> str | None:
        """That the jobs are too few, where the interval is wider than WIDEST_INTERVAL."""
        if self.low is None or self.high is None or self.high - self.low > WIDEST_INTERVAL:
            return TOO_FEW
        return None

    def as_json(self) -> dict[str, object]:
        """Return the fields of the command contract."""
        return {
            "name": self.name,
            "jobs": self.jobs,
            "settled": self.settled,
            "open": self.still_open,
            "waiting": self.waiting,
            "comebacks": self.comebacks,
            "rate": self.rate,
            "low": self.low,
            "high": self.high,
            "expected": self.expected,
            "observed_over_expected": None if self.against is None else self.against.ratio,
            "note": self.note,
        }


def group_rates(jobs: CountedJobs, by: By) -> tuple[GroupRate, ...]:
    """Return the rates of the groups that the jobs name, the highest low end first.

    Groups too few to tell come last, by name: they have no rank. The mix of work is part kinds
    and system together; what the groups are made by is left out of it, because a kind of part
    compared with itself always has what is expected.
    """
    import numpy as np

    settled = jobs.settled
    expected = np.zeros(len(jobs.systems))
    if settled.any():
        at = np.flatnonzero(settled)
        work = [_kind_of_work(jobs, int(i), by) for i in at]
        expected[at] = expected_shares(work, jobs.came_back[at])
    places: dict[str, int] = {}
    job, group = [], []
    for number, names in enumerate(jobs.groups):
        for name in names:
            job.append(number)
            group.append(places.setdefault(name, len(places)))
    of, into = np.array(job, dtype=np.int64), np.array(group, dtype=np.int64)

    def summed(values: NDArray[np.generic]) -> list[float]:
        return cast(list[float], np.bincount(into, values[of], len(places)).tolist())

    columns = (settled | True, settled, jobs.still_open, jobs.waiting, settled & jobs.came_back)
    counts = [[int(count) for count in summed(column)] for column in columns]
    found = [_group_rate(*one) for one in zip(places, *counts, summed(expected), strict=True)]
    return tuple(sorted(_compared(found), key=_place))


def _kind_of_work(jobs: CountedJobs, job: int, by: By) -> object:
    if by == "system":
        return jobs.part_kinds[job]
    if by == "part-kind":
        return jobs.systems[job]
    return jobs.part_kinds[job], jobs.systems[job]


def _group_rate(
    name: str, jobs: int, settled: int, still_open: int, waiting: int, back: int, expected: float
) -> GroupRate:
    if not settled:
        return GroupRate(name, jobs, settled, still_open, waiting, back)
    low, high = wilson(back, settled)
    against = seen_against_expected(back, expected)
    return GroupRate(name, jobs, settled, still_open, waiting, back, expected, low, high, against)


def _compared(groups: list[GroupRate]) -> list[GroupRate]:
    """Draw small groups in, and mark those that stand out though there are several."""
    from dataclasses import replace

    spread = spread_of_groups([one.comebacks for one in groups], [one.settled for one in groups])
    tested = [one for one in groups if one.against is not None]
    levels = dict(
        zip(
            (one.name for one in tested),
            adjusted([one.against.p for one in tested if one.against is not None]),
            strict=True,
        )
    )
    return [
        replace(
            one,
            drawn_in=shrunken(one.comebacks, one.settled, spread) if spread else None,
            stands_out=levels.get(one.name, 1.0) <= ALARM,
        )
        for one in groups
    ]


def _place(group: GroupRate) -> tuple[bool, float, str]:
    few = group.note is not None
    return few, 0.0 if few or group.low is None else -group.low, group.name.casefold()
