"""Where an overlay is not to be believed: each way out is taken, and says what to do."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import cv2
import numpy as np
import pytest

from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.overlay import card_way, features, mirrored
from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.overlay.alignment import Alignment, LaidOutlines
from desktop_app.part_photos.overlay.difference import Difference, differences
from desktop_app.part_photos.overlay.edges_agree import edges_off_mm
from desktop_app.part_photos.overlay.features import by_features
from desktop_app.part_photos.overlay.mirrored import refuse_turned_over
from desktop_app.part_photos.overlay.outline_fit import OutlineFit, fit_outlines
from desktop_app.part_photos.overlay.part_mask import part_mask
from desktop_app.part_photos.overlay.part_view import PartView
from desktop_app.part_photos.overlay.picture import difference_picture
from desktop_app.part_photos.overlay.plain_way import by_plain_outline
from desktop_app.part_photos.overlay.plane_move import PlaneMove
from desktop_app.part_photos.overlay.trust import click_trouble, outline_trouble
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.overlay_scenes import Pinhole, disc, plate
from tests.part_photos.test_overlay_align import NEW_EYE, OLD_EYE, on_even_ground, seen, textured
from tests.part_photos.test_overlay_outlines import outline

STAYS = PlaneMove(0.0)
GOOD = OutlineFit(STAYS, 0.98, 0.02, 0.98, 0.1, 0.0, 0.5, np.diag([1e-8, 1e-4, 1e-4]))
CLICKS = [((300.0, 300.0), (310.0, 320.0)), ((700.0, 500.0), (710.0, 520.0))]


def blank(shade: int, size: tuple[int, int] = (1200, 900)) -> PhotoPixels:
    return PhotoPixels(np.full((size[1], size[0], 3), shade, np.uint8))


@pytest.mark.parametrize(
    ("more", "edges_off", "said"),
    [
        ({}, None, ""),
        ({}, 0.1, ""),
        ({"inliers": 0.5}, 0.1, "two different parts"),
        ({"rival": 0.9, "inliers": 0.9, "rival_off": 0.0}, 0.1, "round or looks the same"),
        ({"covariance": np.diag([1e-8, 0.01, 0.01])}, 0.1, "Too little of the outline"),
        ({"inliers": 0.7}, None, "no edge confirms them"),
        ({"inliers": 0.7}, 0.3, ""),
        ({"inliers": 0.7}, 0.9, "disagree by 0.9 mm"),
        ({}, 0.9, ""),  # such an outline is the better witness
    ],
)
def test_an_outline_is_believed_as_far_as_it_and_the_edges_go(
    more: dict[str, Any], edges_off: float | None, said: str
) -> None:
    words = outline_trouble(replace(GOOD, **more), edges_off, edges_seen=True)
    assert (said in words) if said else (words == "")
    assert not words or "click" in words


def test_without_a_look_at_edges_a_rough_outline_is_not_refused_for_their_silence() -> None:
    assert outline_trouble(replace(GOOD, inliers=0.7)) == ""


def test_one_click_that_fits_badly_is_told_among_many() -> None:
    points = np.array([[0.0, 0.0], [30, 0], [30, 20], [0, 20]])
    assert click_trouble(points, points, np.array([0.1, 0.2, 0.1, 0.3]), "mm") == ""
    said = click_trouble(points, points, np.array([0.1, 0.2, 3.5, 0.3]), "mm")
    assert said.startswith("One of the clicked points fits the others badly.")


def test_clicks_without_a_card_must_lie_apart_and_be_points() -> None:
    near = [((300.0, 300.0), (310.0, 320.0)), ((304.0, 300.0), (314.0, 320.0))]
    laid = align(blank(90), blank(120), None, None, clicks=near)
    assert (laid.aligned, "too close together" in laid.why) == (False, True)
    for none in (float("nan"), float("inf")):
        odd = [((none, 300.0), (310.0, 320.0)), CLICKS[1]]
        with pytest.raises(ShopTrouble, match="no point"):
            align(blank(90), blank(120), None, None, clicks=odd)


def test_a_card_beside_two_points_of_known_length_gives_no_common_plane() -> None:
    points = TwoPointScale(((0.0, 0.0), (100.0, 0.0)), 10.0)
    laid = align(blank(90), blank(120), OLD_EYE, points, 4.0, CLICKS)
    assert (laid.method, laid.residual_mm) == ("clicks", None)


def test_a_tiny_picture_shows_no_outline() -> None:
    assert not align(blank(90, (50, 40)), blank(120, (50, 50)), None, None).aligned


@pytest.mark.parametrize("at", [(100, 300), (700, 300), (400, 60), (400, 540)])
def test_what_is_cut_off_by_the_photos_rim_is_not_laid_by_its_outline(at: tuple[int, int]) -> None:
    cut = on_even_ground(plate() * 6 + at)
    aside = (0, 10) if at[1] == 300 else (10, 0)
    assert by_plain_outline(cut, on_even_ground(plate() * 6 + np.add(at, aside))) is None


def test_an_outline_that_fits_nearly_as_it_lies_but_better_turned_over_is_not_believed() -> None:
    corners = [[-30, -20], [-2, -20], [-2, -16], [8, -16], [8, -20], [30, -20], [30, 20], [-30, 20]]
    shape = np.array(corners, float)
    old = on_even_ground(shape * 6 + (400, 300))
    assert by_plain_outline(old, on_even_ground(shape * 5 + (380, 310), mirrored=True)) is None


def test_two_different_parts_are_not_called_one_turned_over() -> None:
    old, new = on_even_ground(plate() * 6 + (400, 300)), on_even_ground(disc() * 6 + (400, 300))
    refuse_turned_over(old, new)


def test_where_no_part_is_seen_the_clicks_alone_lay_the_photos() -> None:
    old, new = blank(128), blank(90)
    nowhere = align(old, new, OLD_EYE, NEW_EYE, None)
    assert not nowhere.aligned
    assert nowhere.why.startswith("First say how high the part's outline lies")
    onto = [[80.0, 120.0], [110.0, 130.0]]
    old_px, new_px = (eye.to_pixels(np.array(onto)).tolist() for eye in (OLD_EYE, NEW_EYE))
    clicks = [(tuple(a), tuple(b)) for a, b in zip(old_px, new_px, strict=True)]
    laid = align(old, new, OLD_EYE, NEW_EYE, None, clicks)
    assert laid.method == "card and two clicks"
    assert laid.why.endswith("they were taken to lie on the card.")
    assert laid.residual_mm == pytest.approx(0.0, abs=0.01)


class Blind(Pinhole):
    """A camera of which nobody knows where on the photo anything of the card is seen."""

    def to_pixels(self, points_mm: Any, height_mm: Any = 0.0) -> Any:
        return np.full((len(points_mm), 2), np.nan)


def test_a_card_whose_field_no_camera_sees_is_said() -> None:
    eyes = Blind((80.0, 170.0, 330.0)), Blind((125.0, 95.0, 300.0))
    laid = align(blank(128), blank(90), *eyes, 4.0)
    assert not laid.aligned
    assert "reaches further than the camera can see" in laid.why
    here = [(one, one) for one, _ in CLICKS]
    laid = align(blank(128), blank(90), eyes[0], eyes[0], 4.0, here)
    assert not laid.aligned
    assert laid.why.startswith("The part lies where the cameras are not known.")


def test_where_too_little_of_both_outlines_shows_clicks_are_asked_for(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(card_way, "fit_outlines", lambda *_a, **_k: None)
    laid = align(*seen("plate"), OLD_EYE, NEW_EYE, 4.0)
    assert not laid.aligned
    assert laid.why.startswith("Too little of the outline shows in both photos.")
    own = OLD_EYE.on_plane(np.array([one for one, _ in CLICKS]), 4.0)
    new_px = NEW_EYE.to_pixels(own, 4.0).tolist()
    clicks = [(one, tuple(two)) for (one, _), two in zip(CLICKS, new_px, strict=True)]
    laid = align(*seen("plate"), OLD_EYE, NEW_EYE, 4.0, clicks)
    assert laid.method == "card and two clicks"


def test_edges_that_say_something_else_than_the_outline_refuse_it(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    rough = replace(GOOD, inliers=0.7)
    monkeypatch.setattr(card_way, "fit_outlines", lambda *_a, **_k: rough)
    monkeypatch.setattr(card_way, "edges_off_mm", lambda *_a: 1.2)
    laid = align(*seen("plate"), OLD_EYE, NEW_EYE, 4.0)
    assert not laid.aligned
    assert laid.why.startswith("Outline and edges disagree by 1.2 mm")


@pytest.mark.parametrize(
    ("side", "size", "said", "label"),
    [
        ("more", 1.0, "Top: the new part reaches 1.00 mm (± 0.10) further.", "+1.00 ± 0.10 mm"),
        ("less", 1.0, "Top: the new part reaches 1.00 mm (± 0.10) less far.", "−1.00 ± 0.10 mm"),
        ("more", None, "Top: the new part reaches further; no card says", "+ (no card, no size)"),
        ("less", None, "Top: the new part reaches less far; no card says", "− (no card, no size)"),
    ],
)
def test_a_difference_says_which_part_reaches_further(
    side: Any, size: float | None, said: str, label: str
) -> None:
    one = Difference(side, size, None if size is None else 0.1, 5.0, (), "top")
    assert one.words().startswith(said)
    assert one.label() == label


def test_edges_that_have_nothing_in_common_confirm_nothing() -> None:
    whole = np.ones((200, 260), bool)
    random = np.random.default_rng(1)
    one, other = (
        PartView(random.integers(0, 256, (200, 260, 3)).astype(np.uint8), whole, (-32, -25), 4.0)
        for _ in range(2)
    )
    assert edges_off_mm(one, other, outline(plate()), STAYS) is None


@pytest.mark.parametrize(("share", "confirms"), [(0.2, False), (0.6, True)])
def test_edges_confirm_as_far_as_both_photos_have_them(share: float, confirms: bool) -> None:
    whole, random = np.ones((200, 260), bool), np.random.default_rng(1)
    grains = [cv2.GaussianBlur(random.uniform(0, 255, (200, 260)), (0, 0), 3) for _ in range(2)]
    one, other = (255 * (grain - grain.min()) / np.ptp(grain) for grain in grains)
    views = (
        PartView(np.repeat(light[..., None], 3, 2).astype(np.uint8), whole, (-32, -25), 4.0)
        for light in (one, share * one + (1 - share) * other)
    )
    off = edges_off_mm(*views, outline(plate()), STAYS)
    assert (off is not None) is confirms
    assert off is None or off < 0.2


def test_what_exceeds_its_doubt_in_a_point_alone_is_no_difference() -> None:
    turns = np.linspace(0, 2 * np.pi, 629, endpoint=False)
    ways, doubt = np.column_stack([np.cos(turns), np.sin(turns)]), np.full(629, 3.0)

    def bumped(by: float) -> tuple[Difference, ...]:
        bump = 3 * by * np.exp(-(((np.arange(629) - 300) / 10) ** 2) / 2)
        old, new = ways * 100 + 300, ways * (100 + bump[:, None]) + 300
        laid = LaidOutlines(old, new, None, None, doubt, doubt)
        return differences(Alignment(True, "", "outline", outlines=laid))

    assert [len(bumped(by)) for by in (1.0, 1.015, 1.1, 1.5)] == [0, 0, 1, 1]


def test_outlines_hidden_by_walls_or_far_apart_are_not_compared() -> None:
    old = outline(plate())
    walled = replace(old, wall=np.full(len(old.points), 9.0))
    assert fit_outlines(walled, old, 0.5) is None
    away = fit_outlines(old, old.moved(PlaneMove(0.0, (300.0, 0.0))), 0.001, STAYS, reach=0.01)
    assert away is not None
    assert away.shift_u > 100


def test_where_no_even_paper_is_seen_no_part_is() -> None:
    whole = np.ones((100, 160), bool)
    boards = (np.indices((100, 160)) // 10).sum(0) % 2 * 255
    rgb = np.repeat(boards[..., None], 3, axis=2).astype(np.uint8)
    assert part_mask(rgb, whole, 1.0) is None
    spots = np.exp(np.random.default_rng(1).uniform(-5, 0, (10, 16, 3))) * 255
    motley = np.repeat(np.repeat(spots, 10, axis=0), 10, axis=1).astype(np.uint8)
    assert part_mask(motley, whole, 1.0) is None
    few = np.zeros((100, 160), bool)
    few[:10, :10] = True
    assert part_mask(rgb, few, 1.0) is None


def test_on_paper_that_is_nothing_but_edges_no_shade_is_followed() -> None:
    ruled = np.full((100, 160), 180) + 14 * (np.indices((100, 160))[1] // 2 % 2 * 2 - 1)
    ruled[30:70, 50:100] = 40
    mask = part_mask(np.repeat(ruled[..., None], 3, axis=2).astype(np.uint8), ruled > 0, 9.0)
    assert mask is not None
    assert mask.sum() == pytest.approx(40 * 50, rel=0.1)


GRID = np.stack(np.meshgrid(np.linspace(60, 740, 8), np.linspace(60, 540, 8)), -1).reshape(-1, 2)
STEEP = np.array([[1.0, 0, 0], [0, 1.0, 0], [0.02, 0, 1.0]])  # its far side is 17 times as small


def steep(points: np.ndarray) -> np.ndarray:
    laid = np.column_stack([points, np.ones(len(points))]) @ STEEP.T
    return np.asarray(laid[:, :2] / laid[:, 2:] * 10)


@pytest.mark.parametrize(
    ("onto", "points", "lays"),
    [
        (GRID, GRID, True),
        (GRID * 0.15, GRID * 0.15, False),  # all in one corner
        (steep(GRID), GRID, False),  # as no camera sees a flat thing twice
        (GRID[:, ::-1], GRID, False),  # in the mirror
    ],
)
def test_features_lay_a_photo_only_as_a_camera_could_have_seen_it(
    monkeypatch: pytest.MonkeyPatch, onto: np.ndarray, points: np.ndarray, lays: bool
) -> None:
    monkeypatch.setattr(features, "_matches", lambda *_a: (onto.copy(), points.copy()))
    monkeypatch.setattr(features, "agreeing_blocks", lambda *_a: 1.0)
    found = by_features(blank(90, (800, 600)), blank(120, (800, 600)))
    assert (found is not None) is lays


def test_a_mirrored_photo_is_told_by_its_features_where_no_outline_tells_it(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(mirrored, "fits_turned_over", lambda *_a: False)
    scene = textured(1)
    with pytest.raises(PhotoCannot, match="what they show fits only turned over"):
        refuse_turned_over(scene, PhotoPixels(np.ascontiguousarray(scene.rgb[:, ::-1])))
    refuse_turned_over(scene, scene)  # fits as it is, and not turned over


def test_a_part_smaller_than_any_bar_has_none_beside_it() -> None:
    points = plate() * 4 + (400, 300)
    laid = LaidOutlines(points, points, None, None, np.ones(9), np.ones(9))
    with_bar = Alignment(True, "", "card and outline", np.eye(3), 0.1, 0.1, 4.0, 4.0, laid)
    picture = blank(200, (800, 600))
    bar, none = (
        np.asarray(difference_picture(picture, replace(with_bar, px_per_mm=per), ()))
        for per in (4.0, 4e4)
    )
    assert (bar != none).any()
    plain = difference_picture(picture, replace(with_bar, px_per_mm=None), ())
    assert np.array_equal(none, np.asarray(plain))
