"""The one array to measure in: the pixels seen everywhere else, and what EXIF says of the lens."""

from __future__ import annotations

from io import BytesIO

import cv2
import numpy as np
import pytest
from PIL import Image

from desktop_app.part_photos.intake import look_at
from desktop_app.part_photos.photo_pixels import PhotoPixels, photo_pixels
from desktop_app.part_photos.picture_kind import JPEG
from desktop_app.part_photos.upright_picture import open_picture, upright_rgb
from tests.part_photos.bench_pictures import ENDINGS, encoded, exif, lens_notes, noisy, picture
from tests.part_photos.test_intake import segment


def pixels_of(content: bytes) -> PhotoPixels:
    """Through the gate and into the array, as the bench does."""
    return photo_pixels(content, look_at("part", content).media_type)


def saved(image: Image.Image, kind: str, **how: object) -> bytes:
    """The bytes of a file of this kind."""
    file = BytesIO()
    image.save(file, kind, **how)  # type: ignore[arg-type]
    return file.getvalue()


@pytest.mark.parametrize("kind", ENDINGS)
@pytest.mark.parametrize("orientation", range(1, 9))
def test_it_is_the_upright_picture(kind: str, orientation: int) -> None:
    content = encoded(noisy(64, 48), kind, exif(orientation))
    pixels = pixels_of(content)
    upright = upright_rgb(open_picture(content, ENDINGS[kind]))
    assert np.array_equal(pixels.rgb, np.asarray(upright))
    assert (pixels.width, pixels.height) == upright.size
    assert pixels.rgb.dtype == np.uint8


@pytest.mark.parametrize("kind", ENDINGS)
@pytest.mark.parametrize("orientation", range(1, 9))
def test_a_picture_that_was_stored_mirrored_is_said_to_be(kind: str, orientation: int) -> None:
    # Exif 2.32, tag 0x0112: in 2, 4, 5 and 7 rows or columns run the other way round.
    pixels = pixels_of(encoded(picture(), kind, exif(orientation)))
    assert pixels.mirrored == (orientation in (2, 4, 5, 7))


@pytest.mark.parametrize("kind", ENDINGS)
def test_the_lens_is_read_from_exif(kind: str) -> None:
    pixels = pixels_of(encoded(picture(), kind, lens_notes(6, 26)))
    assert (pixels.focal_35_mm, pixels.camera) == (26, "Tin Lantern TL-3")


@pytest.mark.parametrize("kind", ENDINGS)
def test_a_screenshot_says_nothing_of_a_lens(kind: str) -> None:
    pixels = pixels_of(encoded(picture(), kind))
    assert (pixels.focal_35_mm, pixels.camera, pixels.mirrored) == (None, "", False)


@pytest.mark.parametrize("kind", ENDINGS)
@pytest.mark.parametrize(
    ("said", "as_taken"),
    [((64, 48), True), ((48, 64), True), ((64, 60), False), ((4032, 3024), False), ((), False)],
)
def test_a_cut_picture_is_not_as_it_was_taken(
    kind: str, said: tuple[int, ...], as_taken: bool
) -> None:
    notes = lens_notes(6, 26)
    for tag, size in zip((0xA002, 0xA003), said, strict=False):  # Exif 2.32, 4.6.5
        notes.get_ifd(0x8769)[tag] = size
    assert pixels_of(encoded(picture(64, 48), kind, notes)).as_taken is as_taken


def test_notes_that_are_no_notes_say_nothing_of_lens_and_size() -> None:
    notes = lens_notes(6, 26)
    inner = notes.get_ifd(0x8769)
    inner[0xA405] = inner[0xA002] = inner[0xA003] = "wide"
    pixels = pixels_of(encoded(picture(64, 48), "JPEG", notes))
    assert (pixels.focal_35_mm, pixels.camera, pixels.as_taken) == (None, "", False)
    assert (pixels.width, pixels.height) == (48, 64)


@pytest.mark.parametrize("focal", [0, 4, 1001, 65_535])
def test_a_focal_length_that_no_lens_has_is_not_believed(focal: int) -> None:
    assert pixels_of(encoded(picture(), "JPEG", lens_notes(1, focal))).focal_35_mm is None


def test_four_printing_inks_become_red_green_and_blue() -> None:
    colours = Image.new("RGB", (64, 48), (200, 40, 60))
    content = saved(colours.convert("CMYK"), "JPEG", quality=95)
    assert b"Adobe" in content[:40]  # written as its complement, as picture editors do
    assert pixels_of(content).rgb[20, 20] == pytest.approx((200, 40, 60), abs=4)


@pytest.mark.parametrize("values", [(90, 90, 90), (250, 120, 30)])
@pytest.mark.parametrize("alpha", [False, True])
def test_sixteen_bits_a_channel_keep_their_upper_eight(
    values: tuple[int, int, int], alpha: bool
) -> None:
    deep = np.zeros((48, 64, 4 if alpha else 3), np.uint16)
    deep[..., :3] = [value * 257 for value in reversed(values)]
    if alpha:
        deep[..., 3] = 65_535
    done, content = cv2.imencode(".png", deep)
    assert done
    assert tuple(pixels_of(content.tobytes()).rgb[20, 20]) == values


def test_see_through_parts_of_a_palette_are_white() -> None:
    shades = picture().quantize(4)
    clear = shades.getpixel((2, 2))
    pixels = pixels_of(saved(shades, "PNG", transparency=clear))
    assert tuple(pixels.rgb[2, 2]) == (255, 255, 255)
    assert tuple(pixels.rgb[-2, -2]) == (40, 40, 40)


def test_a_wide_colour_profile_moves_no_value() -> None:
    whole = encoded(noisy(64, 48))
    profile = segment(0xE2, b"ICC_PROFILE\x00\x01\x01" + bytes(500))
    with_profile = photo_pixels(whole[:2] + profile + whole[2:], JPEG)
    assert np.array_equal(with_profile.rgb, photo_pixels(whole, JPEG).rgb)


@pytest.mark.parametrize(("width", "height"), [(4000, 3000), (8160, 6120)])
def test_twelve_and_fifty_megapixels_come_in_whole(width: int, height: int) -> None:
    pixels = pixels_of(encoded(picture(width, height), "JPEG", exif(6)))
    assert (pixels.width, pixels.height) == (height, width)
    assert tuple(pixels.rgb[height // 4, height - height // 4]) == (250, 250, 250)
