"""Deeds that once went wrong: each stays mended."""

from __future__ import annotations

import pytest

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


def take_in(shop: ShopRecord) -> int:
    made = actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=1000)).made
    assert made is not None
    return made


def test_words_about_what_was_tried_leave_not_caught_as_it_is(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.say_not_caught(shop, one)
    actions.name_cause(shop, one, "driven 18 miles, nothing felt")
    with shop.reading() as connection:
        assert read_job(connection, one).cause_found is False
    actions.take_not_caught_back(shop, one)
    with shop.reading() as connection:
        assert read_job(connection, one).cause_found is True


def test_a_car_is_handed_over_once(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.hand_over(shop, one, 1000)
    with pytest.raises(ShopTrouble, match="handed over already"):
        actions.hand_over(shop, one, 1000)


def test_what_hangs_on_a_row_that_is_gone_is_refused_in_words(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="no longer there"):
        actions.write_finding(shop, 99, "cap crusted")
