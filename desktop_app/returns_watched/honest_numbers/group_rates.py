"""Comeback rates of groups of jobs, each with its doubt and with what its work lets expect."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal, cast

from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.expected import (
    SeenAgainstExpected,
    expected_shares,
    seen_against_expected,
)
from desktop_app.returns_watched.honest_numbers.funnel import chance_of_so_many, luck_gives
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

By = Literal["technician", "supplier", "part-kind", "part-origin", "system", "symptom", "verdict"]
NOT_SAID = "not said"
TOO_FEW = "too few jobs to tell"
NOT_OVER = "no window is over yet"
MORE, FEWER = "more than luck explains", "fewer than luck explains"
MAY_BE_LUCK = "unusual, yet may be luck"
NOTHING_ALIKE = "nothing alike to compare with"
WITHIN = "within what luck gives"
# Below so many settled jobs nothing is ranked; common practice, no source.
FEW_JOBS = 20
# From low to high end; common practice, no source.
WIDEST_INTERVAL = 0.20


@dataclass(frozen=True, slots=True)
class GroupRate:
    """One group: `comebacks` are those of its `settled` jobs, and `rate` their share.

    Its jobs are settled, open, waiting or out of sight (`lost_sight`), each of them one of these.

    `low` to `high` is the rate's Wilson interval of 95 %. `expected` is what the settled jobs
    would have had if their work came back as often as all such work here; `luck` the fewest and
    most comebacks that luck alone makes of that, 19 times of 20. `alike` are the settled jobs
    whose work was also done outside the group. Figures are None where nothing is settled;
    `against`, `luck` and `drawn_in` also where there is nothing to compare with. `stands_out`
    allows for the number of groups that are compared.
    """

    name: str
    jobs: int
    settled: int
    still_open: int
    waiting: int
    lost_sight: int
    comebacks: int
    expected: float | None = None
    low: float | None = None
    high: float | None = None
    against: SeenAgainstExpected | None = None
    luck: tuple[int, int] | None = None
    alike: int = 0
    drawn_in: Shrunken | None = None
    stands_out: bool = False

    @property
    def rate(self) -> float | None:
        """The share of the settled jobs that came back."""
        return self.comebacks / self.settled if self.settled else None

    @property
    def note(self) -> str | None:
        """That the jobs are too few: fewer than FEW_JOBS, or an interval over WIDEST_INTERVAL."""
        if self.low is None or self.high is None or self.high - self.low > WIDEST_INTERVAL:
            return TOO_FEW
        return TOO_FEW if self.settled < FEW_JOBS else None

    @property
    def beyond_luck(self) -> bool:
        """True where the comebacks lie outside what luck gives, looked at alone."""
        return self.luck is not None and not self.luck[0] <= self.comebacks <= self.luck[1]

    @property
    def reading(self) -> str:
        """How the figures are to be read, in words; a few jobs can stand out and have no rate."""
        if not self.settled:
            return NOT_OVER
        if self.stands_out and self.expected is not None:
            return MORE if self.comebacks > self.expected else FEWER
        if self.note is not None:
            return TOO_FEW
        if 2 * self.alike < self.settled:
            return NOTHING_ALIKE
        return MAY_BE_LUCK if self.beyond_luck else WITHIN

    def as_json(self) -> dict[str, object]:
        """Return the fields of the command contract."""
        return {
            "name": self.name,
            "jobs": self.jobs,
            "settled": self.settled,
            "open": self.still_open,
            "waiting": self.waiting,
            "lost_sight": self.lost_sight,
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

    Groups too few to tell come last, by name: they have no rank, unless they stand out. The mix
    of work is part kinds and system together; what the groups are made by is left out of it,
    because a kind of part compared with itself always has what is expected.
    """
    import numpy as np

    settled = jobs.settled
    expected, work = np.zeros(len(jobs.systems)), np.zeros(len(jobs.systems), dtype=np.int64)
    if settled.any():
        at = np.flatnonzero(settled)
        work = _kinds_of_work(jobs, by)
        expected[at] = expected_shares(work[at].tolist(), jobs.came_back[at])
    places: dict[str, int] = {}
    of, into = _in_groups(jobs, places)

    def summed(values: NDArray[np.generic]) -> list[float]:
        return cast(list[float], np.bincount(into, values[of], len(places)).tolist())

    columns = (
        *(settled | True, settled, jobs.still_open, jobs.waiting, jobs.lost_sight),
        settled & jobs.came_back,
    )
    counts = [[int(count) for count in summed(column)] for column in columns]
    alike = _alike(of[settled[of]], into[settled[of]], work, len(places))
    rows = zip(places, *counts, summed(expected), alike, strict=True)
    return tuple(sorted(_compared([_group_rate(*one) for one in rows]), key=_place))


