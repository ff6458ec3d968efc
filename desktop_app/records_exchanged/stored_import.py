"""Rows of a table brought into the record: what is new is added, what differs is changed.

A job is known by its number. A cell that is empty never wipes out what is kept; of a vehicle that
is known only what was empty is filled in. The price, the hours and the odometer are the job's, not
a part line's. Where two rows of a file contradict each other about one job the later is refused.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from functools import lru_cache
from itertools import islice

from desktop_app.language import tr
from desktop_app.parts_compared.stored import Pair
from desktop_app.records_exchanged.import_told import (
    ImportTold,
    Outcome,
    RowTrouble,
    Told,
    outcome_of,
)
from desktop_app.records_exchanged.job_row import AT_A_TIME, JobRow, RowRejected
from desktop_app.records_exchanged.row_words import (
    Moments,
    judgement_of,
    reading_in,
    refuse_early_close,
    system_of,
    wrong_alone,
)
from desktop_app.records_exchanged.stored_follow import WordsFollow
from desktop_app.records_exchanged.stored_hanging import Hanging, ReadWith
from desktop_app.records_exchanged.stored_known import JobKnown, Known, people_known
from desktop_app.records_exchanged.stored_merge import (
    job_news,
    refuse_early_come,
    refuse_late_close,
    refuse_other_vehicle,
    visit_news,
)
from desktop_app.records_exchanged.stored_return_of import ReturnsOf, why_not_there
from desktop_app.records_exchanged.stored_room import Rooms, Values
from desktop_app.records_exchanged.stored_visits import Visits
from desktop_app.repair_jobs.stored import (
    Job,
    JobCondition,
    JobSymptom,
    Person,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.returns_watched.kind_windows import FROM_SHOP
from desktop_app.returns_watched.month_end import days_of_months
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_windows import shop_promise
from desktop_app.shop_record.databases.dialect_search import room_to_write
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.record import BulkFollower

__all__ = ["AT_A_TIME", "Importer", "ReadWith"]

_KEPT = (Vehicle, Person, Visit, Job, JobSymptom, JobCondition, TroubleCode, Pair, ReturnLink)


class _NotYet(Exception):
    """The earlier job that a row names isn't there; it may stand further down in the file."""


