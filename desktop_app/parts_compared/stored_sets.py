"""The sets of a job: which of its pairs meet, judged with what was entered for them."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from itertools import product

from sqlalchemy import Connection, select

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
from desktop_app.shop_record.resource_folder import resource_path

#: How the row of a set is called among the kept sums of a job.
SET_SUM = "set:"


@dataclass(frozen=True, slots=True)
class JobSet:
    """Pairs of one job that meet, in one position, with what was entered (mm) and the verdict."""

    job_id: int
    position: str
    pair_ids: tuple[int, ...]
    entered: Mapping[str, float]
    judged: SetComparison

    @property
    def key(self) -> str:
        """The name under which figures of this set are kept in the job."""
        return set_key(self.judged.part_set.id, self.position)


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
    """Return the sets of a job whose pairs were read already."""
    laid = tuple(pairs)
    found = [(part_set, met) for part_set in part_sets() for met in _meeting(part_set, laid, kinds)]
    if not found:
        return ()
    entered = _entered(connection, job_id)
    sets = []
    for part_set, met in found:
        position = max((one.position for one in met), key=lambda said: len(said.split()))
        figures = entered.get(set_key(part_set.id, position), {})
        parts = {one.part_kind: PartRead(kinds[one.part_kind], one.readings) for one in met}
        judged = judge_set(SetRead(part_set, parts, tools, figures))
        ids = tuple(one.id for one in met)
        sets.append(JobSet(job_id, position, ids, figures, judged))
    return tuple(sets)


def set_key(set_id: str, position: str) -> str:
    """Return the name under which a set's figures are kept in its job."""
    return f"{SET_SUM}{set_id}:{' '.join(position.casefold().split())}"


def kept_figures(deed: Deed, job_id: int, key: str) -> tuple[int, dict[str, float]] | None:
    """Return the row and the figures of a set of a job, or None where none were entered."""
    row = deed.connection.execute(
        select(KeptSum.id, KeptSum.inputs).where(KeptSum.job_id == job_id, KeptSum.sum == key)
    ).first()
    return None if row is None else (row.id, _figures(row.inputs))


def _entered(connection: Connection, job_id: int) -> dict[str, dict[str, float]]:
    rows = connection.execute(
        select(KeptSum.sum, KeptSum.inputs).where(
            KeptSum.job_id == job_id, KeptSum.sum.startswith(SET_SUM)
        )
    )
    return {row.sum: _figures(row.inputs) for row in rows}


def _figures(text: str) -> dict[str, float]:
    try:
        return {str(name): float(value) for name, value in json.loads(text)["figures"].items()}
    except (ValueError, TypeError, KeyError, AttributeError) as error:
        raise damaged(text, "the figures entered for parts that meet") from error


def _meeting(
    part_set: PartSet, pairs: tuple[PairView, ...], kinds: Mapping[str, PartKind]
) -> list[tuple[PairView, ...]]:
    """Return the pairs that meet: one of each kind of the set, in positions that agree."""
    if not all(kind in kinds for kind in part_set.kinds):
        return []
    of_kind = [[one for one in pairs if one.part_kind == kind] for kind in part_set.kinds]
    return [met for met in product(*of_kind) if _together(met)]


def _together(met: tuple[PairView, ...]) -> bool:
    """Whether the positions agree: "front left" goes with "left", and with none at all."""
    places = [set(one.position.casefold().split()) for one in met if one.position.strip()]
    return all(one <= other or other <= one for one in places for other in places)
