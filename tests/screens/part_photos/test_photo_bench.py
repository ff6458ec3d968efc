"""The photo bench as a user works on it: marks by mouse and by keys, on known pixels."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.bench_mark_details import MarkDetails
from desktop_app.part_photos.screen.bench_marks_list import MarksList
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import save_everything
from tests.part_photos.bench_pictures import job_with_no_photos
from tests.screens.bench_desk import words_of
from tests.screens.marking import (
    click,
    give_scale,
    lines,
    marks_kept,
    old_stage,
    open_bench,
    press,
    spot,
    type_keys,
)
from tests.screens.photo_desk import named

RIGHT, DOWN, UP = Qt.Key.Key_Right, Qt.Key.Key_Down, Qt.Key.Key_Up
SHIFT, CTRL = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def bench(qtbot: QtBot, desk: Desk) -> PhotoBench:
    """The bench with a photo of each part, neither with a card."""
    return open_bench(qtbot, desk, job_with_no_photos(desk.record))


def draw_length(qtbot: QtBot, bench: PhotoBench, y: float = 150) -> None:
    """Draw a length along the plate, and put the tool down."""
    press(qtbot, bench, "Draw: Length")
    click(qtbot, old_stage(bench), (100, y), (299, y))
    press(qtbot, bench, "Draw: Length")


def test_without_a_card_the_bench_says_so_and_a_mark_has_no_size(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    assert words_of(bench).count("No scale yet") == 2
    draw_length(qtbot, bench)
    assert lines(bench) == ["◆  Length: no scale"]
    assert marks_kept(desk, bench)[0].value is None


def test_a_length_on_known_pixels_gives_its_millimetres(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    give_scale(qtbot, bench, (50, 20), (350, 20), "30")
    draw_length(qtbot, bench)
    mark = marks_kept(desk, bench)[0]
    assert mark.value == pytest.approx(19.9, abs=0.25)  # clicks are whole pixels of the screen
    (x1, y1), (x2, y2) = mark.mark.points_px
    assert mark.value == pytest.approx(math.hypot(x2 - x1, y2 - y1) * 0.1, abs=0.15)
    assert mark.expanded_u is not None
    assert mark.expanded_u > 0
    assert f"{mark.value:.1f}"[:3] in lines(bench)[0]
    assert "±" in lines(bench)[0]


def test_the_scale_comes_later_and_marks_follow_it(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    draw_length(qtbot, bench)
    give_scale(qtbot, bench, (50, 20), (350, 20), "30 mm")
    assert marks_kept(desk, bench)[0].value == pytest.approx(19.9, abs=0.25)
    desk.undo()
    assert marks_kept(desk, bench)[0].value is None
    assert lines(bench) == ["◆  Length: no scale"]


def test_arrow_keys_move_the_chosen_point_in_tenths_of_a_pixel(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    draw_length(qtbot, bench)
    stage = old_stage(bench)
    click(qtbot, stage, (299, 150))
    before = marks_kept(desk, bench)[0].mark.points_px
    type_keys(qtbot, stage, RIGHT, RIGHT, RIGHT)
    type_keys(qtbot, stage, DOWN, held=SHIFT)
    type_keys(qtbot, stage, RIGHT, held=CTRL)
    bench.keep_draft()
    after = marks_kept(desk, bench)[0].mark.points_px
    assert after[0] == before[0]
    assert after[1] == pytest.approx((before[1][0] + 10.3, before[1][1] + 1.0))
    assert "0.1 pixel" in words_of(bench)
    desk.undo()  # all those keys were one deed
    assert marks_kept(desk, bench)[0].mark.points_px == before
    desk.redo()
    assert marks_kept(desk, bench)[0].mark.points_px == after


def test_moving_is_kept_once_it_rests(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    draw_length(qtbot, bench)
    before = marks_kept(desk, bench)[0].mark.points_px
    stage = old_stage(bench)
    click(qtbot, stage, (100, 150))
    type_keys(qtbot, stage, UP)
    assert marks_kept(desk, bench)[0].mark.points_px == before
    qtbot.waitUntil(lambda: marks_kept(desk, bench)[0].mark.points_px != before, timeout=5000)


def test_a_point_is_dragged_with_the_mouse(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    draw_length(qtbot, bench)
    stage = old_stage(bench)
    click(qtbot, stage, (299, 150))
    qtbot.mousePress(stage.viewport(), Qt.MouseButton.LeftButton, pos=spot(stage, (299, 150)))
    qtbot.mouseMove(stage.viewport(), spot(stage, (320, 180)))
    qtbot.mouseRelease(stage.viewport(), Qt.MouseButton.LeftButton, pos=spot(stage, (320, 180)))
    bench.keep_draft()
    assert marks_kept(desk, bench)[0].mark.points_px[1] == pytest.approx((320, 180), abs=1)


def test_a_mark_is_drawn_moved_and_taken_out_without_a_mouse(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    stage = old_stage(bench)
    stage.setFocus()
    type_keys(qtbot, stage, Qt.Key.Key_1)
    type_keys(qtbot, stage, RIGHT, held=SHIFT)
    type_keys(qtbot, stage, Qt.Key.Key_Space)
    type_keys(qtbot, stage, *[RIGHT] * 4, held=SHIFT)
    type_keys(qtbot, stage, Qt.Key.Key_Space)
    (one, other) = marks_kept(desk, bench)[0].mark.points_px
    assert (other[0] - one[0], other[1] - one[1]) == pytest.approx((4, 0))
    type_keys(qtbot, stage, Qt.Key.Key_1)
    type_keys(qtbot, bench.findChild(MarksList), Qt.Key.Key_Return)
    type_keys(qtbot, stage, Qt.Key.Key_Tab)
    type_keys(qtbot, stage, RIGHT)
    bench.keep_draft()
    assert marks_kept(desk, bench)[0].mark.points_px[1][0] == pytest.approx(other[0] + 0.1)
    type_keys(qtbot, stage, Qt.Key.Key_Delete)
    assert marks_kept(desk, bench) == ()
    desk.undo()
    assert len(lines(bench)) == 1


def test_escape_gives_up_a_half_drawn_mark_and_then_the_tool(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Draw: Angle")
    stage = old_stage(bench)
    click(qtbot, stage, (100, 80), (150, 100))
    assert stage.half_drawn() == 2
    stage.setFocus()
    type_keys(qtbot, stage, Qt.Key.Key_Escape)
    assert stage.half_drawn() == 0
    assert named(bench, QPushButton, "Draw: Angle").isChecked()
    type_keys(qtbot, stage, Qt.Key.Key_Escape)
    assert not named(bench, QPushButton, "Draw: Angle").isChecked()
    assert marks_kept(desk, bench) == ()


def test_enter_ends_a_circle(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    give_scale(qtbot, bench, (50, 20), (350, 20), "30")
    press(qtbot, bench, "Draw: Circle")
    stage = old_stage(bench)
    stage.setFocus()
    rim = [(200 + 60 * math.cos(t), 150 + 60 * math.sin(t)) for t in range(5)]
    click(qtbot, stage, *rim[:2])
    type_keys(qtbot, stage, Qt.Key.Key_Return)
    assert marks_kept(desk, bench) == ()  # two points are no circle; Enter placed a third at most
    type_keys(qtbot, stage, Qt.Key.Key_Backspace)
    click(qtbot, stage, *rim[2:])
    type_keys(qtbot, stage, Qt.Key.Key_Return)
    mark = marks_kept(desk, bench)[0]
    assert mark.value == pytest.approx(12.0, abs=0.3)
    assert lines(bench)[0].startswith("◆  Circle: ⌀ 1")


def test_a_note_is_written_where_its_arrow_stands(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Draw: Note")
    click(qtbot, old_stage(bench), (299, 80), (340, 40))
    field = named(bench, QLineEdit, "What the note says")
    qtbot.keyClicks(field, "burnt <here>")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert lines(bench) == ["◆  Note: burnt <here>"]
    assert marks_kept(desk, bench)[0].mark.name == "burnt <here>"


def test_a_mark_is_named_and_its_height_counts(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    give_scale(qtbot, bench, (50, 20), (350, 20), "30")
    draw_length(qtbot, bench)
    name = named(bench, QLineEdit, "Name of the mark")
    qtbot.keyClicks(name, "protrusion")
    qtbot.keyClick(name, Qt.Key.Key_Return)
    height = named(bench, QLineEdit, "Height above the card")
    qtbot.keyClicks(height, "12,5")
    qtbot.keyClick(height, Qt.Key.Key_Return)
    mark = marks_kept(desk, bench)[0].mark
    assert (mark.name, mark.height_mm, mark.height_u_mm) == ("protrusion", 12.5, 0.5)
    assert named(bench, QLineEdit, "Height plus or minus").text() == "0.5"
    assert "protrusion" in lines(bench)[0]
    draw_length(qtbot, bench)  # the next one lies as high until somebody says otherwise
    assert marks_kept(desk, bench)[1].mark.height_mm == 12.5


def test_a_half_typed_height_stays_with_its_mark(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    draw_length(qtbot, bench)
    first = bench.findChild(MarkDetails)
    assert first is not None
    height = named(bench, QLineEdit, "Height above the card")
    height.setFocus()
    qtbot.keyClicks(height, "12 mmm")
    draw_length(qtbot, bench, 200)
    assert len(marks_kept(desk, bench)) == 2
    assert first.isHidden()
    assert height.text() == "12 mmm"
    assert not marks_kept(desk, bench)[1].height_known
    click(qtbot, old_stage(bench), (100, 150))
    assert first.isVisible()
    assert "can't be understood" in words_of(first)


def test_what_was_moved_or_typed_is_kept_when_the_bench_is_left(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    draw_length(qtbot, bench)
    stage = old_stage(bench)
    click(qtbot, stage, (100, 150))
    type_keys(qtbot, stage, RIGHT, held=CTRL)
    qtbot.keyClicks(named(bench, QLineEdit, "Name of the mark"), "tip")
    before = marks_kept(desk, bench)[0].mark
    save_everything(bench)
    after = marks_kept(desk, bench)[0].mark
    assert after.name == "tip"
    assert after.points_px[0][0] == pytest.approx(before.points_px[0][0] + 10, abs=10.1)
    with qtbot.waitSignal(bench.done):
        press(qtbot, bench, "← Back to the pair")


def test_both_photos_move_together_while_marks_stay_on_their_pixels(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    draw_length(qtbot, bench)
    old, new = bench.stages()["removed"], bench.stages()["replacement"]
    old.setFocus()
    type_keys(qtbot, old, Qt.Key.Key_Plus, Qt.Key.Key_Plus)
    assert new.loupe().zoom == pytest.approx(old.loupe().zoom)
    before = marks_kept(desk, bench)[0].mark.points_px
    click(qtbot, old, before[0])
    assert old.chosen_point() == (marks_kept(desk, bench)[0].id, 0)


def test_the_magnifier_shows_the_spot_and_does_not_hide_it(qtbot: QtBot, bench: PhotoBench) -> None:
    press(qtbot, bench, "Draw: Length")
    stage = old_stage(bench)
    for pixel in ((100, 150), (395, 295), (3, 3)):
        qtbot.mouseMove(stage.viewport(), spot(stage, pixel))
        assert stage.magnifier.isVisible()
        assert stage.magnifier.spot() == pytest.approx(pixel, abs=1)
        under = stage.viewport().mapTo(stage, spot(stage, pixel))
        assert not stage.magnifier.geometry().contains(under)


def test_a_point_stays_on_the_photo(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    draw_length(qtbot, bench)
    stage = old_stage(bench)
    click(qtbot, stage, (100, 150))
    type_keys(qtbot, stage, *[Qt.Key.Key_Left] * 14, held=CTRL)
    bench.keep_draft()
    assert marks_kept(desk, bench)[0].mark.points_px[0][0] == -0.5


def test_an_emptied_height_is_not_said(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    draw_length(qtbot, bench)
    field = named(bench, QLineEdit, "Height above the card")
    qtbot.keyClicks(field, "12")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert marks_kept(desk, bench)[0].height_known
    field.selectAll()
    qtbot.keyClick(field, Qt.Key.Key_Delete)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert not marks_kept(desk, bench)[0].height_known
    assert named(bench, QLineEdit, "Height plus or minus").text() == ""


def test_better_points_for_the_same_length_are_kept(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    give_scale(qtbot, bench, (50, 20), (350, 20), "30")
    draw_length(qtbot, bench)
    assert marks_kept(desk, bench)[0].value == pytest.approx(19.9, abs=0.25)
    give_scale(qtbot, bench, (100, 20), (200, 20), "30")
    assert marks_kept(desk, bench)[0].value == pytest.approx(59.7, abs=0.8)
