"""Moves in a plane: a turn, a shift and, where nothing gives a scale, a stretch."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray


@dataclass(frozen=True, slots=True)
class PlaneMove:
    """q = stretch * R(turn) p + shift; `turn` in radians, from x towards y. Never a mirror."""

    turn: float = 0.0
    shift: tuple[float, float] = (0.0, 0.0)
    stretch: float = 1.0

    def matrix(self) -> NDArray[np.float64]:
        """Return the move as a 3 x 3 matrix on (x, y, 1)."""
        import numpy as np

        c, s = self.stretch * math.cos(self.turn), self.stretch * math.sin(self.turn)
        return np.array([[c, -s, self.shift[0]], [s, c, self.shift[1]], [0.0, 0.0, 1.0]])

    def __call__(self, points: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return the moved points, shape (n, 2)."""
        matrix = self.matrix()
        return points @ matrix[:2, :2].T + matrix[:2, 2]

    def turned(self, directions: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return the turned directions, shape (n, 2), their lengths kept."""
        return directions @ self.matrix()[:2, :2].T / self.stretch

    def then(self, after: PlaneMove) -> PlaneMove:
        """Return this move followed by another."""
        matrix = after.matrix() @ self.matrix()
        return PlaneMove(
            math.atan2(matrix[1, 0], matrix[0, 0]),
            (float(matrix[0, 2]), float(matrix[1, 2])),
            self.stretch * after.stretch,
        )

    def back(self) -> PlaneMove:
        """Return the move that undoes this one."""
        import numpy as np

        matrix = np.linalg.inv(self.matrix())
        shift = (float(matrix[0, 2]), float(matrix[1, 2]))
        return PlaneMove(-self.turn, shift, 1.0 / self.stretch)


def best_move(
    points: NDArray[np.float64], onto: NDArray[np.float64], stretch: bool = False
) -> PlaneMove:
    """Return the least-squares move of points onto others, both (n, 2), n at least 2.

    Umeyama, Least-squares estimation of transformation parameters between two point patterns,
    IEEE Trans. PAMI 13 (1991) 376, in the plane: the turn is the angle of a complex product.
    """
    import numpy as np

    middle, onto_middle = points.mean(axis=0), onto.mean(axis=0)
    a = (points - middle) @ np.array([1, 1j])
    b = (onto - onto_middle) @ np.array([1, 1j])
    product, size = complex(np.vdot(a, b)), float(np.vdot(a, a).real)
    grown = abs(product) / size if stretch and size > 0 else 1.0
    turned = PlaneMove(float(np.angle(product)), stretch=grown)
    x, y = onto_middle - turned(middle[None])[0]
    return PlaneMove(turned.turn, (float(x), float(y)), grown)


def about(turn: float, middle: NDArray[np.float64], onto: NDArray[np.float64]) -> PlaneMove:
    """Return the move that turns about `middle` and brings `middle` to `onto`, both (2,)."""
    x, y = onto - PlaneMove(turn)(middle[None])[0]
    return PlaneMove(turn, (float(x), float(y)))
