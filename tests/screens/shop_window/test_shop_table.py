"""A table is sorted, its columns are chosen, some rows are looked for, and it is copied."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAction, QContextMenuEvent, QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel, QMenu, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.only_line import OnlyLine
from desktop_app.shop_window.shop_table import ShopTable
from desktop_app.shop_window.sort_key import sort_key
from desktop_app.shop_window.window_memory import window_memory
from desktop_app.shop_window.worded_rows import WordedRows

# A screen that is none can't hold a menu above the window, and says so.
OFF_SCREEN = pytest.mark.qt_log_ignore("plugin does not support", extend=True)
HEADERS = ("Job", "Miles", "Left")
ROWS = (
    ("J-101", "12,400 miles", "2026-11-02"),
    ("J-9", "900 miles", "2026-11-12"),
    ("J-20", "", "2026-10-30"),
)


@pytest.fixture
def table(qtbot: QtBot) -> ShopTable:
    return shown(qtbot)


def shown(qtbot: QtBot, rows: Sequence[tuple[str, ...]] = ROWS) -> ShopTable:
    model: WordedRows[tuple[str, ...]] = WordedRows(HEADERS, lambda row: row)
    model.show_things(rows)
    table = ShopTable("Jobs of a test")
    model.setParent(table)
    table.show_rows_of(model)
    table.resize(600, 300)
    qtbot.addWidget(table)
    with qtbot.waitExposed(table):
        table.show()
    return table


def press_header(qtbot: QtBot, table: ShopTable, column: int) -> None:
    header = table.horizontalHeader()
    spot = QPoint(header.sectionViewportPosition(column) + 20, header.height() // 2)
    qtbot.mouseClick(header.viewport(), Qt.MouseButton.LeftButton, pos=spot)


def listed(table: ShopTable, column: int = 0) -> list[str]:
    model = table.model()
    return [str(model.index(row, column).data()) for row in range(model.rowCount())]


def choose(qtbot: QtBot, table: ShopTable, words: str) -> None:
    """Open the menu of columns by the menu key, and turn one."""
    spot = QPoint(5, 5)
    where = table.viewport().mapToGlobal(spot)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Keyboard, spot, where)
    QApplication.sendEvent(table.viewport(), event)
    menu = table.findChildren(QMenu)[-1]
    action = next(a for a in menu.findChildren(QAction) if a.text() == words)
    action.trigger()
    menu.close()


def test_a_press_on_a_header_sorts_by_size_then_back_then_as_it_was(
    qtbot: QtBot, table: ShopTable
) -> None:
    press_header(qtbot, table, 1)
    assert listed(table) == ["J-20", "J-9", "J-101"]
    press_header(qtbot, table, 1)
    assert listed(table) == ["J-101", "J-9", "J-20"]
    press_header(qtbot, table, 1)
    assert listed(table) == ["J-101", "J-9", "J-20"]
    press_header(qtbot, table, 0)
    assert listed(table) == ["J-9", "J-20", "J-101"]


def test_rows_are_spoken_of_as_the_model_has_them(qtbot: QtBot, table: ShopTable) -> None:
    press_header(qtbot, table, 0)
    table.mark_row(0)
    assert table.currentIndex().row() == 2
    assert table.marked_row() == 0


@OFF_SCREEN
def test_what_was_chosen_is_there_the_next_time(qtbot: QtBot, table: ShopTable) -> None:
    press_header(qtbot, table, 0)
    choose(qtbot, table, "Miles")
    table.horizontalHeader().moveSection(2, 0)
    again = shown(qtbot)
    assert listed(again) == ["J-9", "J-20", "J-101"]
    assert again.isColumnHidden(1)
    assert again.copied().splitlines()[0] == "Left\tJob"
    choose(qtbot, again, "As it was")
    assert not again.isColumnHidden(1)
    assert listed(again) == ["J-101", "J-9", "J-20"]
    assert shown(qtbot).copied().splitlines()[0] == "Job\tMiles\tLeft"


@OFF_SCREEN
def test_one_column_always_stays(qtbot: QtBot, table: ShopTable) -> None:
    for name in HEADERS:
        choose(qtbot, table, name)
    assert [table.isColumnHidden(column) for column in range(3)] == [True, True, False]


def test_a_memory_that_says_nothing_of_use_is_no_trouble(qtbot: QtBot, table: ShopTable) -> None:
    for said in ("", "{", "[]", '{"order": 3}', '{"order": ["Gone"], "hidden": [], "by": "Gone"}'):
        memory = window_memory()
        memory.setValue("tables/Jobs of a test", said)
        memory.sync()
        assert listed(shown(qtbot)) == ["J-101", "J-9", "J-20"]


def test_chosen_rows_are_copied_as_a_table(qtbot: QtBot, table: ShopTable) -> None:
    table.setFocus()
    table.mark_row(1)
    qtbot.keyClick(table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    copied = QGuiApplication.clipboard().text()
    assert copied == "Job\tMiles\tLeft\nJ-9\t900 miles\t2026-11-12\n"


def test_with_none_chosen_all_are_copied(qtbot: QtBot, table: ShopTable) -> None:
    table.clearSelection()
    qtbot.keyClick(table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert len(QGuiApplication.clipboard().text().splitlines()) == 4


def test_a_sign_is_no_part_of_what_is_copied(qtbot: QtBot) -> None:
    table = shown(qtbot, [("●  J-392", "−  5", "- ↷")])
    assert table.copied().splitlines()[1] == "J-392\t− 5\t- ↷"


def test_rows_are_a_table_in_a_letter(qtbot: QtBot) -> None:
    table = shown(qtbot, [("a<b", "−\u20605", "")])
    qtbot.keyClick(table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    copied = QGuiApplication.clipboard().mimeData()
    assert "<tr><td>a&lt;b</td><td>−5</td><td></td></tr>" in copied.html()
    assert copied.text().splitlines()[1] == "a<b\t−5\t"


def test_tabs_and_lines_inside_a_cell_stay_in_their_cell(qtbot: QtBot) -> None:
    table = shown(qtbot, [("a\tb", "two\nlines", "")])
    assert table.copied().splitlines()[1] == "a b\ttwo lines\t"


def test_only_rows_with_some_words_are_shown(qtbot: QtBot, table: ShopTable) -> None:
    line = only_line(qtbot, table)
    qtbot.keyClicks(line.focusProxy(), "MILES 900")
    assert listed(table) == ["J-9"]
    assert table.row_of(table.model().index(0, 0)) == 1
    qtbot.keyClick(line.focusProxy(), Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClick(line.focusProxy(), Qt.Key.Key_Delete)
    assert len(listed(table)) == 3
    assert told(line) == ""


def test_what_left_rows_out_is_there_the_next_time_and_says_so(
    qtbot: QtBot, table: ShopTable
) -> None:
    table.mark_row(0)
    qtbot.keyClicks(only_line(qtbot, table).focusProxy(), "900  miles")
    press_header(qtbot, table, 0)
    again = shown(qtbot)
    assert len(listed(again)) == 3  # without a line that says it nothing is left out
    line = only_line(qtbot, again)
    assert listed(again) == ["J-9"]
    assert told(line) == "▽  Rows shown: 1 of 3, those with “900 miles”."
    again.mark_row(0)
    [button] = line.findChildren(QPushButton)
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert listed(again) == ["J-9", "J-20", "J-101"]
    assert again.marked_row() == 0
    assert told(line) == ""
    last = shown(qtbot)
    assert told(only_line(qtbot, last)) == ""
    assert listed(last) == ["J-9", "J-20", "J-101"]


@OFF_SCREEN
def test_as_it_was_leaves_no_row_out(qtbot: QtBot, table: ShopTable) -> None:
    line = only_line(qtbot, table)
    qtbot.keyClicks(line.focusProxy(), "900")
    choose(qtbot, table, "As it was")
    assert len(listed(table)) == 3
    assert told(line) == ""


def only_line(qtbot: QtBot, table: ShopTable) -> OnlyLine:
    line = table.only_line()
    qtbot.addWidget(line)
    line.show()
    return line


def told(line: OnlyLine) -> str:
    """What the line says of the rows left out."""
    return "".join(label.text() for label in line.findChildren(QLabel) if label.isVisible())


def test_a_table_has_a_name_for_a_screen_reader(qtbot: QtBot, table: ShopTable) -> None:
    assert table.accessibleName() == "Jobs of a test"
    assert isinstance(table, QWidget)


@given(st.lists(st.integers(-(10**9), 10**9), min_size=2))
def test_amounts_are_sorted_by_their_size(numbers: list[int]) -> None:
    for form in ("{:,}", "${:,}.50", "{:,} miles", "{} %", "{:,} days"):
        said = [form.format(number) for number in numbers]
        by_size = [form.format(n) for n in sorted(numbers)]
        if form.startswith("$"):
            by_size = [form.format(n) for n in sorted(numbers, key=lambda n: float(f"{n}.50"))]
        assert sorted(said, key=sort_key) == by_size


@pytest.mark.parametrize(
    ("first", "then"),
    [
        ("J-9", "J-101"),
        ("2026-W09", "2026-W10"),
        ("2025-12-31 08:00", "2026-01-01 07:00"),
        ("", "0"),
        (None, -3),
        (2, 10.5),
        (date(2026, 1, 1), date(2026, 11, 1)),
        ("5 miles", "bay 2"),
        ("Bay 2", "bay 10"),
    ],
)
def test_what_comes_first(first: object, then: object) -> None:
    assert sort_key(first) < sort_key(then)


@OFF_SCREEN
def test_a_column_without_room_says_so_and_comes_when_another_goes(
    qtbot: QtBot, table: ShopTable
) -> None:
    table.leave_out((1, 2))
    assert seen(table) == ["Job"]
    choose(qtbot, table, "Left (no room here)")  # that one may as well be hidden for good
    choose(qtbot, table, "Left")
    choose(qtbot, table, "Job")
    assert seen(table) == ["Miles"]
    choose(qtbot, table, "As it was")
    table.leave_out(())
    assert seen(table) == list(HEADERS)


def seen(table: ShopTable) -> list[str]:
    """Return the headers that are seen."""
    return [name for column, name in enumerate(HEADERS) if not table.isColumnHidden(column)]
