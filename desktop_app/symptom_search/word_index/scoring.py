"""Scoring: the points of all jobs of an index at once, by the score that points.py states."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, NamedTuple

from desktop_app.symptom_search.points import (
    JOB_NUMBER,
    NAMED_CAR,
    NEAR_SYMPTOM,
    NEVER_CONDITION,
    RELATED_CODE,
    SAME_CODE,
    SAME_CONDITION,
    SAME_PART,
    SAME_SYMPTOM,
    UNIT,
    WHOLE_FIT,
)
from desktop_app.symptom_search.word_index import entry
from desktop_app.symptom_search.word_index.asked import Asked, AskedWord, Kept, Way

if TYPE_CHECKING:
    from desktop_app.symptom_search.word_index.arrays import Arrays, Bytes, Flags, Ints, Part


_MUCH_LESS = 8  # from so many times less on, only the better ones are looked at further


class Scored(NamedTuple):
    """The points of each job of some arrays before its fate counts, and for which what holds.

    `fault` are jobs of the same symptom or code, `all_words` those with every word, `named` those
    of a car or number named, `parts` those with a part kind named, `guessed` those of the symptom
    that was guessed; all within `found`.
    """

    arrays: Arrays
    points: Ints
    found: Flags
    fault: Flags
    all_words: Flags
    named: Flags
    parts: Flags
    guessed: Flags


class Best(NamedTuple):
    """One of the best jobs: its points, its id, its vehicle, and its place in its arrays."""

    points: int
    job: int
    vehicle: int
    arrays: Arrays
    place: int


def score(part: Part, asked: Asked) -> Scored:
    """Score all jobs; those that are not alive, or that the filters keep out, are not found."""
    import numpy as np

    arrays = part.arrays
    points = np.zeros(arrays.jobs, np.int32)
    fault = _add_facts(arrays, points, entry.SYMPTOM, asked.groups, SAME_SYMPTOM)
    near = with_any(arrays, entry.SYMPTOM, asked.near_groups)
    if asked.near_groups:
        _add_where(points, near & ~fault, NEAR_SYMPTOM)
    fault |= _add_facts(arrays, points, entry.CODE, asked.codes, SAME_CODE)
    if asked.related:
        _add_where(points, with_any(arrays, entry.CODE, asked.related), RELATED_CODE)
    parts = with_any(arrays, entry.PART, asked.parts)
    if asked.parts:
        _add_where(points, parts, SAME_PART)
    named = _add_named(arrays, points, asked)
    all_words = _add_words(arrays, points, asked.words)
    found = points > 0
    if part.alive is not None:
        found &= part.alive
    _keep(arrays, found, asked.kept)
    for condition in asked.conditions:
        for kind, worth in ((entry.HAPPENS, SAME_CONDITION), (entry.NEVER, NEVER_CONDITION)):
            jobs = arrays.jobs_with(entry.marked(kind, condition))
            points[jobs] += np.int32(worth * UNIT)
    guessed = with_any(arrays, entry.SYMPTOM, asked.guessed)
    held = (one & found for one in (fault, all_words, named, parts, guessed))
    return Scored(arrays, points, found, *held)


def best_of(parts: Sequence[Scored], today: int, most: int) -> list[Best]:
    """Return the best jobs, fates counted: the best first, among equals the newest."""
    chosen = [one for scored in parts for one in _best(scored, today, most)]
    return sorted(chosen, key=lambda one: (-one.points, -one.job))[:most]


def _best(scored: Scored, today: int, most: int) -> list[Best]:
    import numpy as np

    arrays = scored.arrays
    places = np.flatnonzero(scored.found)
    points = scored.points[places] + arrays.fates(today).points[places]
    if len(places) > most:
        least = _least_of_best(points, most)
        above = np.flatnonzero(points > least)
        equal = np.flatnonzero(points == least)[len(above) - most :] if most else above[:0]
        chosen = np.concatenate((above, equal))
        points, places = points[chosen], places[chosen]
    columns = (points, arrays.ids[places], arrays.vehicle[places], places)
    rows = zip(*(column.tolist() for column in columns), strict=True)
    return [Best(point, job, car, arrays, place) for point, job, car, place in rows]


def _least_of_best(points: Ints, most: int) -> int:
    """Return the points of the last of the best, by halving: equal points don't slow it down."""
    import numpy as np

    low, high = int(points.min()), int(points.max())
    while low < high:
        middle = (low + high + 1) // 2
        above = points >= middle
        count = np.count_nonzero(above)
        if count < most or not most:
            high = middle - 1
            continue
        low = middle
        if count * _MUCH_LESS < len(points):
            points = points[above]
    return low


