"""What must not sway a verdict: more of the same, another unit, the other way round, the order."""

from __future__ import annotations

import random
from dataclasses import replace
from typing import Any, get_args

from hypothesis import assume, example, given
from hypothesis import strategies as st

from desktop_app.parts_compared.comparison import DimensionComparison, DimensionVerdict
from desktop_app.parts_compared.dimension_verdict import judge_dimension
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, Span
from desktop_app.parts_compared.reading import Reading
from desktop_app.parts_compared.uncertainty import mean_and_spread, side_reading
from tests.parts_compared.invented_kinds import both, dimension, kind, read, worn

CALLIPER = Instrument("calliper", "mm", 0.01, 0.03, repeatability=0.02)
MICROMETER = Instrument("micrometer", "mm", 0.001, 0.004, repeatability=0.003)
DRAWER = {"calliper": CALLIPER, "micrometer": MICROMETER}

WIDTH = dimension()
TIP = worn()
GAP = worn(direction="smaller", allowed=(-1.5, -0.1), name="gap")
DISC = dimension(name="disc", role="limit", allowed=(9.8, 10.3))
KINDS_OF_LENGTH = st.sampled_from([WIDTH, TIP, GAP, DISC])
#: Scatter such as the instrument usually has; far more than usual sets the usual aside.
SCATTER = st.lists(st.floats(-0.04, 0.04), min_size=1, max_size=6)
STEPS = st.floats(-2.2, 2.2)
OPPOSITE = {"bigger": "smaller", "smaller": "bigger"}


#: What a verdict may become when more is known; any other stays what it is.
SHARPENED: dict[DimensionVerdict, tuple[DimensionVerdict, ...]] = {
    "not restored": ("not restored", "worse than the old one"),
    "too close to tell": get_args(DimensionVerdict),
}


def judged(one: Dimension, old: list[float], new: list[float]) -> DimensionComparison:
    return judge_dimension(one, both(one.name, old, new), DRAWER)


def around(centre: float, scatter: list[float]) -> list[float]:
    return [centre + one for one in scatter]


@given(KINDS_OF_LENGTH, SCATTER, SCATTER, STEPS, st.integers(0, 5), st.integers(0, 5))
def test_readings_that_agree_never_weaken_a_verdict(
    one: Dimension, low: list[float], high: list[float], step: float, more_old: int, more_new: int
) -> None:
    """Readings equal to the mean, on one side or both: what is settled stays settled."""
    old, new = around(10.0, low), around(10.0 + step, high)
    assume(not any(side_reading(side, CALLIPER).stands_alone for side in (old, new)))
    first = judged(one, old, new)
    again = judged(
        one,
        old + [mean_and_spread(old)[0]] * more_old,
        new + [mean_and_spread(new)[0]] * more_new,
    )
    assert again.verdict in SHARPENED.get(first.verdict, (first.verdict,))
    assert again.difference_expanded_uncertainty is not None
    assert first.difference_expanded_uncertainty is not None
    assert again.difference_expanded_uncertainty <= first.difference_expanded_uncertainty * (
        1 + 1e-9
    )


def in_inches(span: Span | None) -> Span | None:
    if span is None:
        return None
    low, high = (None if end is None else end / 25.4 for end in span)
    return low, high


def tool_in_inches(tool: Instrument) -> Instrument:
    assert tool.repeatability is not None
    return Instrument(
        tool.name,
        tool.unit,
        tool.resolution / 25.4,
        tool.max_error / 25.4,
        tool.repeatability / 25.4,
    )


