"""Symptoms, codes and parts of jobs, as the rules of returns take them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, Any, TypedDict

from sqlalchemy import Connection, Select, select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import JobSymptom, TroubleCode
from desktop_app.repair_jobs.trouble_code import code_book
from desktop_app.returns_watched.stored_vehicles import each_block

if TYPE_CHECKING:
    from sqlalchemy.orm import InstrumentedAttribute

_SYMPTOMS = select(JobSymptom.job_id, JobSymptom.symptom)
_CODES = select(TroubleCode.job_id, TroubleCode.code).where(TroubleCode.stage == "found")
# Two parts whose kind nobody said have nothing in common that is known.
_PAIRS = select(Pair.job_id, Pair.part_kind, Pair.position).where(Pair.part_kind != "")


class DetailsOfJob(TypedDict):
    """Fields of JobFacts that come from rows of their own."""

    symptoms: frozenset[str]
    codes: frozenset[str]
    code_families: Mapping[str, str]
    part_kinds: frozenset[str]
    positions: frozenset[tuple[str, str]]


class JobDetails:
    """The details of some jobs, or of all for None; `names` gives symptoms their plain names."""

    def __init__(
        self, connection: Connection, job_ids: Sequence[int] | None, names: Mapping[str, str]
    ) -> None:
        heard = _read(connection, _SYMPTOMS, JobSymptom.job_id, job_ids)
        self._symptoms = _by_job((job, names.get(word, word)) for job, word in heard)
        self._codes = _by_job(_read(connection, _CODES, TroubleCode.job_id, job_ids))
        self._places = _by_job(
            (job, (kind, " ".join(position.split()).casefold()))
            for job, kind, position in _read(connection, _PAIRS, Pair.job_id, job_ids)
        )
        book = code_book()
        seen = {code for some in self._codes.values() for code in some}
        self._families = {code: name for code in seen if (name := book.family(code))}

    def of(self, job_id: int) -> DetailsOfJob:
        """Return the details of one job."""
        codes = frozenset(self._codes.get(job_id, ()))
        places = frozenset(self._places.get(job_id, ()))
        return {
            "symptoms": frozenset(self._symptoms.get(job_id, ())),
            "codes": codes,
            "code_families": {c: self._families[c] for c in codes if c in self._families},
            "part_kinds": frozenset(kind for kind, _ in places),
            "positions": places,
        }


def _read(
    connection: Connection,
    statement: Select[*tuple[Any, ...]],
    column: InstrumentedAttribute[int],
    job_ids: Sequence[int] | None,
) -> Iterator[tuple[Any, ...]]:
    for block in each_block(connection, statement, column, job_ids):
        yield from zip(*block, strict=True)


def _by_job(rows: Iterable[Any]) -> dict[int, set[Any]]:
    found: dict[int, set[Any]] = {}
    for job_id, word in rows:
        found.setdefault(job_id, set()).add(word)
    return found
