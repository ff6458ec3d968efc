"""Bench sums against SciPy and against published figures.

"Recalled" beside a value: known from memory, its page not seen.
"""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from desktop_app.parts_compared.bench_sums.belt_marking import RIB_PITCH
from desktop_app.parts_compared.bench_sums.bolt_circle import bolt_circle
from desktop_app.parts_compared.bench_sums.chi_square import chi_square, chi_square_beyond
from desktop_app.parts_compared.bench_sums.trim_fit import fit_trim
from desktop_app.repair_jobs.road_test import distance_needed


@given(st.lists(st.integers(0, 500), min_size=2, max_size=16).filter(any))
def test_chi_square_over_counters(counters: list[int]) -> None:
    theirs = stats.chisquare(counters)
    ours = chi_square(counters)
    assert ours == pytest.approx(theirs.statistic, rel=1e-10, abs=1e-12)
    assert chi_square_beyond(ours, len(counters) - 1) == pytest.approx(
        theirs.pvalue, rel=1e-8, abs=1e-300
    )


@given(st.floats(0, 1400), st.integers(1, 40))
def test_the_tail_of_chi_square(statistic: float, dof: int) -> None:
    assert chi_square_beyond(statistic, dof) == pytest.approx(
        float(stats.chi2.sf(statistic, dof)), rel=1e-8, abs=1e-300
    )


@pytest.mark.parametrize(("dof", "limit"), [(1, 3.841), (3, 7.815), (5, 11.070), (7, 14.067)])
def test_printed_limits_of_chi_square(dof: int, limit: float) -> None:
    # NIST/SEMATECH e-Handbook, 1.3.6.7.4, upper critical values at 0.05 (recalled).
    assert chi_square_beyond(limit, dof) == pytest.approx(0.05, abs=2e-5)


@given(
    st.lists(
        st.tuples(st.integers(20, 900), st.floats(-0.3, 0.3)),
        min_size=3,
        max_size=10,
        unique_by=lambda point: point[0],
    )
)
def test_the_trim_line_is_the_least_squares_line(points: list[tuple[int, float]]) -> None:
    flows, trims = [flow / 10 for flow, _ in points], [trim for _, trim in points]
    theirs = stats.linregress([1 / flow for flow in flows], trims)
    ours = fit_trim(flows, trims, 0.02)
    assert ours.air == pytest.approx(theirs.slope, rel=1e-6, abs=1e-8)
    assert ours.share == pytest.approx(theirs.intercept, rel=1e-6, abs=1e-8)


def test_pitch_of_automotive_v_ribbed_belts() -> None:
    # ISO 9981, profile PK: rib pitch 3.56 mm (recalled).
    assert RIB_PITCH["PK"] == 3.56
    # ISO 9982, profiles PH, PJ, PL, PM (recalled).
    assert [RIB_PITCH[name] for name in ("PH", "PJ", "PL", "PM")] == [1.60, 2.34, 4.70, 9.40]


def test_five_studs_from_the_golden_section() -> None:
    # The side of a regular pentagon is d sin 36 deg, Euclid XIII; 1.7013 as the trade uses it.
    golden = (1 + math.sqrt(5)) / 2
    assert bolt_circle(1.0, 5) == pytest.approx(2 / math.sqrt(3 - golden), rel=1e-12)
    assert round(bolt_circle(1.0, 5), 4) == 1.7013


def test_the_rule_of_three() -> None:
    # Hanley and Lippman-Hand, JAMA 249 (1983): no event in n leaves at most 3/n (recalled).
    assert distance_needed(1.0) == pytest.approx(3.0, abs=0.005)
    assert distance_needed(1.0) == pytest.approx(float(stats.expon.isf(0.05)), rel=1e-12)
