"""What is known of a car since a job left: read, lost sight of, and when its window ends."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from typing import NamedTuple

from desktop_app.returns_watched.customer_answers import CustomerSaid, gone_since
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.standing import Sighting, furthest, open_until
from desktop_app.returns_watched.stored_facts import Facts
from desktop_app.returns_watched.watching import sightings_since
from desktop_app.returns_watched.window import MAIN_WINDOW


class SinceItLeft(NamedTuple):
    """What decides about the end of a job's window.

    `read` is the last trusted reading with its miles, where there is one. `last_day` is the last
    day on which the window is open, None where it is not known to end; the rest is named as in
    `JobCourse`.
    """

    read: tuple[Sighting, ...]
    lost_on: date | None
    followed: bool
    last_day: date | None


def since_it_left(facts: Facts, job: JobFacts, said: Sequence[CustomerSaid]) -> SinceItLeft:
    """Return what is known since a job was handed over; `said` stands in its order."""
    out, left_with = job.handed_over_on, job.odometer_out
    assert out is not None
    placed = facts.odometers.readings.get(job.vehicle, ())
    readings = [(p.reading.on, p.place) for p in placed]
    # The last trusted reading has the most miles: no other says more of the window's end.
    read = tuple(sightings_since(job, out, readings))[-1:]
    lost_on = _lost_on(job, facts.jobs, said)
    followed = left_with is not None and all(
        place is None or on <= out or place.leg == left_with.leg for on, place in readings
    )
    known = furthest([one for one in read if lost_on is None or one.on < lost_on])
    last = open_until(job.window or MAIN_WINDOW, out, known, followed=followed)
    return SinceItLeft(read, lost_on, followed, last)


def _lost_on(job: JobFacts, jobs: Iterable[JobFacts], said: Iterable[CustomerSaid]) -> date | None:
    """Return the first day from which nobody can say how the car is: gone, or sold the day before.

    Only a sale that ends the window counts.
    """
    seen_on = max(one.opened_on for one in jobs if one.vehicle == job.vehicle)
    gone = gone_since(list(said), seen_on)
    sold = None if job.sold_on is None else job.sold_on + timedelta(days=1)
    return min((day for day in (gone, sold) if day is not None), default=None)
