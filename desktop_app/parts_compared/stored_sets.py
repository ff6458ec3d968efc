"""The sets of a job: which of its pairs meet, judged with what was entered for them."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from itertools import product

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_sets.part_set import PartSet
from desktop_app.parts_compared.part_sets.part_set_file import load_sets
from desktop_app.parts_compared.part_sets.set_shares import PartRead, SetRead
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison, judge_set
from desktop_app.parts_compared.stored import KeptSum
from desktop_app.parts_compared.stored_pairs import drawer, pairs_of_job, read_pair
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.kept_value import damaged
from desktop_app.shop_record.own_program.resource_folder import resource_path

#: How the row of a set is called among the kept sums of a job.
SET_SUM = "set:"


@dataclass(frozen=True, slots=True)
class JobSet:
    """Pairs of one job that meet, with what was entered (mm) and the verdict.

    `position` is what people see; it names the pairs too where the same set meets twice in one
    position. `kept_as` is the name under which figures of this set are kept in the job.
    """

    job_id: int
    position: str
    pair_ids: tuple[int, ...]
    entered: Mapping[str, float]
    judged: SetComparison
    kept_as: str

    @property
    def key(self) -> str:
        """What tells this set from every other one of its job."""
        return set_key(self.judged.part_set.id, self.position, self.pair_ids)


@dataclass(frozen=True, slots=True)
class _Meeting:
    """Pairs that meet in a set; `place` is the most exact of their positions."""

    part_set: PartSet
    pairs: tuple[PairView, ...]

    @property
    def place(self) -> str:
        return self._most_exact.position

    def place_said(self, kinds: Mapping[str, PartKind]) -> str:
        """Return the place as people see it."""
        pair = self._most_exact
        return kinds[pair.part_kind].place_said(pair.position)

    @property
    def _most_exact(self) -> PairView:
        return max(self.pairs, key=lambda one: len(one.position.split()))

    @property
    def ids(self) -> tuple[int, ...]:
        return tuple(one.id for one in self.pairs)


@cache
def part_sets() -> tuple[PartSet, ...]:
    """Return the sets that come with the program."""
    return load_sets(resource_path("part_sets"))


def sets_of_job(
    connection: Connection, job_id: int, kinds: Mapping[str, PartKind]
) -> tuple[JobSet, ...]:
    """Return the sets whose kinds all have a pair in the job, judged as the record has them."""
    pairs = [read_pair(connection, pair_id) for pair_id in pairs_of_job(connection, job_id)]
    return sets_of_pairs(connection, job_id, pairs, kinds, drawer(connection))


def sets_of_pairs(
    connection: Connection,
    job_id: int,
    pairs: Iterable[PairView],
    kinds: Mapping[str, PartKind],
    tools: Mapping[str, Instrument],
) -> tuple[JobSet, ...]:
    """Return the sets of a job whose pairs were read already.

    A part that was not fitted meets nothing on the car, so it judges nothing.
    """
    laid = tuple(pairs)
    numbers = {one.id: number for number, one in enumerate(laid, 1)}
    on = tuple(one for one in laid if one.fitted)
    found = [met for part_set in part_sets() for met in _meetings(part_set, on, kinds)]
    if not found:
        return ()
    entered = _entered(connection, job_id)
    met_at: dict[str, list[_Meeting]] = {}
    for met in found:
        met_at.setdefault(set_key(met.part_set.id, met.place), []).append(met)
    sets = []
    for met in found:
        plain = set_key(met.part_set.id, met.place)
        alike = met_at[plain]
        own = set_key(met.part_set.id, met.place, met.ids)
        kept_as = plain if met is alike[0] and own not in entered else own
        figures = entered.get(kept_as, {})
        reads = ((kinds[one.part_kind], one.readings) for one in met.pairs)
        parts = {kind.sort: PartRead(kind, readings) for kind, readings in reads}
        judged = judge_set(SetRead(met.part_set, parts, tools, figures))
        said = met.place_said(kinds)
        position = said if len(alike) == 1 else _with_numbers(said, met, numbers)
        sets.append(JobSet(job_id, position, met.ids, figures, judged, kept_as))
    return tuple(sets)


def set_key(set_id: str, position: str, pair_ids: tuple[int, ...] = ()) -> str:
    """Return a name for a set in a position, or for the meeting of certain pairs in it."""
    name = f"{SET_SUM}{set_id}:{' '.join(position.casefold().split())}"
    return f"{name}:{'+'.join(map(str, pair_ids))}" if pair_ids else name


def kept_figures(deed: Deed, job_id: int, key: str) -> tuple[int, dict[str, float]] | None:
    """Return the row and the figures of a set of a job, or None where none were entered."""
    row = deed.connection.execute(
        select(KeptSum.id, KeptSum.inputs).where(KeptSum.job_id == job_id, KeptSum.sum == key)
    ).first()
    return None if row is None else (row.id, _figures(row.inputs))


def _entered(connection: Connection, job_id: int) -> dict[str, dict[str, float]]:
    rows = connection.execute(
        select(KeptSum.sum, KeptSum.inputs)
        .where(KeptSum.job_id == job_id, KeptSum.sum.startswith(SET_SUM))
        .order_by(KeptSum.id)
    )
    return {row.sum: _figures(row.inputs) for row in rows}


def _figures(text: str) -> dict[str, float]:
    try:
        return {str(name): float(value) for name, value in json.loads(text)["figures"].items()}
    except (ValueError, TypeError, KeyError, AttributeError) as error:
        raise damaged(text, tr("the figures entered for parts that meet")) from error


def _with_numbers(place: str, met: _Meeting, numbers: Mapping[int, int]) -> str:
    """Say the position with the pairs' numbers in their job, as "front left, pairs 1 and 3"."""
    counted = [str(number) for number in sorted(numbers[one] for one in met.ids)]
    first, last = counted[:-1], counted[-1]
    said = (
        tr("pairs {first} and {last}", first=", ".join(first), last=last)
        if first
        else tr("pair {last}", last=last)
    )
    return f"{place}, {said}" if place.strip() else said


def _meetings(
    part_set: PartSet, pairs: tuple[PairView, ...], kinds: Mapping[str, PartKind]
) -> list[_Meeting]:
    """Return the pairs that meet: one of each kind of the set, in positions that agree."""
    known = [(kinds[one.part_kind].sort, one) for one in pairs if one.part_kind in kinds]
    of_kind = [[one for sort, one in known if sort == kind] for kind in part_set.kinds]
    return [_Meeting(part_set, met) for met in product(*of_kind) if _together(met)]


def _together(met: tuple[PairView, ...]) -> bool:
    """Whether the positions agree: "front left" goes with "left", and with none at all."""
    places = [set(one.position.casefold().split()) for one in met if one.position.strip()]
    return all(one <= other or other <= one for one in places for other in places)
