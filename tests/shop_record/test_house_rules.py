"""House rules: each has its default, refuses what it can't be, and is changed by a deed."""

from __future__ import annotations

from typing import Any

import pytest

from desktop_app.shop_record.house_rules import (
    HouseRules,
    all_rules,
    change_rule,
    change_rules,
    read_rules,
)
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.rule_words import NAMES, VALUES
from desktop_app.shop_record.trouble import ShopTrouble
from tests.from_outside import damage


def rules(shop: ShopRecord) -> HouseRules:
    with shop.reading() as connection:
        return read_rules(connection)


def test_a_new_shop_has_the_defaults(shop: ShopRecord) -> None:
    assert rules(shop) == HouseRules()
    assert rules(shop).window_days == 90
    assert rules(shop).window_miles == 3000


def test_a_changed_rule_is_kept_and_undone(shop: ShopRecord) -> None:
    change_rule(shop, "window_days", "60")
    assert rules(shop).window_days == 60
    change_rule(shop, "window_days", 45)
    shop.undo()
    assert rules(shop).window_days == 60


@pytest.mark.parametrize(
    ("name", "value", "says"),
    [
        ("window_days", "-1", "0 to 3660"),
        ("early_days", "0", "1 to 3650"),
        ("window_days", "soon", "whole number"),
        ("window_rule", "either", "first or both"),
        ("shop_name", "   ", "1 to 200 characters"),
        ("colour", "blue", "no house rule"),
    ],
)
def test_a_refusal_says_what_is_accepted(
    shop: ShopRecord, name: str, value: Any, says: str
) -> None:
    with pytest.raises(ShopTrouble, match=says):
        change_rule(shop, name, value)
    assert rules(shop) == HouseRules()


@pytest.mark.parametrize("value", ["", "sixty", "[60]", '"60"', "null"])
def test_a_rule_that_was_damaged_in_the_record_is_named(shop: ShopRecord, value: str) -> None:
    change_rule(shop, "window_days", 60)
    damage(shop, "UPDATE setting SET value = :value", value=value)
    with pytest.raises(ShopTrouble, match="a house rule") as told:
        rules(shop)
    assert told.value.do


def test_half_a_letter_is_no_text_of_a_rule(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="a sign that no text can"):
        change_rule(shop, "shop_name", "Odile \ud800")
    assert rules(shop) == HouseRules()


def test_a_window_without_any_limit_is_refused_with_nothing_changed(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="never ends"):
        change_rules(shop, "Change the window", {"window_days": 0, "window_miles": 0})
    change_rule(shop, "window_miles", 0)
    with pytest.raises(ShopTrouble, match="never ends"):
        change_rule(shop, "window_days", 0)
    assert (rules(shop).window_days, rules(shop).window_miles) == (90, 0)


def test_days_and_months_of_the_window_are_one_promise(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="12 months and 90 days are two promises"):
        change_rule(shop, "window_months", 12)
    change_rules(shop, "Change the window", {"window_days": 366, "window_months": 12})
    assert rules(shop).window_months == 12
    change_rule(shop, "window_days", 60)
    assert (rules(shop).window_days, rules(shop).window_months) == (60, 0)


def test_every_rule_says_what_it_does() -> None:
    for rule in all_rules():
        assert rule.says.endswith(".")
        assert rule.allowed or rule.bounds or isinstance(rule.default, str)


def test_every_rule_and_what_it_offers_can_be_said_in_another_language() -> None:
    names = {rule.name.removesuffix("_cents").replace("_", " ") for rule in all_rules()}
    assert names <= set(NAMES)
    offered = {value for rule in all_rules() for value in rule.allowed}
    assert offered - set(VALUES) == {"mm", "km", "A4"}  # the same in every language
