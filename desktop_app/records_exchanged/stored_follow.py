"""The search index kept up with an import, batch by batch, so that no second pass is needed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from sqlalchemy import select

from desktop_app.records_exchanged.stored_known import JobKnown
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.shop_record.bulk import BulkRows
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import BulkFollower
from desktop_app.symptom_search.job_said import JobSaid


class WordsFollow:
    """Lets the followers of a record hear of new jobs, from the first id on, as they are written.

    They are told what was said of each, so that nothing is read back. Later rows may change a job
    that they heard of; those are told once more at the end. `people` are the ids of all names.
    """

    def __init__(
        self,
        deed: Deed,
        followers: Sequence[BulkFollower],
        first: int,
        people: Mapping[str, int],
    ) -> None:
        self._deed, self._followers, self._people = deed, followers, people
        self._next = self._first = first
        self._added: list[JobKnown] = []
        self._changed: set[int] = set()

    def added(self, job: JobKnown) -> None:
        """Note a new job; they come by rising ids."""
        self._added.append(job)

    def catch_up(self) -> None:
        """Let them hear of all new jobs, which are written by now."""
        if not self._added:
            return
        names: dict[int | None, str] = {one: name for name, one in self._people.items()}
        said = {job.id: _said(job, names) for job in self._added} if self._followers else None
        last = self._added[-1].id
        self._added.clear()
        self._tell(self._next, last, said)
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

    def _tell(self, first: int, last: int, said: Mapping[int, JobSaid] | None = None) -> None:
        jobs = BulkRows(Job.__tablename__, first, last, last - first + 1, "", said=said)
        for follow in self._followers:
            follow(self._deed.connection, [jobs])


def _said(job: JobKnown, names: Mapping[int | None, str]) -> JobSaid:
    kept, car = job.values, job.visit.vehicle.values
    said = (one.said for one in job.pairs)
    return JobSaid(
        *(kept["concern"], kept["cause"], kept["correction"]),
        conditions=job.conditions,
        codes=job.codes,
        parts=[(kind, supplier, box) for kind, box, supplier, _ in said],
        vehicle=(car["description"], car["plate"], car["tag"], car["vin"]),
        person=names.get(kept["technician_id"], ""),
    )
