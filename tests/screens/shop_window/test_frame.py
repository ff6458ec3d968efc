"""The frame: places by keys, undo with its name, notices, errands that can be stopped."""

from __future__ import annotations

import threading
from collections.abc import Generator

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QTextCursor
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.fields import (
    Labelled,
    LineField,
    ThreeWay,
    WordsField,
    save_everything,
)
from desktop_app.shop_window.house_rules_page import HouseRulesPage
from desktop_app.shop_window.look import dress
from desktop_app.shop_window.main_window import MainWindow


def tool(window: MainWindow, begins: str) -> QToolButton:
    return next(b for b in window.findChildren(QToolButton) if begins in b.text())


def test_places_are_made_when_they_are_first_shown_and_reached_by_keys(
    qtbot: QtBot, window: MainWindow
) -> None:
    assert window.here() == "Bench"
    assert not window.findChildren(HouseRulesPage)
    qtbot.keyClick(window, Qt.Key.Key_2, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: window.here() == "House Rules")
    assert len(window.findChildren(HouseRulesPage)) == 1


def test_undo_names_the_deed_and_takes_it_back(
    qtbot: QtBot, shop: ShopRecord, window: MainWindow
) -> None:
    undo = tool(window, "Undo")
    assert not undo.isEnabled()
    window.desk.do(actions.add_person, "Tuuli")  # type: ignore[attr-defined]
    assert undo.accessibleName() == "Undo: Add Tuuli"
    qtbot.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert shop.can_undo() is None
    assert tool(window, "Redo").accessibleName() == "Redo: Add Tuuli"
    assert window.strip.words() == "Undone: Add Tuuli."


def test_the_house_rules_end_where_their_page_ends(qtbot: QtBot, window: MainWindow) -> None:
    window.resize(1040, 700)
    window.go_to("House Rules")
    page = window.page("House Rules")
    assert isinstance(page, HouseRulesPage)
    bar = page.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    bar.setValue(bar.maximum())
    below = page.viewport().height() - page.body.mapTo(page.viewport(), QPoint()).y()
    assert below - page.body.height() < 60


def test_the_text_has_its_new_size_everywhere_at_once(
    qapp: QApplication, window: MainWindow
) -> None:
    before = (qapp.font(), qapp.palette(), qapp.styleSheet())
    rail = next(b for b in window.findChildren(QPushButton) if b.text() == "Bench")
    try:
        for size in (12, 17, 12):
            dress(qapp, "light", size)
            assert rail.font().pointSize() == size
    finally:
        qapp.setStyleSheet(before[2])
        qapp.setFont(before[0])
        qapp.setPalette(before[1])


def test_a_refusal_stays_until_it_is_mended_whatever_is_shown_meanwhile(qtbot: QtBot) -> None:
    field = LineField("Price", lambda text: text if text.isdigit() else None)
    box = Labelled("Price", field, "in $")
    qtbot.addWidget(box)
    box.show()
    field.show_value("100")
    field.selectAll()
    qtbot.keyClicks(field, "1300?")
    box.refuse("“1300?” is not an amount of money.")
    box.hint("in $")
    said = [label.text() for label in box.findChildren(QLabel)]
    assert "✎ “1300?” is not an amount of money." in said
    assert "in $" not in said
    field.selectAll()
    qtbot.keyClicks(field, "100")
    assert "in $" in [label.text() for label in box.findChildren(QLabel)]


def test_a_refusal_is_a_notice_and_steals_no_focus(qtbot: QtBot, window: MainWindow) -> None:
    field = LineField("A field", lambda _text: None)
    qtbot.addWidget(field)
    window.desk.do(actions.add_person, "  ")  # type: ignore[attr-defined]
    assert "Who is it?" in window.strip.words()
    away = next(b for b in window.strip.findChildren(QPushButton))
    qtbot.mouseClick(away, Qt.MouseButton.LeftButton)
    assert window.strip.words() == ""


