"""The F test by which repeats set a usual spread aside, against SciPy's distribution."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from desktop_app.parts_compared.scatter_test import BY_CHANCE, f_beyond, refuting_factor


@given(st.floats(-1, 200), st.floats(1, 60), st.floats(1, 60))
def test_the_probability_beyond_an_f_is_that_of_scipy(
    f: float, dof: float, other_dof: float
) -> None:
    expected = float(stats.f.sf(f, dof, other_dof))
    assert f_beyond(f, dof, other_dof) == pytest.approx(expected, rel=1e-9, abs=1e-12)


def test_any_scatter_is_more_than_none() -> None:
    assert f_beyond(0, 3, 10) == 1.0


@pytest.mark.parametrize(("dof", "usual"), [(1, 10), (2, 30), (9, 5), (4, 50)])
def test_so_many_times_the_usual_spread_is_passed_once_in_twenty(dof: int, usual: int) -> None:
    passed = stats.f.sf(refuting_factor(dof, usual) ** 2, dof, usual)
    assert passed == pytest.approx(BY_CHANCE, rel=1e-6)
