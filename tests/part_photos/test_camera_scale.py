"""A photo's scale from the card in it: what it says, and why it refuses."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from desktop_app.part_photos.bench_card.card_layout import CardLayout, CardMarker
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.camera.find_scale import card_scale, found_card
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.marks.measure import measure
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels
from tests.part_photos.camera_pictures import View, drawn, small_card

CARD = small_card("shop card")
NEAR = View(tilt=20, towards=30, roll=7)
# 30 mm and 21 mm apart, 10 mm above the card.
ENDS = np.array([[45.0, 35.0], [75.0, 35.0], [60.0, 56.0]])


def lengths(scale: CardScale, view: View, height: float) -> list[float]:
    """Measure from the first end to the two others, true pixels given."""
    true = replace(scale, theta=view.theta()).to_pixels(ENDS, height)
    mm = scale.on_plane(true, height)
    return [float(np.linalg.norm(mm[n] - mm[0])) for n in (1, 2)]


@pytest.mark.parametrize(
    "view",
    [NEAR, View(), View(roll=90), View(roll=180, tilt=12), View(roll=271, tilt=30, distance=200)],
    ids=["tilted", "straight", "on its side", "upside down", "far tilted"],
)
def test_the_photo_gets_its_millimetres(view: View) -> None:
    scale = card_scale(drawn(CARD, view), [CARD])
    assert scale.source == "card"
    assert scale.card == "shop card"
    assert scale.markers_seen == tuple(range(10))
    assert scale.warnings == ()
    assert scale.tilt_deg == pytest.approx(view.tilt, abs=0.5)
    assert scale.distance_mm == pytest.approx(view.distance, rel=0.04)
    assert scale.blur_px == pytest.approx(0.7, abs=0.15)
    assert scale.residual_px < 0.1
    assert lengths(scale, view, 0.0) == pytest.approx([30.0, np.hypot(15, 21)], abs=0.02)
    assert lengths(scale, view, 10.0) == pytest.approx([30.0, np.hypot(15, 21)], abs=0.07)


def test_a_measured_ruler_counts() -> None:
    picture = drawn(CARD, NEAR)
    plain = card_scale(picture, [CARD])
    larger = card_scale(picture, [CARD], card_scale=1.01, card_scale_u=0.05 / 150)
    assert (plain.print_u, larger.print_u) == (0.003, 0.05 / 150)
    ratio = np.array(lengths(larger, NEAR, 0.0)) / lengths(plain, NEAR, 0.0)
    # Both ends are given by the same pixels of the smaller card.
    assert ratio == pytest.approx(1.01, abs=1e-3)


def test_what_is_covered_costs_little() -> None:
    hidden = replace(NEAR, fingers=((0.0, 40.0, 26.0, 101.0), (20.0, 70.0, 60.0, 101.0)))
    scale = card_scale(drawn(CARD, hidden), [CARD])
    assert scale.markers_seen == (0, 1, 2, 3, 5, 8, 9)
    assert lengths(scale, NEAR, 10.0) == pytest.approx([30.0, np.hypot(15, 21)], abs=0.1)
    whole = card_scale(drawn(CARD, NEAR), [CARD])
    assert scale.flat_u_mm > whole.flat_u_mm == pytest.approx(0.3, abs=0.001)


def test_the_card_that_lies_there_is_chosen() -> None:
    other = small_card("other card", first=40)
    picture = drawn(other, NEAR)
    scale, layout = found_card(picture, [CARD, other])
    assert (scale.card, scale.markers_seen) == ("other card", tuple(range(40, 50)))
    assert layout is other
    with pytest.raises(PhotoCannot, match="No marker"):
        card_scale(picture, [CARD])


def test_of_cards_with_the_same_markers_the_one_that_fits_is_chosen() -> None:
    # As if the shop had printed an older card with its markers elsewhere.
    moved = tuple(
        CardMarker(marker.id, tuple((x * 1.02 if x > 60 else x, y) for x, y in marker.corners_mm))  # type: ignore[arg-type]
        for marker in CARD.markers
    )
    older = CardLayout("older card", CARD.dictionary, "test", moved, 80.0)
    assert card_scale(drawn(CARD, NEAR), [older, CARD]).card == "shop card"


def test_two_cards_in_one_photo_are_said() -> None:
    view = View(size=(640, 540))
    first = drawn(CARD, view).rgb
    second = drawn(small_card("other card", first=40), replace(view, fingers=((0, 0, 30, 70),))).rgb
    both = PhotoPixels(np.concatenate([first, second], axis=1), 26.0)
    scale = card_scale(both, [small_card("other card", first=40), CARD])
    assert scale.card == "shop card"
    assert any("other card" in warning for warning in scale.warnings)


def test_a_photo_that_names_no_lens_counts_with_a_warning() -> None:
    picture = replace(drawn(CARD, NEAR), focal_35_mm=None)
    unsure, sure = card_scale(picture, [CARD]), card_scale(drawn(CARD, NEAR), [CARD])
    assert any("doesn't name its lens" in warning for warning in unsure.warnings)
    assert unsure.covariance[0, 0] > sure.covariance[0, 0]


def test_a_zoomed_photo_is_noticed() -> None:
    picture = replace(drawn(CARD, View(tilt=33, towards=30)), focal_35_mm=60.0)
    assert any("another lens" in warning for warning in card_scale(picture, [CARD]).warnings)


@pytest.mark.parametrize("as_taken", [False, True])
@pytest.mark.parametrize(
    "cut", [(0, 0, 800, 450), (0, 0, 600, 450), (80, 60, 800, 600)], ids=["16:9", "75 %", "90 %"]
)
def test_a_photo_that_was_cut_is_doubted_though_it_names_its_lens(
    cut: tuple[int, int, int, int], as_taken: bool
) -> None:
    """Its middle isn't the lens's: what lies above the card would be wrong, and be believed."""
    view = View(distance=210, tilt=20, towards=30, roll=7)
    whole = drawn(CARD, view)
    left, top, right, bottom = cut
    rgb = np.ascontiguousarray(whole.rgb[top:bottom, left:right])
    scale = card_scale(replace(whole, rgb=rgb, as_taken=as_taken), [CARD])
    says = "through another lens" if as_taken else "isn't as the camera made it"
    assert any(says in warning for warning in scale.warnings)
    assert not any("double" in warning for warning in scale.warnings)
    true = replace(scale, theta=view.theta())
    for height in (0.0, 10.0, 20.0, 40.0):
        ends = true.to_pixels(ENDS[:2], height) - (left, top)
        found = measure(Mark("length", tuple(map(tuple, ends.tolist())), height_mm=height), scale)
        assert found.value is not None
        assert found.expanded_uncertainty is not None
        assert abs(found.value - 30.0) < found.expanded_uncertainty


def test_a_card_of_one_large_marker_serves() -> None:
    marker = CardMarker(3, ((40, 30), (82, 30), (82, 72), (40, 72)))
    single = CardLayout("one marker", CARD.dictionary, "test", (marker,), 42.0)
    scale = card_scale(drawn(single, NEAR), [single])
    assert scale.markers_seen == (3,)
    assert lengths(scale, NEAR, 0.0) == pytest.approx([30.0, np.hypot(15, 21)], abs=0.15)


def test_a_card_in_pieces_and_far_away_is_refused_for_how_small_it_is() -> None:
    far = View(distance=420, fingers=((0, 22, 130, 110),))
    with pytest.raises(PhotoCannot, match=r"one pixel is 0\.44 mm there"):
        card_scale(drawn(CARD, far), [CARD])
    with pytest.raises(PhotoCannot, match=r"squares of its markers are 1\.. pixels wide, 3 are"):
        card_scale(drawn(CARD, View(distance=330, size=(400, 300), focal=300)), [CARD])


REFUSED = {
    "No marker of shop card was found": View(margin=(400.0, 400.0)),
    "Too few markers: 2 of the card's 10 are clearly seen, 3 are needed": View(
        fingers=((0, 22, 130, 110), (60, 0, 130, 30))
    ),
    "Too few markers: 1 of the card's 10 is": View(fingers=((0, 22, 130, 110), (26, 0, 130, 30))),
    "The camera was tilted 48° against the card": View(tilt=48),
    "one pixel is 0.44 mm there": View(distance=420),
    "The photo is blurred": View(blur=2.0),
}


@pytest.mark.parametrize("says", REFUSED)
def test_a_photo_that_cant_serve_is_refused_with_the_way_out(says: str) -> None:
    with pytest.raises(PhotoCannot) as refused:
        card_scale(drawn(CARD, REFUSED[says]), [CARD])
    assert says in refused.value.what
    assert refused.value.do.startswith("Take the photo again")
    assert "\n" not in refused.value.sentence()


def test_a_near_blurred_photo_is_refused_too() -> None:
    # Fine millimetres, but edges that spread over 16 pixels.
    near = View(distance=90, blur=4.0, margin=(30.0, 25.0))
    with pytest.raises(PhotoCannot, match="The photo is blurred"):
        card_scale(drawn(CARD, near), [CARD])


def test_a_mirrored_photo_is_refused_as_such() -> None:
    mirrored = PhotoPixels(np.ascontiguousarray(drawn(CARD, View()).rgb[:, ::-1]), 26.0)
    with pytest.raises(PhotoCannot, match="The photo is mirrored"):
        card_scale(mirrored, [CARD])


def test_a_card_that_isnt_the_named_one_is_refused() -> None:
    # Its lower rows are printed 1.5 mm further down than the layout says, each a bit aslant.
    moved = tuple(
        CardMarker(marker.id, tuple((x + 0.02 * y * (n % 3 - 1), y) for x, y in marker.corners_mm))  # type: ignore[arg-type]
        for n, marker in enumerate(CARD.markers)
    )
    other = CardLayout("other", CARD.dictionary, "test", moved, 80.0)
    with pytest.raises(PhotoCannot, match="doesn't lie flat, or isn't the one"):
        card_scale(drawn(CARD, NEAR), [other])
    cropped = replace(drawn(CARD, NEAR), focal_35_mm=None)
    with pytest.raises(PhotoCannot, match="lie flat, or the photo was cropped or stretched") as no:
        card_scale(cropped, [other])
    assert no.value.do.startswith("Bring the photo as the camera made it.")


def test_a_layout_that_is_altogether_wrong_is_refused() -> None:
    for turn in range(1, 10):
        places = [CARD.markers[(n + turn) % 10].corners_mm for n in range(10)]
        markers = tuple(map(CardMarker, range(10), places))
        wrong = CardLayout("wrong", CARD.dictionary, "test", markers, 80.0)
        with pytest.raises(PhotoCannot):
            card_scale(drawn(CARD, NEAR), [wrong])


def test_two_alike_cards_are_refused() -> None:
    one = drawn(CARD, View(size=(640, 560))).rgb
    both = PhotoPixels(np.concatenate([one, one], axis=1), 26.0)
    with pytest.raises(PhotoCannot, match="in the photo twice"):
        card_scale(both, [CARD])
