"""A gauge study as somebody does it who wants to know what the shop's calliper is good for."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPushButton, QTableWidget, QWidget

from desktop_app.parts_compared import actions, gauge_actions
from desktop_app.parts_compared.instruments.gauge_study import GaugeReading
from desktop_app.parts_compared.screen.gauge_study_page import GaugeStudyPage
from desktop_app.parts_compared.screen.tool_drawer_page import ToolDrawerPage
from desktop_app.parts_compared.stored_gauge import latest_study, read_study
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.parts_compared.uncertainty import side_reading
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import save_everything
from tests.screens.bench_desk import named

TEN = ["12.01", "12.02", "12,00", "12.01", "12.03", "12.01", "12.02", "12.00", "12.01", "12.01"]


@pytest.fixture
def desk(shop: ShopRecord, qapp: Any) -> Iterator[Desk]:
    """A desk on a new shop with one calliper in its drawer."""
    desk = Desk(shop)
    actions.keep_instrument(shop, "calliper", "mm", 0.01, 0.03)
    yield desk
    desk.errands.finish()


@pytest.fixture
def page(desk: Desk, qtbot: Any) -> ToolDrawerPage:
    """The Tool Drawer with the calliper's gauge study open, shown."""
    return opened(desk, qtbot)


def opened(desk: Desk, qtbot: Any) -> ToolDrawerPage:
    """Open the Tool Drawer and the study of its chosen instrument."""
    page = ToolDrawerPage(desk)
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    qtbot.waitExposed(page)
    page.came_here()
    press(page, qtbot, "Try the chosen one out: gauge study")
    return page


def press(page: QWidget, qtbot: Any, words: str) -> None:
    """Press the button that says this, with the keyboard."""
    found = [b for b in page.findChildren(QPushButton) if b.text() == words]
    assert len(found) == 1
    found[0].setFocus()
    qtbot.keyClick(found[0], Qt.Key.Key_Space)


def button(page: QWidget, words: str) -> QPushButton:
    """Return the button that says this."""
    return next(b for b in page.findChildren(QPushButton) if b.text() == words)


def read(page: QWidget, qtbot: Any, values: list[str]) -> None:
    """Type readings as a keyboard calliper does: each ended by Enter."""
    field = named(page, QLineEdit, "Next reading")
    for value in values:
        qtbot.keyClicks(field, value)
        qtbot.keyClick(field, Qt.Key.Key_Return)


def type_into(page: QWidget, qtbot: Any, name: str, text: str) -> None:
    """Fill a field with the keyboard and end it with Enter."""
    field = named(page, QLineEdit, name)
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def choose(page: QWidget, qtbot: Any, name: str, words: str) -> None:
    """Choose something with the keyboard."""
    choice = named(page, QComboBox, name)
    choice.setFocus()
    key = Qt.Key.Key_Down if choice.findText(words) > choice.currentIndex() else Qt.Key.Key_Up
    while choice.currentText() != words:
        before = choice.currentIndex()
        qtbot.keyClick(choice, key)
        assert choice.currentIndex() != before


def grid(page: QWidget) -> list[list[str]]:
    """Return what the grid says, each row with its name before it."""
    table = page.findChildren(QTableWidget)[0]
    return [
        [table.verticalHeaderItem(y).text()]
        + [table.item(y, x).text() for x in range(table.columnCount())]
        for y in range(table.rowCount())
    ]


def words_of(page: QWidget) -> str:
    """Return everything that is written on the page now."""
    return "\n".join(one.text() for one in page.findChildren(QLabel) if one.isVisibleTo(page))


def readings(desk: Desk) -> tuple[GaugeReading, ...]:
    """Return the readings of the calliper's study as kept."""
    kept = desk.ask(latest_study, 1)
    return () if kept is None else tuple(kept.readings.values())


