"""What the bench does by itself and what it waits for: cards seen, moves refused, other desks."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from threading import Event
from typing import NoReturn

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera import find_scale
from desktop_app.part_photos.card_actions import note_printed_card, note_ruler, put_card_away
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.mark_actions import draw_mark, remove_mark
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.screen.bench_marks_list import MarksList
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.stored import Mark as MarkRow
from desktop_app.part_photos.stored_marks import damaged_marks
from desktop_app.part_photos.stored_scales import KeptScale, scale_of_photo
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import job_with_no_photos
from tests.part_photos.marked_photos import scale_over_card
from tests.screens.bench_desk import words_of
from tests.screens.marking import (
    click,
    lines,
    marks_kept,
    old_stage,
    plate,
    press,
    type_keys,
)
from tests.screens.photo_desk import kept, named

FIND = "Look for the card, removed part"
OUT = "Take the scale out, removed part"
CARD = bench_card("a4")
SEEN = replace(scale_over_card(), card=CARD.name)
TIP = Mark("length", ((100.0, 150.0), (299.0, 150.0)), "tip")


@pytest.fixture
def photo(desk: Desk) -> KeptPhoto:
    """A photo of the removed part."""
    return kept(desk, job_with_no_photos(desk.record), plate())[0]


@pytest.fixture
def card_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let every photo show a card."""
    monkeypatch.setattr(find_scale, "found_card", lambda *_: (SEEN, CARD))


def opened(qtbot: QtBot, desk: Desk, photo: KeptPhoto) -> PhotoBench:
    """Open the bench for a photo that is there."""
    bench = PhotoBench(desk, photo, None)
    qtbot.addWidget(bench)
    bench.resize(1280, 820)
    bench.show()
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    return bench


def scale(desk: Desk, photo: KeptPhoto) -> KeptScale | None:
    """What gives the photo its millimetres."""
    found: KeptScale | None = desk.ask(scale_of_photo, photo.id)
    return found


@pytest.mark.usefixtures("card_seen")
def test_a_scale_that_was_taken_out_stays_out_until_somebody_asks(
    qtbot: QtBot, desk: Desk, photo: KeptPhoto
) -> None:
    bench = opened(qtbot, desk, photo)
    assert scale(desk, photo) is not None
    button = named(bench, QPushButton, OUT)
    assert "stay as they were read" in button.toolTip()
    press(qtbot, bench, OUT)
    again = opened(qtbot, desk, photo)
    assert scale(desk, photo) is None
    assert "it was taken out" in words_of(again)
    assert desk.record.can_undo() == "Take a photo's scale out"
    press(qtbot, again, FIND)
    qtbot.waitUntil(lambda: scale(desk, photo) is not None, timeout=20_000)


@pytest.mark.usefixtures("card_seen")
def test_opening_the_bench_takes_no_redo_away_and_offers_the_card_that_it_sees(
    qtbot: QtBot, desk: Desk, photo: KeptPhoto
) -> None:
    opened(qtbot, desk, photo)
    desk.undo()
    again = opened(qtbot, desk, photo)
    assert scale(desk, photo) is None
    assert desk.record.can_redo() == "Keep a photo's scale from its card"
    assert "A card is seen: press “Find the card” to use it." in words_of(again)
    press(qtbot, again, FIND)
    assert scale(desk, photo) is not None
    assert "A card is seen" not in words_of(again)


def test_a_ruler_entered_while_the_card_is_looked_for_counts(
    qtbot: QtBot, desk: Desk, photo: KeptPhoto, monkeypatch: pytest.MonkeyPatch
) -> None:
    entered = Event()
    card = desk.do(note_printed_card, CARD)
    assert card is not None
    monkeypatch.setattr(find_scale, "found_card", lambda *_: (entered.wait(20), (SEEN, CARD))[1])
    bench = PhotoBench(desk, photo, None)
    qtbot.addWidget(bench)
    bench.show()
    desk.do(note_ruler, card.made, 149.0)
    entered.set()
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    there = scale(desk, photo)
    assert there is not None
    assert (there.card_id, there.card_scale) == (card.made, pytest.approx(149 / 150))
    assert "ruler 149 mm" in words_of(bench)


