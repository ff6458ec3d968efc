"""A photo on the stage: every pixel of it, from the copy that fits, and at first a rough one."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QGraphicsScene, QGraphicsView
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.photo_pixels import photo_pixels
from desktop_app.part_photos.screen import picture_image
from desktop_app.part_photos.screen.photo_item import PhotoItem
from desktop_app.part_photos.screen.picture_image import as_image, first_view, full_picture
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from tests.from_outside import spoil_photo
from tests.part_photos.bench_pictures import (
    ENDINGS,
    encoded,
    exif,
    job_with_no_photos,
    noisy,
)
from tests.screens.photo_desk import kept


def on_job(desk: Desk, content: bytes) -> KeptPhoto:
    """Put one photo on a new job."""
    (photo,) = kept(desk, job_with_no_photos(desk.record), content)
    return photo


def colours(image: QImage) -> NDArray[np.uint8]:
    """Return a Qt image as (height, width, 3) red, green, blue."""
    plain = image.convertToFormat(QImage.Format.Format_RGBA8888)
    rows = np.frombuffer(plain.constBits(), np.uint8)
    return rows.reshape(image.height(), image.width(), 4)[:, :, :3].copy()


@pytest.mark.parametrize("large", [False, True])
@pytest.mark.parametrize("kind", ENDINGS)
def test_the_stage_gets_the_pixels_that_are_measured_in(
    desk: Desk, kind: str, large: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    if large:
        monkeypatch.setattr(picture_image, "MOST_IN_FOUR_BYTES", 1000)
    content = encoded(noisy(203, 151), kind, exif(6))
    (whole,) = full_picture(desk.record, on_job(desk, content))
    assert np.array_equal(colours(whole), photo_pixels(content, ENDINGS[kind]).rgb)


def test_copies_halve_until_they_fit_a_screen(desk: Desk) -> None:
    copies = full_picture(desk.record, on_job(desk, encoded(noisy(4000, 3000))))
    assert [copy.width() for copy in copies] == [4000, 2000, 1000]


def test_above_sixty_megapixels_a_pixel_takes_three_bytes() -> None:
    picture = as_image(Image.new("RGB", (10_000, 6100), (12, 34, 56)))
    assert picture.sizeInBytes() <= 3 * 61_000_000
    assert picture.pixelColor(9999, 6099) == QColor(12, 34, 56)


@pytest.mark.parametrize("orientation", range(1, 9))
def test_the_first_view_is_the_photo_smaller(desk: Desk, orientation: int) -> None:
    content = encoded(noisy(1600, 1200), "JPEG", exif(orientation))
    photo = on_job(desk, content)
    first = first_view(desk.record, photo, 700)
    assert first is not None
    assert (first.width() > first.height()) == (photo.width > photo.height)
    assert 700 <= max(first.width(), first.height()) < 1400
    whole = Image.fromarray(photo_pixels(content, "image/jpeg").rgb)
    alike = np.asarray(whole.resize((first.width(), first.height())), float)
    assert np.abs(colours(first) - alike).mean() < 3  # of 255


@pytest.mark.parametrize(("kind", "longest"), [("JPEG", 101), ("PNG", 10), ("HEIF", 10)])
def test_there_is_no_first_view_where_nothing_is_gained(
    desk: Desk, kind: str, longest: int
) -> None:
    assert first_view(desk.record, on_job(desk, encoded(noisy(200, 150), kind)), longest) is None


def test_an_original_that_was_spoilt_later_is_said(desk: Desk) -> None:
    photo = on_job(desk, encoded(noisy(800, 600)))
    spoil_photo(desk.record, photo.sha256, b"\xff\xd8\xff and nothing more")
    for opened in (full_picture, lambda record, it: first_view(record, it, 100)):
        with pytest.raises(ShopTrouble, match="can't be read any more"):
            opened(desk.record, photo)


@pytest.fixture
def seen(qtbot: QtBot) -> tuple[PhotoItem, QGraphicsView]:
    """A photo's item in a window of 200 × 150 pixels."""
    item, scene = PhotoItem(), QGraphicsScene()
    scene.addItem(item)
    view = QGraphicsView(scene)
    scene.setParent(view)
    view.setFrameStyle(0)
    view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    view.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    view.setFixedSize(200, 150)
    view.setSceneRect(0, 0, 800, 600)
    qtbot.addWidget(view)
    with qtbot.waitExposed(view):
        view.show()
    return item, view


@pytest.mark.parametrize(
    ("scale", "copy"), [(3, "white"), (1, "white"), (0.51, "white"), (0.5, "grey"), (0.2, "black")]
)
def test_the_smallest_copy_that_is_sharp_enough_is_drawn(
    seen: tuple[PhotoItem, QGraphicsView], scale: float, copy: str
) -> None:
    item, view = seen
    copies = []
    for size, shade in ((800, "white"), (400, "grey"), (200, "black")):
        copies.append(QImage(size, size, QImage.Format.Format_RGB32))
        copies[-1].fill(QColor(shade))
    item.lay(800, 800, copies)
    view.scale(scale, scale)
    view.setSceneRect(0, 0, 800, 800)
    view.centerOn(400, 400)
    assert view.grab().toImage().pixelColor(100, 75).name() == QColor(copy).name()


def test_at_full_size_and_far_in_pixels_are_shown_as_they_are(
    seen: tuple[PhotoItem, QGraphicsView],
) -> None:
    item, view = seen
    picture = noisy(800, 600)
    pixels = np.asarray(picture)
    item.lay(800, 600, [as_image(picture)])
    view.centerOn(400, 300)
    assert np.array_equal(colours(view.grab().toImage()), pixels[225:375, 300:500])
    view.scale(10, 10)
    view.centerOn(400, 300)
    enlarged = pixels[292:308, 390:410].repeat(10, axis=0).repeat(10, axis=1)
    assert np.array_equal(colours(view.grab().toImage()), enlarged[5:155])
