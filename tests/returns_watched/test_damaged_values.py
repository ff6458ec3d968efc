"""A value that was changed from outside ends in a sentence with the value, not in a traceback."""

from __future__ import annotations

import pytest

from desktop_app.returns_watched.stored_returns import read_returns
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged
from tests.from_outside import damage
from tests.watched_shop import a_week_of_returns


@pytest.mark.parametrize(
    ("change", "shown"),
    [
        ("UPDATE visit SET came_at = 'last Tuesday'", "last Tuesday"),
        ("UPDATE job SET left_at = '2026-99-99'", "2026-99-99"),
        ("UPDATE return_link SET judgement = 'perhaps'", "perhaps"),
        ("INSERT INTO setting (name, value) VALUES ('window_days', '{')", "{"),
        ("INSERT INTO setting (name, value) VALUES ('window_days', '\"ninety\"')", "ninety"),
    ],
)
def test_what_was_damaged_from_outside_is_named(shop: ShopRecord, change: str, shown: str) -> None:
    a_week_of_returns(shop)
    if "return_link" in change:
        damage(
            shop,
            "INSERT INTO return_link (earlier_job_id, later_job_id, judgement, why, judged_by,"
            " change_promised, same_vehicle) VALUES (1, 2, 'unrelated', '', '', '', 1)",
        )
    damage(shop, change)
    with shop.reading() as connection, pytest.raises(ShopDamaged) as told:
        read_returns(connection)
    assert shown in told.value.sentence()
    assert "last good copy" in told.value.sentence()
