"""The bench cards: where markers, field and white paper are, and what a layout file may say."""

from __future__ import annotations

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.bench_card.card_file import card_json, read_card
from desktop_app.part_photos.bench_card.card_layout import CardLayout, CardMarker
from desktop_app.part_photos.bench_card.card_layouts import (
    PAGES_MM,
    Rect,
    bench_card,
    usual_paper,
    white_patches,
)
from desktop_app.part_photos.bench_card.marker_modules import (
    black_blocks,
    marker_count,
    marker_modules,
)
from desktop_app.shop_record.trouble import ShopTrouble

PAPERS = ("a4", "letter")
MODULE_MM = 16 / 7


def outline(marker: CardMarker) -> Rect:
    """Return what a marker covers."""
    return (*marker.corners_mm[0], *marker.corners_mm[2])


def apart(one: Rect, other: Rect) -> float:
    """Return how far two rectangles are apart, along the axis where they are further."""
    across = max(one[0] - other[2], other[0] - one[2])
    return max(across, one[1] - other[3], other[1] - one[3])


@pytest.mark.parametrize("paper", PAPERS)
def test_the_markers_have_room_for_their_quiet_zone_and_the_printers_margin(paper: str) -> None:
    layout = bench_card(paper)
    wide, high = PAGES_MM[paper]
    assert layout.free_field_mm is not None
    around = [outline(marker) for marker in layout.markers]
    for number, one in enumerate(around):
        assert min(one[0], one[1], wide - one[2], high - one[3]) >= 9
        assert apart(one, layout.free_field_mm) >= 2 * MODULE_MM
        assert all(apart(one, other) >= 2 * MODULE_MM for other in around[:number])
        assert one[2] - one[0] == pytest.approx(16)
        assert one[3] - one[1] == pytest.approx(16)


def test_the_field_has_room_for_the_longest_brake_pads() -> None:
    for paper in PAPERS:
        field = bench_card(paper).free_field_mm
        assert field is not None
        assert field[2] - field[0] >= 150
        assert field[3] - field[1] >= 200


def test_a_photo_tells_by_its_ids_which_card_lies_in_it() -> None:
    a4, letter = bench_card("a4"), bench_card("letter")
    assert len(a4.ids) == len(a4.markers) == 20
    assert not a4.ids & letter.ids
    assert a4.dictionary == letter.dictionary == "DICT_5X5_100"


@pytest.mark.parametrize("paper", PAPERS)
def test_white_paper_is_bare_and_large_enough_for_a_colour_balance(paper: str) -> None:
    layout = bench_card(paper)
    patches = white_patches(layout)
    assert len(patches) >= 16
    for patch in patches:
        assert all(apart(patch, outline(marker)) >= 2 for marker in layout.markers)
        assert layout.free_field_mm is not None
        assert apart(patch, layout.free_field_mm) >= 4
    assert sum(p[2] - p[0] >= 20 and p[3] - p[1] >= 8 for p in patches) >= 4


def test_a_print_that_came_out_smaller_has_everything_nearer_to_its_corner() -> None:
    layout = bench_card("letter")
    small = layout.printed(0.98)
    assert (small.name, small.ids, small.check_length_mm) == (layout.name, layout.ids, 147.0)
    last, drawn = (one.markers[-1].corners_mm for one in (small, layout))
    for corner, (x, y) in zip(last, drawn, strict=True):
        assert corner == pytest.approx((0.98 * x, 0.98 * y))
    for patch in white_patches(layout, 0.98):
        assert all(apart(patch, outline(marker)) >= 1.9 for marker in small.markers)
    assert layout.printed(1.0) == layout


def test_a_foreign_card_has_no_paper_that_is_sure_to_be_white() -> None:
    ours = bench_card("a4")
    foreign = CardLayout(ours.name, ours.dictionary, "a4", ours.markers[:4], 150.0)
    assert white_patches(foreign) == ()


def test_there_is_no_card_for_another_paper() -> None:
    with pytest.raises(ShopTrouble, match="Accepted: a4, letter"):
        bench_card("a5")


