"""Small things on the photo bench: half-typed lengths, a photo that is gone, Delete, labels."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit, QToolTip
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.card_actions import note_printed_card, note_ruler
from desktop_app.part_photos.mark_actions import draw_mark
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.screen.bench_card_page import BenchCardPage
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.screen.bench_side_panel import SidePanel
from desktop_app.part_photos.stored_scales import scale_of_photo
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.desk import Desk
from tests.from_outside import lose_photo, spoil_photo
from tests.part_photos.bench_pictures import job_with_no_photos
from tests.screens.bench_desk import retype, words_of
from tests.screens.marking import (
    click,
    give_scale,
    marks_kept,
    old_stage,
    open_bench,
    plate,
    press,
    type_keys,
)
from tests.screens.photo_desk import kept, named

LENGTH = "Known length, removed part"


def settled(qtbot: QtBot, desk: Desk) -> None:
    """Wait until nothing runs beside the window."""
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=30_000)


@pytest.mark.parametrize("typed", ["99", "600"])
def test_a_known_length_that_is_half_typed_keeps_the_unit_it_was_begun_in(
    qtbot: QtBot, desk: Desk, typed: str
) -> None:
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record))
    press(qtbot, bench, "Two points of known length, removed part")
    click(qtbot, old_stage(bench), (100, 150), (299, 150))
    field = named(bench, QLineEdit, LENGTH)
    qtbot.keyClicks(field, typed)
    desk.do(change_rule, "length_unit", "inch")
    assert field.text() == f"{typed} mm"
    qtbot.keyClick(field, Qt.Key.Key_Return)
    photo = old_stage(bench).photo()
    assert photo is not None
    there = desk.ask(scale_of_photo, photo.id)
    assert (there.length_mm if there is not None else None) in (float(typed), None)
    assert (there is None) == (typed == "600")


@pytest.mark.parametrize("gone", [True, False])
def test_a_photo_that_cannot_be_opened_is_named_and_nothing_waits_for_it(
    qtbot: QtBot, desk: Desk, gone: bool
) -> None:
    photos = kept(desk, job_with_no_photos(desk.record), plate(), plate(6))
    spoil_photo(desk.record, photos[1].sha256, b"junk")
    if gone:
        lose_photo(desk.record, photos[1].sha256)
    for thumbnail in desk.record.folder.rglob(f"{photos[1].sha256}-*"):
        thumbnail.unlink() if gone else thumbnail.write_bytes(b"junk")
    bench = PhotoBench(desk, *photos)
    qtbot.addWidget(bench)
    bench.resize(1280, 820)
    bench.show()
    press(qtbot, bench, "Differences")
    settled(qtbot, desk)
    said = words_of(bench)
    assert "The photo of the replacement can't be opened." in said
    assert "One moment" not in said
    press(qtbot, bench, "Lay them on each other again")
    settled(qtbot, desk)
    assert "The photo of the replacement can't be opened." in words_of(bench)


def test_delete_takes_the_mark_out_that_was_drawn_a_moment_ago(qtbot: QtBot, desk: Desk) -> None:
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record))
    stage = old_stage(bench)
    press(qtbot, bench, "Draw: Length")
    click(qtbot, stage, (100, 150), (299, 150), (100, 180), (299, 180))
    assert len(marks_kept(desk, bench)) == 2
    click(qtbot, stage, (120, 200))
    type_keys(qtbot, stage, Qt.Key.Key_Delete)
    assert len(marks_kept(desk, bench)) == 2, "a mark is half drawn: Delete leaves the others"
    type_keys(qtbot, stage, Qt.Key.Key_Backspace, Qt.Key.Key_Delete)
    assert [one.mark.points_px[0][1] for one in marks_kept(desk, bench)] == [
        pytest.approx(150, abs=1.5)
    ]


def test_a_ruler_that_is_refused_never_stands_beside_a_tick(qtbot: QtBot, desk: Desk) -> None:
    desk.do(note_printed_card, bench_card("a4"))
    page = BenchCardPage(desk)
    qtbot.addWidget(page)
    page.show()
    page.came_here()
    name = "Ruler of card 1 as measured"
    retype(page, qtbot, name, "149.2")
    assert "✓" in words_of(page)
    retype(page, qtbot, name, "149.2150.04")
    page.came_here()
    assert named(page, QLineEdit, name).text() == "149.2150.04"
    assert "can't be understood as a length" in words_of(page)
    assert "✓" not in words_of(page)
    retype(page, qtbot, name, "149.2")
    page.came_here()
    assert "✓" in words_of(page)


def test_the_panel_is_no_wider_than_its_place_where_a_printed_card_is_chosen(
    qtbot: QtBot, desk: Desk
) -> None:
    from tests.screens.part_photos.test_photo_bench_laying import pictures

    for number, ruler in ((1, 149.7), (2, 150.3)):
        desk.do(note_printed_card, bench_card("a4"))
        desk.do(note_ruler, number, ruler)
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), *pictures())
    bench.resize(820, 630)
    settled(qtbot, desk)
    QApplication.processEvents()
    assert "Which printed card is it?" in words_of(bench)
    box = named(bench, QComboBox, "Printed card, removed part")
    longest = max(len(box.itemText(row)) for row in range(box.count()))
    assert longest > 20
    panel = bench.findChild(SidePanel)
    assert panel is not None
    box.setMinimumWidth(400)  # whatever a style asks for
    QApplication.processEvents()
    assert panel.widget().width() <= panel.viewport().width()
    box.setMinimumWidth(0)
    assert box.minimumSizeHint().width() < panel.viewport().width()
    assert box.fontMetrics().horizontalAdvance("m" * longest) > panel.viewport().width()
    assert panel.widget().width() <= panel.viewport().width()
    assert (bench.width(), bench.height()) == (820, 630)
    for stage in bench.stages().values():
        assert stage.loupe().zoom > 1.2, "opened on the card's room for the part"
        assert stage.loupe().zoom < 4
    press(qtbot, bench, "Whole photo")
    press(qtbot, bench, "Differences")
    settled(qtbot, desk)
    QApplication.processEvents()
    assert (bench.width(), bench.height()) == (820, 630)


def test_the_bench_opens_on_the_marks_and_lets_a_person_look_elsewhere(
    qtbot: QtBot, desk: Desk
) -> None:
    photo, other = kept(desk, job_with_no_photos(desk.record), plate(), plate(6))
    desk.do(draw_mark, photo.id, Mark("length", ((300.0, 240.0), (340.0, 240.0))))
    bench = PhotoBench(desk, photo, other)
    qtbot.addWidget(bench)
    bench.resize(1280, 820)
    bench.show()
    settled(qtbot, desk)
    loupe = old_stage(bench).loupe()
    assert loupe.zoom > 3
    assert (loupe.x, loupe.y) == pytest.approx((0.8, 0.8), abs=0.03)
    assert bench.stages()["replacement"].loupe().zoom == 1
    old_stage(bench).setFocus()
    type_keys(qtbot, old_stage(bench), Qt.Key.Key_0)
    bench.resize(1100, 760)
    bench.came_here()
    assert old_stage(bench).loupe().zoom == 1


def test_no_tooltip_covers_the_photo_where_the_mouse_rests(qtbot: QtBot, desk: Desk) -> None:
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record))
    stage = old_stage(bench)
    at = QPoint(100, 100)
    asked = QHelpEvent(QEvent.Type.ToolTip, at, stage.viewport().mapToGlobal(at))
    QApplication.sendEvent(stage.viewport(), asked)
    assert not QToolTip.isVisible()
    assert "arrow keys move" in stage.accessibleDescription()


def test_words_stay_where_they_are_when_another_mark_is_chosen_or_drawn(
    qtbot: QtBot, desk: Desk
) -> None:
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record))
    give_scale(qtbot, bench, (100, 80), (299, 80), "100")
    stage = old_stage(bench)
    press(qtbot, bench, "Snap to the edge: not said")
    press(qtbot, bench, "Draw: Length")
    for right, y in ((299, 150), (250, 160), (210, 170)):
        click(qtbot, stage, (100, y), (right, y))
    press(qtbot, bench, "Draw: Length")
    bench.setFocus()
    pictures = []
    for y in (150, 170):
        click(qtbot, stage, (190, y))
        settled(qtbot, desk)
        pictures.append(stage.viewport().grab().toImage())
    ends = int(stage.seen_at((0, 120)).y()), int(stage.seen_at((0, 200)).y())
    for top, height in ((0, ends[0]), (ends[1], pictures[0].height() - ends[1])):
        first, second = (one.copy(0, top, one.width(), height) for one in pictures)
        assert first == second


def test_an_enlarged_photo_keeps_its_scale_where_a_notice_takes_some_height(
    qtbot: QtBot, desk: Desk
) -> None:
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record))
    bench.resize(1280, 520)  # so low that the height limits the photos
    QApplication.processEvents()
    stage = old_stage(bench)
    press(qtbot, bench, "Enlarge (+)")
    press(qtbot, bench, "Enlarge (+)")

    def wide() -> float:
        return stage.seen_at((300, 150)).x() - stage.seen_at((100, 150)).x()

    before = wide()
    bench.resize(1280, 470)
    QApplication.processEvents()
    assert wide() == pytest.approx(before, rel=1e-6)
    bench.resize(1280, 520)
    QApplication.processEvents()
    assert wide() == pytest.approx(before, rel=1e-6)
