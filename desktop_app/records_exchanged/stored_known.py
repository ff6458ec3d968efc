"""What the record knows already of the jobs and vehicles that some rows name."""

from __future__ import annotations

import json
from collections.abc import Collection, Iterable
from dataclasses import dataclass, field
from typing import Any

from sqlalchemy import Connection, column, func, or_, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.repair_jobs.stored import Job, Person, TroubleCode, Vehicle, Visit
from desktop_app.repair_jobs.vehicle_identity import VehicleNames, matching_plate
from desktop_app.repair_jobs.vin import matching_vin
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.shop_record.dialect_search import among

_JOB = ("concern", "system", "cause", "cause_found", "correction", "hours", "price_cents")


@dataclass(slots=True)
class VehicleKnown:
    """A vehicle: its row's values."""

    id: int
    values: dict[str, Any]


@dataclass(slots=True)
class VisitKnown:
    """A visit with the number of its jobs."""

    id: int
    vehicle: VehicleKnown
    values: dict[str, Any]
    jobs: int = 0


@dataclass(slots=True)
class PairKnown:
    """A part that was replaced: kind, number, supplier, origin."""

    id: int | None
    said: tuple[str, str, str, str]


@dataclass(slots=True)
class JobKnown:
    """A job with what hangs on it; `links` are its earlier jobs: the link and its judgement."""

    id: int
    number: str
    visit: VisitKnown
    values: dict[str, Any]
    codes: set[str] = field(default_factory=set)
    pairs: list[PairKnown] = field(default_factory=list)
    links: dict[int, tuple[int | None, str | None]] = field(default_factory=dict)


