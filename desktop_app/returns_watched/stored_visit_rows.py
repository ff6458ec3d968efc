"""The rows of visits and jobs, read into columns in the order of their ids."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any, TypeAlias, cast

from sqlalchemy import Connection, case, select

from desktop_app.language import tr
from desktop_app.repair_jobs.entry_bounds import MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.kept_job import kept_hand_over, kept_window
from desktop_app.repair_jobs.odometer import READING_SOURCES, reading_source
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.many_visits.growing_columns import GrowingColumns
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.stored_moments import Days, MomentColumns
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicle_codes import VehicleCodes
from desktop_app.returns_watched.stored_vehicles import each_block
from desktop_app.shop_record.kept_value import damaged, kept_day, kept_tick, row_place

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]
    Marks: TypeAlias = NDArray[np.bool_]

NOT_READ = -(2**62)  # no odometer of the record can say this


@dataclass(frozen=True, slots=True)
class VisitRows:
    """Visits (v,) by rising id; an odometer is NOT_READ where there is no number."""

    ids: Ids
    vehicle: Whole
    in_km: Marks
    came: MomentColumns
    left: MomentColumns
    odometer_in: Ids
    odometer_out: Ids
    source: NDArray[np.int8]


@dataclass(frozen=True, slots=True)
class HandOvers:
    """Jobs (n,) by rising id; `visit` is the place of each one's visit among the visits."""

    ids: Ids
    visit: Whole
    left: MomentColumns
    odometer_out: Ids


@dataclass(frozen=True, slots=True)
class JobRows(HandOvers):
    """Jobs with what the rules of windows need of them."""

    says_same: Marks
    window_days: Whole
    window_miles: Whole
    ends_both: Marks


# What is read of a visit, and of a hand-over; when a visit left matters only with its odometer.
_VISIT = (
    *(Visit.id, Visit.vehicle_id, Visit.came_at),
    case((Visit.odometer_out.is_not(None), Visit.left_at)),
    *(Visit.odometer_in, Visit.odometer_out, Visit.odometer_source),
)
_HAND_OVER = (Job.id, Job.left_at, Job.odometer_out)
_VISIT_KINDS, _HAND_OVER_KINDS = "qqiiiiqqb", "qiiq"
_NO_JOB = -1


def read_visit_rows(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    vehicles: VehicleCodes,
    days: Days,
) -> VisitRows:
    """Read the visits of some vehicles or of all that came until a day; later leaving is hidden."""
    columns = GrowingColumns(_VISIT_KINDS)
    for block in each_block(connection, select(*_VISIT), Visit.vehicle_id, vehicle_ids):
        columns.add(*_visits(block, days))
    return _visit_rows(_until(columns.joined_by_first(), until), until, vehicles)


def read_hand_overs(
    connection: Connection,
    vehicle_ids: Collection[int],
    until: date | None,
    vehicles: VehicleCodes,
    days: Days,
    *,
    by_index: bool = True,
) -> tuple[VisitRows, HandOvers]:
    """Read the visits of some vehicles, and their jobs as far as the odometers need them.

    Together, for to find a visit's jobs costs less than to find those visits once more.
    """
    import numpy as np

    wanted = select(*_VISIT, *_HAND_OVER).outerjoin(Job, Job.visit_id == Visit.id)
    columns = GrowingColumns(_VISIT_KINDS + _HAND_OVER_KINDS)
    for block in each_block(connection, wanted, Visit.vehicle_id, vehicle_ids, by_index=by_index):
        jobs, left, out = block[len(_VISIT) :]
        columns.add(
            *_visits(block[: len(_VISIT)], days),
            _whole(jobs, _NO_JOB),
            *(*days.of(left, "job", jobs), _read(out, "job", jobs)),
        )
    found = _until(columns.joined_by_first(), until)
    first = np.ones(len(found[0]), dtype=bool)
    first[1:] = found[0][1:] != found[0][:-1]
    visits = _visit_rows([column[first] for column in found[: len(_VISIT_KINDS)]], until, vehicles)
    visit = np.cumsum(first, dtype=np.int32) - np.int32(1)
    ids = found[len(_VISIT_KINDS)]
    rows = np.flatnonzero(ids != _NO_JOB)
    rows = rows[np.argsort(ids[rows], kind="stable")]
    ids, left, left_time, out = (column[rows] for column in found[len(_VISIT_KINDS) :])
    return visits, HandOvers(ids, visit[rows], MomentColumns(_hidden(left, until), left_time), out)


def _visits(block: Sequence[Sequence[Any]], days: Days) -> Iterator[Sequence[int]]:
    """Yield the columns of visits as numbers, from a block of rows."""
    ids, of, came, left, seen_in, seen_out, source = block
    for kept, visit in dict(zip(source, ids, strict=True)).items():
        reading_source(kept, row_place("visit", visit))
    yield from (ids, of, *days.of(came, "visit", ids), *days.of(left, "visit", ids))
    yield from (_read(seen, "visit", ids) for seen in (seen_in, seen_out))
    yield [_SOURCES[one] for one in source]


