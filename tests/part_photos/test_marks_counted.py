"""Bands are counted right or not at all."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.ndimage import gaussian_filter1d

from desktop_app.part_photos.marks.bands import Uncountable, bands_along
from desktop_app.part_photos.marks.count import count_along
from desktop_app.part_photos.marks.mark import Mark, Measured
from tests.part_photos.marked_photos import Floats, photo_of


def bands(
    count: int,
    period: float = 14.0,
    duty: float = 0.5,
    bend: float = 0.0,
    bright: bool = False,
    left_out: int | None = None,
    glint: tuple[float, float] | None = None,
    seed: int = 1,
) -> Measured:
    """Count along bands drawn with noise, shade and perspective; ends in the gaps beside them."""
    draw = np.random.default_rng(seed)
    numbers = np.arange(count)
    starts = 30 + period * (numbers + bend * numbers**2 / (2 * count))
    wide = duty * period * (1 + bend * numbers / count)
    end = starts[-1] + wide[-1]
    x = np.arange(int(end) + 60)
    light = np.full(len(x), 0.12 if bright else 0.45)
    for n in numbers:
        if n != left_out:
            band = (x >= starts[n]) & (x < starts[n] + wide[n])
            light[band] = (0.5 if bright else 0.1) * draw.uniform(0.85, 1.15)
    light = light * (1 + 0.4 * np.sin(3 * x / len(x) + draw.uniform(0, 6)))
    if glint is not None:
        light = light + 0.5 * np.exp(-0.5 * ((x - glint[0]) / glint[1]) ** 2)
    rows: Floats = np.repeat(gaussian_filter1d(light, 1.0)[None], 41, axis=0)
    gap = 0.5 * (1 - duty) * period
    line = ((float(starts[0] - gap), 19.0), (float(end + gap), 21.0))
    return count_along(Mark("count", line), photo_of(rows + draw.normal(0, 0.01, rows.shape)))


@settings(max_examples=30, deadline=None)
@given(
    st.integers(3, 30),
    st.floats(9, 40),
    st.floats(0.35, 0.65),
    st.floats(-0.15, 0.15),
    st.booleans(),
    st.integers(0, 1000),
)
def test_clear_bands_are_never_counted_wrong(
    count: int, period: float, duty: float, bend: float, bright: bool, seed: int
) -> None:
    # Of 1200 such lines 27 were refused and none was counted wrong.
    said = bands(count, period, duty, bend, bright, seed=seed)
    assert said.value in (count, None)


@pytest.mark.parametrize("bright", [False, True])
@pytest.mark.parametrize("count", [3, 6, 24])
def test_clear_bands_are_counted(count: int, bright: bool) -> None:
    said = bands(count, bright=bright)
    assert (said.value, said.unit, said.expanded_uncertainty) == (count, "", 0.0)
    assert ("bright bands" if bright else "dark bands") in said.warnings[0]


@settings(max_examples=25, deadline=None)
@given(st.integers(5, 20), st.integers(1, 4), st.integers(0, 1000))
def test_a_missing_tooth_breaks_the_rhythm(count: int, missing: int, seed: int) -> None:
    said = bands(count, left_out=min(missing, count - 2), seed=seed)
    assert said.value is None
    assert said.warnings[0].startswith("This can't be counted: ")


@settings(max_examples=25, deadline=None)
@given(st.integers(4, 16), st.floats(0, 1), st.floats(2, 20), st.integers(0, 1000))
def test_a_glint_never_makes_a_wrong_number(
    count: int, place: float, wide: float, seed: int
) -> None:
    # Of 600 such lines 245 were counted, all of them right.
    said = bands(count, glint=(30 + place * 14 * count, wide), seed=seed)
    assert said.value in (count, None)


def along(rows: Floats, start: float = 5.0, end: float | None = None) -> str:
    line = ((start, 20.0), (len(rows[0]) - 6.0 if end is None else end, 20.0))
    said = count_along(Mark("count", line), photo_of(rows))
    assert said.value is None
    assert said.expanded_uncertainty is None
    return said.warnings[0]


def test_what_has_no_rhythm_is_refused_with_the_reason() -> None:
    draw = np.random.default_rng(3)
    plain = np.full((41, 200), 0.4)
    speckled = np.repeat(draw.uniform(0.1, 0.6, (1, 200)), 41, axis=0)
    faint = plain + 0.01 * np.sin(np.arange(200) / 3)
    assert "nothing to see" in along(plain)
    assert "can't be counted" in along(speckled)
    assert "hardly differ" in along(faint, 5 * np.pi, 5 * np.pi + 24 * np.pi)
    assert "too short" in along(plain, 5.0, 12.0)
    assert "leaves the picture" in along(plain, 5.0, 400.0)


@pytest.mark.parametrize("line", [((0.0, 0.0), (2.0, 2.0)), ((5.0, 38.5), (150.0, 38.5))])
def test_a_line_inside_that_is_too_near_to_the_edge_leaves_no_picture(
    line: tuple[tuple[float, float], tuple[float, float]],
) -> None:
    said = count_along(Mark("count", line), photo_of(np.full((41, 200), 0.4)))
    edge = "This can't be counted: the line is within 3 pixels of the picture's edge."
    assert said.warnings == (edge,)


def test_a_line_from_a_gap_onto_a_tooth_is_refused() -> None:
    waves = 0.3 + 0.2 * np.sin(np.arange(300) * 2 * np.pi / 20)
    assert "one end" in along(np.repeat(waves[None], 41, axis=0), 15.0, 15.0 + 130)


def test_a_line_that_begins_far_before_the_bands_is_refused() -> None:
    light = np.full(300, 0.5)
    for n in range(8):
        light[90 + 20 * n : 100 + 20 * n] = 0.1
    assert "right beside" in along(np.repeat(light[None], 41, axis=0), 40.0, 255.0)


def why_not(light: Floats) -> str:
    """Why nobody should say how many bands lie along this light."""
    with pytest.raises(Uncountable) as refused:
        bands_along(np.repeat(light[None], 7, axis=0))
    return str(refused.value)


def test_two_bands_or_one_edge_make_no_rhythm() -> None:
    light = np.full(42, 0.5)
    light[7:14] = light[21:28] = 0.1
    assert why_not(light) == "there are fewer than 3 bands with a rhythm; count them by eye"
    assert why_not(np.where(np.arange(200) < 100, 0.1, 0.5)) == "nothing repeats along the line"
    ramp = np.linspace(0.87, 0.275, 80) + 0.02 * np.sin(np.arange(80) / 4.124)
    assert why_not(ramp) == "fewer than two edges are seen along the line"


def test_a_band_out_of_its_place_by_a_fifth_of_a_step_is_named() -> None:
    light = np.full(175, 0.5)
    for n in range(12):
        start = 7 + 14 * n + (3 if n == 5 else 0)
        light[start : start + 7] = 0.1
    assert why_not(light) == "the step after band 5 is unlike those beside it"


def test_bands_finer_than_a_photo_shows_them_are_not_guessed_at() -> None:
    fine = 0.3 + 0.2 * np.sin(np.arange(200) * 2 * np.pi / 4)
    assert why_not(fine) == "the bands are too fine for this photo; go nearer"


def test_light_that_wanders_has_no_rhythm_though_it_has_bands() -> None:
    wanders = 0.4 + np.cumsum(np.random.default_rng(428).normal(0, 0.03, 120))
    assert why_not(np.clip(wanders, 0, 1)) == "the bands have no even rhythm"


@pytest.mark.parametrize(
    ("points", "said"),
    [(((5.0, 5.0), (5.5, 5.0)), "too short"), (((5.0, 5.0),), "no two ends")],
)
def test_a_line_without_a_length_is_not_counted_along(
    points: tuple[tuple[float, float], ...], said: str
) -> None:
    counted = count_along(Mark("count", points), photo_of(np.full((41, 200), 0.4)))
    assert (counted.value, said in counted.warnings[0]) == (None, True)
