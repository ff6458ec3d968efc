"""Whether a car that came again came for a later visit: by the days, and within one by the clock.

This is the one rule for it: in lists, counts and deeds, and when records are brought in. Moments
are kept with the time of day and its distance from UTC, so that two computers' are of one kind.
"""

from __future__ import annotations

from datetime import datetime, time

# Of an old record nobody knows more than the day; it is kept as this time of it. A deed done in
# the second of noon can't be told from that, for both are written alike in records that are
# there: its day counts alone, and what came on that day is one visit. It is one second of a day;
# to write such a deed a second later would be a time that is not true.
DAY_ALONE = time(12)


def clock_of(at: str | None) -> int | None:
    """Return the time of a kept moment in seconds of UTC; None where only its day is known.

    A time without its distance from UTC can't be held against another.
    """
    if at is None or len(at) <= len("2026-11-16"):
        return None
    try:
        moment = datetime.fromisoformat(at)
    except ValueError:  # no moment at all is told as damage by whoever reads its day
        return None
    if moment.tzinfo is None or moment.time() == DAY_ALONE:
        return None
    return int(moment.timestamp())


def came_later(came_then: int | None, left_then: int | None, came_again: int | None) -> bool:
    """Tell whether the clock knows a visit to have begun after a hand-over of another one.

    A hand-over before its own car came says nothing: its clock was wrong. So no job is ever a
    return of one of its own visit, which came at the same moment.
    """
    if left_then is None or came_again is None or left_then >= came_again:
        return False
    return came_then is None or came_then <= left_then


def is_later_visit(came_at: str, left_at: str | None, came_again_at: str) -> bool:
    """Tell whether a visit, kept to have come at a moment, is later than a job's.

    The job must have been handed over by that day. What came on one day is one visit, unless the
    clock tells that the car had left before it came again.
    """
    if left_at is None or left_at[:10] > came_again_at[:10]:
        return False
    if came_at[:10] != came_again_at[:10]:
        return True
    return came_later(clock_of(came_at), clock_of(left_at), clock_of(came_again_at))
