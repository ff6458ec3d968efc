"""A worn and a new distributor rotor, drawn with shade and walls: only the worn tip is framed."""

from __future__ import annotations

from datetime import UTC, datetime
from functools import cache

import pytest

from demo_shop.bench_camera import card_photo
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.find_scale import card_scale
from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.overlay.difference import differences
from desktop_app.part_photos.overlay.not_compared import not_compared
from desktop_app.part_photos.photo_pixels import PhotoPixels, photo_pixels

OLD = {"tip-radius": 26.71, "tip-protrusion": 3.92, "bore-diameter": 12.70}
NEW = {"tip-radius": 27.45, "tip-protrusion": 4.65, "bore-diameter": 12.70}
SEEDS = (1945661194, 2837309287)
BLADE_MM = 29.0  # the blade's upper face above the seat
# Of the tip as it is drawn: the middle reaches 0.74 mm further, burned corners up to this.
MOST_WORN_MM = 1.8


@cache
def rotors() -> tuple[PhotoPixels, PhotoPixels]:
    """The photos of both, in shade that is about as dark as the old one's dust."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(card_photo, "LONG_SIDE", 1600)
        old, new = (
            card_photo.photograph_on_card(
                *("distributor-rotor", side, "top", sizes),
                seed=seed,
                taken_at=datetime(2026, 3, 2, 9, 0, tzinfo=UTC),
            )
            for side, sizes, seed in (
                ("removed", OLD, SEEDS[0]),
                ("replacement", NEW, SEEDS[1]),
            )
        )
    return photo_pixels(old.jpeg, "image/jpeg"), photo_pixels(new.jpeg, "image/jpeg")


def test_at_the_height_of_the_blade_the_worn_tip_alone_is_framed() -> None:
    scales = [card_scale(pixels, [bench_card("a4")]) for pixels in rotors()]
    laid = align(*rotors(), *scales, BLADE_MM)
    assert laid.aligned, laid.why
    (tip,) = differences(laid)
    assert (tip.side, tip.where) == ("more", "right")
    assert tip.size_mm is not None
    assert tip.expanded_u_mm is not None
    assert 0.74 - tip.expanded_u_mm < tip.size_mm < MOST_WORN_MM + tip.expanded_u_mm
    shade, walls = not_compared(laid)
    assert (shade.reason, walls.reason) == ("shade", "wall")
    assert "left" in " ".join(shade.sides)


def test_without_a_height_nothing_is_framed_that_is_not_there() -> None:
    scales = [card_scale(pixels, [bench_card("a4")]) for pixels in rotors()]
    laid = align(*rotors(), *scales)
    assert laid.aligned, laid.why
    assert laid.highest_mm is not None
    assert laid.highest_mm > BLADE_MM
    assert all((one.side, one.where) == ("more", "right") for one in differences(laid))
    assert any(one.reason == "height" for one in not_compared(laid))
