"""Windows by part kind: read, changed, given back; what has left keeps its own."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import kinds_of
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.screen.kind_windows_box import KindWindowsBox
from desktop_app.returns_watched.stored_returns import read_watch
from desktop_app.returns_watched.stored_windows import read_kind_windows
from desktop_app.returns_watched.window import Window
from desktop_app.returns_watched.window_actions import promise_for_kind
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.watched_shop import job, vehicle


@pytest.fixture
def box(shop: ShopRecord, qtbot: QtBot) -> KindWindowsBox:
    promise_for_kind(shop, "battery", Promise(months=24))
    return _box(Desk(shop), qtbot)


def _box(desk: Desk, qtbot: QtBot) -> KindWindowsBox:
    box = KindWindowsBox(desk, kinds_of)
    qtbot.addWidget(box)
    box.resize(800, 500)
    box.show()
    return box


def _promises(shop: ShopRecord) -> dict[str, Promise]:
    with shop.reading() as connection:
        return read_kind_windows(connection)


def _says(box: KindWindowsBox, words: str) -> bool:
    return any(words in label.text() for label in box.findChildren(QLabel) if label.isVisible())


def _press(box: KindWindowsBox, qtbot: QtBot, words: str) -> None:
    for button in box.findChildren(QPushButton):
        if words in (button.text(), button.accessibleName()) and button.isVisible():
            qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
            return
    raise AssertionError(words)


def _field(box: KindWindowsBox, name: str) -> QLineEdit:
    return next(f for f in box.findChildren(QLineEdit) if f.accessibleName() == name)


def _type(box: KindWindowsBox, qtbot: QtBot, name: str, words: str) -> None:
    _field(box, name).clear()
    qtbot.keyClicks(_field(box, name), words)


def _choose(box: KindWindowsBox, name: str, words: str) -> None:
    field = next(f for f in box.findChildren(QComboBox) if f.accessibleName() == name)
    field.setCurrentIndex(field.findText(words))
    field.activated.emit(field.currentIndex())


def test_it_says_what_is_promised_and_what_a_change_means(box: KindWindowsBox) -> None:
    assert _says(box, "battery: 24 calendar months")
    assert _says(box, "the shop's promise: 90 days or 3,000 miles, whichever ends first")
    assert _says(box, "jobs that have left keep the window that they were handed over with")


def test_a_promise_is_made_and_jobs_that_left_keep_theirs(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot
) -> None:
    job(shop, vehicle(shop), "J-1", "2026-11-01", "2026-11-01", kinds=["alternator"])
    _choose(box, "Part kind", "alternator")
    assert (_field(box, "Days").text(), _field(box, "Distance").text()) == ("90", "3,000")
    _type(box, qtbot, "Days", "")
    _type(box, qtbot, "Months", "24")
    _type(box, qtbot, "Distance", "24,000")
    _choose(box, "The window ends", "when both have ended")
    _press(box, qtbot, "Keep this promise")
    assert _promises(shop)["alternator"] == Promise(None, 24, 24_000, "both")
    words = "alternator: 24 calendar months and 24,000 miles, until both have ended"
    qtbot.waitUntil(lambda: _says(box, words))
    with shop.reading() as connection:
        [one] = read_watch(connection, shop.clock().date())
    assert one.window == Window(90, 3000)


def test_a_promise_is_changed_and_given_back(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot
) -> None:
    _press(box, qtbot, "Change: battery")
    assert _field(box, "Months").text() == "24"
    _type(box, qtbot, "Months", "36")
    _press(box, qtbot, "Keep this promise")
    assert _promises(shop)["battery"] == Promise(months=36)
    qtbot.waitUntil(lambda: _says(box, "battery: 36 calendar months"))
    _press(box, qtbot, "Give back to the shop's promise: battery")
    assert _promises(shop) == {}
    assert _says(box, "has the shop's promise again")
    assert not _says(box, "battery: 36 calendar months")


def test_what_is_no_promise_is_refused_and_stays_typed(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot
) -> None:
    assert not _field(box, "Days").isEnabled()  # nobody said of which kind
    _press(box, qtbot, "Change: battery")
    assert _field(box, "Days").isEnabled()
    _type(box, qtbot, "Days", "90")
    _press(box, qtbot, "Keep this promise")
    assert _says(box, "Days or months?")
    assert _field(box, "Days").text() == "90"
    assert _promises(shop)["battery"] == Promise(months=24)


def test_another_unit_shows_the_same_promise(shop: ShopRecord, qtbot: QtBot) -> None:
    promise_for_kind(shop, "alternator", Promise(months=12, miles=12_000))
    desk = Desk(shop)
    box = _box(desk, qtbot)
    _press(box, qtbot, "Change: alternator")
    assert _field(box, "Distance").text() == "12,000"
    desk.do(change_rule, "distance_unit", "km")
    assert _field(box, "Distance").text() == "19,312"
    _press(box, qtbot, "Keep this promise")
    assert _promises(shop)["alternator"] == Promise(months=12, miles=12_000)


def test_what_is_typed_in_one_unit_is_kept_in_it(shop: ShopRecord, qtbot: QtBot) -> None:
    desk = Desk(shop)
    box = _box(desk, qtbot)
    _choose(box, "Part kind", "battery")
    _type(box, qtbot, "Distance", "10,000")
    desk.do(change_rule, "distance_unit", "km")
    assert (_field(box, "Distance").text(), _says(box, "miles")) == ("10,000", True)
    _press(box, qtbot, "Keep this promise")
    assert _promises(shop)["battery"].miles == 10_000


@pytest.mark.parametrize(
    ("answer", "months"), [("Keep what I typed", 36), ("Keep what was written", 60)]
)
@pytest.mark.parametrize("heard", [False, True], ids=["unheard", "heard"])
def test_of_two_promises_a_person_chooses(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot, answer: str, months: int, heard: bool
) -> None:
    _press(box, qtbot, "Change: battery")
    _type(box, qtbot, "Months", "36")
    promise_for_kind(shop, "battery", Promise(months=60))  # at the other desk
    if heard:
        _press(box, qtbot, "Give back to the shop's promise: battery")  # refused: 24 was shown
    _press(box, qtbot, "Keep this promise")
    assert _promises(shop)["battery"] == Promise(months=60)
    assert _field(box, "Months").text() == "36"
    assert _says(box, "60 calendar months")
    assert _says(box, "Typed here, not kept: “36 calendar months")
    _press(box, qtbot, answer)
    assert _promises(shop)["battery"] == Promise(months=months)
    assert _field(box, "Months").text() == str(months)
    assert not _says(box, "Typed here, not kept")


def test_what_nobody_touched_follows_the_other_desk(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot
) -> None:
    _press(box, qtbot, "Change: battery")
    promise_for_kind(shop, "battery", Promise(months=60))
    _press(box, qtbot, "Keep this promise")
    assert _promises(shop)["battery"] == Promise(months=60)
    assert _says(box, "Written at another desk meanwhile: 60 calendar months")
    assert _field(box, "Months").text() == "60"


def test_distances_are_typed_in_the_shops_unit(
    shop: ShopRecord, qtbot: QtBot, box: KindWindowsBox
) -> None:
    change_rule(shop, "distance_unit", "km")
    metric = KindWindowsBox(Desk(shop), kinds_of)
    qtbot.addWidget(metric)
    metric.show()
    _press(metric, qtbot, "Change: battery")
    _type(metric, qtbot, "Distance", "20,000")
    _press(metric, qtbot, "Keep this promise")
    # 20,000 km are 12,427.4 miles.
    assert _promises(shop)["battery"] == Promise(months=24, miles=12_427)
    qtbot.waitUntil(lambda: _says(metric, "battery: 24 calendar months or 20,000 km"))


def test_what_was_typed_for_one_kind_is_kept_before_another_is_chosen(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot
) -> None:
    _press(box, qtbot, "Change: battery")
    _type(box, qtbot, "Months", "36")
    kinds = box.findChildren(QComboBox)[0]
    _choose(box, "Part kind", "disc brake pads")
    assert _promises(shop)["battery"] == Promise(months=36)
    _type(box, qtbot, "Days", "never")
    _choose(box, "Part kind", "battery")
    assert kinds.currentText() == "disc brake pads"
    assert _field(box, "Days").text() == "never"
    assert "brake-pads" not in _promises(shop)


@pytest.mark.parametrize("asked", [False, True], ids=["not asked yet", "asked"])
def test_who_chooses_another_kind_is_asked_first_which_promise_holds(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot, asked: bool
) -> None:
    _press(box, qtbot, "Change: battery")
    _type(box, qtbot, "Months", "36")
    promise_for_kind(shop, "battery", Promise(months=60))  # at the other desk
    if asked:
        _press(box, qtbot, "Keep this promise")
    _choose(box, "Part kind", "alternator")
    assert box.findChildren(QComboBox)[0].currentText() == "battery"
    assert _field(box, "Months").text() == "36"
    assert _says(box, "Typed here, not kept: “36 calendar months")
    _press(box, qtbot, "Keep what I typed")
    assert _promises(shop) == {"battery": Promise(months=36)}


def test_what_is_kept_on_the_way_to_another_kind_is_said(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot
) -> None:
    _press(box, qtbot, "Change: battery")
    _type(box, qtbot, "Months", "36")
    _choose(box, "Part kind", "alternator")
    assert _says(box, "Kept for battery, from now on: 36 calendar months")
    assert _field(box, "Days").text() == "90"


def test_what_is_typed_stands_beside_ones_own_giving_back(
    shop: ShopRecord, box: KindWindowsBox, qtbot: QtBot
) -> None:
    _press(box, qtbot, "Change: battery")
    _type(box, qtbot, "Months", "36")
    _press(box, qtbot, "Give back to the shop's promise: battery")
    _press(box, qtbot, "Keep this promise")
    assert not _says(box, "at another desk")
    assert _promises(shop) == {"battery": Promise(months=36)}
