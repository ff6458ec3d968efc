"""What reaches into the year from before it: jobs watched, promises open, what was spent."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

from desktop_app.returns_watched.change_promised import ChangePromised


@dataclass(frozen=True, slots=True)
class OlderJob:
    """A job handed over before the year, whose window or whose car's return reaches into it.

    `counts_from` are the days after which its window counts as over, as `JobDone` has them.
    """

    number: str
    left_on: date
    counts_from: int
    counted: bool


@dataclass(frozen=True, slots=True)
class Promised:
    """A change that was promised after a return, as it stood on the day that is looked from."""

    earlier: str
    later: str
    came_on: date
    cause_class: str | None
    change: ChangePromised


@dataclass(frozen=True, slots=True)
class CostBefore:
    """What a comeback cost whose car came in the year before the book's own; in cents."""

    later: str
    earlier: str
    came_on: date
    cents: int


def as_it_stood(change: ChangePromised, on: date) -> ChangePromised:
    """Return a promise as it stood on a day: what was done later was not done then."""
    later = change.done_on is not None and change.done_on > on
    return replace(change, done_on=None) if later else change
