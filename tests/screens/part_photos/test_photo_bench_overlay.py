"""One photo laid on the other in the window: wiped, blended, in turn, by points, on the sheet."""

from __future__ import annotations

from functools import partial

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QLineEdit, QPushButton, QSlider
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen import bench_laying
from desktop_app.part_photos.screen.bench_overlay_stage import OverlayStage
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.stored import Overlay
from desktop_app.part_photos.stored_marks import KeptOverlay, overlay_of
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, job_with_no_photos, noisy
from tests.screens.bench_desk import words_of
from tests.screens.marking import click, open_bench, plate, press, type_keys
from tests.screens.photo_desk import named


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


def over(bench: PhotoBench) -> OverlayStage:
    """The stage on which both photos lie."""
    found = bench.findChild(OverlayStage)
    assert found is not None
    return found


def colour(bench: PhotoBench, pixel: tuple[float, float]) -> QColor:
    """The colour that the overlay shows at a point of the old photo."""
    stage = over(bench)
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


def test_the_wipe_shows_the_new_part_right_of_its_line(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    lay_by_points(qtbot, desk, bench)
    stage = over(bench)
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
    stage = over(bench)
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
    assert "Laid" in words_of(bench)
    desk.undo()  # the laying itself
    assert kept_overlay(desk, bench) is None
    assert not over(bench).is_laid()
    assert "Laid" not in words_of(bench)
    assert "The photos don't lie on each other any more." in words_of(bench)
    settled(qtbot, desk)
    assert kept_overlay(desk, bench) is None  # not laid anew by itself
    press(qtbot, bench, "Blend")
    settled(qtbot, desk)


def test_the_photos_are_taken_apart_and_undo_lays_them_on_each_other_again(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Wipe")
    settled(qtbot, desk)
    lay_by_points(qtbot, desk, bench)
    press(qtbot, bench, "Show on the sheet: not said")
    press(qtbot, bench, "Take them apart")
    assert kept_overlay(desk, bench) is None
    assert not over(bench).is_laid()
    assert "The photos don't lie on each other any more." in words_of(bench)
    assert not saying(bench, "Take them apart").isEnabled()
    assert not saying(bench, "○  Show on the sheet").isEnabled()
    settled(qtbot, desk)
    assert kept_overlay(desk, bench) is None  # not laid anew by itself
    desk.undo()
    there = kept_overlay(desk, bench)
    assert there is not None
    assert there.on_sheet
    assert over(bench).is_laid()
    settled(qtbot, desk)


@pytest.mark.parametrize("again", [False, True])
def test_a_damaged_overlay_is_said_and_can_be_taken_out_or_laid_anew(
    qtbot: QtBot, desk: Desk, bench: PhotoBench, again: bool
) -> None:
    lay_by_points(qtbot, desk, bench)
    told: list[object] = []
    desk.told.connect(told.append)
    spoil = partial(Deed.change, kept=Overlay, row_id=1, transform="[[1]]")
    assert desk.do(ShopRecord.do, "x", spoil)
    assert not over(bench).is_laid()
    assert "is damaged in the record" in words_of(bench)
    if again:
        lay_by_points(qtbot, desk, bench)
        assert over(bench).is_laid()
    else:
        press(qtbot, bench, "Take them apart")
        assert kept_overlay(desk, bench) is None
    assert "is damaged in the record" not in words_of(bench)
    assert not told
    settled(qtbot, desk)


def test_the_panel_says_which_photo_is_the_old_one(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    assert "left of the line" not in words_of(bench)
    lay_by_points(qtbot, desk, bench)
    for words in ("◆", "left of the line: removed part", "●", "right of the line: replacement"):
        assert words in words_of(bench).split("\n")
    press(qtbot, bench, "Blend")
    named(bench, QSlider, "How much of the new photo is seen").setValue(300)
    assert "removed part, 70 %" in words_of(bench)
    assert "replacement, 30 %" in words_of(bench)
    press(qtbot, bench, "Alternate")
    press(qtbot, bench, "Stop")
    was = over(bench).new_is_seen()
    press(qtbot, bench, "The other photo")
    assert over(bench).new_is_seen() != was
    assert f"replacement, {'hidden' if was else 'seen'} now" in words_of(bench)
    press(qtbot, bench, "Differences")
    for words in ("seen alone: removed part", "not drawn: replacement", "No outlines were found"):
        assert words in words_of(bench)
    assert "hatched" not in words_of(bench)


def test_the_wipe_opens_on_the_part_and_stays_where_somebody_looks(
    qtbot: QtBot, desk: Desk
) -> None:
    contents = []
    for left in (20, 30):
        rgb = np.full((900, 1200, 3), 240, np.uint8)
        rgb[40:180, left : left + 150] = (60, 60, 60)
        contents.append(encoded(Image.fromarray(rgb), "PNG"))
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), *contents)
    press(qtbot, bench, "Wipe")
    settled(qtbot, desk)
    press(qtbot, bench, "Click two common points")
    stages = bench.stages()
    click(qtbot, stages["removed"], (20, 40), (169, 179))
    click(qtbot, stages["replacement"], (30, 40), (179, 179))
    settled(qtbot, desk)
    loupe = over(bench).loupe()
    assert loupe.zoom > 2
    assert (loupe.x, loupe.y) == pytest.approx((95 / 1200, 110 / 900), abs=0.01)
    over(bench).setFocus()
    type_keys(qtbot, over(bench), Qt.Key.Key_Minus)
    mine = over(bench).loupe()
    assert mine != loupe
    press(qtbot, bench, "Differences")
    settled(qtbot, desk)
    assert over(bench).loupe() == mine


def test_looking_at_what_is_kept_writes_nothing(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    lay_by_points(qtbot, desk, bench)
    photos = [one.photo() for one in bench.stages().values()]
    again = PhotoBench(desk, *photos)
    qtbot.addWidget(again)
    again.resize(1280, 820)
    again.show()
    settled(qtbot, desk)
    done: list[object] = []
    desk.changed.connect(done.append)
    for words in ("Wipe", "Differences"):
        press(qtbot, again, words)
        settled(qtbot, desk)
    assert not done
    assert over(again).is_laid()
    assert over(again).loupe().zoom > 1


@pytest.mark.expects_trouble_log
def test_an_unforeseen_mistake_ends_the_words_that_say_it_is_at_work(
    qtbot: QtBot, desk: Desk, bench: PhotoBench, monkeypatch: pytest.MonkeyPatch
) -> None:
    def mistaken(*_given: object) -> None:
        raise RuntimeError("planted")

    with monkeypatch.context() as planted:
        planted.setattr(bench_laying, "align", mistaken)
        press(qtbot, bench, "Wipe")
        settled(qtbot, desk)
    assert "did not work" in words_of(bench)
    assert "Laying the new photo on the old one" not in words_of(bench)
    lay_by_points(qtbot, desk, bench)
    assert "did not work" not in words_of(bench)
    assert kept_overlay(desk, bench) is not None


def test_one_photo_alone_cannot_be_laid_on_anything(qtbot: QtBot, desk: Desk) -> None:
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), plate())
    for words in ("Wipe", "Blend", "Alternate", "Differences"):
        button = saying(bench, words)
        assert not button.isEnabled()
        assert "both parts" in button.toolTip()
