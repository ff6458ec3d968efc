"""The vehicles and visits of rows: found among those that are known, filled in, or added."""

from __future__ import annotations

from datetime import date

from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.records_exchanged.row_words import Moments, reading_in
from desktop_app.records_exchanged.stored_follow import WordsFollow
from desktop_app.records_exchanged.stored_known import (
    JobKnown,
    Known,
    VehicleKnown,
    VisitKnown,
    plate_of,
    vin_of,
)
from desktop_app.records_exchanged.stored_merge import visit_end
from desktop_app.records_exchanged.stored_room import Rooms, Values
from desktop_app.repair_jobs.our_words import NOT_IMPORTED
from desktop_app.repair_jobs.stored import Vehicle, Visit
from desktop_app.shop_record.deed import Deed


class Visits:
    """Brings vehicles and visits into the record; `unit` is the shop's own, of new vehicles."""

    def __init__(
        self, deed: Deed, rooms: Rooms, words: WordsFollow, moments: Moments, unit: str
    ) -> None:
        self._deed, self._rooms, self._words = deed, rooms, words
        self._moments, self._unit = moments, unit

    def vehicle_of(
        self, known: Known, row: JobRow, earlier: JobKnown | None
    ) -> VehicleKnown | None:
        """Return the vehicle of a new job, None for a new one.

        Where neither the row nor the earlier job that it names has a VIN or a plate, the two are
        one car because the row says so.
        """
        if earlier is None or row.vin or row.plate:
            return known.vehicle_of(row)
        before = earlier.visit.vehicle
        return None if before.values["vin"] or before.values["plate_key"] else before

    def visit_of(
        self,
        known: Known,
        row: JobRow,
        vehicle: VehicleKnown | None,
        came: date,
        left_at: str | None,
    ) -> VisitKnown:
        """Return the visit of a new job that left at a moment, or is still here."""
        if vehicle is None:
            vehicle = self._add_vehicle(known, row)
        else:
            self.fill(known, vehicle, row)
        odometer = reading_in(row, vehicle.values["odometer_unit"])
        visit = known.visit_of(vehicle, came.isoformat(), odometer)
        if visit is None:
            return self._add_visit(known, vehicle, came, left_at, odometer)
        news: Values = {}
        before = visit.values["left_at"]
        alone = visit.jobs == 0
        ends = left_at if left_at is None or alone else before and max(before, left_at)
        if ends != before:
            news["left_at"] = ends
        if odometer is not None and visit.values["odometer_in"] is None:
            news |= {"odometer_in": odometer, "odometer_unread": None}
        if news:
            self._rooms.change(Visit, visit, news)
        visit.jobs += 1
        return visit

    def fill(self, known: Known, vehicle: VehicleKnown, row: JobRow) -> bool:
        """Fill in what is newly known of a vehicle; what is known already stays."""
        news: Values = {}
        if row.vin and not vehicle.values["vin"]:
            news["vin"] = vin_of(row)
        if row.plate and not vehicle.values["plate_key"]:
            news.update(plate=row.plate, plate_key=plate_of(row))
        if row.vehicle and not vehicle.values["description"]:
            news["description"] = row.vehicle
        if news:
            self._rooms.change(Vehicle, vehicle, news)
            known.put_vehicle(vehicle)
            if self._rooms[Vehicle].is_new(vehicle.id):
                self._words.vehicle_changed(vehicle.id)
        return bool(news)

    def change(self, known: Known, visit: VisitKnown, news: Values) -> None:
        """Change a visit, as far as it is another one now to who comes after."""
        self._rooms.change(Visit, visit, news)
        if "came_at" in news:
            self._rooms.write()
            known.moved(visit)

    def end_anew(self, job: JobKnown) -> None:
        """Let a visit end with the last of its jobs, one of which was closed on another day."""
        self._rooms.write()
        self._rooms.change(Visit, job.visit, {"left_at": visit_end(self._deed, job.visit.id)})

    def _add_visit(
        self,
        known: Known,
        vehicle: VehicleKnown,
        came: date,
        left_at: str | None,
        odometer: int | None,
    ) -> VisitKnown:
        values: Values = {"came_at": self._moments.at(came), "left_at": left_at}
        values["odometer_in"] = odometer
        unread = NOT_IMPORTED if odometer is None else None
        kept = {**values, "vehicle_id": vehicle.id, "odometer_unread": unread}
        visit = VisitKnown(self._rooms[Visit].add(kept), vehicle, values, 1)
        known.put_visit(visit)
        return visit

    def _add_vehicle(self, known: Known, row: JobRow) -> VehicleKnown:
        values: Values = {
            **{"vin": vin_of(row) or None, "plate": row.plate or None},
            **{"plate_key": plate_of(row) or None, "tag": None, "description": row.vehicle},
            "odometer_unit": row.odometer_unit or self._unit,
        }
        vehicle = VehicleKnown(self._rooms[Vehicle].add(values), values)
        known.put_vehicle(vehicle)
        return vehicle