class Importer:
    """Brings rows into the record through one deed, some thousands at a time.

    `followers` hear of the new jobs as they are written; without any the search index is left to
    the end of the deed.
    """

    def __init__(
        self,
        deed: Deed,
        reads: ReadWith,
        moments: Moments,
        now: str,
        followers: Sequence[BulkFollower] = (),
    ) -> None:
        self.told = ImportTold()
        self._deed, self._moments = deed, moments
        self._rules = read_rules(deed.connection)
        self._rooms = Rooms(deed, _KEPT, Job)
        self._people = people_known(deed.connection)
        self._words = WordsFollow(deed, followers, self._rooms[Job].first, self._people)
        unit = self._rules.unit_of_distance
        self._visits = Visits(deed, self._rooms, self._words, moments, unit)
        self._hanging = Hanging(deed, self._rooms, reads, now)
        self._returns = ReturnsOf(deed, self._rooms)
        self._followed = bool(followers)
        self._seen = bytearray(self._rooms[Job].first)  # jobs from before that a row was about
        self._known = self._nothing_known = Known(deed.connection, ())
        self._window = lru_cache(10_000)(self._window_at)

    def take(self, rows: Iterable[JobRow | RowRejected], told: Told) -> ImportTold:
        """Take all rows; `told` hears of the rows read and may raise to take everything back."""
        with room_to_write(self._deed.connection):
            self._take(rows, told)
            self._rooms.remember(self._followed)
            self._words.finish()
        self.told.sort()
        return self.told

    def _take(self, rows: Iterable[JobRow | RowRejected], told: Told) -> None:
        waiting: list[JobRow] = []
        read = 0
        for batch in _batches(rows):
            read += len({row.row for row in batch})
            self.told.rejected += [row for row in batch if isinstance(row, RowRejected)]
            waiting += self._batch([row for row in batch if isinstance(row, JobRow)])
            batch.clear()  # who is told may look for garbage: the less there is to walk through
            told(read)
        while waiting:
            left: list[JobRow] = []
            for batch in _batches(waiting):
                left += self._batch([row for row in batch if isinstance(row, JobRow)])
                told(read)
            if len(left) == len(waiting):
                break
            waiting = left
        refused = {one.job_number: one.row for one in self.told.rejected}
        named_by = {row.job_number: row for row in waiting}
        for row in waiting:
            why = why_not_there(row, refused, named_by)
            self.told.reject(row, RowTrouble("return_of", row.return_of, why))

    def _batch(self, rows: list[JobRow]) -> list[JobRow]:
        """Take some rows, and return those whose earlier job isn't there yet."""
        self._known = Known(self._deed.connection, rows)
        self._hanging.recall(self._known.jobs.values())
        waiting = []
        for row in rows:
            if wrong := wrong_alone(row, self._moments.today):
                for trouble in wrong:
                    self.told.reject(row, trouble)
                continue
            try:
                self.told.count(self._row(row))
            except RowTrouble as trouble:
                self.told.reject(row, trouble)
            except _NotYet:
                waiting.append(row)
        self._known = self._nothing_known
        self._rooms.write()
        self._words.catch_up()
        return waiting

    def _row(self, row: JobRow) -> Outcome:
        judgement = judgement_of(row)
        earlier = self._known.jobs.get(row.return_of) if row.return_of else None
        if row.return_of and earlier is None:
            raise _NotYet
        job = self._known.jobs.get(row.job_number)
        if job is None:
            job = self._add_job(row, earlier)
            self._hanging.part(row, job)
            self._hanging.link(job, earlier, judgement)
            return "added"
        outcome = self._merge(row, job, earlier)
        part = self._hanging.part(row, job)
        link = self._hanging.link(job, earlier, judgement)
        outcome = outcome_of(outcome, part, link)
        if outcome != "unchanged":
            self._words.changed((job.id,))
        return outcome

    def _add_job(self, row: JobRow, earlier: JobKnown | None) -> JobKnown:
        came = row.opened_on or row.closed_on
        if came is None:
            why = tr("A job that is new here needs the day on which it came.")
            raise RowTrouble("opened_on", "", why)
        refuse_early_close(row, came.isoformat())
        vehicle = self._visits.vehicle_of(self._known, row, earlier)
        if earlier is not None:
            self._returns.check_days(row, earlier, came.isoformat(), None)
            self._returns.check_car(row, earlier, vehicle)
        left_at = None if row.closed_on is None else self._moments.at(row.closed_on)
        visit = self._visits.visit_of(self._known, row, vehicle, came, left_at)
        values: Values = {
            "concern": row.concern,
            "cause": row.cause,
            "correction": row.correction,
            "cause_found": 1 if row.cause.strip() else None,
            "system": system_of(row),
            "technician_id": self._person(row.technician),
            "hours": row.hours,
            "price_cents": row.price_cents,
            "left_at": left_at,
            "number": row.job_number,
            "visit_id": visit.id,
            **self._window(row.closed_on),
        }
        job = JobKnown(self._rooms[Job].add(values), row.job_number, visit, values)
        self._known.jobs[row.job_number] = job
        self._words.added(job)
        self._hanging.read_concern(job)
        self._hanging.codes(row, job)
        return job

    def _merge(self, row: JobRow, job: JobKnown, earlier: JobKnown | None) -> Outcome:
        """Change in a known job what the row says otherwise; all is checked before."""
        is_new = self._rooms.is_new(job)
        seen = is_new or bool(self._seen[job.id])
        vehicle = job.visit.vehicle
        refuse_other_vehicle(row, vehicle)
        came = row.opened_on.isoformat() if row.opened_on else job.visit.values["came_at"][:10]
        refuse_early_close(row, came)
        if earlier is not None:
            kept = job.visit.values["came_at"]
            self._returns.check_days(row, earlier, kept if kept[:10] == came else came, job)
            if earlier.id not in job.links:
                self._returns.check_car(row, earlier, vehicle)
        odometer = reading_in(row, vehicle.values["odometer_unit"])
        visit_new = visit_news(row, job, odometer, self._moments, seen)
        technician = self._people.get(row.technician)
        news = job_news(row, job, technician, self._moments, seen)
        refuse_late_close(self._deed, row, job, news)
        refuse_early_come(self._deed, row, job, visit_new)
        if "left_at" in news and row.closed_on is not None:
            news |= self._window_news(row.closed_on, job)
        if "technician_id" in news:
            news["technician_id"] = self._person(row.technician)
        if not is_new:
            self._seen[job.id] = 1
        changed = self._visits.fill(self._known, vehicle, row)
        if visit_new:
            self._visits.change(self._known, job.visit, visit_new)
        if news:
            self._rooms.change(Job, job, news)
        if "left_at" in news:
            self._visits.end_anew(job)
        if "concern" in news:
            self._hanging.read_concern(job)
        changed = self._hanging.codes(row, job) or changed or bool(visit_new or news)
        return "updated" if changed else "unchanged"

    def _person(self, name: str) -> int | None:
        if name and name not in self._people:
            self._people[name] = self._rooms[Person].add({"name": name})
            self._rooms[Person].write()  # a job from before may be changed to name them
        return self._people.get(name)

    def _window_at(self, closed_on: date | None) -> Values:
        """Return the columns of a job's window: the shop's promise, counted out when it left."""
        rules = self._rules
        values: Values = {"window_miles": rules.window_miles, "window_rule": rules.window_rule}
        values |= {"window_days": rules.window_days, "window_months": rules.window_months or None}
        if closed_on is not None:
            values["window_days"] = shop_promise(rules).window_from(closed_on).days
            values["window_from"] = FROM_SHOP
        return values

    def _window_news(self, closed_on: date, job: JobKnown) -> Values:
        """Return the columns of the window of a job that was closed on another day."""
        if job.values["left_at"] is None:
            return self._window(closed_on)
        months = job.values["window_months"]
        return {"window_days": days_of_months(closed_on, months)} if months else {}


def _batches(rows: Iterable[JobRow | RowRejected]) -> Iterator[list[JobRow | RowRejected]]:
    each = iter(rows)
    while batch := list(islice(each, AT_A_TIME)):
        yield batch
