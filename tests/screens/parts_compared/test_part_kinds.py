"""Part Kinds as a shop owner meets it: find a kind, read it, make it ours, change, give back."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QLineEdit,
    QListWidget,
    QPlainTextEdit,
    QPushButton,
    QWidget,
)

from desktop_app.commands.shop_place import kinds_of, shelf_of
from desktop_app.parts_compared import kind_actions
from desktop_app.parts_compared.actions import lay_side_by_side, write_readings
from desktop_app.parts_compared.part_kinds.kind_lines import with_lines
from desktop_app.parts_compared.part_kinds.own_kind import with_change
from desktop_app.parts_compared.screen.part_kinds_page import PartKindsPage
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import save_everything
from tests.screens.bench_desk import named, new_job, retype, words_of


@pytest.fixture
def page(desk: Desk, qtbot: Any) -> PartKindsPage:
    """The page, shown."""
    page = PartKindsPage(desk, lambda: shelf_of(desk.record), kinds_of())
    qtbot.addWidget(page)
    page.resize(1200, 800)
    page.show()
    qtbot.waitExposed(page)
    return page


def press(page: QWidget, qtbot: Any, words: str) -> None:
    """Press the button that says this and let the page follow."""
    buttons = [b for b in page.findChildren(QPushButton) if b.isVisibleTo(page)]
    button = next(b for b in buttons if words in (b.text(), b.accessibleName()))
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def choose(page: PartKindsPage, qtbot: Any, text: str) -> None:
    """Find a kind by typing a piece of its name."""
    field = named(page, QLineEdit, "Find a part kind")
    field.clear()
    qtbot.keyClicks(field, text)


def test_typing_finds_a_kind_and_its_page_says_what_is_measured(
    page: PartKindsPage, qtbot: Any
) -> None:
    choose(page, qtbot, "rotor arm")
    assert named(page, QListWidget, "Part kinds").count() == 1
    said = words_of(page)
    for words in (
        "Distributor rotor",
        "Ignition voltage",
        "0.1 to 1.5 mm bigger",
        "± 0.05 mm",
        "common practice, no source",
        "burned tip",
        "Turn the engine over by hand once",
        "sister engine",
    ):
        assert words in said, words
    assert not page.findChildren(QLineEdit, "allowed, bore diameter")


def test_a_limit_is_changed_without_touching_files_and_undone(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    choose(page, qtbot, "distributor rotor")
    press(page, qtbot, "Change it for our shop")
    qtbot.waitUntil(lambda: "allowed, bore diameter" in _fields(page))
    retype(page, qtbot, "allowed, bore diameter", "0.12")
    bore = kinds_of(desk.record)["distributor-rotor"].dimension("bore")
    assert bore is not None
    assert bore.allowed == (-0.12, 0.12)
    desk.undo()
    qtbot.waitUntil(lambda: named(page, QLineEdit, "allowed, bore diameter").text() == "0.05")
    press(page, qtbot, "Take ours off the shelf")
    qtbot.waitUntil(lambda: "allowed, bore diameter" not in _fields(page))
    assert shelf_of(desk.record).own == frozenset()


def test_a_refused_figure_stays_in_its_field_with_what_is_accepted(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    choose(page, qtbot, "distributor rotor")
    press(page, qtbot, "Change it for our shop")
    qtbot.waitUntil(lambda: "allowed, bore diameter" in _fields(page))
    field = retype(page, qtbot, "allowed, bore diameter", "snug")
    assert field.text() == "snug"
    assert "bore diameter: 'snug' can't be understood" in words_of(page)


def test_a_dimension_is_added_and_taken_out(page: PartKindsPage, desk: Desk, qtbot: Any) -> None:
    choose(page, qtbot, "distributor rotor")
    press(page, qtbot, "Change it for our shop")
    qtbot.waitUntil(lambda: "Another dimension" in _fields(page))
    press(page, qtbot, "Add the dimension")
    assert "It needs a name" in words_of(page)
    qtbot.keyClicks(named(page, QLineEdit, "Another dimension"), "Collar width")
    qtbot.keyClicks(named(page, QLineEdit, "Allowed"), "0.2")
    assert named(page, QComboBox, "Read with").findText("calliper") >= 0
    press(page, qtbot, "Add the dimension")
    qtbot.waitUntil(lambda: "allowed, Collar width" in _fields(page))
    press(page, qtbot, "Take out Collar width")
    qtbot.waitUntil(lambda: "allowed, Collar width" not in _fields(page))


def test_a_copy_is_made_under_a_new_name(page: PartKindsPage, desk: Desk, qtbot: Any) -> None:
    choose(page, qtbot, "relay")
    press(page, qtbot, "Copy it under this name")
    assert "Type a name for the new kind first" in words_of(page)
    qtbot.keyClicks(named(page, QLineEdit, "Name of the new kind"), "Glow plug relay")
    press(page, qtbot, "Copy it under this name")
    qtbot.waitUntil(lambda: "Glow plug relay" in words_of(page))
    assert "glow-plug-relay" in kinds_of(desk.record)
    assert f"A copy of {kinds_of()['relay'].name}." in words_of(page)
    assert named(page, QLineEdit, "Name of the new kind").text() == ""
    choose(page, qtbot, "relay")
    assert named(page, QLineEdit, "Name of the new kind").text() == ""


def _fields(page: QWidget) -> set[str]:
    return {one.accessibleName() for one in page.findChildren(QLineEdit) if one.isVisibleTo(page)}


def test_ours_says_which_kept_pairs_it_judges_otherwise(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    job = new_job(desk.record)
    pair = lay_side_by_side(desk.record, job, "distributor-rotor").made
    bore = kinds_of()["distributor-rotor"].dimension("bore")
    assert pair is not None
    assert bore is not None
    write_readings(desk.record, pair, bore, "removed", "12.70; 12.70")
    write_readings(desk.record, pair, bore, "replacement", "12.90; 12.90")
    choose(page, qtbot, "distributor rotor")
    press(page, qtbot, "Change it for our shop")
    qtbot.waitUntil(lambda: "allowed, bore diameter" in _fields(page))
    press(page, qtbot, "What does ours change?")
    qtbot.waitUntil(lambda: "come out as with the built-in kind" in words_of(page))
    retype(page, qtbot, "allowed, bore diameter", "0.5")
    press(page, qtbot, "What does ours change?")
    said = "1 × “stop and look” becomes “not enough measured”. Jobs: J-101."
    qtbot.waitUntil(lambda: said in words_of(page))


def make_ours(page: PartKindsPage, qtbot: Any) -> None:
    """Make the distributor rotor the shop's own."""
    choose(page, qtbot, "distributor rotor")
    press(page, qtbot, "Change it for our shop")
    qtbot.waitUntil(lambda: "allowed, bore diameter" in _fields(page))


