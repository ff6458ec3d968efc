"""One upright picture for every use, whatever the camera or the file's kind."""

from __future__ import annotations

import numpy as np
import pytest
from PIL import Image

from desktop_app.part_photos.picture_kind import JPEG, PNG
from desktop_app.part_photos.thumbnail import make_thumbnail
from desktop_app.part_photos.upright_picture import open_picture, upright_rgb
from tests.part_photos.bench_pictures import ENDINGS, encoded, exif, lens_notes, noisy, picture

# Where the white quarter of the stored picture must be seen once it is upright.
# Source: Exif 2.32, tag 0x0112: which side row 0 and column 0 of the stored picture are.
WHITE = {1: "tl", 2: "tr", 3: "br", 4: "bl", 5: "tl", 6: "tr", 7: "br", 8: "bl"}


def white_quarter(image: Image.Image) -> str:
    """Name the corner that is white."""
    grey = np.asarray(image.convert("L"))
    height, width = grey.shape
    corners = {
        "tl": grey[height // 4, width // 4],
        "tr": grey[height // 4, 3 * width // 4],
        "bl": grey[3 * height // 4, width // 4],
        "br": grey[3 * height // 4, 3 * width // 4],
    }
    return max(corners, key=lambda name: int(corners[name]))


@pytest.mark.parametrize("longest", [None, 32])
@pytest.mark.parametrize("kind", ENDINGS)
@pytest.mark.parametrize("orientation", range(1, 9))
def test_the_picture_stands_upright(orientation: int, kind: str, longest: int | None) -> None:
    content = encoded(picture(), kind, exif(orientation))
    upright = upright_rgb(open_picture(content, ENDINGS[kind]), longest)
    assert upright.mode == "RGB"
    assert white_quarter(upright) == WHITE[orientation]
    assert (upright.width > upright.height) == (orientation < 5)


@pytest.mark.parametrize(
    ("stored", "seen"),
    [
        (Image.new("RGBA", (8, 8), (0, 0, 0, 0)), 255),
        (Image.new("LA", (8, 8), (0, 0)), 255),
        (Image.new("L", (8, 8), 90), 90),
        (Image.new("1", (8, 8), 1), 255),
        (Image.fromarray(np.full((8, 8), 90 * 257, dtype=np.uint16)), 90),
        (Image.new("RGB", (8, 8), (90, 90, 90)).quantize(4), 90),
    ],
)
@pytest.mark.parametrize("longest", [None, 4])
def test_every_depth_and_see_through_becomes_plain_colour(
    stored: Image.Image, seen: int, longest: int | None
) -> None:
    upright = upright_rgb(open_picture(encoded(stored, "PNG"), PNG), longest)
    assert (upright.mode, upright.getpixel((1, 1))) == ("RGB", (seen, seen, seen))


def test_a_thumbnail_is_small_upright_and_says_nothing_of_the_camera() -> None:
    content = encoded(noisy(900, 600), "JPEG", exif(6, "2026:11:13 16:40:05"))
    thumbnail = open_picture(make_thumbnail(content, JPEG, 120), JPEG)
    assert thumbnail.size == (80, 120)
    assert not thumbnail.getexif()


@pytest.mark.parametrize("kind", ENDINGS)
def test_where_a_photo_was_taken_stays_in_the_original(kind: str) -> None:
    content = encoded(noisy(90, 60), kind, lens_notes(focal_35=26))
    assert b"TINLANTERN" in content
    small = make_thumbnail(content, ENDINGS[kind], 80)
    assert not open_picture(small, JPEG).getexif()
    for word in (b"TINLANTERN", b"Tin Lantern", b"Exif", b"http"):
        assert word not in small


def test_what_somebody_wrote_into_a_jpeg_stays_in_the_original() -> None:
    content = encoded(picture())
    words = b"taken at the customer's house"
    content = content[:2] + b"\xff\xfe" + (len(words) + 2).to_bytes(2, "big") + words + content[2:]
    assert words not in make_thumbnail(content, JPEG, 80)


def test_a_thumbnail_of_a_heic_photo_is_made_too() -> None:
    content = encoded(picture(160, 120), "HEIF")
    assert open_picture(make_thumbnail(content, "image/heic", 80), JPEG).size == (80, 60)
