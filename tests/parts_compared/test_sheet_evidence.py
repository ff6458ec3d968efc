"""What a customer can hold the sheet's sentences against: findings, what was seen, the readings."""

from __future__ import annotations

import itertools

import pytest

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.sheet_blocks import Heading, Listed, NextPage, Words
from desktop_app.parts_compared.sheet_job import sheet_blocks
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.repair_jobs.actions import tick_check, write_concern, write_finding
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from tests.parts_compared.sheet_story import (
    TOP,
    RotorStory,
    a_job,
    a_rotor,
    kinds,
    page_count,
    phone_photo,
    words_in,
)

BEHIND = "Single readings"


@pytest.fixture
def rotor(shop: ShopRecord) -> RotorStory:
    """The rotor of J-104, measured and seen, without photos."""
    return a_rotor(shop)


def named(story: RotorStory, *, for_the_customer: bool = False) -> dict[str, str]:
    """The named paragraphs of the sheet; perhaps only those of the customer's page."""
    blocks = list(sheet_blocks(read_sheet(story.record, story.job, kinds())))
    if for_the_customer:
        blocks = blocks[: next(n for n, one in enumerate(blocks) if isinstance(one, NextPage))]
    return {one.name: one.words for one in blocks if isinstance(one, Words) and one.name}


def test_the_customers_page_says_what_was_found_and_seen(rotor: RotorStory) -> None:
    write_finding(rotor.record, rotor.job, "Cap crusted.")
    write_finding(rotor.record, rotor.job, "centre button gone")
    actions.see_condition(rotor.record, rotor.pair, "removed", "cracked", seen=True)
    said = named(rotor, for_the_customer=True)
    assert said["Found"] == "Cap crusted; centre button gone."
    assert said["Seen"] == "◆ burned tip, cracked."
    assert "Found: Cap crusted; centre button gone." in words_in(rotor.pdf())


def test_photos_leave_the_room_so_that_the_customer_has_one_page(rotor: RotorStory) -> None:
    rotor.photograph(TOP, phone_photo(1), phone_photo(2))
    assert page_count(rotor.pdf()) == 2
    write_finding(
        rotor.record, rotor.job, "cap crusted at all four terminals, its button half gone"
    )
    write_finding(rotor.record, rotor.job, "leads 2 and 4 hard and cracked at the boots")
    assert page_count(rotor.pdf()) == 2
    write_concern(rotor.record, rotor.job, "It misses when it is damp. " * 12)
    assert page_count(rotor.pdf()) == 2


def test_what_nobody_found_or_saw_has_no_line(rotor: RotorStory) -> None:
    actions.see_condition(rotor.record, rotor.pair, "removed", "burned tip", seen=False)
    assert not {"Found", "Seen"} & set(named(rotor))


def test_a_finding_stands_on_a_sheet_without_parts_too(shop: ShopRecord) -> None:
    job = a_job(shop)
    write_finding(shop, job, "plug wires cracked")
    said = named(RotorStory(shop, job, 0))
    assert said["Found"] == "plug wires cracked."


def test_each_mean_has_its_readings_behind_it_and_a_single_one_has_none(rotor: RotorStory) -> None:
    words = named(rotor)[BEHIND].replace("\u00a0", " ")
    assert "Tip radius from the shaft axis (mm): ◆ 33.41; 33.43; 33.42 ● 33.97; 33.98" in words
    assert "Bore" not in words  # read once on each side: the table says it already
    assert "Fixing holes" not in words  # counts have no mean


def test_where_everything_was_read_once_nothing_is_said_of_it(shop: ShopRecord) -> None:
    story = a_rotor(shop)
    for dimension in ("tip-radius", "tip-height", "tip-angle"):
        story.read(dimension, "20", "20")
    story.read("bore", "14.02; 14.03")
    words = named(story)[BEHIND].replace("\u00a0", " ")
    assert words == "Bore diameter (mm): ◆ 14.02; 14.03."
    story.read("bore", "14.02")
    assert BEHIND not in named(story)


def test_a_shop_that_reads_inches_sees_in_what_unit_each_was_read(rotor: RotorStory) -> None:
    change_rule(rotor.record, "length_unit", "inch")
    words = named(rotor)[BEHIND].replace("\u00a0", " ")
    assert "Tip radius from the shaft axis (in): ◆ 33.41 mm; 33.43 mm; 33.42 mm" in words


def test_readings_without_end_are_cut(rotor: RotorStory) -> None:
    rotor.read("bore", "; ".join(["14.02"] * 60))
    words = named(rotor)[BEHIND]
    assert 20 < words.count("14.02") < 60
    assert "…" in words


def test_points_for_closing_up_are_kept_with_their_answers(rotor: RotorStory) -> None:
    refit = [one.say for one in kinds()["distributor-rotor"].refit]
    for words in refit:
        tick_check(rotor.record, rotor.job, "refit", words, "done")
    (closed,) = _closing_up(rotor)
    assert closed == ("Ticked as done", f"{'; '.join(one.rstrip('.') for one in refit)}.")
    tick_check(rotor.record, rotor.job, "refit", refit[2], "not needed")
    tick_check(rotor.record, rotor.job, "refit", refit[4], "")
    done, spared, left = _closing_up(rotor)
    assert (done[0], spared[0]) == ("Ticked as done", "Not needed")
    assert refit[3].rstrip(".") in done[1]
    assert spared[1] == "Screws of the right thread and length, where it is screwed."
    assert left == ("No answer was given to", f"⚠ {refit[4]}")


def _closing_up(story: RotorStory) -> list[tuple[str, str]]:
    """What stands under "Before it is closed up": (name, words)."""
    blocks = list(sheet_blocks(read_sheet(story.record, story.job, kinds())))
    start = blocks.index(Heading("Before it is closed up")) + 1
    rest = itertools.takewhile(lambda one: not isinstance(one, Heading), blocks[start:])
    return [
        (one.name, one.words if isinstance(one, Words) else "; ".join(one.items))
        for one in rest
        if isinstance(one, Words | Listed)
    ]
