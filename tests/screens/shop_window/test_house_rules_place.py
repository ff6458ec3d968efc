"""House Rules as a whole: every rule stands under a heading, and a row in sight leads there."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.shop_record.house_rules import all_rules
from desktop_app.shop_record.rule_words import HEADINGS
from desktop_app.shop_window.page import ReadingPage, Section
from tests.shop_stories.counter import Counter, sitting

NOW = datetime(2026, 11, 12, 9, 30, tzinfo=UTC)
VERDICTS = "Verdicts and the weekly book"


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        counter.window.resize(1366, 768)
        desk = counter.program.desk
        assert desk is not None
        desk.do(actions.add_person, "Odile")
        counter.go("House Rules")
        yield counter


def on_top(at: Counter, name: str) -> bool:
    """Tell whether a box is the first thing that is seen of the page, and has the cursor."""
    area = at.page.findChild(ReadingPage)
    section = at.find(Section, name)
    focus = at.window.focusWidget()
    assert area is not None
    seen = section.mapTo(area.viewport(), section.rect().topLeft()).y()
    return 0 <= seen < 30 and focus is not None and section.isAncestorOf(focus)


def called(widget: QWidget | None) -> str:
    assert widget is not None
    return widget.accessibleName()


def test_every_rule_stands_under_one_heading() -> None:
    placed = [name for names in HEADINGS.values() for name in names]
    assert sorted(placed) == sorted(rule.name for rule in all_rules() if rule.alone)


@pytest.mark.parametrize(
    ("key", "name", "box", "first"),
    [
        (Qt.Key.Key_2, "People", "People of the shop", "Name of a new person"),
        (Qt.Key.Key_3, "Windows", "The shop's window", "Days"),
        (Qt.Key.Key_4, VERDICTS, VERDICTS, "Sure percent"),
        (Qt.Key.Key_5, "Backups", "Backups", "Second backup folder"),
    ],
)
def test_a_heading_is_reached_by_its_key_and_by_its_button(
    at: Counter, key: Qt.Key, name: str, box: str, first: str
) -> None:
    at.bot.keyClick(at.window, key, Qt.KeyboardModifier.ControlModifier)
    at.bot.waitUntil(lambda: on_top(at, box))
    by_key = called(at.window.focusWidget())
    at.press("Go to The shop")
    at.bot.waitUntil(lambda: on_top(at, "The shop"))
    assert called(at.window.focusWidget()) == "Shop name"
    at.press(f"Go to {name}")
    at.bot.waitUntil(lambda: on_top(at, box))
    assert called(at.window.focusWidget()) == by_key == first


def test_what_is_typed_after_a_jump_is_a_new_name_and_takes_nobody_off(
    at: Counter,
) -> None:
    at.press("Go to People")
    field = at.window.focusWidget()
    assert isinstance(field, QLineEdit)
    at.bot.keyClicks(field, "Marek")
    at.bot.keyClick(field, Qt.Key.Key_Return)
    at.bot.waitUntil(lambda: at.find(QPushButton, "Take Marek off the list").isVisible())
    assert at.find(QPushButton, "Take Odile off the list").isVisible()


def test_the_list_of_keys_says_where_each_number_leads(at: Counter) -> None:
    at.bot.keyClick(at.window, Qt.Key.Key_F1)
    at.bot.waitUntil(lambda: at.window.here() == "Keys")
    at.wait_for("Go to Backups")
