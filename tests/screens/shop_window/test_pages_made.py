"""A page is made when it is wanted, or a step at a time before; and never twice."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QLabel, QStackedWidget, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.pages_made import PagesMade, Steps


class Kitchen:
    """Makes a page in two steps, and notes what it did."""

    def __init__(self, bot: QtBot) -> None:
        self.did: list[str] = []
        self.stack = QStackedWidget()
        bot.addWidget(self.stack)
        self.refuses = False
        self.pages = PagesMade(self.stack)
        self.pages.add("Long", self._long)
        self.pages.add("Short", self._short)

    def shown(self) -> list[QWidget]:
        return [self.stack.widget(place) for place in range(self.stack.count())]

    def _long(self) -> Steps:
        self.did.append("first")
        one = QLabel("first")
        yield one
        if self.refuses:
            raise ValueError("no")
        self.did.append("second")
        other = QLabel("second")
        yield other
        page = QWidget()
        column = QVBoxLayout(page)
        column.addWidget(one)
        column.addWidget(other)
        return page

    def _short(self) -> QWidget:
        return QLabel("page")


@pytest.fixture
def kitchen(qtbot: QtBot) -> Kitchen:
    return Kitchen(qtbot)


def test_a_step_at_a_time(kitchen: Kitchen) -> None:
    assert not kitchen.pages.go_on_making("Long")
    assert kitchen.did == ["first"]
    assert kitchen.shown() == []
    assert not kitchen.pages.go_on_making("Long")
    assert kitchen.pages.go_on_making("Long")
    assert kitchen.shown() == [kitchen.pages.page("Long")]
    assert kitchen.pages.go_on_making("Long")
    assert kitchen.did == ["first", "second"]


def test_one_that_is_wanted_meanwhile_is_made_to_its_end(kitchen: Kitchen) -> None:
    kitchen.pages.go_on_making("Long")
    assert kitchen.pages.whole == {}
    page = kitchen.pages.page("Long")
    assert kitchen.did == ["first", "second"]
    assert kitchen.shown() == [page]
    assert kitchen.pages.whole == {"Long": page}


def test_one_without_steps_is_whole_at_once(kitchen: Kitchen) -> None:
    assert kitchen.pages.go_on_making("Short")
    assert kitchen.shown() == [kitchen.pages.page("Short")]


@pytest.mark.parametrize("steps", [1, 3])
def test_one_that_is_let_go_is_made_anew(kitchen: Kitchen, steps: int) -> None:
    for _ in range(steps):
        kitchen.pages.go_on_making("Long")
    kitchen.pages.drop("Long")
    assert kitchen.pages.whole == {}
    kitchen.did.clear()
    kitchen.pages.page("Long")
    assert kitchen.did == ["first", "second"]


def test_one_that_could_not_be_made_is_begun_anew(kitchen: Kitchen) -> None:
    kitchen.refuses = True
    kitchen.pages.go_on_making("Long")
    with pytest.raises(ValueError, match="no"):
        kitchen.pages.go_on_making("Long")
    assert kitchen.shown() == []
    kitchen.refuses = False
    kitchen.pages.page("Long")
    assert kitchen.did == ["first", "first", "second"]


def test_only_places_that_were_added_are_known(kitchen: Kitchen) -> None:
    assert "Long" in kitchen.pages
    assert "Drive" not in kitchen.pages


def test_parts_end_with_the_window_and_are_seen_with_the_page(
    kitchen: Kitchen, qtbot: QtBot
) -> None:
    kitchen.stack.show()
    kitchen.pages.go_on_making("Long")
    (part,) = (one for one in kitchen.stack.findChildren(QLabel) if one.text() == "first")
    assert not part.isVisible()
    kitchen.stack.setCurrentWidget(kitchen.pages.page("Long"))
    qtbot.waitUntil(part.isVisible)
