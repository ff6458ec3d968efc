"""Which piece of a photo is printed, how large a mm is in it, and the bar that says so."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.parts_compared.marks_take import marks_take
from desktop_app.parts_compared.sheet_crop import Box, MarksTake, bar, crops
from tests.parts_compared.photo_story import STRAIGHT_DOWN

PHONE = (3024, 4032)
pixels = st.floats(0, 3000)
takes = st.builds(
    lambda x, y, w, h, mm: MarksTake(PHONE, (x, y, min(x + w, 3024), min(y + h, 4032)), mm),
    *[pixels] * 4,
    st.none() | st.floats(2, 40),
)


def holds(box: Box | None, take: MarksTake) -> bool:
    """Whether all marks are in the piece, and the piece is in the photo."""
    left, top, right, bottom = box or (0, 0, *take.size)
    inside = 0 <= left < right <= take.size[0] and 0 <= top < bottom <= take.size[1]
    marks = take.box
    kept = left <= marks[0] + 1 and top <= marks[1] + 1
    return inside and kept and right >= marks[2] - 1 and bottom >= marks[3] - 1


@given(takes, st.none() | takes)
def test_no_mark_is_ever_cut_and_a_piece_is_in_its_photo(
    old: MarksTake, new: MarksTake | None
) -> None:
    first, second = crops(old, new)
    assert holds(first, old)
    assert second is None if new is None else holds(second, new)
    assert crops(new, old) == (second, first)


@given(takes, takes)
def test_two_pieces_with_millimetres_show_as_much_of_the_part_or_each_what_it_needs(
    old: MarksTake, new: MarksTake
) -> None:
    first, second = crops(old, new)
    if old.px_per_mm is None or new.px_per_mm is None or first is None or second is None:
        return
    mm = [(b[2] - b[0]) / t.px_per_mm for b, t in ((first, old), (second, new)) if t.px_per_mm]
    alone = crops(old, None)[0], crops(None, new)[1]
    if (first, second) != alone:
        assert mm[0] == pytest.approx(mm[1], abs=1 / min(old.px_per_mm, new.px_per_mm))


def test_a_small_mark_in_a_large_photo_is_shown_with_what_is_around_it() -> None:
    take = MarksTake(PHONE, (1500.0, 2000.0, 1800.0, 2020.0), None)
    box, none = crops(take, None)
    assert none is None
    assert box is not None
    width, height = box[2] - box[0], box[3] - box[1]
    assert width == 300 * (1 + 2 * 0.6)
    assert width / height == pytest.approx(1.7, abs=0.01)
    assert (box[0] + box[2]) / 2 == pytest.approx(1650, abs=1)
    tiny = crops(MarksTake(PHONE, (1500.0, 2000.0, 1504.0, 2000.0), None), None)[0]
    assert tiny is not None
    assert tiny[2] - tiny[0] == 460


def test_a_small_photo_and_one_full_of_marks_stay_whole() -> None:
    assert crops(MarksTake((400, 300), (100.0, 100.0, 150.0, 120.0), None), None) == (None, None)
    assert crops(MarksTake(PHONE, (10.0, 10.0, 3000.0, 4000.0), None), None) == (None, None)
    assert crops(None, None) == (None, None)


@pytest.mark.parametrize(
    ("mm_wide", "unit", "words", "mm"),
    [(80.0, "mm", "20 mm", 20.0), (14.0, "mm", "2 mm", 2.0), (80.0, "inch", "1 in", 25.4)],
)
def test_the_bar_is_a_round_length_and_at_most_a_third_of_the_picture(
    mm_wide: float, unit: str, words: str, mm: float
) -> None:
    found = bar(mm_wide, unit)
    assert found == (pytest.approx(mm / mm_wide), words)
    assert found is not None
    assert found[0] <= 0.35


def test_no_bar_fits_a_picture_of_less_than_a_few_millimetres() -> None:
    assert bar(2.0, "mm") is None


def test_a_millimetre_is_as_large_as_it_is_at_the_height_of_the_marks() -> None:
    ends = ((100.0, 100.0), (300.0, 100.0))
    low = marks_take((640, 480), [Mark("length", ends)], STRAIGHT_DOWN)
    high = marks_take((640, 480), [Mark("length", ends, height_mm=56.0)], STRAIGHT_DOWN)
    assert low is not None
    assert high is not None
    assert low.box == (100.0, 100.0, 300.0, 100.0)
    assert low.px_per_mm == pytest.approx(500 / 312)
    assert high.px_per_mm == pytest.approx(500 / (312 - 56))


def test_without_sized_marks_or_a_scale_there_are_no_millimetres() -> None:
    note = Mark("note", ((10.0, 10.0), (50.0, 50.0)))
    length = Mark("length", ((10.0, 10.0), (50.0, 50.0)))
    for marks, scale in (([note], STRAIGHT_DOWN), ([length], None)):
        take = marks_take((640, 480), marks, scale)
        assert take is not None
        assert take.px_per_mm is None
    assert marks_take((640, 480), [], STRAIGHT_DOWN) is None
    beyond = marks_take(
        (640, 480), [Mark("length", length.points_px, height_mm=400.0)], STRAIGHT_DOWN
    )
    assert beyond is not None
    assert beyond.px_per_mm is None  # the plane lies behind the camera
    by_points = TwoPointScale(((0.0, 0.0), (100.0, 0.0)), 20.0, 0.0)
    take = marks_take((640, 480), [length], by_points)
    assert take is not None
    assert take.px_per_mm == pytest.approx(5.0)
