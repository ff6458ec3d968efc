"""The last sheet: whatever column a reader may doubt is explained there, and nothing else."""

from __future__ import annotations

from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.pages import week_sheets
from desktop_app.weekly_report.sheets.definition_words import DEFINITIONS
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import a_week_of_returns

FIGURES = ("count", "number", "hours", "share", "money")


def _explained() -> set[str]:
    return {word.strip() for one in DEFINITIONS for word in one.words.split(", ")}


def test_every_column_of_figures_is_explained(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    missing = set()
    for unit in ("miles", "km"):
        change_rule(shop, "distance_unit", unit)
        for sheet in week_sheets(look_at_week(shop, read_week("2026-W46"))):
            for table in sheet.tables:
                for column in table.columns:
                    if column.kind in FIGURES and column.header not in _explained():
                        missing.add(f"{sheet.name}: {column.header}")
    assert not missing


def test_no_definition_is_left_of_a_column_that_is_gone(shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    there = set()
    for unit in ("miles", "km"):
        change_rule(shop, "distance_unit", unit)
        for sheet in week_sheets(look_at_week(shop, read_week("2026-W46"))):
            there |= {column.header for table in sheet.tables for column in table.columns}
    # Words that stand in cells or sentences and not over columns.
    in_cells = {"Comeback", "Lost sight", "Not ours", "cannot tell", "Too few to tell", "Window"}
    in_cells |= {"told", "on paper"}
    assert _explained() - there <= in_cells


def test_no_word_is_explained_twice() -> None:
    words = [(word, one.on) for one in DEFINITIONS for word in one.words.split(", ")]
    assert len(words) == len(set(words))
