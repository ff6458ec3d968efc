"""What stands beside each other for old and new stands in one line, at any size of the text."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.locked_views import LockedViews
from desktop_app.part_photos.screen.photo_tray import PhotoTray
from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.parts_compared.screen.dimension_name import DimensionName
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.look import dress
from tests.screens.bench_desk import Bench, named, new_job
from tests.screens.photo_desk import CAP, ROTOR


@pytest.fixture
def bench(app: QApplication, shop: ShopRecord, qtbot: QtBot) -> Iterator[Bench]:
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


def place(page: Bench, widget: QWidget) -> QRect:
    return QRect(widget.mapTo(page, QPoint()), widget.size())


def test_own_words_are_as_wide_as_the_photos_above_them(bench: Bench) -> None:
    trays = sorted((place(bench, one) for one in bench.findChildren(PhotoTray)), key=QRect.left)
    notes = [
        place(bench, named(bench, QPlainTextEdit, f"note on the {side}, distributor rotor"))
        for side in ("removed part", "replacement")
    ]
    assert [(one.left(), one.right()) for one in notes] == [
        (one.left(), one.right()) for one in trays
    ]


def test_the_way_to_the_photo_bench_takes_no_line_of_its_own(bench: Bench) -> None:
    view = named(bench, QPushButton, "view underside, distributor rotor")
    name = "Photo bench: measure in these photos, distributor rotor"
    assert place(bench, named(bench, QPushButton, name)).top() == place(bench, view).top()


@pytest.mark.parametrize("points", [12, 24])
def test_no_word_of_a_dimensions_name_is_cut_and_limits_stand_in_a_row(
    bench: Bench, app: QApplication, qtbot: QtBot, points: int
) -> None:
    dress(app, "light", points)
    more = next(b for b in bench.findChildren(QPushButton) if "More dimensions" in b.text())
    more.click()
    qtbot.wait(100)
    names = [one for one in bench.findChildren(DimensionName) if one.isVisible()]
    assert any("Resistance" in one.text() for one in names)
    for one in names:
        widest = max(map(one.fontMetrics().horizontalAdvance, one.text().split()))
        assert widest <= one.width(), one.text()
    ends = ("at least", "at most", "where the limits stand")
    fields = [named(bench, QLineEdit, f"{end}, resistance from centre to tip") for end in ends]
    assert len({place(bench, one).top() for one in fields}) == 1


def test_instruments_stand_beside_the_readings_again_once_the_text_is_small_again(
    bench: Bench, app: QApplication, qtbot: QtBot
) -> None:
    def is_beside() -> bool:
        tool = named(bench, QComboBox, "instrument, tip radius from the shaft axis")
        field = named(bench, QLineEdit, "tip radius from the shaft axis, removed")
        return abs(place(bench, tool).center().y() - place(bench, field).center().y()) < 5

    for points, beside in ((12, True), (24, False), (12, True)):
        dress(app, "light", points)
        qtbot.waitUntil(lambda beside=beside: is_beside() == beside)


def test_both_photos_are_as_high_when_only_one_caption_takes_two_lines(
    bench: Bench, app: QApplication, qtbot: QtBot, tmp_path: Path
) -> None:
    photos = (("short", CAP), ("a name " * 28, ROTOR))
    for tray, (name, photo) in zip(bench.findChildren(PhotoTray), photos, strict=True):
        file = tmp_path / f"{name.strip()}.jpg"
        file.write_bytes(photo)
        with qtbot.waitSignal(tray.photos_added):
            tray.add_paths([str(file)])
    qtbot.wait(100)
    (views,) = bench.findChildren(LockedViews)
    old, new = (place(bench, one) for one in (views.removed, views.replacement))
    assert (old.top(), old.height()) == (new.top(), new.height())
