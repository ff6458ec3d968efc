"""Pushing a large photo about with forty marks on it, against a plain picture of the stage's size.

The peer is what no stage can undercut: the same view drawing one image, pixel for pixel, that is
no larger than what is seen of it.
"""

from __future__ import annotations

from itertools import pairwise
from statistics import median
from time import perf_counter
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPen
from PySide6.QtWidgets import QGraphicsScene, QGraphicsView

from desktop_app.part_photos.screen.photo_item import PhotoItem
from desktop_app.part_photos.screen.picture_image import as_image
from tests.part_photos.bench_pictures import noisy

STAGE = (1600, 1000)
FRAMES = 24
SCALES = (0.2, 0.45, 0.6, 0.8, 1.0, 2.5, 8.0)
# Times the peer at the slowest enlargement. Measured 4.8 and 5.0: here 120 frames a second.
ALLOWED = 9.0


class CountedItem(PhotoItem):
    """Counts its frames, so that no figure speaks of frames that were never drawn."""

    drawn = 0

    def paint(self, *what: Any) -> None:
        self.drawn += 1
        super().paint(*what)


def stage_with(width: int, height: int, copies: list[QImage]) -> QGraphicsView:
    """A view of a photo with forty lines over it."""
    item, scene = CountedItem(), QGraphicsScene()
    item.lay(width, height, copies)
    scene.addItem(item)
    pen = QPen(QColor("black"), 0)
    for n in range(40):
        x, y = width * (0.1 + 0.02 * n), height * (0.2 + 0.3 * (n % 3))
        scene.addLine(x, y, x + width / 50, y + height / 20, pen)
    view = QGraphicsView(scene)
    scene.setParent(view)
    view.setRenderHint(QPainter.RenderHint.Antialiasing)
    view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    view.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    view.resize(*STAGE)
    return view


def a_frame(view: QGraphicsView, scale: float) -> float:
    """Seconds to draw one frame while the photo is pushed across the middle."""
    view.resetTransform()
    view.scale(scale, scale)
    middle = view.sceneRect().center()
    item = next(one for one in view.items() if isinstance(one, CountedItem))
    before, moments = item.drawn, []
    for n in range(FRAMES):
        view.centerOn(middle.x() + 7 * n / scale, middle.y() + 5 * n / scale)
        view.viewport().repaint()
        moments.append(perf_counter())
    assert item.drawn - before == FRAMES
    return median(later - sooner for sooner, later in pairwise(moments))


@pytest.mark.parametrize(("width", "height"), [(4000, 3000), (8160, 6120)])
def test_frames_a_second(benchmark: Any, qtbot: Any, width: int, height: int) -> None:
    picture = noisy(width, height)
    copies = [as_image(picture)]
    while min(picture.size) > 800:
        picture = picture.reduce(2)
        copies.append(as_image(picture))
    plain = as_image(noisy(STAGE[0] + 400, STAGE[1] + 300))
    photo = stage_with(width, height, copies)
    peer = stage_with(plain.width(), plain.height(), [plain])
    for view in (photo, peer):
        qtbot.addWidget(view)
        with qtbot.waitExposed(view):
            view.show()
    least = a_frame(peer, 1.0)
    frames = {scale: a_frame(photo, scale) for scale in SCALES}
    slowest = max(frames, key=lambda scale: frames[scale])
    for scale, seconds in frames.items():
        benchmark.extra_info[f"frames a second at {scale}"] = round(1 / seconds)
    benchmark.extra_info["slowest, times the peer"] = round(frames[slowest] / least, 1)
    benchmark.pedantic(a_frame, args=(photo, slowest), rounds=1)
    assert frames[slowest] <= ALLOWED * least
