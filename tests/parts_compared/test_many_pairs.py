"""Many pairs at once get the verdicts that each would get alone."""

from __future__ import annotations

import math
from collections.abc import Sequence

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.parts_compared.instruments.instrument import usual_instrument
from desktop_app.parts_compared.many_pairs.judge_many import ManyVerdicts, judge_many
from desktop_app.parts_compared.many_pairs.many_decisions import DIMENSION_VERDICTS
from desktop_app.parts_compared.many_pairs.pair_columns import columns_of
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import (
    ConditionSeen,
    Explanation,
    MakerLimit,
    Reading,
    Side,
)
from desktop_app.parts_compared.scatter_test import refuting_factor
from tests.parts_compared.invented_kinds import both, dimension, kind, read
from tests.parts_compared.many_invented_pairs import (
    ANGLE,
    COLOUR,
    DRAWER,
    KINDS,
    LENGTH,
    MARKS,
    OHMS,
    RATED,
    TEETH,
    TIP,
    InventedPair,
    many_pairs,
)


def judged(part: PartKind, pairs: Sequence[InventedPair], confidence: float = 0.95) -> ManyVerdicts:
    return judge_many(part, columns_of(part, pairs), DRAWER, confidence)


def check_alike(
    part: PartKind, pairs: Sequence[InventedPair], confidence: float = 0.95
) -> ManyVerdicts:
    """Check every verdict, difference and probability against the rules for one pair."""
    many = judged(part, pairs, confidence)
    verdicts = many.verdicts()
    assert len(verdicts) == len(pairs)
    for number, pair in enumerate(pairs):
        alone = compare(
            part, pair.readings, pair.conditions, DRAWER, pair.explained, pair.limits, confidence
        )
        assert many.dimension_verdicts(number) == [one.verdict for one in alone.dimensions]
        assert verdicts[number] == alone.verdict
        for place, one in enumerate(alone.dimensions):
            difference = many.differences[place, number]
            probability = many.probabilities[place, number]
            assert math.isnan(difference) == (one.difference is None)
            assert math.isnan(probability) == (one.probability_within is None)
            if one.difference is not None:
                assert difference == pytest.approx(one.difference, abs=1e-9)
            if one.probability_within is not None:
                assert probability == pytest.approx(one.probability_within, abs=1e-6)
    return many


@settings(deadline=None, max_examples=30)
@pytest.mark.parametrize("part", KINDS)
@given(data=st.data(), confidence=st.sampled_from((0.95, 0.95, 0.9, 0.99, 0.6)))
def test_each_pair_gets_the_verdict_it_would_get_alone(
    part: PartKind, data: st.DataObject, confidence: float
) -> None:
    check_alike(part, data.draw(many_pairs(part)), confidence)


def test_few_of_them_have_to_be_judged_alone() -> None:
    pairs = [
        InventedPair(
            (
                *both("length", [20.00, 20.01], 20.0 + step / 500),
                *both("tip", 26.9, [27.2 + step / 100, 27.21 + step / 100]),
                *both("teeth", 4.0, 4.0),
                *both("plug-angle", [359.0, 0.0], (358.0 + step % 4) % 360),
                *both("colour", "black", "Black"),
            )
        )
        for step in range(200)
    ]
    many = check_alike(KINDS[0], pairs)
    assert many.one_by_one <= 2
    assert {"fits", "stop and look"} <= set(many.verdicts())
    assert (many.dimensions == DIMENSION_VERDICTS.index("too close to tell")).any()


@pytest.mark.parametrize(
    ("readings", "verdict"),
    [
        (both("rated", 60.0, 60.0), "same"),
        (both("rated", 60.0, 60.1), "differs"),
        (both("rated", 60.0, 60.0, "unheard of"), "not measured"),
        ([read("removed", "rated", 60.0)], "not measured"),
        ([], "not measured"),
    ],
)
def test_what_is_read_without_doubt(readings: list[Reading], verdict: str) -> None:
    part = kind(RATED)
    many = check_alike(part, [InventedPair(tuple(readings))])
    assert many.dimension_verdicts(0) == [verdict]


