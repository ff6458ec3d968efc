"""Every deed there is can be done, undone and redone; none is left out."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from random import Random
from typing import Any

import pytest

from tests.undo_machine.rooms import EVERYTHING
from tests.undo_machine.shop_under_test import ShopUnderTest

DEEDS = sorted(EVERYTHING, key=lambda deed: (deed.__module__, deed.__name__))
TRIES = 300


@pytest.fixture(scope="module")
def shop() -> Iterator[ShopUnderTest]:
    shop = ShopUnderTest()
    yield shop
    shop.close()


@pytest.mark.parametrize("deed", DEEDS, ids=lambda deed: deed.__name__)
def test_a_deed_is_done_undone_and_redone(shop: ShopUnderTest, deed: Callable[..., Any]) -> None:
    pick = Random(deed.__name__).randrange
    assert any(shop.do(deed, EVERYTHING[deed], desk % 2, pick) for desk in range(TRIES))
    shop.undo(1)
    shop.redo(0)
    shop.undo(0)
