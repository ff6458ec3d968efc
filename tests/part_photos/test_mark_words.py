"""How marks are said and drawn, before any window."""

from __future__ import annotations

import math
from dataclasses import replace
from types import SimpleNamespace
from typing import Any, cast

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.half_drawn import HalfDrawn
from desktop_app.part_photos.mark_lines import distance_to, mark_lines
from desktop_app.part_photos.mark_words import (
    MOST_POINTS,
    TOOLS,
    height_mm,
    height_words,
    largest_part,
    share_sentence,
    shown_height,
    tool_of,
    unit_of,
    value_words,
)
from desktop_app.part_photos.marks.mark import SIZED, Mark
from desktop_app.part_photos.marks.measure import measure
from desktop_app.part_photos.phone.offer import SIDES
from desktop_app.part_photos.scale_words import said_of_scale
from desktop_app.part_photos.signs import SIDE_NAMES, SIDE_SIGNS
from desktop_app.part_photos.surface_pairs import listed, other_surface
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.marked_photos import clicks, ring, scale_over_card, seen


@pytest.mark.parametrize(
    ("value", "unit", "doubt", "length_unit", "said"),
    [
        (4.8123, "mm", 0.2149, "mm", "4.81 ± 0.21 mm"),
        (123.4, "mm", 1.2, "mm", "123.4 ± 1.2 mm"),
        (25.4, "mm", 0.254, "inch", "1.000 ± 0.010 in"),
        (89.96, "deg", 3.61, "inch", "90.0 ± 3.6°"),
        (12.0, "", 0.0, "mm", "12"),
        (30.0, "mm", None, "mm", "30 mm"),
        (12.34, "%", 4.04, "inch", "12 ± 4 %"),
        (12.34, "%", 4.21, "mm", "12 ± 5 %"),  # a share's doubt is rounded up
        (0.32, "%", 0.0, "mm", "0.3 ± 0.1 %"),
        (None, None, None, "mm", ""),
    ],
)
def test_a_value_is_said_with_two_figures_of_its_doubt(
    value: float | None, unit: str | None, doubt: float | None, length_unit: str, said: str
) -> None:
    assert value_words(value, unit, doubt, length_unit) == said


def test_the_largest_part_of_a_doubt_says_how_to_make_it_smaller() -> None:
    said = largest_part({"pointing": 0.1, "scale": 0.05, "height": 0.3, "print": 0.0})
    assert said == "Nearly all of the ± comes from the height: measure it with a calliper."
    most = largest_part({"pointing": 0.3, "scale": 0.2})
    assert most.startswith("Most of the ± comes from the pointing: enlarge the photo")
    spread = largest_part({"pointing": 0.1, "scale": 0.1})
    assert spread.startswith("The largest part of the ± comes from")
    assert largest_part({}) == ""


@pytest.mark.parametrize(
    ("typed", "length_unit", "mm"),
    [
        ("12.5", "mm", 12.5),
        (" 12,5 mm", "mm", 12.5),
        ("0.5", "inch", 12.7),
        ('1"', "mm", 25.4),
        ("10 MM", "inch", 10.0),
        (".5", "mm", 0.5),
        (",5 in", "mm", 12.7),
        ("2 inches", "mm", 50.8),
        ("7.", "mm", 7.0),
        ("", "mm", None),
    ],
)
def test_a_height_is_read_in_the_shops_unit(typed: str, length_unit: str, mm: float | None) -> None:
    assert height_mm(typed, length_unit) == (None if mm is None else pytest.approx(mm))


@pytest.mark.parametrize(
    "typed", ["-1", "12 mmm", "1e9", "nan", "501", "1 2", "²", ".", ",", "1,2,3", "20 in"]
)
def test_what_is_no_height_is_refused(typed: str) -> None:
    with pytest.raises(ShopTrouble, match="can't be understood"):
        height_mm(typed)


def test_a_height_that_nobody_said_leaves_its_field_empty() -> None:
    assert shown_height(None, "inch") == ""
    assert height_mm("") is None


@given(st.floats(0, 500), st.sampled_from(["mm", "inch"]))
def test_a_shown_height_means_the_same_when_it_is_read(value: float, unit: str) -> None:
    assert height_mm(shown_height(value, unit), unit) == pytest.approx(value, abs=2e-5)


def test_each_tool_stands_once_and_knows_its_end() -> None:
    assert [tool.label for tool in TOOLS].count("Length") == 1
    for tool in TOOLS:
        for placed in range(len(tool.clicks)):
            assert not tool.is_whole(placed)
        assert tool.is_whole(len(tool.clicks)) is not tool.open_ended
    assert "gap before the first" in tool_of("count").clicks[0]


