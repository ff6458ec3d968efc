"""Where the loupe stands: enlarging keeps the spot, pushing follows the hand."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.loupe import (
    MOST_ZOOM,
    Fitting,
    Loupe,
    allowed_factor,
    fitting,
    kept_inside,
    moved,
    push_between,
    zoomed,
)

sides = st.integers(20, 8000)
fits = st.builds(fitting, sides, sides, st.integers(50, 2000), st.integers(50, 2000))
loupes = st.builds(Loupe, st.floats(1, MOST_ZOOM), st.floats(0, 1), st.floats(0, 1))
pixels = st.floats(-900, 900)


def spot(loupe: Loupe, across: float, down: float, fit: Fitting) -> tuple[float, float]:
    """Which point of the photo lies so many screen pixels off the middle."""
    return (
        loupe.x + across / (fit.width * loupe.zoom),
        loupe.y + down / (fit.height * loupe.zoom),
    )


def test_the_whole_photo_fits_the_stage() -> None:
    assert fitting(4000, 3000, 800, 800) == Fitting(800, 600, 800, 800)


@given(loupes, st.floats(0.2, 5), pixels, pixels, fits)
def test_enlarging_keeps_the_spot_under_the_pointer(
    loupe: Loupe, factor: float, across: float, down: float, fit: Fitting
) -> None:
    after = zoomed(loupe, factor, across, down, fit)
    assert spot(after, across, down, fit) == pytest.approx(spot(loupe, across, down, fit), abs=1e-6)


@given(loupes, pixels, pixels, fits)
def test_a_push_is_told_as_it_was_made(
    loupe: Loupe, right: float, down: float, fit: Fitting
) -> None:
    after = moved(loupe, right, down, fit)
    assert push_between(loupe, after, fit) == pytest.approx((right, down), abs=1e-6)


@given(loupes, pixels, pixels, fits)
def test_the_photo_never_leaves_the_stage_empty(
    loupe: Loupe, right: float, down: float, fit: Fitting
) -> None:
    inside = kept_inside(moved(loupe, right, down, fit), fit)
    assert kept_inside(inside, fit) == inside
    for middle, shown, stage in (
        (inside.x, fit.width * loupe.zoom, fit.stage_width),
        (inside.y, fit.height * loupe.zoom, fit.stage_height),
    ):
        if shown <= stage:
            assert middle == 0.5
        else:
            assert middle * shown >= stage / 2 - 1e-6
            assert (1 - middle) * shown >= stage / 2 - 1e-6


@given(loupes, st.floats(0.01, 100))
def test_the_enlargement_has_its_limits(loupe: Loupe, factor: float) -> None:
    zoom = loupe.zoom * allowed_factor(loupe, factor)
    assert 1 - 1e-9 <= zoom <= MOST_ZOOM + 1e-9


@given(
    st.floats(0.3, 3), pixels, pixels, pixels, pixels, fits, fits, loupes, loupes
)  # two photos of different size, lined up by hand before
def test_two_stages_that_do_the_same_stay_lined_up(
    factor: float,
    across: float,
    down: float,
    right: float,
    lower: float,
    fit_one: Fitting,
    fit_two: Fitting,
    one: Loupe,
    two: Loupe,
) -> None:
    """What lies under one screen spot on both sides still lies under one spot on both."""
    before = spot(one, across, down, fit_one), spot(two, across, down, fit_two)
    one = moved(zoomed(one, factor, across, down, fit_one), right, lower, fit_one)
    two = moved(zoomed(two, factor, across, down, fit_two), right, lower, fit_two)
    after = (
        spot(one, across + right, down + lower, fit_one),
        spot(two, across + right, down + lower, fit_two),
    )
    assert after[0] == pytest.approx(before[0], abs=1e-6)
    assert after[1] == pytest.approx(before[1], abs=1e-6)
