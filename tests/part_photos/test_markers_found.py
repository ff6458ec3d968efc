"""Markers in small drawn pictures: which are found, and how true their corners are."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from desktop_app.part_photos.camera.lens import project
from desktop_app.part_photos.camera.markers_found import (
    FoundMarker,
    FoundMarkers,
    find_markers,
    mirrored_markers,
)
from tests.part_photos.camera_pictures import Floats, View, drawn, small_card

CARD = small_card()
NEAR = View(tilt=20, towards=30, roll=7)


def found_in(view: View) -> FoundMarkers:
    """Find the small card's markers in a picture of it."""
    return find_markers(drawn(CARD, view).rgb, {CARD.dictionary}, len(CARD.markers))


def errors(view: View, found: FoundMarkers) -> tuple[Floats, float]:
    """How far each corner is off, px, (m, 4, 2), and by how much they lie too far out."""
    corners = {marker.id: np.array(marker.corners_mm) for marker in CARD.markers}
    flat = np.concatenate([corners[one.id] for one in found.markers])
    true = project(view.theta(), np.column_stack([flat, np.zeros(len(flat))])).reshape(-1, 4, 2)
    off = np.array([one.edges.corners_px for one in found.markers]) - true
    out = true - true.mean(1, keepdims=True)
    return off, float((off * out / np.linalg.norm(out, axis=-1, keepdims=True)).sum(-1).mean())


@pytest.mark.parametrize(
    "view",
    [
        NEAR,
        View(roll=90),
        View(roll=184, tilt=30, towards=200),
        replace(NEAR, blur=1.3, noise=0.01),
        replace(NEAR, white=0.2, black=0.01),
    ],
    ids=["tilted", "on its side", "upside down", "soft and noisy", "dark"],
)
def test_corners_are_true_to_a_twentieth_of_a_pixel(view: View) -> None:
    found = found_in(view)
    assert [one.id for one in found.markers] == [marker.id for marker in CARD.markers]
    assert all(one.clear for one in found.markers)
    off, outwards = errors(view, found)
    assert abs(outwards) < 0.03
    assert np.sqrt((off**2).mean()) < 0.08
    assert abs(off.mean((0, 1))).max() < 0.05


@pytest.mark.parametrize("blur", [0.6, 1.0, 1.4])
def test_the_edges_width_is_the_photos_blur(blur: float) -> None:
    found = found_in(replace(NEAR, blur=blur))
    # A pixel's own width adds to it: 1/12 px² for the sensor, about as much for reading between.
    width = float(np.median([one.edges.blur_px for one in found.markers]))
    assert width == pytest.approx(np.hypot(blur, 12**-0.5), rel=0.2)


def test_what_lies_across_an_edge_drops_the_marker() -> None:
    # Over the right edge of the first marker, as a finger's tip would, not over its code.
    finger = replace(NEAR, fingers=((19.0, 7.0, 24.0, 17.0),))
    by_id: dict[int, FoundMarker] = {one.id: one for one in found_in(finger).markers}
    assert 0 not in by_id or not by_id[0].clear
    assert all(by_id[marker.id].clear for marker in CARD.markers[1:])


def test_a_marker_cut_by_the_pictures_border_is_no_trouble() -> None:
    view = View(distance=150, margin=(30.0, 25.0))
    found = found_in(view)
    assert 2 <= len(found.markers) < 10
    off, _ = errors(view, found)
    clear = [one.clear for one in found.markers]
    assert np.abs(off[clear]).max() < 0.3


def test_markers_of_another_dictionary_are_not_taken_for_ours() -> None:
    picture = drawn(small_card(dictionary="DICT_6X6_250"), View())
    assert find_markers(picture.rgb, {CARD.dictionary}, 10).markers == ()
    both = find_markers(picture.rgb, {CARD.dictionary, "DICT_6X6_250"}, 10)
    assert {one.dictionary for one in both.markers} == {"DICT_6X6_250"}


def test_a_mirrored_card_is_seen_only_in_the_mirror() -> None:
    mirrored = np.ascontiguousarray(drawn(CARD, View()).rgb[:, ::-1])
    assert find_markers(mirrored, {CARD.dictionary}, 10).markers == ()
    assert mirrored_markers(mirrored, {CARD.dictionary}) == 10


def test_in_a_large_photo_small_markers_are_found_as_well() -> None:
    # Modules of 4 px; in the small copy they would be 2.9.
    view = View(distance=400, size=(1960, 560), focal=800.0)
    found = found_in(view)
    assert len(found.markers) == 10
    assert np.abs(errors(view, found)[0]).max() < 0.25


def test_two_cards_alike_are_told() -> None:
    one = drawn(CARD, View(size=(640, 560))).rgb
    found = find_markers(np.concatenate([one, one], axis=1), {CARD.dictionary}, 10)
    assert found.markers == ()
    assert len(found.twice) == 10


def test_a_picture_without_a_card_has_no_markers() -> None:
    noise = np.random.default_rng(1).integers(0, 256, (300, 400, 3)).astype(np.uint8)
    found = find_markers(noise, {CARD.dictionary}, 10)
    assert (found.markers, found.twice) == ((), frozenset())


@pytest.mark.parametrize("shape", [(3, 5000, 3), (5000, 2, 3), (1, 9000, 3)])
def test_a_strip_of_a_picture_has_no_markers_and_makes_no_trouble(
    shape: tuple[int, int, int],
) -> None:
    strip = np.full(shape, 200, np.uint8)
    assert find_markers(strip, {CARD.dictionary}, 10).markers == ()
