"""Proof on a job's page, with clicks and keys: the order, the drive, the readings, the level."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QComboBox, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions, proof_actions
from desktop_app.repair_jobs.proof_checks import proof_checks
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.self_tests import SelfTestState
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.fields import WordsField
from tests.screens.at_proof import AtProof, proof_page

BEFORE = "As found: bytes of mode 01 PID 01"
AFTER = "After the repair: bytes of mode 01 PID 01"
PROVOKED = "Made to happen on purpose"


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> Iterator[AtProof]:
    with proof_page(qtbot, shop) as at:
        yield at


def test_clearing_before_saving_is_asked_about_and_not_refused(at: AtProof) -> None:
    at.press("Step: Cleared once")
    assert "Nothing is ticked as saved yet" in at.said()
    assert not at.find(QPushButton, "Step: Cleared once").isChecked()
    at.press_words("Not yet")
    assert at.kept().steps == {}
    assert "Nothing is ticked as saved yet" not in at.said()
    at.press("Step: Cleared once")
    at.press_words("Yes, all the same")
    assert "cleared" in at.kept().steps
    assert "Cleared, and not ticked as saved before." in at.said()
    at.desk.undo()
    assert "Cleared, and not ticked" not in at.said()


def test_in_the_order_nothing_is_asked_and_each_step_shows_its_time(at: AtProof) -> None:
    at.press("Step: Codes saved")
    at.press("Step: Cleared once")
    assert set(at.kept().steps) == {"saved", "cleared"}
    assert at.find(QPushButton, "Step: Codes saved").text() == "✓  1  Codes saved"
    assert "Codes saved 16 Nov 12:00  ·  Cleared once 16 Nov 12:00" in at.said()
    at.press("Step: Codes saved")
    assert "saved" not in at.kept().steps


def test_the_moment_of_a_step_is_typed_anew_and_the_order_is_watched(at: AtProof) -> None:
    at.press("Step: Codes saved")
    at.press("Step: Repaired")
    at.press("Step: Cleared once")
    at.type("When it was done", "9:30")  # of the step that was ticked last
    assert at.kept().steps["cleared"] == "2026-11-16T09:30:00+00:00"
    assert at.find(QPushButton, "Step: Cleared once").text() == "✓  4  Cleared once"
    assert "Cleared once 16 Nov 09:30" in at.said()
    assert "“Cleared once” was done before “Codes saved”" in at.said()
    step = at.find(QComboBox, "Step to put right")
    for words in ("Codes saved", "Repaired"):
        step.setCurrentIndex(step.findText(words))
        step.activated.emit(step.currentIndex())
        at.type("When it was done", "2026-11-16 09:00")
    assert "By their times" not in at.said()
    at.type("When it was done", "2026-11-16 nine")
    assert "“2026-11-16 nine” is not a moment." in at.said()
    assert at.find(QLineEdit, "When it was done").text() == "2026-11-16 nine"
    assert at.kept().steps["repaired"] == "2026-11-16T09:00:00+00:00"


def test_a_moment_that_was_refused_stays_with_its_own_step_and_goes_with_it(at: AtProof) -> None:
    told: list[object] = []
    at.desk.told.connect(told.append)
    at.press("Step: Codes saved")
    at.type("When it was done", "nine")
    at.press("Step: Repaired")
    step, moment = at.find(QComboBox, "Step to put right"), at.find(QLineEdit, "When it was done")
    assert (step.currentText(), moment.text()) == ("Codes saved", "nine")
    at.type("When it was done", "9:30")
    assert at.kept().steps["saved"] == "2026-11-16T09:30:00+00:00"
    assert at.kept().steps["repaired"] == "2026-11-16T12:00:00+00:00"
    at.type("When it was done", "ten")
    step.setFocus()
    at.bot.keyClick(step, Qt.Key.Key_Down)
    assert (step.currentText(), moment.text()) == ("Repaired", "2026-11-16 12:00")
    assert "“ten” is not a moment" not in at.said()
    at.type("When it was done", "noon")
    at.press("Step: Repaired")  # it is not done after all
    assert (step.currentText(), moment.text()) == ("Codes saved", "2026-11-16 09:30")
    assert told == [
        f"When it was done: “{one}” was typed and is not kept." for one in ("ten", "noon")
    ]


def test_same_conditions_is_not_offered_without_a_condition_told(at: AtProof) -> None:
    assert "is not offered" not in at.said()
    at.page.open_job(2)
    assert not at.find(QPushButton, "Proved: same conditions").isEnabled()
    assert at.find(QPushButton, "Proved: full trip").isEnabled()
    assert "“Same conditions” is not offered: nobody has told us of a condition." in at.said()
    assert "Under Heard, tick when it happens." in at.said()
    at.desk.do(actions.tick_condition, 2, "damp", True)
    assert at.find(QPushButton, "Proved: same conditions").isEnabled()


def test_same_conditions_says_which_were_not_met(at: AtProof) -> None:
    at.press("damp: not said")
    at.press("Proved: same conditions")
    assert at.level() == 4
    assert at.find(QPushButton, "Proved: same conditions").text().endswith("(1 of 2 met)")
    assert "Not every condition you told us of is written down as met." in at.said()
    assert "Not said whether tried: pulling hard or uphill." in at.said()
    at.press("pulling hard or uphill: not said")
    assert at.find(QPushButton, "Proved: same conditions").text() == "4  same conditions"
    assert "Not every condition" not in at.said()
    at.press("pulling hard or uphill: met")
    assert at.kept().conditions == {"damp": True, "pulling": False}
    assert "Not tried: pulling hard or uphill." in at.said()


def test_the_drive_is_worth_what_the_customer_s_frequency_leaves(at: AtProof) -> None:
    at.type("Driven", "20")
    at.type("It came about once in", "40")
    assert "20 miles without it happen by luck in 61 % of cases" in at.said()
    assert "not provable on a road test" in at.said()
    unit = at.find(QComboBox, "It came about once in: unit")
    at.bot.keyClick(unit, Qt.Key.Key_Down)
    assert "once in 40 kilometres" in at.said()
    at.type("It came about once in", "often")
    assert "does not say how often it came" in at.said()
    assert at.find(QLineEdit, "It came about once in").text() == "often"
    assert at.kept().every is not None


def test_a_count_on_purpose_is_said_with_its_chance(at: AtProof) -> None:
    at.type(PROVOKED, "5 in 10 min")
    assert "no count before and after" in at.said()
    at.type(PROVOKED, "5 in 10 min, then 0 in 10 min")
    assert "3.1 % of cases; this is fair" in at.said()
    assert "no count before and after" not in at.said()


def test_bytes_are_decoded_side_by_side_and_bad_ones_stay_to_be_mended(at: AtProof) -> None:
    at.type(BEFORE, "41 01 80 07 65 05")
    at.type(AFTER, "00 07 65")
    assert "holds 3 bytes, not four bytes" in at.said()
    assert at.find(QLineEdit, AFTER).text() == "00 07 65"
    at.press("Step: Codes saved")  # another deed leaves what is half typed
    assert at.find(QLineEdit, AFTER).text() == "00 07 65"
    assert "holds 3 bytes, not four bytes" in at.said()
    at.type(AFTER, "00 07 65 04")
    said = at.said()
    assert "lamp on, no codes, spark ignition" in said
    assert "complete since" in said
    assert "◌  not run" in said
    assert "An emission test may refuse the car until its own tests have run." in said
    assert "not four bytes" not in said


def test_tests_are_entered_one_by_one_too(at: AtProof) -> None:
    at.press_words("One by one")
    name = "misfire, after the repair"
    for state in (SelfTestState.COMPLETE, SelfTestState.NOT_RUN):
        at.press(name)
        assert at.kept().after.states == {"misfire": state}
    at.press("Proved: full trip")
    assert "The car's own test has not run: misfire. Not run is not passed." in at.said()
    at.press(name)
    at.press(name)
    assert at.kept().after.states == {}
    engine = at.find(QComboBox, "Kind of engine")
    at.bot.keyClick(engine, Qt.Key.Key_Down)
    at.press("nitrogen oxide treatment, as found")
    assert at.kept().found.states == {"nox": SelfTestState.COMPLETE}


def test_caught_here_is_written_down_and_opens_the_level_again(at: AtProof) -> None:
    at.press("Proved: road")
    assert at.level() == 2
    at.type("The proof failed", "misses again on the wet hill")
    assert "misses again on the wet hill" in at.said()
    assert at.level() is None
    assert not at.find(QPushButton, "Proved: road").isChecked()
    at.press("Take out: caught here")
    assert at.kept().caught == ()


def test_all_that_is_asked_of_the_drive_stands_together(at: AtProof) -> None:
    def high(sort: type[QWidget], name: str) -> int:
        return at.find(sort, name).mapTo(at.page, QPoint()).y()

    said = at.said().splitlines()
    assert said.index("Spray it with water at idle.") < said.index("The drive")
    assert said.index("The drive") < said.index("Wet road if told wet.")
    block = [
        high(QPushButton, "Spray it with water at idle"),
        high(QPushButton, "warm-up"),
        high(QPushButton, "wet road"),
        high(QPushButton, "damp"),
        high(QLineEdit, "Driven"),
        high(QLineEdit, PROVOKED),
        high(QPushButton, "Proved: road"),
    ]
    assert block == sorted(block)
    road, conditions = block[2], block[3]
    assert conditions - road < 3 * at.find(QPushButton, "wet road").height()  # nothing in between


def test_what_the_fitted_parts_ask_for_stands_among_the_checks(at: AtProof) -> None:
    at.press("Spray it with water at idle.: done")
    with at.shop.reading() as connection:
        ticked = [one.words for one in read_job(connection, 1).checks if one.outcome == "done"]
    assert ticked == ["Spray it with water at idle."]


def test_what_is_only_typed_goes_to_its_own_job(at: AtProof) -> None:
    for name, text in (
        ("It came about once in", "40"),
        (PROVOKED, "3 in 5 min, then 0 in 5 min"),
        (AFTER, "00 07 65 00"),
        ("The proof failed", "misses again"),
    ):
        at.bot.keyClicks(at.find(QLineEdit, name), text)
    at.page.open_job(2)
    first = at.kept(1)
    assert first.every is not None
    assert first.provoked is not None
    assert first.after.typed == "00 07 65 00"
    assert [one.words for one in first.caught] == ["misses again"]
    assert at.kept(2) == ProofKept()
    for name in ("It came about once in", PROVOKED, AFTER, "The proof failed"):
        assert at.find(QLineEdit, name).text() == ""


def test_the_hand_over_says_what_was_met_and_what_was_not(at: AtProof) -> None:
    at.press("damp: not said")
    at.press("Proved: road")
    line = next(one for one in at.said().splitlines() if one.startswith("To say at hand-over"))
    assert "Tried: damp." in line
    assert "Not said whether tried: pulling hard or uphill." in line


def test_a_question_about_a_step_is_scrolled_to(at: AtProof) -> None:
    with at.bot.waitActive(at.page.window()):
        at.page.window().activateWindow()
    at.page.resize(1100, 300)
    at.press("Step: Cleared once")
    not_yet = next(one for one in at.page.findChildren(QPushButton) if one.text() == "Not yet")
    at.bot.waitUntil(lambda: not not_yet.visibleRegion().isEmpty())
    assert not_yet.hasFocus()


def test_a_check_that_is_never_left_out_is_asked_about_at_the_hand_over(at: AtProof) -> None:
    actions.choose_system(at.shop, 1, "brakes")
    actions.name_cause(at.shop, 1, "pads worn")
    actions.write_correction(at.shop, 1, "pads replaced")
    actions.say_declined(at.shop, 1, "nothing")
    actions.say_proof(at.shop, 1, 1)
    at.page.open_job(1)
    at.press_words("Hand the car over")
    assert "nobody has answered them: pedal held for a minute, no leak;" in at.said()
    assert at.left_at() is None
    at.press("Not yet: keep the car here")
    assert "nobody has answered them" not in at.said()
    for words in (*proof_checks("brakes").bay, *proof_checks("brakes").road):
        actions.tick_check(at.shop, 1, "proof", words, "done")
    actions.tick_check(at.shop, 1, "proof", proof_checks("brakes").bay[0], "")
    at.page.open_job(1)
    at.press_words("Hand the car over")
    at.press_words("Hand over all the same")
    assert at.left_at() is not None


def test_what_was_answered_stays_on_the_page_when_the_system_is_chosen_after_it(
    at: AtProof,
) -> None:
    actions.choose_system(at.shop, 1, "")
    at.page.open_job(1)
    general = proof_checks("")
    answered = [f"{words}: done" for words in (*general.bay, *general.road)]
    for name in answered:
        at.press(name)
    assert "Answered besides these" not in at.said()
    at.desk.do(actions.choose_system, 1, "ignition")
    assert all(at.find(QPushButton, name).isChecked() for name in answered)
    said = at.said().splitlines()
    besides = said.index("Answered besides these")
    assert said.index("Wet road if told wet.") < besides
    assert said[besides + 1 : besides + 3] == [
        "Works, no leak, no code, measured again.",
        "Driven under the conditions told of.",
    ]
    at.press(f"{general.bay[0]}: not needed")
    assert at.find(QPushButton, f"{general.bay[0]}: not needed").isChecked()
    at.press(f"{general.bay[0]}: not needed")
    assert "Works, no leak, no code, measured again." not in at.said()
    at.desk.undo()
    assert at.find(QPushButton, f"{general.bay[0]}: not needed").isChecked()


def test_what_was_proved_is_closed_once_the_car_has_left(at: AtProof) -> None:
    actions.say_proof(at.shop, 1, 1)
    actions.hand_over(at.shop, 1)
    at.page.open_job(1)
    (locked,) = [one for one in at.said().splitlines() if one.startswith("The car has left:")]
    assert "write it up as a new visit" in locked
    assert "undo that entry in the job's History" in locked
    assert at.said().index(locked) < at.said().index("The order in which nothing is lost")
    assert not at.find(QPushButton, "Proved: full trip").isEnabled()
    assert not at.find(QPushButton, "Step: Driven").isEnabled()
    at.desk.undo()
    assert at.find(QPushButton, "Proved: full trip").isEnabled()
    assert "The car has left:" not in at.said()


def test_words_of_two_desks_are_put_together_by_a_person(at: AtProof) -> None:
    field = at.find(WordsField, "What was tried")
    proof_actions.write_tried(at.shop, 1, "wet hill")  # at the other desk
    proof_actions.write_distance(at.shop, 1, 55.0)
    at.bot.keyClicks(field, "two hills")
    field.save_now()
    field.save_now()  # leaving it twice must not write over the other's words
    assert at.words_and_distance() == ("wet hill", 55.0)
    assert field.toPlainText() == "two hills"
    assert "at another desk meanwhile: “wet hill”. Typed here, not kept: “two hills”" in at.said()
    at.bot.keyClicks(field, " and a wet hill")
    at.press("Keep what I typed: What was tried")
    assert at.words_and_distance() == ("two hills and a wet hill", 55.0)
    assert "at another desk" not in at.said()


def test_words_refused_stay_with_no_other_job(at: AtProof) -> None:
    field = at.find(WordsField, "What was tried")
    proof_actions.write_tried(at.shop, 1, "wet hill")
    at.bot.keyClicks(field, "two hills")
    at.page.open_job(2)
    assert field.toPlainText() == ""
    assert at.words_and_distance() == ("wet hill", None)


def test_a_level_chosen_beyond_what_was_met_is_said(at: AtProof) -> None:
    actions.say_proof(at.shop, 1, 4)
    proof_actions.meet_condition(at.shop, 1, "damp", False)
    at.page.open_job(1)
    assert "not every condition is written down as met" in at.said()
    assert "is not offered: damp was not met" in at.said()
    assert not at.find(QPushButton, "Proved: same conditions").isEnabled()


def test_no_step_moves_when_another_is_pressed(at: AtProof) -> None:
    def places() -> list[tuple[int, int, int]]:
        at.page.grab()  # laid out
        steps = [one for one in at.page.findChildren(QPushButton) if one.property("step")]
        return [(one.x(), one.y(), one.width()) for one in steps]

    before = places()
    at.press("Step: Codes saved")
    assert at.find(QPushButton, "Step: Codes saved").text() == "✓  1  Codes saved"
    assert places() == before


def test_a_check_looks_done_only_once_it_is_pressed(at: AtProof) -> None:
    done = at.find(QPushButton, "Spray it with water at idle.: done")
    width = done.width()
    assert done.text() == "○  done"
    at.bot.mouseClick(done, Qt.MouseButton.LeftButton)
    assert done.text() == "✓  done"
    at.page.grab()
    assert done.width() == width


def test_who_says_unproven_has_not_said_that_nothing_was_tried(at: AtProof) -> None:
    at.press("Proved: unproven")
    assert "This repair was not proved before the car left." in at.said()
    assert "Nothing was tried" not in at.said()
    assert "Nothing was tried" not in at.find(QPushButton, "Proved: unproven").toolTip()