def test_the_paper_follows_the_house_rules_and_then_the_country() -> None:
    assert usual_paper("US") == usual_paper("DE", "Letter") == "letter"
    assert usual_paper("DE", "A4") == usual_paper("") == "a4"


def test_a_marker_is_covered_by_its_blocks_exactly_once() -> None:
    modules = marker_modules("DICT_5X5_100", 7)
    assert len(modules) == 7
    covered = [
        (x, y)
        for x0, y0, x1, y1 in black_blocks(modules)
        for x in range(x0, x1)
        for y in range(y0, y1)
    ]
    assert sorted(covered) == sorted((x, y) for y in range(7) for x in range(7) if modules[y][x])


def test_opencvs_dictionaries_are_known_by_their_names() -> None:
    # Sizes as in OpenCV's documentation of PredefinedDictionaryType.
    assert marker_count("DICT_4X4_50") == 50
    assert marker_count("DICT_5X5_100") == 100
    assert marker_count("DICT_6X6_1000") == 1000
    assert marker_count("DICT_ARUCO_ORIGINAL") == 1024
    assert marker_count("DICT_9X9_50") is None
    assert marker_count("Dictionary") is None


@pytest.mark.parametrize("paper", PAPERS)
def test_a_layout_is_read_back_as_it_was_written(paper: str) -> None:
    assert read_card(card_json(bench_card(paper)), "CARD.json") == bench_card(paper)


def test_the_file_has_the_fields_of_the_contract() -> None:
    said = json.loads(card_json(bench_card("a4")))
    assert (said["dictionary"], said["paper"]) == ("DICT_5X5_100", "a4")
    assert said["check_length_mm"] == 150.0
    assert said["markers"][0] == {
        "id": 0,
        "corners_mm": [[9.0, 9.0], [25.0, 9.0], [25.0, 25.0], [9.0, 25.0]],
    }
    assert said["free_field_mm"] == [30.0, 30.0, 180.0, 250.0]


NUMBERS = st.floats(-4000, 4000)
NAMES = st.text('aZ é°×–Ж1"\\', min_size=1, max_size=30).filter(lambda text: bool(text.strip()))


@st.composite
def layouts(draw: st.DrawFn) -> CardLayout:
    """Cards of other people: any dictionary, squares anywhere, perhaps without a field."""
    dictionary = draw(st.sampled_from(["DICT_4X4_50", "DICT_6X6_250", "DICT_APRILTAG_36h11"]))
    ids = draw(st.lists(st.integers(0, 49), min_size=1, max_size=6, unique=True))
    markers = []
    for number in ids:
        x, y, size = draw(NUMBERS), draw(NUMBERS), draw(st.floats(2, 90))
        corners = ((x, y), (x + size, y), (x + size, y + size), (x, y + size))
        markers.append(CardMarker(number, corners))
    field = draw(st.none() | st.just((0.0, 1.5, 20.25, 30.0)))
    length = draw(st.floats(1, 1000))
    return CardLayout(draw(NAMES), dictionary, draw(NAMES), tuple(markers), length, field)


@given(layouts())
def test_any_card_is_read_back_as_it_was_written(layout: CardLayout) -> None:
    assert read_card(card_json(layout), "card.json") == layout


def card(**changed: Any) -> dict[str, Any]:
    """Return a small foreign card, with some of its fields changed."""
    square = [[0, 0], [40, 0], [40, 40], [0, 40]]
    facts = {
        "name": "one marker",
        "dictionary": "DICT_4X4_50",
        "paper": "a5",
        "markers": [{"id": 3, "corners_mm": square}],
        "check_length_mm": 100,
    }
    return {**facts, **changed}


def markers(*corners: Any, number: Any = 3) -> list[Any]:
    """Return one marker with these corners."""
    return [{"id": number, "corners_mm": list(corners)}]


SQUARE = ([0, 0], [40, 0], [40, 40], [0, 40])


