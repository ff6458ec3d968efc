"""What the phone is told about where its photos go: one pair of parts, and nothing else."""

from __future__ import annotations

import re
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.part_photos.signs import SIDE_NAMES

SIDES = tuple(SIDE_NAMES)
_PLACE = re.compile(r"([0-9a-f]{16})\.([01])\.([0-9]{1,2})")


@dataclass(frozen=True, slots=True)
class Offer:
    """A pair that photos may be taken for: `key` is how the phone names it, side and view begin."""

    key: str
    job: str
    part: str
    views: tuple[str, ...]
    side: str
    view: str

    def words(self, side: str = "", view: str = "") -> str:
        """Say the place in one line, as the window and the phone both do."""
        which = SIDE_NAMES[side or self.side]
        return tr(
            "{which} · {view} · {part} · job {job}",
            which=which,
            view=tr(view or self.view),
            part=self.part,
            job=self.job,
        )

    def side_of(self, place: Place) -> str:
        """Return the side that a place names."""
        return SIDES[place.side]


@dataclass(frozen=True, slots=True)
class Place:
    """A side of a pair in one view: what a photo was taken of."""

    key: str
    side: int
    view: int

    def text(self) -> str:
        """Return it as it stands in a request and in the name of a file."""
        return f"{self.key}.{self.side}.{self.view}"


def read_place(text: str) -> Place | None:
    """Read a place as the phone names it; None for anything else."""
    found = _PLACE.fullmatch(text)
    return Place(found[1], int(found[2]), int(found[3])) if found else None