def test_ten_readings_become_the_calliper_s_own_figure(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    assert grid(page)[0][:3] == ["first person", "▸ next", ""]
    assert "Nothing was read twice yet" in words_of(page)
    assert "What counts now is the usual figure, 0.01 mm." in words_of(page)
    read(page, qtbot, TEN[:4])
    assert grid(page)[0][:6] == ["first person", "12.01", "12.02", "12.00", "12.01", "▸ next"]
    assert "Still too few to count: 5 readings more" in words_of(page)
    assert not button(page, "Use from now on").isEnabled()
    read(page, qtbot, TEN[4:])
    assert "In one hand the calliper repeats itself to 0.0092 mm" in words_of(page)
    press(page, qtbot, "Use from now on")
    tool = desk.ask(drawer)["calliper"]
    assert tool.usual_spread == pytest.approx(0.0091894, rel=1e-4)
    assert tool.usual_dof == 9
    judged = side_reading([12.0], tool)
    assert (judged.spread, judged.spread_dof) == (pytest.approx(0.0091894, rel=1e-4), 9)
    assert "What counts now is our own figure, 0.0092 mm. It comes from this" in words_of(page)
    press(page, qtbot, "Go back to the usual figure")
    assert desk.ask(drawer)["calliper"].repeatability is None
    assert desk.ask(drawer)["calliper"].usual_dof == 8


def test_two_people_take_turns_and_are_told_apart(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    type_into(page, qtbot, "What is read", "plug, 12 mm")
    type_into(page, qtbot, "First person", "Ann")
    type_into(page, qtbot, "Second person, if there is one", "Ben")
    choose(page, qtbot, "Readings of each", "5")
    read(page, qtbot, ["12.00", "12.01", "12.02", "12.01", "12.00"])
    assert named(page, QComboBox, "Who reads now").currentText() == "Ben"
    read(page, qtbot, ["12.06", "12.07", "12.06", "12.05", "12.06"])
    assert [row[0] for row in grid(page)] == ["Ann", "Ben"]
    assert grid(page)[1][1:] == ["12.06", "12.07", "12.06", "12.05", "12.06"]
    assert "Let the same person read the old part and the new one." in words_of(page)
    assert "Every place is filled." in words_of(page)
    kept = desk.ask(latest_study, 1)
    assert kept.about == "plug, 12 mm"
    type_into(page, qtbot, "Second person, if there is one", "Bea")
    assert {one.person for one in readings(desk)} == {"Ann", "Bea"}
    type_into(page, qtbot, "Second person, if there is one", "Ann")
    assert {one.person for one in readings(desk)} == {"Ann", "Bea"}
    assert named(page, QLineEdit, "Second person, if there is one").text() == "Ann"


def test_several_parts_are_read_one_after_the_other(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    choose(page, qtbot, "Parts", "3")
    choose(page, qtbot, "Readings of each", "2")
    assert "These readings will be too few" in words_of(page)
    choose(page, qtbot, "Readings of each", "4")
    read(page, qtbot, ["10.00", "11.00", "12.00", "10.01"])
    assert [row[1] for row in grid(page)] == ["10.00", "11.00", "12.00"]
    assert grid(page)[1] == ["first person, part 2", "11.00", "▸ next", "", ""]


def test_a_refused_reading_stays_and_says_what_is_accepted(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    read(page, qtbot, ["twelve"])
    assert "Accepted: millimetres" in words_of(page)
    assert named(page, QLineEdit, "Next reading").text() == "twelve"
    assert readings(desk) == ()
    assert desk.ask(latest_study, 1) is None


def test_a_reading_is_taken_out_and_its_place_is_next(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    read(page, qtbot, ["12.01", "21.02", "12.03"])
    table = page.findChildren(QTableWidget)[0]
    table.setFocus()
    table.setCurrentCell(0, 1)
    qtbot.keyClick(table, Qt.Key.Key_Delete)
    assert grid(page)[0][1:5] == ["12.01", "▸ next", "12.03", ""]
    qtbot.keyClick(table, Qt.Key.Key_Delete)  # an empty place has nothing to take out
    assert len(readings(desk)) == 2
    desk.undo()
    assert grid(page)[0][1:5] == ["12.01", "21.02", "12.03", "▸ next"]


def test_undo_takes_readings_back_one_by_one(page: ToolDrawerPage, desk: Desk, qtbot: Any) -> None:
    read(page, qtbot, ["12.01", "12.02"])
    desk.undo()
    assert grid(page)[0][1:3] == ["12.01", "▸ next"]
    desk.undo()
    assert desk.ask(latest_study, 1) is None
    desk.redo()
    assert grid(page)[0][1:3] == ["12.01", "▸ next"]


def test_a_study_in_use_stays_as_it_is_and_another_can_be_begun(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    told: list[str] = []
    desk.told.connect(lambda trouble: told.append(str(trouble)))
    read(page, qtbot, TEN)
    press(page, qtbot, "Use from now on")
    choose(page, qtbot, "Readings of each", "11")
    read(page, qtbot, ["13.00"])
    assert "This study is in use" in told[0]
    assert named(page, QLineEdit, "Next reading").text() == "13.00"
    press(page, qtbot, "Begin another study")
    assert grid(page)[0][1] == "▸ next"
    qtbot.keyClick(named(page, QLineEdit, "Next reading"), Qt.Key.Key_Return)
    assert [one.value for one in readings(desk)] == [13.0]
    assert len(desk.ask(read_study, 1).readings) == 10
    assert desk.ask(drawer)["calliper"].usual_dof == 9
    read(page, qtbot, [f"13.{i:02}" for i in range(10)])
    press(page, qtbot, "Use from now on")
    assert desk.ask(drawer)["calliper"].usual_dof == 10
    assert not desk.ask(read_study, 1).taken_over


def test_inches_by_the_house_rule(page: ToolDrawerPage, desk: Desk, qtbot: Any) -> None:
    desk.do(change_rule, "length_unit", "inch")
    read(page, qtbot, ["0.500", "12.7 mm"])
    assert [one.value for one in readings(desk)] == pytest.approx([12.7, 12.7])
    assert grid(page)[0][1:4] == ["0.5000", "0.5000", "▸ next"]


def test_what_is_typed_is_there_again_when_the_study_is_opened_again(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    type_into(page, qtbot, "First person", "Ann")
    type_into(page, qtbot, "Second person, if there is one", "Ben")
    choose(page, qtbot, "Readings of each", "5")
    qtbot.keyClicks(named(page, QLineEdit, "Next reading"), "12.0")
    save_everything(page)
    again = opened(desk, qtbot)
    assert named(again, QLineEdit, "Next reading").text() == "12.0"
    assert [row[0] for row in grid(again)] == ["Ann", "Ben"]
    assert len(grid(again)[0]) == 6


def test_the_study_closes_and_goes_with_its_instrument(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    read(page, qtbot, TEN[:2])
    press(page, qtbot, "Close the study")
    qtbot.waitUntil(lambda: not page.findChildren(GaugeStudyPage))
    press(page, qtbot, "Try the chosen one out: gauge study")
    assert grid(page)[0][1:4] == ["12.01", "12.02", "▸ next"]
    press(page, qtbot, "Put the chosen one away")
    qtbot.waitUntil(lambda: not page.findChildren(GaugeStudyPage))


def test_an_instrument_with_readings_keeps_its_unit(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    told: list[str] = []
    desk.told.connect(lambda trouble: told.append(str(trouble)))
    read(page, qtbot, TEN[:2])
    assert desk.do(actions.keep_instrument, "calliper", "deg", 0.1, 0.1) is None
    assert "read in another unit" in told[0]
    assert desk.do(actions.keep_instrument, "calliper", "mm", 0.02, 0.03) is not None


def test_too_few_readings_do_not_replace_the_usual_figure(
    page: ToolDrawerPage, desk: Desk, qtbot: Any
) -> None:
    told: list[str] = []
    desk.told.connect(lambda trouble: told.append(str(trouble)))
    read(page, qtbot, TEN[:3])
    assert desk.do(gauge_actions.use_from_now_on, 1) is None
    assert "has 2 repeats so far and needs 8" in told[0]
    assert desk.do(gauge_actions.add_reading, 1, ("first person", 1, 2), 12.0) is None
    assert "is there already" in told[1]
    assert desk.do(gauge_actions.add_reading, 1, ("  ", 1, 9), 12.0) is None
    assert "Who reads?" in told[2]
