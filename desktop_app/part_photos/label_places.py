"""Where the words of marks stand on a photo: along its upper and lower edge, off the part."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

Spot = tuple[float, float]

EDGE = 4.0  # screen pixels between words and the edge of the stage
GAP = 4.0  # and between the words of two marks
CLEAR = 16.0  # and around a point that must stay seen
SHARE = 0.3  # of the stage's height that words may take above, and as much below


@dataclass(frozen=True, slots=True)
class Words:
    """The words of one mark: what they speak of, and the room they take, in screen pixels."""

    at: Spot
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class Room:
    """A rectangle of the screen, in pixels from the stage's top left corner."""

    left: float
    top: float
    width: float
    height: float

    def meets(self, other: Room, gap: float = 0.0) -> bool:
        """Tell whether two rooms overlap, or lie nearer than `gap`."""
        return (
            self.left < other.left + other.width + gap
            and other.left < self.left + self.width + gap
            and self.top < other.top + other.height + gap
            and other.top < self.top + self.height + gap
        )

    def covers(self, spot: Spot, around: float = 0.0) -> bool:
        """Tell whether a spot lies in the room, or nearer to it than `around`."""
        x, y = spot
        return (
            self.left - around < x < self.left + self.width + around
            and self.top - around < y < self.top + self.height + around
        )

    def nearest(self, spot: Spot) -> Spot:
        """Return the point of the room from which a line to a spot is shortest."""
        x = min(max(spot[0], self.left), self.left + self.width)
        return x, min(max(spot[1], self.top), self.top + self.height)


def label_places(
    words: Sequence[Words],
    stage: tuple[float, float],
    seen: Sequence[Spot] = (),
    taken: Sequence[Room] = (),
) -> list[Room | None]:
    """Return where each words stand, the first ones first; None for those that find no room.

    No two overlap, none lies over a room that is `taken`, and none hides a spot of `seen`.
    """
    given, found = list(taken), list[Room | None]()
    for one in words:
        room = next(
            (
                room
                for room in _rooms(one, stage)
                if not any(room.meets(other, GAP) for other in given)
                and not any(room.covers(spot, CLEAR) for spot in seen)
            ),
            None,
        )
        found.append(room)
        if room is not None:
            given.append(room)
    return found


def _rooms(one: Words, stage: tuple[float, float]) -> list[Room]:
    """Return the rooms to try, the best first: at the nearer edge, then at the other one."""
    across, down = stage
    width = min(one.width, across - 2 * EDGE)
    if width <= 0:
        return []
    rows = max(1, int(SHARE * down / (one.height + GAP)))
    last = across - EDGE - width
    lefts = (min(max(one.at[0] - width / 2, EDGE), last), EDGE, last)
    steps = [EDGE + row * (one.height + GAP) for row in range(rows)]
    edges = [steps, [down - step - one.height for step in steps]]
    if one.at[1] > down / 2:
        edges.reverse()
    tops = [edge[row] for row in range(rows) for edge in edges]
    return [Room(left, top, width, one.height) for top in tops for left in lefts]
