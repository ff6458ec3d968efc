"""Uncertainty against worked examples of the GUM (JCGM 100:2008).

"Recalled" beside a value: the example is known from memory and recomputed, its page not seen.
"""

from __future__ import annotations

import math

import pytest

from desktop_app.parts_compared.student_t import t_below, t_factor
from desktop_app.parts_compared.uncertainty import (
    Doubt,
    combined,
    mean_and_spread,
    rectangular,
    resolution_doubt,
)


def test_twenty_temperatures() -> None:
    # JCGM 100:2008, 4.4.3 and table 1 (recalled); printed 100.145, 1.489, 0.333.
    values = [
        96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07,
        100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72,
    ]  # fmt: skip
    mean, spread = mean_and_spread(values)
    assert mean == pytest.approx(100.145, rel=1e-12)
    assert spread == pytest.approx(1.4888444830595439, rel=1e-12)
    assert spread / math.sqrt(20) == pytest.approx(0.3329157472046673, rel=1e-12)


@pytest.mark.parametrize(
    ("step", "u"),
    [(0.01, 0.002886751345948), (0.02, 0.005773502691896), (1.0, 0.288675134594813)],
)
def test_resolution(step: float, u: float) -> None:
    # JCGM 100:2008, F.2.2.1 and 4.3.7 (recalled).
    assert resolution_doubt(step).u == pytest.approx(u, rel=1e-12)


def test_rectangular_half_width() -> None:
    # JCGM 100:2008, 4.3.7 (recalled).
    assert rectangular(1.0).u == pytest.approx(0.577350269189626, rel=1e-12)


def test_product_of_three_inputs() -> None:
    # JCGM 100:2008, G.4.1, example (recalled); printed 1.03 %, 19.0, 2.09, 2.2 %.
    found = combined(0.0, [Doubt(0.25, 9), Doubt(0.57, 4), Doubt(0.82, 14)])
    assert found.u == pytest.approx(1.0294658809, rel=1e-8)
    assert found.dof == pytest.approx(18.998742, rel=1e-7)
    assert t_factor(0.95, 19) == pytest.approx(2.0930240544, rel=1e-8)
    assert t_factor(0.95, 19) * found.u == pytest.approx(2.1546968520, rel=1e-8)


@pytest.mark.parametrize(
    ("dof", "t"),
    [(1, 12.7062), (2, 4.3027), (3, 3.1824), (4, 2.7764), (5, 2.5706), (8, 2.3060),
     (10, 2.2281), (16, 2.1199), (20, 2.0860), (50, 2.0086)],
)  # fmt: skip
def test_student_t_at_95_percent(dof: float, t: float) -> None:
    # JCGM 100:2008, table G.2 (recalled; printed to two decimals).
    assert t_factor(0.95, dof) == pytest.approx(t, abs=5e-5)


@pytest.mark.parametrize(
    ("dof", "t"),
    [(1, 13.97), (2, 4.53), (3, 3.31), (4, 2.87), (5, 2.65), (10, 2.28), (20, 2.13)],
)
def test_student_t_where_the_normal_has_two(dof: float, t: float) -> None:
    # JCGM 100:2008, table G.2, column 95.45 % (recalled).
    assert t_factor(0.9545, dof) == pytest.approx(t, abs=0.005)


def test_end_gauge() -> None:
    # JCGM 100:2008, annex H.1 (read in two public reproductions, recomputed); nanometres.
    comparator = combined(215.0, [Doubt(5.8, 24), Doubt(3.9, 5), Doubt(6.7, 8)])
    assert comparator.u == pytest.approx(9.681941953967707, rel=1e-12)
    assert comparator.dof == pytest.approx(25.447, abs=1e-3)
    expansion = 50_000_623 * 0.1 * rectangular(1e-6).u
    temperature = 50_000_623 * 11.5e-6 * rectangular(0.05).u
    found = combined(
        50_000_838,
        [
            Doubt(25, 18),
            Doubt(comparator.u, comparator.dof),
            Doubt(expansion, 50),
            Doubt(temperature, 2),
        ],
    )
    assert found.u == pytest.approx(31.663879111, rel=1e-8)
    assert found.dof == pytest.approx(16.7519, abs=1e-3)
    assert t_factor(0.99, 16) == pytest.approx(2.9207816224, rel=1e-8)
    assert t_factor(0.99, 16) * found.u == pytest.approx(92.483, abs=1e-3)


def test_student_t_against_scipy() -> None:
    # SciPy's own implementation (scipy.stats.t), an independent library.
    from scipy import stats

    for dof in (1.0, 2.5, 7.06, 28.0, 300.0, 1e5):
        for x in (-8.0, -1.3, 0.0, 0.4, 2.0, 6.5):
            assert t_below(x, dof) == pytest.approx(float(stats.t.cdf(x, dof)), abs=1e-11)
        assert t_factor(0.95, dof) == pytest.approx(float(stats.t.ppf(0.975, dof)), rel=1e-9)
