"""A piece cut out of a photo: the right one, upright, without the camera's notes."""

from __future__ import annotations

from io import BytesIO

import numpy as np
import pytest
from PIL import Image

from desktop_app.part_photos.cut_out import cut_out
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.bench_pictures import encoded, exif


def corners() -> Image.Image:
    """A white picture, 400 by 300, with a black square at x = 100 to 199, y = 50 to 149."""
    grey = np.full((300, 400, 3), 255, np.uint8)
    grey[50:150, 100:200] = 0
    return Image.fromarray(grey)


def opened(jpeg: bytes) -> Image.Image:
    """The picture in a JPEG."""
    return Image.open(BytesIO(jpeg))


def test_the_piece_is_the_one_that_was_asked_for() -> None:
    piece = opened(cut_out(encoded(corners(), "PNG"), "image/png", (100, 50, 200, 150), 850))
    assert piece.size == (100, 100)
    assert np.asarray(piece).max() < 10
    beside = opened(cut_out(encoded(corners(), "PNG"), "image/png", (200, 150, 400, 300), 50))
    assert beside.size == (50, 38)
    assert np.asarray(beside)[2:, 2:].min() > 245


def test_pixels_count_in_the_upright_photo_and_notes_stay_out() -> None:
    turned = BytesIO()
    # Orientation 6 (Exif 2.32): upright after a quarter turn clockwise.
    corners().transpose(Image.Transpose.ROTATE_90).save(
        turned, "JPEG", quality=95, exif=exif(6, "2026:11:12 09:10:00")
    )
    jpeg = cut_out(turned.getvalue(), "image/jpeg", (110, 60, 190, 140), 850)
    assert np.asarray(opened(jpeg)).max() < 40
    assert b"Exif" not in jpeg


def test_a_damaged_photo_is_said() -> None:
    with pytest.raises(ShopTrouble, match="can't be read"):
        cut_out(encoded(corners(), "PNG")[:200], "image/png", (0, 0, 10, 10), 850)