def with_any(arrays: Arrays, kind: str, values: Iterable[str]) -> Flags:
    """Return which jobs have any of these facts."""
    import numpy as np

    those = np.zeros(arrays.jobs, np.bool_)
    for value in values:
        those[arrays.jobs_with(entry.marked(kind, value))] = True
    return those


def word_values(arrays: Arrays, word: AskedWord) -> Bytes:
    """Return what a word says of each job, in hundredths: its best way counts."""
    import numpy as np

    values = np.zeros(arrays.jobs, np.uint8)
    for way in word.ways:
        jobs, said = _way_values(arrays, way)
        if way.fit != WHOLE_FIT:
            said = _fitted(way.fit)[said]
        np.maximum.at(values, jobs, said)
    return values


def _way_values(arrays: Arrays, way: Way) -> tuple[Ints, Bytes]:
    import numpy as np

    if way.begins:
        span = arrays.span(*arrays.terms.beginning(way.terms[0]))
        return arrays.having[span], arrays.impacts[span]
    spans = [arrays.span_of(term) for term in way.terms]
    jobs, said = arrays.having[spans[0]], arrays.impacts[spans[0]]
    for span in spans[1:]:
        jobs, ours, others = np.intersect1d(
            jobs, arrays.having[span], assume_unique=True, return_indices=True
        )
        said = np.minimum(said[ours], arrays.impacts[span][others])
    return jobs, said


def _fitted(fit: int) -> Bytes:
    """Return what each impact is worth at a fit, both in hundredths."""
    import numpy as np

    return ((np.arange(256) * fit + 50) // 100).astype(np.uint8)


def _add_words(arrays: Arrays, points: Ints, words: Sequence[AskedWord]) -> Flags:
    import numpy as np

    all_words = np.full(arrays.jobs, bool(words))
    for word in words:
        values = word_values(arrays, word)
        points += np.multiply(values, np.int32(word.weight), dtype=np.int32)
        all_words &= values > 0
    return all_words


def _add_facts(arrays: Arrays, points: Ints, kind: str, values: Iterable[str], worth: int) -> Flags:
    """Add points for each of these facts; return which jobs have any."""
    import numpy as np

    any_of = np.zeros(arrays.jobs, np.bool_)
    for value in values:
        jobs = arrays.jobs_with(entry.marked(kind, value))
        points[jobs] += np.int32(worth * UNIT)
        any_of[jobs] = True
    return any_of


def _add_where(points: Ints, those: Flags, worth: int) -> None:
    import numpy as np

    points += np.multiply(those, np.int32(worth * UNIT), dtype=np.int32)


def _add_named(arrays: Arrays, points: Ints, asked: Asked) -> Flags:
    import numpy as np

    named = np.zeros(arrays.jobs, np.bool_)
    for vehicle in asked.vehicles:
        named |= arrays.vehicle == vehicle
    if asked.vehicles:
        _add_where(points, named, NAMED_CAR)
    if asked.numbered:
        numbered = np.isin(arrays.ids, asked.numbered)
        _add_where(points, numbered, JOB_NUMBER)
        _add_where(points, numbered & named, -NAMED_CAR)
        named |= numbered
    return named


def _keep(arrays: Arrays, found: Flags, kept: Kept) -> None:
    """Leave only what the filters keep."""
    import numpy as np

    for term in kept.terms:
        having = np.zeros(arrays.jobs, np.bool_)
        having[arrays.jobs_with(term)] = True
        found &= having
    if kept.since is not None:
        found &= arrays.came >= kept.since
    if kept.until is not None:
        found &= arrays.came <= kept.until