def test_a_share_is_said_as_a_number_and_not_as_a_judgement() -> None:
    said = share_sentence(12.3, 4.0)
    assert said == "12 ± 4 % of this surface has another colour than bare metal."
    assert share_sentence(None, None) == ""


def test_surfaces_of_one_name_stand_together_in_the_list() -> None:
    def surface(name: str) -> Mark:
        return Mark("surface", ((0, 0), (9, 0), (9, 9)), name)

    old = {1: surface("hub"), 2: Mark("length", ((0, 0), (9, 0)), "tip"), 3: surface("")}
    new = {4: Mark("length", ((0, 0), (9, 0)), "hub"), 5: surface("  HUB "), 6: surface("")}
    assert listed(old, new) == [1, 5, 2, 3, 4, 6]
    assert other_surface(new[5], old) == 1
    assert other_surface(new[6], old) is None  # no name is no name in common
    assert other_surface(old[2], new) is None


def test_an_outline_is_drawn_closed_and_as_it_was_clicked() -> None:
    corners = ((10.0, 10.0), (40.0, 12.0), (20.0, 50.0))
    lines = mark_lines(Mark("surface", corners), TwoPointScale(((0, 0), (100, 0)), 10.0))
    assert lines.lines == ((*corners, corners[0]),)
    assert lines.label_at == (10.0, 10.0)


def test_a_half_drawn_mark_takes_no_second_half_of_a_double_click() -> None:
    draft = HalfDrawn()
    draft.take(tool_of("length"))
    assert not draft.place((5, 5), (100, 80), 2.0)
    assert not draft.place((6, 5), (100, 80), 2.0)
    assert draft.place((500, -9), (100, 80), 2.0)
    assert draft.drop() == ((5, 5), (99.5, -0.5))  # inside the photo, to its very edge
    draft.place((5, 5), (100, 80), 0.0)
    draft.take(tool_of("length"))
    assert draft.points == [(5, 5)]
    draft.take(tool_of("angle"))
    assert draft.points == []


def test_enter_ends_an_open_ended_mark_as_soon_as_it_has_its_points() -> None:
    draft = HalfDrawn()
    assert not draft.place((5, 5), (100, 80), 2.0)  # no tool, no point
    assert not draft.is_enough()
    draft.take(tool_of("circle"))
    for x, enough in ((5, False), (40, False), (75, True), (90, True)):
        assert not draft.place((x, 5), (100, 80), 2.0)
        assert draft.is_enough() is enough
    assert draft.mark() == Mark("circle", ((5, 5), (40, 5), (75, 5), (90, 5)))
    for x in range(200):
        draft.place((x % 100, 5 + x % 7), (100, 80), 0.0)
    assert len(draft.points) == MOST_POINTS


def test_a_point_to_a_line_is_drawn_at_a_right_angle() -> None:
    lines = mark_lines(Mark("point-to-line", ((50, 10), (0, 40), (30, 40))))
    assert lines.sizes == (((50, 10), (50, 40)),)
    assert lines.lines[0][-1] == (50, 40)  # the line is drawn on to where it is measured


@pytest.mark.parametrize("kind", ["parallel-distance", "round-bar"])
def test_two_lines_are_drawn_with_what_lies_between_them(kind: Any) -> None:
    lines = mark_lines(Mark(kind, ((0, 0), (20, 0), (0, 30), (40, 30))))
    assert lines.lines == (((0, 0), (20, 0)), ((0, 30), (40, 30)))
    assert lines.sizes == (((10, 0), (10, 30)),)
    assert lines.label_at == (10, 15)


def test_a_note_is_drawn_as_an_arrow_from_its_words_to_the_spot() -> None:
    lines = mark_lines(Mark("note", ((10, 10), (60, 40))))
    assert lines.arrows == (((60, 40), (10, 10)),)
    assert lines.label_at == (60, 40)


def test_an_angle_is_drawn_with_an_arc_from_leg_to_leg() -> None:
    legs = ((20.0, 0.0), (0.0, 0.0), (0.0, 50.0))
    drawn, arc = mark_lines(Mark("angle", legs)).lines
    assert drawn == legs
    assert all(math.hypot(x, y) == pytest.approx(8.0) for x, y in arc)
    assert (arc[0], arc[-1]) == (pytest.approx((8.0, 0.0)), pytest.approx((0.0, 8.0)))
    assert all(x > -1e-9 and y > -1e-9 for x, y in arc)  # the shorter way round


def test_three_points_in_a_row_are_drawn_as_a_line_until_they_make_a_circle() -> None:
    row = ((0.0, 0.0), (10.0, 0.0), (20.0, 0.0))
    assert mark_lines(Mark("circle", row)).lines == (row,)