def _until(found: list[Any], until: date | None) -> list[Any]:
    """Leave out what came after a day; the third column says when it came."""
    if until is None:
        return found
    seen = found[2] <= until.toordinal()
    return found if seen.all() else [column[seen] for column in found]


def _visit_rows(found: list[Any], until: date | None, vehicles: VehicleCodes) -> VisitRows:
    ids, of, came, came_time, left, left_time, seen_in, seen_out, source = found
    rows = vehicles.places(of)
    return VisitRows(
        ids, vehicles.codes[rows], vehicles.in_km[rows],
        MomentColumns(came, came_time), MomentColumns(_hidden(left, until), left_time),
        seen_in, seen_out, source,
    )  # fmt: skip


def read_job_rows(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    visits: VisitRows,
    days: Days,
) -> JobRows:
    """Read the jobs of these visits; a hand-over after the day `until` is hidden."""
    import numpy as np

    wanted = select(
        *(Job.id, Job.visit_id, Job.says_same, Job.left_at, Job.odometer_out),
        *(Job.window_days, Job.window_miles, Job.window_rule),
    )
    if vehicle_ids is not None:
        wanted = wanted.join(Visit, Visit.id == Job.visit_id)
    columns = GrowingColumns("qqbiiqiib")
    for block in each_block(connection, wanted, Visit.vehicle_id, vehicle_ids):
        ids, visit, same, left, out, most_days, most_miles, rule = block
        check_jobs(ids, same, most_days, most_miles, rule)
        columns.add(
            *(ids, visit, same, *days.of(left, "job", ids), _read(out, "job", ids)),
            *(most_days, most_miles, [one == "both" for one in rule]),
        )
    found = columns.joined_by_first()
    places, known = places_among(visits.ids, found[1])
    if not known.all():
        found, places = [column[known] for column in found], places[known]
    ids, _, same, left, left_time, out, most_days, most_miles, both = found
    check_hand_overs(ids, visits.came.day[places], left)
    moments = MomentColumns(_hidden(left, until), left_time)
    return JobRows(
        ids, places.astype(np.int32), moments, out, same != 0, most_days, most_miles, both != 0
    )


def check_jobs(
    ids: Sequence[int],
    same: Sequence[int],
    days: Sequence[int],
    miles: Sequence[int],
    rules: Sequence[str],
) -> None:
    """Look once at each distinct window and answer; a ShopDamaged names a row that holds it."""
    for window, row in dict(zip(zip(days, miles, rules, strict=True), ids, strict=True)).items():
        kept_window(*window, row_place("job", row))
    for tick, row in dict(zip(same, ids, strict=True)).items():
        kept_tick(tick, tr("0 or 1"), row_place("job", row))


def check_hand_overs(ids: Ids, came: Whole, left: Whole) -> None:
    """Look at all jobs (n,) at once; a ShopDamaged names one that left before its car came."""
    import numpy as np

    for row in np.flatnonzero((left != NO_DAY) & (left < came))[:1].tolist():
        came_on, left_on = (date.fromordinal(int(day[row])) for day in (came, left))
        kept_hand_over(came_on, left_on, row_place("job", int(ids[row])))


def read_hand_over(connection: Connection, job_id: int) -> None:
    """Look at one job; a ShopDamaged names it where it left before its car came."""
    wanted = select(Job.number, Job.left_at, Visit.came_at).join(Visit, Visit.id == Job.visit_id)
    row = connection.execute(wanted.where(Job.id == job_id)).one()
    place = row_place("job", job_id, row.number)
    left = None if row.left_at is None else kept_day(row.left_at, place)
    kept_hand_over(kept_day(row.came_at, place), left, place)


class _Sources(dict[str | None, int]):
    def __missing__(self, kept: str | None) -> int:
        self[kept] = place = READING_SOURCES.index(reading_source(kept))
        return place


_SOURCES = _Sources()


def _read(values: Sequence[int | None], table: str, ids: Sequence[int]) -> Sequence[int]:
    found = _whole(values, NOT_READ)
    known = found if found is values else [value for value in values if value is not None]
    if known and not 0 <= min(known) <= max(known) <= MOST_ON_AN_ODOMETER:
        for row, value in zip(ids, values, strict=True):
            if value is not None and not 0 <= value <= MOST_ON_AN_ODOMETER:
                raise damaged(value, tr("an odometer reading"), row_place(table, row))
    return found


def _whole(values: Sequence[int | None], nothing: int) -> Sequence[int]:
    """Return the numbers with one that stands for nothing; as they are where all are there."""
    if None not in values:
        return cast(Sequence[int], values)
    return [nothing if value is None else value for value in values]


def _hidden(days: Whole, until: date | None) -> Whole:
    import numpy as np

    return days if until is None else np.where(days > until.toordinal(), NO_DAY, days)
