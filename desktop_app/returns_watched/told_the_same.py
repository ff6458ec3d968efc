"""Customers who told of the same trouble while the car was not seen: they wait like a visit."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass
from datetime import date

from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.met_by import told_and_open
from desktop_app.returns_watched.returns_list import ReturnRow


@dataclass(frozen=True, slots=True)
class ToldSame:
    """A job whose customer tells of the same trouble since a day, and the words.

    `seen_on` is the last visit of the car on that day or later; nothing of it was judged against
    the job, or waits to be.
    """

    job_id: int
    number: str
    vehicle: str
    since: date
    words: str = ""
    seen_on: date | None = None

    def in_words(self) -> str:
        """Say what was told, as one line."""
        words = f": “{self.words}”" if self.words else ""
        day, seen = day_in_words(self.since), seen_in_words(self.since, self.seen_on)
        return f"{self.number}, {self.vehicle}: told on {day} the same trouble, {seen}{words}"


def seen_in_words(told: date, seen: date | None) -> str:
    """Say whether a car was seen since its customer told of the same trouble."""
    if seen is None or seen < told:
        return "not seen yet"
    return f"seen on {day_in_words(seen)}, not judged against this job"


def told_not_seen(told: Collection[ToldSame], rows: Iterable[ReturnRow]) -> tuple[ToldSame, ...]:
    """Return those that wait still, the oldest first.

    One is done with by the rule of `told_and_open`; `rows` are the returns since the first of those
    days.
    """
    own: dict[int, list[ReturnRow]] = {one.job_id: [] for one in told}
    for row in rows:
        if row.earlier_id in own:
            own[row.earlier_id].append(row)
    waiting = (one for one in told if told_and_open(one.since, own[one.job_id]) is not None)
    return tuple(sorted(waiting, key=lambda one: (one.since, one.number)))


def told_in_words(told: Iterable[ToldSame]) -> str:
    """Say of how many jobs the same trouble is told, of one car perhaps; nothing where of none."""
    jobs = tuple(told)
    if not jobs:
        return ""
    who = "1 customer tells" if len(jobs) == 1 else f"Of {len(jobs)} jobs the customer tells"
    return (
        f"{who} of the same trouble by telephone; {_seen_of_all(jobs)}. That is neither a comeback "
        "nor fine: have the car in, or say what it was by another answer on its job."
    )


def _seen_of_all(jobs: tuple[ToldSame, ...]) -> str:
    seen = sum(one.seen_on is not None for one in jobs)
    if seen:
        car = "the car" if len(jobs) == 1 else f"the car of {seen} of them"
        return f"{car} was here since, and nothing was judged against the job"
    return "the car was not seen yet" if len(jobs) == 1 else "the car of none was seen yet"
