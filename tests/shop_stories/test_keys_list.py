"""The list of keys: whole, true, one key away, and back."""

from __future__ import annotations

from collections.abc import Iterator
from importlib.metadata import version
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QShortcut
from PySide6.QtWidgets import QLabel, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.keys_offered import KEYS
from desktop_app.shop_window.keys_page import does
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
