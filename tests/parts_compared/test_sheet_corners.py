"""What a sheet leaves out where there is nothing to say, and how it says what is rare."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date

import pytest

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_sets.part_set_file import load_sets
from desktop_app.parts_compared.part_sets.set_shares import PartRead, SetRead
from desktop_app.parts_compared.part_sets.set_verdict import judge_set
from desktop_app.parts_compared.reading import MakerLimit
from desktop_app.parts_compared.sheet import sheet_bytes
from desktop_app.parts_compared.sheet_blocks import Block, Listed, Named, Rows, VerdictBox, Words
from desktop_app.parts_compared.sheet_facts import (
    PairPrinted,
    PhotoPrinted,
    SheetFacts,
    ViewPrinted,
)
from desktop_app.parts_compared.sheet_flowables import flowables
from desktop_app.parts_compared.sheet_job import sheet_blocks
from desktop_app.parts_compared.sheet_labels import free_place
from desktop_app.parts_compared.sheet_pair import SAME_PICTURE, pair_blocks, photo_row
from desktop_app.parts_compared.sheet_pair_file import pair_file_blocks
from desktop_app.parts_compared.sheet_pair_short import short_pair
from desktop_app.parts_compared.sheet_set import set_blocks, set_file_blocks
from desktop_app.parts_compared.sheet_units import instrument_words
from desktop_app.parts_compared.sheet_values import allowed_cell, difference_cell, side_cell
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from tests.another_language import another_language
from tests.parts_compared.invented_kinds import both, dimension, kind, read, worn
from tests.parts_compared.sheet_story import TOP, RotorStory, a_rotor, kinds, page_count, words_in


@pytest.fixture
def rotor(shop: ShopRecord) -> RotorStory:
    return a_rotor(shop)


def told(rotor: RotorStory) -> SheetFacts:
    """What the sheet is made from."""
    return read_sheet(rotor.record, rotor.job, kinds())


def only_pair(rotor: RotorStory) -> PairPrinted:
    """The one pair of the job as it is printed."""
    (printed,) = told(rotor).pairs
    return printed


def lists(blocks: Iterable[Block]) -> dict[str, tuple[str, ...]]:
    """The lists by their names."""
    return {one.name: one.items for one in blocks if isinstance(one, Listed)}


def named(blocks: Iterable[Block]) -> dict[str, str]:
    """The paragraphs by their names."""
    return {one.name: one.words for one in blocks if isinstance(one, Words)}


def test_a_car_of_which_little_is_known_is_named_by_what_is(rotor: RotorStory) -> None:
    sheet = told(rotor)
    bare = replace(sheet.job.vehicle, plate="", tag="", vin="", description="")
    job = replace(sheet.job, vehicle=bare, conditions={}, left_at=None)
    blocks = sheet_blocks(replace(sheet, job=job))
    (facts,) = [block.facts for block in blocks if isinstance(block, Named)]
    assert facts == (("Vehicle", "not described"), ("Came", "12 November 2026"))
    assert "When" not in named(blocks)
    assert "When" in named(sheet_blocks(sheet))


def test_a_replacement_that_was_stopped_before_fitting_is_called_so(rotor: RotorStory) -> None:
    assert "It was fitted." in named(pair_blocks(only_pair(rotor), told(rotor).job))["Replacement"]
    actions.say_fitted(rotor.record, rotor.pair, fitted=False)
    said = named(pair_blocks(only_pair(rotor), told(rotor).job))["Replacement"]
    assert said.endswith("Stopped before fitting: it was not fitted.")


def test_what_is_too_close_to_tell_stands_open_and_what_is_settled_does_not(
    rotor: RotorStory,
) -> None:
    job, printed = replace(told(rotor).job, left_at=None), only_pair(rotor)
    part = kind(dimension(allowed=(-0.05, 0.05)), worn())
    close = compare(part, [*both("width", 10.0, 10.03), *both("tip", 26.9, 27.45)])
    found = lists(pair_blocks(replace(printed, kind=part, compared=close), job))
    assert len(found["Still open"]) == 1
    assert "too close to what is allowed" in found["Still open"][0]
    assert found["To measure next"] == close.next_steps
    assert "would probably settle it" in found["Still open"][0]
    left = lists(pair_blocks(replace(printed, kind=part, compared=close), told(rotor).job))
    assert "too close to what is allowed" in left["Still open"][0]
    assert "settle" not in left["Still open"][0]  # the part is in the car, and the car is gone
    good = compare(part, [*both("width", 10.0, 10.0), *both("tip", 26.9, 27.45)])
    settled = lists(pair_blocks(replace(printed, kind=part, compared=good), job))
    assert not {"Still open", "To measure next"} & settled.keys()


def test_once_the_car_has_left_the_sheet_says_what_was_not_measured_and_nothing_to_do(
    rotor: RotorStory,
) -> None:
    job, printed = told(rotor).job, only_pair(rotor)
    in_the_shop = replace(job, left_at=None)
    looked_at = dimension(name="maximum", label="maximum", role="limit", allowed=None)
    part = kind(
        dimension(allowed=(-0.05, 0.05)), worn(), looked_at, worn(name="lift", label="lift")
    )
    readings = [
        *both("width", 10.0, 10.03),
        read("removed", "tip", 26.9),
        read("replacement", "maximum", 3.0),
    ]
    printed = replace(printed, kind=part, compared=compare(part, readings))

    def means(at: JobView) -> str:
        (box,) = [one for one in pair_blocks(printed, at) if isinstance(one, VerdictBox)]
        return box.means

    unsure = "What was measured is not enough to say that it fits."
    assert means(job) == f"{unsure} Not measured: tip, lift."
    assert "To measure next" not in lists(pair_blocks(printed, job))
    assert means(in_the_shop).startswith(f"{unsure} Next: Take ")
    assert len(lists(pair_blocks(printed, in_the_shop))["To measure next"]) == 4
    close = compare(kind(part.dimensions[0]), both("width", 10.0, 10.03))
    printed = replace(printed, compared=close)
    assert means(job) == unsure


def test_a_view_of_ours_is_spoken_whole_and_a_typed_one_is_clipped() -> None:
    typed = "as it lay in the drawer beside all of the others " * 3
    with another_language():
        assert f"«{TOP}»" in photo_row(ViewPrinted(TOP, None, None), 40.0).captions[0]
    caption = photo_row(ViewPrinted(typed, None, None), 40.0).captions[0]
    assert "as it lay in the drawer" in caption
    assert len(caption) < 80


def test_one_picture_on_both_sides_is_told_where_the_page_is_crowded_too(
    rotor: RotorStory,
) -> None:
    photo = PhotoPrinted("ab" * 32, "", b"")
    printed = replace(only_pair(rotor), views=(ViewPrinted(TOP, photo, photo),))
    assert ("", SAME_PICTURE) in short_pair(printed, told(rotor).job).beside


def test_two_pairs_whose_kind_is_gone_are_printed_as_they_were_typed(rotor: RotorStory) -> None:
    sheet, printed = told(rotor), only_pair(rotor)
    gone = replace(printed, kind=None, compared=None)
    words = words_in(sheet_bytes(replace(sheet, pairs=(gone, gone))))
    assert words.count("not on the shelf") == 2
    assert words.count("33.41; 33.43; 33.42") == 2


def test_a_pair_whose_kind_is_gone_and_of_which_nothing_was_read_says_no_more(
    rotor: RotorStory,
) -> None:
    printed = replace(only_pair(rotor), kind=None, compared=None)
    assert "Seen" in lists(pair_file_blocks(printed))
    pair = replace(printed.pair, typed={}, conditions=())
    blocks = [*pair_file_blocks(replace(printed, pair=pair))]
    assert not [one for one in blocks if isinstance(one, Rows | Listed)]
    assert "What was read stands here as it was typed." in named(blocks).values()


def test_the_table_has_what_was_measured_or_needed_and_names_what_was_neither(
    rotor: RotorStory,
) -> None:
    printed = only_pair(rotor)
    part = kind(dimension(essential=False))
    nothing = replace(printed, kind=part, compared=compare(part, []), instruments=())
    blocks = [*pair_file_blocks(nothing)]
    assert not [one for one in blocks if isinstance(one, Rows)]
    assert named(blocks)["Not needed and not measured"] == "width."
    read_all = replace(nothing, compared=compare(part, both("width", 10.0, 10.0)))
    blocks = [*pair_file_blocks(read_all)]
    assert len([one for one in blocks if isinstance(one, Rows)]) == 1
    assert "Not needed and not measured" not in named(blocks)


def test_lists_too_long_for_a_page_go_on_overleaf_with_every_word(rotor: RotorStory) -> None:
    sheet, printed = told(rotor), only_pair(rotor)
    assert printed.compared is not None
    restored = printed.compared.dimension("tip-radius")
    alike = printed.compared.dimension("bore")
    assert restored is not None
    assert alike is not None
    many = [
        replace(one, sentence=f"{sort} {number}: {'it is as it should be ' * 9}.")
        for number in range(30)
        for one, sort in ((restored, "Back"), (alike, "Same"))
    ]
    long = replace(printed, compared=replace(printed.compared, dimensions=(*many, alike)))
    pdf = sheet_bytes(replace(sheet, pairs=(long,)))
    words = words_in(pdf)
    assert all(f"{sort} {number}:" in words for sort in ("Back", "Same") for number in range(30))
    assert page_count(pdf) > 3


def test_what_nobody_can_print_is_a_mistake_of_ours() -> None:
    with pytest.raises(TypeError, match="no way to print a date"):
        flowables(date(2026, 11, 16), 400.0)


def test_words_that_find_no_room_stand_where_they_belong() -> None:
    everything = [(0.0, 0.0, 200.0, 150.0)]
    assert free_place((50.0, 50.0), (80.0, 9.5), (200.0, 150.0), everything) == (
        *(10.0, 52.0, 90.0, 61.5),
    )


def test_what_is_read_off_without_doubt_has_no_figures_of_an_instrument() -> None:
    assert instrument_words("label", "A", "mm", None, date(2026, 11, 16)) == "label"


def test_cells_say_words_and_open_limits() -> None:
    form = dimension(
        name="form", label="form", unit="word", role="word", allowed=None, choices=("male",)
    )
    limited = dimension(role="limit", allowed=None)
    pair = compare(
        kind(form, limited),
        [*both("form", "male", "male"), read("replacement", "width", 10.0)],
        limits=[MakerLimit("width", None, 12.0)],
    )
    word, limit = pair.dimensions
    assert (side_cell(word, "removed"), difference_cell(word)) == ("male", "–")
    with another_language():
        assert side_cell(word, "removed", form) == "«male»"
    assert (allowed_cell(word), allowed_cell(limit)) == ("the same", "at most 12")


def test_a_set_that_needs_no_more_words_has_no_list_and_one_that_is_not_known_is_left_out(
    rotor: RotorStory,
) -> None:
    (plain,) = [one for one in load_sets(resource_path("part_sets")) if one.id == "rotor-and-cap"]
    parts = {
        "distributor-rotor": PartRead(
            kinds()["distributor-rotor"], (read("replacement", "tip-radius", *[28.36] * 3),)
        ),
        "distributor-cap": PartRead(
            kinds()["distributor-cap"], (read("replacement", "terminal-radius", *[28.4] * 3),)
        ),
    }
    entered = {"wobble": 0.08, "shaft-bend": 0.03, "cap-seat": 0.1}
    touching = judge_set(SetRead(replace(plain, honest=""), parts, entered=entered))
    unknown = judge_set(SetRead(plain, {}))
    sheet = replace(told(rotor), sets=(("left", touching), ("right", unknown)))
    boxes = [one for one in set_blocks(sheet) if isinstance(one, VerdictBox)]
    assert [one.word for one in boxes] == ["may touch"]
    filed = [*set_file_blocks(sheet)]
    assert lists(filed) == {}
    assert len([one for one in filed if isinstance(one, Rows)]) == 1
    with_steps = replace(touching, next_steps=("Measure the wobble.",))
    sheet = replace(sheet, sets=(("", with_steps),))
    assert lists(set_file_blocks(sheet)) == {}  # the car has left
    sheet = replace(sheet, job=replace(sheet.job, left_at=None))
    assert lists(set_file_blocks(sheet)) == {"To measure next": ("Measure the wobble.",)}
