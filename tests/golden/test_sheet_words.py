"""The words of a comparison sheet, piece by piece, against those that were found right.

After a wanted change: `BENCHWITNESS_WRITE_GOLDEN=1 pytest tests/golden`, then read the difference
in the file before it is committed.
"""

from __future__ import annotations

import difflib
import os
from dataclasses import fields, replace
from pathlib import Path

import pytest

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.sheet_blocks import Block, PairShort, PhotoRow
from desktop_app.parts_compared.sheet_job import foot_words, sheet_blocks
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.shop_record.record import ShopRecord
from tests.part_photos.bench_pictures import encoded, picture
from tests.parts_compared.sheet_story import TOP, RotorStory, a_rotor, kinds

ONE_PAIR = Path(__file__).with_name("sheet-J-104.txt")
TWO_PAIRS = Path(__file__).with_name("sheet-J-104-two-pairs.txt")


def lines(block: Block) -> list[str]:
    """A block as lines: its kind, then what it says, tables row by row."""
    if isinstance(block, PhotoRow):
        return ["PhotoRow", f"  {' | '.join(block.captions)}"]
    found = [type(block).__name__]
    if isinstance(block, PairShort):
        inside = [one for one in (block.verdict, block.photos) if one is not None]
        found += [f"  {line}" for one in inside for line in lines(one)]
        block = replace(block, verdict=None, photos=None)
    for field in fields(block):
        value = getattr(block, field.name)
        rows = value if isinstance(value, tuple) else (value,)
        for row in rows:
            shown = " | ".join(map(str, row)) if isinstance(row, tuple) else str(row)
            if field.name != "widths" and shown not in ("", "None"):
                found.append(f"  {shown}")
    return found


def test_the_words_are_those_that_were_found_right(shop: ShopRecord) -> None:
    story = a_rotor(shop)
    story.read("tip-width", "8.10", "8.62")
    story.photograph(TOP, encoded(picture(640, 480)), None)
    _as_found_right(story, ONE_PAIR)


def test_two_pairs_are_told_in_short_with_the_same_words(shop: ShopRecord) -> None:
    story = a_rotor(shop)
    story.photograph(TOP, encoded(picture(640, 480)), None)
    actions.lay_side_by_side(shop, story.job, "distributor-cap")
    _as_found_right(story, TWO_PAIRS)


def _as_found_right(story: RotorStory, golden: Path) -> None:
    sheet = read_sheet(story.record, story.job, kinds())
    said = [line for block in sheet_blocks(sheet) for line in lines(block)]
    foot = foot_words(sheet).replace(sheet.history_hash[:16], "its hash")
    found = "\n".join([*said, foot, ""])
    if os.environ.get("BENCHWITNESS_WRITE_GOLDEN") == "1":
        golden.write_text(found, encoding="utf-8")
    wanted = golden.read_text(encoding="utf-8")
    if found != wanted:
        changed = difflib.unified_diff(
            wanted.splitlines(), found.splitlines(), "found right", "said now", lineterm="", n=0
        )
        pytest.fail("The sheet changed:\n" + "\n".join(changed), pytrace=False)
