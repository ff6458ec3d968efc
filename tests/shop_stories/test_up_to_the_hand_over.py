"""Up to the hand-over: each missing answer is one press away, and the promise comes first."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.screen.sheet_preview import SheetPreview
from tests.shop_stories.counter import Counter
from tests.shop_stories.one_job import SMALL, one_job, open_job

BEFORE = "Before the car leaves, say "
ORIGIN = "origin of the new part, distributor rotor"


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with one_job(qtbot, tmp_path / "shop") as counter:
        counter.window.resize(*SMALL)
        open_job(counter)
        counter.wait_for("Still to say: ")
        counter.bot.waitUntil(lambda: bool(counter.find(QWidget, ORIGIN)))
        yield counter


def focus() -> QWidget:
    found = QApplication.focusWidget()
    assert found is not None
    return found


def offers(at: Counter, words: str) -> bool:
    shown = [one for one in at.page.findChildren(QPushButton) if one.isVisible()]
    return any(one.text() == words for one in shown)


def top(widget: QWidget) -> int:
    return widget.mapToGlobal(widget.rect().topLeft()).y()


def is_seen(widget: QWidget) -> bool:
    return widget.visibleRegion().boundingRect() == widget.rect()


def test_each_missing_answer_is_one_press_away(at: Counter) -> None:
    ways = (
        ("→  The cause", "Cause: X because Y, shown by Z"),
        ("→  What was done", "What was done"),
        ("→  Origin of the new distributor rotor", ORIGIN),
        ("→  How far it was proved", "Proved: "),
        ("→  Declined or left undone", "Declined or left undone"),
    )
    for way, name in ways:
        at.press(way)
        assert focus().accessibleName().startswith(name)
        assert is_seen(focus()), name


def test_the_first_point_of_closing_up_without_an_answer_is_one_press_away(at: Counter) -> None:
    shown = [one for one in at.page.findChildren(QPushButton) if one.isVisible()]
    refit = [one for one in shown if one.property("outcome") == "done"]
    points = [one for one in refit if top(one) < top(at.button("Proved: unproven"))]
    first, second = points[:2]
    at.press("→  Before it is closed up")
    assert focus() is first
    assert is_seen(first)
    at.bot.keyClick(first, Qt.Key.Key_Space)
    at.press("→  Before it is closed up")
    assert focus() is second


def test_the_notice_asks_no_more_once_something_of_it_is_answered(at: Counter) -> None:
    at.press("Hand the car over")
    assert at.window.strip.words().startswith(BEFORE)
    assert focus().text() == "→  The cause"  # type: ignore[attr-defined]
    at.press("→  Declined or left undone")
    assert at.window.strip.words().startswith(BEFORE)
    at.press("Nothing")
    at.bot.waitUntil(lambda: not at.window.strip.words().startswith(BEFORE))
    assert at.reads("Still to say: ")
    assert not offers(at, "→  Declined or left undone")


def test_the_promise_stands_above_the_button_that_gives_it_and_then_the_sheet_is_offered(
    at: Counter,
) -> None:
    days, leave = at.find(QLineEdit, "Window in days"), at.button("Hand the car over")
    assert top(days) < top(leave)
    at.type_into(QLineEdit, "Window in days", "180")
    at.type_into(QPlainTextEdit, "Cause: X because Y", "rotor worn")
    at.type_into(QPlainTextEdit, "What was done", "rotor renewed")
    at.choose(ORIGIN, "new, from another maker")
    at.press("Proved: unproven")
    at.press("Nothing was declined or left undone")
    at.wait_for("Still to say, or to leave out: who the technician is; which system it is.")
    at.press("Hand the car over")
    at.press("Hand over all the same")
    at.wait_for("180 days")
    assert not offers(at, "Hand the car over")
    at.press("The sheet for the customer…")
    sheet = at.find(SheetPreview, "")
    at.bot.waitUntil(lambda: "J-101" in sheet.windowTitle())
    sheet.close()


def test_the_proof_asks_each_thing_once_and_takes_the_tests_in_words_first(at: Counter) -> None:
    at.press("Found")
    at.choose("System", "Ignition")
    at.press("Proof")
    at.wait_for("Misfire counters at zero for 15 min from cold.")
    said = [one.text() for one in at.page.findChildren(QLabel) if one.isVisible()]
    assert sum("isfire counters at zero" in words for words in said) == 1
    assert "Wet road if told wet." in said
    assert "Firing lines on the oscilloscope even across the cylinders." in said
    in_words, as_bytes = (
        at.button("One by one"),
        at.find(QLineEdit, "As found: bytes of mode 01 PID 01"),
    )
    assert top(in_words) < top(as_bytes)
    assert at.reads("As scan tools show them in words: complete (ready), not run (not ready)")
    assert at.reads("Or, where a tool shows the car's raw answer: its four bytes.")


def test_a_part_that_goes_on_in_doubt_is_named_and_asked_about_before_the_car_leaves(
    at: Counter,
) -> None:
    at.wait_for("⚠ It went on, or is to go on: Distributor rotor: not enough measured.")
    at.press("→  Distributor rotor")
    assert focus().accessibleName().startswith("Next: Measure ")
    height = "tip height above the seat"
    at.type_into(QLineEdit, f"{height}, removed", "22.1; 22.1")
    at.type_into(QLineEdit, f"{height}, replacement", "23.2; 23.2")
    at.wait_for("⚠ It went on, or is to go on: Distributor rotor: stop and look.")
    at.wait_for("☞  Distributor rotor: stop and look.")  # above the page too, once it is decided
    at.press("Proved: unproven")
    for field, words in (("Cause: X because Y", "rotor worn"), ("What was done", "rotor renewed")):
        at.type_into(QPlainTextEdit, field, words)
    at.choose(ORIGIN, "new, from another maker")
    at.press("Nothing was declined or left undone")
    at.press("Hand the car over")
    assert at.reads("Something speaks against a part that goes with the car: Distributor rotor: ")
    at.press("Not yet: keep the car here")
    assert focus() is at.button("Hand the car over")
    at.choose("fitted or stopped, distributor rotor", "stopped before fitting")
    at.bot.waitUntil(lambda: not at.reads("⚠ It went on"))
    assert not offers(at, "→  Distributor rotor")


def test_only_what_must_be_said_is_called_said_while_something_is_passed_by(at: Counter) -> None:
    at.press("Proved: unproven")
    for field, words in (("Cause: X because Y", "rotor worn"), ("What was done", "rotor renewed")):
        at.type_into(QPlainTextEdit, field, words)
    at.choose(ORIGIN, "new, from another maker")
    at.choose("System", "Ignition")
    at.choose("Technician", "Tuuli")
    at.press("Nothing was declined or left undone")
    at.wait_for("All that must be said is said.\n⚠ It went on, or is to go on: Distributor rotor: ")
    assert not at.reads("Everything is said.")


def test_the_verdict_above_the_page_goes_with_its_pair(at: Counter) -> None:
    at.type_into(QLineEdit, "tip height above the seat, removed", "22.1; 22.1")
    at.wait_for("◌  Distributor rotor: not enough measured.  →")
    at.press("Take the pair away: distributor rotor")
    at.bot.waitUntil(lambda: not at.reads("Distributor rotor: not enough measured"))
