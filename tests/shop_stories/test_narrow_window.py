"""A screen whose pixels count one and a half times or twice leaves a small window for large words.

The places are walked through in one sitting: how wide the letters are in each is another walk's.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import QAbstractButton, QTableView, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import kinds_of
from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.parts_compared.actions import show_in_pair
from desktop_app.parts_compared.reading import Side
from desktop_app.shop_window.page import ReadingPage
from desktop_app.shop_window.place_names import BACK, BENCH, DRAWER, JOB, MONDAY, ON_RAIL
from tests.screens.marking import plate
from tests.shop_stories.counter import Counter
from tests.shop_stories.full_shop import TODAY, fill
from tests.shop_stories.one_job import one_job, open_job
from tests.shop_stories.test_reached_and_seen import cut_off, outgrown

AT_150 = (910, 512)  # of 1366 × 768 pixels
AT_200 = (683, 384)
AT_100 = (1366, 768)
LOW = (910, 384)  # wide enough for the rail at the side, too low for all of it
PAGE_WIDE = 600  # pixels that a page has at least, at twice
READ_IN = 200  # pixels of height


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with one_job(qtbot, tmp_path / "shop", TODAY) as counter:
        fill(counter)
        yield counter


def seen(widget: QWidget) -> bool:
    """Tell whether a widget is seen whole, in its height, where it is scrolled."""
    return widget.visibleRegion().boundingRect().height() == widget.height()


def top(widget: QWidget) -> int:
    """Return how far from the window's top a widget begins."""
    return widget.mapTo(widget.window(), QPoint()).y()


def read_in(at: Counter) -> list[ReadingPage]:
    """Return what is read beside a list: a return, a sheet."""
    return [one for one in at.page.findChildren(ReadingPage) if one.isVisible()]


def bench(at: Counter) -> None:
    """Go to the photo bench with a photo of each part."""
    desk = at.program.desk
    assert desk is not None
    view = kinds_of()["distributor-rotor"].views[0]
    sides: tuple[Side, Side] = ("removed", "replacement")
    for shift, side in enumerate(sides):
        came = take_in(desk.record, Arrival(f"{side}.png", content=plate(shift)))
        made = add_photos(desk.record, 1, [came]).made
        assert made is not None
        show_in_pair(desk.record, 1, [made], side, view)
    open_job(at)
    at.press("Photo bench: measure in these photos")
    at.bot.waitUntil(lambda: at.window.here() == BENCH)


@pytest.mark.parametrize("size", [AT_150, AT_200])
def test_nothing_is_cut_off_nor_scrolled_sideways(
    at: Counter, tmp_path: Path, size: tuple[int, int]
) -> None:
    at.window.resize(*size)
    found = {}
    for place in (*ON_RAIL, JOB):
        open_job(at) if place == JOB else at.window.go_to(place)
        at.quiet()
        at.bot.wait(300)
        if said := sorted({*cut_off(at.window), *outgrown(at.window, size)}):
            at.picture(tmp_path, place)
            found[place] = said
    assert found == {}


def test_at_twice_the_rail_lies_above_the_page_and_every_place_on_it_is_in_sight(
    at: Counter,
) -> None:
    at.window.resize(*AT_200)
    at.quiet()
    for place in ON_RAIL:
        assert seen(at.button(place)), place
    first, last = at.button(ON_RAIL[0]), at.button(ON_RAIL[-1])
    assert top(last) > top(first)
    at.bot.mouseClick(last, Qt.MouseButton.LeftButton)
    at.quiet()
    assert at.window.here() == ON_RAIL[-1]
    assert at.page.width() > PAGE_WIDE
    at.window.resize(*AT_100)
    at.bot.waitUntil(lambda: top(at.page) < top(at.button(ON_RAIL[-1])))
    assert [one.x() for one in map(at.button, ON_RAIL)] == [0] * len(ON_RAIL)


