"""From a kept photo to its first view, against Qt's own image reader at screen size."""

from __future__ import annotations

from pathlib import Path
from statistics import median
from time import perf_counter
from typing import Any

import numpy as np
from PIL import Image
from PySide6.QtCore import QSize
from PySide6.QtGui import QImage, QImageReader

from desktop_app.part_photos.intake import look_at
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.screen.picture_image import first_view, full_picture
from desktop_app.shop_record.record import ShopRecord
from tests.part_photos.bench_pictures import encoded, exif, noisy

ROUNDS = 11
SCREEN = 1600  # pixels of the stage's longer side
ALLOWED = 1.0  # times Qt's reader


def by_qt(path: Path) -> QImage:
    """Read at screen size and upright, as Qt's own viewers do."""
    reader = QImageReader(str(path), b"jpeg")
    reader.setAutoTransform(True)
    reader.setScaledSize(QSize(SCREEN, SCREEN * 3 // 4))
    return reader.read()


def smoothed(image: QImage) -> Any:
    """A small grey copy, to see that two images show the same."""
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(grey.constBits(), np.uint8).reshape(grey.height(), -1)
    return np.asarray(Image.fromarray(rows[:, : grey.width()]).resize((60, 80)), float)


def kept_photo(shop: ShopRecord, content: bytes) -> KeptPhoto:
    """Put a photo into the shop's folder."""
    taken = look_at("part.jpg", content)
    shop.photos.keep(content)
    kind, size = taken.media_type, taken.size_bytes
    return KeptPhoto(
        1, 1, taken.sha256, taken.name, kind, size, taken.width, taken.height, None, ""
    )


def test_first_view_of_twelve_megapixels(benchmark: Any, shop: ShopRecord, qapp: object) -> None:
    photo = kept_photo(shop, encoded(noisy(4000, 3000), "JPEG", exif(6)))
    path = shop.photos.path(photo.sha256)
    first = first_view(shop, photo, SCREEN)
    assert first is not None
    assert np.abs(smoothed(first) - smoothed(by_qt(path))).mean() < 4  # of 255: the same picture
    ratios = []
    for _ in range(ROUNDS):
        start = perf_counter()
        by_qt(path)
        middle = perf_counter()
        first_view(shop, photo, SCREEN)
        ratios.append((perf_counter() - middle) / (middle - start))
    start = perf_counter()
    full_picture(shop, photo)
    benchmark.extra_info["whole picture, seconds"] = round(perf_counter() - start, 2)
    benchmark.extra_info["times Qt's reader"] = round(median(ratios), 2)
    benchmark.pedantic(first_view, args=(shop, photo, SCREEN), rounds=ROUNDS)
    assert median(ratios) <= ALLOWED
