"""The rows of visits and jobs, read into columns in the order of their ids."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, case, select

from desktop_app.repair_jobs.entry_bounds import MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.kept_job import kept_window
from desktop_app.repair_jobs.odometer import READING_SOURCES, reading_source
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.many_visits.growing_columns import GrowingColumns
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicle_codes import VehicleCodes
from desktop_app.returns_watched.stored_vehicles import each_block
from desktop_app.shop_record.kept_value import damaged, kept_day, kept_tick, row_place
from desktop_app.shop_record.trouble import ShopDamaged

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]
    Marks: TypeAlias = NDArray[np.bool_]

NOT_READ = -(2**62)  # no odometer of the record can say this


@dataclass(frozen=True, slots=True)
class MomentColumns:
    """Moments (n,): the day, NO_DAY where there is none, and what tells the order within a day."""

    day: Whole
    time: Whole


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


def read_visit_rows(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    vehicles: VehicleCodes,
    days: Days,
    *,
    by_index: bool = True,
) -> VisitRows:
    """Read the visits of some vehicles or of all that came until a day; later leaving is hidden."""

    wanted = select(
        *(Visit.id, Visit.vehicle_id, Visit.came_at),
        case((Visit.odometer_out.is_not(None), Visit.left_at)),  # it matters for nothing else
        *(Visit.odometer_in, Visit.odometer_out, Visit.odometer_source),
    )
    columns = GrowingColumns("qqiiiiqqb")
    for row in each_block(connection, wanted, Visit.vehicle_id, vehicle_ids, by_index=by_index):
        ids, of, came, left, seen_in, seen_out, source = row
        for kept, visit in dict(zip(source, ids, strict=True)).items():
            reading_source(kept, row_place("visit", visit))
        columns.add(
            *(ids, of, *days.of(came, "visit", ids), *days.of(left, "visit", ids)),
            *(_read(seen, "visit", ids) for seen in (seen_in, seen_out)),
            [_SOURCES[one] for one in source],
        )
    found = columns.joined_by_first()
    if until is not None:
        found = [column[found[2] <= until.toordinal()] for column in found]
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
        kept_tick(tick, "0 or 1", row_place("job", row))


def read_hand_overs(
    connection: Connection,
    vehicle_ids: Collection[int],
    until: date | None,
    visits: VisitRows,
    days: Days,
    *,
    by_index: bool,
) -> HandOvers:
    """Read the jobs of these visits, of these vehicles, as far as their odometers need it."""
    # Joined by their visits: to list a third of a million visits costs more than to look them up.
    wanted = select(Job.id, Job.visit_id, Job.left_at, Job.odometer_out).join(
        Visit, Visit.id == Job.visit_id
    )
    columns = GrowingColumns("qqiiq")
    for ids, visit, left, out in each_block(
        connection, wanted, Visit.vehicle_id, vehicle_ids, by_index=by_index
    ):
        columns.add(ids, visit, *days.of(left, "job", ids), _read(out, "job", ids))
    found = columns.joined_by_first()
    places, known = places_among(visits.ids, found[1])
    if not known.all():
        found, places = [column[known] for column in found], places[known]
    ids, _, left, left_time, out = found
    moments = MomentColumns(_hidden(left, until), left_time)
    return HandOvers(ids, places.astype("int32"), moments, out)


class _OrdinalDays(dict[str, int]):
    """Days as `date.toordinal` counts them, by the text that a kept moment begins with."""

    def __missing__(self, at: str) -> int:
        self[at] = day = kept_day(at).toordinal()
        return day


class _Times(dict[str, int]):
    """A number for each time of day, in the order of first mention."""

    def __missing__(self, at: str) -> int:
        self[at] = number = len(self)
        return number


class Days:
    """Reads kept moments as a day and a number for the time, whose text the number stands for."""

    def __init__(self) -> None:
        self._days = _OrdinalDays()
        self._times = _Times()

    def of(
        self, moments: Sequence[str | None], table: str, ids: Sequence[int]
    ) -> tuple[list[int], list[int]]:
        """Return the days of kept moments, NO_DAY where there is none, and the times' numbers.

        A ShopDamaged names the row of the table that holds what is no moment.
        """
        times = self._times
        found = self.alone(moments, table, ids)
        return found, [0 if at is None else times[at[10:]] for at in moments]

    def alone(self, moments: Sequence[str | None], table: str, ids: Sequence[int]) -> list[int]:
        """Return the days as `of` does, where no time of day matters."""
        days = self._days
        try:
            return [NO_DAY if at is None else days[at[:10]] for at in moments]
        except ShopDamaged:
            for row, at in zip(ids, moments, strict=True):
                if at is not None:
                    kept_day(at, row_place(table, row))  # names the whole of what is damaged
            raise

    def ranks(self) -> Whole:
        """Return by number where each time stands in the order of the texts."""
        import numpy as np

        ranks = np.zeros(max(len(self._times), 1), dtype=np.int32)
        for rank, text in enumerate(sorted(self._times)):
            ranks[self._times[text]] = rank
        return ranks


class _Sources(dict[str | None, int]):
    def __missing__(self, kept: str | None) -> int:
        self[kept] = place = READING_SOURCES.index(reading_source(kept))
        return place


_SOURCES = _Sources()


def _read(values: Sequence[int | None], table: str, ids: Sequence[int]) -> list[int]:
    known = [value for value in values if value is not None]
    if known and not 0 <= min(known) <= max(known) <= MOST_ON_AN_ODOMETER:
        for row, value in zip(ids, values, strict=True):
            if value is not None and not 0 <= value <= MOST_ON_AN_ODOMETER:
                raise damaged(value, "an odometer reading", row_place(table, row))
    return [NOT_READ if value is None else value for value in values]


def _hidden(days: Whole, until: date | None) -> Whole:
    import numpy as np

    return days if until is None else np.where(days > until.toordinal(), NO_DAY, days)
