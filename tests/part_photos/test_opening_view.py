"""Where the bench looks first, what is dotted, and millimetres said in inches."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.opening_view import around_field, around_marks
from desktop_app.part_photos.overlay.said_in_unit import said_in_unit
from desktop_app.part_photos.overlay.stretches import stretches
from tests.part_photos.overlay_scenes import Pinhole


def test_the_marks_are_in_view_and_a_short_one_is_not_looked_at_too_closely() -> None:
    marks = [Mark("length", ((100.0, 50.0), (300.0, 60.0))), Mark("note", ((200.0, 90.0),) * 2)]
    left, top, width, height = around_marks(marks, (400, 300)) or (0.0, 0.0, 0.0, 0.0)
    assert (left, width) == (100.0, 200.0)
    assert (top, top + height) == pytest.approx((50.0, 90.0))
    short = around_marks([Mark("length", ((10.0, 10.0), (11.0, 10.0)))], (1000, 500))
    assert short == pytest.approx((-29.5, -30.0, 80.0, 80.0), abs=1)
    assert around_marks([], (400, 300)) is None
    for beside in ((-50.0, 20.0), (20.0, 900.0), (float("nan"), 20.0)):
        assert around_marks([Mark("note", (beside, beside))], (400, 300)) is None


def test_without_marks_the_room_for_the_part_is_in_view() -> None:
    eye = Pinhole((105.0, 148.0, 330.0), focal_px=1050.0, size=(1400, 1050))
    card = bench_card("a4")
    box = around_field(eye, card, eye.size)
    assert box is not None
    assert card.free_field_mm is not None
    left, top, right, bottom = card.free_field_mm
    inside = eye.to_pixels(np.array([((left + right) / 2, (top + bottom) / 2)]), 0.0)[0]
    assert box[0] < inside[0] < box[0] + box[2]
    assert box[1] < inside[1] < box[1] + box[3]
    assert around_field(None, card, eye.size) is None
    assert around_field(eye, None, eye.size) is None


@given(st.lists(st.booleans(), max_size=30))
def test_stretches_go_once_round_the_line_and_nothing_gapes(dotted: list[bool]) -> None:
    found = list(stretches(dotted))
    steps = [pair for _, run in found for pair in pairwise(run)]
    count = len(dotted)
    assert sorted(steps) == [(n, (n + 1) % count) for n in range(count)]
    assert all(dotted[one] == is_dotted for is_dotted, run in found for one in run[:-1])


def test_a_sentence_says_inches_where_the_shop_does() -> None:
    said = "Up to 28 mm was reckoned with. They run 0.06 mm apart. Say the height, in mm, for more."
    assert said_in_unit(said, "mm") == said
    assert said_in_unit(said, "inch") == (
        "Up to 1.10 in was reckoned with. They run 0.0024 in apart. "
        "Say the height, in inches, for more."
    )
