"""Of several readings of one part the one that is a slip is told from what merely scatters."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.reading_off import Off, off_question, reading_off, two_apart


@pytest.mark.parametrize(
    ("values", "off"),
    [
        ((33.1, 331.0, 33.2), Off(331.0, 33.1, 33.2)),
        ((33.1, 3.31, 33.2), Off(3.31, 33.1, 33.2)),
        ((33.1, 33.2, 0.0), Off(0.0, 33.1, 33.2)),
        ((0.8, 8.0, 0.9), Off(8.0, 0.8, 0.9)),
    ],
)
def test_a_moved_decimal_point_is_found(values: tuple[float, ...], off: Off) -> None:
    assert reading_off(values, "mm") == off


@pytest.mark.parametrize(
    "values",
    [
        (0.01, 0.08, 0.02),  # play scatters so
        (0.0, 0.05, 0.04),
        (33.1, 35.0, 33.2),
        (33.1, 331.0),  # which of two nobody can say
        (1.0, 30.0, 33.0, 900.0),
        (-0.1, 5.0, 5.1),
    ],
)
def test_what_scatters_is_no_slip(values: tuple[float, ...]) -> None:
    assert reading_off(values, "mm") is None


def test_no_resistance_at_all_may_be_right() -> None:
    assert reading_off((0.0, 0.4, 0.5), "Ω") is None
    assert reading_off((4.0, 0.4, 0.5), "Ω") == Off(4.0, 0.4, 0.5)


@pytest.mark.parametrize(
    ("values", "apart"),
    [((3.31, 33.1), True), ((0.0, 33.1), True), ((0.01, 0.2), False), ((33.1, 33.2), False)],
)
def test_of_two_readings_one_must_be_off(values: tuple[float, float], apart: bool) -> None:
    assert two_apart(values, "mm") is apart
    assert two_apart(values[::-1], "mm") is apart


@given(st.lists(st.floats(0, 1000), min_size=3, max_size=6), st.sampled_from(["mm", "Ω"]))
def test_what_is_off_is_asked_about_in_words(values: list[float], unit: str) -> None:
    off = reading_off(values, unit)
    if off is not None:
        assert off.value in values
        assert not off.low <= off.value <= off.high
        assert off_question(off, unit).endswith("?")
