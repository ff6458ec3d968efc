"""Old beside new in the window: upright, enlarged by wheel and keys, locked together."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QPushButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen import picture_image
from desktop_app.part_photos.screen.locked_views import LockedViews
from desktop_app.part_photos.screen.photo_stage import PhotoStage
from desktop_app.shop_window.desk import Desk
from tests.from_outside import GONE, lose_photo
from tests.part_photos.bench_pictures import (
    encoded,
    job_with_no_photos,
    picture,
)
from tests.screens.photo_desk import CAP, ROTOR, kept, named


@pytest.fixture
def job_id(desk: Desk) -> int:
    """A job without photos."""
    return job_with_no_photos(desk.record)


def turn_wheel(stage: PhotoStage, turns: int, spot: QPoint) -> None:
    """Turn the mouse's wheel over a spot of the stage."""
    event = QWheelEvent(
        QPointF(spot),
        QPointF(stage.viewport().mapToGlobal(spot)),
        QPoint(),
        QPoint(0, 120 * turns),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(stage.viewport(), event)


@pytest.fixture
def views(qtbot: QtBot, desk: Desk, job_id: int) -> LockedViews:
    """Two photos side by side, fully decoded."""
    removed, replacement = kept(desk, job_id, CAP, ROTOR)
    views = LockedViews(desk)
    qtbot.addWidget(views)
    views.resize(1000, 560)
    views.show()
    with qtbot.waitSignals([views.removed.shown, views.replacement.shown]):
        views.show_pair(removed, replacement)
    return views


def centre(stage: PhotoStage) -> tuple[float, float]:
    """Which point of the photo Qt really shows in the middle, in fractions."""
    photo = stage.photo()
    assert photo is not None
    middle = stage.mapToScene(stage.viewport().rect().center())
    return middle.x() / photo.width, middle.y() / photo.height


def test_the_photo_is_shown_upright_and_whole(views: LockedViews) -> None:
    stage = views.removed
    assert stage.photo() is not None
    assert (stage.photo().width, stage.photo().height) == (300, 400)
    seen = stage.mapToScene(stage.viewport().rect()).boundingRect()
    assert seen.contains(5, 5)
    assert seen.contains(295, 395)
    assert centre(stage) == pytest.approx((0.5, 0.5), abs=0.01)


def test_both_zoom_and_move_together(qtbot: QtBot, views: LockedViews) -> None:
    old, new = views.removed, views.replacement
    turn_wheel(old, 4, QPoint(60, 60))
    assert old.loupe().zoom == new.loupe().zoom > 2
    for stage in (old, new):
        assert centre(stage) == pytest.approx((stage.loupe().x, stage.loupe().y), abs=0.01)
    before = centre(old), centre(new)
    qtbot.mousePress(new.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(150, 150))
    qtbot.mouseMove(new.viewport(), QPoint(120, 130))
    qtbot.mouseRelease(new.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(120, 130))
    for stage, (x, y) in zip((old, new), before, strict=True):
        scale = stage.transform().m11()
        photo = stage.photo()
        assert photo is not None
        moved = (x + 30 / (photo.width * scale), y + 20 / (photo.height * scale))
        assert centre(stage) == pytest.approx(moved, abs=0.01)


def test_everything_goes_by_keys(qtbot: QtBot, views: LockedViews) -> None:
    old, new = views.removed, views.replacement
    for key in (Qt.Key.Key_Plus, Qt.Key.Key_Plus, Qt.Key.Key_Plus, Qt.Key.Key_Plus):
        qtbot.keyClick(old, key)
    assert new.loupe().zoom == pytest.approx(1.25**4)
    qtbot.keyClick(old, Qt.Key.Key_Right)
    assert old.loupe().x > 0.5
    assert new.loupe().x > 0.5
    qtbot.keyClick(old, Qt.Key.Key_Minus)
    assert old.loupe().zoom == pytest.approx(1.25**3)
    qtbot.keyClick(old, Qt.Key.Key_0)
    assert (old.loupe().zoom, old.loupe().x, new.loupe().zoom) == (1, 0.5, 1)


def test_double_click_shows_the_whole_photo_again(qtbot: QtBot, views: LockedViews) -> None:
    turn_wheel(views.removed, 3, QPoint(10, 10))
    qtbot.mouseDClick(views.replacement.viewport(), Qt.MouseButton.LeftButton)
    assert views.removed.loupe().zoom == views.replacement.loupe().zoom == 1


def test_unlocked_each_moves_on_its_own_and_the_shift_is_kept(
    qtbot: QtBot, views: LockedViews
) -> None:
    lock = named(views, QPushButton, "Locked together")
    turn_wheel(views.removed, 6, QPoint(100, 100))
    qtbot.mouseClick(lock, Qt.MouseButton.LeftButton)
    assert lock.accessibleName() == "Each moves on its own"
    qtbot.keyClick(views.replacement, Qt.Key.Key_Right)
    assert views.replacement.loupe().x != pytest.approx(views.removed.loupe().x, abs=0.01)
    qtbot.mouseClick(lock, Qt.MouseButton.LeftButton)
    apart = views.replacement.loupe().y - views.removed.loupe().y
    qtbot.mouseClick(named(views, QPushButton, "Enlarge (+)"), Qt.MouseButton.LeftButton)
    assert views.removed.loupe().zoom == pytest.approx(views.replacement.loupe().zoom)
    assert views.replacement.loupe().y - views.removed.loupe().y == pytest.approx(apart)


def test_the_wheel_scrolls_the_page_when_the_photo_is_whole(views: LockedViews) -> None:
    turn_wheel(views.removed, -2, QPoint(100, 100))
    assert views.removed.loupe().zoom == 1


def test_one_file_on_both_sides_is_said(qtbot: QtBot, views: LockedViews) -> None:
    same = [label for label in views.findChildren(QLabel) if "same picture" in label.text()]
    assert [label.isVisible() for label in same] == [False]
    views.show_pair(views.removed.photo(), views.removed.photo())
    assert [label.isVisible() for label in same] == [True]


def test_a_side_without_a_photo_says_so(desk: Desk, views: LockedViews) -> None:
    views.show_pair(views.removed.photo(), None)
    assert views.replacement.accessibleName() == "Replacement: No photo of the replacement here yet"


def test_a_lost_original_is_said_on_the_stage(qtbot: QtBot, desk: Desk, job_id: int) -> None:
    (photo,) = kept(desk, job_id, encoded(picture()))
    lose_photo(desk.record, photo.sha256)
    stage = PhotoStage(desk, "Removed part")
    qtbot.addWidget(stage)
    stage.show_photo(photo)
    qtbot.waitUntil(lambda: GONE.search(stage.accessibleName()))


def test_a_stage_that_is_gone_is_not_drawn_on(qtbot: QtBot, desk: Desk, job_id: int) -> None:
    (photo,) = kept(desk, job_id, CAP)
    stage = PhotoStage(desk)
    stage.show_photo(photo)
    stage.deleteLater()
    qtbot.waitUntil(lambda: not desk.errands.busy())


def test_everything_that_takes_the_focus_has_a_name(views: LockedViews) -> None:
    for widget in views.findChildren(QWidget):
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and widget.focusProxy() is None:
            assert widget.accessibleName(), widget


def test_a_very_large_photo_is_shown_in_its_own_measure(
    qtbot: QtBot, desk: Desk, job_id: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(picture_image, "MOST_IN_FOUR_BYTES", 50_000)  # the photo has 120,000 pixels
    (photo,) = kept(desk, job_id, CAP)
    stage = PhotoStage(desk)
    qtbot.addWidget(stage)
    stage.show()
    with qtbot.waitSignal(stage.shown):
        stage.show_photo(photo)
    assert stage.items()[0].boundingRect().size().toTuple() == (300, 400)
    assert centre(stage) == pytest.approx((0.5, 0.5), abs=0.01)
