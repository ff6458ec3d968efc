"""The search index kept up with an import, batch by batch, so that no second pass is needed."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from sqlalchemy import select

from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.shop_record.bulk import BulkRows
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import BulkFollower


class WordsFollow:
    """Lets the followers of a record hear of new jobs, from the first id on, as they are written.

    Later rows may change a job that they heard of; those are told once more at the end.
    """

    def __init__(self, deed: Deed, followers: Sequence[BulkFollower], first: int) -> None:
        self._deed, self._followers = deed, followers
        self._next = self._first = first
        self._changed: set[int] = set()

    def catch_up(self, last: int) -> None:
        """Let them hear of all jobs up to the last."""
        if last >= self._next:
            self._tell(self._next, last)
            self._next = last + 1

    def changed(self, jobs: Iterable[int]) -> None:
        """Note that jobs were changed after they were written."""
        self._changed.update(job for job in jobs if self._first <= job < self._next)

    def vehicle_changed(self, vehicle: int) -> None:
        """Note that a vehicle was, whose words stand with each of its jobs."""
        of_it = select(Job.id).join(Visit, Visit.id == Job.visit_id)
        found = self._deed.connection.execute(of_it.where(Visit.vehicle_id == vehicle))
        self.changed(found.scalars())

    def finish(self) -> None:
        """Let them hear again of the jobs that were changed."""
        first = last = 0
        for job in sorted(self._changed):
            if job != last + 1:
                if last:
                    self._tell(first, last)
                first = job
            last = job
        if last:
            self._tell(first, last)
        self._changed.clear()

    def _tell(self, first: int, last: int) -> None:
        jobs = BulkRows(Job.__tablename__, first, last, last - first + 1, "")
        for follow in self._followers:
            follow(self._deed.connection, [jobs])
