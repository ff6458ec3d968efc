"""The jobs read for jobs.csv, in the order in which they were written down."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from typing import Any

from sqlalchemy import Connection, func, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.records_exchanged.export_job_lines import OWN, JobsTold
from desktop_app.records_exchanged.stored_export import AT_A_TIME
from desktop_app.repair_jobs.stored import Job, Person, TroubleCode, Vehicle, Visit
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.shop_record.databases.sql_days import day_of
from desktop_app.shop_record.tables import aliased

_EARLIER, _CAME = aliased(Job), aliased(Visit)
_VALUES: dict[str, Any] = {
    "opened_on": day_of(Visit.came_at),
    "closed_on": day_of(func.coalesce(Job.left_at, "")),
    "vin": func.coalesce(Vehicle.vin, ""),
    "plate": func.coalesce(Vehicle.plate, ""),
    "vehicle": Vehicle.description,
    "odometer": Visit.odometer_in,
    "odometer_unit": Vehicle.odometer_unit,
    "technician": func.coalesce(Person.name, ""),
}
_JOBS = (
    select(*(_VALUES[name] if name in _VALUES else getattr(Job, name) for name in OWN))
    .join(Visit, Visit.id == Job.visit_id)
    .join(Vehicle, Vehicle.id == Visit.vehicle_id)
    .outerjoin(Person, Person.id == Job.technician_id)
)
# Codes read after the repair would look like those the car came with, and a part that was
# compared but not fitted like one that was: neither is said here.
_CODES = (
    select(TroubleCode.job_id, TroubleCode.code)
    .where(TroubleCode.stage == "found")
    .order_by(TroubleCode.id)
)
_ON_BOX, _ON_PART = Pair.number_on_box, Pair.number_on_part
_PARTS = (
    select(
        *(Pair.job_id, Pair.part_kind, func.coalesce(func.nullif(_ON_BOX, ""), _ON_PART)),
        *(Pair.supplier, func.coalesce(Pair.origin, "")),
    )
    .where(Pair.fitted == 1)
    .order_by(Pair.id)
)
# A return, with both jobs and the visits they were of.
_OF_SAME_VEHICLE = (
    select(
        *(ReturnLink.later_job_id, _EARLIER.number, func.coalesce(ReturnLink.judgement, "")),
        ReturnLink.earlier_job_id < ReturnLink.later_job_id,
    )
    .join(Job, Job.id == ReturnLink.later_job_id)
    .join(Visit, Visit.id == Job.visit_id)
    .join(_EARLIER, _EARLIER.id == ReturnLink.earlier_job_id)
    .join(_CAME, _CAME.id == _EARLIER.visit_id)
    .where(ReturnLink.same_vehicle == 1)
)
# Only what an import takes: of the same vehicle, and closed before the later one came. Of two that
# came on one day it takes none: the table has no times of day.
_RETURNS = _OF_SAME_VEHICLE.where(
    ReturnLink.later_job_id != ReturnLink.earlier_job_id,
    day_of(_EARLIER.left_at) <= day_of(Visit.came_at),
    day_of(_CAME.came_at) != day_of(Visit.came_at),
).order_by(ReturnLink.earlier_job_id)
_OF_ONE_DAY = _OF_SAME_VEHICLE.where(
    _CAME.id != Visit.id, day_of(_CAME.came_at) == day_of(Visit.came_at)
).limit(1)


def has_returns_of_one_day(connection: Connection) -> bool:
    """Tell whether jobs.csv leaves out a return, because it came on the day of the job before."""
    return connection.execute(_OF_ONE_DAY).first() is not None


def jobs_told(connection: Connection) -> Iterator[JobsTold]:
    """Give all jobs, some thousands at a time."""
    last = 0
    while True:
        wanted = _JOBS.where(Job.id > last).order_by(Job.id).limit(AT_A_TIME)
        own: Sequence[Any] = connection.execute(wanted).all()
        if not own:
            return
        span, last = (own[0].id, own[-1].id), own[-1].id
        yield JobsTold(
            own,
            {
                job: [one[0] for one in codes]
                for job, codes in _by_job(connection, _CODES, TroubleCode.job_id, span).items()
            },
            _by_job(connection, _PARTS, Pair.job_id, span),
            _by_job(connection, _RETURNS, ReturnLink.later_job_id, span),
        )


def _by_job(
    connection: Connection, wanted: Any, job: Any, span: tuple[int, int]
) -> dict[int, list[Any]]:
    """Return by job what hangs on the jobs of a span of ids, but not what says nothing."""
    found: dict[int, list[Any]] = defaultdict(list)
    for row in connection.execute(wanted.where(job.between(*span))):
        if any(row[1:]):
            found[row[0]].append(tuple(row[1:]))
    return found
