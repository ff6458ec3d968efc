"""Each kind of mark says the true size through a tilted lens, and refuses what has none."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.marks.mark import Mark, MarkType
from desktop_app.part_photos.marks.measure import measure
from desktop_app.part_photos.marks.snap import snapped
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.marked_photos import MIDDLE, Floats, clicks, ring, scale_over_card, seen

SHAPES: dict[MarkType, tuple[Floats, float]] = {
    "length": (np.array([[0.0, 0], [9, 12]]), 15.0),
    "point-to-line": (np.array([[3.0, 4], [-20, 0], [25, 0]]), 4.0),
    "circle": (ring(11.0, 9, np.zeros(2)), 22.0),
    "angle": (np.array([[30.0, 0], [0, 0], [-30, 30]]), 135.0),
    "parallel-distance": (np.array([[0.0, 0], [30, 0], [2, 7], [26, 7]]), 7.0),
}
FIRST_POINT = ((900.0, 800.0), (1100.0, 800.0))


def placed(points: Floats, turn: float, shift: Floats) -> Floats:
    """Points turned and moved on the card."""
    rotation = np.array([[math.cos(turn), -math.sin(turn)], [math.sin(turn), math.cos(turn)]])
    return points @ rotation.T + MIDDLE + shift


@settings(max_examples=15, deadline=None)
@given(
    st.sampled_from(sorted(SHAPES)),
    st.floats(0, 6.28),
    st.tuples(st.floats(-25, 25), st.floats(-25, 25)),
    st.floats(0, 35),
    st.sampled_from([0.0, 10.0, 45.0]),
)
def test_a_size_is_the_same_wherever_it_lies_and_however_it_is_seen(
    kind: MarkType, turn: float, shift: tuple[float, float], tilt: float, height: float
) -> None:
    scale = scale_over_card(tilt)
    points, size = SHAPES[kind]
    points_px = seen(scale, placed(points, turn, np.array(shift)), height)
    said = measure(Mark(kind, clicks(points_px), height_mm=height), scale)
    assert said.value == pytest.approx(size, abs=1e-6)
    assert said.unit == ("deg" if kind == "angle" else "mm")
    assert said.expanded_uncertainty is not None
    assert said.expanded_uncertainty > 0
    assert set(said.budget) == {"pointing", "scale", "height", "flatness", "lens", "print"}


def outline(scale_camera: Floats, diameter: float, turn: float, on_mm: float) -> Floats:
    """Where a bar's outline runs: at two places of each side, points (4, 3) of its surface."""
    along = np.array([math.cos(turn), math.sin(turn), 0])
    across, up = np.array([-math.sin(turn), math.cos(turn), 0]), np.array([0, 0, 1.0])
    points = []
    for side, place in ((1, -14.0), (1, 15.0), (-1, -11.0), (-1, 13.0)):
        axis = np.array([*MIDDLE, on_mm + diameter / 2]) + place * along
        away = scale_camera - axis
        flat, high = away @ across, away @ up
        # The sight line touches the bar a quarter turn from its own direction, less what is near.
        at = math.atan2(high, flat) + side * math.acos(diameter / 2 / math.hypot(flat, high))
        points.append(axis + diameter / 2 * (math.cos(at) * across + math.sin(at) * up))
    return np.array(points)


@pytest.mark.parametrize("tilt", [0.0, 25.0])
@pytest.mark.parametrize(("diameter", "on_mm", "turn"), [(14.0, 0.0, 0.3), (60.0, 5.0, 1.7)])
def test_a_round_bar_is_as_thick_as_it_is(
    tilt: float, diameter: float, on_mm: float, turn: float
) -> None:
    scale = scale_over_card(tilt)
    camera, _ = scale.rays(np.array([[0.0, 0.0]]))
    points = outline(camera, diameter, turn, on_mm)
    points_px = np.concatenate([seen(scale, point[None, :2], point[2]) for point in points])
    said = measure(Mark("round-bar", clicks(points_px), height_mm=on_mm), scale)
    assert said.value == pytest.approx(diameter, abs=1e-6)
    # Taken for a flat strip on what it lies on, it would come out much too thick.
    strip = measure(Mark("parallel-distance", clicks(points_px), height_mm=on_mm), scale)
    assert strip.value is not None
    assert strip.value > 1.01 * diameter


def test_a_note_says_nothing_and_a_count_is_no_size() -> None:
    scale = scale_over_card()
    assert measure(Mark("note", ((1.0, 1.0), (2.0, 2.0)), "chipped"), scale).value is None
    with pytest.raises(PhotoCannot, match="from the picture"):
        measure(Mark("count", ((1.0, 1.0), (2.0, 2.0))), scale)


@pytest.mark.parametrize("kind", ["surface", "bare-metal"])
def test_an_outline_has_no_size_and_snaps_to_no_edge(kind: MarkType) -> None:
    outline = Mark(kind, ((10.0, 10.0), (60.0, 10.0), (60.0, 60.0)))
    with pytest.raises(PhotoCannot, match="has no size"):
        measure(outline, scale_over_card())
    assert snapped(outline, PhotoPixels(np.zeros((80, 80, 3), np.uint8))) == outline


@pytest.mark.parametrize(
    ("kind", "points"),
    [
        ("length", [[0, 0], [0, 0]]),
        ("point-to-line", [[3, 3], [0, 0], [0, 0]]),
        ("angle", [[0, 0], [0, 0], [5, 5]]),
        ("parallel-distance", [[0, 0], [9, 0], [5, 5], [5, 5]]),
        ("circle", [[0, 0], [10, 10], [20, 20]]),
        ("length", [[0, 0], [5, 0], [9, 0]]),
    ],
)
def test_points_that_make_no_shape_are_refused(kind: MarkType, points: list[list[float]]) -> None:
    flat = TwoPointScale(FIRST_POINT, 20.0)
    with pytest.raises(ShopTrouble):
        measure(Mark(kind, clicks(np.array(points, float) + 50)), flat)