def test_a_value_on_the_very_limit_is_judged_alone_and_alike() -> None:
    # Half of what is probable lies below the limit: with a confidence of a half, a hair decides.
    pairs = [InventedPair(tuple(both("ohms", 5.0, 5.1)), limits=(MakerLimit("ohms", None, 5.1),))]
    assert check_alike(kind(OHMS), pairs, confidence=0.5).one_by_one == 1


def test_angles_around_the_turn_are_near_each_other() -> None:
    around = tuple(both("plug-angle", [359.0, 1.0, 0.0], [1.0, 359.0, 2.0]))
    turned = tuple(both("plug-angle", [359.0, 1.0], [90.0, 91.0]))
    back = tuple(both("plug-angle", 0.0, 180.0))
    many = check_alike(kind(ANGLE), [InventedPair(one) for one in (around, turned, back)])
    assert [many.dimension_verdicts(number)[0] for number in range(3)] == [
        "same",
        "turned",
        "turned",
    ]


def test_conditions_and_explanations_reach_the_verdict() -> None:
    good = tuple(both("length", 20.0, 20.01))
    off = tuple(both("length", 20.0, 21.0))
    letter = (Explanation("length", "the supplier"),)
    pairs = [
        InventedPair(good),
        InventedPair(good, conditions=(ConditionSeen("replacement", ("hairline crack",)),)),
        InventedPair(good, conditions=(ConditionSeen("removed", ("hairline crack",)),)),
        InventedPair(off),
        InventedPair(off, explained=letter),
        InventedPair((), explained=letter),
    ]
    assert check_alike(kind(LENGTH), pairs).verdicts() == [
        "fits",
        "stop and look",
        "fits",
        "stop and look",
        "fits",
        "not enough measured",
    ]


def test_words_where_a_number_belongs_have_no_say_here_as_there() -> None:
    """A kind may have been changed after its readings were kept."""
    pairs = [
        InventedPair(tuple(both("tip", "long", 27.0))),
        InventedPair(tuple(both("tip", [26.9, "long"], [27.4, 27.42]))),
    ]
    many = check_alike(kind(TIP), pairs)
    assert many.dimension_verdicts(0) == ["not measured"]
    assert many.dimension_verdicts(1) == ["restored"]


def test_marks_on_photos_are_judged_alone_and_alike() -> None:
    def marks(side: Side, value: float, place: int) -> Reading:
        return Reading(side, "length", (value,), "photo", (MARKS[place],))

    pairs = [
        InventedPair((marks("removed", 20.0, 0), marks("replacement", 20.03, place)))
        for place in range(len(MARKS))
    ]
    pairs += [
        InventedPair((*both("length", 20.0, 20.1),)),
        InventedPair((read("removed", "length", 20.0), marks("replacement", 20.1, 1))),
        InventedPair((*both("length", 20.0, 20.1, "photo"), marks("removed", 20.0, 0))),
    ]
    many = check_alike(kind(LENGTH), pairs)
    assert many.one_by_one == len(pairs) - 1
    assert [many.dimension_verdicts(number)[0] for number in (0, 3)] == [
        "same",
        "too close to tell",
    ]


def test_no_pairs_and_no_dimensions() -> None:
    assert judged(kind(LENGTH, TEETH, COLOUR), []).verdicts() == []
    check_alike(kind(), [InventedPair(tuple(both("length", 20.0, 20.0)))])


@pytest.mark.parametrize("turn", [-1, 0, 1])
def test_readings_that_scatter_just_as_much_as_sets_the_usual_aside_are_pooled_alike(
    turn: int,
) -> None:
    """A hair more or less decides whether the usual spread counts: rounding must not."""
    tool = usual_instrument("calliper", "mm")
    assert tool is not None
    usual, known = tool.usual_spread, tool.usual_dof
    apart = refuting_factor(1, known) * usual * math.sqrt(2)
    for _ in range(abs(turn)):
        apart = math.nextafter(apart, turn * math.inf)
    pairs = [
        InventedPair(tuple(both("width", [0.0, apart], [0.0, apart]))),
        InventedPair(tuple(both("width", [10.0, 10.0 + apart], 10.0))),
        InventedPair(tuple(both("width", [0.0, 1e-160], 1e-160))),
    ]
    check_alike(kind(dimension()), pairs)
