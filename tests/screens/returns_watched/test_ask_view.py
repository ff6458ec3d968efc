"""Ask the customer: what was told is noted with the answer, and nothing typed is lost."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored import Vehicle
from desktop_app.returns_watched.customer_answers import CustomerSaid
from desktop_app.returns_watched.screen.ask_view import AskView
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_watch_place import read_watch_place
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, Tick
from tests.watched_shop import job, vehicle

ODOMETER, WORDS = "Odometer as told", "In the customer's words"


class Asking:
    """The list as a person sees it who has the telephone in hand; it follows the record."""

    def __init__(self, shop: ShopRecord, bot: QtBot) -> None:
        self.shop, self.bot, self.desk = shop, bot, Desk(shop)
        self.view = AskView(self.desk)
        bot.addWidget(self.view)
        self.view.resize(1000, 600)
        self.show()
        self.desk.changed.connect(lambda _done: self.show())
        self.view.show()

    def show(self) -> None:
        place = self.desk.ask(read_watch_place, self.desk.today())
        self.view.show_asks(place.to_ask, 14)

    def line(self, name: str) -> LineField:
        lines = self.view.findChildren(LineField)
        return next(one for one in lines if one.accessibleName() == name)

    def type_into(self, name: str, text: str) -> None:
        line = self.line(name)
        line.setFocus()
        line.selectAll()
        self.bot.keyClicks(line, text)
        self.bot.keyClick(line, Qt.Key.Key_Return)

    def press(self, words: str) -> None:
        buttons = [b for b in self.view.findChildren(QPushButton) if b.text() == words]
        self.bot.mouseClick(buttons[0], Qt.MouseButton.LeftButton)

    def tick(self) -> Tick:
        return self.view.findChild(Tick)

    def says(self, words: str) -> bool:
        return any(words in one.text() for one in self.view.findChildren(QLabel))

    def kept(self, job_id: int) -> CustomerSaid | None:
        with self.shop.reading() as connection:
            return next(iter(answers_of_job(connection, job_id)), None)


@pytest.fixture
def asking(shop: ShopRecord, qtbot: QtBot) -> Iterator[Asking]:
    """Two customers to ask; the first one's car counts in km."""
    for number in (1, 2):
        often = {"fault_every": 3, "fault_every_unit": "days"}
        car = vehicle(shop, plate=f"P {number}")
        job(shop, car, f"J-{number}", "2026-10-01", f"2026-10-0{number}", 100_000, **often)
    with shop.deed("Count in km") as deed:
        deed.change(Vehicle, 1, odometer_unit="km")
    one = Asking(shop, qtbot)
    yield one
    one.desk.errands.finish()


def test_odometer_and_words_are_noted_with_the_answer(asking: Asking) -> None:
    assert asking.says("in km")
    asking.type_into(ODOMETER, "101,500")
    asking.type_into(WORDS, "once, in the rain")
    asking.press("Same trouble")
    said = asking.kept(1)
    assert said is not None
    assert (said.answer.value, said.odometer_told, said.words) == (
        *("same trouble", 101_500, "once, in the rain"),
    )


def test_a_bill_that_was_seen_is_noted_with_the_same_trouble_alone(
    asking: Asking, qtbot: QtBot
) -> None:
    for job_id, answer, source in ((1, "Same trouble", "paper"), (2, "Fine", "told")):
        asking.view._table.selectRow(job_id - 1)
        qtbot.mouseClick(asking.tick(), Qt.MouseButton.LeftButton)
        again = Asking(asking.shop, qtbot)  # it waits with its customer, over closing too
        again.view._table.selectRow(job_id - 1)
        assert again.tick().isChecked()
        asking.press(answer)
        said = asking.kept(job_id)
        assert said is not None
        assert said.source == source
        assert not asking.tick().isChecked()


def test_what_was_told_stays_with_its_customer(asking: Asking, qtbot: QtBot) -> None:
    asking.type_into(WORDS, "rings back")
    asking.press("Fine")
    assert asking.line(WORDS).text() == ""  # the next one's
    assert asking.says("in miles")
    asking.type_into(WORDS, "asked his wife")
    asking.desk.undo()
    asking.view._table.selectRow(0)
    assert asking.line(WORDS).text() == ""
    asking.view._table.selectRow(1)
    assert asking.line(WORDS).text() == "asked his wife"
    again = Asking(asking.shop, qtbot)  # the program was closed meanwhile
    again.view._table.selectRow(1)
    assert again.line(WORDS).text() == "asked his wife"


def test_an_odometer_that_is_none_is_said_and_nothing_is_noted(asking: Asking) -> None:
    asking.type_into(ODOMETER, "99,000")
    assert asking.says("Lower than when the car was here (100,000 km). Was it heard right?")
    asking.type_into(ODOMETER, "about a lot")
    asking.press("Fine")
    assert asking.kept(1) is None
    assert asking.line(ODOMETER).text() == "about a lot"
    asking.type_into(ODOMETER, "100,400")
    asking.press("Fine")
    said = asking.kept(1)
    assert said is not None
    assert said.odometer_told == 100_400
