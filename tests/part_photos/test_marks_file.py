"""A file of marks is read whole, or refused with the mark, the field and what is accepted."""

from __future__ import annotations

import json
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera import find_scale
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.marks.marks_file import CardAsked, read_marks
from desktop_app.part_photos.marks.measured_photo import MeasuredPhoto, measured_photo
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.marked_photos import scale_over_card

POINTS = {"points_px": [[0, 0], [100, 0]], "length_mm": 25.0, "length_u_mm": 0.05}
LENGTH = {"name": "reach", "type": "length", "points_px": [[1, 2], [30, 4.5]]}


def text(scale: Any = POINTS, *marks: Any, **more: Any) -> str:
    return json.dumps({"scale": scale, "marks": list(marks), **more})


def test_all_of_it_is_read() -> None:
    bore = {"type": "circle", "points_px": [[0, 0], [9, 0], [9, 9]], "height_mm": 0}
    high = {**LENGTH, "height_mm": 15.0, "height_u_mm": 1.0}
    asked = read_marks(text({"card": "c.json", "card_scale": 1.002}, high, bore, snap=True), "m")
    assert asked.scale == CardAsked("c.json", 1.002)
    assert asked.marks == (
        Mark("length", ((1.0, 2.0), (30.0, 4.5)), "reach", 15.0, 1.0),
        Mark("circle", ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0))),
    )
    assert asked.snap
    assert all(mark.height_said for mark in asked.marks)


def test_what_may_be_left_out_is_left_out() -> None:
    asked = read_marks(text(POINTS, LENGTH), "m")
    assert asked.scale == TwoPointScale(((0.0, 0.0), (100.0, 0.0)), 25.0, 0.05)
    assert not asked.snap
    assert not asked.marks[0].height_said
    assert read_marks(text({"card": "c.json"}), "m").scale == CardAsked("c.json", None)


def mark(**fields: Any) -> str:
    return text(POINTS, LENGTH, {**LENGTH, **fields})


NAN, HUGE = float("nan"), 10**400
REFUSED = [
    ("", "line 1: not JSON"),
    ("[]", "not a file of marks"),
    ("[" * 200_000, "deeply nested"),
    ('{"marks": [], "marks": []}', '"marks" is there twice'),
    (text(POINTS, LENGTH).replace('"name"', '"type": "circle", "name"'), '"type" is there twice'),
    ('{"a": ' + "9" * 5000 + "}", "too long"),
    ('{"marks": []}', "neither a card nor two points"),
    ('{"scale": {}}', "marks is missing"),
    (text("card.json"), "neither a card nor two points"),
    (text({**POINTS, "card": "c"}), "or both"),
    (text({"card": ""}), "scale: card is no file's name"),
    (text({"card": "c", "scale": 1}), "card, card_scale"),
    (text({"card": "c", "card_scale": 150}), "scale: card_scale is 150"),
    (text({"card": "c", "card_scale": 0.4}), "card_scale is 0.4. Accepted: the ruler's measured"),
    (text({"card": "c", "card_scale": 2.5}), "0.5 to 2"),
    (text({**POINTS, "length_mm": 0}), "scale of 0 mm"),
    (text({**POINTS, "length_mm": 1e-320}), "a distance of 0.01 to 10000 mm"),
    (text({**POINTS, "length_mm": None}), "scale: length_mm is missing"),
    (text({**POINTS, "points_px": [[0, 0], [1, 0]]}), "too close together"),
    (text({**POINTS, "points_px": [[0, 0]]}), "scale: points_px has 1 point"),
    (text({**POINTS, "height_mm": 3}), "points_px, length_mm, length_u_mm"),
    (text(POINTS, snap="yes"), "snap is neither"),
    (text(POINTS, extra=1), '"extra" is not known. Accepted: scale, marks, snap'),
    (text(POINTS, 5), "mark 1 is no mark"),
    (text(POINTS, *[LENGTH] * 10_001), "10001 marks"),
    (mark(type="lenght"), 'mark 2 “reach”: type "lenght" is not known. Accepted: length,'),
    (mark(type=["length"]), 'type ["length"] is not known'),
    (mark(type=None), "type is missing"),
    (mark(type="surface"), 'type "surface" is not known. Accepted: length,'),
    (mark(type="bare-metal"), "round-bar, count, note."),
    (mark(name=7), "mark 2: name is no text"),
    (mark(name="two\nlines"), "mark 2: name is no text"),
    (mark(points_px=[[1, 2]]), "points_px has 1 point. Accepted: 2 points"),
    (mark(type="angle"), "has 2 points. Accepted: 3 points"),
    (mark(type="circle"), "has 2 points. Accepted: 3 to 200 points"),
    (mark(points_px="here"), "is missing or no list of points"),
    (mark(points_px=[[1, 2], [3]]), "a point that is no pair"),
    (mark(points_px=[[1, 2], [3, NAN]]), "points_px is too large or no number"),
    (mark(points_px=[[1, 2], [3, "4"]]), "points_px has a point with something else than numbers"),
    (mark(points_px=[[1, 2], [3, HUGE]]), "points_px is too large"),
    (mark(points_px=[[1, 2], [3, True]]), "points_px has a point with something else than numbers"),
    (mark(height_mm=-1), "mark 2 “reach”: height_mm is -1. Accepted: 0 to 500 mm"),
    (mark(height_u_mm=float("inf")), "height_u_mm is too large"),
    (mark(colour="blue"), '"colour" is not known. Accepted: name, type, points_px'),
]


