"""What grows with the text of the window, and what stays as large when it is pressed."""

from __future__ import annotations

from itertools import pairwise

import pytest
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QLineEdit,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.long_button import LongButton
from desktop_app.shop_window.look import dress
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.worded_rows import WordedRows, WordedTable, lay_out_rows
from desktop_app.weekly_report.screen.monday_book_page import MondayBookPage

SIZES = (9, 12, 16, 20, 24)
LOOKS = ("light", "dark", "high contrast")


@pytest.fixture
def page(qtbot: QtBot) -> QWidget:
    page = QWidget()
    qtbot.addWidget(page)
    QVBoxLayout(page)
    return page


def show(qtbot: QtBot, page: QWidget, *widgets: QWidget) -> None:
    """Show these below each other."""
    for widget in widgets:
        page.layout().addWidget(widget)
    page.show()
    page.activateWindow()
    qtbot.waitUntil(page.isActiveWindow)


def test_a_heading_is_larger_than_the_text_and_a_title_larger_still(
    app: QApplication, qtbot: QtBot, page: QWidget
) -> None:
    labels = [plain_label("Proof", look) for look in ("", "heading", "title")]
    show(qtbot, page, *labels)
    for size in SIZES:
        dress(app, "light", size)
        text, heading, title = (label.fontMetrics().height() for label in labels)
        assert text < heading < title


def test_fields_and_the_rows_of_the_rail_grow_with_the_text(
    app: QApplication, qtbot: QtBot, page: QWidget
) -> None:
    field, choice, rail, row = QLineEdit(), QComboBox(), QWidget(), QPushButton("Heard")
    rail.setObjectName("rail")
    QVBoxLayout(rail).addWidget(row)
    show(qtbot, page, field, choice, rail)
    heights = []
    for size in SIZES:
        dress(app, "light", size)
        heights.append((field.sizeHint().height(), row.sizeHint().height()))
        assert field.sizeHint().height() >= field.fontMetrics().height() + 12
    for (field_before, row_before), (field_after, row_after) in pairwise(heights[1:]):
        assert field_after > field_before
        assert row_after > row_before


@pytest.mark.parametrize("look", LOOKS)
def test_what_stands_in_a_row_is_as_high_as_the_field_pressed_and_focused_or_not(
    app: QApplication, qtbot: QtBot, page: QWidget, look: str
) -> None:
    widgets = (QLineEdit(), QComboBox(), QPushButton("All kinds"), QToolButton())
    widgets[-1].setText("chip")
    show(qtbot, page, *widgets)
    dress(app, look, 12)
    (height,) = {one.sizeHint().height() for one in widgets}
    for one in widgets:
        one.setFocus()
        qtbot.waitUntil(one.hasFocus)
        assert one.sizeHint().height() == height


def test_a_drop_down_is_drawn_flat_as_the_fields_are(
    app: QApplication, qtbot: QtBot, page: QWidget
) -> None:
    field, choice = QLineEdit(), QComboBox()
    show(qtbot, page, field, choice)
    for look in LOOKS:
        dress(app, look, 12)
        inside = []
        for one in (field, choice):
            picture = one.grab().toImage()
            column = range(6, picture.height() - 6)
            inside.append({picture.pixelColor(6, y).name() for y in column})
        assert inside[0] == inside[1] == {app.palette().base().color().name()}


def test_a_sentence_on_a_button_goes_on_in_the_next_line(qtbot: QtBot, page: QWidget) -> None:
    words = "→  Measure tip height above the seat on both parts (depth rod)."
    button = LongButton(words)
    show(qtbot, page, button)
    page.resize(900, 200)
    qtbot.waitUntil(lambda: button.width() > 800)
    low = button.sizeHint().height()
    page.resize(300, 200)
    qtbot.waitUntil(lambda: button.sizeHint().height() >= low + button.fontMetrics().height())
    assert button.sizeHint().width() <= 300
    assert button.text() == words


def test_fields_stand_below_each_other_where_they_have_no_room(qtbot: QtBot, page: QWidget) -> None:
    fields = [LineField(name, str) for name in ("Plate", "VIN")]
    for field in fields:
        field.setMinimumWidth(200)
    rows = FieldRows([Labelled(one.accessibleName(), one) for one in fields], 2)
    show(qtbot, page, rows)
    page.resize(600, 300)
    qtbot.waitUntil(lambda: fields[0].mapTo(page, fields[0].rect().topLeft()).x() < 300)
    qtbot.waitUntil(lambda: fields[1].mapTo(page, fields[1].rect().topLeft()).x() > 250)
    page.resize(300, 300)
    qtbot.waitUntil(lambda: fields[1].mapTo(page, fields[1].rect().topLeft()).x() < 50)


def test_what_is_refused_is_signed_and_not_greyed(
    app: QApplication, qtbot: QtBot, page: QWidget
) -> None:
    dress(app, "light", 12)
    box = Labelled("Price", LineField("Price", str), "in $")
    show(qtbot, page, box)
    (beneath,) = (one for one in box.findChildren(type(plain_label(""))) if one.text() == "in $")
    greyed = beneath.palette().windowText().color()
    box.refuse("“1300?” is not an amount of money.")
    assert beneath.text() == "✎ “1300?” is not an amount of money."
    assert beneath.palette().windowText().color() != greyed
    box.refuse("")
    assert beneath.text() == "in $"
    assert beneath.palette().windowText().color() == greyed


def test_a_week_is_read_whole_after_the_text_has_grown(
    app: QApplication, qtbot: QtBot, shop: ShopRecord
) -> None:
    dress(app, "light", SIZES[0])
    desk = Desk(shop)
    page = MondayBookPage(desk, {})
    qtbot.addWidget(page)
    page.show()
    (field,) = page.findChildren(QLineEdit)
    small = field.width()
    dress(app, "light", SIZES[-1])
    page.came_here()  # as who comes back from House Rules
    assert field.width() > small
    assert field.contentsRect().width() > field.fontMetrics().horizontalAdvance(field.text())
    desk.errands.finish()


def test_columns_grow_with_the_text_also_those_that_somebody_drew(
    app: QApplication, qtbot: QtBot, page: QWidget
) -> None:
    dress(app, "light", 12)
    rows: WordedRows[str] = WordedRows(("Job", "Concern", "Car"), lambda one: (one, one, one))
    rows.show_things(("J-101",))
    table = WordedTable("jobs")
    lay_out_rows(table, rows, (90, 140))
    show(qtbot, page, table)
    table.setColumnWidth(1, 200)
    dress(app, "light", 24)
    assert [table.columnWidth(one) for one in (0, 1)] == [180, 400]
    dress(app, "light", 12)
    assert [table.columnWidth(one) for one in (0, 1)] == [90, 200]
