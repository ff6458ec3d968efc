"""The circle nearest to points: published values, odd points, and how it hangs on each point."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.part_photos.marks.circle_fit import Circle, circle_with_slopes, fit_circle
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.marks.measure import measure
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.marked_photos import ring, scale_over_card

# Gander, Golub, Strebel, BIT 34, 1994: points, and centre and radius of the geometric fit.
PUBLISHED = [(1, 7), (2, 6), (5, 8), (7, 7), (9, 5), (3, 7)]


def test_the_published_fit_is_met() -> None:
    circle = fit_circle(PUBLISHED)
    found = (circle.x, circle.y, circle.radius)
    assert found == pytest.approx((4.73978242, 2.98353271, 4.71422603), abs=1e-6)


def test_three_points_lie_on_their_circle() -> None:
    circle = fit_circle([(5.0, 2.0), (3.0, 4.0), (1.0, 2.0)])
    assert (circle.x, circle.y, circle.radius) == pytest.approx((3.0, 2.0, 2.0))


@settings(max_examples=30, deadline=None)
@given(
    st.floats(0.01, 5000), st.floats(-1e4, 1e4), st.floats(0.5, 6.2), st.integers(4, 12),
    st.booleans(),
)  # fmt: skip
def test_an_arc_gives_its_circle_wherever_it_lies(
    radius: float, shift: float, turn: float, count: int, robust: bool
) -> None:
    middle = np.array([shift, -shift / 2])
    circle = fit_circle(ring(radius, count, middle, turn=turn), robust=robust)
    assert circle.radius == pytest.approx(radius, rel=1e-6, abs=1e-6)
    assert (circle.x, circle.y) == pytest.approx(tuple(middle), abs=1e-6 * (radius + abs(shift)))


def test_one_odd_point_counts_for_less_in_the_robust_fit() -> None:
    scatter = np.random.default_rng(4).normal(0, 0.05, (10, 2))
    points = ring(10.0, 10) + scatter
    points[3] += (points[3] - points.mean(0)) * 0.15  # on another rim, 1.5 outside
    plain, robust = fit_circle(points), fit_circle(points, robust=True)
    assert abs(plain.radius - 10) > 0.1
    assert abs(robust.radius - 10) < 0.5 * abs(plain.radius - 10)


@pytest.mark.parametrize("robust", [False, True])
def test_the_slopes_tell_what_moving_a_point_does(robust: bool) -> None:
    points = ring(8.0, 9, turn=4.0) + np.random.default_rng(2).normal(0, 1e-3, (9, 2))
    _, slopes = circle_with_slopes(points, robust=robust)
    for n, axis in ((0, 0), (4, 1), (8, 0)):
        step = np.zeros((9, 2))
        step[n, axis] = 1e-5
        more, less = (fit_circle(points + s * step, robust=robust).radius for s in (1, -1))
        tolerance = 0.1 if robust else 1e-3  # the robust one's own measure of spread moves too
        assert (more - less) / 2e-5 == pytest.approx(slopes[n, axis], abs=tolerance)


def test_the_slopes_of_three_points_are_exact() -> None:
    circle, slopes = circle_with_slopes(np.array([[5.0, 2.0], [3.0, 4.0], [1.0, 2.0]]))
    assert circle == Circle(pytest.approx(3.0), pytest.approx(2.0), pytest.approx(2.0))
    # Moved apart along their diameter by d each, its two ends make the radius grow by d.
    assert slopes[0] == pytest.approx([0.5, 0.0])
    assert slopes[2] == pytest.approx([-0.5, 0.0])
    assert slopes[1] == pytest.approx([0.0, 0.0])


@pytest.mark.parametrize(
    ("points", "why"),
    [
        ([(0, 0), (1, 1), (2, 2)], "straight line"),
        ([(0, 0), (1, 1), (2, 2), (3, 3.000000001)], "straight line"),
        ([(0, 0), (100, 0.001), (200, 0), (50, 0.0008)], "straight line"),
        ([(0, 0), (1, 1)], "fewer than three"),
        ([(0, 0), (1, 1), (0, 0), (1, 1)], "fewer than three"),
        ([(0, 0), (1, 1), (float("nan"), 0)], "no pairs of numbers"),
        ([], "no pairs of numbers"),
    ],
)
def test_what_makes_no_circle_is_refused(points: list[tuple[float, float]], why: str) -> None:
    with pytest.raises(ShopTrouble, match=why):
        fit_circle(points)


def test_points_off_the_circle_widen_its_uncertainty() -> None:
    """Four clicks round a hub of 24 mm, one of them 4 mm too far out: the truth must be inside."""
    scale = scale_over_card()
    flat = np.array([[130.0, 100.0], [118.0, 112.0], [106.0, 100.0], [118.0, 88.0]])
    moved = flat + np.array([[4.0, 0.0], [0, 0], [0, 0], [0, 0]])
    good, bad = (
        measure(Mark("circle", tuple(map(tuple, scale.to_pixels(some, 0.0).tolist()))), scale)
        for some in (flat, moved)
    )
    assert good.value == pytest.approx(24.0, abs=0.01)
    assert good.expanded_uncertainty is not None
    assert bad.value is not None
    assert bad.expanded_uncertainty is not None
    assert good.expanded_uncertainty < 1.0
    assert abs(bad.value - 24.0) <= bad.expanded_uncertainty
