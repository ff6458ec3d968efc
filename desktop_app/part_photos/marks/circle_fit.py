"""The circle that lies nearest to points: geometric least squares, robust where points abound."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, NamedTuple

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

ENOUGH_FOR_ROBUST = 6
FLATTEST = 500.0  # radius over the points' spread, beyond which they lie on a straight line


@dataclass(frozen=True, slots=True)
class Circle:
    """A circle in the unit of its points."""

    x: float
    y: float
    radius: float


class _Fit(NamedTuple):
    """Centre and radius (3,), and each point's pull (n,): the slope of its influence."""

    values: Floats
    pull: Floats


def fit_circle(points: Sequence[tuple[float, float]] | Floats, *, robust: bool = False) -> Circle:
    """Return the circle with the least sum of squared distances to points, shape (n, 2).

    Source: Gander, Golub, Strebel, "Least-squares fitting of circles and ellipses", BIT 34, 1994.
    With `robust`, distances beyond about two of their usual spread count less (soft L1).
    Raises ShopTrouble for fewer than three different points, and for points on a straight line.
    """
    x, y, radius = _fitted(_checked(points), robust).values
    return Circle(float(x), float(y), float(radius))


def circle_with_slopes(points: Floats, *, robust: bool = False) -> tuple[Circle, Floats]:
    """Return the circle and how its RADIUS changes with each point, shape (n, 2).

    By the implicit function theorem at the minimum, first order in the distances to the rim.
    """
    import numpy as np

    checked = _checked(points)
    fit = _fitted(checked, robust)
    slopes = _slopes(fit.values, checked)
    weighted = slopes * fit.pull[:, None]
    of_radius = np.linalg.pinv(slopes.T @ weighted)[2] @ weighted.T
    outward = -slopes[:, :2]
    circle = Circle(*(float(value) for value in fit.values))
    return circle, -of_radius[:, None] * outward


def rim_distances(points: Floats, circle: Circle) -> Floats:
    """Return how far points lie outside the rim (inside: below 0), shape (n,)."""
    import numpy as np

    return np.hypot(points[:, 0] - circle.x, points[:, 1] - circle.y) - circle.radius


def _checked(points: Sequence[tuple[float, float]] | Floats) -> Floats:
    import numpy as np

    found = np.asarray(points, float)
    if found.ndim != 2 or found.shape[1] != 2 or not np.isfinite(found).all():
        raise _no_circle(tr("its points are no pairs of numbers"))
    if len(np.unique(found, axis=0)) < 3:
        raise _no_circle(tr("it has fewer than three different points"))
    away = np.linalg.svd(found - found.mean(0), compute_uv=False)
    if away[1] <= 1e-9 * away[0]:
        raise _no_circle(tr("its points lie on a straight line"))
    return found


def _fitted(points: Floats, robust: bool) -> _Fit:
    """Fit around the points' middle and in units of their spread, which keeps digits."""
    import numpy as np
    from scipy.optimize import least_squares

    middle = points.mean(0)
    spread = float(np.sqrt(((points - middle) ** 2).sum(1).mean()))
    near = (points - middle) / spread

    def off(values: Floats) -> Floats:
        away = near - values[:2]
        return np.asarray(np.hypot(away[:, 0], away[:, 1]) - values[2])

    def slopes(values: Floats) -> Floats:
        return _slopes(values, near)

    least = 1e-15
    found = least_squares(
        off, _algebraic(near), slopes, method="lm", xtol=least, ftol=least, gtol=least
    ).x
    pull = np.ones(len(near))
    if robust and len(near) >= ENOUGH_FOR_ROBUST:
        # 1.4826 makes the median a standard deviation; beyond two of them distances count less.
        usual = max(2 * 1.4826 * float(np.median(np.abs(off(found)))), 1e-9)
        found = least_squares(off, found, slopes, loss="soft_l1", f_scale=usual).x
        pull = (1 + (off(found) / usual) ** 2) ** -1.5
    if not np.isfinite(found).all() or not 0 < abs(found[2]) < FLATTEST:
        raise _no_circle(tr("its points lie on a straight line"))
    return _Fit(np.append(found[:2] * spread + middle, abs(found[2]) * spread), pull)


def _algebraic(points: Floats) -> Floats:
    """Where to start: the circle whose equation x² + y² = a x + b y + c is met best (linear)."""
    import numpy as np

    rows = np.column_stack([points, np.ones(len(points))])
    a, b, c = np.linalg.lstsq(rows, (points**2).sum(1), rcond=None)[0]
    return np.array([a / 2, b / 2, np.sqrt(max(c + (a * a + b * b) / 4, 1e-12))])


def _slopes(values: Floats, points: Floats) -> Floats:
    """How each point's distance to the rim changes with centre and radius: shape (n, 3)."""
    import numpy as np

    away = points - values[:2]
    reach = np.maximum(np.hypot(away[:, 0], away[:, 1]), 1e-12)
    return np.column_stack([-away / reach[:, None], -np.ones(len(points))])


def _no_circle(why: str) -> ShopTrouble:
    return ShopTrouble(
        tr("No circle can be drawn: {why}.", why=why),
        do=tr("Accepted: three points or more, round its rim."),
    )
