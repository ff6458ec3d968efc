"""The photos of a pair: what is pressed to add one stays where it is."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.locked_views import LockedViews
from desktop_app.part_photos.screen.photo_tray import PhotoTray
from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, noisy
from tests.screens.bench_desk import Bench, named, new_job
from tests.screens.photo_desk import CAP


@pytest.fixture
def bench(shop: ShopRecord, qtbot: QtBot) -> Iterator[Bench]:
    """The bench of a new job with one pair."""
    desk = Desk(shop)
    job = new_job(shop)
    desk.do(lay_side_by_side, job, "distributor-rotor")
    page = Bench(desk, job)
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    qtbot.waitExposed(page)
    yield page
    desk.errands.finish()


def test_the_first_photo_moves_no_button_that_adds_photos(
    bench: Bench, qtbot: QtBot, tmp_path: Path
) -> None:
    def places() -> list[QPoint]:
        qtbot.wait(50)  # laid out
        top = named(bench, QPushButton, "view top, key at twelve o'clock, distributor rotor")
        return [one.mapTo(bench, QPoint()) - top.mapTo(bench, QPoint()) for one in add]

    add = [b for b in bench.findChildren(QPushButton) if b.text() in ("Add photos…", "Paste")]
    before = places()
    file = tmp_path / "old.jpg"
    file.write_bytes(CAP)
    tray = named(bench, PhotoTray, "photos of the removed part, distributor rotor")
    with qtbot.waitSignal(tray.photos_added):
        tray.add_paths([str(file)])
    qtbot.waitUntil(lambda: bool(bench.findChildren(LockedViews)))
    assert places() == before


def dropped(bench: Bench, qtbot: QtBot, files: list[Path], tray: PhotoTray) -> list[Qt.DropAction]:
    """Drag files over a tray and drop them, by a source that would rather move; what it is told."""
    mime, no_button = QMimeData(), Qt.MouseButton.NoButton
    mime.setUrls([QUrl.fromLocalFile(str(file)) for file in files])
    may, shift = (
        Qt.DropAction.CopyAction | Qt.DropAction.MoveAction,
        Qt.KeyboardModifier.ShiftModifier,
    )
    over = QDragEnterEvent(QPoint(5, 5), may, mime, no_button, shift)
    drop = QDropEvent(QPointF(5, 5), may, mime, no_button, shift)
    assert over.proposedAction() == drop.proposedAction() == Qt.DropAction.MoveAction
    with qtbot.waitSignal(tray.photos_added):
        for event in (over, drop):
            QApplication.sendEvent(tray, event)
    assert over.isAccepted()
    return [over.dropAction(), drop.dropAction()]


def test_a_drop_is_a_copy_and_one_step_to_undo(bench: Bench, qtbot: QtBot, tmp_path: Path) -> None:
    files = [tmp_path / f"{number}.jpg" for number in range(3)]
    for number, file in enumerate(files):
        file.write_bytes(encoded(noisy(64, 48, number)))
    tray = named(bench, PhotoTray, "photos of the removed part, distributor rotor")
    copied = Qt.DropAction.CopyAction
    assert dropped(bench, qtbot, files, tray) == [copied, copied]
    assert len(tray.photos()) == 3
    done = bench.desk.undo()
    assert done is not None
    assert done.words == "Put photos to a part"
    assert not tray.photos()
    assert bench.desk.record.undo_and_redo()[0] == "Lay old and new side by side"


def test_a_photo_put_to_the_other_part_too_is_said_to_stand_there(
    bench: Bench, qtbot: QtBot, tmp_path: Path
) -> None:
    told: list[object] = []
    bench.desk.told.connect(told.append)
    file = tmp_path / "both.jpg"
    file.write_bytes(CAP)
    trays = [
        named(bench, PhotoTray, f"photos of the {side}, distributor rotor")
        for side in ("removed part", "replacement")
    ]
    for tray in trays:
        with qtbot.waitSignal(tray.photos_added):
            tray.add_paths([str(file)])
    assert [len(tray.photos()) for tray in trays] == [1, 1]
    assert told == ["This job had it already; now it stands for this part too: both.jpg."]
    with qtbot.waitSignal(trays[1].photos_added):
        trays[1].add_paths([str(file)])
    assert told[1:] == ["No photo was added. It is on this job already: both.jpg."]
