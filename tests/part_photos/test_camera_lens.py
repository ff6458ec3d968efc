"""The way from the card to pixels and back, and what a scale keeps of it."""

from __future__ import annotations

import json
from dataclasses import replace

import cv2
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.camera.card_scale import CardScale, view_of
from desktop_app.part_photos.camera.focal_prior import lens_prior
from desktop_app.part_photos.camera.lens import project, turned, unbent
from desktop_app.part_photos.kept_json import kept_object
from desktop_app.part_photos.linear_light import linear_grey, to_linear
from tests.part_photos.camera_pictures import Floats, View

angles = st.floats(-3.0, 3.0)
finite = st.floats(-1e11, 1e11)  # within what a kept scale may say


def scale_of(theta: Floats, **facts: object) -> CardScale:
    """Return a scale with this camera."""
    view = view_of(theta, np.array([60.0, 50.0]))
    given_facts: dict[str, object] = {
        "theta": theta,
        "covariance": np.eye(11) * 1e-6,
        "print_u": 0.003,
        "tilt_deg": view.tilt_deg,
        "distance_mm": view.distance_mm,
        "mm_per_px": view.mm_per_px,
        "middle_mm": (60.0, 50.0),
        "card": "card",
        "markers_seen": (1, 2),
        "residual_px": 0.05,
        "blur_px": 0.7,
    }
    return CardScale(**(given_facts | facts))  # type: ignore[arg-type]


@given(angles, angles, angles)
def test_rotation_is_opencvs(x: float, y: float, z: float) -> None:
    vector = np.array([x, y, z])
    assert np.allclose(turned(vector), cv2.Rodrigues(vector)[0], atol=1e-12)


def test_projection_is_opencvs() -> None:
    theta = View(tilt=25, towards=40, roll=100, k1=-0.05).theta()
    theta[4] = 0.08
    points = np.random.default_rng(1).uniform(0, 120, (30, 3)) * [1, 1, -0.3]
    camera = np.array([[np.exp(theta[0]), 0, theta[1]], [0, np.exp(theta[0]), theta[2]], [0, 0, 1]])
    bend = np.array([theta[3], theta[4], 0, 0])
    theirs, _ = cv2.projectPoints(points, theta[5:8], theta[8:11], camera, bend)
    assert np.allclose(project(theta, points), theirs[:, 0], atol=1e-9)


@given(st.floats(-0.3, 0.3), st.floats(-0.2, 0.2), st.floats(0.0, 0.75))
def test_the_lens_is_undone_to_a_billionth_of_a_pixel(k1: float, k2: float, radius: float) -> None:
    plain = np.array([[radius, 0.0], [0.3 * radius, -0.9 * radius]])
    reaches = np.linspace(0, radius, 50) ** 2
    square = (plain**2).sum(1, keepdims=True)
    back = unbent(plain * (1 + square * (k1 + square * k2)), k1, k2)
    if (1 + 3 * k1 * reaches + 5 * k2 * reaches**2).min() > 0.05:
        assert np.abs(back - plain).max() * 3000 < 1e-9
    assert not np.any(np.abs(back) > 10)


def test_beyond_the_lens_model_there_is_no_answer() -> None:
    # With k1 = -.3 the radius turns back at 1.054, where it is seen at .703.
    seen = np.array([[0.69, 0.0], [0.72, 0.0]])
    assert list(np.isnan(unbent(seen, -0.3, 0.0)[:, 0])) == [False, True]


@given(st.floats(0, 38), st.floats(0, 360), st.floats(0, 360), st.floats(-5, 60))
def test_pixels_go_to_the_plane_and_back(
    tilt: float, towards: float, roll: float, height: float
) -> None:
    scale = scale_of(View(tilt=tilt, towards=towards, roll=roll).theta())
    pixels = np.array([[0.0, 0.0], [799.0, 599.0], [400.0, 100.0]])
    on_plane = scale.on_plane(pixels, height)
    assert np.allclose(scale.to_pixels(on_plane, height), pixels, atol=1e-7)
    place, directions = scale.rays(pixels)
    assert place[2] > 0
    assert np.all(directions[:, 2] < 0)
    steps = (height - place[2]) / directions[:, 2]
    assert np.allclose(place[:2] + steps[:, None] * directions[:, :2], on_plane)
    assert scale.tilt_deg == pytest.approx(tilt, abs=1e-4)
    assert scale.distance_mm == pytest.approx(220)


def test_what_is_nearer_to_the_camera_is_smaller_than_it_looks() -> None:
    scale = scale_of(View(k1=0.0).theta())
    ends = scale.to_pixels(np.array([[50.0, 50.0], [70.0, 50.0]]))
    near, far = (np.ptp(scale.on_plane(ends, height)[:, 0]) for height in (22.0, 0.0))
    assert near / far == pytest.approx(1 - 22 / 220)