@pytest.mark.usefixtures("card_seen")
def test_a_photo_on_a_card_put_away_can_be_said_to_show_it(
    qtbot: QtBot, desk: Desk, photo: KeptPhoto
) -> None:
    for ruler in (149.0, 150.6):
        desk.do(note_printed_card, CARD)
        desk.do(note_ruler, 1 if ruler == 149.0 else 2, ruler)
    desk.do(put_card_away, 1)
    bench = opened(qtbot, desk, photo)
    assert "Which printed card it was is not said: ± covers all 2" in words_of(bench)
    box = named(bench, QComboBox, "Printed card, removed part")
    offered = [box.itemText(row) for row in range(box.count())]
    assert offered == [
        "Not known",
        "Card 2, ruler 150.6 mm measured 2026-11-16",
        "Card 1, ruler 149 mm measured 2026-11-16, put away",
    ]
    box.setFocus()
    type_keys(qtbot, box, Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Return)
    there = scale(desk, photo)
    assert there is not None
    assert there.card_id == 1


def drawn(desk: Desk, photo: KeptPhoto) -> int:
    """Draw a mark on a photo, without the window."""
    done = desk.do(draw_mark, photo.id, TIP)
    assert done is not None
    assert done.made is not None
    return done.made


def test_a_move_that_is_refused_is_kept_once_the_record_takes_it(
    qtbot: QtBot, desk: Desk, photo: KeptPhoto, monkeypatch: pytest.MonkeyPatch
) -> None:
    drawn(desk, photo)
    bench = opened(qtbot, desk, photo)
    stage = old_stage(bench)
    click(qtbot, stage, (299, 150))
    before = marks_kept(desk, bench)[0].mark.points_px
    with monkeypatch.context() as locked, qtbot.waitSignal(desk.told):
        locked.setattr(desk.record, "do", _refuse)
        type_keys(qtbot, stage, Qt.Key.Key_Right)
        bench.keep_draft()
    assert marks_kept(desk, bench)[0].mark.points_px == before
    type_keys(qtbot, stage, Qt.Key.Key_Right)  # goes on from where the point was left
    bench.keep_draft()
    after = marks_kept(desk, bench)[0].mark.points_px
    assert after[1][0] == pytest.approx(before[1][0] + 0.2)


def _refuse(*_: object) -> NoReturn:
    raise ShopTrouble("Another desk holds the record.")


def test_enter_and_delete_on_a_mark_that_another_desk_took_out_do_nothing(
    qtbot: QtBot, desk: Desk, photo: KeptPhoto
) -> None:
    first = drawn(desk, photo)
    bench = opened(qtbot, desk, photo)
    stage, listed = old_stage(bench), bench.findChild(MarksList)
    assert listed is not None
    click(qtbot, stage, (299, 150))
    type_keys(qtbot, stage, Qt.Key.Key_Right)  # a move that waits to be kept
    remove_mark(desk.record, first)  # at another desk: nothing is heard of it here
    listed.setCurrentRow(0)
    listed.itemActivated.emit(listed.item(0))
    assert lines(bench) == []
    second = drawn(desk, photo)
    listed.setCurrentRow(0)
    remove_mark(desk.record, second)
    type_keys(qtbot, listed, Qt.Key.Key_Delete)
    assert lines(bench) == []
    type_keys(qtbot, listed, Qt.Key.Key_Delete)


@pytest.mark.parametrize("way", ["button", "key"])
def test_a_damaged_mark_is_listed_and_taken_out(
    qtbot: QtBot, desk: Desk, photo: KeptPhoto, way: str
) -> None:
    broken, _sound = drawn(desk, photo), drawn(desk, photo)
    desk.record.do("x", partial(_scribble, broken))
    bench = opened(qtbot, desk, photo)
    listed = bench.findChild(MarksList)
    assert listed is not None
    assert lines(bench) == [
        "◆  Length: tip no scale",
        f"◆  ⚠ Damaged in the record: mark {broken} “tip”",
    ]
    listed.setCurrentRow(1)
    assert "was changed from outside and can't be read" in words_of(bench)
    if way == "button":
        press(qtbot, bench, "Take the damaged mark out")
    else:
        type_keys(qtbot, listed, Qt.Key.Key_Delete)
    assert desk.ask(damaged_marks, [photo.id]) == ()
    assert lines(bench) == ["◆  Length: tip no scale"]
    assert "changed from outside" not in words_of(bench)


def _scribble(mark_id: int, deed: Deed) -> None:
    deed.change(MarkRow, mark_id, points="[]")
