"""The returns of a whole record, or of many of its vehicles, found in columns."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, TypeAlias

from sqlalchemy import Connection, func, select

from desktop_app.repair_jobs.stored import Job, Vehicle
from desktop_app.returns_watched.judgement import (
    Chains,
    Judgement,
    ReturnJudged,
    counts_against,
)
from desktop_app.returns_watched.many_visits.many_candidates import ManyCandidates, many_candidates
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_columns import RecordColumns, read_columns
from desktop_app.returns_watched.stored_links import kept_cause, kept_judgement
from desktop_app.returns_watched.stored_traits import places_among
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.returns_watched.window import Window
from desktop_app.shop_record.kept_value import row_place

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]
    Marks: TypeAlias = NDArray[np.bool_]

FEW_VEHICLES = 300  # so many are read one by one as quickly as in columns
_PART_BY_INDEX = 5  # beyond a fifth of the vehicles it is quicker to read all of them through
_Pair: TypeAlias = tuple[int, int]


@dataclass(frozen=True, slots=True)
class ManyMet:
    """Pairs of jobs that the rules propose or a person judged, in columns.

    `waits` marks those that nobody has judged, `came_back` those that count against the earlier
    repair: by what was said alone, wherever the pair lies.
    """

    columns: RecordColumns
    pairs: ManyCandidates
    waits: Marks
    came_back: Marks

    def only(self, marks: Marks) -> ManyMet:
        """Return the pairs that are marked."""
        return ManyMet(
            self.columns, self.pairs.only(marks), self.waits[marks], self.came_back[marks]
        )


def read_many(
    connection: Connection,
    vehicle_ids: Collection[int] | None,
    until: date | None,
    long_window: Window,
    names: Mapping[str, str],
) -> ManyMet:
    """Read the pairs of some vehicles, perhaps with those of others, or of all.

    What came after the day `until` is left out; `names` gives symptom groups their plain names.
    """
    wanted = None if _are_many(connection, vehicle_ids) else vehicle_ids
    columns = read_columns(connection, wanted, until, names)
    return met_in(columns, long_window, Links(connection, columns))


def met_in(columns: RecordColumns, long_window: Window, links: Links) -> ManyMet:
    """Return the pairs among jobs that were read already, with what persons said about them."""
    pairs = many_candidates(columns.jobs, long_window, links.places(links.judged))
    pairs = pairs.only(~links.marks(pairs, links.refused))
    waits = ~links.marks(pairs, [*links.judged, *links.in_chains()])
    return ManyMet(columns, pairs, waits, links.marks(pairs, links.against))


def _are_many(connection: Connection, vehicle_ids: Collection[int] | None) -> bool:
    if vehicle_ids is None or len(vehicle_ids) < FEW_VEHICLES:
        return vehicle_ids is None
    every = connection.execute(select(func.count()).select_from(Vehicle)).scalar_one()
    return len(vehicle_ids) * _PART_BY_INDEX > every


class Links:
    """What persons said about pairs of jobs, by the places of the jobs in the columns."""

    def __init__(self, connection: Connection, columns: RecordColumns) -> None:
        self._columns = columns
        self.judged: list[_Pair] = []
        self.refused: list[_Pair] = []
        counted: dict[_Pair, Judgement] = {}
        wanted = select(
            ReturnLink.id,
            ReturnLink.earlier_job_id,
            ReturnLink.later_job_id,
            ReturnLink.judgement,
            ReturnLink.cause_class,
            ReturnLink.same_vehicle,
        )
        for link, earlier, later, said, cause, same in connection.execute(wanted):
            place = row_place("return_link", link)
            judgement = None if said is None else kept_judgement(said, place)
            if judgement is not None:
                self.judged.append((earlier, later))
                if counts_against(judgement, kept_cause(cause, place)) and same:
                    counted[earlier, later] = judgement
            if not same:
                self.refused.append((earlier, later))
        self.against = list(counted)
        self._numbers = _numbers(connection, counted)
        self._comebacks = {pair: counted[pair] for pair in counted if self._known(pair)}

    def in_chains(self) -> list[_Pair]:
        """Return the pairs of which the later job hangs on the earlier one by other returns."""
        ids = {number: job_id for job_id, number in self._numbers.items()}
        chains = Chains(self._in_order())
        return [
            (ids[before], later)
            for _, later in self._comebacks
            for before in chains.chain_of(self._numbers[later])[:-1]
        ]

    def places(self, pairs: Iterable[_Pair]) -> tuple[Whole, Whole]:
        """Return where the jobs of pairs stand; pairs with a job that was not read fall out."""
        import numpy as np

        ids = np.array(list(pairs), dtype=np.int64).reshape(-1, 2)
        places, known = places_among(self._columns.job_ids, ids)
        both = places[known.all(axis=1)].astype(np.int32)
        return both[:, 0], both[:, 1]

    def marks(self, found: ManyCandidates, pairs: Iterable[_Pair]) -> Marks:
        """Mark those of what was found that are among the pairs."""
        import numpy as np

        earlier, later = self.places(pairs)
        marks = np.zeros(len(found.earlier), dtype=bool)
        begin = np.searchsorted(found.later, later, "left").tolist()
        end = np.searchsorted(found.later, later, "right").tolist()
        for start, stop, wanted in zip(begin, end, earlier.tolist(), strict=True):
            marks[start:stop] |= found.earlier[start:stop] == wanted
        return marks

    def _known(self, pair: _Pair) -> bool:
        return len(self.places([pair])[0]) == 1

    def _in_order(self) -> list[ReturnJudged]:
        """Return the comebacks by the hand-over of their earlier jobs, as the chains want them."""
        handed = self._columns.jobs.handed_over[self.places(self._comebacks)[0]].tolist()
        numbered = sorted(
            (day, self._numbers[earlier], self._numbers[later], said)
            for day, ((earlier, later), said) in zip(handed, self._comebacks.items(), strict=True)
        )
        return [ReturnJudged(*one[1:]) for one in numbered]


def _numbers(connection: Connection, pairs: Iterable[_Pair]) -> dict[int, str]:
    jobs = {job for pair in pairs for job in pair}
    rows = each_row(connection, select(Job.id, Job.number), Job.id, jobs)
    return {row.id: row.number for row in rows}
