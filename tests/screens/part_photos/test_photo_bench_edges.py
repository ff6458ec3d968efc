"""The bench looks closely: edges snapped to, bands counted, a mark that becomes a reading."""

from __future__ import annotations

import re
from collections.abc import Sequence

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.bench_readings import BenchDimension, BenchHeight
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, job_with_no_photos
from tests.screens.bench_desk import words_of
from tests.screens.marking import (
    click,
    give_scale,
    lines,
    marks_kept,
    old_stage,
    open_bench,
    plate,
    press,
    type_keys,
)
from tests.screens.photo_desk import named

USE = "Use as the reading of …"


@pytest.fixture
def job_id(desk: Desk) -> int:
    """A job without photos."""
    return job_with_no_photos(desk.record)


class Readings:
    """The readings of a pair that only remembers what it was asked."""

    def __init__(self) -> None:
        self.took: list[tuple[int, str, str]] = []
        self.followed: list[int] = []

    def dimensions(self, side: str) -> Sequence[BenchDimension]:
        """A length and an angle."""
        return [
            BenchDimension("protrusion", "protrusion", "mm", "length", "26.90 mm by calliper"),
            BenchDimension("bend", "bend of the arm", "°", "angle"),
        ]

    def heights(self, side: str) -> Sequence[BenchHeight]:
        """What the calliper said of its height."""
        return [BenchHeight("tip height", 12.3456, 0.0321)]

    def take(self, mark_id: int, side: str, dimension: str) -> None:
        """Remember it."""
        self.took.append((mark_id, side, dimension))

    def let_go(self, mark_id: int) -> None:
        """Forget it."""
        self.took = [one for one in self.took if one[0] != mark_id]

    def taken(self, mark_id: int) -> str | None:
        """Say it."""
        return next((f"{d}, {s}" for m, s, d in self.took if m == mark_id), None)

    def follow(self, deed: Deed, mark_id: int) -> None:
        """Remember it."""
        self.followed.append(mark_id)


def settled(qtbot: QtBot, desk: Desk) -> None:
    """Wait until nothing runs beside the window."""
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)


def test_points_snap_to_the_edge_and_undo_brings_the_clicks_back(
    qtbot: QtBot, desk: Desk, job_id: int
) -> None:
    bench = open_bench(qtbot, desk, job_id, plate())
    press(qtbot, bench, "Snap to the edge: not said")
    press(qtbot, bench, "Draw: Length")
    click(qtbot, old_stage(bench), (101, 150), (298, 150))
    settled(qtbot, desk)
    mark = marks_kept(desk, bench)[0]
    xs = [x for x, _ in mark.mark.points_px]
    assert xs == pytest.approx([99.5, 299.5], abs=0.25)  # the plate covers pixels 100 to 299
    assert mark.mark.snapped == (True, True)
    assert len(mark.clicks) == 2
    desk.undo()
    assert marks_kept(desk, bench)[0].mark.points_px == mark.clicks


def test_where_no_edge_is_clear_the_click_stays_and_the_bench_says_so(
    qtbot: QtBot, desk: Desk, job_id: int
) -> None:
    bench = open_bench(qtbot, desk, job_id, plate())
    press(qtbot, bench, "Draw: Length")
    click(qtbot, old_stage(bench), (150, 150), (250, 150))
    before = marks_kept(desk, bench)[0].mark
    press(qtbot, bench, "Snap this mark to the edge")
    settled(qtbot, desk)
    assert marks_kept(desk, bench)[0].mark == before
    assert "No edge was clear enough" in words_of(bench)


