"""Notices: who puts them away, what lets them go, and that they never take the focus."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.shop_record.trouble import NotSaved, ShopTrouble
from desktop_app.shop_window import notice_strip
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import (
    LineField,
)
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.notice import Notice


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


def test_a_refusal_does_not_come_back_once_something_else_was_done(
    window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    now = [100.0]
    monkeypatch.setattr(notice_strip, "monotonic", lambda: now[0])
    window.strip.tell(ShopTrouble("The photo is empty.", do="Take it again."))
    window.go_to("House Rules")
    assert "Take it again." in window.strip.words()
    window.strip.tell("J-104 is handed over.")
    now[0] += 60
    window.go_to("Bench")
    assert window.strip.words() == ""


def test_what_was_not_saved_comes_back_until_it_is(
    window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    now = [100.0]
    monkeypatch.setattr(notice_strip, "monotonic", lambda: now[0])
    window.strip.tell(NotSaved("The disk is full.", do="Free some room."))
    window.strip.tell("J-104 is handed over.")
    now[0] += 60
    window.go_to("House Rules")
    assert "Free some room." in window.strip.words()


def test_a_notice_that_asks_stays_and_comes_back_from_under_another(
    qtbot: QtBot, window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    now = [100.0]
    monkeypatch.setattr(notice_strip, "monotonic", lambda: now[0])
    unnamed = "Nobody is named at the desk."
    window.strip.tell(Notice(unnamed, do="Choose who is here.", holds=lambda: True))
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
    assert "“Person” is not accepted." in window.strip.words()
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
