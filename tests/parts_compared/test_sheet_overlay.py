"""The overlay on a sheet: drawn anew from what was kept, or both photos in one."""

from __future__ import annotations

from io import BytesIO

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image, ImageDraw

from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.parts_compared.sheet_overlay import (
    BLENDED,
    NO_DIFFERENCE,
    OUTLINES,
    Laid,
    Opened,
    overlay_picture,
)
from tests.part_photos import overlay_scenes
from tests.part_photos.overlay_scenes import Pinhole, Prism, rotor

taken = overlay_scenes.photo

#: A plate of an odd shape, so that it lies on itself in one way only; in pixels.
SHAPE = ((60, 50), (240, 60), (250, 150), (200, 155), (190, 210), (70, 200), (85, 120))


def photo(further: int = 0) -> Opened:
    """The plate on white paper, its right end so many pixels further out."""
    picture = Image.new("RGB", (320, 260), (245, 245, 245))
    moved = [(x + (further if x >= 240 else 0), y) for x, y in SHAPE]
    ImageDraw.Draw(picture).polygon(moved, fill=(60, 60, 64))
    return Opened(PhotoPixels(np.asarray(picture, np.uint8)), None)


def rows(transform: NDArray[np.float64]) -> tuple[tuple[float, ...], ...]:
    """A transform as it is kept."""
    return tuple(tuple(map(float, line)) for line in transform.tolist())


def opened(jpeg: bytes | None) -> Image.Image:
    """The picture of an overlay."""
    assert jpeg is not None
    return Image.open(BytesIO(jpeg))


def test_outlines_that_are_found_again_are_drawn() -> None:
    old, new = photo(), photo(further=4)
    found = align(old.pixels, new.pixels, None, None)
    assert found.transform is not None
    shown = overlay_picture(Laid(rows(found.transform), 0.0), old, new)
    # Without a card an outline is trusted to a fiftieth of the part: 4 pixels are within that.
    assert shown.words == f"{OUTLINES} {NO_DIFFERENCE}"
    assert max(opened(shown.jpeg).size) > 320


@pytest.mark.parametrize("height_mm", [2.0, None])
def test_a_sheet_says_sizes_with_their_doubt_and_first_that_a_height_is_missing(
    height_mm: float | None,
) -> None:
    eyes = Pinhole((90.0, 150.0, 300.0)), Pinhole((115.0, 120.0, 310.0), roll=1.0)
    parts = Prism(rotor(4.0), 2.0, 20.0), Prism(rotor(9.0), 2.0, 60.0, (110.0, 125.0))
    old, new = (Opened(taken(eye, part), eye) for eye, part in zip(eyes, parts, strict=True))
    found = align(old.pixels, new.pixels, old.scale, new.scale, height_mm)
    assert found.transform is not None, found.why
    words = overlay_picture(Laid(rows(found.transform), height_mm), old, new).words
    assert "mm (± " in words
    assert words.startswith(OUTLINES if height_mm else "How high the outline lies")
    assert ("for want of a height" in words) == (height_mm is None)


@pytest.mark.parametrize("shift", [10.0, 40.0])
def test_an_alignment_that_is_not_found_again_shows_both_photos_as_they_were_laid(
    shift: float,
) -> None:
    old, new = photo(), photo()
    kept = rows(np.array([[1.0, 0.0, shift], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]]))
    shown = overlay_picture(Laid(kept, 0.0), old, new)
    assert shown.words == BLENDED
    values = np.asarray(opened(shown.jpeg).convert("L"), float)
    # Where only the new part lies now, it is half as dark as where both lie.
    assert values[100, 150] < 75
    assert 120 < values[100, 245 + round(shift) - 3] < 185
