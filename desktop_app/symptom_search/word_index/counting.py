"""What fixed it, counted by arrays: the commonest fixes of many jobs, and what became of them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import chain
from typing import TYPE_CHECKING, NamedTuple, overload

from desktop_app.symptom_search.word_index.arrays import SETTLED, STATES
from desktop_app.symptom_search.word_index.asked import Asked
from desktop_app.symptom_search.word_index.course import BACK, COUNTED
from desktop_app.symptom_search.word_index.entry import NOT_HANDED_OVER
from desktop_app.symptom_search.word_index.scoring import Scored

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.symptom_search.word_index.arrays import Arrays, Bytes, Flags, Ints

    Counts = NDArray[np.int64]


class JobsBehind(Sequence[int]):
    """The ids of the jobs behind a number, the newest first; picked out when first looked at."""

    def __init__(self, count: int, pick: Callable[[], Iterable[int]]) -> None:
        self._count, self._pick = count, pick
        self._ids: tuple[int, ...] | None = None

    def __len__(self) -> int:
        return self._count

    @overload
    def __getitem__(self, place: int) -> int: ...
    @overload
    def __getitem__(self, place: slice) -> tuple[int, ...]: ...
    def __getitem__(self, place: int | slice) -> int | tuple[int, ...]:
        return self._all()[place]

    def __iter__(self) -> Iterator[int]:
        return iter(self._all())

    def _all(self) -> tuple[int, ...]:
        if self._ids is None:
            self._ids = tuple(sorted(self._pick(), reverse=True))
        return self._ids


class FixCounted(NamedTuple):
    """One fix by its key, with the jobs behind each number; `newest` is the last job that had it.

    `settled_back` is how many of the settled ones came back.
    """

    key: int
    newest: int
    jobs: JobsBehind
    settled: JobsBehind
    back: JobsBehind
    settled_back: int


class Chosen(NamedTuple):
    """Some of the jobs of some arrays."""

    arrays: Arrays
    jobs: Flags


@dataclass(eq=False, repr=False)
class _Mended:
    """The pairs of job and fix of the chosen jobs of one set of arrays, the jobs rising."""

    arrays: Arrays
    states: Bytes
    jobs: Ints
    fixes: Ints

    @cached_property
    def counts(self) -> Counts:
        """How many jobs each fix mended, a row for each fix and a column for each state."""
        import numpy as np

        cells = len(self.arrays.fix_keys) * STATES
        counts = np.bincount(self.fixes * np.int64(STATES) + self.states, minlength=cells)
        return counts.reshape(-1, STATES)

    def newest(self) -> Counts:
        """Return the newest job of each fix."""
        import numpy as np

        last = np.zeros(len(self.arrays.fix_keys), np.int32)
        np.maximum.at(last, self.fixes, self.jobs)
        ids = self.arrays.ids[last] if self.arrays.jobs else last
        return ids.astype(np.int64)

    def place(self, key: int) -> int | None:
        """Return the place of a fix among the keys; None where nobody was mended by it."""
        import numpy as np

        keys = self.arrays.fix_keys
        place = int(np.searchsorted(keys, key))
        return place if place < len(keys) and keys[place] == key else None

    def ids(self, key: int, with_state: int) -> list[int]:
        """Return the jobs that one fix mended and that have (besides others) this state."""
        place = self.place(key)
        those = (self.fixes == place) & (self.states & with_state == with_state)
        ids: list[int] = self.arrays.ids[self.jobs[those]].tolist() if place is not None else []
        return ids


def about_the_same(asked: Asked, parts: Sequence[Scored]) -> list[Chosen]:
    """Choose the jobs of the fault that was asked for, to count what fixed it.

    Those of the same symptom or code; where there are none, those with every word, else those of
    the car or number named, else those of the symptom guessed, else those with a part kind named.
    """
    words_known = bool(asked.words) and all(word.jobs for word in asked.words)
    for those in (
        [scored.fault for scored in parts],
        [scored.all_words for scored in parts] if words_known else [],
        [scored.named for scored in parts],
        [scored.guessed for scored in parts],
        [scored.parts for scored in parts],
    ):
        if any(jobs.any() for jobs in those):
            return [Chosen(one.arrays, jobs) for one, jobs in zip(parts, those, strict=True)]
    return []


def commonest_fixes(chosen: Sequence[Chosen], today: int, most: int = 12) -> list[FixCounted]:
    """Count the fixes of the chosen jobs, over several sets of arrays that share no job.

    The commonest come first; of equally common ones that whose last job is the newest.
    """
    parts = [_mended(one, today) for one in chosen]
    return [_counted(parts, newest, key) for newest, key in _commonest(parts, most)]


def count_repairs(chosen: Sequence[Chosen]) -> int:
    """Return how many of the chosen jobs are repairs that were handed over."""
    return sum(
        int(
            (
                one.jobs & (one.arrays.left != NOT_HANDED_OVER) & (one.arrays.course & COUNTED > 0)
            ).sum()
        )
        for one in chosen
    )


def _mended(chosen: Chosen, today: int) -> _Mended:
    import numpy as np

    arrays, fates = chosen.arrays, chosen.arrays.fates(today)
    pairs = np.flatnonzero(chosen.jobs[arrays.fixed_job])
    jobs = arrays.fixed_job[pairs]
    return _Mended(arrays, fates.state[jobs], jobs, arrays.fixed_by[pairs])


def _commonest(parts: Sequence[_Mended], most: int) -> list[tuple[int, int]]:
    """Return the newest job and the key of the commonest fixes over all parts, in their order."""
    import numpy as np

    keys, counts, newest = (np.empty(0, np.int64) for _ in range(3))
    for part in parts:
        others, last = part.arrays.fix_keys, part.newest()
        more = part.counts.sum(axis=1)
        if not len(keys):
            keys, counts, newest = others, more, last
            continue
        at = np.searchsorted(keys, others)
        at[at == len(keys)] = 0
        same = keys[at] == others
        counts[at[same]] += more[same]
        newest[at[same]] = np.maximum(newest[at[same]], last[same])
        keys = np.concatenate((keys, others[~same]))
        counts = np.concatenate((counts, more[~same]))
        newest = np.concatenate((newest, last[~same]))
    order = np.where(counts > 0, (counts << 32) | newest, 0)
    if len(order) > most:
        order[order < np.partition(order, len(order) - most)[len(order) - most]] = 0
    first = np.flatnonzero(order)
    first = first[np.lexsort((keys[first], -order[first]))][:most]
    return list(zip(newest[first].tolist(), keys[first].tolist(), strict=True))


def _counted(parts: Sequence[_Mended], newest: int, key: int) -> FixCounted:
    rows = [part.counts[place] for part in parts if (place := part.place(key)) is not None]

    def behind(with_state: int) -> JobsBehind:
        states = [state for state in range(STATES) if state & with_state == with_state]
        count = sum(int(row[state]) for row in rows for state in states)
        return JobsBehind(
            count, lambda: chain.from_iterable(part.ids(key, with_state) for part in parts)
        )

    return FixCounted(
        key=key,
        newest=newest,
        jobs=behind(0),
        settled=behind(SETTLED),
        back=behind(BACK),
        settled_back=len(behind(SETTLED | BACK)),
    )
