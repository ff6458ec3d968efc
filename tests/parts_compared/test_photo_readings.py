"""A mark on a photo as a reading: taken, refused, followed, kept beside typed ones, let go."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from sqlalchemy import func, select

from desktop_app.part_photos.stored import Mark, PhotoScale
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.instruments.row_tools import row_tools
from desktop_app.parts_compared.mark_doubt import MarkRead, doubt_of_mark
from desktop_app.parts_compared.mark_let_go_actions import let_mark_go
from desktop_app.parts_compared.pair_view import judge
from desktop_app.parts_compared.photo_reading_actions import follow, take_reading_from_mark
from desktop_app.parts_compared.reading import Reading
from desktop_app.parts_compared.stored import PhotoReading
from desktop_app.parts_compared.stored_check import bench_problems
from desktop_app.parts_compared.stored_many import verdicts_of_record
from desktop_app.parts_compared.stored_pairs import read_pair
from desktop_app.parts_compared.stored_photo_readings import readings_from_mark
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.parts_compared.photo_story import BUDGET, PhotoStory, a_photographed_rotor, known
from tests.parts_compared.sheet_story import TOP, kinds

WIDTH = "tip-width"
DOUBT = doubt_of_mark(MarkRead(1, 8.1234, "mm", 0.18, BUDGET, 10.0, 1.0, card_id=1))


@pytest.fixture
def story(shop: ShopRecord) -> PhotoStory:
    """The rotor with photos of both sides."""
    return a_photographed_rotor(shop)


def from_photos(story: PhotoStory) -> int:
    """How many readings are tied to marks."""
    with story.record.reading() as connection:
        return connection.execute(select(func.count()).select_from(PhotoReading)).scalar_one()


def typed(story: PhotoStory, name: str = WIDTH) -> tuple[str, ...]:
    """The readings of the removed part as they were typed."""
    return story.pair().typed.get((name, "removed"), ())


def write(story: PhotoStory, text: str, tool: str = "", unit: str = "mm") -> None:
    """Leave the field of the removed part with this text in it."""
    pair = story.rotor.pair
    actions.write_readings(story.record, pair, known(WIDTH), "removed", text, tool, unit)


def test_a_mark_becomes_a_reading_with_its_own_doubt(story: PhotoStory) -> None:
    mark = story.mark("removed", 8.1234)
    done = story.take(WIDTH, "removed", mark)
    assert done.words == "Take a reading from the photo"
    pair = story.pair()
    assert Reading("removed", WIDTH, (8.1234,), "photo", (DOUBT,)) in pair.readings
    assert typed(story) == ("8.12",)
    assert pair.marks == {(WIDTH, "removed"): (mark,)}
    assert pair.instruments_used[WIDTH, "removed"] == "photo"
    judged = judge(pair, kinds()["distributor-rotor"], {}).dimension(WIDTH)
    assert judged is not None
    assert judged.removed is not None
    assert judged.removed.expanded_uncertainty == pytest.approx(0.174, abs=0.003)


def test_undo_takes_it_back_and_redo_brings_it_again(story: PhotoStory) -> None:
    story.take(WIDTH, "removed", story.mark("removed", 8.12))
    before = story.pair()
    assert story.record.undo().words == "Take a reading from the photo"
    assert (from_photos(story), typed(story)) == (0, ())
    story.record.redo()
    assert story.pair() == before


def test_taking_it_again_changes_nothing_but_the_value(story: PhotoStory) -> None:
    mark = story.mark("removed", 8.12)
    story.take(WIDTH, "removed", mark)
    assert story.take(WIDTH, "removed", mark).seq is None
    with story.record.deed("Move the mark") as deed:
        deed.change(Mark, mark, value=8.30)
    story.take(WIDTH, "removed", mark)
    assert typed(story) == ("8.30",)


@pytest.mark.parametrize(
    ("name", "changed", "said"),
    [
        (WIDTH, {"value": None}, "says no size yet"),
        (WIDTH, {"budget": None}, "says no size yet"),
        (WIDTH, {"budget": '{"pointing": NaN}'}, "says no size yet"),
        (WIDTH, {"unit": "deg"}, "is a length, and this mark gives an angle"),
        (WIDTH, {"unit": ""}, "is a length, and this mark gives a count"),
        (WIDTH, {"unit": "%"}, "a help to the eye, no reading"),
        ("fixing-holes", {}, "is a count, and this mark gives a length"),
        ("resistance", {}, "is a value in kohm"),
        (WIDTH, {"value": -1.0}, "below zero"),
    ],
)
def test_what_cannot_be_a_reading_is_refused(
    story: PhotoStory, name: str, changed: dict[str, object], said: str
) -> None:
    mark = story.mark("removed", **({"value": 8.12} | changed))
    with pytest.raises(ShopTrouble, match=said):
        story.take(name, "removed", mark)
    assert from_photos(story) == 0


def test_a_photo_of_the_new_part_is_none_of_the_removed_one(story: PhotoStory) -> None:
    with pytest.raises(ShopTrouble, match="doesn't stand for the removed part") as refused:
        story.take("bore", "removed", story.mark("replacement", 14.0))
    assert refused.value.kept == "The mark stays as it is."
    assert from_photos(story) == 0


def test_the_photo_of_the_other_part_is_refused(story: PhotoStory) -> None:
    mark = story.mark("removed", 8.12)
    with pytest.raises(ShopTrouble, match="doesn't stand for the replacement"):
        story.take(WIDTH, "replacement", mark)
    with pytest.raises(ShopTrouble, match="not on the photo any more"):
        story.take(WIDTH, "removed", mark + 1)


def test_a_count_counts(story: PhotoStory) -> None:
    pair, holes = story.rotor.pair, known("fixing-holes")
    actions.write_readings(story.record, pair, holes, "removed", "")
    mark = story.mark("removed", 2.0, unit="", budget=None, expanded_u=None, kind="count")
    story.take("fixing-holes", "removed", mark)
    assert typed(story, "fixing-holes") == ("2",)
    judged = judge(story.pair(), kinds()["distributor-rotor"], {}).dimension("fixing-holes")
    assert judged is not None
    assert judged.verdict == "same"


def test_a_reading_follows_its_mark_within_the_same_deed(story: PhotoStory) -> None:
    old, _ = story.both_taken(WIDTH, 8.12, 8.64)
    before = story.pair()
    with story.record.deed("Move the mark") as deed:
        wider = json.dumps(BUDGET | {"pointing": 0.2})
        deed.change(Mark, old, value=8.3123, budget=wider, height_mm=12.0)
        follow(deed, old)
    moved = next(one for one in story.pair().readings if one.photo and one.side == "removed")
    assert moved.values == (8.3123,)
    assert moved.photo == (replace(DOUBT, pointing=0.2, shared_key="card 1, 12 ± 1 mm up"),)
    assert typed(story) == ("8.31",)
    assert story.record.undo().words == "Move the mark"
    assert story.pair() == before


def test_a_mark_that_says_nothing_any_more_leaves_what_was_read(story: PhotoStory) -> None:
    old, _ = story.both_taken(WIDTH, 8.12, 8.64)
    before = story.pair()
    with story.record.deed("Forget the scale") as deed:
        deed.change(Mark, old, value=None, budget=None)
        follow(deed, old)
    assert story.pair() == before


@pytest.mark.parametrize(
    ("text", "unit", "now"),
    [
        ("8.12; 8.10", "mm", ("8.12", "8.10")),
        ("8.10; 8.12", "mm", ("8.12", "8.10")),
        ("8.12 mm; 0.32", "inch", ("8.12", "0.32 in")),
    ],
)
def test_typing_beside_it_keeps_it_a_photo_reading(
    story: PhotoStory, text: str, unit: str, now: tuple[str, ...]
) -> None:
    mark = story.mark("removed", 8.1234)
    story.take(WIDTH, "removed", mark)
    write(story, text, "calliper", unit)
    assert typed(story) == now
    pair = story.pair()
    assert pair.marks[WIDTH, "removed"] == (mark, None)
    assert Reading("removed", WIDTH, (8.1234,), "photo", (DOUBT,)) in pair.readings
    assert pair.instruments_used[WIDTH, "removed"] == "calliper"


def test_only_what_was_typed_has_the_instrument_of_the_row(story: PhotoStory) -> None:
    story.take(WIDTH, "removed", story.mark("removed", 8.1234))
    assert story.pair().tool_of_typed(WIDTH, "removed") is None
    write(story, "8.12; 8.10", "calliper")
    assert story.pair().tool_of_typed(WIDTH, "removed") == "calliper"
    write(story, "8.12; 8.10", "micrometer")
    pair = story.pair()
    assert pair.tool_of_typed(WIDTH, "removed") == "micrometer"
    assert Reading("removed", WIDTH, (8.1234,), "photo", (DOUBT,)) in pair.readings
    assert pair.tool_of_typed(WIDTH, "replacement") is None


@pytest.mark.parametrize(
    ("typed", "marks", "picked", "shown"),
    [
        ((), False, None, "calliper"),
        ((), False, "micrometer", "micrometer"),
        ((), True, None, None),
        ((), True, "micrometer", "micrometer"),
        (("calliper",), True, "micrometer", "calliper"),
        (("calliper", "photo"), True, "micrometer", None),
    ],
)
def test_the_row_shows_an_instrument_only_where_one_is_known(
    typed: tuple[str, ...], marks: bool, picked: str | None, shown: str | None
) -> None:
    tools = row_tools(known(WIDTH), {}, typed, marks=marks, picked=picked)
    assert tools.shown == shown
    assert shown in dict(tools.choices)
    assert ("photo", "photo, by eye") in tools.choices


def test_another_instrument_chosen_leaves_it_a_photo_reading(story: PhotoStory) -> None:
    story.take(WIDTH, "removed", story.mark("removed", 8.1234))
    write(story, "8.12", "calliper")
    assert from_photos(story) == 1
    assert story.pair().instruments_used[WIDTH, "removed"] == "photo"


def test_two_marks_that_read_alike_are_both_kept(story: PhotoStory) -> None:
    marks = [story.mark("removed", value) for value in (8.121, 8.122)]
    for mark in marks:
        story.take(WIDTH, "removed", mark)
    write(story, "8.12; 8.12; 8.12")
    assert story.pair().marks[WIDTH, "removed"] == (*marks, None)
    write(story, "8.12")
    assert from_photos(story) == 1


def test_what_is_rubbed_out_of_the_field_is_gone_and_undo_brings_it_back(
    story: PhotoStory,
) -> None:
    story.take(WIDTH, "removed", story.mark("removed", 8.1234))
    before = story.pair()
    write(story, "8.13")
    assert from_photos(story) == 0
    assert typed(story) == ("8.13",)
    story.record.undo()
    assert story.pair() == before


def test_a_pair_goes_with_its_photo_readings_and_comes_back_with_them(story: PhotoStory) -> None:
    story.both_taken(WIDTH, 8.12, 8.64)
    before = story.pair()
    actions.take_pair_away(story.record, story.rotor.pair)
    assert from_photos(story) == 0
    story.record.undo()
    assert story.pair() == before


def test_the_whole_record_is_judged_as_each_page_is(story: PhotoStory) -> None:
    story.both_taken(WIDTH, 8.12, 8.64)
    story.rotor.read(WIDTH, "8.12; 8.15", "")
    with story.record.reading() as connection:
        found = verdicts_of_record(connection, kinds(), {})
    alone = judge(story.pair(), kinds()["distributor-rotor"], {})
    assert found == {story.rotor.pair: alone.verdict}


def test_a_reading_whose_doubt_cannot_be_read_counts_for_nothing(story: PhotoStory) -> None:
    old, _ = story.both_taken(WIDTH, 8.12, 12.64)
    with story.record.deed("Break it") as deed:
        deed.change(PhotoReading, 1, doubt="{}")
    pair = story.pair()
    assert ("removed", WIDTH) not in {(one.side, one.dimension) for one in pair.readings}
    assert typed(story) == ("8.12",)
    judged = judge(pair, kinds()["distributor-rotor"], {})
    width = judged.dimension(WIDTH)
    assert width is not None
    assert width.removed is None
    with story.record.reading() as connection:
        found = verdicts_of_record(connection, kinds(), {})
        assert found == {story.rotor.pair: judged.verdict}
        (said,) = bench_problems(connection)
    assert said.endswith("from a photo can't be read.")
    story.take(WIDTH, "removed", old)  # read again from its mark, it counts
    assert Reading("removed", WIDTH, (8.12,), "photo", (DOUBT,)) in story.pair().readings


@pytest.mark.parametrize(
    ("changed", "two_points", "refused"),
    [
        ({}, False, True),
        ({"kind": "circle"}, False, True),
        ({"height_mm": 0.0, "height_u_mm": 0.0}, False, False),
        ({}, True, False),
        ({"kind": "count", "unit": "", "value": 2.0}, False, False),
    ],
)
def test_on_a_card_a_length_needs_its_height_before_it_is_a_reading(
    story: PhotoStory, changed: dict[str, object], two_points: bool, refused: bool
) -> None:
    if two_points:
        with story.record.deed("Two points") as deed:
            for scale in (1, 2):
                deed.change(PhotoScale, scale, source="points", card_id=None)
    name = "fixing-holes" if changed.get("kind") == "count" else WIDTH
    facts: dict[str, object] = {"value": 8.12, "height_mm": None, "height_u_mm": None}
    mark = story.mark("removed", **(facts | changed))
    if refused:
        with pytest.raises(ShopTrouble, match="how high above the card") as refusal:
            story.take(name, "removed", mark)
        assert "Type 0 for what lies on the card" in refusal.value.do
    else:
        story.take(name, "removed", mark)
    assert from_photos(story) == (0 if refused else 1)


def test_a_mark_whose_height_nobody_says_any_more_leaves_what_was_read(story: PhotoStory) -> None:
    old, _ = story.both_taken(WIDTH, 8.12, 8.64)
    before = story.pair()
    with story.record.deed("Set a mark's height") as deed:
        deed.change(Mark, old, value=8.44, height_mm=None, height_u_mm=None)
        follow(deed, old)
    assert story.pair() == before
    with story.record.reading() as connection:
        (left,) = readings_from_mark(connection, old)
    assert left == (WIDTH, "removed", True)
    with story.record.deed("Set a mark's height") as deed:
        deed.change(Mark, old, height_mm=0.0, height_u_mm=0.0)
        follow(deed, old)
    with story.record.reading() as connection:
        (left,) = readings_from_mark(connection, old)
    assert left == (WIDTH, "removed", False)
    assert typed(story) == ("8.44",)


def test_a_mark_let_go_takes_its_readings_of_this_pair_and_no_others(story: PhotoStory) -> None:
    record, job = story.record, story.rotor.job
    other = actions.lay_side_by_side(record, job, "distributor-rotor").made
    assert other is not None
    actions.show_in_pair(record, other, [story.photos["removed"]], "removed", TOP)
    mark, another = story.mark("removed", 14.05), story.mark("removed", 27.1)
    story.take("bore", "removed", mark)
    story.take("tip-height", "removed", another)
    take_reading_from_mark(record, other, known("bore"), "removed", mark)
    assert from_photos(story) == 3
    before = typed(story, "bore")
    let_mark_go(record, story.rotor.pair, mark)
    assert from_photos(story) == 2
    assert typed(story, "bore") == before[:-1]
    assert typed(story, "tip-height")[-1] == "27.10"
    with record.reading() as connection:
        assert len(read_pair(connection, other).readings) == 1
    record.undo()
    assert typed(story, "bore") == before
