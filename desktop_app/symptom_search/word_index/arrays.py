"""The arrays of an index: for each term the jobs that have it, for each job what became of it."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, fields
from functools import cached_property
from typing import TYPE_CHECKING, Any, NamedTuple

from desktop_app.symptom_search.points import CAME_BACK, SEEN_FINE, UNIT
from desktop_app.symptom_search.word_index.course import (
    BACK,
    COUNTED,
    LEFT_OUT,
    LOST,
    TROUBLE,
)
from desktop_app.symptom_search.word_index.entry import NOT_HANDED_OVER

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ints = NDArray[np.int32]
    Keys = NDArray[np.int64]
    Bytes = NDArray[np.uint8]
    Flags = NDArray[np.bool_]

_LAST = "\U0010ffff"
_ASCII, _FOLLOWS = 0x80, 0xC0  # UTF-8: the bytes after a letter's first begin with the bits 10
_REMEMBERED = 10_000
SETTLED, STATES = 2, 4  # beside BACK, which is 1


class Fates(NamedTuple):
    """What became of each job by a day: SETTLED, BACK, both together or neither; its points."""

    state: Bytes
    points: Ints


@dataclass(eq=False, repr=False)
class Arrays:
    """Jobs 0 to n - 1 by their ids, and terms in the order of their UTF-8 bytes.

    Term t is `letters[letters_from[t]:letters_from[t + 1]]`; the same way `jobs_from` cuts
    `having` (job places, rising within a term) and `impacts`. `ids` rise; `came`, `left`, `settles`
    and `seen` are days, `course` the bits of course.py. Pair i says that job `fixed_job[i]` was
    mended by `fix_keys[fixed_by[i]]`, keys and jobs rising. `lengths` are the mean words of each
    field.
    """

    ids: Ints
    came: Ints
    left: Ints
    settles: Ints
    course: Bytes
    seen: Ints
    vehicle: Ints
    letters: Bytes
    letters_from: Keys
    jobs_from: Keys
    having: Ints
    impacts: Bytes
    fixed_job: Ints
    fixed_by: Ints
    fix_keys: Keys
    lengths: NDArray[np.float64]

    @property
    def jobs(self) -> int:
        """How many jobs the arrays hold."""
        return len(self.ids)

    @cached_property
    def terms(self) -> Terms:
        """The terms, to be looked through."""
        return Terms(self)

    def fates(self, today: int) -> Fates:
        """Return what has become of the jobs by a day, worked out once a day."""
        fates = self._fates.get(today)
        if fates is None:
            self._fates.clear()
            fates = self._fates[today] = _fates(self, today)
        return fates

    @cached_property
    def _fates(self) -> dict[int, Fates]:
        return {}

    def named(self) -> Mapping[str, NDArray[Any]]:
        """Return all arrays by their names."""
        return {field.name: getattr(self, field.name) for field in fields(self)}

    def span(self, first: int, end: int) -> slice:
        """Return the part of `having` and `impacts` that belongs to terms first to end - 1."""
        return slice(int(self.jobs_from[first]), int(self.jobs_from[end]))

    def span_of(self, term: str) -> slice:
        """Return the part that belongs to one term, empty where no job has it."""
        place = self.terms.place(term)
        return slice(0, 0) if place is None else self.span(place, place + 1)

    def jobs_with(self, term: str) -> Ints:
        """Return the places of the jobs that have a term."""
        return self.having[self.span_of(term)]

    def having_at(self, term: str, places: NDArray[np.intp]) -> list[bool]:
        """Tell of each of these jobs whether it has a term."""
        jobs = self.jobs_with(term)
        if not len(jobs):
            return [False] * len(places)
        at = jobs.searchsorted(places).clip(max=len(jobs) - 1)
        having: list[bool] = (jobs[at] == places).tolist()
        return having


def _fates(arrays: Arrays, today: int) -> Fates:
    import numpy as np

    course = arrays.course
    back = course & BACK > 0
    is_over = (arrays.left != NOT_HANDED_OVER) & (arrays.settles < today)
    left_out = (course & LEFT_OUT > 0) & ~back
    settled = is_over & (course & COUNTED > 0) & ~left_out
    stayed = settled & (course & (TROUBLE | LOST) == 0)
    points = np.where(stayed, np.int32(SEEN_FINE * UNIT), np.int32(0))
    points[back] = CAME_BACK * UNIT
    return Fates((settled * SETTLED + back * BACK).astype(np.uint8), points)


class Part(NamedTuple):
    """Some of the past jobs: all in the arrays, or those of them that are `alive`."""

    arrays: Arrays
    alive: Flags | None = None


class Terms:
    """The terms of an index, found by halving; nothing is read but what is looked at."""

    def __init__(self, arrays: Arrays) -> None:
        self._letters, self._cuts = arrays.letters, arrays.letters_from
        self._looked_up: dict[str, int | None] = {}

    def __len__(self) -> int:
        return len(self._cuts) - 1

    def __getitem__(self, place: int) -> bytes:
        return self._letters[self._cuts[place] : self._cuts[place + 1]].tobytes()

    def place(self, term: str) -> int | None:
        """Return the place of a term, or None."""
        if term not in self._looked_up:
            if len(self._looked_up) >= _REMEMBERED:
                self._looked_up.clear()
            wanted = term.encode()
            place = bisect_left(self, wanted)
            known = place < len(self) and self[place] == wanted
            self._looked_up[term] = place if known else None
        return self._looked_up.get(term)

    def beginning(self, letters: str) -> tuple[int, int]:
        """Return the places (first, end) of the terms that begin so."""
        first = bisect_left(self, letters.encode())
        return first, bisect_left(self, (letters + _LAST).encode(), first)

    def maybe_near(
        self, first: int, end: int, word: str, lengths: range, missing: int
    ) -> Iterator[int]:
        """Yield the places between two whose terms may be near a word.

        Those have as many letters as the range says, and at most so many that the word lacks.
        """
        import numpy as np

        if first >= end:
            return
        cuts = self._cuts[first : end + 1]
        said = self._letters[cuts[0] : cuts[-1]]
        starts = cuts[:-1] - cuts[0]
        lacks = np.arange(256) < _ASCII  # a letter of several bytes is left to a closer look
        lacks[list(word.encode())] = False
        lacking = np.add.reduceat(lacks[said], starts, dtype=np.int32)
        letters = np.add.reduceat(said & _FOLLOWS != _ASCII, starts, dtype=np.int32)
        fits = (letters >= lengths.start) & (letters < lengths.stop) & (lacking <= missing)
        yield from (first + int(place) for place in fits.nonzero()[0])