@pytest.mark.parametrize(("wrong", "said"), REFUSED, ids=range(len(REFUSED)))
def test_what_is_wrong_is_named(wrong: str, said: str) -> None:
    with pytest.raises(ShopTrouble) as refused:
        read_marks(wrong, "MARKS.json")
    sentence = refused.value.sentence()
    assert sentence.startswith("MARKS.json: ")
    assert said in sentence
    assert "Accepted: " in sentence


JSON = st.recursive(
    st.none() | st.booleans() | st.floats() | st.integers() | st.text(max_size=5),
    lambda inner: (
        st.lists(inner, max_size=3)
        | st.dictionaries(st.sampled_from([*LENGTH, *POINTS, "card", "x"]), inner, max_size=4)
    ),
    max_leaves=12,
)


@settings(max_examples=80, deadline=None)
@given(JSON, st.lists(JSON, max_size=3) | JSON, JSON)
def test_any_json_is_read_or_refused(scale: Any, marks: Any, snap: Any) -> None:
    try:
        asked = read_marks(json.dumps({"scale": scale, "marks": marks, "snap": snap}), "m")
    except ShopTrouble:
        return
    assert len(asked.marks) == len(marks)


@pytest.mark.parametrize("point", [[64, 5], [5, 48], [-30, 5], [5, 1e5]])
def test_a_scale_by_points_outside_the_picture_is_refused(point: list[float]) -> None:
    # The picture is 60 by 44 pixels; a click on its very edge may lie half a pixel outside.
    pixels = PhotoPixels(np.zeros((44, 60, 3), np.uint8))
    asked = read_marks(text({"points_px": [[5, 5], point], "length_mm": 25.0}), "m")
    with pytest.raises(ShopTrouble, match=r"m: scale: the point .* lies outside the picture"):
        measured_photo(asked, pixels, None, "m")


def measured(marks: list[dict[str, Any]], scale: Any = POINTS, **more: Any) -> MeasuredPhoto:
    """Measure on a photo with a dark band, by two points."""
    grey = np.full((44, 120, 3), 200, np.uint8)
    grey[:, 40:80] = 30
    return measured_photo(
        read_marks(text(scale, *marks, **more), "m"), PhotoPixels(grey), None, "m"
    )


def test_marks_are_measured_by_two_points_one_after_the_other() -> None:
    heard: list[tuple[int, int]] = []
    two = {**LENGTH, "points_px": [[10, 10], [10, 40]], "name": "down"}
    asked = read_marks(text({**POINTS, "points_px": [[5, 5], [105, 5]]}, LENGTH, two), "m")
    picture = PhotoPixels(np.zeros((44, 120, 3), np.uint8))
    done = measured_photo(asked, picture, None, "m", lambda so_far, of: heard.append((so_far, of)))
    assert [one.value for one in done.measured] == pytest.approx([np.hypot(29, 2.5) / 4, 7.5])
    assert heard == [(1, 2), (2, 2)]
    assert done.marks == asked.marks


def test_a_mark_is_laid_on_the_edges_where_that_is_asked() -> None:
    across = {"type": "length", "points_px": [[41, 20], [78, 20]]}
    placed, snapped = measured([across]), measured([across], snap=True)
    assert placed.measured[0].value == pytest.approx(37 / 4)
    assert snapped.measured[0].value == pytest.approx(40 / 4, abs=0.1)
    assert snapped.marks[0].snapped == (True, True)


def test_a_mark_that_cannot_be_measured_is_named_with_what_to_do() -> None:
    line = {"type": "circle", "points_px": [[0, 0], [10, 0], [20, 0]]}
    with pytest.raises(ShopTrouble, match=r"^m: mark 2: ") as told:
        measured([LENGTH, line])
    assert told.value.do
    bands = {"type": "count", "name": "bands", "points_px": [[1, 2], [1.5, 2]]}
    done = measured([bands])
    assert done.measured[0].value is None
    assert done.warnings[1:] == ("mark 1 “bands”: This can't be counted: the line is too short.",)


@pytest.mark.parametrize(("print_scale", "said"), [(0.97, "smaller"), (1.03, "larger"), (1.0, "")])
def test_what_a_cards_photo_leaves_open_is_warned_of_in_one_line_for_all(
    monkeypatch: pytest.MonkeyPatch, print_scale: float, said: str
) -> None:
    asked_for: list[tuple[object, ...]] = []

    def seen(_pixels: PhotoPixels, _cards: object, *ruler: float) -> CardScale:
        asked_for.append(ruler)
        return scale_over_card()

    monkeypatch.setattr(find_scale, "card_scale", seen)
    pixels, card = PhotoPixels(np.zeros((3000, 4000, 3), np.uint8)), bench_card("a4")
    across = {"type": "length", "points_px": [[1800, 1500], [2200, 1500]]}
    high = {**across, "name": "high", "height_mm": 4}
    scale = {"card": "c.json", "card_scale": print_scale}
    done = measured_photo(read_marks(text(scale, *[across] * 7, high), "m"), pixels, card, "m")
    assert asked_for == [(print_scale, pytest.approx(0.05 / card.check_length_mm))]
    unsaid = "mark 1, mark 2, mark 3, mark 4, mark 5 and 2 more"
    assert [one for one in done.warnings if f"No height is given for {unsaid}: " in one]
    assert len(done.warnings) == (2 if said else 1)
    printed = f"The card's print is 3.0% {said} than drawn: was it fitted to the page?"
    assert not said or done.warnings[0].startswith(printed)
    one = measured_photo(read_marks(text(scale, across), "m"), pixels, card, "m")
    assert "No height is given for mark 1: " in one.warnings[-1]
    plain = measured_photo(read_marks(text({"card": "c.json"}, high), "m"), pixels, card, "m")
    assert (asked_for[-1], plain.warnings) == ((), ())
