"""How a shop's cars are used is read once, beside the window too, and anew after a visit."""

from __future__ import annotations

from desktop_app.repair_jobs.actions import write_up
from desktop_app.repair_jobs.rate_of_use import ShopUse
from desktop_app.repair_jobs.screen.shop_use import shop_use, shop_use_kept
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window.desk import Desk

ODD = ShopUse(log_miles=1.0)


def test_what_was_read_beside_the_window_is_taken(desk: Desk) -> None:
    kept = shop_use_kept(desk)
    kept.know(ODD, kept.changes)
    assert shop_use(desk) == ODD


def test_what_was_read_before_a_car_came_is_not_taken(desk: Desk) -> None:
    kept = shop_use_kept(desk)
    before = kept.changes
    desk.do(write_up, WriteUp("misses when damp", plate="TH 1", odometer=1000))
    kept.know(ODD, before)
    assert shop_use(desk) != ODD


def test_what_could_not_be_read_beside_is_read_when_it_is_wanted(desk: Desk) -> None:
    shop_use_kept(desk).know(None, 0)
    assert shop_use(desk) == ShopUse()
