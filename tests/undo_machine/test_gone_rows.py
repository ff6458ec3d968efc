"""A page still shows what another desk has taken out: every deed says so, and changes nothing."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from random import Random
from typing import Any

import pytest

from desktop_app.repair_jobs.actions import write_concern, write_up
from desktop_app.repair_jobs.write_up import WriteUp
from tests.undo_machine.at_the_counter import SYMPTOMS
from tests.undo_machine.deeds_to_do import GONE, using
from tests.undo_machine.rooms import EVERYTHING
from tests.undo_machine.shop_under_test import ShopUnderTest
from tests.undo_machine.test_every_deed import DEEDS

TRIES = 5


@pytest.fixture(scope="module")
def shop() -> Iterator[ShopUnderTest]:
    shop = ShopUnderTest()
    yield shop
    shop.close()


@pytest.mark.parametrize("deed", DEEDS, ids=lambda deed: deed.__name__)
def test_a_deed_on_rows_that_are_gone_raises_no_other_trouble(
    shop: ShopUnderTest, deed: Callable[..., Any]
) -> None:
    pick = Random(deed.__name__).randrange
    for _ in range(TRIES):
        if shop.do_on_gone_rows(deed, EVERYTHING[deed], pick):
            shop.undo(0)


def test_a_symptom_that_is_read_twice_is_kept_once(shop: ShopUnderTest) -> None:
    twice = (SYMPTOMS[3], SYMPTOMS[3])
    assert shop.do(write_concern, lambda seen: using(1, "stalls", twice), 0, Random(1).randrange)
    shop.undo(0)


def test_a_car_that_is_gone_is_not_taken_in(shop: ShopUnderTest) -> None:
    said = using(WriteUp("stalls", vehicle_id=GONE, odometer=50_000))
    assert not shop.do(write_up, lambda seen: said, 0, Random(1).randrange)
    assert shop.refused == "That car is no longer there."
