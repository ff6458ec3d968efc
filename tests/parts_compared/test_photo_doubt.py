"""Readings from marks on photos: their own doubt, and what of it cancels between two photos."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.dimension_verdict import judge_dimension
from desktop_app.parts_compared.instruments.photo_marks import instrument_of_marks
from desktop_app.parts_compared.instruments.tool_choice import finest_together
from desktop_app.parts_compared.judged_in_inches import mm_to_inch
from desktop_app.parts_compared.mark_doubt import MarkRead, doubt_of_mark
from desktop_app.parts_compared.photo_doubt import (
    STAYS,
    PhotoDoubt,
    doubt_from_json,
    doubt_json,
    left_between,
    of_the_mean,
)
from desktop_app.parts_compared.reading import Reading, Side
from desktop_app.parts_compared.uncertainty import (
    Estimate,
    difference_estimate,
    side_estimate,
    side_reading,
)
from tests.parts_compared.invented_kinds import both, dimension, read, worn

CARD = "card 1, 10 ± 1 mm up"
#: A length of some 25 mm in a usual photo: pointing, camera, height, print in mm.
MARK = PhotoDoubt(0.11, 0.04, 0.06, 0.006, CARD)
CLEAN = PhotoDoubt(0.02, 0.01, 0.02, 0.002, CARD)
part = st.floats(0, 1, allow_nan=False)
doubts = st.builds(PhotoDoubt, part, part, part, part, st.sampled_from(("", CARD, "another")))


def marked(side: Side, values: list[float], *each: PhotoDoubt, name: str = "width") -> Reading:
    """Values of one side from marks, each with its doubt; one doubt serves all."""
    return Reading(side, name, tuple(values), "photo", (each * len(values))[: len(values)])


def side_of(values: list[float], *each: PhotoDoubt) -> Estimate:
    return side_estimate(side_reading(values, instrument_of_marks(each, "mm")))


def difference(old: PhotoDoubt, new: PhotoDoubt, more: int = 0) -> Estimate:
    one, other = (side_reading([10.0], instrument_of_marks([d], "mm")) for d in (old, new))
    return difference_estimate(one, other, more)


def test_a_single_mark_leaves_open_what_its_budget_says() -> None:
    found = side_of([24.81], MARK)
    assert found.value == 24.81
    assert found.u == pytest.approx(math.hypot(0.11, 0.04, 0.06, 0.006))
    # The factor is a little more than the mark's own 1.96: pointing is known to a tenth only.
    assert 1.96 * found.u < found.expanded() < 1.025 * 1.96 * found.u


def test_more_marks_make_only_pointing_smaller() -> None:
    found = side_of([24.8, 24.8, 24.8, 24.8], MARK, MARK, MARK, MARK)
    assert found.u < math.hypot(0.11 / 2, 0.04, 0.06, 0.006) * 1.001
    assert side_of([24.8] * 500, *[MARK] * 500).u > math.hypot(0.04, 0.06, 0.006)


def test_marks_that_scatter_beyond_their_pointing_are_believed() -> None:
    """Somebody took hold of another edge: the repeats show it."""
    assert side_of([24.0, 26.0], MARK, MARK).u > 5 * side_of([24.9, 25.0], MARK, MARK).u


def test_of_several_marks_the_widest_photo_counts() -> None:
    found = of_the_mean([MARK, replace(MARK, pointing=0.2, camera=0.5), replace(MARK, height=0.3)])
    assert found.lasting == (0.5, 0.3, 0.006)
    assert found.pointing == pytest.approx(math.sqrt((0.11**2 + 0.2**2 + 0.11**2) / 3))
    assert found.shared_key == CARD
    assert of_the_mean([MARK, replace(MARK, shared_key="another")]).shared_key == ""


def test_what_one_card_gets_wrong_cancels_but_for_a_tenth_and_heights_stay() -> None:
    shared = difference(MARK, MARK)
    pointing_and_camera = math.sqrt(2) * math.hypot(0.11, 0.04)
    assert shared.u == pytest.approx(
        math.hypot(pointing_and_camera, 0.06 * math.sqrt(2), STAYS * 0.006), rel=1e-9
    )
    apart = difference(MARK, replace(MARK, shared_key="another"))
    assert apart.u == pytest.approx(math.sqrt(2) * side_of([1.0], MARK).u, rel=1e-9)
    unknown = replace(MARK, shared_key="")
    assert difference(unknown, unknown).u == apart.u


@given(doubts, doubts)
def test_sharing_never_makes_more_of_it_than_one_photo_after_another(
    one: PhotoDoubt, other: PhotoDoubt
) -> None:
    assert left_between(one, other) == left_between(replace(one), other)
    assert sorted(left_between(one, other)) == pytest.approx(sorted(left_between(other, one)))
    bare = replace(one, shared_key="")
    together = math.hypot(*left_between(one, other))
    assert together <= math.hypot(*left_between(bare, other)) * (1 + STAYS) + 1e-12
    assert together >= math.hypot(one.camera, other.camera) - 1e-12


@given(doubts)
def test_a_kept_doubt_is_read_as_it_was(doubt: PhotoDoubt) -> None:
    assert doubt_from_json(doubt_json(doubt)) == doubt


@pytest.mark.parametrize(
    "text",
    ["", "null", "[]", "{}", doubt_json(MARK).replace("0.11", "-1"), '{"pointing": NaN}'],
)
def test_what_is_no_doubt_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"no photo doubt|Expecting value"):
        doubt_from_json(text)


def test_the_budget_of_a_mark_becomes_its_doubt() -> None:
    budget = {"pointing": 0.11, "scale": 0.03, "height": 0.06, "print": 0.006}
    mark = MarkRead(1, 24.8, "mm", 0.27, budget, 10.0, 1.0, card_id=1)
    found = doubt_of_mark(mark)
    assert (found.pointing, found.printed, found.shared_key) == (0.11, 0.006, CARD)
    assert math.hypot(found.pointing, *found.lasting) == pytest.approx(math.hypot(*budget.values()))
    # 1 mm either way is 0.58 mm, and 0.3 mm is the paper's own, in this photo only.
    assert found.height == pytest.approx(0.06 * 0.577 / math.hypot(0.577, 0.3), rel=1e-3)
    known = doubt_of_mark(replace(mark, height_u_mm=0.0))
    assert (known.height, known.camera) == (0.0, pytest.approx(math.hypot(0.03, 0.06)))
    assert doubt_of_mark(replace(mark, card_id=None)).shared_key == ""


def test_the_flatness_of_the_paper_is_the_photos_own_whatever_the_height() -> None:
    budget = {"pointing": 0.11, "scale": 0.03, "height": 0.06, "flatness": 0.04, "print": 0.006}
    found = doubt_of_mark(MarkRead(1, 24.8, "mm", 0.27, budget, 10.0, 1.0, card_id=1))
    assert (found.height, found.camera) == (0.06, pytest.approx(0.05))
    none = doubt_of_mark(MarkRead(1, 24.8, "mm", 0.27, {**budget, "height": 0.0}, 10.0))
    assert (none.height, none.camera) == (0.0, pytest.approx(0.05))


def test_a_photo_beside_a_calliper_cancels_nothing() -> None:
    width = dimension(allowed=(-5.0, 5.0))
    found = judge_dimension(width, [read("removed", "width", 24.8), _new(24.8)], {})
    alone = judge_dimension(width, both("width", 24.8, 24.8), {})
    assert found.difference_expanded_uncertainty is not None
    assert found.replacement is not None
    assert found.removed is not None
    apart = math.hypot(
        found.removed.expanded_uncertainty or 0.0, found.replacement.expanded_uncertainty or 0.0
    )
    assert found.difference_expanded_uncertainty == pytest.approx(apart, rel=0.05)
    assert found.difference_expanded_uncertainty > (alone.difference_expanded_uncertainty or 0.0)
    assert (found.removed.instrument, found.replacement.instrument) == ("calliper", "photo")


def test_a_photo_read_by_eye_keeps_the_usual_figures_and_is_another_instrument() -> None:
    width = dimension(allowed=(-5.0, 5.0))
    by_eye = both("width", 24.8, 24.8, "photo")
    usual = judge_dimension(width, by_eye, {}).difference_expanded_uncertainty
    mixed = judge_dimension(width, [by_eye[0], _new(24.8)], {})
    by_mark = side_of([24.8], MARK)
    # Steps of 0.05 mm, a spread of 0.15 mm; up to 0.15 mm wrong, which cancels beside its like.
    assert usual == pytest.approx(2.3 * math.hypot(0.15, 0.15, 0.0144, 0.0144), rel=0.05)
    assert mixed.difference_expanded_uncertainty == pytest.approx(
        2.1 * math.hypot(by_mark.u, 0.15, 0.0144, 0.15 / math.sqrt(3)), rel=0.05
    )


def test_several_instruments_are_chosen_for_both_sides_together() -> None:
    eye = instrument_of_marks([MARK], "mm")
    clean = instrument_of_marks([replace(CLEAN, printed=0.5)], "mm")
    rule = dimension(instrument="steel rule")
    assert finest_together({eye: [1.0], clean: [1.0]}, {clean: [1.0]}) == (clean, clean)
    readings = [*both("width", 24.8, 24.9), marked("removed", [24.8], CLEAN), _new(24.9, CLEAN)]
    found = judge_dimension(rule, readings, {})
    assert found.removed is not None
    assert found.removed.instrument == "photo"


def test_more_marks_settle_what_pointing_leaves_open() -> None:
    tip = worn(name="width")
    surer = replace(MARK, height=0.02)
    readings = [marked("removed", [24.8], surer), _new(25.05, surer)]
    found = judge_dimension(tip, readings, {})
    assert found.verdict == "too close to tell"
    assert found.readings_needed is not None
    assert "more readings on each side would probably settle it" in found.sentence


def test_where_the_photo_itself_is_too_coarse_a_finer_instrument_is_named() -> None:
    coarse = replace(MARK, camera=0.3)
    readings = [marked("removed", [24.8], coarse), _new(25.0, coarse)]
    found = judge_dimension(worn(name="width"), readings, {})
    assert (found.readings_needed, found.finer) == (None, "calliper")
    assert "More readings won't settle it; the calliper could." in found.sentence


def test_angles_go_by_the_shortest_way() -> None:
    turned = dimension(unit="deg", role="orientation", allowed=(-8.0, 8.0), instrument="protractor")
    small = PhotoDoubt(0.8, 0.1, 0.0, 0.0, CARD)
    readings = [marked("removed", [359.5, 0.5], small), _new(1.0, small)]
    found = judge_dimension(turned, readings, {})
    assert (found.verdict, found.difference) == ("same", pytest.approx(1.0))


def test_inches_carry_the_doubt_over() -> None:
    assert MARK.times(mm_to_inch(25.4)) == MARK
    assert MARK.times(2.0).lasting == (0.08, 0.12, 0.012)


@pytest.mark.parametrize("shared", [True, False])
@pytest.mark.parametrize("count", [1, 3])
def test_intervals_of_a_difference_cover(count: int, shared: bool) -> None:
    """Heights lie anywhere in +- 1 mm, of each part for itself; one card's print is in both.

    The photos stand at 250 to 450 mm; what 1 mm of height makes of a length is known to a tenth.
    """
    chance, times = np.random.default_rng(11), 3000
    distance = chance.uniform(250, 450, (2, times))
    length = chance.uniform(5, 40, times)
    difference_mm = chance.uniform(-1, 1, times)
    height = chance.uniform(-1, 1, (2, times))
    print_off = chance.normal(0, 0.0003, (2, times))
    if shared:
        print_off[1] = print_off[0]
    hits = 0
    for n in range(times):
        sides = []
        for side, true in enumerate((length[n], length[n] + difference_mm[n])):
            reach = true / (distance[side, n] - 10)
            camera = 0.0015 * true
            read_mm = true + chance.normal(0, 0.11, count) + chance.normal(0, camera)
            read_mm += reach * chance.normal(1, 0.05) * height[side, n] + true * print_off[side, n]
            key = CARD if shared else ""
            doubt = PhotoDoubt(0.11, camera, reach / math.sqrt(3), 0.0003 * true, key)
            sides.append(side_reading(read_mm.tolist(), instrument_of_marks([doubt], "mm")))
        found = difference_estimate(*sides)
        hits += abs(found.value - difference_mm[n]) <= found.expanded()
    assert 0.93 <= hits / times <= 0.97


def _new(value: float, doubt: PhotoDoubt = MARK) -> Reading:
    return marked("replacement", [value], doubt)