def test_bands_are_counted_along_a_line(qtbot: QtBot, desk: Desk, job_id: int) -> None:
    grey = np.full((300, 400, 3), 230, np.uint8)
    for left in range(60, 330, 30):  # nine dark ribs
        grey[:, left : left + 12] = 50
    bench = open_bench(qtbot, desk, job_id, encoded(Image.fromarray(grey), "PNG"))
    press(qtbot, bench, "Draw: Count")
    click(qtbot, old_stage(bench), (45, 150), (330, 150))
    settled(qtbot, desk)
    assert marks_kept(desk, bench)[0].value == 9
    assert lines(bench) == ["◆  Count: 9 counted"]
    assert "Counted are the dark bands" in words_of(bench)
    assert "⚠  Counted" not in words_of(bench)  # a remark, nothing to beware of


def test_what_cannot_be_counted_says_why(qtbot: QtBot, desk: Desk, job_id: int) -> None:
    bench = open_bench(qtbot, desk, job_id, plate())
    press(qtbot, bench, "Draw: Count")
    click(qtbot, old_stage(bench), (20, 20), (380, 20))
    settled(qtbot, desk)
    assert marks_kept(desk, bench)[0].value is None
    assert "can't be counted" in words_of(bench)


def open_menu(bench: PhotoBench) -> list[str]:
    """What the menu of readings offers now."""
    menu = _use(bench).menu()
    menu.aboutToShow.emit()
    return [action.text() for action in menu.actions()]


def _use(bench: PhotoBench) -> QPushButton:
    return next(one for one in bench.findChildren(QPushButton) if one.text() == USE)


def test_a_height_is_taken_from_another_reading_of_the_part(
    qtbot: QtBot, desk: Desk, job_id: int
) -> None:
    bench = open_bench(qtbot, desk, job_id, plate(), readings=Readings())
    press(qtbot, bench, "Draw: Length")
    click(qtbot, old_stage(bench), (100, 150), (299, 150))
    lend = named(bench, QPushButton, "Take the height from a reading")
    lend.menu().aboutToShow.emit()
    (only,) = lend.menu().actions()
    assert only.text() == "tip height: 12.346 ± 0.050 mm"
    only.trigger()
    mark = marks_kept(desk, bench)[0].mark
    assert (mark.height_mm, mark.height_u_mm) == (12.346, 0.05)
    assert named(bench, QLineEdit, "Height above the card").text() == "12.346"
    desk.undo()
    assert marks_kept(desk, bench)[0].mark.height_mm == 0


def test_a_mark_becomes_the_reading_of_a_dimension_and_the_reading_follows(
    qtbot: QtBot, desk: Desk, job_id: int
) -> None:
    readings = Readings()
    bench = open_bench(qtbot, desk, job_id, plate(), readings=readings)
    press(qtbot, bench, "Draw: Length")
    click(qtbot, old_stage(bench), (100, 150), (299, 150))
    assert not _use(bench).isEnabled()  # no scale, no size, no reading
    give_scale(qtbot, bench, (50, 20), (350, 20), "30")
    mark_id = marks_kept(desk, bench)[0].id
    assert readings.followed == [mark_id]
    click(qtbot, old_stage(bench), (100, 150))
    (offered,) = open_menu(bench)
    assert re.fullmatch(
        r"protrusion: 19\.\d+ ± \d\.\d+ mm; the pair has 26.90 mm by calliper", offered
    )
    _use(bench).menu().actions()[0].trigger()
    assert readings.took == [(mark_id, "removed", "protrusion")]
    old_stage(bench).setFocus()
    type_keys(qtbot, old_stage(bench), Qt.Key.Key_Right)
    bench.keep_draft()
    assert readings.followed == [mark_id, mark_id]
    assert "◎  Reading of protrusion, removed" in words_of(bench)
    press(qtbot, bench, "Not a reading any more")
    assert readings.took == []


def test_snapping_stays_switched_on_as_long_as_the_shop_is_open(
    qtbot: QtBot, desk: Desk, job_id: int
) -> None:
    first = open_bench(qtbot, desk, job_id, plate())
    press(qtbot, first, "Snap to the edge: not said")
    again = PhotoBench(desk, None, None)
    qtbot.addWidget(again)
    assert named(again, QPushButton, "Snap to the edge: yes").isChecked()
