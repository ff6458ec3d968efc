"""The jobs that matter from a day on, read into columns: the newest end of a long record."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import TYPE_CHECKING, Any, TypeAlias

from sqlalchemy import (
    Connection,
    Row,
    Select,
    and_,
    case,
    func,
    or_,
    select,
    text,
    union,
    union_all,
)

from desktop_app.repair_jobs.kept_job import MOST_WINDOW_DAYS, kept_window
from desktop_app.repair_jobs.stored import BOTH_MUST_END, Job, Visit
from desktop_app.returns_watched.many_visits.growing_columns import GrowingColumns
from desktop_app.returns_watched.many_visits.visit_columns import (
    NO_DAY,
    NO_LEG,
    Places,
    VisitColumns,
)
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_columns import RecordColumns, read_sold
from desktop_app.returns_watched.stored_moments import Days
from desktop_app.returns_watched.stored_same_day import read_same_day
from desktop_app.returns_watched.stored_traits import read_traits
from desktop_app.returns_watched.stored_vehicle_codes import VehicleCodes
from desktop_app.returns_watched.stored_vehicles import each_block, each_row, some_ids
from desktop_app.returns_watched.stored_visit_rows import check_hand_overs, check_jobs
from desktop_app.shop_record.databases.sql_days import days_before
from desktop_app.shop_record.kept_value import row_place

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int32]
    Marks: TypeAlias = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Period:
    """Which later visits matter (from `since` on), as seen on the day `until`.

    An earlier job matters where its window may still be open at `since`, or where it was handed
    over at most `reach` days before.
    """

    since: date
    until: date
    reach: int

    @property
    def first(self) -> date:
        """The first day of which all jobs are read."""
        return self.since - timedelta(days=min(self.reach, (self.since - date.min).days))


def read_recent(
    connection: Connection, period: Period, vehicles: VehicleCodes, names: Mapping[str, str]
) -> RecordColumns:
    """Read the jobs that were opened or handed over in a period, and those that reach into it.

    Where a window may stay open for ever, or longer than the period reaches, all jobs of the
    vehicle are there; so are all that a person judged. No odometer is read yet.
    """
    import numpy as np

    systems: list[str] = []
    rows = _rows(connection, period, vehicles, systems)
    ids, of, opened, left, same, most_days, most_miles, both, system, visit = rows
    codes = vehicles.codes[vehicles.places(of)]
    _, first, visit = np.unique(visit, return_index=True, return_inverse=True)
    visit = visit.astype(np.int32)
    same_day = read_same_day(connection, ids, visit, codes[first], opened[first])
    met = _met_again(codes, opened)
    met[same_day.job] = True
    own = [systems[number] for number in system[met].tolist()]
    traits = read_traits(connection, ids[met], False, names, own)
    places = np.flatnonzero(met).astype(np.int32)
    unknown = Places(np.full(len(ids), NO_LEG, np.int32), np.full(len(ids), np.nan))
    return RecordColumns(
        ids,
        VisitColumns(
            vehicle=codes,
            opened=opened,
            handed_over=left,
            came_with=unknown,
            left_with=unknown,
            window_days=most_days,
            window_miles=most_miles.astype(np.float64),
            ends_both=both != 0,
            sold=read_sold(connection, None, period.until, vehicles, codes, left),
            says_same=same != 0,
            trait_job=places[traits[0]],
            trait=traits[1],
            same_day=same_day,
        ),
    )


def longest_up_to(connection: Connection, most: int) -> int:
    """Return the days of the longest window among those of `most` days or fewer, 0 without any.

    A ShopDamaged names a job whose window no promise can have: no reader would count it.
    """
    days = Job.window_days
    wanted = select(func.max(case((days <= most, days))), func.min(days), func.max(days))
    usual, least, longest = (int(day or 0) for day in connection.execute(wanted).one())
    if not 0 <= least <= longest <= MOST_WINDOW_DAYS:
        wrong = select(Job.id, Job.number, days, Job.window_miles, Job.window_rule)
        beyond = or_(days < 0, days > MOST_WINDOW_DAYS)
        row = connection.execute(wrong.where(beyond).order_by(Job.id)).first()
        assert row is not None
        kept_window(
            *(row.window_days, row.window_miles, row.window_rule),
            row_place("job", row.id, row.number),
        )
    return usual


def widened(jobs: VisitColumns) -> VisitColumns:
    """Return jobs as if no odometer were known, with windows that miss none that may be open."""
    import numpy as np

    for_ever = jobs.ends_both & (jobs.window_miles > 0)
    return replace(
        jobs,
        window_days=np.where(for_ever, 0, jobs.window_days).astype(np.int32),
        window_miles=np.where(for_ever, 0.0, jobs.window_miles),
        ends_both=np.zeros(jobs.jobs, dtype=bool),
    )


def _rows(
    connection: Connection, period: Period, vehicles: VehicleCodes, systems: list[str]
) -> list[Any]:
    """Read the columns of the jobs, hidden what came after the period.

    The column before the last is the place of each one's system among `systems`, to which it is
    added; the last one is the visit.
    """
    import numpy as np

    wanted = (
        select(
            *(Job.id, Visit.vehicle_id, Visit.came_at, Job.left_at, Job.says_same),
            *(Job.window_days, Job.window_miles, Job.window_rule, Job.system, Job.visit_id),
        )
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.id.in_(_wanted(connection, period, vehicles)))
    )
    days = Days()
    columns = GrowingColumns("qqiibiibiq")
    known: dict[str, int] = {}
    for block in each_block(connection, wanted):
        ids, of, came, left, same, most_days, most_miles, rule, system, visit = block
        check_jobs(ids, same, most_days, most_miles, rule)
        both = [one == "both" for one in rule]
        moments = days.alone(came, "visit of job", ids), days.alone(left, "job", ids)
        places = [known.setdefault(one, len(known)) for one in system]
        columns.add(ids, of, *moments, same, most_days, most_miles, both, places, visit)
    systems.extend(known)
    found = columns.joined_by_first()
    check_hand_overs(found[0], found[2], found[3])
    last = period.until.toordinal()
    found = [column[found[2] <= last] for column in found]
    found[3] = np.where(found[3] > last, NO_DAY, found[3])
    return found


def _wanted(connection: Connection, period: Period, vehicles: VehicleCodes) -> Select[Any]:
    import numpy as np

    first = period.first.isoformat()
    came = select(Job.id).join(Visit, Visit.id == Job.visit_id)
    parts = [
        select(Job.id).where(Job.left_at >= first),
        came.where(Visit.came_at >= first),
        select(ReturnLink.earlier_job_id),
        select(ReturnLink.later_job_id),
    ]
    long = [row.vehicle_id for row in _long_windows(connection, period)]
    if long:
        own = vehicles.rows_of(np.array(long, dtype=np.int64)).tolist()
        parts.append(came.where(Visit.vehicle_id.in_(some_ids(own))))
    every = union(*parts).subquery()
    return select(every.c[0])


def _long_windows(connection: Connection, period: Period) -> Iterator[Row[Any]]:
    """Yield the vehicles of jobs that reach further than the period, or may stay open for ever."""
    begins = days_before(period.since, Job.window_days)
    left = func.coalesce(Job.left_at, "") != ""  # said so, the index of hand-overs is left alone
    # Each sort by an index of its own; joined with the visits, these would be gone through first.
    wanted = union_all(
        *(
            select(Job.visit_id).where(left, reaches)
            for reaches in (
                Job.window_days == 0,
                and_(text(BOTH_MUST_END), Job.window_miles > 0),
                and_(Job.window_days > period.reach, Job.left_at >= begins),
            )
        )
    )
    visits = set(connection.execute(wanted).scalars())
    return each_row(connection, select(Visit.vehicle_id).distinct(), Visit.id, visits)


def _met_again(vehicle: Whole, opened: Whole) -> Marks:
    """Mark the jobs of vehicles that came on more than one day."""
    import numpy as np

    days = np.unique((vehicle.astype(np.int64) << 32) | opened)
    again = np.bincount((days >> 32).astype(np.int64), minlength=1) > 1
    marks: Marks = again[vehicle]
    return marks
