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
from desktop_app.repair_jobs.typed_entry import read_money
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window import notice_strip
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import (
    Labelled,
    LineField,
    ThreeWay,
    WordsField,
    save_everything,
)
from desktop_app.shop_window.house_rules_page import HouseRulesPage
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.look import dress
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.notice import Notice


@pytest.fixture
def window(qtbot: QtBot, shop: ShopRecord) -> MainWindow:
    window = MainWindow()
    qtbot.addWidget(window)
    desk = Desk(shop, window)
    window.attend(desk)
    window.add_place("Bench", QWidget)
    window.add_place("House Rules", lambda: HouseRulesPage(desk, read_money))
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.go_to("Bench")
    window.desk = desk  # type: ignore[attr-defined]
    return window


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


def test_putting_a_notice_away_leaves_the_focus_where_it_was(
    qtbot: QtBot, window: MainWindow
) -> None:
    window.go_to("House Rules")
    days = window.page("House Rules").findChildren(LineField)[0]
    days.setFocus()
    window.strip.tell("Undone.")
    away = next(b for b in window.strip.findChildren(QPushButton))
    qtbot.mouseClick(away, Qt.MouseButton.LeftButton)
    assert window.strip.words() == ""
    assert days.hasFocus()


def test_esc_puts_a_notice_away_where_nothing_else_takes_it(
    qtbot: QtBot, window: MainWindow
) -> None:
    window.go_to("House Rules")
    field = window.findChildren(LineField)[0]
    field.setFocus()
    window.strip.tell(ShopTrouble("the copy is not made", "all is kept", "free some room"))
    qtbot.keyClick(field, Qt.Key.Key_Escape)
    assert window.strip.words() == ""
    assert field.hasFocus()
    qtbot.keyClick(field, Qt.Key.Key_Escape)  # nothing lies there any more
    assert window.here() == "House Rules"
    taken: list[str] = []
    on_key(field, Qt.Key.Key_Escape, "lets go", lambda: taken.append("Esc"))
    window.strip.tell("J-101 is handed over.")
    qtbot.keyClick(field, Qt.Key.Key_Escape)
    assert taken == ["Esc"]
    assert window.strip.words() == "J-101 is handed over."


def test_what_was_done_is_told_until_the_next_deed_or_page(
    qtbot: QtBot, window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    now = [100.0]
    monkeypatch.setattr(notice_strip, "monotonic", lambda: now[0])
    desk: Desk = window.desk  # type: ignore[attr-defined]

    def work() -> None:
        desk.do(actions.add_person, f"Ana {now[0]}")

    def turn() -> None:
        window.go_to("House Rules" if window.here() == "Bench" else "Bench")

    for go_on in (work, turn):
        window.strip.tell("J-104 is handed over.")
        go_on()  # by the same press
        assert window.strip.words() == "J-104 is handed over."
        now[0] += 5
        go_on()
        assert window.strip.words() == ""


def test_a_trouble_that_asks_for_nothing_goes_once_it_is_old(
    qtbot: QtBot, window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    now = [100.0]
    monkeypatch.setattr(notice_strip, "monotonic", lambda: now[0])
    window.strip.tell(ShopTrouble("The photo was taken before."))
    now[0] += 5
    window.desk.do(actions.add_person, "Ana")  # type: ignore[attr-defined]
    window.go_to("House Rules")
    assert "taken before" in window.strip.words()
    now[0] += 60
    window.go_to("Bench")
    assert window.strip.words() == ""


def test_a_notice_that_asks_stays_and_comes_back_from_under_another(
    qtbot: QtBot, window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    now = [100.0]
    monkeypatch.setattr(notice_strip, "monotonic", lambda: now[0])
    window.strip.tell(ShopTrouble("Nobody is named at the desk.", do="Choose who is here."))
    window.strip.tell("Undone.")
    for place in ("House Rules", "Bench"):
        now[0] += 60
        window.go_to(place)
        assert "Choose who is here." in window.strip.words()
    away = next(b for b in window.strip.findChildren(QPushButton))
    qtbot.mouseClick(away, Qt.MouseButton.LeftButton)
    assert window.strip.words() == ""


def test_a_notice_about_a_field_goes_once_the_field_is_mended(
    qtbot: QtBot, window: MainWindow
) -> None:
    bench = window.page("Bench")
    name = LineField("Person", lambda text: text.strip() or None, bench)
    beside = LineField("Beside", str, bench)
    beside.move(0, 60)
    for one in (name, beside):
        one.show()
    name.setFocus()
    qtbot.keyClicks(name, " ")
    window.close()
    assert "“Person” is not accepted and would be lost." in window.strip.words()
    window.go_to("House Rules")
    assert "“Person” is not accepted" in window.strip.words()
    window.go_to("Bench")
    name.setFocus()
    qtbot.keyClick(name, Qt.Key.Key_Backspace)
    qtbot.keyClick(name, Qt.Key.Key_Tab)
    qtbot.waitUntil(lambda: window.strip.words() == "")
    assert beside.hasFocus()


def test_closing_once_more_leaves_behind_only_what_was_told(
    qtbot: QtBot, window: MainWindow
) -> None:
    days = LineField("Days", lambda text: text if text.isdigit() else None, window.page("Bench"))
    days.show()
    for words in ("5q", "8z"):  # the first one was mended meanwhile
        days.setText(words)
        assert not window.close()
        assert window.isVisible()
    assert window.close()


def test_a_refused_deed_of_a_field_is_told_as_long_as_it_stands_there(
    qtbot: QtBot, window: MainWindow
) -> None:
    desk: Desk = window.desk  # type: ignore[attr-defined]
    name = LineField("Person", lambda text: desk.do(actions.add_person, text), window.page("Bench"))
    name.show()
    qtbot.keyClicks(name, " ")
    qtbot.keyClick(name, Qt.Key.Key_Return)
    window.go_to("House Rules")
    assert "Who is it?" in window.strip.words()
    window.go_to("Bench")
    qtbot.keyClicks(name, "Tuuli")
    qtbot.keyClick(name, Qt.Key.Key_Return)
    assert window.strip.words() == ""


def test_a_notice_that_knows_its_cause_goes_with_it(window: MainWindow) -> None:
    desk: Desk = window.desk  # type: ignore[attr-defined]
    nobody = Notice("Nobody is named at the desk.", do="Choose.", holds=lambda: not desk.record.who)
    desk.told.emit(nobody)
    desk.do(actions.add_person, "Tuuli")
    assert "Nobody is named" in window.strip.words()
    desk.name("Tuuli")
    assert window.strip.words() == ""


def test_a_long_notice_asks_for_no_more_of_the_screen_than_a_short_one(
    window: MainWindow,
) -> None:
    window.strip.tell("Undone.")
    short = window.strip.minimumSizeHint().height()
    window.strip.tell("a long story " * 50)
    assert window.strip.minimumSizeHint().height() == short


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
