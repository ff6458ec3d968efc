"""The list of keys: whole, true, one key away, and back."""

from __future__ import annotations

from collections.abc import Iterator
from importlib.metadata import version
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QShortcut
from PySide6.QtWidgets import QLabel, QLineEdit, QPlainTextEdit, QScrollBar, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.actions import write_up
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window.keys_offered import KEYS
from desktop_app.shop_window.keys_page import KeysPage, does
from desktop_app.shop_window.place_names import ON_RAIL
from tests.conftest import NOON
from tests.shop_stories.counter import Counter, sitting


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with sitting(qtbot, tmp_path / "shop", NOON) as counter:
        yield counter


def listed(at: Counter) -> set[str]:
    return {label.text() for label in at.page.findChildren(QLabel) if label.isVisible()}


def test_one_key_shows_what_works_here_and_leads_back(at: Counter) -> None:
    at.window.go_to("Heard")
    at.bot.keyClick(at.window, Qt.Key.Key_F1)
    assert at.window.here() == KEYS
    assert {"Keys", "On “Heard”", "Everywhere", "Ctrl+N", "A car is here", "Ctrl+Z"} <= listed(at)
    at.bot.keyClick(at.window, Qt.Key.Key_F1)
    assert at.window.here() == "Heard"
    at.bot.keyClick(at.window, Qt.Key.Key_F1)
    at.bot.keyClick(at.window, Qt.Key.Key_Escape)
    assert at.window.here() == "Heard"
    at.bot.keyClick(at.window, Qt.Key.Key_Escape)
    assert at.window.here() == "Heard"


def test_each_place_lists_its_own_keys(at: Counter) -> None:
    at.window.go_to("Heard")
    at.press("All keys")
    assert "Ctrl+T" in listed(at)
    at.press("All keys")
    at.window.go_to("House Rules")
    at.press("All keys")
    assert "On “Heard”" not in listed(at)
    assert "Ctrl+T" not in listed(at)


def test_the_same_page_says_what_the_program_is(at: Counter, tmp_path: Path) -> None:
    at.window.go_to("Heard")
    at.press("All keys")
    assert at.reads(f"Benchwitness {version('benchwitness')}. Apache License 2.0.")
    assert at.reads(f"This shop lies in {tmp_path / 'shop'}; its log is the file benchwitness.log")
    at.press("Libraries and their licences")
    for said in ("pyside6-essentials", "LGPL-3.0", "sqlalchemy", "MIT"):
        assert at.reads(said)


def test_the_same_page_says_what_the_words_mean(at: Counter) -> None:
    at.press("All keys")
    assert {"What the words mean", "Comeback", "Promise, or window"} <= listed(at)


def inside(short: QShortcut, page: QWidget) -> bool:
    owner = short.parent()
    return isinstance(owner, QWidget) and (owner is page or page.isAncestorOf(owner))


def test_no_key_is_without_words_and_none_is_taken_twice(at: Counter) -> None:
    for place in ON_RAIL:
        at.window.go_to(place)
    everything = at.window.findChildren(QShortcut)
    assert [short.key().toString() for short in everything if not does(short)] == []
    pages = [at.window.page(place) for place in ON_RAIL]
    everywhere = [short for short in everything if not any(inside(short, page) for page in pages)]
    assert len(everywhere) > len(ON_RAIL)  # the rail's own among them
    keys = [short.key().toString() for short in everywhere]
    assert len(keys) == len(set(keys))


def bar(at: Counter) -> QScrollBar:
    assert isinstance(at.page, KeysPage)
    return at.page.verticalScrollBar()


def press_keys(at: Counter, *keys: Qt.Key) -> None:
    """Press keys where the cursor is, as a keyboard does."""
    for key in keys:
        focus = at.window.focusWidget()
        assert focus is not None
        at.bot.keyClick(focus, key)


def a_job_is_open(at: Counter) -> None:
    desk = at.program.desk
    assert desk is not None
    desk.do(write_up, WriteUp("misses when it is cold", plate="TH 1", odometer=90))
    at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == "Job")


def test_it_opens_at_its_top_each_time_and_keys_scroll_it_at_once(at: Counter) -> None:
    a_job_is_open(at)
    for _ in range(3):
        press_keys(at, Qt.Key.Key_F1)
        assert at.window.here() == KEYS
        at.bot.waitUntil(lambda: bar(at).maximum() > 0)
        assert bar(at).value() == 0
        press_keys(at, Qt.Key.Key_PageDown)
        assert bar(at).value() > 0
        press_keys(at, Qt.Key.Key_End)
        assert bar(at).value() == bar(at).maximum()
        press_keys(at, Qt.Key.Key_PageUp)
        assert 0 < bar(at).value() < bar(at).maximum()
        press_keys(at, Qt.Key.Key_Home)
        assert bar(at).value() == 0
        press_keys(at, Qt.Key.Key_End, Qt.Key.Key_F1)
        assert at.window.here() == "Job"


@pytest.mark.parametrize("back", [Qt.Key.Key_F1, Qt.Key.Key_Escape])
def test_it_gives_the_cursor_back_to_where_it_was(at: Counter, back: Qt.Key) -> None:
    at.press("A car is here")
    at.type_into(QLineEdit, "What kind of car", "1.8-litre estate")
    line = at.find(QLineEdit, "What kind of car")
    line.setCursorPosition(3)
    for _ in range(2):
        press_keys(at, Qt.Key.Key_F1)
        assert at.window.here() == KEYS
        press_keys(at, back)
        assert at.window.focusWidget() is line
        assert (line.cursorPosition(), line.selectedText()) == (3, "")


@pytest.mark.parametrize("selected", [(4, 0), (5, 3), (8, -3)])
def test_the_search_keeps_what_was_selected_and_nothing_more(
    at: Counter, selected: tuple[int, int]
) -> None:
    line = at.find(QLineEdit, "Ask the old jobs")
    at.type_into(QLineEdit, "Ask the old jobs", "rain on the roof")
    line.setSelection(*selected) if selected[1] else line.setCursorPosition(selected[0])
    before = line.cursorPosition(), line.selectedText()
    press_keys(at, Qt.Key.Key_F1, Qt.Key.Key_F1)
    assert at.window.focusWidget() is line
    assert (line.cursorPosition(), line.selectedText()) == before
    assert line.text() == "rain on the roof"


def test_a_job_gives_the_cursor_back_into_its_words_even_those_just_typed(at: Counter) -> None:
    a_job_is_open(at)
    words = at.find(QPlainTextEdit, "Concern")
    words.setFocus()
    press_keys(at, Qt.Key.Key_Home)
    at.bot.keyClicks(words, "It ")
    press_keys(at, Qt.Key.Key_F1, Qt.Key.Key_F1)
    assert at.window.here() == "Job"
    assert at.window.focusWidget() is words
    assert words.textCursor().position() == len("It ")
    at.press("All keys")
    at.press("All keys")  # by mouse as well
    assert at.window.focusWidget() is words
    assert words.toPlainText() == "It misses when it is cold"
