"""A strip of photos: the wheel is left to the page; tipped sideways it moves the strip."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.photo_strip import PhotoStrip
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import job_with_no_photos
from tests.screens.photo_desk import CAP, ROTOR, kept


@pytest.fixture
def strip(desk: Desk, qtbot: QtBot) -> PhotoStrip:
    """A strip too narrow for its two photos."""
    strip = PhotoStrip(desk, "Photos")
    qtbot.addWidget(strip)
    strip.setFixedWidth(200)
    strip.show_photos(kept(desk, job_with_no_photos(desk.record), CAP, ROTOR))
    strip.show()
    desk.errands.finish()
    return strip


def turned(strip: PhotoStrip, across: int, along: int) -> QWheelEvent:
    """Turn the wheel towards the hand, or tip it; return what became of it."""
    spot = QPoint(60, 60)
    event = QWheelEvent(
        QPointF(spot),
        QPointF(strip.viewport().mapToGlobal(spot)),
        QPoint(),
        QPoint(across, along),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(strip.viewport(), event)
    return event


def test_the_wheel_is_left_to_the_page(strip: PhotoStrip) -> None:
    assert not turned(strip, 0, -120).isAccepted()
    assert strip.horizontalScrollBar().value() == 0


def test_a_wheel_tipped_sideways_moves_the_strip(strip: PhotoStrip) -> None:
    assert turned(strip, -120, 0).isAccepted()
    assert strip.horizontalScrollBar().value() > 0
