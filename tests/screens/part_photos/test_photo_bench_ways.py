"""Ways around the photo bench: giving up, choosing, what the help says, small windows."""

from __future__ import annotations

from threading import Event

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QLineEdit,
    QListWidget,
    QPushButton,
    QToolTip,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.mark_actions import remove_mark
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.screen.bench_side_panel import SidePanel
from desktop_app.part_photos.screen.locked_views import LockedViews
from desktop_app.shop_record.record import open_shop
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.errands import Errand
from tests.part_photos.bench_pictures import encoded, job_with_no_photos, monday
from tests.screens.bench_desk import words_of
from tests.screens.marking import (
    click,
    lines,
    marks_kept,
    old_stage,
    open_bench,
    plate,
    press,
    spot,
    type_keys,
)
from tests.screens.photo_desk import named

ESC = Qt.Key.Key_Escape


@pytest.fixture
def bench(qtbot: QtBot, desk: Desk) -> PhotoBench:
    """The bench with a photo of each part, neither with a card."""
    return open_bench(qtbot, desk, job_with_no_photos(desk.record))


def test_escape_on_the_tools_button_drops_the_points_then_the_tool(
    qtbot: QtBot, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Draw: Angle")
    button = named(bench, QPushButton, "Draw: Angle")
    stage = bench.stages()["replacement"]
    click(qtbot, stage, (100, 80), (150, 100))
    type_keys(qtbot, button, ESC)
    assert stage.half_drawn() == 0
    assert button.isChecked()
    type_keys(qtbot, button, ESC)
    assert not button.isChecked()
    assert stage.tool() is None


def test_escape_in_one_photo_drops_points_of_the_other_first(
    qtbot: QtBot, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Draw: Angle")
    click(qtbot, old_stage(bench), (100, 80))
    type_keys(qtbot, bench.stages()["replacement"], ESC)
    assert old_stage(bench).half_drawn() == 0
    assert named(bench, QPushButton, "Draw: Angle").isChecked()


def test_escape_lets_the_points_of_a_known_length_be(qtbot: QtBot, bench: PhotoBench) -> None:
    name = "Two points of known length, removed part"
    press(qtbot, bench, name)
    assert "Known length, 1 of 2" in words_of(bench)
    click(qtbot, old_stage(bench), (50, 20))
    assert "Known length, 2 of 2" in words_of(bench)
    type_keys(qtbot, old_stage(bench), ESC)
    assert "Known length, 1 of 2" in words_of(bench)
    type_keys(qtbot, old_stage(bench), ESC)
    assert not named(bench, QPushButton, name).isChecked()
    assert old_stage(bench).tool() is None


def test_four_common_points_are_counted_over_both_photos(qtbot: QtBot, bench: PhotoBench) -> None:
    press(qtbot, bench, "Wipe")
    assert not named(bench, QPushButton, "Draw: Length").isVisible()
    press(qtbot, bench, "Click two common points")
    assert "Common points, 1 of 4" in words_of(bench)
    old, new = bench.stages()["removed"], bench.stages()["replacement"]
    click(qtbot, old, (100, 80))
    assert "Common points, 2 of 4" in words_of(bench)
    click(qtbot, old, (299, 219))
    assert "Common points, 3 of 4: the first point again, in the other photo." in words_of(bench)
    click(qtbot, new, (106, 80))
    assert "Common points, 4 of 4" in words_of(bench)
    type_keys(qtbot, new, ESC, ESC)
    assert "Common points" not in words_of(bench)


def test_a_click_inside_a_surface_chooses_it(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    stage = old_stage(bench)
    press(qtbot, bench, "Draw: Surface")
    assert "another colour than bare metal" in words_of(bench)
    click(qtbot, stage, (100, 80), (299, 80), (299, 219), (100, 219))
    stage.setFocus()
    type_keys(qtbot, stage, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    press(qtbot, bench, "Draw: Surface")
    click(qtbot, stage, (350, 20))
    assert stage.chosen_point() is None
    click(qtbot, stage, (200, 150))
    chosen = stage.chosen_point()
    assert chosen is not None
    assert chosen[0] == marks_kept(desk, bench)[0].id


def test_no_tooltip_covers_the_magnifier(qtbot: QtBot, bench: PhotoBench) -> None:
    stage = old_stage(bench)
    point = spot(stage, (100, 150))
    there = stage.viewport().mapToGlobal(point)
    press(qtbot, bench, "Draw: Length")
    event = QHelpEvent(QEvent.Type.ToolTip, point, there)
    QApplication.sendEvent(stage.viewport(), event)
    assert event.isAccepted()  # nobody else says anything about the spot
    assert QToolTip.text() == ""


def test_a_count_that_was_undone_is_not_said_any_more(qtbot: QtBot, desk: Desk) -> None:
    grey = np.full((300, 400, 3), 230, np.uint8)
    for left in range(60, 330, 30):
        grey[:, left : left + 12] = 50
    job_id = job_with_no_photos(desk.record)
    bench = open_bench(qtbot, desk, job_id, encoded(Image.fromarray(grey), "PNG"))
    press(qtbot, bench, "Draw: Count")
    click(qtbot, old_stage(bench), (45, 150), (330, 150))
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    assert "Count: 9" in words_of(bench)
    desk.undo()
    assert lines(bench) == ["◆  Count: not counted"]
    assert "Count: 9" not in words_of(bench)
    assert "Counted are the dark bands" not in words_of(bench)
    desk.redo()
    assert "Count: 9" in words_of(bench)


def test_a_mark_that_another_desk_took_out_goes_from_the_list(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Draw: Length")
    click(qtbot, old_stage(bench), (100, 150), (299, 150), (100, 180), (299, 180))
    first, second = (one.id for one in marks_kept(desk, bench))
    other = open_shop(desk.record.folder, monday)
    remove_mark(other, second)
    press(qtbot, bench, "Take this mark out")
    assert len(lines(bench)) == 1
    remove_mark(other, first)
    other.close()
    bench.came_here()
    assert not bench.findChildren(QListWidget)[0].isVisible()
    assert "No mark yet." in words_of(bench)


def test_the_bench_fits_a_small_window(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    """820 by 630 is what a window of 1040 by 700 leaves of itself beside the rail."""
    press(qtbot, bench, "Draw: Length")
    click(qtbot, old_stage(bench), (100, 150), (299, 150))
    bench.resize(820, 630)
    QApplication.processEvents()
    assert (bench.width(), bench.height()) == (820, 630)
    views, panel = bench.findChild(LockedViews), bench.findChild(SidePanel)
    assert views is not None
    assert panel is not None
    photos = placed(bench, views)
    assert placed(bench, panel).left() > photos.right()
    assert bench.rect().contains(placed(bench, panel))
    for stage in bench.stages().values():
        assert min(stage.width(), stage.height()) > 180
        assert photos.contains(placed(bench, stage))
    for button in tools(bench):
        assert bench.rect().contains(placed(bench, button))
        assert not photos.intersects(placed(bench, button))
        assert button.width() >= button.sizeHint().width()


def placed(bench: PhotoBench, widget: QWidget):  # type: ignore[no-untyped-def]
    """Where a widget lies on the bench."""
    return widget.rect().translated(widget.mapTo(bench, widget.rect().topLeft()))


def tools(bench: PhotoBench) -> list[QPushButton]:
    """The buttons of the tools."""
    every = bench.findChildren(QPushButton)
    return [one for one in every if one.accessibleName().startswith("Draw: ")]


def test_everything_that_can_be_pressed_or_typed_into_has_a_name(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Draw: Length")
    click(qtbot, old_stage(bench), (100, 150), (299, 150))
    for sort in (QAbstractButton, QLineEdit, QListWidget):
        for one in bench.findChildren(sort):
            if one.isVisible():
                text = one.text() if isinstance(one, QAbstractButton) else ""
                assert one.accessibleName() or text, one


def test_words_stand_at_the_edge_and_leave_the_ends_of_the_mark_free(
    qtbot: QtBot, desk: Desk
) -> None:
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), plate())
    stage = old_stage(bench)
    press(qtbot, bench, "Draw: Length")
    click(qtbot, stage, (100, 150), (299, 150))
    press(qtbot, bench, "Draw: Length")
    before = stage.viewport().grab().toImage()
    field = named(bench, QLineEdit, "Name of the mark")
    qtbot.keyClicks(field, "width of the plate")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    after = stage.viewport().grab().toImage()
    other = [
        (x, y)
        for x in range(before.width())
        for y in range(before.height())
        if before.pixel(x, y) != after.pixel(x, y)
    ]
    assert other, "the name is written on the photo"
    for end in ((100, 150), (200, 150), (299, 150)):
        at = spot(stage, end)
        assert min(abs(x - at.x()) + abs(y - at.y()) for x, y in other) > 30


def test_where_looking_for_the_card_fails_the_bench_does_not_look_for_ever(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    name = "Look for the card, removed part"
    gate = Event()
    for _ in range(2):  # all hands are full, so the looking surely waits when it is stopped
        desk.errands.run("Waiting at the gate", gate.wait)
    press(qtbot, bench, name)
    assert "Looking for the bench card" in words_of(bench)
    assert not named(bench, QPushButton, name).isEnabled()
    for errand in desk.errands.findChildren(Errand):
        if "gate" not in errand.words:
            errand.stop()  # as the notice strip's button does
    gate.set()
    ended = "was not looked for to the end"
    qtbot.waitUntil(lambda: ended in words_of(bench), timeout=60_000)
    assert "Looking for the bench card" not in words_of(bench)
    assert named(bench, QPushButton, name).isEnabled()
