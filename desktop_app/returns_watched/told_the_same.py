"""Customers who told of the same trouble while the car was not seen: they wait like a visit."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.returns_list import ReturnRow


@dataclass(frozen=True, slots=True)
class ToldSame:
    """A job whose customer tells of the same trouble since a day, and the words."""

    job_id: int
    number: str
    vehicle: str
    since: date
    words: str = ""

    def in_words(self) -> str:
        """Say what was told, as one line."""
        words = f": “{self.words}”" if self.words else ""
        day = day_in_words(self.since)
        return f"{self.number}, {self.vehicle}: told on {day} the same trouble, not seen yet{words}"


def told_not_seen(told: Iterable[ToldSame], rows: Iterable[ReturnRow]) -> tuple[ToldSame, ...]:
    """Return those that wait still, the oldest first.

    One is done with where a later visit since that day was judged against the job, or waits for a
    judgement itself; `rows` are the returns since the first of those days.
    """
    seen: dict[int, date] = {}
    for row in rows:
        if row.waits or not row.is_open:
            seen[row.earlier_id] = max(seen.get(row.earlier_id, date.min), row.came_on)
    waiting = (one for one in told if seen.get(one.job_id, date.min) < one.since)
    return tuple(sorted(waiting, key=lambda one: (one.since, one.number)))


def told_in_words(told: Iterable[ToldSame]) -> str:
    """Say how many customers told of the same trouble; nothing where none did."""
    many = len(tuple(told))
    if not many:
        return ""
    who = "1 customer tells" if many == 1 else f"{many} customers tell"
    cars = "the car was" if many == 1 else "the cars were"
    return (
        f"{who} of the same trouble by telephone; {cars} not seen yet. That is neither a comeback "
        "nor fine: have the car in, or say what it was by another answer on its job."
    )
