"""What the indexes say for each past job: named, same symptom, code, part, condition.

Every look-up goes through an index and has an end, so that it costs the same in a long history.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from sqlalchemy import ColumnElement, Connection, select
from sqlalchemy.orm import InstrumentedAttribute

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import (
    Job,
    JobCondition,
    JobSymptom,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.repair_jobs.trouble_code import CodeBook
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.repair_jobs.vin import matching_vin
from desktop_app.shop_record.dialect_search import Wanted, among, newest
from desktop_app.symptom_search.question import Name, Piece, Question
from desktop_app.symptom_search.ranking import Evidence
from desktop_app.symptom_search.stored_words import WordHits

MOST_OF_ONE = 600  # jobs taken for one symptom, code or car: the newest
MOST_OF_NEAR = 50
VIN_END = 4  # characters of a VIN that are enough to look for it


@dataclass(frozen=True, slots=True)
class Named:
    """What names in the text turned out to be: the jobs meant, and how that was read."""

    jobs: Mapping[int, tuple[str, bool]]
    pieces: tuple[Piece, ...]
    places: frozenset[int]


def gather(
    connection: Connection,
    question: Question,
    named: Named,
    near: Sequence[str],
    book: CodeBook,
    hits: WordHits,
) -> dict[int, Evidence]:
    """Collect what speaks for each job; `near` are neighbours of the symptoms read.

    Conditions alone find nothing: they are looked up for the jobs found by the rest.
    """
    evidence: dict[int, Evidence] = {}
    _add_symptoms(connection, [group.id for group in question.groups], near, evidence)
    _add_codes(connection, question.codes, book, evidence)
    _add_parts(connection, question.part_kinds, evidence)
    for job, (why, is_number) in named.jobs.items():
        one = evidence.setdefault(job, Evidence())
        one.named, one.number = why, is_number
    for job, share in hits.shares.items():
        evidence.setdefault(job, Evidence()).share_of_words = share
    _add_conditions(connection, question.conditions, evidence)
    return evidence


def reversed_vin(vin: str) -> str:
    """Return a VIN back to front, folded: so its end can be looked up as a beginning."""
    return matching_vin(vin)[::-1].casefold()


def jobs_named(connection: Connection, names: Sequence[Name]) -> Named:
    """Return the jobs whose number, plate or VIN (or its end) the text names."""
    jobs: dict[int, tuple[str, bool]] = {}
    pieces: list[Piece] = []
    places: set[int] = set()
    for name in sorted(names, key=lambda one: -len(one.compact)):
        if not places.isdisjoint(name.places):
            continue
        for piece, found, is_number in (
            *_job_by_number(connection, name, len(names)),
            *_jobs_of_vehicle(connection, name),
        ):
            pieces.append(piece)
            places.update(name.places)
            for job in found:
                jobs.setdefault(job, (f"{piece.kind} {piece.shown}", is_number))
            break
    return Named(jobs, tuple(pieces), frozenset(places))


def _job_by_number(
    connection: Connection, name: Name, others: int
) -> Iterable[tuple[Piece, list[int], bool]]:
    wanted = {name.written}
    if name.compact.isdigit() and (len(name.compact) >= 3 or others == 1):
        last = connection.execute(select(Job.number).order_by(Job.id.desc()).limit(1)).scalar()
        front = (last or "").rstrip("0123456789")
        digits = len(last or "") - len(front)
        wanted |= {front + name.compact, front + name.compact.lstrip("0").zfill(digits)}
    rows = connection.execute(select(Job.id, Job.number).where(Job.number.in_(wanted))).all()
    for job, number in rows:
        yield Piece("job", name.written, number), [job], True


def _jobs_of_vehicle(connection: Connection, name: Name) -> Iterable[tuple[Piece, list[int], bool]]:
    folded = name.compact.casefold()
    wanted = Wanted(whole=(folded,), column="vehicle")
    if len(folded) >= VIN_END:
        wanted = Wanted((folded,), (reversed_vin(name.compact),), "vehicle")
    found = newest(connection, [wanted], MOST_OF_ONE)
    rows = connection.execute(
        select(Job.id, Vehicle.plate, Vehicle.vin, Vehicle.tag)
        .join(Visit, Visit.id == Job.visit_id)
        .join(Vehicle, Vehicle.id == Visit.vehicle_id)
        .where(Job.id.in_(among(found)))
        .order_by(Job.id.desc())
    ).all()
    by_plate = [job for job, plate, _, _ in rows if matching_plate(plate or "") == name.compact]
    if by_plate:
        yield Piece("plate", name.written, name.written), by_plate, False
    by_tag = [job for job, _, _, tag in rows if matching_plate(tag or "") == name.compact]
    if by_tag:
        yield Piece("tag", name.written, name.written), by_tag, False
    end = matching_vin(name.compact)
    by_vin = [job for job, _, vin, _ in rows if matching_vin(vin or "").endswith(end)]
    if by_vin and len(end) >= VIN_END:
        kind = "VIN" if len(end) == 17 else "VIN ends in"
        yield Piece(kind, name.written, name.compact), by_vin, False


def _add_symptoms(
    connection: Connection, groups: Iterable[str], near: Iterable[str], into: dict[int, Evidence]
) -> None:
    for group in groups:
        for one in _newest_of(connection, into, JobSymptom.job_id, JobSymptom.symptom == group):
            one.groups += (group,)
    for group in near:
        where = JobSymptom.symptom == group
        for one in _newest_of(connection, into, JobSymptom.job_id, where, MOST_OF_NEAR):
            one.near_groups += (group,)


def _add_codes(
    connection: Connection, codes: Sequence[str], book: CodeBook, into: dict[int, Evidence]
) -> None:
    for code in codes:
        for one in _newest_of(connection, into, TroubleCode.job_id, TroubleCode.code == code):
            one.codes += (code,)
        family = next((f.codes for f in book.families if code in f.codes), frozenset())
        others = sorted(family - set(codes))
        where = TroubleCode.code.in_(others)
        if others:
            for one in _newest_of(connection, into, TroubleCode.job_id, where, MOST_OF_NEAR):
                one.related += (code,)


def _add_parts(connection: Connection, kinds: Iterable[str], into: dict[int, Evidence]) -> None:
    for kind in kinds:
        for one in _newest_of(connection, into, Pair.job_id, Pair.part_kind == kind):
            one.parts += (kind,)


def _add_conditions(
    connection: Connection, conditions: Iterable[str], into: dict[int, Evidence]
) -> None:
    asked = tuple(conditions)
    if not asked or not into:
        return
    rows = connection.execute(
        select(JobCondition.job_id, JobCondition.condition, JobCondition.happens).where(
            JobCondition.job_id.in_(among(into)), JobCondition.condition.in_(asked)
        )
    )
    for job, condition, happens in rows:
        if happens:
            into[job].happens += (condition,)
        else:
            into[job].never += (condition,)


def _newest_of(
    connection: Connection,
    into: dict[int, Evidence],
    job: InstrumentedAttribute[int],
    where: ColumnElement[bool],
    most: int = MOST_OF_ONE,
) -> Iterator[Evidence]:
    """Yield the evidence on each of the newest jobs for which this holds, each job once."""
    query = select(job).where(where).order_by(job.class_.id.desc()).limit(most)
    for one in {row[0] for row in connection.execute(query)}:
        evidence = into.get(one)
        if evidence is None:
            evidence = into[one] = Evidence()
        yield evidence
