"""What became of a job: what was seen, told and judged since it left, and how that is said.

The words are those of the watch (returns_watched/standing.py), from days alone: miles that end a
window sooner are left out, so that a job is called settled too late rather than too early.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from desktop_app.language import marked

# What one job's course is made of, as bits of one number.
BACK, WAITS, NOT_OURS, UNSURE, LATER, LOST, NOT_CAUGHT, COUNTED = (1 << bit for bit in range(8))
TROUBLE = BACK | WAITS | NOT_OURS | UNSURE | LATER

# The judgements that make a return a comeback, those that say whose fault it is instead, and the
# causes of a return that are not ours; they belong to a folder beside this one.
COMEBACKS = frozenset(("same symptom", "same system", "same part", "from our hands"))
_OTHERS_FAULT = frozenset(("foretold", "other hands"))
_CANNOT_TELL = "cannot tell"
_NOT_OURS = frozenset(("other-use", "new"))


class Became(StrEnum):
    """What is said of a job that left; nothing where it does not count as a repair."""

    CAME_BACK = marked("came back")
    WAITS = marked("a return waits to be judged")
    NOT_OURS = marked("came back, not ours")
    UNSURE = marked("came back, cannot tell")
    LATER = marked("came back after the window")
    NOT_CAUGHT = marked("not caught")
    STAYED_FIXED = marked("stayed fixed")
    LOST = marked("lost sight")
    NOTHING_HEARD = marked("nothing heard since")
    UNDER_WATCH = marked("under watch")
    NOTHING = ""


@dataclass(frozen=True, slots=True)
class Met:
    """A return, seen or told, on a day: how it was judged (None: not yet) and by what cause."""

    on: int
    judgement: str | None = None
    cause: str | None = None


def course_of(settles: int, met: Iterable[Met], gone: int | None) -> int:
    """Return the bits that its returns give a job, and the day from which the car was gone."""
    course = 0
    for one in met:
        course |= _bit(one, in_window=one.on <= settles)
    return course | LOST if gone is not None and gone <= settles else course


def _bit(met: Met, in_window: bool) -> int:
    ours = met.cause not in _NOT_OURS
    if met.judgement is None or (met.judgement in COMEBACKS and ours):
        if not in_window:
            return LATER
        return WAITS if met.judgement is None else BACK
    if not in_window:
        return 0
    if not ours or met.judgement in _OTHERS_FAULT:
        return NOT_OURS
    return UNSURE if met.judgement == _CANNOT_TELL else 0


def is_settled(course: int, *, is_over: bool) -> bool:
    """Tell whether a repair's share of comebacks may count a job whose window is (not) over."""
    open_question = course & (WAITS | NOT_OURS) and not course & BACK
    return is_over and bool(course & COUNTED) and not open_question


def became(course: int, *, is_over: bool, seen_after: bool) -> Became:
    """Say what became of a job that was handed over; what was judged goes before all else."""
    for bit, said in _JUDGED:
        if course & bit:
            return said
    if course & NOT_CAUGHT:
        return Became.NOT_CAUGHT
    if not course & COUNTED:
        return Became.NOTHING
    if course & LOST:
        return Became.LOST
    if not is_over:
        return Became.UNDER_WATCH
    return Became.STAYED_FIXED if seen_after else Became.NOTHING_HEARD


_JUDGED = (
    (BACK, Became.CAME_BACK),
    (WAITS, Became.WAITS),
    (NOT_OURS, Became.NOT_OURS),
    (UNSURE, Became.UNSURE),
    (LATER, Became.LATER),
)
