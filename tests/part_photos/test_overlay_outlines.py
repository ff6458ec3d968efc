"""Outlines: found on the part's edge, and laid on each other whichever way they are turned."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.part_photos.bench_card.card_layout import CardLayout, CardMarker
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.overlay.free_field import free_field
from desktop_app.part_photos.overlay.outline import Outline, evenly, outward_normals
from desktop_app.part_photos.overlay.outline_fit import fit_outlines
from desktop_app.part_photos.overlay.part_seen import part_seen
from desktop_app.part_photos.overlay.plane_move import PlaneMove, about, best_move
from desktop_app.part_photos.photo_cannot import PhotoCannot
from tests.part_photos.overlay_scenes import FIELD, Pinhole, Prism, disc, photo, plate, rotor

turns = st.floats(-math.pi, math.pi)
shifts = st.tuples(st.floats(-80, 80), st.floats(-80, 80))
stretches = st.floats(0.5, 2.0)


def outline(corners: np.ndarray) -> Outline:
    points = evenly(corners, 0.25, 0.0)
    return Outline(points, outward_normals(points), np.zeros(len(points)))


@given(turns, shifts, stretches)
def test_a_move_and_its_way_back_are_nothing(
    turn: float, shift: tuple[float, float], stretch: float
) -> None:
    move = PlaneMove(turn, shift, stretch)
    there = move(plate())
    assert move.back()(there) == pytest.approx(plate(), abs=1e-9)
    assert move.then(move.back())(plate()) == pytest.approx(plate(), abs=1e-9)
    assert best_move(plate(), there, stretch=True)(plate()) == pytest.approx(there, abs=1e-7)


def test_without_stretch_the_best_move_keeps_lengths() -> None:
    move = best_move(plate(), plate() * 1.3)
    assert move.stretch == 1.0
    assert move(np.array([[0.0, 0.0], [3.0, 4.0]])) == pytest.approx(
        np.array([[0, 0], [3, 4]]) + plate().mean(axis=0) * 0.3
    )


@settings(max_examples=12)
@given(turns, shifts, st.sampled_from([plate(), rotor()]))
def test_an_outline_is_laid_on_itself_from_any_turn(
    turn: float, shift: tuple[float, float], corners: np.ndarray
) -> None:
    old = outline(corners)
    away = PlaneMove(turn, shift)
    fit = fit_outlines(old, old.moved(away), 0.5)
    assert fit is not None
    assert fit.move(away(corners)) == pytest.approx(corners, abs=0.02)
    assert fit.inliers == 1.0
    assert fit.overlap > 0.98


@settings(max_examples=6)
@given(turns, shifts, st.floats(0.6, 1.6))
def test_a_stretch_is_found_where_it_is_asked_for(
    turn: float, shift: tuple[float, float], grown: float
) -> None:
    old = outline(plate())
    away = PlaneMove(turn, shift, grown)
    fit = fit_outlines(old, old.moved(away), 0.5, stretch=True)
    assert fit is not None
    assert fit.move(away(plate())) == pytest.approx(plate(), abs=0.1)


def test_what_differs_does_not_pull_the_rest_along() -> None:
    old, worn = outline(rotor(6.0)), outline(rotor(5.2))
    away = about(0.7, worn.middle(), np.array([90.0, 40.0]))
    fit = fit_outlines(old, worn.moved(away), 0.5)
    assert fit is not None
    hub = rotor()[6:]
    assert fit.move(away(hub)) == pytest.approx(hub, abs=0.03)


def test_a_round_part_has_a_rival_as_good_and_a_plate_has_none() -> None:
    ring = fit_outlines(outline(disc()), outline(disc()), 0.5)
    flat = fit_outlines(outline(plate()), outline(plate()), 0.5)
    assert ring is not None
    assert flat is not None
    assert ring.rival > 0.95
    assert ring.rival_off < 0.01
    assert flat.rival < 0.8


@pytest.mark.parametrize("light", [(0.1, 0.11, 0.12), (0.45, 0.42, 0.4), (0.85, 0.85, 0.85)])
def test_the_outline_lies_on_the_upper_edge_where_no_wall_shows(
    light: tuple[float, float, float],
) -> None:
    camera = Pinhole((80.0, 170.0, 330.0))
    part = Prism(plate(), 6.0, 30.0, light=light)
    found = part_seen(photo(camera, part, shadow=0.4), camera, FIELD, 6.0, "old").outline
    truth = outline(part.laid())
    apart = [float(np.hypot(*(truth.points - point).T).min()) for point in found.points]
    free = found.wall == 0.0
    assert 0.4 < free.mean() < 0.8  # the camera stands to one side
    # A pixel is 0.35 mm.
    assert np.percentile(np.array(apart)[free], 90) < 0.35


def test_a_field_without_a_part_or_with_two_is_said() -> None:
    camera = Pinhole((105.0, 130.0, 330.0))
    with pytest.raises(PhotoCannot, match="No single part") as refused:
        part_seen(photo(camera, None), camera, FIELD, 0.0, "new")
    assert "new photo" in refused.value.what
    outside = Prism(plate(), at_mm=(FIELD[0] + 5, 120.0))
    with pytest.raises(PhotoCannot, match="reaches out"):
        part_seen(photo(camera, outside), camera, FIELD, 0.0, "new")


def test_the_free_field_is_what_the_layout_says_or_the_room_between_its_markers() -> None:
    card = bench_card("a4")
    assert free_field(card) == card.free_field_mm
    assert free_field(None) == (30.0, 30.0, 180.0, pytest.approx(232.4, abs=0.1))
    silent = CardLayout(card.name, card.dictionary, card.paper, card.markers, 150.0)
    small = free_field(card.printed(0.97))  # a print 3 % too small
    assert small == pytest.approx((29.1, 29.1, 174.6, 242.5))
    left, top, right, bottom = free_field(silent)
    assert (left, top, right, bottom) == pytest.approx((28.0, 28.0, 182.0, 252.0), abs=1.1)
    lone = CardLayout(
        "one", "DICT_4X4_50", "a4", (CardMarker(0, ((0, 0), (9, 0), (9, 9), (0, 9))),), 9.0
    )
    left, top, right, bottom = free_field(lone)
    assert (right - left) * (bottom - top) > 100 * 200  # beside it
    assert not (left < 9 and right > 0 and top < 9 and bottom > 0)
