"""Whether a promise still runs, by the days gone and by what the odometer says at the counter."""

from __future__ import annotations

from enum import Enum, auto
from typing import NamedTuple

from desktop_app.returns_watched.window import BY_DISTANCE, Window


class DrivenSince(NamedTuple):
    """The most miles known since a job left; `until_now` where the odometer was just read.

    `miles` is None where no reading can say.
    """

    miles: float | None = None
    until_now: bool = False


class PromiseNow(Enum):
    """What can be said of a promise today."""

    RUNS = auto()
    RUNS_BY_DAYS = auto()  # unless more was driven than was promised
    NOT_KNOWN = auto()  # the odometer decides, and nobody has read it
    OVER_BY_DAYS = auto()
    OVER_BY_DISTANCE = auto()


def promise_now(window: Window, days: int, driven: DrivenSince) -> PromiseNow:
    """Return what can be said of a promise, so many days after the hand-over.

    Miles read at an earlier visit can end it, but they cannot say that it still runs.
    """
    miles = driven.miles if driven.until_now or _all_driven(window, driven) else None
    if miles is None and window.may_stay_open and window.miles:
        in_time = bool(window.days) and days <= window.days
        return PromiseNow.RUNS if in_time else PromiseNow.NOT_KNOWN
    if not window.in_window(days, miles):
        by_distance = window.decided_by(days, miles) == BY_DISTANCE
        return PromiseNow.OVER_BY_DISTANCE if by_distance else PromiseNow.OVER_BY_DAYS
    return PromiseNow.RUNS_BY_DAYS if miles is None and window.miles else PromiseNow.RUNS


def _all_driven(window: Window, driven: DrivenSince) -> bool:
    return driven.miles is not None and 0 < window.miles < driven.miles