class Known:
    """What is known of the jobs and vehicles of some rows; what is added is put in as well."""

    def __init__(self, connection: Connection, rows: Iterable[JobRow]) -> None:
        self._connection = connection
        listed = list(rows)
        self.jobs: dict[str, JobKnown] = {}
        self._vehicles: dict[int, VehicleKnown] = {}
        self._visits: dict[int, VisitKnown] = {}
        self._by_vin: dict[str, VehicleKnown] = {}
        self._by_plate: dict[str, list[VehicleKnown]] = {}
        self._by_day: dict[tuple[int, str], list[VisitKnown]] = {}
        self._read_jobs({n for row in listed for n in (row.job_number, row.return_of) if n})
        self._read_vehicles(
            {matching_vin(row.vin) for row in listed if row.vin},
            {matching_plate(row.plate) for row in listed if row.plate},
        )
        self._read_visits({str(row.opened_on or row.closed_on) for row in listed})

    def vehicle_of(self, row: JobRow) -> VehicleKnown | None:
        """Return the vehicle that a row means, as `find_vehicle` does."""
        seen = matching_vin(row.vin)
        if seen and seen in self._by_vin:
            return self._by_vin[seen]
        whole = VehicleNames(row.vin).known_vin
        for one in self._by_plate.get(matching_plate(row.plate), ()) if row.plate else ():
            if not (whole and VehicleNames(one.values["vin"] or "").known_vin):
                return one
        return None

    def visit_of(self, vehicle: VehicleKnown, day: str, odometer: int | None) -> VisitKnown | None:
        """Return the visit of a day; one that came with another odometer is another visit."""
        for one in self._by_day.get((vehicle.id, day), ()):
            if odometer is None or one.values["odometer_in"] in (None, odometer):
                return one
        return None

    def put_vehicle(self, one: VehicleKnown) -> None:
        """Know a vehicle from now on."""
        self._vehicles[one.id] = one
        if one.values["vin"]:
            self._by_vin.setdefault(one.values["vin"], one)
        if one.values["plate_key"]:
            self._by_plate.setdefault(one.values["plate_key"], []).insert(0, one)

    def put_visit(self, one: VisitKnown) -> None:
        """Know a visit from now on."""
        self._visits[one.id] = one
        day = one.values["came_at"][:10]
        self._by_day.setdefault((one.vehicle.id, day), []).append(one)

    def _read_jobs(self, numbers: Collection[str]) -> None:
        others = select(func.count()).where(Job.visit_id == Visit.id).correlate(Visit)
        wanted = (
            select(
                *(Job.id, Job.number, Job.visit_id, Job.left_at, Job.technician_id),
                *(getattr(Job, name) for name in _JOB),
                *(Job.window_months, Visit.vehicle_id, Visit.came_at, Visit.odometer_in),
                Visit.left_at.label("visit_left"),
                *(Vehicle.vin, Vehicle.plate, Vehicle.plate_key),
                *(Vehicle.description, Vehicle.odometer_unit),
                others.scalar_subquery().label("jobs"),
            )
            .join(Visit, Visit.id == Job.visit_id)
            .join(Vehicle, Vehicle.id == Visit.vehicle_id)
            .where(Job.number.in_(among_words(numbers)))
        )
        for row in self._connection.execute(wanted).mappings():
            vehicle = self._vehicle(row, row["vehicle_id"])
            visit = self._visits.get(row["visit_id"])
            if visit is None:
                values = {"came_at": row["came_at"], "left_at": row["visit_left"]}
                values["odometer_in"] = row["odometer_in"]
                visit = VisitKnown(row["visit_id"], vehicle, values, row["jobs"])
                self.put_visit(visit)
            names = (*_JOB, "technician_id", "left_at", "window_months")
            values = {name: row[name] for name in names}
            self.jobs[row["number"]] = JobKnown(row["id"], row["number"], visit, values)
        self._read_what_hangs_on_jobs()

    def _read_what_hangs_on_jobs(self) -> None:
        by_id = {job.id: job for job in self.jobs.values()}
        if not by_id:
            return
        chosen, read = among(by_id), self._connection.execute
        codes = select(TroubleCode.job_id, TroubleCode.code)
        for job, code in read(codes.where(TroubleCode.job_id.in_(chosen))):
            by_id[job].codes.add(code)
        for pair in read(select(Pair).where(Pair.job_id.in_(chosen)).order_by(Pair.id)):
            number = pair.number_on_box or pair.number_on_part
            said = (pair.part_kind, number, pair.supplier, pair.origin or "")
            by_id[pair.job_id].pairs.append(PairKnown(pair.id, said))
        for link in read(select(ReturnLink).where(ReturnLink.later_job_id.in_(chosen))):
            by_id[link.later_job_id].links[link.earlier_job_id] = (link.id, link.judgement)

    def _read_vehicles(self, vins: Collection[str], plates: Collection[str]) -> None:
        last = select(func.max(Visit.came_at)).where(Visit.vehicle_id == Vehicle.id)
        wanted = (
            select(Vehicle)
            .where(
                or_(
                    Vehicle.vin.in_(among_words(vins)),
                    Vehicle.plate_key.in_(among_words(plates)),
                )
            )
            .order_by(last.scalar_subquery(), Vehicle.id)  # each is put before those seen earlier
        )
        for row in self._connection.execute(wanted).mappings():
            one = self._vehicle(row, row["id"])
            if one.values["vin"]:
                self._by_vin[one.values["vin"]] = one
            if one.values["plate_key"]:
                self._by_plate.setdefault(one.values["plate_key"], []).insert(0, one)

    def _read_visits(self, days: Collection[str]) -> None:
        jobs = select(func.count()).where(Job.visit_id == Visit.id).correlate(Visit)
        wanted = select(
            *(Visit.id, Visit.vehicle_id, Visit.came_at, Visit.left_at, Visit.odometer_in),
            jobs.scalar_subquery().label("jobs"),
        ).where(
            Visit.vehicle_id.in_(among(self._vehicles)),
            func.substr(Visit.came_at, 1, 10).in_(among_words(days)),
        )
        for row in self._connection.execute(wanted.order_by(Visit.id)).mappings():
            if row["id"] not in self._visits:
                values = {name: row[name] for name in ("came_at", "left_at", "odometer_in")}
                vehicle = self._vehicles[row["vehicle_id"]]
                self.put_visit(VisitKnown(row["id"], vehicle, values, row["jobs"]))

    def _vehicle(self, row: Any, vehicle_id: int) -> VehicleKnown:
        names = ("vin", "plate", "plate_key", "description", "odometer_unit")
        made = VehicleKnown(vehicle_id, {name: row[name] for name in names})
        return self._vehicles.setdefault(vehicle_id, made)


def among_words(words: Collection[str]) -> Any:
    """Return texts as something to select from, however many there are."""
    listed = func.json_each(json.dumps(sorted(words))).table_valued(column("value"))
    return select(listed.c.value)


def people_known(connection: Connection) -> dict[str, int]:
    """Return the people of the shop by name."""
    return {row.name: row.id for row in connection.execute(select(Person.name, Person.id))}


def has_jobs(connection: Connection) -> bool:
    """Tell whether the shop has any job yet."""
    return connection.execute(select(Job.id).limit(1)).first() is not None