def test_at_twice_a_sheet_of_the_book_and_a_return_are_read_in_enough_room(at: Counter) -> None:
    at.window.resize(*AT_200)
    for place in (BACK, MONDAY):
        at.window.go_to(place)
        at.quiet()
        at.bot.waitUntil(lambda: [one.height() >= READ_IN for one in read_in(at)] == [True])


def test_a_window_fits_the_screen_at_twice_whatever_was_shown(at: Counter) -> None:
    for place in (*ON_RAIL, JOB):
        open_job(at) if place == JOB else at.window.go_to(place)
        at.quiet()
    at.window.resize(*AT_200)
    least = at.window.minimumSizeHint()
    assert (least.width() <= AT_200[0], least.height() <= AT_200[1]) == (True, True)
    assert at.window.size().toTuple() == AT_200


@pytest.mark.parametrize("size", [LOW, AT_200])
def test_each_place_is_reached_by_its_key_and_its_button_is_in_sight_then(
    at: Counter, size: tuple[int, int]
) -> None:
    at.window.resize(*size)
    numbers = (1, 2, 3, 4, 5, 6, 7, 8, 9, 0)
    for number, place in zip(numbers, ON_RAIL, strict=False):
        at.bot.keyClick(at.window, str(number), Qt.KeyboardModifier.AltModifier)
        at.bot.wait(100)
        assert at.window.here() == place
        assert seen(at.button(place)), place
        assert at.button(place).isChecked()
    at.quiet()


def test_tab_brings_the_button_of_a_place_into_sight(at: Counter) -> None:
    at.window.resize(*LOW)
    at.window.go_to(ON_RAIL[0])
    at.quiet()
    last = at.button(ON_RAIL[-1])
    assert not seen(last)
    last.setFocus(Qt.FocusReason.TabFocusReason)
    at.bot.waitUntil(lambda: seen(last))


def test_a_tool_s_figures_stand_below_each_other_where_there_is_no_room(at: Counter) -> None:
    at.window.resize(*AT_150)
    at.window.go_to(DRAWER)
    at.quiet()
    (table,) = (one for one in at.page.findChildren(QTableView) if one.isVisible())
    at.bot.waitUntil(lambda: table.model().columnCount() == 2)
    assert table.horizontalScrollBar().maximum() == 0
    rows = sum(table.rowHeight(row) for row in range(table.model().rowCount()))
    at.bot.waitUntil(lambda: abs(table.viewport().height() - rows) <= 8)


@pytest.mark.parametrize("size", [AT_150, AT_200])
def test_the_photo_bench_is_scrolled_where_it_has_no_room(
    at: Counter, size: tuple[int, int]
) -> None:
    bench(at)
    at.quiet()
    at.window.resize(*size)
    at.bot.wait(100)
    assert sorted({*cut_off(at.window), *outgrown(at.window, size)}) == []
    assert at.page.height() > at.page.visibleRegion().boundingRect().height()
    whole = at.button("Show the whole photo (0)")
    assert not seen(whole)
    for _ in range(60):
        focus = at.window.focusWidget()
        if focus is whole:
            break
        at.bot.keyClick(focus or at.window, Qt.Key.Key_Tab)
    assert at.window.focusWidget() is whole
    assert seen(whole)
    for one in at.page.findChildren(QAbstractButton):
        inside = QRect(QPoint(), at.page.size())
        corner = one.mapTo(at.page, QPoint())
        assert not one.isVisible() or inside.contains(QRect(corner, one.size())), one.text()


def test_undo_is_a_sign_alone_where_the_window_is_narrow(at: Counter) -> None:
    def undo() -> str:
        return next(
            one.text()
            for one in at.window.findChildren(QAbstractButton)
            if one.accessibleName().startswith("Undo: ")
        )

    at.window.resize(*AT_150)
    at.bot.waitUntil(lambda: undo() == "↶ Undo")
    at.window.resize(*AT_200)
    at.bot.waitUntil(lambda: undo() == "↶")
