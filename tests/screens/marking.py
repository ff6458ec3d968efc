"""A bench with two plain photos, and the clicks and keys of someone who draws marks on them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from PIL import Image
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtWidgets import QPushButton

from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.screen.bench_marks_list import MarksList
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.screen.bench_stage import BenchStage
from desktop_app.part_photos.stored_marks import KeptMark, marks_of_photos
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded
from tests.screens.photo_desk import kept, named

LEFT = Qt.MouseButton.LeftButton


def plate(shift: int = 0) -> bytes:
    """A white picture, 400 by 300, with a dark plate from x = 100 to 299, y = 80 to 219."""
    grey = np.full((300, 400, 3), 235, np.uint8)
    grey[80:220, 100 + shift : 300 + shift] = 40
    return encoded(Image.fromarray(grey), "PNG")


def open_bench(
    qtbot: Any, desk: Desk, job_id: int, *contents: bytes, readings: Any = None
) -> PhotoBench:
    """Open the bench for one or two photos, fully decoded."""
    photos = kept(desk, job_id, *(contents or (plate(), plate(6))))
    bench = PhotoBench(desk, photos[0], photos[1] if len(photos) > 1 else None, readings)
    qtbot.addWidget(bench)
    bench.resize(1280, 820)
    bench.show()
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    return bench


def old_stage(bench: PhotoBench) -> BenchStage:
    """The stage of the removed part."""
    return bench.stages()["removed"]


def click(qtbot: Any, stage: BenchStage, *pixels: Pixel) -> None:
    """Click on points of the photo, as near as a screen pixel lets."""
    for pixel in pixels:
        qtbot.mouseClick(stage.viewport(), LEFT, pos=spot(stage, pixel))


def spot(stage: BenchStage, pixel: Pixel) -> QPoint:
    """The point of the screen where a point of the photo is seen."""
    seen: QPointF = stage.seen_at(pixel)
    return seen.toPoint()


def press(qtbot: Any, bench: PhotoBench, name: str) -> None:
    """Press the button of this accessible name, or of these words; one that is seen comes first."""
    every = bench.findChildren(QPushButton)
    found = [one for one in every if name in (one.accessibleName(), one.text())]
    found.sort(key=lambda one: not one.isVisible())
    assert found, name
    qtbot.mouseClick(found[0], LEFT)


def type_keys(qtbot: Any, widget: Any, *keys: Qt.Key, held: Any = None) -> None:
    """Press keys one after the other, with `held` down."""
    for key in keys:
        qtbot.keyClick(widget, key, held or Qt.KeyboardModifier.NoModifier)


def give_scale(qtbot: Any, bench: PhotoBench, a: Pixel, b: Pixel, length: str) -> None:
    """Give the removed part's photo its millimetres: two clicks and a length."""
    from PySide6.QtWidgets import QLineEdit

    press(qtbot, bench, "Two points of known length, removed part")
    click(qtbot, old_stage(bench), a, b)
    field = named(bench, QLineEdit, "Known length, removed part")
    qtbot.keyClicks(field, length)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def marks_kept(desk: Desk, bench: PhotoBench) -> Sequence[KeptMark]:
    """The marks of the bench's photos, as the record has them."""
    ids = [one.photo().id for one in bench.stages().values() if one.photo() is not None]  # type: ignore[union-attr]
    found = desk.ask(marks_of_photos, ids)
    assert isinstance(found, tuple)
    return found


def lines(bench: PhotoBench) -> list[str]:
    """The lines of the list of marks."""
    listed = bench.findChild(MarksList)
    assert listed is not None
    return [listed.item(row).text().replace("\u00a0", " ") for row in range(listed.count())]