@given(KINDS_OF_LENGTH, SCATTER, SCATTER, STEPS, st.sampled_from([None, "micrometer"]))
def test_inches_say_what_millimetres_say(
    one: Dimension, low: list[float], high: list[float], step: float, tool: str | None
) -> None:
    old, new = around(10.0, low), around(10.0 + step, high)
    there = [read("removed", one.name, *old), read("replacement", one.name, *new, instrument=tool)]
    first = judge_dimension(one, there, DRAWER)
    inch = [
        replace(side, values=tuple(float(value) / 25.4 for value in side.values)) for side in there
    ]
    drawer = {name: tool_in_inches(own) for name, own in DRAWER.items()}
    again = judge_dimension(one._replace(allowed=in_inches(one.allowed)), inch, drawer)
    assert first.probability_within is not None
    assert again.probability_within is not None
    assert abs(again.probability_within - first.probability_within) < 1e-9
    # Nothing is promised where a digit of the sums, far beyond any reading, tips the scales.
    assume(abs(first.probability_within - 0.95) > 1e-6)
    assert (again.verdict, again.readings_needed) == (first.verdict, first.readings_needed)


@given(SCATTER, SCATTER, STEPS)
def test_same_is_same_from_either_side(low: list[float], high: list[float], step: float) -> None:
    old, new = around(10.0, low), around(10.0 + step, high)
    there, back = judged(WIDTH, old, new), judged(WIDTH, new, old)
    assert back.verdict == there.verdict
    assert back.difference == -(there.difference or 0.0)
    assert back.difference_expanded_uncertainty == there.difference_expanded_uncertainty


@given(st.sampled_from([TIP, GAP]), SCATTER, SCATTER, STEPS)
def test_wear_seen_from_the_other_side(
    one: Dimension, low: list[float], high: list[float], step: float
) -> None:
    """Sides, direction and span turned round together say the same of the same two parts."""
    old, new = around(10.0, low), around(10.0 + step, high)
    assert one.direction is not None
    assert one.allowed is not None
    ends = one.allowed
    turned: dict[str, Any] = {"direction": OPPOSITE[one.direction]}
    turned["allowed"] = tuple(None if end is None else -end for end in reversed(ends))
    assert judged(one._replace(**turned), new, old).verdict == judged(one, old, new).verdict


#: What the new part's verdict says when the two parts are taken for each other.
TAKEN_FOR_EACH_OTHER: dict[DimensionVerdict, DimensionVerdict] = {
    "restored": "worse than the old one",
    "more than wear explains": "worse than the old one",
}


@given(st.sampled_from([TIP, GAP]), SCATTER, SCATTER, STEPS)
@example(TIP, [0.0], [0.0], 0.5)
@example(TIP, [0.0], [0.0], 2.0)
@example(GAP, [0.0], [0.0], -0.5)
def test_a_restored_part_taken_for_the_old_one_is_worse(
    one: Dimension, low: list[float], high: list[float], step: float
) -> None:
    old, new = around(10.0, low), around(10.0 + step, high)
    there, back = judged(one, old, new).verdict, judged(one, new, old).verdict
    assert there not in TAKEN_FOR_EACH_OTHER or back == TAKEN_FOR_EACH_OTHER[there]
    assert "worse than the old one" not in (there, back) or there != back


@given(SCATTER, SCATTER, SCATTER, STEPS, st.integers(0, 2**32 - 1))
def test_the_order_of_readings_never_matters(
    low: list[float], high: list[float], fine: list[float], step: float, seed: int
) -> None:
    """One reading at a time, in any order, of several dimensions and instruments at once."""
    part = kind(WIDTH, TIP, GAP, DISC)
    whole = [
        side
        for one in part.dimensions
        for side in (
            read("removed", one.name, *around(10.0, low)),
            read("replacement", one.name, *around(10.0 + step, high)),
            read("replacement", one.name, *around(10.0 + step, fine), instrument="micrometer"),
        )
    ]
    singles: list[Reading] = [
        replace(side, values=(value,)) for side in whole for value in side.values
    ]
    random.Random(seed).shuffle(singles)
    mixed, typed = (compare(part, one, instruments=DRAWER) for one in (singles, whole))
    assert mixed.dimensions == typed.dimensions
    assert (mixed.verdict, mixed.next_steps) == (typed.verdict, typed.next_steps)
