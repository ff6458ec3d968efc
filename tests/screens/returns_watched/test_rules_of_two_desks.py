"""House rules changed at another desk: heard here, and shown before anything is read by them."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.returns_watched.screen.shop_window_box import ShopWindowBox
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.shop_window.desk import Desk
from tests.conftest import NOON


@pytest.fixture
def other(shop: ShopRecord) -> Iterator[ShopRecord]:
    """The record as another desk has it open."""
    record = open_shop(shop.folder, lambda: NOON)
    yield record
    record.close()


def heard_by(desk: Desk) -> list[Done]:
    heard: list[Done] = []
    desk.changed.connect(heard.append)
    return heard


def test_they_are_heard_with_the_next_deed(shop: ShopRecord, other: ShopRecord) -> None:
    desk = Desk(shop)
    assert desk.rules.hour_cost_cents == 6000
    heard = heard_by(desk)
    change_rule(other, "hour_cost_cents", 9500)
    desk.do(actions.add_person, "Ann")
    assert desk.rules.hour_cost_cents == 9500
    assert [done.touched for done in heard] == [{"person", "setting"}]
    desk.do(actions.add_person, "Bo")
    assert heard[-1].touched == {"person"}


def test_they_are_heard_where_a_page_shows_itself(
    shop: ShopRecord, other: ShopRecord, qtbot: QtBot
) -> None:
    desk = Desk(shop)
    box = ShopWindowBox(desk)
    qtbot.addWidget(box)
    box.show()
    change_rule(other, "distance_unit", "km")
    assert desk.rules.distance_unit == "miles"  # what the page shows still holds for what it reads
    qtbot.waitUntil(lambda: desk.rules.distance_unit == "km")
    assert any("4,828 km" in label.text() for label in box.findChildren(QLabel))


def test_other_deeds_of_the_other_desk_are_no_news_of_rules(
    shop: ShopRecord, other: ShopRecord, qtbot: QtBot
) -> None:
    desk = Desk(shop)
    before = desk.rules
    heard = heard_by(desk)
    actions.add_person(other, "Ann")
    assert desk.rules is before
    qtbot.wait(0)
    desk.do(actions.add_person, "Bo")
    assert [done.touched for done in heard] == [{"person"}]
    assert desk.rules == before
