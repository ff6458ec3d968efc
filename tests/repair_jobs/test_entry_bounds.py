"""Deeds refuse what cannot be, in words, and keep nothing of it."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from desktop_app.repair_jobs import actions, odometer_actions, proof_actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

SAID = WriteUp("misses", plate="TH 1", odometer=1000)
HUGE = 2**63


def event(kind: str, on: str, before: int | None = None) -> Callable[[ShopRecord], Done]:
    return lambda shop: odometer_actions.note_vehicle_event(shop, 1, kind, on, before)


@pytest.mark.parametrize(
    "deed",
    [
        lambda shop: actions.write_up(shop, WriteUp("x", plate="A", odometer=-5)),
        lambda shop: actions.write_up(shop, WriteUp("x", plate="A", odometer=HUGE)),
        lambda shop: actions.write_up(
            shop, WriteUp("x", plate="A", odometer=1, odometer_unit="leagues")
        ),
        lambda shop: actions.write_up(
            shop, WriteUp("x", plate="A", odometer=1, odometer_source="dreamt")
        ),
        lambda shop: odometer_actions.change_odometer(shop, 1, -5),
        lambda shop: odometer_actions.change_odometer(shop, 1, HUGE),
        lambda shop: actions.hand_over(shop, 1, -1),
        lambda shop: actions.write_code(shop, 1, "P0300", "dreamt", "found"),
        lambda shop: actions.write_code(shop, 1, "P0300", "stored", "dreamt"),
        lambda shop: actions.tick_check(shop, 1, "dreamt", "key home", "done"),
        lambda shop: actions.tick_condition(shop, 1, "dreamt", True),
        lambda shop: actions.write_price(shop, 1, -1),
        lambda shop: actions.say_proof(shop, 1, 9),
        lambda shop: actions.say_proof(shop, 1, 5),  # time proves, nobody says it
        lambda shop: actions.say_proof(shop, 1, -1),
        lambda shop: proof_actions.say_fault_every(shop, 1, math.inf, "mi"),
        lambda shop: proof_actions.say_fault_every(shop, 1, math.nan, "mi"),
        lambda shop: proof_actions.say_fault_every(shop, 1, 40, "leagues"),
        lambda shop: proof_actions.type_self_tests(shop, 1, "found", "16.11.2026"),
        lambda shop: actions.write_price(shop, 1, HUGE),
        event("dreamt", "2026-11-01"),
        event("sold", "2026-13-45"),
        event("sold", "20261101"),
        event("sold", "0001-01-01"),
        event("odometer replaced", "9999-12-31", 5),
        event("odometer replaced", "2026-11-01", HUGE),
    ],
)
def test_nonsense_is_refused_in_words(
    shop: ShopRecord, deed: Callable[[ShopRecord], object]
) -> None:
    actions.write_up(shop, SAID)
    with pytest.raises(ShopTrouble):
        deed(shop)
    assert shop.can_undo() == "Take a car in"


@pytest.mark.parametrize("number", [-1.0, math.inf, -math.inf, math.nan, 1e308])
def test_hours_and_distances_stay_within_what_can_be(shop: ShopRecord, number: float) -> None:
    actions.write_up(shop, SAID)
    for refused in (
        lambda: actions.write_hours(shop, 1, number, unbilled=True),
        lambda: proof_actions.write_distance(shop, 1, number),
    ):
        with pytest.raises(ShopTrouble, match="Accepted: 0 to"):
            refused()
    assert shop.can_undo() == "Take a car in"
