"""How fast thumbnails are made, against Pillow's own draft decoding in the same run."""

from __future__ import annotations

from io import BytesIO
from statistics import median
from time import perf_counter
from typing import Any

import numpy as np
import pytest
from PIL import Image

from desktop_app.part_photos.picture_kind import JPEG
from desktop_app.part_photos.thumbnail import THUMBNAIL, make_thumbnail
from tests.part_photos.bench_pictures import encoded, noisy

ROUNDS = 9
ALLOWED = 1.3  # times the bare decoding; short timings move by a fifth between rounds


@pytest.fixture(scope="module")
def twelve_megapixels() -> bytes:
    """A photo as a phone takes it."""
    return encoded(noisy(4000, 3000), "JPEG")


def bare(content: bytes) -> bytes:
    """What Pillow needs at least: draft decoding, scaling, and writing the small JPEG."""
    image = Image.open(BytesIO(content), formats=["JPEG"])
    image.draft("RGB", (2 * THUMBNAIL, 2 * THUMBNAIL))
    image.thumbnail((THUMBNAIL, THUMBNAIL), Image.Resampling.BICUBIC)
    file = BytesIO()
    image.save(file, "JPEG", quality=82)
    return file.getvalue()


def seconds(work: Any, content: bytes) -> float:
    """Time one call."""
    start = perf_counter()
    work(content)
    return perf_counter() - start


def test_thumbnails_a_second(benchmark: Any, twelve_megapixels: bytes) -> None:
    ours = Image.open(BytesIO(make_thumbnail(twelve_megapixels, JPEG)))
    theirs = Image.open(BytesIO(bare(twelve_megapixels)))
    assert ours.size == theirs.size
    apart = np.abs(np.asarray(ours, dtype=float) - np.asarray(theirs, dtype=float))
    assert apart.mean() < 3  # of 255: the same picture
    ratios = [
        seconds(lambda c: make_thumbnail(c, JPEG), twelve_megapixels)
        / seconds(bare, twelve_megapixels)
        for _ in range(ROUNDS)
    ]
    benchmark.extra_info["times the bare decoding"] = round(median(ratios), 2)
    benchmark.pedantic(make_thumbnail, args=(twelve_megapixels, JPEG), rounds=ROUNDS)
    benchmark.extra_info["thumbnails a second"] = round(1 / benchmark.stats.stats.median, 1)
    assert median(ratios) <= ALLOWED
