"""When two records mean one vehicle: by the VIN, else by the plate."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal, NamedTuple

from desktop_app.repair_jobs.vin import is_well_formed, matching_vin

Sameness = Literal["same", "different", "ask"]


class VehicleNames(NamedTuple):
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
    def written_vin(self) -> str:
        """What was written as its VIN, whole or not: all there is where it has no plate either."""
        return matching_vin(self.vin)


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
    return "same" if one.written_vin and one.written_vin == other.written_vin else "different"


def vehicle_keys(
    occasions: Iterable[VehicleNames],
    refused: frozenset[tuple[str, str]] = frozenset(),
    apart: frozenset[tuple[int, int]] = frozenset(),
) -> tuple[str, ...]:
    """Return one key for each occasion, in the order given (oldest first).

    A plate without a VIN goes with the VIN last seen on that plate before, else with the first
    one seen on it later, unless the pair (plate, VIN) is among those that someone refused.
    `apart` holds, by their places, pairs of occasions that someone said are two vehicles: with the
    later one of them the plate has changed hands, and nothing from before goes with it.
    """
    listed = tuple(occasions)
    plates = _plates_by_hand(listed, apart)
    first_after: dict[str, str] = {}
    for names, plate in zip(listed, plates, strict=True):
        if names.known_vin and (names.known_plate, names.known_vin) not in refused:
            first_after.setdefault(plate, names.known_vin)
    last_before: dict[str, str] = {}
    keys = []
    for names, plate in zip(listed, plates, strict=True):
        vin = names.known_vin
        if vin:
            if (names.known_plate, vin) not in refused:
                last_before[plate] = vin
            keys.append("vin:" + vin)
            continue
        joined = (last_before.get(plate) or first_after.get(plate)) if plate else None
        written = "as written:" + names.written_vin
        keys.append("vin:" + joined if joined else "plate:" + plate if plate else written)
    return tuple(keys)


def _plates_by_hand(
    listed: tuple[VehicleNames, ...], apart: frozenset[tuple[int, int]]
) -> list[str]:
    """Return each occasion's plate, numbered anew each time it has changed hands."""
    if not apart:
        return [names.known_plate for names in listed]
    plates: list[str] = []
    held: dict[str, tuple[int, list[int]]] = {}  # by plate: how many hands, and who is in this one
    for place, names in enumerate(listed):
        plate = names.known_plate
        hand, holders = held.get(plate, (1, []))
        if any((one, place) in apart or (place, one) in apart for one in holders):
            hand, holders = hand + 1, []
        held[plate] = (hand, [*holders, place])
        plates.append(plate if hand == 1 or not plate else f"{plate}, hand {hand}")
    return plates
