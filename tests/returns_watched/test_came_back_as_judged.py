"""What counts as having come back is the same for whoever says what kind of work a job was."""

from __future__ import annotations

import pytest

from desktop_app.repair_jobs.stored_counted import came_back_as_judged
from desktop_app.returns_watched.actions import judge_return
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.shop_record.record import ShopRecord
from tests.watched_shop import a_week_of_returns


@pytest.mark.parametrize("judgement", list(Judgement))
def test_every_judgement(shop: ShopRecord, judgement: Judgement) -> None:
    a_week_of_returns(shop)
    shop.who = "Ana"
    judge_return(shop, 1, 2, judgement.value)
    with shop.reading() as connection:
        assert came_back_as_judged(connection, 1) == judgement.is_comeback