def test_what_lies_beyond_the_cameras_horizon_is_drawn_as_it_was_clicked() -> None:
    flat = scale_over_card(tilt_deg=80.0)
    beyond = ((2000.0, 1500.0), (2000.0, 2900.0))  # its second point lies on no card at all
    assert mark_lines(Mark("length", beyond), flat).lines == (beyond,)
    # A circle whose rim goes on behind the camera.
    rim = clicks(seen(flat, ring(400.0, 8)[1:4]))
    assert mark_lines(Mark("circle", rim), flat).lines == (rim,)
    near = clicks(seen(flat, ring(20.0, 8)))
    assert len(mark_lines(Mark("circle", near), flat).lines[0]) > len(near)


def test_each_type_of_mark_says_its_unit() -> None:
    units = {tool.type: unit_of(tool.type) for tool in TOOLS}
    assert {kind for kind, unit in units.items() if unit == "mm"} == SIZED - {"angle"}
    assert (units["angle"], units["surface"]) == ("deg", "%")
    assert units["count"] == units["note"] == units["bare-metal"] == ""


def test_each_side_of_a_pair_has_a_sign_and_a_name_of_its_own() -> None:
    assert set(SIDE_SIGNS) == set(SIDE_NAMES) == set(SIDES)
    assert len(set(SIDE_SIGNS.values())) == len(set(SIDE_NAMES.values())) == 2


def test_what_gives_a_photo_its_millimetres_is_said_in_a_sentence() -> None:
    card = scale_over_card(tilt_deg=15.0, distance=300.0)
    away = card.distance_mm
    assert said_of_scale(card).startswith(f"Card seen: 20 markers, tilt 15°, {away:.0f} mm away.")
    assert f"{away / 25.4:.1f} in away" in said_of_scale(card, "inch")
    points = TwoPointScale(((0.0, 0.0), (50.0, 0.0)), 10.0)
    assert said_of_scale(points).startswith("Two points of known length: it holds only in their")
    assert (points.tilt_deg, points.distance_mm) == (None, None)
    with pytest.raises(TypeError):
        points.rays(np.zeros((1, 2)))


def test_what_a_scale_does_not_know_is_not_said() -> None:
    blind = SimpleNamespace(source="card", tilt_deg=None, distance_mm=None, warnings=("Beware.",))
    assert said_of_scale(cast(PlaneScale, blind)) == "Card seen. Beware."


def test_a_circle_is_drawn_round_and_chosen_at_its_rim() -> None:
    circle = Mark("circle", ((10, 0), (0, 10), (-10, 0), (0, -10)))
    lines = mark_lines(circle)
    assert all(math.hypot(x, y) == pytest.approx(10) for x, y in lines.lines[0])
    assert distance_to(circle, lines, (0, 0)) == pytest.approx(10, abs=0.1)
    assert distance_to(circle, lines, (7.2, 7.2)) < 0.3


@given(
    st.sampled_from([tool.type for tool in TOOLS]),
    st.lists(st.tuples(st.floats(-50, 5000), st.floats(-50, 5000)), max_size=5),
    st.booleans(),
)
def test_any_points_can_be_drawn(
    kind: str, points: list[tuple[float, float]], scaled: bool
) -> None:
    scale = TwoPointScale(((0, 0), (100, 0)), 10.0) if scaled else None
    mark = Mark(kind, tuple(points))  # type: ignore[arg-type]
    lines = mark_lines(mark, scale)
    every = [lines.label_at, *(one for line in (*lines.lines, *lines.sizes) for one in line)]
    assert all(math.isfinite(x) and math.isfinite(y) for x, y in every)
    assert distance_to(mark, lines, (0.0, 0.0)) >= 0


def test_a_size_from_the_card_says_that_its_height_was_not_said() -> None:
    card, points = scale_over_card(), TwoPointScale(((0.0, 0.0), (50.0, 0.0)), 10.0)
    unsaid = Mark("length", ((1000.0, 1000.0), (1400.0, 1000.0)), height_said=False)
    assert height_words(unsaid, card) == "height not said: holds only on the card"
    assert height_words(replace(unsaid, height_said=True), card) == ""
    assert height_words(replace(unsaid, type="angle"), card) == ""
    assert height_words(unsaid, points) == height_words(unsaid, None) == ""
    (said,) = measure(unsaid, card).warnings
    assert "hold only for what lies on the card itself" in said
    assert f"about {100 / card.distance_mm:.2f} % too large" in said
    assert measure(replace(unsaid, height_said=True), card).warnings == ()
