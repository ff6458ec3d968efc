"""Writing an index: entries in, a few thousand at a time, the arrays of all of them out."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain
from typing import TYPE_CHECKING, NamedTuple

from desktop_app.symptom_search.word_index.arrays import Arrays
from desktop_app.symptom_search.word_index.entry import FIELDS, JobEntry
from desktop_app.symptom_search.word_index.porter import porter_stem
from desktop_app.symptom_search.word_index.weights import FIELD_WEIGHTS, K1, STEP, share_of_field

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.symptom_search.word_index.arrays import Bytes, Ints, Keys

    Floats = NDArray[np.float64]


MOST_AT_ONCE = 2**16
_COLUMNS = ("job", "came", "left", "settles", "course", "seen", "vehicle")


class _Numbers(dict[str, int]):
    """A number for each word; words of one stem have the same."""

    def __init__(self) -> None:
        super().__init__()
        self.terms: dict[str, int] = {}

    def __missing__(self, word: str) -> int:
        number = self[word] = self.of_term(porter_stem(word))
        return number

    def of_term(self, term: str) -> int:
        return self.terms.setdefault(term, len(self.terms))


def mean_lengths(entries: Sequence[JobEntry]) -> tuple[float, ...]:
    """Return the mean number of words in each field."""
    return tuple(
        sum(len(entry.texts[place].split()) for entry in entries) / max(1, len(entries))
        for place in range(len(FIELDS))
    )


class _Piece(NamedTuple):
    """What up to MOST_AT_ONCE jobs have: for each term so many of the jobs and impacts in turn."""

    first_job: int
    terms: Ints
    lengths: Keys
    jobs: NDArray[np.uint16]
    impacts: Bytes


class ArraysWriter:
    """Takes the entries of jobs with rising ids. `lengths` are the mean words of each field."""

    def __init__(self, lengths: Sequence[float]) -> None:
        self._lengths = tuple(lengths)
        self._numbers = _Numbers()
        self._pieces: list[_Piece] = []
        self._columns: list[Ints] = []  # a row of _COLUMNS for each job
        self._fixed: list[tuple[Ints, Keys]] = []
        self._jobs = 0

    def add(self, entries: Sequence[JobEntry]) -> None:
        """Take the entries of more jobs, MOST_AT_ONCE at most."""
        import numpy as np

        words, words_at, counts = _summed(*self._words_of(entries))
        said = np.rint(STEP * (K1 + 1) * counts / (K1 + counts)).clip(1).astype(np.uint8)
        facts, facts_at = self._facts_of(entries)
        terms, at = np.concatenate((words, facts)), np.concatenate((words_at, facts_at))
        impacts = np.concatenate((said, np.full(len(facts), STEP, np.uint8)))
        order = np.lexsort((at, terms))
        first = np.flatnonzero(np.diff(terms[order], prepend=-1))
        lengths = np.diff(first, append=len(terms))
        jobs, impacts = at[order].astype(np.uint16), impacts[order]
        self._pieces.append(_Piece(self._jobs, terms[order][first], lengths, jobs, impacts))
        rows = [[getattr(one, name) for name in _COLUMNS] for one in entries]
        self._columns.append(np.array(rows, np.int32).reshape(len(entries), len(_COLUMNS)))
        pairs = [(at, key) for at, one in enumerate(entries) for key in sorted(one.fixes)]
        fixed = np.array([at for at, _ in pairs], np.int32) + np.int32(self._jobs)
        self._fixed.append((fixed, np.array([key for _, key in pairs], np.int64)))
        self._jobs += len(entries)

    def _words_of(self, entries: Sequence[JobEntry]) -> tuple[Ints, Ints, Floats]:
        """Return a term, a job's place and a weight for each word that stands somewhere."""
        import numpy as np

        terms, at, counts = [], [], []
        for place, (weight, mean) in enumerate(zip(FIELD_WEIGHTS, self._lengths, strict=True)):
            split = [entry.texts[place].split() for entry in entries]
            lengths = np.fromiter(map(len, split), np.int64)
            numbers = map(self._numbers.__getitem__, chain.from_iterable(split))
            terms.append(np.fromiter(numbers, np.int32))
            at.append(np.repeat(np.arange(len(entries), dtype=np.int32), lengths))
            counts.append(np.repeat(weight * share_of_field(lengths, mean), lengths))
        return np.concatenate(terms), np.concatenate(at), np.concatenate(counts)

    def _facts_of(self, entries: Sequence[JobEntry]) -> tuple[Ints, Ints]:
        """Return a term and a job's place for each fact."""
        import numpy as np

        facts = map(self._numbers.of_term, chain.from_iterable(one.facts for one in entries))
        lengths = np.fromiter((len(one.facts) for one in entries), np.int64)
        at = np.repeat(np.arange(len(entries), dtype=np.int32), lengths)
        return np.fromiter(facts, np.int32), at

    def finish(self) -> Arrays:
        """Return the arrays of all that was taken; the writer is empty after that."""
        import numpy as np

        terms = sorted((term.encode(), number) for term, number in self._numbers.terms.items())
        rank = np.empty(len(terms), np.int64)
        rank[[number for _, number in terms]] = np.arange(len(terms))
        jobs_from, having, impacts = self._in_order(rank)
        letters = np.frombuffer(b"".join(term for term, _ in terms), np.uint8)
        letters_from = np.zeros(len(terms) + 1, np.int64)
        np.cumsum([len(term) for term, _ in terms], out=letters_from[1:])
        columns = np.concatenate([*self._columns, np.empty((0, len(_COLUMNS)), np.int32)]).T
        ids, came, left, settles, course, seen, vehicle = (column.copy() for column in columns)
        no_pairs = (np.empty(0, np.int32), np.empty(0, np.int64))
        fixed_job, keys = map(np.concatenate, zip(*self._fixed, no_pairs, strict=True))
        fix_keys, fixed_by = np.unique(keys, return_inverse=True)
        return Arrays(
            ids=ids,
            came=came,
            left=left,
            settles=settles,
            course=course.astype(np.uint8),
            seen=seen,
            vehicle=vehicle,
            letters=letters,
            letters_from=letters_from,
            jobs_from=jobs_from,
            having=having,
            impacts=impacts,
            fixed_job=fixed_job,
            fixed_by=fixed_by.astype(np.int32),
            fix_keys=fix_keys,
            lengths=np.array(self._lengths, np.float64),
        )

    def _in_order(self, rank: Keys) -> tuple[Keys, Ints, Bytes]:
        """Bring the pieces into the order of the terms; `rank` is each term number's place."""
        import numpy as np

        jobs_from = np.zeros(len(rank) + 1, np.int64)
        for piece in self._pieces:
            jobs_from[rank[piece.terms] + 1] += piece.lengths
        np.cumsum(jobs_from, out=jobs_from)
        having = np.empty(jobs_from[-1], np.int32)
        impacts = np.empty(jobs_from[-1], np.uint8)
        next_free = jobs_from[:-1].copy()
        while self._pieces:
            piece = self._pieces.pop(0)
            ranks, lengths = rank[piece.terms], piece.lengths
            first = np.cumsum(lengths) - lengths
            to = np.repeat(next_free[ranks] - first, lengths) + np.arange(len(piece.jobs))
            having[to] = piece.jobs.astype(np.int32) + np.int32(piece.first_job)
            impacts[to] = piece.impacts
            next_free[ranks] += lengths
        return jobs_from, having, impacts


def _summed(terms: Ints, at: Ints, counts: Floats) -> tuple[Ints, Ints, Floats]:
    """Add up what stands for the same term in the same job."""
    import numpy as np

    if not len(terms):
        return terms, at, counts
    order = np.lexsort((at, terms))
    terms, at = terms[order], at[order]
    first = np.flatnonzero(np.diff(terms, prepend=-1) | np.diff(at, prepend=-1))
    return terms[first], at[first], np.add.reduceat(counts[order], first)


def arrays_of(entries: Sequence[JobEntry], lengths: Sequence[float] | None = None) -> Arrays:
    """Return the arrays of a few jobs; without `lengths` the fields' mean lengths are their own."""
    writer = ArraysWriter(mean_lengths(entries) if lengths is None else lengths)
    writer.add(entries)
    return writer.finish()
