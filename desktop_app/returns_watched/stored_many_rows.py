"""What was found in columns, written out as the list of returns."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.odometer import reading_source
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched.candidate import Candidate, chains_of, met
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_columns import RecordColumns
from desktop_app.returns_watched.stored_details import JobDetails
from desktop_app.returns_watched.stored_facts import Facts, JobSaid
from desktop_app.returns_watched.stored_links import read_links
from desktop_app.returns_watched.stored_many import ManyMet
from desktop_app.returns_watched.stored_readings import Odometers
from desktop_app.returns_watched.stored_return_rows import ReturnsFound
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicles import each_row, read_vehicles
from desktop_app.returns_watched.window import Window

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]


_AT_ONCE = 10_000  # pairs that are written out in one step


def written_out(
    connection: Connection, found: ManyMet, main: Window, names: Mapping[str, str]
) -> ReturnsFound:
    """Return the pairs as `all_candidates` would, by the day of the later job, then by number.

    The facts of the jobs are read here, each once; the pairs are written out when they are asked.
    """
    import numpy as np

    pairs = found.pairs
    linked = _linked(connection, found.columns)
    places = np.unique(np.concatenate([pairs.earlier, pairs.later, linked])).tolist()
    facts = _facts(connection, found.columns, places, names)
    job_at = dict(zip(places, facts.jobs, strict=True))
    return ReturnsFound(facts, _Written(found, job_at, main, facts))


@dataclass(frozen=True, slots=True)
class _Written:
    """The candidates of pairs, each made from the facts of its two jobs while it is asked for."""

    met: ManyMet
    job_at: Mapping[int, JobFacts]
    main: Window
    facts: Facts

    def __iter__(self) -> Iterator[Candidate]:
        pairs, job_at, main, facts = self.met.pairs, self.job_at, self.main, self.facts
        chains = chains_of(facts.judged, facts.jobs, facts.causes)
        order = self._order()
        for start in range(0, len(order), _AT_ONCE):
            some = order[start : start + _AT_ONCE]
            earlier_at, later_at = pairs.earlier[some].tolist(), pairs.later[some].tolist()
            for one, other in zip(earlier_at, later_at, strict=True):
                earlier, later = job_at[one], job_at[other]
                decided = facts.judged.get((earlier.number, later.number))
                yield met(earlier, later, earlier.window or main, decided, chains)

    def _order(self) -> Ids:
        """Return the places of the pairs in the order of the list."""
        import numpy as np

        jobs, pairs = self.met.columns.jobs, self.met.pairs
        ranks = np.zeros(jobs.jobs, dtype=np.int32)
        by_number = sorted(self.job_at, key=lambda place: self.job_at[place].number)
        ranks[by_number] = np.arange(len(by_number))
        keys = (
            *(ranks[pairs.earlier], jobs.handed_over[pairs.earlier]),
            *(ranks[pairs.later], jobs.opened[pairs.later]),
        )
        return np.lexsort(keys)


def _linked(connection: Connection, columns: RecordColumns) -> object:
    """Return the places of the jobs about which a person said something: the chains need them."""
    import numpy as np

    rows = connection.execute(select(ReturnLink.earlier_job_id, ReturnLink.later_job_id))
    ids = np.array([job for row in rows for job in row], dtype=np.int64)
    places, known = places_among(columns.job_ids, ids)
    return places[known]


def _facts(
    connection: Connection,
    columns: RecordColumns,
    places: Collection[int],
    names: Mapping[str, str],
) -> Facts:
    ids = [int(columns.job_ids[place]) for place in places]
    wanted = select(
        *(Job.id, Job.number, Job.concern, Job.system, Visit.vehicle_id, Visit.odometer_source),
    ).join(Visit, Visit.id == Job.visit_id)
    rows = {row.id: row for row in each_row(connection, wanted, Job.id, ids)}
    vehicles = read_vehicles(connection, {row.vehicle_id for row in rows.values()}, ())
    details = JobDetails(connection, ids, names)
    jobs, of = [], columns.jobs
    for place, job_id in zip(places, ids, strict=True):
        opened = of.day(of.opened, place)
        assert opened is not None
        came_clock, left_clock, told_apart = of.same_day.times(place)
        miles, both = float(of.window_miles[place]), bool(of.ends_both[place])
        jobs.append(
            JobFacts(
                number=rows[job_id].number,
                vehicle=str(of.vehicle[place]),
                opened_on=opened,
                handed_over_on=of.day(of.handed_over, place),
                odometer_in=of.came_with.at(place),
                odometer_out=of.left_with.at(place),
                system=rows[job_id].system,
                customer_says_same=bool(of.says_same[place]),
                window=Window(int(of.window_days[place]), miles, "both" if both else "first"),
                sold_on=of.day(of.sold, place),
                odometer_source=reading_source(rows[job_id].odometer_source),
                came_clock=came_clock,
                left_clock=left_clock,
                told_apart=told_apart,
                **details.of(job_id),
            )
        )
    said = {
        row.number: JobSaid(row.id, vehicles[row.vehicle_id].words, row.concern)
        for row in rows.values()
    }
    judged, links = read_links(connection, {row.id: row.number for row in rows.values()}, ids)
    return Facts(tuple(jobs), said, judged, links, Odometers({}, {}, {}))
