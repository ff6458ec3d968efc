"""What jobs have that two jobs can share, each as a number: symptoms, systems, codes, kinds."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TYPE_CHECKING, Any, TypeAlias

from sqlalchemy import Connection, Select, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, JobSymptom, TroubleCode
from desktop_app.repair_jobs.trouble_code import code_book
from desktop_app.returns_watched.many_visits.growing_columns import GrowingColumns
from desktop_app.returns_watched.stored_vehicles import each_block

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray
    from sqlalchemy.orm import InstrumentedAttribute

    Ids: TypeAlias = NDArray[np.int64]
    Whole: TypeAlias = NDArray[np.int32]
    #: what is read, the column of the job, and the traits that a word of it stands for
    _Source: TypeAlias = tuple[
        Select[*tuple[Any, ...]],
        InstrumentedAttribute[int],
        tuple[Callable[[str], tuple[str, str] | None], ...],
    ]

_NONE = -1


class _Numbers(dict[str, int]):
    """The number of the trait that a word stands for; -1 where it stands for none."""

    def __init__(
        self, trait: Callable[[str], tuple[str, str] | None], given: dict[tuple[str, str], int]
    ) -> None:
        self._trait = trait
        self._given = given

    def __missing__(self, word: str) -> int:
        trait = self._trait(word)
        number = _NONE if trait is None else self._given.setdefault(trait, len(self._given))
        self[word] = number
        return number


def read_traits(
    connection: Connection,
    job_ids: Ids,
    every: bool,
    names: Mapping[str, str],
    systems: Sequence[str] | None = None,
) -> tuple[Whole, Whole]:
    """Read what the jobs have: each one's place in `job_ids` (rising) and the trait's number.

    With `every` the tables are read through, without it by the jobs. `names` gives symptom groups
    their plain names, under which they are shared. `systems` (n,) are the jobs' own, where they
    were read already.
    """
    import numpy as np

    given: dict[tuple[str, str], int] = {}
    found = GrowingColumns("ii")
    if systems is not None:
        own = _Numbers(_system, given)
        numbers_of = np.array([own[system] for system in systems], dtype=np.int32)
        has = numbers_of != _NONE
        found.add_arrays(np.flatnonzero(has).astype(np.int32), numbers_of[has])
    for statement, column, traits in (*_sources(names), *(() if systems is not None else _SYSTEMS)):
        numbers = [_Numbers(trait, given) for trait in traits]
        wanted = None if every else job_ids.tolist()
        for ids, words in each_block(connection, statement, column, wanted):
            places, known = places_among(job_ids, np.array(ids, dtype=np.int64))
            for number in numbers:
                trait = np.array([number[word] for word in words], dtype=np.int32)
                has = known & (trait != _NONE)
                found.add_arrays(places[has].astype(np.int32), trait[has])
    jobs, traits_of_jobs = found.joined()
    return jobs, traits_of_jobs


def places_among(rising: Ids, ids: Ids) -> tuple[Ids, NDArray[np.bool_]]:
    """Return where ids stand among rising ones, and which of them are there at all."""
    import numpy as np

    places = np.searchsorted(rising, ids)
    known = places < len(rising)
    known[known] &= rising[places[known]] == ids[known]
    return places, known


def _sources(names: Mapping[str, str]) -> tuple[_Source, ...]:
    book = code_book()

    def family(code: str) -> tuple[str, str] | None:
        name = book.family(code)
        return None if name is None else ("family", name)

    return (
        (
            select(JobSymptom.job_id, JobSymptom.symptom),
            JobSymptom.job_id,
            (lambda word: ("symptom", names.get(word, word)),),
        ),
        (
            select(TroubleCode.job_id, TroubleCode.code).where(TroubleCode.stage == "found"),
            TroubleCode.job_id,
            (lambda code: ("code", code), family),
        ),
        (
            select(Pair.job_id, Pair.part_kind).where(Pair.part_kind != ""),
            Pair.job_id,
            (lambda kind: ("part kind", kind),),
        ),
    )


def _system(system: str) -> tuple[str, str] | None:
    return ("system", system) if system else None


_SYSTEMS: tuple[_Source, ...] = (
    (select(Job.id, Job.system).where(Job.system != ""), Job.id, (_system,)),
)
