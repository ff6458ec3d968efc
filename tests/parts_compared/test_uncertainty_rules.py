"""What the program adds to the GUM: the usual spread, and when it is set aside."""

from __future__ import annotations

import random

import pytest

from desktop_app.parts_compared.instruments.instrument import Instrument, usual_instrument
from desktop_app.parts_compared.shown_value import amount, doubt
from desktop_app.parts_compared.uncertainty import (
    Estimate,
    difference_estimate,
    side_reading,
    unwound,
    wrapped,
)

TOOL = Instrument("calliper", "mm", 0.01, 0.03, repeatability=0.02)


def test_one_reading_stands_on_the_usual_spread() -> None:
    side = side_reading([10.0], TOOL)
    assert (side.spread, side.spread_dof, side.count) == (0.02, 8.0, 1)


def test_repeats_are_pooled_with_the_usual_spread() -> None:
    side = side_reading([10.00, 10.02, 10.04], TOOL)
    assert side.spread == pytest.approx(0.02)
    assert side.spread_dof == 10


def test_a_scatter_beyond_the_usual_is_believed() -> None:
    side = side_reading([10.0, 10.2], TOOL)
    assert side.spread == pytest.approx(0.141421, abs=1e-6)
    assert side.spread_dof == 1


def test_equal_readings_have_no_scatter_of_their_own() -> None:
    assert side_reading([0.1] * 3, Instrument("x", "mm", 0, 0, 0)).spread == 0.0


def test_intervals_of_the_difference_cover() -> None:
    """Normal readings with the usual spread: 95 % and a little more (rounding adds)."""
    chance = random.Random(20260928)
    hits, tries = 0, 4000
    for _ in range(tries):
        old = [round(chance.gauss(10.0, 0.02), 2) for _ in range(3)]
        new = [round(chance.gauss(10.3, 0.02), 2) for _ in range(3)]
        found = difference_estimate(side_reading(old, TOOL), side_reading(new, TOOL))
        hits += abs(found.value - 0.3) <= found.expanded()
    assert 0.945 <= hits / tries <= 0.99


def test_an_exact_value_is_inside_or_not() -> None:
    exact = Estimate(1.0, 0.0)
    assert (exact.within(1.0, 1.0), exact.within(1.1, None), exact.within(None, None)) == (1, 0, 1)
    assert exact.expanded() == 0.0


@pytest.mark.parametrize(("angle", "turned"), [(190, -170), (-190, 170), (360, 0), (35, 35)])
def test_wrapped(angle: float, turned: float) -> None:
    assert wrapped(angle) == turned


def test_angles_around_north_stay_together() -> None:
    values = unwound([359.0, 1.0])
    assert max(values) - min(values) == pytest.approx(2.0)


@pytest.mark.parametrize(
    ("value", "unit", "u", "text"),
    [
        (0.5512, "mm", 0.0376, "0.55 mm (± 0.04)"),
        (1.0, "deg", 1.7, "1° (± 2)"),
        (0.5512, "mm", 0.0121, "0.551 mm (± 0.012)"),
        (90.0, "A", 0.0, "90 A"),
        (5.1, "kohm", 0.2, "5.1 kΩ (± 0.2)"),
        (-0.001, "mm", 0.03, "0.00 mm (± 0.03)"),
    ],
)
def test_numbers_for_people(value: float, unit: str, u: float, text: str) -> None:
    assert amount(value, unit, u) + doubt(u) == text


def test_an_instrument_serves_its_unit_only() -> None:
    assert usual_instrument("calliper", "deg") is None
    assert usual_instrument("eye", "n") == Instrument("eye", "n", 0.0, 0.0, 0.0)
