"""The room that parts leave each other: a signed sum with its worst case and its usual case."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal, TypeAlias

from desktop_app.language import marked

Source: TypeAlias = Literal["measured", "entered", "from the set"]
SOURCES = (marked("measured"), marked("entered"), marked("from the set"))


@dataclass(frozen=True, slots=True)
class Share:
    """What one term gives to the sum: `times` a value that is known within ± half_width.

    `moves` where the half-width is play that the running car goes through, rather than doubt.
    `do` says how to know it better.
    """

    label: str
    value: float
    half_width: float
    times: float = 1.0
    source: Source = "measured"
    moves: bool = False
    do: str = ""

    @property
    def reach(self) -> float:
        """Return how far this share can move the sum, either way."""
        return abs(self.times) * self.half_width


@dataclass(frozen=True, slots=True)
class SetRoom:
    """A sum: its value, ± `worst` if everything adds up, ± `usual` as the root of the squares.

    `play` is the part of the worst case that the car goes through by itself, `doubt` the rest:
    what readings and figures leave open if everything adds up.
    """

    value: float
    worst: float
    usual: float
    play: float
    shares: tuple[Share, ...]
    place: str = ""

    @property
    def doubt(self) -> float:
        """Return what is known loosely, without the play."""
        return math.fsum(one.reach for one in self.shares if not one.moves)

    @property
    def taken(self) -> tuple[Share, ...]:
        """Return the shares that were not measured but taken as usual."""
        return tuple(one for one in self.shares if one.source == "from the set")

    @property
    def lowest(self) -> float:
        """Return the least that the sum can be, everything at its worst."""
        return self.value - self.worst

    @property
    def highest(self) -> float:
        """Return the most that the sum can be, everything at its worst."""
        return self.value + self.worst


def room_of(shares: Iterable[Share], place: str = "") -> SetRoom:
    """Add the shares: half-widths one on the other, and by the root of the sum of squares.

    Both are the usual ways of stacking tolerances; the second takes the terms as independent.
    """
    kept = tuple(shares)
    return SetRoom(
        value=math.fsum(one.times * one.value for one in kept),
        worst=math.fsum(one.reach for one in kept),
        usual=math.hypot(*(one.reach for one in kept)),
        play=math.fsum(one.reach for one in kept if one.moves),
        shares=kept,
        place=place,
    )
