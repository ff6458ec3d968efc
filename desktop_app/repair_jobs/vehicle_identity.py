"""When two records mean one vehicle: by the VIN, else by the plate."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from desktop_app.repair_jobs.vin import is_well_formed, matching_vin

Sameness = Literal["same", "different", "ask"]


@dataclass(frozen=True, slots=True)
class VehicleNames:
    """How a vehicle was named on one occasion; either may be empty."""

    vin: str = ""
    plate: str = ""

    @property
    def known_vin(self) -> str:
        """The VIN as it is compared, or nothing where it cannot be a whole VIN."""
        return matching_vin(self.vin) if is_well_formed(self.vin) else ""

    @property
    def known_plate(self) -> str:
        """The plate as it is compared: capitals, letters and digits alone."""
        return matching_plate(self.plate)

    @property
    def key(self) -> str:
        """One text for the vehicle: its VIN, else its plate, else what was written as its VIN."""
        if self.known_vin:
            return "vin:" + self.known_vin
        if self.known_plate:
            return "plate:" + self.known_plate
        return "as written:" + matching_vin(self.vin)


def matching_plate(text: str) -> str:
    """Return a plate as it is compared: capitals, without spaces, dots and dashes."""
    return "".join(c for c in text.upper() if c.isalnum())


def same_vehicle(one: VehicleNames, other: VehicleNames) -> Sameness:
    """Say whether two occasions mean one vehicle.

    Two whole VINs decide alone, whatever the plates. One VIN and an equal plate is asked about
    (and counts as one vehicle until someone says no). Without a name in common they differ.
    """
    if one.known_vin and other.known_vin:
        return "same" if one.known_vin == other.known_vin else "different"
    plates_meet = bool(one.known_plate) and one.known_plate == other.known_plate
    if one.known_vin or other.known_vin:
        return "ask" if plates_meet else "different"
    if plates_meet:
        return "same"
    if one.known_plate or other.known_plate:
        return "different"
    return "same" if matching_vin(one.vin) and one.key == other.key else "different"


def vehicle_keys(
    occasions: Iterable[VehicleNames], refused: frozenset[tuple[str, str]] = frozenset()
) -> tuple[str, ...]:
    """Return one key for each occasion, in the order given (oldest first).

    A plate without a VIN goes with the VIN last seen on that plate before, else with the first
    one seen on it later, unless the pair (plate, VIN) is among those that someone refused.
    """
    listed = tuple(occasions)
    first_after: dict[str, str] = {}
    for names in listed:
        if names.known_vin and (names.known_plate, names.known_vin) not in refused:
            first_after.setdefault(names.known_plate, names.known_vin)
    last_before: dict[str, str] = {}
    keys = []
    for names in listed:
        vin, plate = names.known_vin, names.known_plate
        if vin:
            if (plate, vin) not in refused:
                last_before[plate] = vin
            keys.append("vin:" + vin)
            continue
        joined = (last_before.get(plate) or first_after.get(plate)) if plate else None
        keys.append("vin:" + joined if joined else names.key)
    return tuple(keys)
