"""A ruler entered on the Bench Card page, where photos rest on that card already; damaged cards."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import NoReturn

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos import print_actions
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.card_actions import note_printed_card
from desktop_app.part_photos.mark_actions import draw_mark, read_mark
from desktop_app.part_photos.marks.mark import Mark, Measured
from desktop_app.part_photos.print_actions import keep_card
from desktop_app.part_photos.screen.bench_card_page import BenchCardPage
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.part_photos.stored_cards import cards_by_id
from desktop_app.part_photos.stored_marks import mark_by_id
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import refused_fields, save_everything
from tests.part_photos.bench_pictures import job_with_no_photos
from tests.part_photos.marked_photos import scale_over_card
from tests.screens.bench_desk import named, retype, words_of
from tests.screens.marking import plate
from tests.screens.photo_desk import kept

RULER = "Ruler of card 1 as measured"
CARD = bench_card("a4")
SEEN = replace(scale_over_card(), card=CARD.name)
TIP = Mark("length", ((1800.0, 1500.0), (2200.0, 1500.0)))


@pytest.fixture
def desk(qapp: QApplication, shop: ShopRecord) -> Iterator[Desk]:
    """A desk of a shop with one card, a photo on it, and a mark (1) in that."""
    desk = Desk(shop)
    desk.do(note_printed_card, CARD)
    photo = kept(desk, job_with_no_photos(shop), plate())[0]
    desk.do(keep_card, photo.id, SEEN, CARD)
    desk.do(draw_mark, photo.id, TIP, height_known=True)
    yield desk
    desk.errands.finish()


@pytest.fixture
def page(qtbot: QtBot, desk: Desk) -> BenchCardPage:
    """The page, shown."""
    page = BenchCardPage(desk)
    qtbot.addWidget(page)
    page.show()
    page.came_here()
    return page


def ruler(desk: Desk) -> float | None:
    """What is kept of the ruler."""
    found: float | None = desk.ask(cards_by_id)[1].measured_mm
    return found


def size(desk: Desk) -> float:
    """What the mark says."""
    found: float = desk.ask(mark_by_id, 1).value
    return found


def test_a_ruler_is_kept_with_its_photos_once_these_are_worked_out(
    qtbot: QtBot, desk: Desk, page: BenchCardPage
) -> None:
    assert "so do the readings that were taken from them" in words_of(page)
    before = size(desk)
    retype(page, qtbot, RULER, "150.3")
    assert ruler(desk) is None
    assert "Working out the photos on this card anew" in words_of(page)
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    assert ruler(desk) == 150.3
    assert size(desk) == pytest.approx(1.002 * before)
    assert "printed 0.20 % larger" in words_of(page)
    desk.undo()  # both in one deed
    assert (ruler(desk), size(desk)) == (None, before)
    assert named(page, QLineEdit, RULER).text() == ""


def test_nothing_is_measured_while_the_record_is_held(
    qtbot: QtBot, desk: Desk, page: BenchCardPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    held: list[bool] = []
    open_deeds: list[int] = []

    def watched(mark: Mark, scale: PlaneScale | None) -> Measured | None:
        held.append(bool(open_deeds))
        return read_mark(mark, scale)

    whole = desk.record.do

    def do(*asked: object) -> object:
        open_deeds.append(1)
        try:
            return whole(*asked)  # type: ignore[arg-type]
        finally:
            open_deeds.pop()

    monkeypatch.setattr(print_actions, "read_mark", watched)
    monkeypatch.setattr(desk.record, "do", do)
    retype(page, qtbot, RULER, "150.3")
    qtbot.waitUntil(lambda: ruler(desk) == 150.3, timeout=20_000)
    assert held == [False]


def test_a_page_that_is_left_at_once_keeps_the_ruler_all_the_same(
    qtbot: QtBot, desk: Desk, page: BenchCardPage
) -> None:
    before = size(desk)
    retype(page, qtbot, RULER, "150.3")
    save_everything(page)
    assert refused_fields(page) == []
    assert (ruler(desk), size(desk)) == (150.3, pytest.approx(1.002 * before))
    assert desk.record.can_undo() == "Measure a card's ruler"
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    desk.undo()  # it was one deed, and what was worked out too late came to nothing
    assert ruler(desk) is None


def test_a_ruler_typed_anew_while_photos_are_worked_out_counts_alone(
    qtbot: QtBot, desk: Desk, page: BenchCardPage
) -> None:
    before = size(desk)
    retype(page, qtbot, RULER, "150.3")
    retype(page, qtbot, RULER, "149.7")
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    assert (ruler(desk), size(desk)) == (149.7, pytest.approx(0.998 * before))
    desk.undo()
    assert ruler(desk) is None


def test_a_ruler_that_is_refused_stays_in_its_field(
    qtbot: QtBot, desk: Desk, page: BenchCardPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as locked, qtbot.waitSignal(desk.told, timeout=20_000):
        locked.setattr(desk.record, "do", _refuse)
        retype(page, qtbot, RULER, "150.3")
    assert refused_fields(page) == [RULER]
    assert "This length is not kept yet" in words_of(page)
    page.came_here()
    field = named(page, QLineEdit, RULER)
    assert field.text() == "150.3"
    qtbot.keyClick(field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: ruler(desk) == 150.3, timeout=20_000)


def _refuse(*_: object) -> NoReturn:
    raise ShopTrouble("Another desk holds the record.")


def test_a_damaged_card_is_named_and_hides_no_other(
    qtbot: QtBot, desk: Desk, page: BenchCardPage
) -> None:
    desk.do(note_printed_card, CARD)
    desk.record.do("x", lambda deed: deed.change(PrintedCard, 1, layout="{}"))
    page.came_here()
    words = words_of(page)
    assert "Card 1 is damaged in the record" in words
    assert "Card 2, A4" in words
    qtbot.mouseClick(named(page, QPushButton, "Put card 1 away"), Qt.MouseButton.LeftButton)
    assert "damaged" not in words_of(page)
    assert named(page, QLineEdit, "Ruler of card 2 as measured").isVisible()