def test_heights_may_differ_from_point_to_point() -> None:
    scale = scale_of(View(tilt=20).theta())
    points, heights = np.array([[50.0, 50.0], [70.0, 50.0]]), np.array([0.0, 30.0])
    assert np.allclose(scale.on_plane(scale.to_pixels(points, heights), heights), points)


def test_a_plane_above_the_camera_is_met_nowhere() -> None:
    scale = scale_of(View().theta())
    assert np.isnan(scale.on_plane(np.array([[400.0, 300.0]]), 230.0)).all()
    assert np.isnan(scale.to_pixels(np.array([[60.0, 50.0]]), 230.0)).all()


@given(st.lists(finite, min_size=11, max_size=11), st.floats(0, 1e9), st.floats(0, 1e3))
def test_a_scale_is_kept_to_the_last_digit(theta: list[float], spread: float, off: float) -> None:
    covariance = np.diag(np.abs(theta)) + spread * np.eye(11) / 3
    scale = scale_of(View().theta(), warnings=("Not “sharp”.",), card="ß", residual_px=off)
    scale = replace(scale, theta=np.array(theta), covariance=covariance)
    again = CardScale.from_json(scale.as_json())
    assert again.theta.tolist() == theta
    assert again.covariance.tolist() == covariance.tolist()
    assert again.as_json() == scale.as_json()
    facts = (again.markers_seen, again.card, again.middle_mm, again.residual_px, again.warnings)
    assert facts == ((1, 2), "ß", (60.0, 50.0), off, ("Not “sharp”.",))


def test_what_is_no_scale_is_not_read_as_one() -> None:
    whole = scale_of(View().theta()).as_json()
    lopsided = np.eye(11)
    lopsided[0, 1] = 0.5
    for wrong in (
        "{}",
        "null",
        scale_of(View().theta(), covariance=np.eye(3)).as_json(),
        scale_of(View().theta(), covariance=lopsided).as_json(),
        scale_of(View().theta(), covariance=-np.eye(11)).as_json(),
        json.dumps(json.loads(whole) | {"card": 5}),
        json.dumps(json.loads(whole) | {"warnings": [5]}),
    ):
        with pytest.raises(ValueError):  # noqa: PT011 - the reader of kept text says the rest
            CardScale.from_json(wrong)
    assert CardScale.from_json(whole).as_json() == whole


@pytest.mark.parametrize("kept", [None, 5, b"{}", "[]", "[" * 200_000, "{"])
def test_what_holds_no_object_is_not_read_as_one(kept: object) -> None:
    with pytest.raises(ValueError):  # noqa: PT011 - the reader of kept text says the rest
        kept_object(kept)


@pytest.mark.parametrize(
    ("size", "focal", "as_taken", "expected_px", "sure"),
    [
        # Diagonal 5000 px; 26 mm on 43.267 mm of film.
        ((4000, 3000), 26.0, True, 3004.6, True),
        ((3000, 4000), 26.0, True, 3004.6, True),
        ((6000, 4000), 50.0, True, 8333.3, True),
        ((4000, 3000), None, True, 3004.6, False),
        ((3000, 3000), 52.0, True, 5099.0, False),
        # The shape of a sensor, and not the size that the camera wrote.
        ((4000, 3000), 26.0, False, 3004.6, False),
        ((4000, 2250), 26.0, False, 2757.9, False),
    ],
)
def test_the_lens_is_known_from_exif_of_the_picture_as_the_camera_made_it(
    size: tuple[int, int], focal: float | None, as_taken: bool, expected_px: float, sure: bool
) -> None:
    prior = lens_prior(*size, focal, as_taken)
    assert prior.focal_px == pytest.approx(expected_px, rel=1e-4)
    assert prior.centre_px == ((size[0] - 1) / 2, (size[1] - 1) / 2)
    assert prior.sure is sure
    assert (prior.focal_rel_u < 0.05) is sure
    assert (prior.centre_u_px < 0.01 * max(size)) is sure


def test_light_is_linear_again() -> None:
    # IEC 61966-2-1: 188 of 255 is half of the light; 10 lies on the straight piece near black.
    light = to_linear(np.array([[0, 10, 188, 255]], np.uint8))
    assert light == pytest.approx(np.array([[0, 10 / 255 / 12.92, 0.5029, 1]]), abs=1e-4)
    colours = np.array([[[255, 255, 255], [255, 0, 0], [0, 255, 0], [0, 0, 255]]], np.uint8)
    # ITU-R BT.709, table 3: the weights of red, green and blue in luminance.
    assert linear_grey(colours) == pytest.approx(np.array([[1, 0.2126, 0.7152, 0.0722]]), abs=1e-6)