def test_a_height_above_the_camera_is_refused() -> None:
    scale = scale_over_card(distance=300.0)
    with pytest.raises(PhotoCannot, match="look from below"):
        measure(Mark("length", ((1900.0, 1500.0), (2000.0, 1500.0)), "fin", 400.0), scale)


@pytest.mark.parametrize("kind", ["point-to-line", "parallel-distance"])
def test_a_distance_of_nought_still_has_its_doubt(kind: MarkType) -> None:
    scale = scale_over_card()
    points = np.array([[0.0, 0], [30, 0], [5, 0], [25, 0]])[: 3 if kind[1] == "o" else 4]
    said = measure(Mark(kind, clicks(seen(scale, points + MIDDLE))), scale)
    assert said.value == pytest.approx(0.0, abs=1e-6)
    assert said.expanded_uncertainty is not None
    assert said.expanded_uncertainty > 0.1
    assert "Too small" in said.warnings[0]


def test_a_straight_angle_still_has_its_doubt() -> None:
    scale = scale_over_card()
    points = np.array([[-30.0, 0], [0, 0], [30, 0]]) + MIDDLE
    said = measure(Mark("angle", clicks(seen(scale, points))), scale)
    assert said.value == pytest.approx(180.0, abs=1e-4)
    # Each point off by u: legs of 30 mm turn by sqrt(1 + 1 + 4) u / 30.
    u_mm = 1.15 * scale.mm_per_px
    assert said.budget["pointing"] == pytest.approx(math.degrees(6**0.5 * u_mm / 30), rel=0.1)
    assert said.budget["print"] == 0.0


def warned(kind: MarkType, points: list[list[float]], height: float = 0.0) -> str:
    scale = scale_over_card()
    points_px = seen(scale, np.array(points, float) + MIDDLE, height)
    return " ".join(measure(Mark(kind, clicks(points_px), height_mm=height), scale).warnings)


def test_what_should_not_be_relied_upon_is_said() -> None:
    assert "feeler gauge" in warned("length", [[0, 0], [1.0, 0]])
    assert "20 mm from the corner" in warned("angle", [[8, 0], [0, 0], [0, 30]])
    assert "not parallel" in warned("parallel-distance", [[0, 0], [30, 0], [0, 7], [30, 11]])
    rim = ring(10.0, 8, np.zeros(2)).tolist()
    rim[2] = [rim[2][0] * 1.2, rim[2][1] * 1.2]
    assert "off a circle" in warned("circle", rim)
    assert warned("length", [[0, 0], [15, 0]]) == ""
    assert warned("parallel-distance", [[0, 0], [30, 0], [0, 7], [30, 7.1]]) == ""
    assert warned("angle", [[30, 0], [0, 0], [0, 30]]) == ""
    assert warned("circle", ring(10.0, 8, np.zeros(2)).tolist()) == ""


def test_two_points_give_sizes_and_say_what_they_cannot() -> None:
    scale = TwoPointScale(FIRST_POINT, 20.0, 0.1)
    assert "only in the plane" in scale.warnings[0]
    said = measure(Mark("length", ((0.0, 0.0), (300.0, 400.0))), scale)
    assert said.value == pytest.approx(50.0)
    assert said.warnings == ()
    high = measure(Mark("length", ((0.0, 0.0), (300.0, 400.0)), "rib", 12.0), scale)
    assert high.value == pytest.approx(50.0)
    assert "12 mm can't be allowed for" in high.warnings[0]
    with pytest.raises(PhotoCannot, match="round bar"):
        measure(Mark("round-bar", ((0.0, 0.0), (90.0, 0.0), (0.0, 50.0), (90.0, 50.0))), scale)


@pytest.mark.parametrize(
    ("points", "length", "off"),
    [
        (((5.0, 5.0), (6.0, 5.0)), 20.0, 0.0),
        (((5.0, 5.0), (5.0, float("nan"))), 20.0, 0.0),
        (FIRST_POINT, 0.0, 0.0),
        (FIRST_POINT, float("nan"), 0.0),
        (FIRST_POINT, 20.0, 20.0),
        (FIRST_POINT, 20.0, -0.1),
    ],
)
def test_two_points_that_give_no_scale_are_refused(
    points: tuple[tuple[float, float], tuple[float, float]], length: float, off: float
) -> None:
    with pytest.raises(ShopTrouble, match="scale"):
        TwoPointScale(points, length, off)


def test_several_cameras_at_once_see_what_each_sees_alone() -> None:
    scale = scale_over_card()
    points = np.array([[300.0, 200.0], [2000.0, 1500.0], [3900.0, 2800.0]])
    thetas = scale.theta + np.array([[0.0], [1e-3], [-2e-3]]) * np.sign(scale.theta)
    heights = np.array([[0.0], [10.0], [25.0]])
    flat = scale.on_plane(points, heights, thetas)
    places, ways = scale.rays(points, thetas)
    for n, theta in enumerate(thetas):
        assert flat[n] == pytest.approx(scale.on_plane(points, float(heights[n, 0]), theta))
        place, way = scale.rays(points, theta)
        assert places[n] == pytest.approx(place)
        assert ways[n] == pytest.approx(way)
