"""The two jobs of a return as they stand side by side: then and now."""

from __future__ import annotations

from dataclasses import dataclass

from sqlalchemy import Connection, select

from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, TroubleCode, Vehicle, Visit


@dataclass(frozen=True, slots=True)
class JobThen:
    """What was heard, found and done in one job; days are ISO dates, the odometer with its unit."""

    job_id: int
    number: str
    came_on: str
    left_on: str
    odometer: str
    concern: str
    cause: str
    correction: str
    parts: tuple[str, ...]
    codes: tuple[str, ...]

    def lines(self) -> tuple[tuple[str, str], ...]:
        """Return name and words, in the order of the work; what nobody wrote says so."""
        return (
            ("In the shop", f"{self.came_on} to {self.left_on or 'now'}, {self.odometer}"),
            ("Concern", self.concern or "not written"),
            ("Codes", ", ".join(self.codes) or "none"),
            ("Cause", self.cause or "not named"),
            ("Correction", self.correction or "not written"),
            ("Parts", ", ".join(self.parts) or "none"),
        )


def read_then_and_now(
    connection: Connection, earlier_job: int, later_job: int
) -> tuple[JobThen, JobThen] | None:
    """Read both jobs of a return; None where one of them is no longer there."""
    then, now = _read(connection, earlier_job), _read(connection, later_job)
    return None if then is None or now is None else (then, now)


def _read(connection: Connection, job_id: int) -> JobThen | None:
    wanted = (
        select(
            Job.number,
            Job.concern,
            Job.cause,
            Job.cause_found,
            Job.correction,
            Job.left_at,
            Job.odometer_out,
            Visit.came_at,
            Visit.odometer_in,
            Vehicle.odometer_unit,
        )
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .where(Job.id == job_id)
    )
    row = connection.execute(wanted).first()
    if row is None:
        return None
    read = row.odometer_in if row.odometer_out is None else row.odometer_out
    kinds = select(Pair.part_kind).where(Pair.job_id == job_id).order_by(Pair.id)
    codes = select(TroubleCode.code).where(
        TroubleCode.job_id == job_id, TroubleCode.stage == "found"
    )
    return JobThen(
        job_id=job_id,
        number=row.number,
        came_on=row.came_at[:10],
        left_on="" if row.left_at is None else row.left_at[:10],
        odometer="odometer not read" if read is None else f"{read:,} {row.odometer_unit}",
        concern=row.concern,
        cause="not caught" if row.cause_found == 0 else row.cause,
        correction=row.correction,
        parts=tuple(dict.fromkeys(map(kind_words, connection.execute(kinds).scalars()))),
        codes=tuple(sorted(set(connection.execute(codes).scalars()))),
    )
