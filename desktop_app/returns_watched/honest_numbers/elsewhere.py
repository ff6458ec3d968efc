"""What a group's work lets expect by the same work done outside the group."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.returns_watched.honest_numbers.shrunken import spread_of_groups

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Numbers = NDArray[np.float64]
    Counts = NDArray[np.int64]
    Marks = NDArray[np.bool_]

_MOST_BINS = 1_000_000
NOWHERE = -1  # a job of which the kind of work is not known
LIKE_JOBS = 3  # others of its kind or system make a job one that can be held against them
WIDER_WORTH = 20.0  # jobs: the most that the wider work counts for beside too few alike
# Both: common practice, no source.


@dataclass(frozen=True, slots=True)
class Elsewhere:
    """By group, (g,): what its jobs would have, if they came back as often as those of the others.

    `alike` are the jobs whose own kind of work enough others did; in `by_system` the other jobs of
    their system weigh too, and in the rest all other work. `near` are those of whose kind or
    system LIKE_JOBS others are. `others` are all jobs outside. `mean` is `expected` with half a
    comeback more and half a quiet job more among the others, so that nothing seen there is not
    taken for impossible, and `worth` how many jobs of the others it rests on.
    """

    alike: Counts
    by_system: Counts
    near: Counts
    others: Counts
    expected: Numbers
    mean: Numbers
    worth: Numbers


def elsewhere(
    job: Counts, group: Counts, groups: int, kinds: tuple[Counts, Counts], back: Marks, fewest: int
) -> Elsewhere:
    """Hold the jobs of each group against the jobs outside it that are the same work.

    `job` and `group` (m,) list each job with each of its groups, once; `kinds` number the work of
    all jobs (n,): its own kind, and its system, NOWHERE where it is not said. Where fewer than
    `fewest` others did that kind, their comebacks count beside some jobs that come back as those
    of the system do, and where these are too few, as all others: WIDER_WORTH jobs, or fewer where
    the kinds of work are seen to differ more (C. N. Morris, J. Am. Stat. Assoc. 78 (1983) 47-55,
    recalled). Indirect standardisation, N. E. Breslow and N. E. Day, Statistical Methods in Cancer
    Research II, IARC 1987, chapter 2, with all others as the standard. How sure the others' rate
    is enters as the variance of a beta-binomial count (half a comeback: Jeffreys' prior,
    H. Jeffreys, Theory of Probability, 1961).
    """
    import numpy as np

    own, wide, every = (_outside(job, group, kind, back) for kind in (*kinds, kinds[0] * 0))
    known = kinds[1][job] != NOWHERE
    own, wide = own.only(kinds[0][job] != NOWHERE), wide.only(known)
    levels, beside = _Blended.of_all(every), _worth_of_wider(job, kinds[0], back)
    for outside in (wide, own) if known.any() else (own,):
        levels = levels.narrowed(outside, fewest, beside)

    def summed(weights: NDArray[np.generic]) -> Numbers:
        return np.bincount(group, weights.astype(np.float64), groups).astype(np.float64)

    counts = np.bincount(group, minlength=groups)
    doubt = summed(levels.doubt)
    with np.errstate(divide="ignore", invalid="ignore"):
        by_luck = summed(levels.mean * (1 - levels.mean))
        worth = np.where(doubt > 0, (counts - 1) * by_luck / doubt - 1, np.inf)
    alike = own.many >= fewest
    others = np.zeros(groups, dtype=np.int64)
    others[group] = every.many
    return Elsewhere(
        alike=np.bincount(group[alike], minlength=groups),
        by_system=np.bincount(group[~alike & (wide.many >= fewest)], minlength=groups),
        near=np.bincount(group[np.maximum(own.many, wide.many) >= LIKE_JOBS], minlength=groups),
        others=others,
        expected=summed(levels.rate),
        mean=summed(levels.mean),
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

    def only(self, known: Marks) -> _Outside:
        """Return the same with nobody outside where the kind of work is not known."""
        return _Outside(self.many * known, self.came * known, self.pool)


@dataclass(frozen=True, slots=True)
class _Blended:
    """Of each job in a group (m,): the others' `rate`, its `mean` with a prior, and their doubt.

    `doubt` is the job's part of the variance of the group's sum of means. `wider` are the levels
    that it rests on, each with its pools and the variance of its rate.
    """

    rate: Numbers
    mean: Numbers
    doubt: Numbers
    wider: tuple[tuple[Counts, Numbers, Numbers], ...]

    @classmethod
    def of_all(cls, every: _Outside) -> _Blended:
        """Return the rate of all other work."""
        rate, mean = every.came / _least_one(every.many), (every.came + 0.5) / (every.many + 1)
        return cls._made(rate, mean, ((every.pool, _ones(mean), _variance(mean, every.many)),))

    def narrowed(self, some: _Outside, fewest: int, worth: float) -> _Blended:
        """Return the rate of a narrower kind of work: its own, or few beside `worth` of this."""
        import numpy as np

        enough = some.many >= fewest
        beside = worth / (some.many + worth)
        weight = np.where(enough, 0.0, beside)
        own = (some.came / _least_one(some.many), (some.came + 0.5) / (some.many + 1))
        mixed = ((1 - beside) * own[0] + beside * wide for wide in (self.rate, self.mean))
        rate, mean = (np.where(enough, a, b) for a, b in zip(own, mixed, strict=True))
        sure = np.where(enough, some.many, some.many + worth)
        wider = tuple((pool, part * weight, doubt) for pool, part, doubt in self.wider)
        return self._made(rate, mean, (*wider, (some.pool, _ones(mean), _variance(mean, sure))))

    @classmethod
    def _made(
        cls, rate: Numbers, mean: Numbers, levels: tuple[tuple[Counts, Numbers, Numbers], ...]
    ) -> _Blended:
        import numpy as np

        doubt = np.zeros(len(mean))
        for pool, part, variance in levels:
            # What the jobs of a pool rest on together is as wrong for all of them.
            doubt += np.bincount(pool, part)[pool] * part * variance if len(pool) else 0.0
        return cls(rate, mean, doubt, levels)


def _worth_of_wider(job: Counts, kind: Counts, back: Marks) -> float:
    """Return how many jobs a wider kind of work counts for: fewer, the more the kinds differ."""
    import numpy as np

    once = np.unique(job)
    once = once[kind[once] != NOWHERE]
    done = np.bincount(kind[once])
    came = np.bincount(kind[once], back[once], done.size).astype(np.int64)
    spread = spread_of_groups(came.tolist(), done.tolist())
    return WIDER_WORTH if spread is None else min(WIDER_WORTH, spread.alpha + spread.beta)


def _least_one(many: Counts) -> Counts:
    import numpy as np

    return np.maximum(many, 1)


def _ones(like: Numbers) -> Numbers:
    import numpy as np

    return np.ones(len(like))


def _variance(mean: Numbers, many: Counts | Numbers) -> Numbers:
    variance: Numbers = mean * (1 - mean) / (many + 1)
    return variance


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
