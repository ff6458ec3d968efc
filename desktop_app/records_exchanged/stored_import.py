"""Rows of a table brought into the record: what is new is added, what differs is changed.

A job is known by its number. A cell that is empty never wipes out what is kept; of a vehicle that
is known only what was empty is filled in. The price, the hours and the odometer are the job's, not
a part line's. Where two rows of a file contradict each other about one job the later is refused.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from typing import Any

from desktop_app.parts_compared.stored import Pair
from desktop_app.records_exchanged.import_told import (
    ImportTold,
    Outcome,
    RowTrouble,
    Told,
    outcome_of,
)
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.row_words import (
    Moments,
    Read,
    check_days,
    judgement_of,
    part_of,
    reading_in,
    same_part,
    system_of,
)
from desktop_app.records_exchanged.stored_known import (
    JobKnown,
    Known,
    PairKnown,
    VehicleKnown,
    VisitKnown,
    people_known,
)
from desktop_app.records_exchanged.stored_merge import (
    job_news,
    refuse_late_close,
    refuse_other_vehicle,
    symptoms_new,
    visit_end,
    visit_news,
)
from desktop_app.records_exchanged.stored_room import Values, rooms
from desktop_app.repair_jobs.stored import (
    Job,
    JobCondition,
    JobSymptom,
    Person,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.repair_jobs.vin import matching_vin
from desktop_app.returns_watched.kind_windows import FROM_SHOP
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_windows import shop_promise
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.tables import Kept

AT_A_TIME = 4000
NO_READING = "not in the imported file"
_KEPT = (Vehicle, Person, Visit, Job, JobSymptom, JobCondition, TroubleCode, Pair, ReturnLink)


class _NotYet(Exception):
    """The earlier job that a row names isn't there; it may stand further down in the file."""


@dataclass(frozen=True, slots=True)
class ReadWith:
    """What the words of a row are read with: symptom groups, conditions, part kinds by name."""

    symptoms: Read
    conditions: Read
    kinds: Mapping[str, str]


