"""What a group's work lets expect by the same work done outside the group."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Numbers = NDArray[np.float64]
    Counts = NDArray[np.int64]
    Marks = NDArray[np.bool_]

_MOST_BINS = 1_000_000
NOWHERE = -1  # a job of which no wider kind of work is known


@dataclass(frozen=True, slots=True)
class Elsewhere:
    """By group, (g,): its jobs that others did alike, and what came back of those of the others.

    `alike` are the jobs whose own kind of work enough others did, `compared` those and the jobs
    that are held against their system; `back` came back of the compared. `expected` would have, if
    they had come back as often as those of the others. `mean` is the same with half a comeback more
    and half a quiet job more among the others, so that nothing seen there is not taken for
    impossible, and `worth` how many jobs of the others it rests on.
    """

    alike: Counts
    compared: Counts
    back: Numbers
    expected: Numbers
    mean: Numbers
    worth: Numbers


def elsewhere(
    job: Counts, group: Counts, groups: int, kinds: tuple[Counts, Counts], back: Marks, fewest: int
) -> Elsewhere:
    """Hold the jobs of each group against the jobs outside it that are the same work.

    `job` and `group` (m,) list each job with each of its groups, once; `kinds` number the work of
    all jobs (n,): its own kind, and the system that stands for it where fewer than `fewest` others
    did that kind (NOWHERE for none). Below `fewest` in the system too, a job is compared with
    nobody. Indirect standardisation, N. E. Breslow and N. E. Day, Statistical Methods in Cancer
    Research II, IARC 1987, chapter 2, with all others as the standard. How sure the others' rate
    is enters as the variance of a beta-binomial count (half a comeback: Jeffreys' prior, H.
    Jeffreys, Theory of Probability, 1961).
    """
    import numpy as np

    own, wide = (_outside(job, group, kind, back) for kind in kinds)
    alike = own.many >= fewest
    usable = (wide.many >= fewest) & (kinds[1][job] != NOWHERE)
    compared = alike | usable
    many, came = (np.where(alike, a, b) for a, b in zip(own.counts, wide.counts, strict=True))
    pool = np.where(alike, own.pool, wide.pool + own.pool.max(initial=0) + 1)
    many, came, of = many[compared], came[compared], group[compared]
    share = (came + 0.5) / (many + 1)

    def summed(weights: NDArray[np.generic]) -> Numbers:
        return np.bincount(of, weights.astype(np.float64), groups).astype(np.float64)

    by_luck = summed(share * (1 - share))
    doubt = _doubt(pool[compared], of, share, many, groups)
    counts = np.bincount(of, minlength=groups)
    with np.errstate(divide="ignore", invalid="ignore"):
        worth = np.where(doubt > 0, (counts - 1) * by_luck / doubt - 1, np.inf)
    return Elsewhere(
        alike=np.bincount(group[alike], minlength=groups),
        compared=counts,
        back=summed(back[job[compared]]),
        expected=summed(came / np.maximum(many, 1)),
        mean=summed(share),
        worth=np.where(worth > 1, worth, 1.0),
    )


@dataclass(frozen=True, slots=True)
class _Outside:
    """Of each job in a group (m,): how many did its work outside, and how many of those came back.

    `pool` is equal for the jobs of one group and one kind of work.
    """

    many: Counts
    came: Counts
    pool: Counts

    @property
    def counts(self) -> tuple[Counts, Counts]:
        return self.many, self.came


def _outside(job: Counts, group: Counts, kind: Counts, back: Marks) -> _Outside:
    import numpy as np

    code = kind - NOWHERE
    once = np.zeros(len(code), dtype=bool)
    once[job] = True
    every = np.bincount(code[once], minlength=int(code.max(initial=0)) + 1)
    came = np.bincount(code[once], back[once], every.size).astype(np.int64)
    pool = group * every.size + code[job]
    if pool.max(initial=0) > _MOST_BINS:  # else counting in bins is quicker than sorting
        pool = np.unique(pool, return_inverse=True)[1]
    inside = np.bincount(pool)
    came_inside = np.bincount(pool, back[job], inside.size).astype(np.int64)
    own = code[job]
    return _Outside(every[own] - inside[pool], came[own] - came_inside[pool], pool)


def _doubt(pool: Counts, of: Counts, share: Numbers, many: Counts, groups: int) -> Numbers:
    """Return by group the variance that the others' rates leave in what is expected."""
    import numpy as np

    if not pool.size:
        return np.zeros(groups)
    jobs = np.bincount(pool)
    # A job's share of its pool's jobs squared: summed over the pool it is its size squared.
    doubt = jobs[pool] * (share * (1 - share) / (many + 1))
    return np.bincount(of, doubt, groups).astype(np.float64)
