"""Who did what in the plain jobs, and how long was searched, where somebody wrote it down."""

from __future__ import annotations

import random
from collections.abc import Mapping

from demo_shop.people import COUNTER, TECHNICIANS
from desktop_app.repair_jobs.stored import JobPerson
from desktop_app.shop_record.deed import Deed

WRITTEN_UP = 0.6  # so often the job says who wrote it up
SOMEONE_ELSE = 0.25  # so often another technician than the job's own searched
SEARCH_WRITTEN = 0.4
_SHARE_OF_HOURS = (0.1, 0.6)


class PlainPeople:
    """Names people with a chance of its own, so that all else stays as it was."""

    def __init__(self, people: Mapping[str, int], seed: int) -> None:
        self._people, self._chance = people, random.Random(f"{seed}/people")

    def name(self, deed: Deed, job: int, technician: int) -> None:
        """Write down who wrote a job up, and who searched where it was not its technician."""
        if self._chance.random() < WRITTEN_UP:
            deed.add(JobPerson, job_id=job, did="wrote up", person_id=self._people[COUNTER])
        others = [self._people[name] for name in TECHNICIANS if self._people[name] != technician]
        if self._chance.random() < SOMEONE_ELSE:
            deed.add(JobPerson, job_id=job, did="searched", person_id=self._chance.choice(others))

    def search_hours(self, hours: float) -> float | None:
        """Return how many of the hours went into searching, None where nobody wrote it."""
        if self._chance.random() >= SEARCH_WRITTEN:
            return None
        return round(hours * self._chance.uniform(*_SHARE_OF_HOURS), 1)
