"""Where two parts differ: said above the doubt and only there, and drawn."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.overlay.alignment import Alignment, LaidOutlines, cannot
from desktop_app.part_photos.overlay.difference import Difference, differences
from desktop_app.part_photos.overlay.not_compared import not_compared
from desktop_app.part_photos.overlay.outline import evenly
from desktop_app.part_photos.overlay.picture import blend, difference_picture, wipe
from desktop_app.part_photos.overlay.picture_lines import Pen
from desktop_app.part_photos.photo_pixels import PhotoPixels
from tests.part_photos.overlay_scenes import Pinhole, Prism, disc, photo, plate, rotor

EYE, OTHER = Pinhole((90.0, 150.0, 300.0)), Pinhole((115.0, 120.0, 310.0), roll=1.0)


def laid(old: np.ndarray, new: np.ndarray, u: float, cards: bool = True) -> Alignment:
    """Two outlines, in mm, as if the old photo had four pixels a millimetre."""
    first, second = evenly(old, 0.25, 0.0), evenly(new, 0.25, 0.0)
    doubts = [np.full(len(one), u if cards else 4 * u) for one in (first, second)]
    mm = (first, second) if cards else (None, None)
    outlines = LaidOutlines(first * 4 + 200, second * 4 + 200, *mm, *doubts)
    scale = 4.0 if cards else None
    return Alignment(True, "", "card and outline", np.eye(3), 0.1, 0.03, 0.0, scale, outlines)


def test_a_longer_tip_is_said_with_its_size_side_and_place() -> None:
    (found,) = differences(laid(rotor(5.0), rotor(6.0), 0.2))
    assert found.side == "more"
    assert found.size_mm == pytest.approx(1.0, abs=0.05)
    assert found.expanded_u_mm == pytest.approx(0.2)
    assert found.size_px == pytest.approx(4.0, abs=0.2)
    assert found.where == "right"
    x, y = np.array(found.polygon_px).T
    assert (x.min(), x.max()) == pytest.approx((200 + 4 * 29, 200 + 4 * 30), abs=2.0)
    assert (y.min(), y.max()) == pytest.approx((200 - 10, 200 + 10), abs=2.0)
    assert "1.0" in found.words()
    assert "further" in found.words()


def test_a_shorter_tip_is_less_and_the_mirror_of_more() -> None:
    (found,) = differences(laid(rotor(6.0), rotor(5.0), 0.2))
    assert (found.side, found.size_mm) == ("less", pytest.approx(1.0, abs=0.05))


def test_nothing_is_said_below_the_doubt() -> None:
    assert differences(laid(rotor(5.0), rotor(6.0), 1.2)) == ()
    assert differences(laid(plate(), plate(), 0.05)) == ()


def test_the_largest_comes_first_and_a_whole_seam_counts_once() -> None:
    grown = plate() * (1.05, 1.0)
    found = differences(laid(plate(), grown, 0.3))
    # Both ends, and the side of the notch that is farther out.
    assert {one.where for one in found[:2]} == {"right", "left"}
    assert [one.size_mm for one in found] == pytest.approx([1.5, 1.5, 0.7], abs=0.15)
    (ring,) = differences(laid(disc(), disc(21.0), 0.3))
    assert ring.side == "more"


def in_shade(aligned: Alignment, beyond_mm: float) -> Alignment:
    """The same, with both outlines in shade to the right of so many mm."""
    outlines = aligned.outlines
    assert outlines is not None
    assert outlines.old_mm is not None
    assert outlines.new_mm is not None
    old, new = (line[:, 0] > beyond_mm for line in (outlines.old_mm, outlines.new_mm))
    return replace(aligned, outlines=replace(outlines, old_untold=old, new_untold=new))


@pytest.mark.parametrize(("old", "new"), [(5.0, 6.0), (6.0, 5.0)])
def test_what_may_end_in_shade_is_not_framed_but_said(old: float, new: float) -> None:
    aligned = laid(rotor(old), rotor(new), 0.2)
    assert differences(aligned)
    assert not_compared(aligned) == ()
    shaded = in_shade(aligned, 25.0)
    assert differences(shaded) == ()
    (left_out,) = not_compared(shaded)
    assert (left_out.reason, left_out.sides) == ("shade", ("right",))
    assert 0.03 < left_out.share < 0.15
    assert "was not compared (dotted, at the right)" in left_out.words()


def test_a_distance_to_an_outline_that_shade_led_away_is_not_framed() -> None:
    # The old outline leaves the plate at its right end, across its face; only some of that is told.
    cut = np.array([[-30, -20], [5, -20], [8, -5], [8, 5], [5, 20], [-30, 20]], float)
    aligned = laid(cut, plate(), 0.2)
    assert max(one.size_mm or 0.0 for one in differences(aligned)) > 10
    outlines = aligned.outlines
    assert outlines is not None
    assert outlines.old_mm is not None
    x, y = outlines.old_mm.T
    led = (x > 5.2) & (np.abs(y) > 3)
    none = np.zeros(len(outlines.new_px), bool)
    led_away = replace(aligned, outlines=replace(outlines, old_untold=led, new_untold=none))
    assert all(one.where not in ("right", "upper right") for one in differences(led_away))


def test_a_place_that_is_compared_coarsely_says_its_reason_and_its_bounds() -> None:
    aligned = laid(plate(), plate(), 2.0)
    (walls,) = not_compared(aligned)
    assert (walls.reason, walls.share, walls.sides) == ("wall", 1.0, ("all sides",))
    assert walls.framed_above_mm == pytest.approx((2.0, 2.0))
    assert "walls of the part" in walls.words()
    (height,) = not_compared(replace(aligned, highest_mm=30.0))
    assert height.reason == "height"
    assert "for want of a height" in height.words()
    assert not_compared(laid(plate(), plate(), 2.0, cards=False)) == ()


def test_a_doubt_of_all_lengths_widens_a_size_by_its_share() -> None:
    (found,) = differences(replace(laid(rotor(5.0), rotor(6.0), 0.2), size_u=0.3))
    assert found.expanded_u_mm == pytest.approx(np.hypot(0.2, 0.3), abs=0.01)


def test_without_a_card_no_size_is_said() -> None:
    (found,) = differences(laid(rotor(5.0), rotor(6.0), 0.2, cards=False))
    assert found.size_mm is None
    assert found.size_px == pytest.approx(4.0, abs=0.2)
    assert "no card says how much" in found.words()


def test_what_was_not_aligned_has_no_differences() -> None:
    assert differences(cannot("They don't fit.")) == ()


@cache
def photographed(old_tip: float, new_tip: float) -> tuple[PhotoPixels, Alignment]:
    old, new = Prism(rotor(old_tip), 3.0, 20.0), Prism(rotor(new_tip), 3.0, 60.0, (110.0, 125.0))
    picture = photo(EYE, old)
    return picture, align(picture, photo(OTHER, new, seed=5), EYE, OTHER, 3.0)


def test_a_tip_two_millimetres_longer_shows_between_two_photos() -> None:
    _, aligned = photographed(5.0, 7.0)
    assert aligned.aligned, aligned.why
    found = differences(aligned)
    assert found
    tip = found[0]
    assert tip.side == "more"
    assert tip.size_mm is not None
    assert tip.expanded_u_mm is not None
    assert abs(tip.size_mm - 2.0) < tip.expanded_u_mm
    assert tip.where == "right"


def test_the_same_part_photographed_twice_shows_no_difference() -> None:
    _, aligned = photographed(6.0, 6.0)
    assert aligned.aligned, aligned.why
    assert differences(aligned) == ()


def test_a_part_in_a_shadow_as_dark_as_itself_is_not_compared_there() -> None:
    eyes = Pinhole((95.0, 130.0, 330.0)), Pinhole((100.0, 140.0, 310.0))
    grey = (0.09, 0.10, 0.112)
    parts = (
        Prism(plate(), 3.0, 30.0, light=grey),
        Prism(plate(), 3.0, -10.0, (100.0, 126.0), light=grey),
    )
    old, new = (photo(eyes[k], parts[k], k + 1, shadow) for k, shadow in enumerate((0.85, 0.0)))
    aligned = align(old, new, *eyes, 3.0)
    assert aligned.aligned, aligned.why
    assert differences(aligned) == ()
    shade = next(one for one in not_compared(aligned) if one.reason == "shade")
    assert 0.15 < shade.share < 0.4
    # The shadow falls to the right and down.
    assert "lower right" in shade.sides
    assert not {"left", "upper left", "lower left"} & set(shade.sides)


def test_a_difference_picture_shows_both_outlines_without_leaning_on_colour() -> None:
    picture, aligned = photographed(5.0, 7.0)
    before = picture.rgb.copy()
    drawn = difference_picture(picture, aligned, differences(aligned), (200, 0, 200), (0, 200, 200))
    outlines = aligned.outlines
    assert outlines is not None
    span = np.ptp(np.vstack([outlines.old_px, outlines.new_px]), axis=0)
    # Four times as large, with a quarter of the part's size and ten pixels round it.
    assert drawn.size == pytest.approx(4 * (span + 0.5 * span.max() + 20), abs=10)
    pixels = np.asarray(drawn).astype(int)
    solid, dashed = (
        np.abs(pixels - rgb).sum(axis=-1) < 12 for rgb in ((200, 0, 200), (0, 200, 200))
    )
    assert min(solid.sum(), dashed.sum()) > 500
    assert (np.abs(pixels).sum(axis=-1) < 12).sum() > 300  # frames, words and the bar are black
    assert np.array_equal(picture.rgb, before)


def test_what_is_not_compared_or_only_coarsely_is_drawn_dotted() -> None:
    same = laid(plate(), plate(), 0.2)
    old = PhotoPixels(np.full((320, 420, 3), 180, np.uint8))

    def inked(aligned: Alignment) -> tuple[int, int]:
        """How many pixels have the old outline's colour, and how many the legend's last line."""
        drawn = np.asarray(difference_picture(old, aligned, [], (200, 0, 200), (0, 200, 200)))
        own = (drawn == (200, 0, 200)).all(axis=-1)
        return int(own.sum()), int((drawn[85:115, :300] == 0).all(axis=-1).sum())

    whole, shaded = inked(same), inked(in_shade(same, -100.0))
    assert shaded[0] < 0.6 * whole[0]
    assert whole[1] == 0
    assert shaded[1] > 50
    coarse = inked(laid(plate(), plate(), 2.0))
    assert coarse[0] == shaded[0]
    assert inked(laid(plate(), plate(), 2.0, cards=False))[1] == 0


def test_a_difference_picture_needs_outlines() -> None:
    with pytest.raises(ValueError, match="no outlines"):
        difference_picture(PhotoPixels(np.zeros((9, 9, 3), np.uint8)), cannot("no"), [])


def test_many_differences_are_all_labelled_inside_the_picture() -> None:
    aligned = laid(plate(), plate(), 0.1)
    triangle = ((200.0, 200.0), (210.0, 200.0), (205.0, 210.0))
    found = [Difference("less", 0.5, 0.1, 2.0, triangle, "left")] * 12
    old = PhotoPixels(np.full((400, 400, 3), 180, np.uint8))
    assert difference_picture(old, aligned, found).size[0] > 100


def test_sizes_on_the_picture_carry_their_uncertainty(monkeypatch: pytest.MonkeyPatch) -> None:
    said: list[str] = []
    monkeypatch.setattr(Pen, "framed", lambda _pen, _polygon, words, _number: said.append(words))
    old = PhotoPixels(np.full((400, 400, 3), 180, np.uint8))
    for cards in (True, False):
        aligned = laid(rotor(5.0), rotor(6.0), 0.2, cards)
        difference_picture(old, aligned, differences(aligned))
    assert said == ["+1.00 ± 0.20 mm", "+ (no card, no size)"]


def test_blend_and_wipe_put_the_new_photo_where_it_belongs() -> None:
    dark, light = (np.full((80, 100, 3), shade, np.uint8) for shade in (40, 240))
    old, new = PhotoPixels(dark), PhotoPixels(light)
    right = np.array([[1.0, 0, 50.0], [0, 1, 0], [0, 0, 1]])
    blended = np.asarray(blend(old, new, right, 0.25))
    assert blended.shape == (80, 100, 3)
    assert (blended[:, :50] == 40).all()
    assert (blended[:, 50:] == 90).all()
    wiped = np.asarray(wipe(old, new, np.eye(3), 0.3))
    assert (wiped[:, :30] == 40).all()
    assert (wiped[:, 30:] == 240).all()
    assert blend(old, new, np.eye(3), longest=50).size == (50, 40)


def test_a_picture_made_smaller_keeps_its_places() -> None:
    spot = np.zeros((400, 600, 3), np.uint8)
    spot[196:204, 296:304] = 255
    small = np.asarray(blend(PhotoPixels(spot), PhotoPixels(spot), np.eye(3), 1.0, 150)).astype(
        float
    )
    y, x = np.indices(small.shape[:2])
    weight = small[..., 0] / small[..., 0].sum()
    # The middle of the spot, (299.5, 199.5), lies at (74.5, 49.5) of a quarter.
    assert ((x * weight).sum(), (y * weight).sum()) == pytest.approx((74.375, 49.375), abs=0.2)


def test_a_part_replaced_elsewhere_keeps_its_shape() -> None:
    assert replace(Prism(plate()), turn_deg=90.0).laid()[0] == pytest.approx([125.0, 100.0])
