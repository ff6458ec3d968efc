"""Words of well-being: under which conditions somebody says that all is well."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence

from desktop_app.symptom_search.denials import BARRIERS, DENIALS
from desktop_app.symptom_search.told_words import stem

WELL = stem("fine")  # what well_said.py puts for every word of well-being


def _stems(words: str) -> frozenset[str]:
    return frozenset(map(stem, words.split()))


# They stand between a word of well-being and its condition and say nothing of their own.
_DOING = _stems(
    """run go start drive work feel behave perform handle sound look stay crank shift steer engine
    motor road day weather all absolutely perfectly completely totally generally usually mostly
    normally now always everything"""
)
_LEADING_UP = _DOING | _stems(
    """once after time again too long only whenever about around during through since
    enough up power pedal heat performance pressure provided properly both whether found seen
    noticed felt heard"""
)
# "No longer fine", "far from perfect", "hardly ever good": it is not well.
_UNLIKE = DENIALS | _stems("far less rarely hardly seldom none")
_WITH_UNLIKE = _DOING | _stems("longer any much too ever even exactly particularly very")
# "Fine otherwise" is told of what was not named.
_ELSEWHERE = _stems("otherwise else apart rest")


def unwell_denials(clause: Sequence[str]) -> frozenset[int]:
    """Return the places of denials that deny well-being alone: "not fine when damp"."""
    unlike = (_unlike_before(clause, at) for at, word in enumerate(clause) if word == WELL)
    return frozenset(place for place in unlike if place is not None)


def well_places(clause: Sequence[str], told: Iterable[Sequence[int]]) -> frozenset[int]:
    """Return the places of conditions under which all is well.

    `told` are the places of each condition in the clause. Where it could be either of two, both
    are returned: nothing is said rather than the wrong thing.
    """
    if WELL not in clause:
        return frozenset()
    of = {place: tuple(places) for places in told for place in places}
    well: set[int] = set()
    for at, word in enumerate(clause):
        if word == WELL and _unlike_before(clause, at) is None:
            well.update(_of_one(clause, at, of))
    return frozenset(well)


def _of_one(clause: Sequence[str], at: int, of: dict[int, tuple[int, ...]]) -> set[int]:
    """Return the places of the conditions that one word of well-being goes with."""
    before, claimed = _run(clause, at, of, -1, _DOING)
    after, followed = _run(clause, at, of, 1, _LEADING_UP)
    if after:
        if followed and before and not claimed:
            return _all(before)  # "cold fine hot misses"
        return _all(after) if claimed else _all(after + before)
    if clause[at + 1 : at + 2] and clause[at + 1] in _ELSEWHERE:
        return set()
    if claimed:  # "misses when damp runs fine" may be either, "stalls at idle fine driving" not
        return _all(before[:1]) if at + 1 == len(clause) else set()
    return _all(before)


def _run(
    clause: Sequence[str],
    at: int,
    of: dict[int, tuple[int, ...]],
    step: int,
    passed: Collection[str],
) -> tuple[list[tuple[int, ...]], bool]:
    """Return the conditions on one side of a place, the nearest first, and whether more is told.

    More is told of them where a word that is no barrier stands beyond: "misses when damp".
    """
    run: list[tuple[int, ...]] = []
    place = at + step
    while 0 <= place < len(clause):
        if place in of:
            if of[place] not in run:
                run.append(of[place])
        elif clause[place] not in passed:
            word = clause[place]
            return run, bool(run) and word not in BARRIERS and word != WELL
        place += step
    return run, False


def _all(run: Iterable[Sequence[int]]) -> set[int]:
    return {place for places in run for place in places}


def _unlike_before(clause: Sequence[str], at: int) -> int | None:
    """Return the place of what makes well-being its opposite, or None."""
    for place in range(at - 1, -1, -1):
        if clause[place] in _UNLIKE:
            return place
        if clause[place] not in _WITH_UNLIKE:
            return None
    return None
