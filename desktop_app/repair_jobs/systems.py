"""The systems of a vehicle as a shop speaks of them; a job is about one of them."""

from __future__ import annotations

from typing import NamedTuple

from desktop_app.language import marked, tr


class VehicleSystem(NamedTuple):
    """One system: the id that is kept, its name as it is written here, other names for it.

    By all of these a system is known in what people bring in; `name` is shown.
    """

    id: str
    written: str
    also: tuple[str, ...] = ()

    @property
    def name(self) -> str:
        """The name in the language spoken."""
        return tr(self.written)


# The division is our own; common practice, no source.
SYSTEMS = (
    VehicleSystem("ignition", marked("Ignition"), ("spark", "ignition system")),
    VehicleSystem("fuel", marked("Fuel"), ("fuel system", "fuel delivery", "injection")),
    VehicleSystem("intake", marked("Intake and boost"), ("air", "air intake", "boost", "turbo")),
    VehicleSystem(
        "engine", marked("Engine, mechanical"), ("engine mechanical", "engine", "timing")
    ),
    VehicleSystem(
        "engine-control", marked("Engine control and sensors"), ("engine management", "sensors")
    ),
    VehicleSystem("oil", marked("Engine oil"), ("lubrication",)),
    VehicleSystem(
        "exhaust", marked("Exhaust and emissions"), ("exhaust", "emissions", "catalyst", "egr")
    ),
    VehicleSystem("evaporative", marked("Fuel vapour (evaporative)"), ("evap", "fuel vapour")),
    VehicleSystem(
        "cooling", marked("Cooling and heating"), ("cooling system", "heating", "heater")
    ),
    VehicleSystem("starting", marked("Starting"), ("starter",)),
    VehicleSystem("charging", marked("Charging and battery"), ("battery", "charging system")),
    VehicleSystem(
        "electrical", marked("Wiring and electrics"), ("electrics", "wiring", "network", "body")
    ),
    VehicleSystem("immobilizer", marked("Immobilizer and keys"), ("immobiliser", "keys")),
    VehicleSystem("brakes", marked("Brakes"), ("brake", "braking")),
    VehicleSystem("wheel-speed", marked("Wheel speed and ABS"), ("abs", "wheel speed", "traction")),
    VehicleSystem("steering", marked("Steering"), ("power steering",)),
    VehicleSystem("suspension", marked("Suspension"), ("dampers", "chassis")),
    VehicleSystem("wheels", marked("Wheels and tyres"), ("tyres", "tires", "wheel bearings")),
    VehicleSystem("transmission", marked("Gearbox"), ("gearbox", "automatic", "automatic gearbox")),
    VehicleSystem("clutch", marked("Clutch"), ()),
    VehicleSystem("driveline", marked("Driveline"), ("drive shafts", "final drive", "axles")),
    VehicleSystem("mounts", marked("Engine and gearbox mounts"), ("mounts",)),
    VehicleSystem(
        "belt-drive", marked("Accessory belt drive"), ("belt", "belts", "accessory drive")
    ),
    VehicleSystem("air-conditioning", marked("Air conditioning"), ("a/c", "ac", "climate")),
    VehicleSystem("restraints", marked("Airbags and belts"), ("airbags", "airbag", "srs")),
    VehicleSystem("water-leaks", marked("Seals and drains"), ("water ingress", "water leaks")),
)

_BY_ID = {system.id: system for system in SYSTEMS}


def _key(text: str) -> str:
    return " ".join(text.casefold().replace("-", " ").replace("_", " ").split())


_BY_WORD = {
    _key(word): system.id
    for system in reversed(SYSTEMS)
    for word in (system.written, *system.also, system.id)
}


def system_id(text: str) -> str | None:
    """Return the id for an id, an English name or another usual word, in any case; None if unknown.

    A table that is brought in must mean the same at every desk, so no spoken name counts.
    """
    return _BY_WORD.get(_key(text))


def system_name(identity: str) -> str:
    """Return the name to show; an id that the program does not know is shown as it was written."""
    known = _BY_ID.get(identity)
    return known.name if known else identity


def system_in_a_sentence(identity: str) -> str:
    """Return the name as it stands inside a sentence; an unknown one as it was written."""
    known = _BY_ID.get(identity)
    if known is None:
        return identity
    name = known.name
    return name[0].lower() + name[1:]