def _alike(
    job: NDArray[np.int64], group: NDArray[np.int64], work: NDArray[np.int64], groups: int
) -> list[int]:
    """Return how many jobs of each group did work that jobs outside the group did too.

    A group that alone does its work is compared with itself, and always has what is expected.
    """
    import numpy as np

    if not job.size:
        return [0] * groups
    everywhere = np.bincount(work[np.unique(job)])
    pairs, inside = np.unique(group * everywhere.size + work[job], return_counts=True)
    elsewhere = inside < everywhere[pairs % everywhere.size]
    counts = np.bincount(pairs // everywhere.size, inside * elsewhere, groups)
    found: list[int] = counts.astype(int).tolist()
    return found


def _kinds_of_work(jobs: CountedJobs, by: By) -> NDArray[np.int64]:
    """Return a number for each job's kind of work (n,): those alike have the same."""
    import numpy as np

    said: Sequence[object] = tuple(zip(jobs.part_kinds, jobs.systems, strict=True))
    if by in ("system", "part-kind"):
        said = jobs.part_kinds if by == "system" else jobs.systems
    places: dict[object, int] = {kind: place for place, kind in enumerate(dict.fromkeys(said))}
    return np.fromiter(map(places.__getitem__, said), np.int64, len(said))


def _in_groups(
    jobs: CountedJobs, places: dict[str, int]
) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Return every job with each of its groups, as places (m,), (m,); `places` is filled.

    Many jobs have the same names together, so that these are taken apart once.
    """
    import numpy as np

    together = dict.fromkeys(jobs.groups)
    alike = {names: place for place, names in enumerate(together)}
    which = np.fromiter(map(alike.__getitem__, jobs.groups), np.int64, len(jobs.groups))
    jobs_found = [np.empty(0, dtype=np.int64)]
    groups_found = [np.empty(0, dtype=np.int64)]
    most = max(map(len, together), default=0)
    for turn in range(most):
        group = [
            places.setdefault(names[turn], len(places)) if turn < len(names) else -1
            for names in together
        ]
        into = np.array(group, dtype=np.int64)[which]
        some = np.flatnonzero(into >= 0)
        jobs_found.append(some)
        groups_found.append(into[some])
    return np.concatenate(jobs_found), np.concatenate(groups_found)


def _group_rate(
    name: str,
    jobs: int,
    settled: int,
    still_open: int,
    waiting: int,
    lost: int,
    back: int,
    expected: float,
    alike: int,
) -> GroupRate:
    if not settled:
        return GroupRate(name, jobs, settled, still_open, waiting, lost, back)
    low, high = wilson(back, settled)
    rate = expected / settled
    luck = luck_gives(settled, rate) if 0 < rate < 1 else None
    against = seen_against_expected(back, expected)
    return GroupRate(
        *(name, jobs, settled, still_open, waiting, lost, back),
        *(expected, low, high, against, luck, alike),
    )


def _compared(groups: list[GroupRate]) -> list[GroupRate]:
    """Draw small groups in, and mark those that stand out though there are several."""
    from dataclasses import replace

    spread = spread_of_groups([one.comebacks for one in groups], [one.settled for one in groups])
    tested = [one for one in groups if one.luck is not None and one.expected is not None]
    levels = adjusted(
        [
            chance_of_so_many(one.comebacks, one.settled, (one.expected or 0) / one.settled)
            for one in tested
        ]
    )
    out = {one.name for one, level in zip(tested, levels, strict=True) if level <= ALARM}
    return [
        replace(
            one,
            drawn_in=shrunken(one.comebacks, one.settled, spread)
            if spread and one.settled
            else None,
            stands_out=one.beyond_luck and one.name in out,
        )
        for one in groups
    ]


def compared_at_once(groups: Sequence[GroupRate]) -> int:
    """Return how many of the groups have something that they are compared with."""
    return sum(group.luck is not None for group in groups)


def _place(group: GroupRate) -> tuple[int, float, str]:
    few = group.note is not None
    rank = 0 if group.stands_out else 2 if few else 1
    return rank, 0.0 if few or group.low is None else -group.low, group.name.casefold()
