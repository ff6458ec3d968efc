"""What the shop does about a vehicle itself, one function a deed."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager, nullcontext

from desktop_app.language import tr
from desktop_app.repair_jobs import stored_lookup as look
from desktop_app.repair_jobs.distance import DistanceUnit, from_miles, to_miles
from desktop_app.repair_jobs.entry_bounds import MOST_DISTANCE, check_bounds, check_word
from desktop_app.repair_jobs.known_car import Typed, news_of
from desktop_app.repair_jobs.stored import Answered, Job, Vehicle, Visit
from desktop_app.repair_jobs.stored_apart import say_apart
from desktop_app.repair_jobs.stored_reading import read_vehicle
from desktop_app.repair_jobs.stored_same_plate import ONE_VEHICLE, both_rows
from desktop_app.repair_jobs.vehicle_identity import VehicleNames, matching_plate
from desktop_app.repair_jobs.vin import matching_vin
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

UNITS = {"mi": tr("miles"), "km": tr("km")}
# Stands around what is done to a vehicle; raises a ShopTrouble where it parts what hangs together.
MayPart = Callable[[Deed, int], AbstractContextManager[None]]


def change_vehicle(record: ShopRecord, vehicle_id: int, **values: str) -> Done:
    """Change what is known of a vehicle: vin, plate, tag, description."""
    kept: dict[str, str | None] = {}
    for name, text in values.items():
        kept[name] = text.strip() or (None if name in ("vin", "plate", "tag") else "")
    if "vin" in kept:
        kept["vin"] = matching_vin(values["vin"]) or None
    if "plate" in kept:
        kept["plate_key"] = matching_plate(values["plate"]) or None
    return record.do(
        tr("Change the vehicle"), lambda deed: deed.change(Vehicle, vehicle_id, **kept)
    )


def count_in(record: ShopRecord, vehicle_id: int, unit: str) -> Done:
    """Say in which unit a vehicle's odometer counts.

    Its readings keep their numbers, and count in that unit from now on: all of its visits'. What
    was driven to prove a repair stays as far as it was, said in that unit.
    """
    check_word(tr("the unit of an odometer"), unit, UNITS)
    now: DistanceUnit = "km" if unit == "km" else "mi"

    def work(deed: Deed) -> None:
        before = look.unit_of_vehicle(deed, vehicle_id)
        deed.change(Vehicle, vehicle_id, odometer_unit=unit)
        for job_id, distance in look.drives_of(deed, vehicle_id) if before != now else ():
            converted = round(from_miles(to_miles(distance, before), now), 2)
            check_bounds(
                tr("A drive of {distance:,g} {unit}", distance=distance, unit=UNITS[before]),
                converted,
                MOST_DISTANCE,
            )
            deed.change(Job, job_id, proof_distance=converted)

    return record.do(tr("Say that the odometer counts in {unit}", unit=UNITS[unit]), work)


def say_another_car(record: ShopRecord, visit_id: int, may: MayPart | None = None) -> Done:
    """Say that a visit was another car's than the other visits of its vehicle.

    It gets a vehicle of its own with the same plate and unit; what kind of car it is and its VIN
    are to be written anew. Refused where the vehicle has no other visit, and where `may` refuses.
    """

    def work(deed: Deed) -> None:
        vehicle_id, others = look.vehicle_of_visit(deed, visit_id)
        if not others:
            raise ShopTrouble(
                tr("This car has no other visit."),
                do=tr("Change its plate, its VIN or its description."),
            )
        old = read_vehicle(deed.connection, vehicle_id)
        with _looked_after(may, deed, vehicle_id):
            new = deed.add(
                Vehicle,
                plate=old.plate or None,
                plate_key=matching_plate(old.plate) or None,
                tag=old.tag or None,
                odometer_unit=old.odometer_unit,
            )
            deed.change(Visit, visit_id, vehicle_id=new)
            say_apart(deed, vehicle_id, new)

    return record.do(tr("Say that this was another car"), work)


def say_one_car(record: ShopRecord, one: int, other: int) -> Done:
    """Answer that two rows with one plate are the same car: its visits count together."""

    def work(deed: Deed) -> None:
        deed.add(Answered, about=ONE_VEHICLE, question=both_rows(one, other))

    return record.do(tr("Say that it is the same car"), work)


def say_two_cars(record: ShopRecord, visit_id: int, other: int, may: MayPart | None = None) -> Done:
    """Say that the car of a visit is not the one of another row with the same plate.

    Refused where `may` refuses.
    """

    def work(deed: Deed) -> None:
        vehicle_id, _others = look.vehicle_of_visit(deed, visit_id)
        with _looked_after(may, deed, vehicle_id):
            say_apart(deed, vehicle_id, other)

    return record.do(tr("Say that it is another car"), work)


def vehicle_taken_in(deed: Deed, said: WriteUp) -> int:
    """Return the vehicle of a write-up: a new row, or the known one with what is newly known.

    What is known already stays, for the sheets of its earlier jobs stand on it.
    """
    typed = Typed(plate=said.plate, vin=said.vin, description=said.description)
    if said.vehicle_id is None:
        made = deed.add(
            Vehicle,
            vin=matching_vin(said.vin) or None,
            plate=said.plate.strip() or None,
            plate_key=matching_plate(said.plate) or None,
            tag=said.tag.strip() or None,
            description=said.description.strip(),
            odometer_unit=said.odometer_unit,
        )
        if said.another_than is not None:
            say_apart(deed, said.another_than, made)
        return made
    if not look.vehicle_is_there(deed, said.vehicle_id):
        raise look.gone(tr("That car is no longer there."))
    known = read_vehicle(deed.connection, said.vehicle_id)
    kept, seen = VehicleNames(known.vin).known_vin, VehicleNames(said.vin).known_vin
    if kept and seen and kept != seen:
        raise ShopTrouble(
            tr("That VIN is another car's: this one's ends {kept}.", kept=kept[-6:]),
            do=tr("Look at both; with two VINs they are two cars."),
        )
    news = news_of(known, typed, said.tag)
    if news:
        deed.change(Vehicle, known.id, **news)
    return known.id


def _looked_after(may: MayPart | None, deed: Deed, vehicle_id: int) -> AbstractContextManager[None]:
    return nullcontext() if may is None else may(deed, vehicle_id)