def test_a_single_foreign_marker_is_welcome() -> None:
    found = read_card(json.dumps(card(more="is left alone")), "mine.json")
    assert found.markers[0].corners_mm[2] == (40.0, 40.0)
    assert found.free_field_mm is None


@pytest.mark.parametrize(
    ("facts", "where"),
    [
        (card(name=""), "name"),
        (card(name="two\nlines"), "name"),
        (card(name="torn \ud800"), "name"),
        (card(paper=4), "paper"),
        (card(dictionary="DICT_9X9_9"), "dictionary"),
        (card(dictionary="getPredefinedDictionary"), "dictionary"),
        (card(check_length_mm=0), "check_length_mm is not above 0"),
        (card(check_length_mm=-5), "check_length_mm"),
        (card(check_length_mm="150"), "check_length_mm"),
        (card(check_length_mm=True), "check_length_mm"),
        (card(check_length_mm=float("nan")), "check_length_mm is no number"),
        (card(check_length_mm=float("inf")), "check_length_mm"),
        (card(check_length_mm=10**400), "check_length_mm"),
        (card(markers=[]), "markers"),
        (card(markers={}), "markers"),
        (card(markers=[5]), "markers[0]"),
        (card(markers=markers(*SQUARE) * 1001), "markers"),
        (card(markers=markers(*SQUARE) * 2), "markers[1].id 3 is there twice"),
        (card(markers=markers(*SQUARE, number=50)), "markers[0].id"),
        (card(markers=markers(*SQUARE, number=-1)), "markers[0].id"),
        (card(markers=markers(*SQUARE, number=True)), "markers[0].id"),
        (card(markers=markers(*SQUARE, number="3")), "markers[0].id"),
        (card(markers=markers(*SQUARE[:3])), "markers[0].corners_mm is not four corners"),
        (card(markers=markers([0, 0, 0], *SQUARE[1:])), "markers[0].corners_mm"),
        (card(markers=markers([0, None], *SQUARE[1:])), "markers[0].corners_mm"),
        (card(markers=markers([0, float("nan")], *SQUARE[1:])), "markers[0].corners_mm"),
        (card(markers=markers([0, 1e300], *SQUARE[1:])), "markers[0].corners_mm"),
        (card(markers=markers(*reversed(SQUARE))), "corners clockwise"),
        (card(markers=markers(SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3])), "no marker's outline"),
        (card(markers=markers([0, 0], [0.9, 0], [0.9, 0.9], [0, 0.9])), "no marker's outline"),
        (card(markers=markers([0, 0], [40, 0], [40, 40], [30, 10])), "no marker's outline"),
        (card(free_field_mm=[1, 2, 3]), "free_field_mm"),
        (card(free_field_mm=[50, 0, 10, 90]), "free_field_mm"),
        ([card()], "not a card's layout"),
        (7, "not a card's layout"),
    ],
)
def test_what_is_odd_is_refused_with_file_and_field(facts: Any, where: str) -> None:
    with pytest.raises(ShopTrouble) as caught:
        read_card(json.dumps(facts), "mine.json")
    assert caught.value.what.startswith("mine.json: ")
    assert where in caught.value.sentence()
    assert caught.value.do.startswith("Accepted: ")


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "line 1: not JSON"),
        ('{\n"name": oops}', "line 2: not JSON"),
        ("[" * 100_000, "too deeply nested"),
        ('{"check_length_mm": ' + "9" * 5000 + "}", "too long"),
        (" " * 1_000_001, "too long"),
    ],
)
def test_what_is_no_json_is_refused_in_one_line(text: str, said: str) -> None:
    with pytest.raises(ShopTrouble, match=said) as caught:
        read_card(text, "mine.json")
    assert "\n" not in caught.value.sentence()


@given(st.recursive(st.none() | st.booleans() | NUMBERS | NAMES, st.lists, max_leaves=5))
def test_any_other_json_is_refused_and_never_a_mistake(value: Any) -> None:
    for name in card():
        with pytest.raises(ShopTrouble):
            read_card(json.dumps(card(**{name: [value]})), "mine.json")