def type_half(page: PartKindsPage, qtbot: Any) -> None:
    """Type half a dimension, a name, and a figure that is refused."""
    qtbot.keyClicks(named(page, QLineEdit, "Another dimension"), "Collar wid")
    role = named(page, QComboBox, "What it asks")
    role.setCurrentIndex(role.findData("limit"))
    qtbot.keyClicks(named(page, QLineEdit, "Name of the new kind"), "Rotor, boat")
    retype(page, qtbot, "allowed, bore diameter", "snug")


def assert_half_typed(page: PartKindsPage) -> None:
    assert named(page, QLineEdit, "Another dimension").text() == "Collar wid"
    assert named(page, QComboBox, "What it asks").currentData() == "limit"
    assert named(page, QLineEdit, "Name of the new kind").text() == "Rotor, boat"
    assert named(page, QLineEdit, "allowed, bore diameter").text() == "snug"
    assert "bore diameter: 'snug' can't be understood" in words_of(page)


def test_what_is_half_typed_stays_when_another_row_goes(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    make_ours(page, qtbot)
    type_half(page, qtbot)
    tip = kinds_of()["distributor-rotor"].dimension("tip-radius")
    assert tip is not None
    press(page, qtbot, f"Take out {tip.label}")
    qtbot.waitUntil(lambda: f"allowed, {tip.label}" not in _fields(page))
    assert_half_typed(page)


def test_what_is_half_typed_stays_with_its_kind_and_over_a_restart(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    make_ours(page, qtbot)
    type_half(page, qtbot)
    choose(page, qtbot, "relay")
    assert named(page, QLineEdit, "Name of the new kind").text() == ""
    choose(page, qtbot, "distributor rotor")
    assert_half_typed(page)
    save_everything(page)
    again = PartKindsPage(desk, lambda: shelf_of(desk.record), kinds_of())
    qtbot.addWidget(again)
    again.show()
    qtbot.waitExposed(again)
    choose(again, qtbot, "distributor rotor")
    assert_half_typed(again)
    retype(again, qtbot, "allowed, bore diameter", "0.11")
    named(again, QLineEdit, "Another dimension").clear()
    named(again, QLineEdit, "Name of the new kind").clear()
    save_everything(again)
    assert Drafts(desk.record.folder).read("part kind distributor-rotor") == {}


def test_a_dimension_that_was_added_is_not_typed_any_more(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    make_ours(page, qtbot)
    qtbot.keyClicks(named(page, QLineEdit, "Another dimension"), "Collar width")
    qtbot.keyClicks(named(page, QLineEdit, "Allowed"), "0.2")
    press(page, qtbot, "Add the dimension")
    qtbot.waitUntil(lambda: "allowed, Collar width" in _fields(page))
    assert named(page, QLineEdit, "Another dimension").text() == ""


def test_cautions_and_wrongs_of_our_own_are_typed_too(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    make_ours(page, qtbot)
    for heading, words in (
        ("Cautions", "Take the key out first."),
        ("How a wrong part gives itself away", "The clip faces the other way."),
        ("When it goes back on", "! Keep clear of the fan."),
    ):
        field = named(page, QPlainTextEdit, heading)
        field.setFocus()
        field.appendPlainText(words)
    save_everything(page)
    qtbot.waitUntil(lambda: "⚠  Take the key out first." in words_of(page))
    kind = kinds_of(desk.record)["distributor-rotor"]
    assert kind.wrongs[-1].say == "The clip faces the other way."
    assert kind.refit[-1].hurt
    assert "⚠ Keep clear" in named(page, QPlainTextEdit, "When it goes back on").toPlainText()


def test_a_change_here_leaves_what_another_desk_changed_meanwhile(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    make_ours(page, qtbot)
    rotor = kinds_of()["distributor-rotor"]
    tip = rotor.dimension("tip-radius")
    assert tip is not None
    # Another program on the same shop: this window hears nothing of it.
    kind_actions.change_own_kind(
        desk.record, rotor, lambda kept: with_change(kept, tip, essential=not tip.essential)
    )
    kind_actions.change_own_kind(
        desk.record,
        rotor,
        lambda kept: with_lines(kept, "proof", "Idle it wet.\nDrive it."),
    )
    retype(page, qtbot, "allowed, bore diameter", "0.12")
    field = named(page, QPlainTextEdit, "What proves the repair")
    field.appendPlainText("Spray it.")
    save_everything(page)
    kind = kinds_of(desk.record)["distributor-rotor"]
    kept = kind.dimension("tip-radius")
    assert kept is not None
    assert kept.essential is not tip.essential
    changed = kind.dimension("bore")
    assert changed is not None
    assert changed.allowed == (-0.12, 0.12)
    assert {one.say for one in kind.proof} >= {"Idle it wet.", "Drive it.", "Spray it."}
    qtbot.waitUntil(lambda: "Idle it wet." in field.toPlainText())


def test_a_change_of_what_another_desk_took_out_is_refused(
    page: PartKindsPage, desk: Desk, qtbot: Any
) -> None:
    make_ours(page, qtbot)
    kind_actions.give_back(desk.record, kinds_of()["distributor-rotor"])
    with qtbot.waitSignal(desk.told) as told:
        retype(page, qtbot, "allowed, bore diameter", "0.12")
    assert "not the shop's own any more" in told.args[0].sentence()
    assert named(page, QLineEdit, "allowed, bore diameter").text() == "0.12"
