"""It's Back: a return is looked at, judged, and the judgement taken back."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QListView, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.screen.its_back_page import ItsBackPage
from desktop_app.returns_watched.stored_returns import read_returns
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, WordsField
from tests.watched_shop import a_week_of_returns, job, vehicle


@pytest.fixture
def desk(shop: ShopRecord) -> Iterator[Desk]:
    desk = Desk(shop)
    yield desk
    desk.errands.finish()


@pytest.fixture
def page(shop: ShopRecord, desk: Desk, qtbot: QtBot) -> ItsBackPage:
    a_week_of_returns(shop)
    return _opened(desk, qtbot)


def _opened(desk: Desk, qtbot: QtBot) -> ItsBackPage:
    page = ItsBackPage(desk, {})
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    page.came_here()
    _settle(desk, qtbot)
    return page


def _settle(desk: Desk, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not desk.errands.busy())


def _list(page: ItsBackPage) -> list[str]:
    model = page.findChild(QListView).model()
    return [model.index(row, 0).data() for row in range(model.rowCount())]


def _button(page: ItsBackPage, name: str) -> QPushButton:
    for button in page.findChildren(QPushButton):
        if button.isVisibleTo(page) and name in (button.text(), button.accessibleName()):
            return button
    raise LookupError(name)


def _press(page: ItsBackPage, qtbot: QtBot, name: str) -> None:
    qtbot.mouseClick(_button(page, name), Qt.MouseButton.LeftButton)


def _says(page: ItsBackPage, words: str) -> bool:
    return any(words in x.text() for x in page.findChildren(QLabel) if x.isVisibleTo(page))


def _kept(shop: ShopRecord, earlier: str, later: str) -> ReturnRow:
    with shop.reading() as connection:
        rows = read_returns(connection)
    return next(row for row in rows if (row.earlier, row.later) == (earlier, later))


def test_what_waits_stands_first_and_is_shown_then_and_now(page: ItsBackPage) -> None:
    assert len(_list(page)) == 4
    assert "J-162 after J-140" in _list(page)[0]
    assert "22 days only: ◇ to be judged" in _list(page)[0]
    assert _says(page, "4 returns wait for a judgement")
    assert _says(page, "Why it is here: same system: charging.")
    assert _button(page, "Then: J-140").isEnabled()
    assert _says(page, "2026-11-12 to 2026-11-15, odometer not read")


def test_choosing_a_return_by_keyboard_shows_it(page: ItsBackPage, qtbot: QtBot) -> None:
    view = page.findChild(QListView)
    view.setFocus()
    qtbot.keyClick(view, Qt.Key.Key_End)
    assert _says(page, "41 days, 880 mi after hand-over, inside the window, 46% of it used")
    with qtbot.waitSignal(page.job_chosen) as opened:
        _press(page, qtbot, "Now: J-131")
    assert opened.args == [2]


@pytest.mark.parametrize("judgement", list(Judgement))
def test_each_answer_is_one_press_with_its_sentence(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot, judgement: Judgement
) -> None:
    name = judgement.value.capitalize()
    assert _says(page, judgement.means)
    _press(page, qtbot, f"{name}: {judgement.means}")
    assert _kept(shop, "J-140", "J-162").judgement is judgement
    assert _says(page, f"Judged “{judgement.value}” on 2026-11-16")
    assert _button(page, name).isChecked()
    _settle(desk, qtbot)
    assert judgement.value in _list(page)[-1] + _list(page)[-2]


def test_a_judgement_can_be_taken_back_and_undone(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    _press(page, qtbot, "Unrelated")
    _press(page, qtbot, "Take the judgement back")
    assert _kept(shop, "J-140", "J-162").judgement is None
    assert _says(page, "Nobody has judged it yet")
    assert not _button(page, "Take the judgement back").isEnabled()
    desk.undo()
    assert _button(page, "Unrelated").isChecked()
    _settle(desk, qtbot)


def test_why_cause_cost_and_promise_save_themselves(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    fields = {field.accessibleName(): field for field in page.findChildren(WordsField)}
    qtbot.keyClicks(fields["Why"], "plug left hanging")
    fields["Why"].save_now()
    cost = next(f for f in page.findChildren(LineField) if "cost" in f.accessibleName())
    qtbot.keyClicks(cost, "120,50")
    qtbot.keyClick(cost, Qt.Key.Key_Return)
    cause = next(c for c in page.findChildren(QComboBox) if "Cause" in c.accessibleName())
    cause.setFocus()
    qtbot.keyClicks(cause, "fitted")
    cause.activated.emit(cause.currentIndex())
    row = _kept(shop, "J-140", "J-162")
    assert (row.why, row.cost_cents, row.cause_class) == (
        "plug left hanging",
        12_050,
        "fitted-badly",
    )
    qtbot.keyClicks(fields["What will be done differently"], "look twice")
    page.findChild(QListView).setCurrentIndex(page.findChild(QListView).model().index(1, 0))
    assert _kept(shop, "J-140", "J-162").change_promised == "look twice"
    shown = [field for field in page.findChildren(WordsField) if field.isVisibleTo(page)]
    assert [field.toPlainText() for field in shown] == ["", ""]
    _settle(desk, qtbot)


def test_an_odd_cost_says_what_is_accepted_and_keeps_the_text(
    page: ItsBackPage, shop: ShopRecord, qtbot: QtBot
) -> None:
    cost = next(f for f in page.findChildren(LineField) if "cost" in f.accessibleName())
    qtbot.keyClicks(cost, "a lot")
    qtbot.keyClick(cost, Qt.Key.Key_Return)
    assert cost.text() == "a lot"
    assert _says(page, "120.50")
    assert _kept(shop, "J-140", "J-162").cost_cents is None


def test_two_vehicles_are_not_proposed_again(page: ItsBackPage, desk: Desk, qtbot: QtBot) -> None:
    _press(page, qtbot, "These are two vehicles")
    _settle(desk, qtbot)
    assert not any("J-162" in row for row in _list(page))
    desk.undo()
    _settle(desk, qtbot)
    assert any("J-162" in row for row in _list(page))


def test_next_goes_to_what_still_waits(page: ItsBackPage, desk: Desk, qtbot: QtBot) -> None:
    with qtbot.waitSignal(page.waiting) as told:
        _press(page, qtbot, "Unrelated")
        _settle(desk, qtbot)
    assert told.args == [3]
    _press(page, qtbot, "Next one to judge")
    assert _says(page, "J-160") or _button(page, "Now: J-160")
    assert page.findChild(QListView).currentIndex().row() == 0


def test_a_pair_asked_for_is_shown_even_if_it_is_older_than_the_list(
    shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    car = vehicle(shop)
    then = job(shop, car, "J-1", "2024-05-01", "2024-05-01")
    now = job(shop, car, "J-2", "2024-06-01", "2024-06-01")
    page = _opened(desk, qtbot)
    assert _list(page) == []
    assert _says(page, "No car has come back within a year")
    page.show_pair(then, now)
    assert _button(page, "Then: J-1")
    _press(page, qtbot, "Same symptom")
    assert _kept(shop, "J-1", "J-2").judgement is Judgement.SAME_SYMPTOM
    _settle(desk, qtbot)


def test_a_concern_that_looks_like_markup_stays_words(
    shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-05-01", "2026-05-01", concern="<b>shakes</b>")
    job(shop, car, "J-2", "2026-06-01", None, concern="<img src='x.png'> again")
    page = _opened(desk, qtbot)
    assert _says(page, "<b>shakes</b>")
    for label in page.findChildren(QLabel):
        assert label.textFormat() == Qt.TextFormat.PlainText
