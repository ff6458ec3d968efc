"""The Tool Drawer as someone uses it who checks the shop's instruments once a year."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QLineEdit,
    QPushButton,
    QTableView,
    QWidget,
)

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.instruments.instrument_check import (
    check_words,
    is_overdue,
    read_check_day,
)
from desktop_app.parts_compared.screen.tool_drawer_page import ToolDrawerPage
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.look import dress
from tests.screens.bench_desk import named

TODAY = date(2026, 11, 16)


@pytest.fixture
def page(shop: ShopRecord, qtbot: Any) -> Iterator[ToolDrawerPage]:
    """The page of an empty drawer, shown."""
    desk = Desk(shop)
    page = ToolDrawerPage(desk)
    page.desk = desk  # type: ignore[attr-defined]
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    page.came_here()
    yield page
    desk.errands.finish()


def desk_of(page: ToolDrawerPage) -> Desk:
    """Return the desk of the page."""
    desk = page.desk  # type: ignore[attr-defined]
    assert isinstance(desk, Desk)
    return desk


def fill(page: QWidget, qtbot: Any, **texts: str) -> None:
    """Type into the form and press its button."""
    names = {
        "name": "Instrument",
        "step": "Reads in steps of",
        "error": "Permitted error, plus or minus",
        "day": "Last checked on",
    }
    for key, text in texts.items():
        field = named(page, QLineEdit, names[key])
        field.clear()
        qtbot.keyClicks(field, text)
    keep = next(b for b in page.findChildren(QPushButton) if b.text() == "Keep it in the drawer")
    qtbot.mouseClick(keep, Qt.MouseButton.LeftButton)


def rows(page: QWidget) -> list[list[str]]:
    """Return what the table says."""
    model = page.findChildren(QTableView)[0].model()
    across = range(model.columnCount())
    return [[model.index(r, c).data() for c in across] for r in range(model.rowCount())]


def words_of(page: QWidget) -> str:
    """Return everything that is written on the page now."""
    return "\n".join(one.text() for one in page.findChildren(QLabel) if one.isVisible())


def test_an_instrument_is_put_into_the_drawer(page: ToolDrawerPage, qtbot: Any) -> None:
    assert "The drawer is empty" in words_of(page)
    fill(page, qtbot, name="calliper 2", step="0.02", error="0,04", day="2026-05-04")
    figures = ["0.02 mm", "± 0.04 mm", "2026-05-04", "0.013 mm, usual"]
    assert rows(page) == [["calliper 2", "mm", *figures]]
    kept = desk_of(page).ask(drawer)["calliper 2"]
    assert (kept.resolution, kept.max_error) == (0.02, 0.04)
    assert named(page, QLineEdit, "Instrument").text() == ""


@pytest.mark.parametrize(
    ("wrong", "said"),
    [
        ({"step": "fine"}, "Accepted: millimetres"),
        ({"error": "-0.1"}, "below zero"),
        ({"day": "last spring"}, "Accepted: year, month and day like 2026-11-16"),
        ({"day": "2026-12-01"}, "has not come yet"),
        ({"name": "  "}, "Give it a name"),
    ],
)
def test_a_refused_form_keeps_its_texts_and_says_what_is_accepted(
    page: ToolDrawerPage, qtbot: Any, wrong: dict[str, str], said: str
) -> None:
    good = {"name": "calliper", "step": "0.01", "error": "0.02", "day": ""}
    fill(page, qtbot, **(good | wrong))
    assert said in words_of(page)
    assert rows(page) == []
    assert named(page, QLineEdit, "Permitted error, plus or minus").text() != ""


def test_enter_on_a_row_fills_the_form_and_the_figures_change(
    page: ToolDrawerPage, qtbot: Any
) -> None:
    actions.keep_instrument(desk_of(page).record, "calliper", "mm", 0.01, 0.02, "2025-10-01")
    page.came_here()
    assert rows(page)[0][4] == "2025-10-01: check overdue"
    table = page.findChildren(QTableView)[0]
    table.setFocus()
    qtbot.keyClick(table, Qt.Key.Key_Return)
    assert named(page, QLineEdit, "Reads in steps of").text() == "0.01"
    fill(page, qtbot, day="2026-11-02")
    figures = ["0.01 mm", "± 0.02 mm", "2026-11-02", "0.0067 mm, usual"]
    assert rows(page) == [["calliper", "mm", *figures]]


def test_inches_by_the_house_rule(page: ToolDrawerPage, qtbot: Any) -> None:
    desk_of(page).do(change_rule, "length_unit", "inch")
    fill(page, qtbot, name="calliper", step="0.0005", error="0.001")
    assert desk_of(page).ask(drawer)["calliper"].resolution == pytest.approx(0.0127)
    assert rows(page)[0][1:4] == ["in", "0.0005 in", "± 0.001 in"]


def test_what_is_put_away_leaves_the_drawer_and_undo_brings_it_back(
    page: ToolDrawerPage, qtbot: Any
) -> None:
    fill(page, qtbot, name="calliper", step="0.01", error="0.02")
    away = [b for b in page.findChildren(QPushButton) if b.text() == "Put the chosen one away"]
    qtbot.mouseClick(away[0], Qt.MouseButton.LeftButton)
    assert rows(page) == []
    desk_of(page).undo()
    assert [row[0] for row in rows(page)] == ["calliper"]


def test_a_check_is_overdue_after_twelve_months() -> None:
    assert not is_overdue("2025-11-17", TODAY)
    assert is_overdue("2025-11-16", TODAY)
    assert check_words(None, TODAY) == "never noted"


@pytest.mark.parametrize("text", ["2026-02-30", "1-1-1", "16.11.2026", "2026-11-16-1", "x-y-z"])
def test_a_day_that_is_none_is_refused(text: str) -> None:
    with pytest.raises(ShopTrouble, match="Accepted: year, month and day"):
        read_check_day(text, TODAY)
    assert read_check_day(" 2026-11-16 ", TODAY) == "2026-11-16"
    assert read_check_day("", TODAY) is None


def test_in_large_letters_the_figures_stand_below_each_other_and_the_name_is_whole(
    page: ToolDrawerPage, qtbot: Any, app: QApplication
) -> None:
    fill(page, qtbot, name="pressure gauge", step="0.02", error="0,04", day="2026-05-04")
    dress(app, "light", 24)
    page.resize(1000, 640)
    qtbot.waitUntil(lambda: len(rows(page)[0]) == 2)
    figures = (
        "Reads in steps of: 0.02 mm\nPermitted error: ± 0.04 mm\n"
        "Last checked: 2026-05-04\nRepeats to: 0.013 mm, usual"
    )
    assert rows(page) == [["pressure gauge", figures]]
    (table,) = page.findChildren(QTableView)
    name = table.visualRect(table.model().index(0, 0))
    assert name.width() > table.fontMetrics().horizontalAdvance("pressure gauge")
    assert name.height() >= 4 * table.fontMetrics().height()
    assert table.horizontalScrollBar().maximum() == page.horizontalScrollBar().maximum() == 0
    qtbot.mouseClick(
        next(b for b in page.findChildren(QPushButton) if b.text() == "Change the chosen one"),
        Qt.MouseButton.LeftButton,
    )
    assert named(page, QLineEdit, "Instrument").text() == "pressure gauge"
    dress(app, "light", 12)
    page.resize(1100, 760)
    qtbot.waitUntil(lambda: len(rows(page)[0]) == 6)
