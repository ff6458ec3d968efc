"""What the record knows already of the jobs and vehicles that some rows name."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from sqlalchemy import Connection, func, or_, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.repair_jobs.stored import Job, Person, TroubleCode, Vehicle, Visit
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.repair_jobs.vin import is_well_formed, matching_vin
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.shop_record.databases.listed import among, among_words
from desktop_app.shop_record.databases.sql_days import day_of

_JOB = ("concern", "system", "cause", "cause_found", "correction", "hours", "price_cents")

_REMEMBERED = 10_000  # each is looked up a few times within a batch
_VEHICLE = ("vin", "plate", "plate_key", "tag", "description", "odometer_unit")


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
    """A job with what hangs on it; `links` are its earlier jobs: the link and its judgement.

    `conditions` are those that this import read out of its concern.
    """

    id: int
    number: str
    visit: VisitKnown
    values: dict[str, Any]
    codes: list[str] = field(default_factory=list)
    conditions: tuple[str, ...] = ()
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
        self._by_vin: dict[str, dict[int, VehicleKnown]] = {}
        self._by_plate: dict[str, dict[int, VehicleKnown]] = {}
        self._came: dict[int, str] = {}  # when vehicles came last, of the visits known here
        self._kept_last: dict[int, str] = {}  # the same of all visits kept, where it was asked
        self._by_day: dict[tuple[int, str], list[VisitKnown]] = {}
        self._read_jobs({n for row in listed for n in (row.job_number, row.return_of) if n})
        self._read_vehicles(
            {vin_of(row) for row in listed if row.vin},
            {plate_of(row) for row in listed if row.plate},
        )
        self._read_visits({str(row.opened_on or row.closed_on) for row in listed})

    def vehicle_of(self, row: JobRow) -> VehicleKnown | None:
        """Return the vehicle that a row means, by the same rule as `find_vehicle`."""
        named = [*self._by_vin.get(vin_of(row), {}).values()] if row.vin else []
        if not named and row.plate:
            named = [*self._by_plate.get(plate_of(row), {}).values()]
            if named and is_well_formed(row.vin):
                named = [one for one in named if not is_well_formed(one.values["vin"] or "")]
        return self._seen_last(named) if len(named) > 1 else named[0] if named else None

    def visit_of(self, vehicle: VehicleKnown, day: str, odometer: int | None) -> VisitKnown | None:
        """Return the visit of a day; one that came with another odometer is another visit."""
        for one in self._by_day.get((vehicle.id, day), ()):
            is_that_day = one.values["came_at"][:10] == day
            if is_that_day and (odometer is None or one.values["odometer_in"] in (None, odometer)):
                return one
        return None

    def put_vehicle(self, one: VehicleKnown) -> None:
        """Know a vehicle from now on, by the names that it has now."""
        self._vehicles[one.id] = one
        for name, by_name in (("vin", self._by_vin), ("plate_key", self._by_plate)):
            if one.values[name]:
                by_name.setdefault(one.values[name], {})[one.id] = one

    def put_visit(self, one: VisitKnown) -> None:
        """Know a visit from now on."""
        self._visits[one.id] = one
        came = one.values["came_at"]
        self._by_day.setdefault((one.vehicle.id, came[:10]), []).append(one)
        self._came[one.vehicle.id] = max(came, self._came.get(one.vehicle.id, ""))

    def moved(self, one: VisitKnown) -> None:
        """Know a visit by its new day; it is written already."""
        self._came.pop(one.vehicle.id, None)
        self._kept_last.pop(one.vehicle.id, None)
        self.put_visit(one)

    def _seen_last(self, named: list[VehicleKnown]) -> VehicleKnown:
        missing = [one.id for one in named if one.id not in self._kept_last]
        if missing:
            last = select(Visit.vehicle_id, func.max(Visit.came_at)).group_by(Visit.vehicle_id)
            found = self._connection.execute(last.where(Visit.vehicle_id.in_(among(missing))))
            self._kept_last |= dict.fromkeys(missing, "") | {row[0]: row[1] for row in found}
        came, kept = self._came, self._kept_last
        return max(named, key=lambda one: (max(came.get(one.id, ""), kept[one.id]), one.id))

    def _read_jobs(self, numbers: Collection[str]) -> None:
        others = select(func.count()).where(Job.visit_id == Visit.id).correlate(Visit)
        wanted = (
            select(
                *(Job.id, Job.number, Job.visit_id, Job.left_at, Job.technician_id),
                *(getattr(Job, name) for name in _JOB),
                *(Job.window_months, Visit.vehicle_id, Visit.came_at, Visit.odometer_in),
                Visit.left_at.label("visit_left"),
                *(getattr(Vehicle, name) for name in _VEHICLE),
                others.scalar_subquery().label("jobs"),
            )
            .join(Visit, Visit.id == Job.visit_id)
            .join(Vehicle, Vehicle.id == Visit.vehicle_id)
            .where(Job.number.in_(among_words(numbers)))
            .order_by(Job.id)
        )
        for row in self._connection.execute(wanted).mappings():
            vehicle = self._vehicle(row["vehicle_id"], [row[name] for name in _VEHICLE])
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
            by_id[job].codes.append(code)
        for pair in read(select(Pair).where(Pair.job_id.in_(chosen)).order_by(Pair.id)):
            number = pair.number_on_box or pair.number_on_part
            said = (pair.part_kind, number, pair.supplier, pair.origin or "")
            by_id[pair.job_id].pairs.append(PairKnown(pair.id, said))
        for link in read(select(ReturnLink).where(ReturnLink.later_job_id.in_(chosen))):
            by_id[link.later_job_id].links[link.earlier_job_id] = (link.id, link.judgement)

    def _read_vehicles(self, vins: Collection[str], plates: Collection[str]) -> None:
        wanted = select(Vehicle.id, *(getattr(Vehicle, name) for name in _VEHICLE)).where(
            or_(Vehicle.vin.in_(among_words(vins)), Vehicle.plate_key.in_(among_words(plates)))
        )
        rows: Any = self._connection.execute(wanted.order_by(Vehicle.id)).all()
        for kept_id, *values in rows:
            self.put_vehicle(self._vehicle(kept_id, values))

    def _read_visits(self, days: Collection[str]) -> None:
        jobs = select(func.count()).where(Job.visit_id == Visit.id).correlate(Visit)
        wanted = select(
            *(Visit.id, Visit.vehicle_id, Visit.came_at, Visit.left_at, Visit.odometer_in),
            jobs.scalar_subquery().label("jobs"),
        ).where(
            Visit.vehicle_id.in_(among(self._vehicles)),
            day_of(Visit.came_at).in_(among_words(days)),
        )
        rows: Any = self._connection.execute(wanted.order_by(Visit.id)).all()
        for kept_id, vehicle_id, came_at, left_at, odometer, beside in rows:
            if kept_id not in self._visits:
                values = {"came_at": came_at, "left_at": left_at, "odometer_in": odometer}
                self.put_visit(VisitKnown(kept_id, self._vehicles[vehicle_id], values, beside))

    def _vehicle(self, vehicle_id: int, values: Iterable[Any]) -> VehicleKnown:
        if vehicle_id not in self._vehicles:
            kept = dict(zip(_VEHICLE, values, strict=True))
            self._vehicles[vehicle_id] = VehicleKnown(vehicle_id, kept)
        return self._vehicles[vehicle_id]


def vin_of(row: JobRow) -> str:
    """Return the row's VIN as it is compared."""
    return _matching_vin(row.vin)


def plate_of(row: JobRow) -> str:
    """Return the row's plate as it is compared."""
    return _matching_plate(row.plate)


_matching_vin = lru_cache(_REMEMBERED)(matching_vin)
_matching_plate = lru_cache(_REMEMBERED)(matching_plate)


def people_known(connection: Connection) -> dict[str, int]:
    """Return the people of the shop by name."""
    return {row.name: row.id for row in connection.execute(select(Person.name, Person.id))}


def has_jobs(connection: Connection) -> bool:
    """Tell whether the shop has any job yet."""
    return connection.execute(select(Job.id).limit(1)).first() is not None