class Importer:
    """Brings rows into the record through one deed, some thousands at a time."""

    def __init__(self, deed: Deed, reads: ReadWith, moments: Moments, now: str) -> None:
        self.told = ImportTold()
        self._deed, self._kinds, self._moments, self._now = deed, reads.kinds, moments, now
        self._symptoms = lru_cache(20_000)(reads.symptoms)
        self._conditions = lru_cache(20_000)(reads.conditions)
        self._rules = read_rules(deed.connection)
        self._rooms = rooms(deed, _KEPT)
        self._people = people_known(deed.connection)
        self._seen: set[int] = set()  # jobs from before that a row of this file was about
        self._pairs_seen: set[int] = set()
        self._afterwards: list[tuple[type[Kept], Values]] = []  # what hangs on jobs from before
        self._known = Known(deed.connection, ())
        self._window = lru_cache(None)(self._window_at)

    def take(self, rows: Iterable[JobRow | RowRejected], told: Told) -> ImportTold:
        """Take all rows; `told` hears of the rows read and may raise to take everything back."""
        waiting: list[JobRow] = []
        for batch in _batches(rows):
            self.told.read += len(batch)
            self.told.rejected += [row for row in batch if isinstance(row, RowRejected)]
            waiting += self._batch([row for row in batch if isinstance(row, JobRow)])
            told(self.told.read)
        while waiting:
            left: list[JobRow] = []
            for at in range(0, len(waiting), AT_A_TIME):
                left += self._batch(waiting[at : at + AT_A_TIME])
                told(self.told.read)
            if len(left) == len(waiting):
                break
            waiting = left
        for row in waiting:
            why = "No job has this number, neither here nor in the file."
            self.told.reject(row.row, RowTrouble("return_of", row.return_of, why))
        self._end()
        return self.told

    def _batch(self, rows: list[JobRow]) -> list[JobRow]:
        """Take some rows, and return those whose earlier job isn't there yet."""
        self._known = Known(self._deed.connection, rows)
        waiting = []
        for row in rows:
            try:
                self.told.count(self._row(row))
            except RowTrouble as trouble:
                self.told.reject(row.row, trouble)
            except _NotYet:
                waiting.append(row)
        for room in self._rooms.values():
            room.write()
        return waiting

    def _end(self) -> None:
        for room in self._rooms.values():
            room.remember()
        for kept, values in self._afterwards:
            self._deed.add(kept, **values)

    def _row(self, row: JobRow) -> Outcome:
        judgement = judgement_of(row)
        earlier = self._known.jobs.get(row.return_of) if row.return_of else None
        if row.return_of and earlier is None:
            raise _NotYet
        job = self._known.jobs.get(row.job_number)
        if job is None:
            came = row.opened_on or row.closed_on
            if came is None:
                why = "A job that is new here needs the day on which it came."
                raise RowTrouble("opened_on", "", why)
            check_days(row, came.isoformat())
            self._check_return(row, earlier, came.isoformat(), None)
            job = self._add_job(row, came)
            outcome: Outcome = "added"
        else:
            outcome = self._merge(row, job, earlier)
        also = self._part(row, job), self._link(job, earlier, judgement)
        return outcome_of(outcome, *also)

    def _add_job(self, row: JobRow, came: date) -> JobKnown:
        visit = self._visit(row, came)
        values: Values = {
            **{"concern": row.concern, "cause": row.cause, "correction": row.correction},
            **{"cause_found": 1 if row.cause.strip() else None, "system": system_of(row)},
            **{"technician_id": self._person(row.technician), "hours": row.hours},
            "price_cents": row.price_cents,
            **self._window(row.closed_on),
            "left_at": None if row.closed_on is None else self._moments.at(row.closed_on),
        }
        kept = {**values, "number": row.job_number, "visit_id": visit.id}
        job_id = self._rooms[Job].add(kept)
        job = JobKnown(job_id, row.job_number, visit, values)
        self._known.jobs[row.job_number] = job
        self._came_with(visit, job.values["left_at"])
        self._read_concern(job)
        self._codes(row, job)
        return job

    def _visit(self, row: JobRow, came: date) -> VisitKnown:
        vehicle = self._known.vehicle_of(row)
        if vehicle is None:
            vehicle = self._add_vehicle(row)
        else:
            self._fill(vehicle, row)
        odometer = reading_in(row, vehicle.values["odometer_unit"])
        visit = self._known.visit_of(vehicle, came.isoformat(), odometer)
        if visit is None:
            at = self._moments.at(came)
            values: Values = {"came_at": at, "left_at": None, "odometer_in": odometer}
            unread = NO_READING if odometer is None else None
            kept = {**values, "vehicle_id": vehicle.id, "odometer_unread": unread}
            visit = VisitKnown(self._rooms[Visit].add(kept), vehicle, values)
            self._known.put_visit(visit)
        elif odometer is not None and visit.values["odometer_in"] is None:
            self._change(Visit, visit, odometer_in=odometer, odometer_unread=None)
        return visit

    def _add_vehicle(self, row: JobRow) -> VehicleKnown:
        values: Values = {
            **{"vin": matching_vin(row.vin) or None, "plate": row.plate or None},
            **{"plate_key": matching_plate(row.plate) or None, "description": row.vehicle},
            "odometer_unit": row.odometer_unit or self._rules.unit_of_distance,
        }
        vehicle = VehicleKnown(self._rooms[Vehicle].add(values), values)
        self._known.put_vehicle(vehicle)
        return vehicle

    def _fill(self, vehicle: VehicleKnown, row: JobRow) -> bool:
        """Fill in what is newly known of a vehicle; what is known already stays."""
        news: Values = {}
        if row.vin and not vehicle.values["vin"]:
            news["vin"] = matching_vin(row.vin)
        if row.plate and not vehicle.values["plate_key"]:
            news.update(plate=row.plate, plate_key=matching_plate(row.plate))
        if row.vehicle and not vehicle.values["description"]:
            news["description"] = row.vehicle
        if news:
            self._change(Vehicle, vehicle, **news)
            self._known.put_vehicle(vehicle)
        return bool(news)

    def _merge(self, row: JobRow, job: JobKnown, earlier: JobKnown | None) -> Outcome:
        """Change in a known job what the row says otherwise; all is checked before."""
        is_new = self._rooms[Job].is_new(job.id)
        seen = is_new or job.id in self._seen
        vehicle = job.visit.vehicle
        refuse_other_vehicle(row, vehicle)
        came = row.opened_on.isoformat() if row.opened_on else job.visit.values["came_at"][:10]
        check_days(row, came)
        self._check_return(row, earlier, came, job)
        odometer = reading_in(row, vehicle.values["odometer_unit"])
        visit_new = visit_news(row, job, odometer, self._moments, seen)
        technician = self._people.get(row.technician)
        news = job_news(row, job, technician, self._moments, seen)
        refuse_late_close(self._deed, row, job, news)
        if "left_at" in news and row.closed_on is not None:
            if job.values["left_at"] is None:
                news.update(self._window(row.closed_on))
            elif job.values["window_months"]:
                news["window_days"] = self._window_days(row.closed_on, job.values["window_months"])
        if "technician_id" in news:
            news["technician_id"] = self._person(row.technician)
        if not is_new:
            self._seen.add(job.id)
        changed = self._fill(vehicle, row)
        if visit_new:
            self._change(Visit, job.visit, **visit_new)
        if news:
            self._change(Job, job, **news)
        if "left_at" in news:
            self._rooms[Visit].write()
            self._rooms[Job].write()
            self._change(Visit, job.visit, left_at=visit_end(self._deed, job.visit.id))
        if "concern" in news:
            self._read_concern(job)
        changed = self._codes(row, job) or changed or bool(visit_new or news)
        return "updated" if changed else "unchanged"

    def _came_with(self, visit: VisitKnown, left_at: str | None) -> None:
        """Let a visit end with the last of its jobs; one with an open job is still here."""
        before, alone = visit.values["left_at"], visit.jobs == 0
        visit.jobs += 1
        ends = left_at if left_at is None or alone else before and max(before, left_at)
        if ends != before:
            self._change(Visit, visit, left_at=ends)

    def _read_concern(self, job: JobKnown) -> None:
        """Read symptom groups and conditions out of the concern; what a person chose stays."""
        concern = job.values["concern"]
        if not concern:
            return
        symptoms, conditions = self._symptoms(concern), self._conditions(concern)
        if not self._rooms[Job].is_new(job.id):
            for symptom in symptoms_new(self._deed, job.id, symptoms):
                self._hang(JobSymptom, job, {"job_id": job.id, "symptom": symptom})
            return
        for symptom in symptoms:
            self._rooms[JobSymptom].add({"job_id": job.id, "symptom": symptom})
        for condition in conditions:
            values = {"job_id": job.id, "condition": condition, "happens": 1}
            self._rooms[JobCondition].add(values)

    def _codes(self, row: JobRow, job: JobKnown) -> bool:
        new = [code for code in row.codes if code not in job.codes]
        for code in new:
            values = {"job_id": job.id, "code": code, "kind": "stored", "stage": "found"}
            self._hang(TroubleCode, job, values)
            job.codes.add(code)
        return bool(new)

    def _part(self, row: JobRow, job: JobKnown) -> Outcome:
        """Take a row's part: the same line again is known, one that says more is changed."""
        said = part_of(row, self._kinds)
        if said is None:
            return "unchanged"
        free = [pair for pair in job.pairs if self._is_free(pair)]
        pair = next((one for one in free if one.said == said), None)
        if pair is None and (said[0] or said[1]):
            pair = next((one for one in free if same_part(one.said, said)), None)
        if pair is None or pair.id is None:
            kind, number, supplier, origin = said
            values = {"job_id": job.id, "part_kind": kind, "number_on_box": number}
            values |= {"supplier": supplier, "origin": origin or None}
            made = self._hang(Pair, job, values)
            job.pairs.append(PairKnown(made, said))
            return "added"
        self._pairs_seen.add(pair.id)
        names = ("part_kind", "number_on_box", "supplier", "origin")
        news = {n: v for n, v, old in zip(names, said, pair.said, strict=True) if v and v != old}
        if news:
            self._rooms[Pair].change(pair.id, news)
        return "updated" if news else "unchanged"

    def _is_free(self, pair: PairKnown) -> bool:
        """Tell whether a part was there before the import and no line of the file is about it."""
        if pair.id is None or self._rooms[Pair].is_new(pair.id):
            return False
        return pair.id not in self._pairs_seen

    def _link(self, job: JobKnown, earlier: JobKnown | None, judgement: str | None) -> Outcome:
        if earlier is None:
            return "unchanged"
        said: Values = {"judgement": judgement, "judged_by": "import" if judgement else ""}
        said["judged_at"] = self._now if judgement else None
        if earlier.id not in job.links:
            jobs = {"earlier_job_id": earlier.id, "later_job_id": job.id}
            job.links[earlier.id] = (self._hang(ReturnLink, job, {**jobs, **said}), judgement)
            return "added"
        link, before = job.links[earlier.id]
        if link is None or judgement in (None, before):
            return "unchanged"
        self._rooms[ReturnLink].change(link, said)
        job.links[earlier.id] = (link, judgement)
        return "updated"

    def _check_return(
        self, row: JobRow, earlier: JobKnown | None, came: str, job: JobKnown | None
    ) -> None:
        if earlier is None:
            return
        left = earlier.values["left_at"]
        if row.return_of == row.job_number or left is None or left[:10] > came:
            why = "That job must be closed before this one comes."
            raise RowTrouble("return_of", row.return_of, why)
        before = (job.links.get(earlier.id) if job else None) or (None, None)
        seen = job is not None and self._rooms[Job].is_new(job.id)
        if seen and before[1] and row.judgement and before[1] != judgement_of(row):
            why = f"Another row of this file says “{before[1]}” of the same two jobs."
            raise RowTrouble("judgement", row.judgement, why)

    def _hang(self, kept: type[Kept], job: JobKnown, values: Values) -> int | None:
        """Add a row to a job: in bulk with a new one, else as any other deed at the end."""
        if self._rooms[Job].is_new(job.id):
            return self._rooms[kept].add(values)
        self._afterwards.append((kept, values))
        return None

    def _change(self, kept: type[Kept], one: Any, **values: Any) -> None:
        self._rooms[kept].change(one.id, values)
        one.values.update(values)

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

    def _window_days(self, closed_on: date, months: int) -> int:
        from desktop_app.returns_watched.month_end import days_of_months

        return days_of_months(closed_on, months)


def _batches(rows: Iterable[JobRow | RowRejected]) -> Iterator[list[JobRow | RowRejected]]:
    batch: list[JobRow | RowRejected] = []
    for row in rows:
        batch.append(row)
        if len(batch) == AT_A_TIME:
            yield batch
            batch = []
    if batch:
        yield batch
