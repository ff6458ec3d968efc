"""The systems of a vehicle as a shop speaks of them; a job is about one of them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class VehicleSystem:
    """One system: the id that is kept, the name that is shown, other names for it."""

    id: str
    name: str
    also: tuple[str, ...] = ()


# The division is our own; common practice, no source.
SYSTEMS = (
    VehicleSystem("ignition", "Ignition", ("spark", "ignition system")),
    VehicleSystem("fuel", "Fuel", ("fuel system", "fuel delivery", "injection")),
    VehicleSystem("intake", "Intake and boost", ("air", "air intake", "boost", "turbo")),
    VehicleSystem("engine", "Engine, mechanical", ("engine mechanical", "engine", "timing")),
    VehicleSystem("engine-control", "Engine control and sensors", ("engine management", "sensors")),
    VehicleSystem("oil", "Engine oil", ("lubrication",)),
    VehicleSystem("exhaust", "Exhaust and emissions", ("exhaust", "emissions", "catalyst", "egr")),
    VehicleSystem("evaporative", "Fuel vapour (evaporative)", ("evap", "fuel vapour")),
    VehicleSystem("cooling", "Cooling and heating", ("cooling system", "heating", "heater")),
    VehicleSystem("starting", "Starting", ("starter",)),
    VehicleSystem("charging", "Charging and battery", ("battery", "charging system")),
    VehicleSystem("electrical", "Wiring and electrics", ("electrics", "wiring", "network", "body")),
    VehicleSystem("immobilizer", "Immobilizer and keys", ("immobiliser", "keys")),
    VehicleSystem("brakes", "Brakes", ("brake", "braking")),
    VehicleSystem("wheel-speed", "Wheel speed and ABS", ("abs", "wheel speed", "traction")),
    VehicleSystem("steering", "Steering", ("power steering",)),
    VehicleSystem("suspension", "Suspension", ("dampers", "chassis")),
    VehicleSystem("wheels", "Wheels and tyres", ("tyres", "tires", "wheel bearings")),
    VehicleSystem("transmission", "Gearbox", ("gearbox", "automatic", "automatic gearbox")),
    VehicleSystem("clutch", "Clutch", ()),
    VehicleSystem("driveline", "Driveline", ("drive shafts", "final drive", "axles")),
    VehicleSystem("mounts", "Engine and gearbox mounts", ("mounts",)),
    VehicleSystem("belt-drive", "Accessory belt drive", ("belt", "belts", "accessory drive")),
    VehicleSystem("air-conditioning", "Air conditioning", ("a/c", "ac", "climate")),
    VehicleSystem("restraints", "Airbags and belts", ("airbags", "airbag", "srs")),
    VehicleSystem("water-leaks", "Seals and drains", ("water ingress", "water leaks")),
)

_BY_ID = {system.id: system for system in SYSTEMS}


def _key(text: str) -> str:
    return " ".join(text.casefold().replace("-", " ").replace("_", " ").split())


_BY_WORD = {
    _key(word): system.id
    for system in reversed(SYSTEMS)
    for word in (system.name, *system.also, system.id)
}


def system_id(text: str) -> str | None:
    """Return the id for an id, a name or another usual word, in any case; None if not known."""
    return _BY_WORD.get(_key(text))


def system_name(identity: str) -> str:
    """Return the name to show; an id that the program does not know is shown as it was written."""
    known = _BY_ID.get(identity)
    return known.name if known else identity


def system_in_a_sentence(identity: str) -> str:
    """Return the name as it stands inside a sentence; an unknown one as it was written."""
    known = _BY_ID.get(identity)
    return known.name[0].lower() + known.name[1:] if known else identity
