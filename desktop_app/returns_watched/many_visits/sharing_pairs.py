"""Pairs of jobs of one vehicle that share something, near enough in time: sorted, not joined."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY, VisitColumns

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int32]
    Keys: TypeAlias = NDArray[np.int64]
    #: places of earlier and of later jobs, of one length
    PairsOf: TypeAlias = tuple[Whole, Whole]

_AT_ONCE = 500_000  # pairs that are spread out in memory together


def sharing_pairs(jobs: VisitColumns, last_day: Whole) -> Iterator[PairsOf]:
    """Yield pairs of jobs of one vehicle that share a trait, or whose customer says "the same".

    The later one is of a later visit, not before the hand-over of the earlier one and not after the
    earlier one's `last_day` (n,). A pair is yielded once for each thing it shares.
    """
    yield from _pairs(jobs, jobs.trait_job, jobs.trait, last_day)
    import numpy as np

    heard = np.flatnonzero(jobs.says_same)
    if len(heard):
        among = np.zeros(int(jobs.vehicle.max()) + 1, dtype=bool)
        among[jobs.vehicle[heard]] = True
        rows = np.flatnonzero(among[jobs.vehicle]).astype(np.int32)
        for earlier, later in _pairs(jobs, rows, np.zeros_like(rows), last_day):
            said = jobs.says_same[later]
            yield earlier[said], later[said]


def _pairs(jobs: VisitColumns, of: Whole, group: Whole, last_day: Whole) -> Iterator[PairsOf]:
    """Yield pairs within the same vehicle and group, from rows (m,) that name a job and a group.

    Vehicle, group, day and job are packed into one whole number each, which sorts many times
    faster than their order could be worked out; where a row's later jobs begin and end is then two
    look-ups in what is sorted.
    """
    import numpy as np

    if not len(of):
        return
    first = int(jobs.opened.min()) - 1
    days = max(int(jobs.opened.max()), int(jobs.handed_over.max())) - first + 2
    bits = (days.bit_length(), (jobs.jobs - 1).bit_length())
    keys = _grouped(jobs.vehicle[of], group, 63 - sum(bits))
    keys <<= bits[0]
    keys |= jobs.opened[of] - first
    keys <<= bits[1]
    keys |= of
    keys.sort()
    job = (keys & ((1 << bits[1]) - 1)).astype(np.int32)
    keys >>= bits[1]
    stretches = _reach(jobs, job, keys, first, bits[0], last_day)
    del keys
    yield from _spread(jobs, job, *stretches)


def _grouped(vehicle: Whole, group: Whole, room: int) -> Keys:
    """Return one number for each vehicle and group, that has room in so many bits."""
    import numpy as np

    width = int(group.max()).bit_length()
    keys: Keys = vehicle.astype(np.int64)
    keys <<= width
    keys |= group
    if int(vehicle.max()).bit_length() + width > room:
        keys = np.unique(keys, return_inverse=True)[1].astype(np.int64)
    return keys


def _reach(
    jobs: VisitColumns, job: Whole, keys: Keys, first: int, day_bits: int, last_day: Whole
) -> tuple[Whole, Whole, Whole]:
    """Return the rows that have later jobs, and where these begin and end in the sorted order."""
    import numpy as np

    mask = (1 << day_bits) - 1
    meets = keys[1:] ^ keys[:-1] <= mask
    same = np.zeros(len(keys), dtype=bool)
    same[:-1] = meets
    same[1:] |= meets
    same &= jobs.handed_over[job] != NO_DAY
    rows = np.flatnonzero(same).astype(np.int32)
    group = keys[rows] & ~np.int64(mask)
    left = np.clip(jobs.handed_over[job[rows]] - first, 0, mask)
    begin = np.searchsorted(keys, group + left, "left").astype(np.int32)
    last = np.clip(last_day[job[rows]] - first, 0, mask)
    end = np.searchsorted(keys, group + last, "right").astype(np.int32)
    some = end > begin
    return rows[some], begin[some], end[some]


def _spread(
    jobs: VisitColumns, job: Whole, rows: Whole, begin: Whole, end: Whole
) -> Iterator[PairsOf]:
    """Yield each row with each of its later ones, a stretch of rows at a time."""
    import numpy as np

    many = (end - begin).astype(np.int64)
    upto = np.cumsum(many)
    start = 0
    while start < len(rows):
        before = int(upto[start - 1]) if start else 0
        stop = max(int(np.searchsorted(upto, before + _AT_ONCE, "right")), start + 1)
        each = many[start:stop]
        ends = np.cumsum(each)
        later = np.arange(int(ends[-1])) + np.repeat(begin[start:stop] - (ends - each), each)
        pairs = np.repeat(job[rows[start:stop]], each), job[later]
        again = jobs.later_visits(*pairs)
        yield pairs[0][again], pairs[1][again]
        start = stop
