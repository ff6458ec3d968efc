"""The week's workbook, cell by cell, against the one that was looked at and found right.

After a wanted change: `BENCHWITNESS_WRITE_GOLDEN=1 pytest tests/golden`, then read the difference
in the file before it is committed.
"""

from __future__ import annotations

import difflib
import os
import re
from pathlib import Path

import pytest

from desktop_app.shop_record.record import ShopRecord
from tests.golden.workbook_dump import dump
from tests.watched_shop import a_week_of_returns, judge_return
from tests.weekly_report.week_written import written

GOLDEN = Path(__file__).with_name("week-2026-W46.txt")
# The entries name the computer that they are written at, so the hash is another one everywhere.
HASH = re.compile(r" · history \d+, [0-9a-f]{16}")


def test_the_workbook_is_the_one_that_was_found_right(shop: ShopRecord, tmp_path: Path) -> None:
    ids = a_week_of_returns(shop)
    judge_return(
        shop,
        ids["J-131"],
        ids["J-160"],
        "same part",
        why="the new tip was loose",
        cause_class="part-died-early",
        cost_cents=8_750,
    )
    written(shop, "2026-W46", tmp_path / "week.xlsx")
    found = HASH.sub(" · history 0, 0123456789abcdef", dump(tmp_path / "week.xlsx"))
    if os.environ.get("BENCHWITNESS_WRITE_GOLDEN") == "1":
        GOLDEN.write_text(found, encoding="utf-8")
    wanted = GOLDEN.read_text(encoding="utf-8")
    if found != wanted:
        lines = difflib.unified_diff(
            wanted.splitlines(), found.splitlines(), "found right", "written now", lineterm="", n=0
        )
        pytest.fail("The workbook changed:\n" + "\n".join(lines), pytrace=False)


def test_the_same_week_is_written_the_same_twice(shop: ShopRecord, tmp_path: Path) -> None:
    a_week_of_returns(shop)
    for name in ("one.xlsx", "two.xlsx"):
        written(shop, "2026-W46", tmp_path / name)
    assert dump(tmp_path / "one.xlsx") == dump(tmp_path / "two.xlsx")
