"""What became of a job: what was seen, told and judged since it left, and how that is said.

The words are those of the watch (returns_watched/standing.py), from days alone: miles that end a
window sooner are left out, so that a job is called settled too late rather than too early.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum
from typing import NamedTuple

from desktop_app.language import marked

# What one job's course is made of, as bits of one number.
BACK, WAITS, NOT_OURS, UNSURE, LATER, LOST, NOT_CAUGHT, COUNTED = (1 << bit for bit in range(8))
TROUBLE = BACK | WAITS | NOT_OURS | UNSURE | LATER
LEFT_OUT = WAITS | NOT_OURS | UNSURE | LOST  # neither good nor bad, where none was a comeback

# The judgements that make a return a comeback, and the causes of a return that are not ours; they
# belong to a folder beside this one.
COMEBACKS = frozenset(("same symptom", "same system", "same part", "from our hands"))
_CANNOT_TELL = "cannot tell"
CAUSES_NOT_OURS = frozenset(("other-use", "new"))


class Became(StrEnum):
    """What is said of a job that left; nothing where it does not count as a repair."""

    CAME_BACK = marked("came back")
    WAITS = marked("a return waits to be judged")
    NOT_OURS = marked("came back, not ours")
    UNSURE = marked("came back, cannot tell")
    LATER = marked("came back after the window")
    NOT_CAUGHT = marked("not caught")
    SEEN_FINE = marked("seen fine")
    LOST = marked("lost sight")
    NOTHING_HEARD = marked("nothing heard")
    UNDER_WATCH = marked("under watch")
    NOTHING = ""


class Met(NamedTuple):
    """A return, seen or told, on a day: how it was judged (None: not yet) and by what cause."""

    on: int
    judgement: str | None = None
    cause: str | None = None


def course_of(
    settles: int, met: Iterable[Met], lost: int | None = None, sold: int | None = None
) -> int:
    """Return the bits that its returns give a job, and the day from which the car was lost.

    `sold` is the day of a sale that ends the window: what came later came after the window.
    """
    course = 0
    for one in met:
        course |= _bit(one, in_window=one.on <= settles and (sold is None or one.on <= sold))
    return course | LOST if lost is not None and lost <= settles else course


def _bit(met: Met, in_window: bool) -> int:
    ours = met.cause not in CAUSES_NOT_OURS
    if met.judgement is None or (met.judgement in COMEBACKS and ours):
        if not in_window:
            return LATER
        return WAITS if met.judgement is None else BACK
    if not in_window:
        return 0
    if not ours:
        return NOT_OURS
    return UNSURE if met.judgement == _CANNOT_TELL else 0


def is_settled(course: int, *, is_over: bool) -> bool:
    """Tell whether a repair's share of comebacks may count a job whose window is (not) over."""
    left_out = course & LEFT_OUT and not course & BACK
    return is_over and bool(course & COUNTED) and not left_out


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
    return Became.SEEN_FINE if seen_after else Became.NOTHING_HEARD


_JUDGED = (
    (BACK, Became.CAME_BACK),
    (WAITS, Became.WAITS),
    (NOT_OURS, Became.NOT_OURS),
    (UNSURE, Became.UNSURE),
    (LATER, Became.LATER),
)
