"""One photo laid on the other in the window: wiped, blended, in turn, by points, on the sheet."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton, QSlider
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.bench_overlay_stage import OverlayStage
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.stored_marks import KeptOverlay, overlay_of
from desktop_app.shop_record.record import create_shop
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, job_with_no_photos, monday, noisy
from tests.screens.bench_desk import words_of
from tests.screens.marking import click, open_bench, plate, press, type_keys
from tests.screens.photo_desk import named


@pytest.fixture
def desk(qapp: QApplication, tmp_path: Path) -> Iterator[Desk]:
    """A desk with an open shop."""
    record = create_shop(tmp_path / "shop", monday)
    desk = Desk(record)
    yield desk
    desk.errands.finish()
    record.close()


def tinted(left: int, shade: tuple[int, int, int]) -> bytes:
    """A plate of one colour on white, 400 by 300, with its left edge here."""
    rgb = np.full((300, 400, 3), 240, np.uint8)
    rgb[80:220, left : left + 150] = shade
    return encoded(Image.fromarray(rgb), "PNG")


@pytest.fixture
def bench(qtbot: QtBot, desk: Desk) -> PhotoBench:
    """A dark old plate, and a light blue new one 40 pixels further right."""
    job_id = job_with_no_photos(desk.record)
    contents = (tinted(100, (60, 60, 60)), tinted(140, (120, 150, 230)))
    return open_bench(qtbot, desk, job_id, *contents)


def settled(qtbot: QtBot, desk: Desk) -> None:
    """Wait until nothing runs beside the window."""
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=30_000)


def lay_by_points(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    """Lay the photos on each other by the plate's corners."""
    press(qtbot, bench, "Wipe")
    settled(qtbot, desk)
    press(qtbot, bench, "Click two common points")
    stages = bench.stages()
    click(qtbot, stages["removed"], (100, 80), (249, 219))
    click(qtbot, stages["replacement"], (140, 80), (289, 219))
    settled(qtbot, desk)


def kept_overlay(desk: Desk, bench: PhotoBench) -> KeptOverlay | None:
    """How the photos lie on each other, as the record has it."""
    ids = [one.photo().id for one in bench.stages().values()]  # type: ignore[union-attr]
    found = desk.ask(overlay_of, *ids)
    assert found is None or isinstance(found, KeptOverlay)
    return found


def colour(bench: PhotoBench, pixel: tuple[float, float]) -> QColor:
    """The colour that the overlay shows at a point of the old photo."""
    stage = bench.findChild(OverlayStage)
    assert stage is not None
    scene = stage.mapFromScene(pixel[0] + 0.5, pixel[1] + 0.5)
    return stage.viewport().grab().toImage().pixelColor(QPoint(scene.x(), scene.y()))


def is_blue(seen: QColor) -> bool:
    """Tell whether the new plate is seen there."""
    return seen.blue() > seen.red() + 60


def test_two_common_points_lay_the_new_photo_on_the_old_one(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    lay_by_points(qtbot, desk, bench)
    there = kept_overlay(desk, bench)
    assert there is not None
    assert there.height_mm is None
    assert not named(bench, QLineEdit, "Height of the outline above the card").isVisible()
    matrix = np.array(there.transform)
    moved = matrix @ [140, 80, 1]
    assert (moved / moved[2])[:2] == pytest.approx([100, 80], abs=1.5)
    assert len(there.clicks) == 2
    stage = bench.findChild(OverlayStage)
    assert stage is not None
    assert stage.old_pixel_of((140, 80)) == pytest.approx((100, 80), abs=1.5)


def test_the_wipe_shows_the_new_part_right_of_its_line(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    lay_by_points(qtbot, desk, bench)
    stage = bench.findChild(OverlayStage)
    assert stage is not None
    slider = named(bench, QSlider, "Where the line of the wipe lies")
    slider.setValue(300)
    middle = (175.0, 150.0)
    assert is_blue(colour(bench, middle))
    slider.setValue(900)
    assert not is_blue(colour(bench, middle))
    stage.setFocus()
    type_keys(qtbot, stage, *[Qt.Key.Key_Left] * 5)
    assert slider.value() == pytest.approx(800, abs=2)
    width, down = stage.viewport().width(), stage.viewport().height() // 2
    at = QPoint(round(0.8 * width), down)
    qtbot.mousePress(stage.viewport(), Qt.MouseButton.LeftButton, pos=at)
    qtbot.mouseMove(stage.viewport(), QPoint(round(0.2 * width), down))
    qtbot.mouseRelease(stage.viewport(), Qt.MouseButton.LeftButton)
    assert slider.value() == pytest.approx(200, abs=5)
    assert is_blue(colour(bench, middle))


def test_the_blend_lets_both_be_seen_and_the_old_photo_stays_as_it_is(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    lay_by_points(qtbot, desk, bench)
    press(qtbot, bench, "Blend")
    slider = named(bench, QSlider, "How much of the new photo is seen")
    seen = []
    for share in (0, 500, 1000):
        slider.setValue(share)
        seen.append(colour(bench, (175, 150)).blue())
    assert seen[0] == pytest.approx(60, abs=3)
    assert seen[1] == pytest.approx(145, abs=5)
    assert seen[2] == pytest.approx(230, abs=3)


def test_the_alternation_can_be_stopped_and_turned_by_hand(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    lay_by_points(qtbot, desk, bench)
    press(qtbot, bench, "Alternate")
    stage = bench.findChild(OverlayStage)
    assert stage is not None
    before = stage.new_is_seen()
    qtbot.waitUntil(lambda: stage.new_is_seen() != before, timeout=3000)
    press(qtbot, bench, "Stop")
    still = stage.new_is_seen()
    qtbot.wait(500)
    assert stage.new_is_seen() == still
    stage.setFocus()
    type_keys(qtbot, stage, Qt.Key.Key_Space)
    assert stage.new_is_seen() != still
    assert is_blue(colour(bench, (175, 150))) == stage.new_is_seen()


def test_photos_that_cannot_be_aligned_say_why_and_ask_for_points(qtbot: QtBot, desk: Desk) -> None:
    contents = [encoded(noisy(400, 300, seed), "PNG") for seed in (1, 2)]
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), *contents)
    press(qtbot, bench, "Wipe")
    settled(qtbot, desk)
    assert kept_overlay(desk, bench) is None
    assert "These can't be aligned" in words_of(bench)
    assert saying(bench, "Click two common points").isEnabled()
    assert not saying(bench, "○  Show on the sheet").isEnabled()


def saying(bench: PhotoBench, words: str) -> QPushButton:
    """The button of these words."""
    return next(one for one in bench.findChildren(QPushButton) if one.text() == words)


def test_the_overlay_goes_on_the_sheet_and_off_it_by_undo(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    lay_by_points(qtbot, desk, bench)
    press(qtbot, bench, "Show on the sheet: not said")
    there = kept_overlay(desk, bench)
    assert there is not None
    assert there.on_sheet
    desk.undo()
    there = kept_overlay(desk, bench)
    assert there is not None
    assert not there.on_sheet
    named(bench, QPushButton, "Show on the sheet: not said")
    desk.undo()  # the laying itself
    assert kept_overlay(desk, bench) is None
    assert not bench.findChild(OverlayStage).is_laid()  # type: ignore[union-attr]


def test_one_photo_alone_cannot_be_laid_on_anything(qtbot: QtBot, desk: Desk) -> None:
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), plate())
    for words in ("Wipe", "Blend", "Alternate", "Differences"):
        button = saying(bench, words)
        assert not button.isEnabled()
        assert "both parts" in button.toolTip()
