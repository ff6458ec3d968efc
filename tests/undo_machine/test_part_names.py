"""What a part is called in the search, where another desk has changed the kind."""

from __future__ import annotations

from desktop_app.parts_compared.actions import write_about_pair
from desktop_app.parts_compared.kind_actions import keep_own_kind
from tests.undo_machine.old_and_new import built_in
from tests.undo_machine.shop_under_test import ShopUnderTest


def test_a_desk_that_wrote_before_uses_the_name_that_another_desk_gives_now() -> None:
    shop = ShopUnderTest()
    one, other = shop.desks
    write_about_pair(one, 1, "supplier", "Northside")
    keep_own_kind(other, built_in()["distributor-rotor"]._replace(name="spinner", also=()))
    write_about_pair(one, 1, "supplier", "Southside")
    try:
        assert shop.checked().problems == ()
    finally:
        shop.close()
