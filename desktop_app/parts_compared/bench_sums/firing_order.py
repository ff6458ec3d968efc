"""The firing order, and which cylinders stand in which relation by it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

FEWEST, MOST = 2, 16


@dataclass(frozen=True, slots=True)
class FiringOrder:
    """Cylinders in the order in which they fire, evenly over two turns of the crank (720 deg)."""

    cylinders: tuple[int, ...]

    @property
    def spacing(self) -> float:
        """Crank degrees from one spark to the next."""
        return 720.0 / len(self.cylinders)

    def angle_between(self, earlier: int, later: int) -> float:
        """Return the crank degrees, 0 up to 720, from one cylinder's spark to the other's."""
        steps = self.cylinders.index(later) - self.cylinders.index(earlier)
        return (steps * self.spacing) % 720.0

    def are_companions(self, one: int, other: int) -> bool:
        """Whether both pistons reach the top together, one firing and one between its strokes."""
        return self.angle_between(one, other) == 360.0

    def are_tower_neighbours(self, one: int, other: int) -> bool:
        """Whether both stand side by side on a distributor cap."""
        between = self.angle_between(one, other)
        return between in (self.spacing, 720.0 - self.spacing)


def is_firing_order(cylinders: Sequence[int]) -> bool:
    """Whether these are the numbers from 1 up, each once, starting anywhere."""
    count = len(cylinders)
    return FEWEST <= count <= MOST and sorted(cylinders) == list(range(1, count + 1))