def test_an_errand_brings_its_result_and_can_be_stopped(qtbot: QtBot, window: MainWindow) -> None:
    errands = window.desk.errands  # type: ignore[attr-defined]
    results: list[object] = []
    errands.run("Counting", lambda: 42, results.append)
    qtbot.waitUntil(lambda: results == [42])
    cleaned: list[bool] = []
    pause = threading.Event()

    def endless() -> Generator[Step, None, None]:
        try:
            while True:
                pause.wait(0.01)
                yield Step(0, 1, "Going on")
        finally:
            cleaned.append(True)

    errand = errands.run("Going on for ever", endless, results.append)
    with qtbot.waitSignal(errand.stepped):
        pass
    errand.stop()
    qtbot.waitUntil(lambda: not errands.busy())
    assert results == [42]
    assert cleaned == [True]


def test_trouble_in_an_errand_is_told(qtbot: QtBot, window: MainWindow) -> None:
    def refuse() -> None:
        raise ShopTrouble("The disk is full.")

    errands = window.desk.errands  # type: ignore[attr-defined]
    errands.run("Writing", refuse)
    qtbot.waitUntil(lambda: "The disk is full." in window.strip.words())


@pytest.mark.expects_trouble_log
def test_a_mistake_in_an_errand_is_told_calmly(qtbot: QtBot, window: MainWindow) -> None:
    errands = window.desk.errands  # type: ignore[attr-defined]
    errands.run("Dividing", lambda: 1 / 0)
    qtbot.waitUntil(lambda: "mistake of the program" in window.strip.words())
    assert "Traceback" not in window.strip.words()


def test_fields_save_themselves_and_keep_what_was_refused(qtbot: QtBot) -> None:
    saved: list[str] = []

    def save(text: str) -> object:
        if text == "no":
            return None
        saved.append(text)
        return text

    field, words = LineField("Line", save), WordsField("Words", save)
    for one in (field, words):
        qtbot.addWidget(one)
        one.show_value("as kept")
    qtbot.keyClicks(field, "!")
    field.focusOutEvent(_focus_out())
    assert saved == ["as kept!"]
    field.selectAll()
    qtbot.keyClicks(field, "no")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    field.show_value("newer in the record")
    assert field.text() == "no"
    words.selectAll()
    qtbot.keyClicks(words, "two")
    qtbot.waitUntil(lambda: saved[-1] == "two", timeout=3000)


def test_leaving_a_page_saves_what_was_only_typed(qtbot: QtBot) -> None:
    saved: list[str] = []
    page = QWidget()
    qtbot.addWidget(page)
    field = LineField("Line", lambda text: saved.append(text) or True, page)
    qtbot.keyClicks(field, "typed")
    save_everything(page)
    assert saved == ["typed"]


def test_three_answers_follow_each_other(qtbot: QtBot) -> None:
    button = ThreeWay("damp")
    qtbot.addWidget(button)
    heard: list[object] = []
    button.turned.connect(heard.append)
    for _ in range(3):
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert heard == [True, False, None]
    assert button.accessibleName() == "damp: not asked"


def test_a_house_rule_says_what_it_accepts(
    qtbot: QtBot, shop: ShopRecord, window: MainWindow
) -> None:
    window.go_to("House Rules")
    page = window.page("House Rules")
    days = next(f for f in page.findChildren(LineField) if f.accessibleName() == "Early days")
    days.selectAll()
    qtbot.keyClicks(days, "soon")
    qtbot.keyClick(days, Qt.Key.Key_Return)
    assert days.text() == "soon"
    assert shop.can_undo() is None
    days.selectAll()
    qtbot.keyClicks(days, "60")
    qtbot.keyClick(days, Qt.Key.Key_Return)
    assert window.desk.rules.early_days == 60  # type: ignore[attr-defined]


def _focus_out():  # type: ignore[no-untyped-def]
    from PySide6.QtGui import QFocusEvent

    return QFocusEvent(QEvent.Type.FocusOut)


def test_news_from_another_desk_leave_the_cursor_where_somebody_stands(qtbot: QtBot) -> None:
    line, words = LineField("Line", lambda _text: True), WordsField("Words", lambda _text: True)
    for field in (line, words):
        qtbot.addWidget(field)
        field.show_value("It misses")
    line.setCursorPosition(9)
    words.moveCursor(QTextCursor.MoveOperation.End)
    for field in (line, words):
        field.show_value("It misses when wet")
    assert line.cursorPosition() == 18
    assert words.textCursor().position() == 18
    line.setCursorPosition(2)
    line.show_value("It")
    line.show_value("It stalls")
    assert line.cursorPosition() == 9
