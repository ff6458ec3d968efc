"""What can hurt someone at a system of the car, whether or not a part of it was compared."""

from __future__ import annotations

DEFERS_TO = (
    "Follow the vehicle maker's procedure and local rules; leave it to licensed people where the "
    "law asks."
)

# The usual cautions of the trade; common practice, no source.
_OF_SYSTEM = {
    "brakes": "Brakes that fail can kill.",
    "wheel-speed": "Brakes that fail can kill.",
    "steering": "Steering or suspension that lets go can kill.",
    "suspension": "Steering or suspension that lets go can kill.",
    "wheels": "A wheel can come off: axle nut and wheel nuts to the maker's torque.",
    "fuel": (
        "Fuel and its vapour burn, and fuel under pressure cuts skin: no sparks, release the "
        "pressure first."
    ),
    "evaporative": "Fuel vapour burns: no sparks, no flame.",
    "ignition": (
        "Ignition voltage can injure or kill, above all people with a pacemaker: ignition off and "
        "key out before touching."
    ),
    "cooling": "Hot coolant under pressure scalds: open it only when cold.",
    "restraints": (
        "An airbag or belt tensioner that fires can kill: battery off, the maker's waiting time, "
        "qualified people only."
    ),
    "air-conditioning": (
        "Refrigerant under pressure freezes skin and eyes: licensed people only, and never let out."
    ),
}


def system_cautions(system: str) -> tuple[str, ...]:
    """Return the usual caution of a system (an id), or nothing where none is usual."""
    said = _OF_SYSTEM.get(system)
    return () if said is None else (f"{said} {DEFERS_TO}",)
