"""The shop's window on House Rules: said in months or one limit alone, refused without an end."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.screen.shop_window_box import ShopWindowBox
from desktop_app.returns_watched.stored_windows import shop_promise
from desktop_app.returns_watched.window_actions import promise_of_shop
from desktop_app.shop_record.house_rules import change_rule, read_rules
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import unsaved_fields


@pytest.fixture
def box(shop: ShopRecord, qtbot: QtBot) -> ShopWindowBox:
    box = ShopWindowBox(Desk(shop))
    qtbot.addWidget(box)
    box.resize(800, 400)
    box.show()
    return box


def _promise(shop: ShopRecord) -> Promise:
    with shop.reading() as connection:
        return shop_promise(read_rules(connection))


def _says(box: ShopWindowBox, words: str) -> bool:
    return any(words in label.text() for label in box.findChildren(QLabel) if label.isVisible())


def _field(box: ShopWindowBox, name: str) -> QLineEdit:
    return next(f for f in box.findChildren(QLineEdit) if f.accessibleName() == name)


def _type(box: ShopWindowBox, qtbot: QtBot, **words: str) -> None:
    for name, text in words.items():
        _field(box, name).clear()
        qtbot.keyClicks(_field(box, name), text)


def _keep(box: ShopWindowBox, qtbot: QtBot) -> None:
    keep = next(b for b in box.findChildren(QPushButton) if b.text() == "Keep the shop's window")
    qtbot.mouseClick(keep, Qt.MouseButton.LeftButton)


def test_the_shop_promises_calendar_months(
    shop: ShopRecord, box: ShopWindowBox, qtbot: QtBot
) -> None:
    assert _says(box, "Now: 90 days or 3,000 miles, whichever ends first.")
    _type(box, qtbot, Days="", Months="12", Distance="12,000")
    _keep(box, qtbot)
    assert _promise(shop) == Promise(months=12, miles=12_000)
    qtbot.waitUntil(
        lambda: _says(box, "Now: 12 calendar months or 12,000 miles, whichever ends first.")
    )
    assert shop.can_undo() == "Change the shop's window"


def test_one_limit_alone_will_do_and_none_is_refused(
    shop: ShopRecord, box: ShopWindowBox, qtbot: QtBot
) -> None:
    _type(box, qtbot, Days="", Distance="")
    _keep(box, qtbot)
    assert _says(box, "A window without any limit never ends. Say days, months or miles.")
    assert _promise(shop) == Promise(days=90, miles=3000)
    _type(box, qtbot, Distance="5000")
    _keep(box, qtbot)
    assert _promise(shop) == Promise(miles=5000)
    qtbot.waitUntil(lambda: _says(box, "Now: 5,000 miles."))
    ends = next(f for f in box.findChildren(QComboBox))
    ends.setCurrentIndex(ends.findText("when both have ended"))
    _type(box, qtbot, Days="90", Months="3")
    _keep(box, qtbot)
    assert _says(box, "Days or months?")
    _type(box, qtbot, Days="")
    _keep(box, qtbot)
    assert _promise(shop) == Promise(months=3, miles=5000, rule="both")


def test_who_goes_on_to_something_else_keeps_what_was_typed(shop: ShopRecord, qtbot: QtBot) -> None:
    page, elsewhere = QWidget(), QLineEdit()
    column = QVBoxLayout(page)
    box = ShopWindowBox(Desk(shop))
    column.addWidget(box)
    column.addWidget(elsewhere)
    qtbot.addWidget(page)
    with qtbot.waitActive(page):
        page.show()
        page.activateWindow()
    days = _field(box, "Days")
    days.setFocus()
    _type(box, qtbot, Days="60")
    _field(box, "Distance").setFocus()
    assert _promise(shop).days == 90  # the promise is still being typed
    elsewhere.setFocus()
    assert _promise(shop) == Promise(days=60, miles=3000)
    assert elsewhere.hasFocus()
    _type(box, qtbot, Days="soon")
    assert [field.accessibleName() for field in unsaved_fields(page)] == ["The shop's window"]


def test_what_is_typed_stays_while_another_rule_is_changed(shop: ShopRecord, qtbot: QtBot) -> None:
    desk = Desk(shop)
    box = ShopWindowBox(desk)
    qtbot.addWidget(box)
    _type(box, qtbot, Days="45")
    desk.do(change_rule, "shop_name", "Tin Heron Garage")
    assert _field(box, "Days").text() == "45"


def test_nothing_typed_undoes_nothing(shop: ShopRecord, box: ShopWindowBox, qtbot: QtBot) -> None:
    promise_of_shop(shop, Promise(months=24, miles=24_000))  # at the other desk
    change_rule(shop, "distance_unit", "km")
    _keep(box, qtbot)
    assert _promise(shop) == Promise(months=24, miles=24_000)
    assert _says(box, "Written at another desk meanwhile: 24 calendar months or 24,000 miles")
    assert (_field(box, "Months").text(), _field(box, "Distance").text()) == ("24", "38,624")


def test_of_two_promises_of_the_shop_a_person_chooses(
    shop: ShopRecord, box: ShopWindowBox, qtbot: QtBot
) -> None:
    _type(box, qtbot, Days="120")
    promise_of_shop(shop, Promise(months=24))
    _keep(box, qtbot)
    assert _promise(shop) == Promise(months=24)
    assert _says(box, "Typed here, not kept: “120 days or 3,000 miles")
    mine = next(b for b in box.findChildren(QPushButton) if b.text() == "Keep what I typed")
    qtbot.mouseClick(mine, Qt.MouseButton.LeftButton)
    assert _promise(shop) == Promise(days=120, miles=3000)
    assert _says(box, "Kept, from now on: 120 days or 3,000 miles")
