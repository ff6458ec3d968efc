"""Past jobs by what a question names: numbers, cars; and the newest of a symptom, code or part.

Every look-up goes through an index and has an end, so that it costs the same in a long history.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from sqlalchemy import Connection, select

from desktop_app.language import as_written, tr
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, JobSymptom, TroubleCode, Vehicle, Visit
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.repair_jobs.vin import LENGTH as VIN_LENGTH
from desktop_app.repair_jobs.vin import matching_vin
from desktop_app.shop_record.databases.dialect_search import Wanted, newest
from desktop_app.shop_record.databases.listed import among
from desktop_app.symptom_search.question import Name, Piece
from desktop_app.symptom_search.word_index.asked import Asked

MOST_OF_ONE = 300  # jobs taken for one symptom, code, part or car: the newest
MOST_OF_NEAR = 50
VIN_END = 4  # characters of a VIN that are enough to look for it
_CARS_LOOKED_AT = 600


class Named(NamedTuple):
    """What names in the text turned out to be: jobs and vehicles, each with how it was read."""

    jobs: Mapping[int, str]
    vehicles: Mapping[int, str]
    pieces: tuple[Piece, ...]
    places: frozenset[int]


def reversed_vin(vin: str) -> str:
    """Return a VIN back to front, folded: so its end can be looked up as a beginning."""
    return matching_vin(vin)[::-1].casefold()


def read_names(connection: Connection, names: Sequence[Name]) -> Named:
    """Return the jobs and vehicles whose number, plate, tag or VIN (or its end) the text names."""
    jobs: dict[int, str] = {}
    vehicles: dict[int, str] = {}
    pieces: list[Piece] = []
    places: set[int] = set()
    for name in sorted(names, key=lambda one: -len(one.compact)):
        if not places.isdisjoint(name.places):
            continue
        for job, piece in _job_by_number(connection, name, len(names)):
            jobs.setdefault(job, _said(piece))
            pieces.append(piece)
            places.update(name.places)
        if not places.isdisjoint(name.places):
            continue
        for piece, found in _vehicles_named(connection, name):
            for vehicle in found:
                vehicles.setdefault(vehicle, _said(piece))
            pieces.append(piece)
            places.update(name.places)
            break
        else:
            if _is_vin(name):
                with as_written():
                    written = _no_car_with(name.compact)
                pieces.append(Piece("VIN", name.written, _no_car_with(name.compact), written))
                places.update(name.places)
    return Named(jobs, vehicles, tuple(pieces), frozenset(places))


def _no_car_with(vin: str) -> str:
    return tr("no car with the VIN {vin} here", vin=vin)


def newest_candidates(connection: Connection, asked: Asked) -> set[int]:
    """Return the newest jobs for which something that was asked for holds, besides words."""
    found = set(asked.numbered)
    by_vehicle = select(Job.id).join(Visit, Visit.id == Job.visit_id)
    by_vehicle = by_vehicle.where(Visit.vehicle_id.in_(among(asked.vehicles)))
    newest_first = by_vehicle.order_by(Job.id.desc()).limit(MOST_OF_ONE)
    found.update(row[0] for row in connection.execute(newest_first))
    symptoms, codes, parts = (
        select(kept.job_id).order_by(kept.id.desc()) for kept in (JobSymptom, TroubleCode, Pair)
    )
    for query, value, wanted, most in (
        (symptoms, JobSymptom.symptom, asked.groups, MOST_OF_ONE),
        (symptoms, JobSymptom.symptom, asked.near_groups, MOST_OF_NEAR),
        (codes, TroubleCode.code, asked.codes, MOST_OF_ONE),
        (codes, TroubleCode.code, asked.related, MOST_OF_NEAR),
        (parts, Pair.part_kind, asked.parts, MOST_OF_ONE),
    ):
        for one in wanted:
            found.update(connection.scalars(query.where(value == one).limit(most)))
    return found


def _is_vin(name: Name) -> bool:
    """Tell whether a name can be nothing but a whole VIN."""
    both = {"digit" if sign.isdigit() else "letter" for sign in name.compact}
    return len(name.compact) == VIN_LENGTH and len(name.places) == 1 and len(both) > 1


def _said(piece: Piece) -> str:
    return f"{tr(piece.kind)} {piece.shown}"


def _job_by_number(connection: Connection, name: Name, others: int) -> Iterable[tuple[int, Piece]]:
    wanted = {name.written}
    if name.compact.isdigit() and (len(name.compact) >= 3 or others == 1):
        last = connection.execute(select(Job.number).order_by(Job.id.desc()).limit(1)).scalar()
        front = (last or "").rstrip("0123456789")
        digits = len(last or "") - len(front)
        wanted |= {front + name.compact, front + name.compact.lstrip("0").zfill(digits)}
    rows = connection.execute(select(Job.id, Job.number).where(Job.number.in_(wanted))).all()
    for job, number in rows:
        yield job, Piece("job", name.written, number)


def _vehicles_named(connection: Connection, name: Name) -> Iterable[tuple[Piece, list[int]]]:
    folded = name.compact.casefold()
    wanted = Wanted(whole=(folded,), column="vehicle")
    if len(folded) >= VIN_END:
        wanted = Wanted((folded,), (reversed_vin(name.compact),), "vehicle")
    found = newest(connection, [wanted], _CARS_LOOKED_AT)
    rows = connection.execute(
        select(Vehicle.id, Vehicle.plate, Vehicle.vin, Vehicle.tag)
        .join(Visit, Visit.vehicle_id == Vehicle.id)
        .join(Job, Job.visit_id == Visit.id)
        .where(Job.id.in_(among(found)))
        .distinct()
        .order_by(Vehicle.id)
    ).all()
    by_plate = [car for car, plate, _, _ in rows if matching_plate(plate or "") == name.compact]
    if by_plate:
        yield Piece("plate", name.written, name.written), by_plate
    by_tag = [car for car, _, _, tag in rows if matching_plate(tag or "") == name.compact]
    if by_tag:
        yield Piece("tag", name.written, name.written), by_tag
    end = matching_vin(name.compact)
    by_vin = [car for car, _, vin, _ in rows if matching_vin(vin or "").endswith(end)]
    if by_vin and len(end) >= VIN_END:
        kind = "VIN" if len(end) == 17 else "VIN ends in"
        yield Piece(kind, name.written, name.compact), by_vin
