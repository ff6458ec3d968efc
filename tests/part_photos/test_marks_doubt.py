"""The stated uncertainty: by hand where that can be, against simulation everywhere."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.part_photos.camera.two_points import CLICK_U_PX, TwoPointScale
from desktop_app.part_photos.marks.mark import Mark, MarkType
from desktop_app.part_photos.marks.measure import SNAPPED_U_PX, measure
from tests.part_photos.marked_photos import MIDDLE, Floats, clicks, ring, scale_over_card, seen


def test_the_budget_of_a_length_by_two_points_is_as_by_hand() -> None:
    scale = TwoPointScale(((900.0, 800.0), (1100.0, 800.0)), 20.0, 0.2)  # 0.1 mm a pixel
    said = measure(Mark("length", ((0.0, 0.0), (300.0, 400.0))), scale)
    relative = math.hypot(0.2 / math.sqrt(3) / 20, math.sqrt(2) * CLICK_U_PX / 200)
    assert said.budget == pytest.approx(
        {
            "pointing": 0.1 * math.sqrt(2) * CLICK_U_PX,
            "scale": 50 * relative,
            "height": 0.0,
            "flatness": 0.0,
            "lens": 0.0,
            "print": 0.0,
        },
        rel=1e-4,
    )
    whole = math.sqrt(sum(u * u for u in said.budget.values()))
    assert said.expanded_uncertainty == pytest.approx(1.96 * whole)
    assert said.coverage == 0.95


def test_the_height_counts_by_its_share_of_the_distance() -> None:
    scale = scale_over_card(tilt_deg=0.0, distance=300.0)
    points = seen(scale, np.array([[-20.0, 0], [20, 0]]) + MIDDLE, 30.0)
    said = measure(Mark("length", clicks(points), "rib", 30.0, 1.0), scale)
    # A length L at height h changes by L / (D - h) for each mm; ± 1 mm rectangular, paper 0.3 mm.
    by_hand = 40 / 270 * np.array([1 / math.sqrt(3), 0.3])
    assert [said.budget[part] for part in ("height", "flatness")] == pytest.approx(
        by_hand, rel=0.01
    )
    assert said.budget["print"] == pytest.approx(40 * scale.print_u)


@settings(max_examples=10, deadline=None)
@given(st.floats(0.5, 5.0), st.floats(2.0, 60.0))
def test_twice_the_doubt_of_the_height_is_twice_its_part(doubt: float, height: float) -> None:
    scale = replace(scale_over_card(), flat_u_mm=0.0)
    points = clicks(seen(scale, np.array([[-20.0, 0], [20, 5]]) + MIDDLE, height))
    once, twice = (
        measure(Mark("length", points, "", height, u), scale).budget["height"]
        for u in (doubt, 2 * doubt)
    )
    assert twice == pytest.approx(2 * once)


@settings(max_examples=10, deadline=None)
@given(st.integers(4, 14), st.floats(4.0, 30.0))
def test_more_points_on_a_rim_leave_less_to_pointing(count: int, radius: float) -> None:
    scale = scale_over_card()
    few, many = (
        measure(Mark("circle", clicks(seen(scale, ring(radius, n)))), scale).budget["pointing"]
        for n in (count, 2 * count)
    )
    assert many == pytest.approx(few / math.sqrt(2), rel=0.1)


def test_found_edges_leave_less_to_pointing_than_clicks() -> None:
    scale = scale_over_card()
    points = clicks(seen(scale, np.array([[0.0, 0], [20, 0]]) + MIDDLE))
    by_snapped = {
        flags: measure(Mark("length", points, snapped=flags), scale).budget["pointing"]
        for flags in ((), (False, False), (True, False), (True, True))
    }
    assert by_snapped[()] == by_snapped[False, False]
    ratio = by_snapped[True, True] / by_snapped[()]
    assert ratio == pytest.approx(SNAPPED_U_PX / CLICK_U_PX)
    assert by_snapped[True, True] < by_snapped[True, False] < by_snapped[()]


DRAWS = 90
# Points about the card's middle, their height, and half the range that it is known to.
CASES: dict[MarkType, tuple[Floats, float, float]] = {
    "length": (np.array([[-20.0, 3], [20, -4]]), 12.0, 1.0),
    "point-to-line": (np.array([[0.0, 6], [-20, 0], [20, 2]]), 5.0, 1.0),
    "circle": (ring(12.0, 9, np.zeros(2)), 8.0, 1.0),
    "angle": (np.array([[25.0, 0], [0, 0], [-5, 25]]), 3.0, 0.5),
    "parallel-distance": (np.array([[-20.0, 0], [20, 0], [-18, 9], [21, 9]]), 20.0, 1.5),
    "round-bar": (np.array([[-20.0, -9], [20, -9], [-18, 9], [21, 9]]), 2.0, 0.5),
}


@pytest.mark.parametrize("kind", sorted(CASES))
def test_intervals_hold_the_truth_as_often_as_they_say(kind: MarkType) -> None:
    """Everything that is doubted is drawn anew each time, as it is said to scatter (JCGM 101)."""
    draw = np.random.default_rng(7)
    true = scale_over_card(tilt_deg=20.0, share_u=0.3)
    points, height, range_mm = CASES[kind]
    points_px = seen(true, points + MIDDLE, height)
    truth = measure(Mark(kind, clicks(points_px), height_mm=height), true).value
    assert truth is not None
    errors, inside = [], 0
    for _ in range(DRAWS):
        theta = draw.multivariate_normal(true.theta, true.covariance)
        clicked = points_px + draw.normal(0, CLICK_U_PX, points_px.shape)
        entered = height + draw.uniform(-range_mm, range_mm) + draw.normal(0, true.flat_u_mm)
        mark = Mark(kind, clicks(clicked), "", entered, range_mm)
        said = measure(mark, replace(true, theta=theta))
        assert said.value is not None
        assert said.expanded_uncertainty is not None
        stretched = said.value * (1 + (kind != "angle") * draw.normal(0, true.print_u))
        errors.append((stretched - truth) / (said.expanded_uncertainty / 1.96))
        inside += abs(errors[-1]) <= 1.96
    assert 0.89 <= inside / DRAWS <= 1.0
    assert abs(np.mean(errors)) < 0.35
    assert 0.8 < np.std(errors) < 1.2


def test_the_lens_has_its_own_part_and_the_parts_still_add_up() -> None:
    """With a covariance in which lens and focal length lean on each other."""
    scale = scale_over_card(share_u=0.5)
    leaning = scale.covariance.copy()
    leaning[0, 3] = leaning[3, 0] = 0.8 * math.sqrt(leaning[0, 0] * leaning[3, 3])
    points = clicks(seen(scale, [(70.0, 100.0), (130.0, 180.0)], 10.0))
    mark = Mark("length", points, height_mm=10.0)
    known = leaning.copy()
    known[3:5] = known[:, 3:5] = 0.0
    both = measure(mark, replace(scale, covariance=leaning)).budget
    without = measure(mark, replace(scale, covariance=known)).budget
    assert both["lens"] > 0
    assert without["lens"] == 0.0
    assert both["scale"] < without["scale"]  # the lens once known, the focal length is surer too
