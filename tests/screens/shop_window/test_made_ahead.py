"""Pages are made ahead while there is rest, a shop to read, and somebody who may want them."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.server.server_trouble import server_lost
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.keys import press_by
from desktop_app.shop_window.keys_page import keys_by_place
from desktop_app.shop_window.made_ahead import MadeAhead
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.pages_made import Steps
from desktop_app.shop_window.place_names import FIRST_RULES

NAMES = ("One", "Two", "Three")


class Shop:
    """A window with three places, of which one may not be made."""

    def __init__(self, desk: Desk, window: MainWindow) -> None:
        self.desk, self.window = desk, window
        self.begun: list[str] = []
        self.refuses: dict[str, Exception] = {}
        for name in NAMES:
            window.add_place(name, lambda name=name: self._steps(name))
        window.add_place("Here", QLabel)
        window.add_place(FIRST_RULES, QLabel)
        window.go_to("Here")

    def _steps(self, name: str) -> Steps:
        self.begun.append(name)
        part = QPushButton(name)
        press_by(part, "Ctrl+L")
        yield part
        if name in self.refuses:
            raise self.refuses[name]
        yield QWidget()
        return QLabel(name)

    def made(self) -> tuple[str, ...]:
        return tuple(name for name in NAMES if self.window.has_page(name))


@pytest.fixture
def at(desk: Desk, qtbot: QtBot) -> Iterator[Shop]:
    window = MainWindow()
    window.resize(1366, 768)
    qtbot.addWidget(window)
    window.attend(desk)
    yield Shop(desk, window)
    desk.closing.emit()


def test_all_are_made_in_their_order(at: Shop, qtbot: QtBot) -> None:
    MadeAhead(at.window, at.desk, (*NAMES, "One"))
    qtbot.waitUntil(lambda: at.made() == NAMES, timeout=5000)
    qtbot.wait(300)
    assert at.begun == list(NAMES)
    assert at.window.here() == "Here"


@pytest.mark.parametrize("trouble", [ShopTrouble("The card is away."), OSError("card")])
def test_one_that_cannot_be_made_is_left_to_whoever_goes_there(
    at: Shop, qtbot: QtBot, trouble: Exception
) -> None:
    at.refuses["Two"] = trouble
    with qtbot.captureExceptions() as told:
        MadeAhead(at.window, at.desk, NAMES)
        qtbot.waitUntil(lambda: at.made() == ("One", "Three"), timeout=5000)
        qtbot.wait(300)
    assert at.begun == list(NAMES)
    assert [one for _, one, _ in told] == ([] if isinstance(trouble, ShopTrouble) else [trouble])
    del at.refuses["Two"]
    at.window.go_to("Two")
    assert at.made() == NAMES


def test_none_while_the_shops_server_is_away(at: Shop, qtbot: QtBot) -> None:
    at.desk.record.away = server_lost()
    MadeAhead(at.window, at.desk, NAMES)
    qtbot.wait(400)
    assert at.begun == []
    at.desk.record.away = None
    qtbot.waitUntil(lambda: at.made() == NAMES, timeout=5000)


def test_none_while_a_new_shop_is_set_up(at: Shop, qtbot: QtBot) -> None:
    at.window.go_to(FIRST_RULES)
    MadeAhead(at.window, at.desk, NAMES)
    qtbot.wait(400)
    assert at.begun == []
    at.window.go_to("Here")
    qtbot.waitUntil(lambda: at.made() == NAMES, timeout=5000)


def test_what_nobody_went_to_is_made_anew_and_what_somebody_saw_stays(
    at: Shop, qtbot: QtBot
) -> None:
    maker = MadeAhead(at.window, at.desk, NAMES)
    qtbot.waitUntil(lambda: at.made() == NAMES, timeout=5000)
    at.window.go_to("Two")
    at.window.go_to("Here")
    seen = at.window.page("Two")
    at.window.let_unwanted_go()
    assert at.made() == ("Two",)
    maker.begin_anew()
    qtbot.waitUntil(lambda: at.made() == NAMES, timeout=5000)
    assert at.window.page("Two") is seen
    assert at.begun == ["One", "Two", "Three", "One", "Three"]


def test_keys_of_a_page_to_come_are_not_listed_and_go_with_it(at: Shop, qtbot: QtBot) -> None:
    assert not at.window.go_on_making("One")
    assert "Ctrl+L" not in keys_by_place(at.window, "Here")[1]
    at.window.let_unwanted_go()
    qtbot.waitUntil(lambda: not at.window.parts_to_come().children())
    assert "Ctrl+L" not in keys_by_place(at.window, "Here")[1]


def test_a_part_of_a_page_that_cannot_be_made_goes(at: Shop, qtbot: QtBot) -> None:
    at.refuses["One"] = ShopTrouble("The card is away.")
    at.window.go_on_making("One")
    with pytest.raises(ShopTrouble):
        at.window.go_on_making("One")
    qtbot.waitUntil(lambda: not at.window.parts_to_come().children())
