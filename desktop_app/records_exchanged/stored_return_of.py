"""Whether the job of a row can be the return that the row says: refused before it is kept.

What the engine of returns would pass over is no return: another car's job, one that came on the
same day (unless the clock knows it to be later), one that came before the earlier was handed over.
"""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.language import tr
from desktop_app.records_exchanged.import_told import RowTrouble
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.records_exchanged.row_words import judgement_of
from desktop_app.records_exchanged.stored_known import JobKnown, VehicleKnown
from desktop_app.records_exchanged.stored_room import Rooms
from desktop_app.repair_jobs.later_visit import is_later_visit
from desktop_app.repair_jobs.vehicle_identity import VehicleNames, same_vehicle
from desktop_app.returns_watched.stored_one_car import are_one_car
from desktop_app.shop_record.deed import Deed


class ReturnsOf:
    """Looks at what rows say in return_of."""

    def __init__(self, deed: Deed, rooms: Rooms) -> None:
        self._deed, self._rooms = deed, rooms

    def check_days(self, row: JobRow, earlier: JobKnown, came: str, job: JobKnown | None) -> None:
        """Raise RowTrouble where the days, or two judgements of one file, contradict a return.

        `came` is the day of its coming, or the moment where that is kept. `job` is the row's own
        where it is known already.
        """
        left = earlier.values["left_at"]
        if left is None or left[:10] > came[:10]:
            raise _no_return(row, tr("That job must be closed before this one comes."))
        if not is_later_visit(earlier.visit.values["came_at"], left, came):
            why = tr("Both came on one day; where no time of day tells more, that is one visit.")
            raise _no_return(row, why)
        if job is None:
            return
        before = job.links.get(earlier.id) or (None, None)
        seen = self._rooms.is_new(job)
        if seen and before[1] and row.judgement and before[1] != judgement_of(row):
            why = tr(
                "Another row of this file says “{judgement}” of the same two jobs.",
                judgement=before[1],
            )
            raise RowTrouble("judgement", row.judgement, why)

    def check_car(self, row: JobRow, earlier: JobKnown, vehicle: VehicleKnown | None) -> None:
        """Raise RowTrouble where the jobs are of two cars.

        `vehicle` is the one that the row's job has, or will have; None is a new one.
        """
        if vehicle is None or not self._is_one_car(row, vehicle, earlier.visit.vehicle):
            kept = vehicle.values if vehicle else {}
            if not (row.vin or row.plate or kept.get("vin") or kept.get("plate")):
                why = tr("This row names no car; a return needs its plate or VIN.")
            else:
                why = tr(
                    "That job is another car's, by VIN and plate; a return is of the same car."
                )
            raise _no_return(row, why)

    def _is_one_car(self, row: JobRow, vehicle: VehicleKnown, before: VehicleKnown) -> bool:
        if vehicle.id == before.id:
            return True
        self._rooms.write()
        if are_one_car(self._deed.connection, vehicle.id, before.id):
            return True
        kept = vehicle.values["vin"] or "", vehicle.values["plate"] or ""
        filled = kept[0] or row.vin, kept[1] or row.plate
        names = VehicleNames(before.values["vin"] or "", before.values["plate"] or "")
        return filled != kept and same_vehicle(VehicleNames(*filled), names) != "different"


def why_not_there(row: JobRow, refused: Mapping[str, int], waiting: Mapping[str, JobRow]) -> str:
    """Return why the earlier job that a row names isn't there after the whole file was read.

    `refused` are the rows that were refused, by their job's number; `waiting` those that are too,
    because their own earlier jobs are not there.
    """
    named = row.return_of
    beyond = waiting.get(named)
    if beyond is not None and beyond.return_of == row.job_number:
        return tr(
            "{job} (row {row:,}) names this job as the earlier one in its turn.",
            job=named,
            row=beyond.row,
        )
    at = refused.get(named, beyond.row if beyond is not None else 0)
    if at:
        return tr("{job} is refused too (row {row:,}).", job=named, row=at)
    return tr("No job has this number, neither here nor in the file.")


def _no_return(row: JobRow, why: str) -> RowTrouble:
    return RowTrouble("return_of", row.return_of, why)
