"""Enter and the cursor go where the hand goes next, and nothing is written that nobody said."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.in_sight import bring_up
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
SPACE, ENTER = Qt.Key.Key_Space, Qt.Key.Key_Return
FIRST = "Ignition off, key out, nobody with a pacemaker near the open engine."
SECOND = "Key fully home, no rocking on the shaft."
OFFER = "Write as what was done: Distributor rotor replaced"


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as counter:
        desk = counter.program.desk
        assert desk is not None
        desk.do(actions.write_up, WriteUp("misses when damp", plate="TH 1", odometer=1000))
        desk.do(lay_side_by_side, 1, "distributor-rotor")
        counter.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: counter.window.here() == "Job")
        yield counter


def kept(at: Counter) -> JobView:
    assert at.program.desk is not None
    return at.program.desk.ask(read_job, 1)


def here(at: Counter) -> str:
    focus = at.window.focusWidget()
    return "" if focus is None else focus.accessibleName()


def press(at: Counter, key: Qt.Key) -> None:
    at.bot.keyClick(at.window.focusWidget(), key)


def test_enter_in_an_empty_line_goes_on_and_writes_no_row(at: Counter) -> None:
    at.type_into(QLineEdit, "Trouble codes, found", "P0300", enter=True)
    assert here(at) == "Trouble codes, found"  # another one may follow
    press(at, ENTER)
    assert here(at) == "What was seen or tried"
    press(at, ENTER)
    assert here(at) == "Cause: X because Y, shown by Z"
    assert [code.code for code in kept(at).codes] == ["P0300"]
    assert kept(at).checks == ()


def test_a_code_that_is_refused_keeps_the_cursor(at: Counter) -> None:
    at.type_into(QLineEdit, "Trouble codes, found", "P03", enter=True)
    press(at, ENTER)
    assert here(at) == "Trouble codes, found"
    assert at.find(QLineEdit, "Trouble codes, found").text() == "P03"


def test_a_check_ticked_by_a_key_leads_to_the_next_open_one(at: Counter) -> None:
    at.button(f"{FIRST}: done").setFocus()
    press(at, SPACE)
    assert here(at) == f"{SECOND}: done"
    press(at, Qt.Key.Key_Tab)
    assert here(at) == f"{SECOND}: not needed"
    press(at, SPACE)
    outcomes = {check.words: check.outcome for check in kept(at).checks}
    assert outcomes == {FIRST: "done", SECOND: "not needed"}
    at.button(f"{FIRST}: done").setFocus()
    press(at, SPACE)  # taken back: the cursor stays to answer it
    assert here(at) == f"{FIRST}: done"


def test_a_check_ticked_by_the_mouse_leaves_the_cursor_on_it(at: Counter) -> None:
    at.press(f"{FIRST}: done")
    assert here(at) == f"{FIRST}: done"


def test_enter_leads_through_the_numbers_of_a_pair(at: Counter) -> None:
    box, part = "number on the box, distributor rotor", "number on the new part, distributor rotor"
    at.type_into(QLineEdit, box, "DR-7", enter=True)
    assert here(at) == part


def test_what_the_parts_say_was_done_is_written_by_a_press_alone(at: Counter) -> None:
    assert kept(at).correction == ""
    check, words = at.button(f"{FIRST}: done"), at.find(QPlainTextEdit, "What was done")
    before = check.mapFrom(at.window, words.mapTo(at.window, QPoint()))
    at.press(OFFER)
    assert kept(at).correction == "Distributor rotor replaced"
    at.bot.wait(50)  # the page is laid out anew
    assert check.mapFrom(at.window, words.mapTo(at.window, QPoint())) == before
    at.bot.keyClicks(at.window.focusWidget(), " and a new clip, torqued to spec")
    assert kept(at).checks == ()  # nothing is answered by typing on
    press(at, Qt.Key.Key_Tab)
    assert kept(at).correction == "Distributor rotor replaced and a new clip, torqued to spec"
    assert here(at) == f"{FIRST}: done"  # what can hurt is not passed by


def test_taking_the_offer_leads_to_the_hours_where_every_check_is_answered(at: Counter) -> None:
    at.button(f"{FIRST}: done").setFocus()
    while here(at).endswith(": done") and not at.button(here(at)).isChecked():
        press(at, SPACE)
    at.press(OFFER)
    at.bot.keyClicks(at.window.focusWidget(), "1.5")
    at.leave()
    assert kept(at).hours == 1.5
    assert kept(at).correction == "Distributor rotor replaced"


def test_the_offer_goes_while_something_is_typed_and_comes_back_with_undo(at: Counter) -> None:
    offer = at.button(OFFER)
    at.type_into(QPlainTextEdit, "What was done", "rotor filed")
    assert not offer.isVisible()
    at.leave()
    at.press("Undo")
    assert kept(at).correction == ""
    assert offer.isVisible()


def test_the_same_trouble_is_said_by_a_key(at: Counter) -> None:
    control = Qt.KeyboardModifier.ControlModifier
    at.bot.keyClick(at.window, Qt.Key.Key_T, control)
    assert kept(at).says_same
    at.bot.keyClick(at.window, Qt.Key.Key_T, control)
    assert not kept(at).says_same


def test_enter_asks_of_a_car_only_what_is_not_known_of_it(at: Counter) -> None:
    at.press("A car is here")
    at.type_into(QLineEdit, "Plate", "TH 1", enter=True)
    assert here(at) == "Odometer"
    at.press("It is another car")
    at.type_into(QLineEdit, "Plate", "TH 1", enter=True)
    assert here(at) == "VIN, if it is at hand"


def test_control_and_enter_take_no_car_in_that_something_is_asked_of(at: Counter) -> None:
    at.press("A car is here")
    at.type_into(QLineEdit, "Plate", "TH 1", enter=True)
    at.type_into(QLineEdit, "Odometer", "1010", enter=True)
    at.bot.keyClicks(at.window.focusWidget(), "misses still")
    at.bot.keyClick(at.window.focusWidget(), ENTER, Qt.KeyboardModifier.ControlModifier)
    assert at.window.here() == "Heard"
    assert at.reads("The car is still in the shop by the record.")
    assert at.find(QPlainTextEdit, "What the customer says").toPlainText() == "misses still"


def test_a_self_test_is_pressed_on_where_it_stands(at: Counter) -> None:
    at.press("One by one")
    cell = at.button("misfire, as found: not said")
    bring_up(cell)
    at.quiet()
    stood = cell.mapTo(at.window, cell.rect().center())
    for said in ("complete", "not run", "not fitted"):
        at.bot.mouseClick(cell, Qt.MouseButton.LeftButton)
        at.quiet()
        assert cell.accessibleName() == f"misfire, as found: {said}"
        assert here(at) == cell.accessibleName()
        assert cell.mapTo(at.window, cell.rect().center()) == stood


def test_escape_empties_the_search_first_and_puts_the_notice_away_then(at: Counter) -> None:
    at.go("Ask the Old Jobs")
    at.window.strip.tell(ShopTrouble("The printer is asleep."))
    asked = at.find(QLineEdit, "Ask the old jobs")
    asked.setFocus()
    at.bot.keyClicks(asked, "rain")
    press(at, Qt.Key.Key_Escape)
    assert asked.text() == ""
    assert at.reads("The printer is asleep.")
    press(at, Qt.Key.Key_Escape)
    assert not at.reads("The printer is asleep.")
    assert at.window.focusWidget() is asked
