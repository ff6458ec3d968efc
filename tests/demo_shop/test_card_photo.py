"""Photos of parts on the bench card: what the program measures in them is what was drawn."""

from __future__ import annotations

from datetime import datetime

import numpy as np
import pytest

from demo_shop.bench_camera import card_photo
from demo_shop.bench_camera.card_photo import card_points, photograph_on_card
from demo_shop.bench_camera.card_under import CardUnder
from demo_shop.bench_camera.photographer import BenchPhoto
from desktop_app.part_photos.camera.find_scale import card_scale
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.marks.measure import measure
from desktop_app.part_photos.photo_pixels import PhotoPixels, photo_pixels

SIZES = {"tip-radius": 26.71, "tip-protrusion": 3.92}
TAKEN = datetime(2026, 3, 2, 9, 30, 15)  # noqa: DTZ001 - a camera writes its own clock's time


@pytest.fixture(scope="module")
def photo() -> BenchPhoto:
    """A burned rotor, at two thirds of the demo's size to be quick."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(card_photo, "LONG_SIDE", 1600)
        return photograph_on_card(
            "distributor-rotor", "removed", "top", SIZES, seed=5, taken_at=TAKEN
        )


@pytest.fixture(scope="module")
def pixels(photo: BenchPhoto) -> PhotoPixels:
    """The photo as the bench gets it."""
    return photo_pixels(photo.jpeg, "image/jpeg")


def test_it_is_held_upright_and_names_its_lens(pixels: PhotoPixels) -> None:
    assert (pixels.width, pixels.height, pixels.focal_35_mm) == (1200, 1600, 26)


def test_every_marker_is_seen_and_the_camera_is_found_where_it_stood(
    photo: BenchPhoto, pixels: PhotoPixels
) -> None:
    card = CardUnder()
    scale = card_scale(pixels, [card.layout])
    assert set(scale.markers_seen) == card.layout.ids
    assert scale.warnings == ()
    place, _ = scale.rays(np.zeros((1, 2)))
    stood = photo.truth.camera.place
    # Mostly along the line of sight: a longer lens from farther off looks nearly the same.
    assert place[:2] == pytest.approx(card.on_card(stood[None])[0], abs=2)
    assert place[2] == pytest.approx(stood[2], rel=0.02)


@pytest.mark.parametrize(
    ("start", "end", "true"),
    [
        ("tip end", "tip root", 3.92),
        ("tip end", "shaft axis at tip height", 26.71),
        ("tip left", "tip right", 8.0),
    ],
)
def test_the_program_measures_what_was_drawn(
    photo: BenchPhoto, pixels: PhotoPixels, start: str, end: str, true: float
) -> None:
    points = photo.truth.points_px[start], photo.truth.points_px[end]
    height = photo.truth.points_mm[start][2]
    mark = Mark("length", points, height_mm=height, height_u_mm=0.5)
    found = measure(mark, card_scale(pixels, [CardUnder().layout]))
    assert found.value == pytest.approx(true, abs=0.04)


def test_where_the_features_are_is_known_without_drawing(photo: BenchPhoto) -> None:
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(card_photo, "LONG_SIDE", 1600)
        points = card_points("distributor-rotor", "removed", "top", SIZES, seed=5)
    for name, point in points.items():
        assert point.at_px == pytest.approx(photo.truth.points_px[name])
        assert point.height_mm == pytest.approx(photo.truth.points_mm[name][2])
    assert points["tip end"].height_mm == pytest.approx(29)
