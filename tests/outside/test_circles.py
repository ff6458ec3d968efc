"""Circles fitted to points, against published figures and another library."""

from __future__ import annotations

import numpy as np
import pytest
from skimage.measure import CircleModel

from desktop_app.part_photos.marks.circle_fit import fit_circle

# Gander, Golub and Strebel, "Least-squares fitting of circles and ellipses", BIT 34 (1994),
# 558-578: the points and the geometric fit, printed as 4.7398, 2.9835 and radius 4.7142.
POINTS = np.array([(1, 7), (2, 6), (5, 8), (7, 7), (9, 5), (3, 7)], float)
PRINTED = (4.7398, 2.9835, 4.7142)


def squares(x: float, y: float, radius: float) -> float:
    """The sum of squared distances of the points from a rim."""
    return float(((np.hypot(POINTS[:, 0] - x, POINTS[:, 1] - y) - radius) ** 2).sum())


def test_the_published_circle() -> None:
    circle = fit_circle(POINTS)
    assert (circle.x, circle.y, circle.radius) == pytest.approx(PRINTED, abs=6e-5)
    assert squares(circle.x, circle.y, circle.radius) == pytest.approx(1.2275990782, abs=1e-8)


def test_it_is_the_geometric_fit_and_not_the_algebraic_one() -> None:
    """scikit-image's CircleModel gives Kåsa's linear fit: 4.7423, 3.8351, radius 4.1088."""
    model = CircleModel.from_estimate(POINTS)
    x, y = model.center
    assert (x, y, model.radius) == pytest.approx((4.74233129, 3.83512270, 4.10876152), abs=1e-6)
    circle = fit_circle(POINTS)
    assert squares(circle.x, circle.y, circle.radius) < squares(x, y, model.radius)


@pytest.mark.parametrize("seed", range(20))
def test_on_points_of_a_rim_both_agree(seed: int) -> None:
    random = np.random.default_rng(seed)
    turns = np.linspace(0, 2 * np.pi, 24, endpoint=False)
    rim = random.uniform(-50, 50, 2) + 20 * np.column_stack([np.cos(turns), np.sin(turns)])
    rim += random.normal(0, 1e-4, rim.shape)
    circle, model = fit_circle(rim), CircleModel.from_estimate(rim)
    assert (circle.x, circle.y) == pytest.approx(tuple(model.center), abs=1e-6)
    assert circle.radius == pytest.approx(model.radius, abs=1e-6)
