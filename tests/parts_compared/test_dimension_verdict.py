"""The verdict on one dimension, role by role."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.comparison import DimensionComparison
from desktop_app.parts_compared.dimension_verdict import judge_dimension
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.reading import Reading
from tests.parts_compared.invented_kinds import both, dimension, read, worn

CALLIPER = Instrument("calliper", "mm", 0.01, 0.03)
DRAWER = {"calliper": CALLIPER}
TURN = dimension(name="turn", role="orientation", unit="deg", allowed=(-2.0, 2.0),
                 instrument="protractor")  # fmt: skip
LENGTHS = st.floats(1.0, 80.0).map(lambda one: round(one, 2))


def judged(one: Dimension, old: object, new: object) -> DimensionComparison:
    return judge_dimension(one, both(one.name, old, new), DRAWER)


@pytest.mark.parametrize(
    ("new", "verdict"),
    [
        (10.0, "same"),
        (10.1, "same"),
        (9.9, "same"),
        (10.19, "too close to tell"),
        (10.21, "too close to tell"),
        (10.3, "differs"),
        (9.7, "differs"),
    ],
)
def test_same(new: float, verdict: str) -> None:
    assert judged(dimension(), 10.0, new).verdict == verdict


@pytest.mark.parametrize(
    ("new", "verdict"),
    [
        (10.55, "restored"),
        (10.0, "not restored"),
        (10.03, "not restored"),
        (9.8, "worse than the old one"),
        (10.11, "too close to tell"),
        (11.5, "too close to tell"),
        (12.0, "more than wear explains"),
    ],
)
def test_restored_bigger(new: float, verdict: str) -> None:
    assert judged(worn(), 10.0, new).verdict == verdict


@pytest.mark.parametrize(
    ("new", "verdict"),
    [
        (0.8, "restored"),
        (1.3, "not restored"),
        (1.6, "worse than the old one"),
        (0.2, "more than wear explains"),
    ],
)
def test_restored_smaller(new: float, verdict: str) -> None:
    gap = worn(direction="smaller", allowed=(-0.8, -0.1))
    assert judged(gap, 1.3, new).verdict == verdict


def test_count_and_word() -> None:
    count = dimension(name="holes", role="count", unit="n", allowed=(0.0, 0.0), instrument="eye")
    assert judged(count, 4, 4).verdict == "same"
    off = judged(count, 4, 6)
    assert (off.verdict, off.difference) == ("count off", 2.0)
    assert judged(count, [22, 23], 22).verdict == "too close to tell"
    word = dimension(name="form", role="word", unit="word", allowed=None, instrument="eye")
    assert judged(word, "Male", " male ").verdict == "same"
    assert judged(word, "M14×1.25", "m14 x 1.25").verdict == "same"
    assert judged(word, "male", "female").verdict == "differs"
    assert judged(word, ["male", "female"], "female").verdict == "too close to tell"


def test_angles_go_round() -> None:
    near = judged(TURN, [359.5, 0.5, 359.8], [0.4, 0.2, 0.3])
    assert near.verdict == "same"
    assert near.difference == pytest.approx(0.3667, abs=1e-3)
    turned = judged(TURN, 60, 95)
    assert turned.verdict == "turned"
    assert "mirror" not in turned.sentence
    mirrored = judged(TURN, 30, 330)
    assert mirrored.verdict == "turned"
    assert "mirror image" in mirrored.sentence


def test_a_yes_needs_an_instrument_that_can_see_it() -> None:
    coarse = judge_dimension(
        dimension(allowed=(-0.05, 0.05), instrument="steel rule"), both("width", 10, 10), {}
    )
    assert coarse.verdict == "too close to tell"
    assert coarse.readings_needed is None
    assert coarse.finer == "calliper"
    assert "More readings won't settle it; the calliper could." in coarse.sentence


def test_the_shops_own_instrument_is_named_where_it_could_settle_it() -> None:
    narrow = dimension(allowed=(-0.004, 0.004), instrument="micrometer")
    readings = both("width", 10, 10)
    assert "a finer instrument may" in judge_dimension(narrow, readings, {}).sentence
    own = Instrument("comparator", "mm", 0.0005, 0.0005)
    assert judge_dimension(narrow, readings, {"comparator": own}).finer == "comparator"


def test_readings_needed_is_kept_as_a_promise() -> None:
    close = judged(dimension(allowed=(-0.05, 0.05)), 10.0, 10.03)
    assert close.verdict == "too close to tell"
    more = close.readings_needed
    assert more is not None
    assert (
        judged(dimension(allowed=(-0.05, 0.05)), [10.0] * (1 + more), [10.03] * (1 + more)).verdict
        == "same"
    )


def test_two_instruments_cancel_nothing() -> None:
    other = Instrument("other", "mm", 0.01, 0.03)
    drawer = {"calliper": CALLIPER, "other": other}
    readings = [
        read("removed", "width", 10.0),
        read("replacement", "width", 10.0, instrument="other"),
    ]
    apart = judge_dimension(dimension(), readings, drawer)
    alike = judged(dimension(), 10.0, 10.0)
    assert apart.difference_expanded_uncertainty is not None
    assert alike.difference_expanded_uncertainty is not None
    assert apart.difference_expanded_uncertainty > 1.5 * alike.difference_expanded_uncertainty
    assert alike.removed is not None
    assert alike.removed.expanded_uncertainty is not None
    assert alike.difference_expanded_uncertainty < alike.removed.expanded_uncertainty


def test_label_readings_are_exact() -> None:
    rated = dimension(unit="A", allowed=(0.0, 0.0), instrument="label")
    assert judged(rated, 90, 90).verdict == "same"
    assert judged(rated, 90, 85).verdict == "differs"


def scaled(one: Dimension, factor: float) -> Dimension:
    low, high = one.allowed or (None, None)
    assert low is not None
    assert high is not None
    return one._replace(allowed=(low * factor, high * factor))


@given(st.sampled_from([dimension(), worn()]), LENGTHS, st.floats(-2, 2))
def test_units_dont_change_a_verdict(one: Dimension, old: float, step: float) -> None:
    factor = 1 / 25.4
    inch = Instrument("calliper", "mm", 0.01 * factor, 0.03 * factor)
    new = old + step
    first = judge_dimension(one, both(one.name, old, new), DRAWER)
    again = judge_dimension(
        scaled(one, factor), both(one.name, old * factor, new * factor), {"calliper": inch}
    )
    assert first.probability_within == pytest.approx(again.probability_within, abs=1e-9)
    if abs((first.probability_within or 0) - 0.95) > 1e-6 and step not in (0.0, 0.1, 1.5):
        assert first.verdict == again.verdict


@given(LENGTHS, LENGTHS)
def test_swapping_the_sides_turns_the_difference_round(old: float, new: float) -> None:
    there, back = judged(dimension(), old, new), judged(dimension(), new, old)
    assert there.difference == -(back.difference or 0.0)
    assert there.verdict == back.verdict
    assert there.probability_within == pytest.approx(back.probability_within, abs=1e-12)


@given(st.lists(LENGTHS, min_size=1, max_size=6), st.randoms())
def test_the_order_of_readings_doesnt_matter(values: list[float], chance: object) -> None:
    mixed = list(values)
    chance.shuffle(mixed)  # type: ignore[attr-defined]
    split: list[Reading] = [read("removed", "width", value) for value in mixed]
    split += [read("replacement", "width", 10.0)]
    whole = [read("removed", "width", *values), read("replacement", "width", 10.0)]
    first = judge_dimension(dimension(), whole, DRAWER)
    assert judge_dimension(dimension(), list(reversed(split)), DRAWER) == first


@given(LENGTHS, st.integers(1, 6), st.integers(1, 6))
def test_agreeing_readings_never_widen(value: float, few: int, more: int) -> None:
    first = judged(dimension(), [value] * few, [value] * few)
    again = judged(dimension(), [value] * (few + more), [value] * (few + more))
    assert again.difference_expanded_uncertainty is not None
    assert first.difference_expanded_uncertainty is not None
    assert again.difference_expanded_uncertainty <= first.difference_expanded_uncertainty
    assert (again.probability_within or 0) >= (first.probability_within or 0)


@given(st.floats(-0.4, 0.4), st.floats(-0.4, 0.4))
def test_repeats_that_agree_as_usual_never_widen_the_doubt(one: float, other: float) -> None:
    usual = CALLIPER.usual_spread
    repeats = [10.0 + one * usual, 10.0 + other * usual, 10.0]
    alone, repeated = (judged(dimension(), old, 10.3) for old in (10.0, repeats))
    assert repeated.difference_expanded_uncertainty is not None
    assert alone.difference_expanded_uncertainty is not None
    assert repeated.difference_expanded_uncertainty <= alone.difference_expanded_uncertainty
    assert "scatter" not in repeated.sentence


def test_repeats_that_scatter_beyond_the_usual_say_why_the_doubt_is_wider() -> None:
    alone, repeated = (judged(worn(), old, 25.5) for old in (24.6, [24.6, 24.7, 24.6]))
    assert alone.sentence.count("±") == 1
    assert repeated.sentence.endswith(
        " The readings of the removed part scatter by 0.06 mm, more than usual (calliper: "
        "0.010 mm): that makes the ± wider."
    )
    both_ways = judged(worn(), [24.6, 24.7, 24.6], [25.5, 25.6, 25.4]).sentence
    assert "The readings of the replacement scatter by 0.10 mm" in both_ways
