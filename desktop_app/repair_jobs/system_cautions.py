"""What can hurt someone at a system of the car, whether or not a part of it was compared."""

from __future__ import annotations

from desktop_app.language import tr

DEFERS_TO = tr(
    "Follow the vehicle maker's procedure and local rules; leave it to licensed people "
    "where the law asks."
)

# The usual cautions of the trade; common practice, no source.
_OF_SYSTEM = {
    "brakes": tr("Brakes that fail can kill."),
    "wheel-speed": tr("Brakes that fail can kill."),
    "steering": tr("Steering or suspension that lets go can kill."),
    "suspension": tr("Steering or suspension that lets go can kill."),
    "wheels": tr("A wheel can come off: axle nut and wheel nuts to the maker's torque."),
    "fuel": (
        tr(
            "Fuel and its vapour burn, and fuel under pressure cuts skin: no sparks, "
            "release the pressure first."
        )
    ),
    "evaporative": tr("Fuel vapour burns: no sparks, no flame."),
    "ignition": (
        tr(
            "Ignition voltage can injure or kill, above all people with a pacemaker: "
            "ignition off and key out before touching."
        )
    ),
    "cooling": tr("Hot coolant under pressure scalds: open it only when cold."),
    "restraints": (
        tr(
            "An airbag or belt tensioner that fires can kill: battery off, the maker's "
            "waiting time, qualified people only."
        )
    ),
    "air-conditioning": (
        tr(
            "Refrigerant under pressure freezes skin and eyes: licensed people only, and "
            "never let out."
        )
    ),
}


def system_cautions(system: str) -> tuple[str, ...]:
    """Return the usual caution of a system (an id), or nothing where none is usual."""
    said = _OF_SYSTEM.get(system)
    return () if said is None else (f"{said} {DEFERS_TO}",)
