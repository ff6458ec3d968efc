"""A click into an outline means the smallest one around it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.outline_hit import area, encloses, innermost

SQUARE = ((10.0, 10.0), (50.0, 10.0), (50.0, 50.0), (10.0, 50.0))
INNER = ((20.0, 20.0), (30.0, 20.0), (30.0, 30.0), (20.0, 30.0))
ELL = ((0.0, 0.0), (40.0, 0.0), (40.0, 10.0), (10.0, 10.0), (10.0, 40.0), (0.0, 40.0))


def test_the_smaller_of_two_outlines_around_a_spot_is_meant() -> None:
    outlines = {1: SQUARE, 2: INNER}
    assert innermost(outlines, (25, 25)) == 2
    assert innermost(outlines, (45, 45)) == 1
    assert innermost(outlines, (60, 25)) is None
    assert innermost({}, (25, 25)) is None


def test_the_hollow_of_an_angle_lies_outside() -> None:
    assert encloses(ELL, (5, 30))
    assert encloses(ELL, (30, 5))
    assert not encloses(ELL, (30, 30))


def test_the_area_does_not_depend_on_the_way_round() -> None:
    assert area(ELL) == pytest.approx(700)
    assert area(ELL[::-1]) == pytest.approx(700)
    assert area(SQUARE) == 1600


@given(st.tuples(st.floats(-100, 100), st.floats(-100, 100)))
def test_a_square_is_enclosed_as_its_sides_say(spot: tuple[float, float]) -> None:
    x, y = spot
    if 10 < x < 50 and 10 < y < 50:
        assert encloses(SQUARE, spot)
    if not (10 <= x <= 50 and 10 <= y <= 50):
        assert not encloses(SQUARE, spot)
