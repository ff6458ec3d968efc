"""A 12-megapixel photo measured, and two laid on each other, against Pillow's decoding of one.

Wanted are half a second and two seconds where such a photo is decoded in a seventh of a second.
"""

from __future__ import annotations

from collections.abc import Callable
from io import BytesIO
from statistics import median
from time import perf_counter
from typing import Any

import cv2
import pytest
from PIL import Image

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.find_scale import card_scale
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.marks.measure import measure
from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.photo_pixels import PhotoPixels
from tests.part_photos.bench_pictures import encoded
from tests.part_photos.overlay_scenes import Pinhole, Prism, photo, rotor

CARD = bench_card("a4")
ROUNDS = 5
MEASURING, ALIGNING = 3.5, 14.0  # times the decoding
TALL_MM = 10.0


def twelve_megapixels(eye_mm: tuple[float, float, float], tip: float, seed: int) -> PhotoPixels:
    """A rotor on the card, drawn at half its size for speed."""
    camera = Pinhole(eye_mm, focal_px=1500.0, size=(2000, 1500))
    small = photo(camera, Prism(rotor(tip), TALL_MM), seed, card=CARD)
    return PhotoPixels(cv2.resize(small.rgb, (4000, 3000), interpolation=cv2.INTER_CUBIC))


@pytest.fixture(scope="module")
def pair() -> tuple[PhotoPixels, PhotoPixels]:
    """Old and new, from two places."""
    return (
        twelve_megapixels((105.0, 150.0, 380.0), 5.0, 1),
        twelve_megapixels((135.0, 120.0, 400.0), 6.0, 2),
    )


def seconds(work: Callable[[], object]) -> float:
    """Time one call."""
    start = perf_counter()
    work()
    return perf_counter() - start


def times_decoding(work: Callable[[], object], pixels: PhotoPixels, benchmark: Any) -> float:
    """Return how much longer something takes than Pillow's full decoding of the photo."""
    file = encoded(Image.fromarray(pixels.rgb))
    ratios = [
        seconds(work) / seconds(lambda: Image.open(BytesIO(file)).convert("RGB").load())
        for _ in range(ROUNDS)
    ]
    benchmark.extra_info["times the decoding"] = round(median(ratios), 1)
    benchmark.pedantic(work, rounds=3)
    return median(ratios)


def test_a_length_of_a_twelve_megapixel_photo(
    benchmark: Any, pair: tuple[PhotoPixels, PhotoPixels]
) -> None:
    tip = Mark("length", ((2000.0, 1400.0), (2100.0, 1400.0)), height_mm=TALL_MM, height_u_mm=0.5)

    def measured() -> float | None:
        return measure(tip, card_scale(pair[0], [CARD])).value

    # Straight above: 100 pixels of 3000 focal length, 370 mm away.
    assert measured() == pytest.approx(100 / 3000 * (380 - TALL_MM), rel=0.03)
    assert times_decoding(measured, pair[0], benchmark) <= MEASURING


def test_two_twelve_megapixel_photos_laid_on_each_other(
    benchmark: Any, pair: tuple[PhotoPixels, PhotoPixels]
) -> None:
    old, new = (card_scale(pixels, [CARD]) for pixels in pair)

    def aligned() -> object:
        return align(*pair, old, new, TALL_MM)

    found = aligned()
    benchmark.extra_info["method"] = str(getattr(found, "method", ""))
    assert times_decoding(aligned, pair[0], benchmark) <= ALIGNING
