"""A V-ribbed belt's marking, like 6PK1230, and the profiles by their rib pitch."""

from __future__ import annotations

import re
from dataclasses import dataclass

#: Rib pitch in mm. PK: ISO 9981 (automotive V-ribbed belts); PH, PJ, PL and PM: ISO 9982
#: (industrial ones), values recalled.
RIB_PITCH: dict[str, float] = {"PH": 1.60, "PJ": 2.34, "PK": 3.56, "PL": 4.70, "PM": 9.40}

_MARKING = re.compile(r"(?P<ribs>\d{1,2})\s*(?P<profile>P[HJKLM])\s*(?P<length>\d{3,4})", re.I)


@dataclass(frozen=True, slots=True)
class BeltMarking:
    """Ribs, profile and effective length in mm, as marked."""

    ribs: int
    profile: str
    length: float

    @property
    def width(self) -> float:
        """The nominal width in mm: ribs times pitch."""
        return self.ribs * RIB_PITCH[self.profile]


def belt_marking(text: str) -> BeltMarking | None:
    """Return what the marking says, or None where it isn't written that way (ISO 9981)."""
    found = _MARKING.fullmatch("".join(text.split()))
    if found is None or int(found["ribs"]) == 0:
        return None
    return BeltMarking(int(found["ribs"]), found["profile"].upper(), float(found["length"]))


def profiles_near(pitch: float, off: float) -> tuple[str, ...]:
    """Return the profiles whose rib pitch the measured one (mm, +- off) doesn't speak against."""
    return tuple(name for name, nominal in RIB_PITCH.items() if abs(pitch - nominal) <= off)
