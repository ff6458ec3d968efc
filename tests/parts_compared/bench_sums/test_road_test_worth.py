"""What a quiet drive is worth."""

from __future__ import annotations

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.repair_jobs.road_test import distance_needed, luck_left


def test_how_much_luck_a_drive_leaves() -> None:
    assert luck_left(20, 40) == pytest.approx(0.61, abs=0.005)
    assert luck_left(120, 40) == pytest.approx(0.05, abs=0.0005)
    assert luck_left(10, 250) == pytest.approx(0.96, abs=0.005)
    assert distance_needed(40) == pytest.approx(120, abs=0.2)


def test_the_sentence_gives_the_customers_doubt_too() -> None:
    found = work_out("road-test-worth", {"once_in": "40", "driven": "20"})
    assert found.unit == "%"
    assert "61 % of cases" in found.sentence
    assert "from 37 % to 78 %" in found.sentence
    week = work_out("road-test-worth", {"once_in": "250", "driven": "10", "distance_unit": "km"})
    assert "not to be proven on this drive" in week.sentence
    assert "749 km" in week.sentence


@given(st.floats(0, 500), st.floats(1, 500), st.floats(0, 100))
def test_a_longer_drive_never_leaves_more_luck(driven: float, once: float, more: float) -> None:
    assert 0 <= luck_left(driven + more, once) <= luck_left(driven, once) <= 1
    # Two drives are worth as much as one of their length.
    both = luck_left(driven, once) * luck_left(more, once)
    assert luck_left(driven + more, once) == pytest.approx(both, rel=1e-9, abs=1e-300)


@given(st.floats(0, 500), st.floats(1, 500))
def test_miles_or_kilometres_make_no_difference(driven: float, once: float) -> None:
    assert luck_left(driven * 1.609344, once * 1.609344) == pytest.approx(luck_left(driven, once))


def test_faults_at_random_leave_that_share_of_drives_quiet() -> None:
    dice = random.Random(5)
    quiet = sum(dice.expovariate(1 / 40) > 20 for _ in range(20_000))
    assert quiet / 20_000 == pytest.approx(luck_left(20, 40), abs=0.01)


def test_a_customer_who_is_sure_leaves_one_figure() -> None:
    found = work_out("road-test-worth", {"once_in": "40", "driven": "20", "factor": "1"})
    assert "61 % of cases" in found.sentence
    assert "is out by" not in found.sentence
