"""Two photos laid on each other: by card, outline, features or clicks, or refused with a reason."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import cv2
import numpy as np
import pytest

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.lens import turned
from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.overlay.alignment import Alignment
from desktop_app.part_photos.overlay.difference import differences
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.marked_photos import scale_over_card
from tests.part_photos.overlay_scenes import Pinhole, Prism, disc, photo, plate, rotor

OLD_EYE, NEW_EYE = Pinhole((80.0, 170.0, 330.0)), Pinhole((125.0, 95.0, 300.0), roll=0.4)
OLD, NEW = Prism(plate(), 4.0, 30.0), Prism(plate(), 4.0, -100.0, (95.0, 140.0))


SHAPES = {"plate": plate(), "rotor": rotor(6.0), "worn rotor": rotor(5.0), "disc": disc()}


@cache
def old_photo(shape: str) -> PhotoPixels:
    return photo(OLD_EYE, replace(OLD, outline=SHAPES[shape]), shadow=0.3)


@cache
def new_photo(shape: str) -> PhotoPixels:
    return photo(NEW_EYE, replace(NEW, outline=SHAPES[shape]), 2, 0.3)


def seen(old: str, new: str = "") -> tuple[PhotoPixels, PhotoPixels]:
    """Photograph one part and another one (or the same) elsewhere, from elsewhere."""
    return old_photo(old), new_photo(new or old)


def common_points(
    own: list[list[float]], off_px: float = 0.0
) -> list[tuple[tuple[float, ...], ...]]:
    """Pixels of points of the part, given in its own mm, as they would be clicked."""
    points = np.array(own, float)
    wobble = off_px * np.array([[1.0, -1.0], [-1.0, 0.5], [0.5, 1.0], [-0.5, -0.5]])[: len(points)]
    old = OLD_EYE.to_pixels(OLD.laid(points), 4.0) + wobble
    new = NEW_EYE.to_pixels(NEW.laid(points), 4.0) - wobble
    return [(tuple(a), tuple(b)) for a, b in zip(old.tolist(), new.tolist(), strict=True)]


def error_mm(laid: Alignment, shape: np.ndarray) -> float:
    """Root mean square of where corners land against where they belong, mm on the part."""
    assert laid.transform is not None
    new = NEW_EYE.to_pixels(NEW.laid(shape), 4.0)
    landed = cv2.perspectiveTransform(new[:, None], laid.transform)[:, 0]
    apart = OLD_EYE.on_plane(landed, 4.0) - OLD.laid(shape)
    return float(np.sqrt((apart**2).sum(axis=1).mean()))


@pytest.mark.parametrize("shape", ["plate", "rotor"])
def test_with_cards_the_outline_lays_the_new_part_on_the_old(shape: str) -> None:
    laid = align(*seen(shape), OLD_EYE, NEW_EYE, 4.0)
    assert laid.aligned, laid.why
    assert laid.method == "card and outline"
    assert error_mm(laid, SHAPES[shape]) < 0.15  # a pixel is 0.35 mm
    assert laid.residual_mm is not None
    assert laid.residual_mm < 0.2
    assert laid.residual_px == pytest.approx(laid.residual_mm * laid.px_per_mm, rel=0.05)


def test_wear_does_not_shift_the_part() -> None:
    laid = align(*seen("worn rotor", "rotor"), OLD_EYE, NEW_EYE, 4.0)
    assert laid.aligned, laid.why
    assert error_mm(laid, rotor()[6:]) < 0.2


def test_a_round_part_needs_clicks() -> None:
    old, new = seen("disc")
    laid = align(old, new, OLD_EYE, NEW_EYE, 4.0)
    assert not laid.aligned
    assert laid.transform is None
    assert "round" in laid.why
    assert "click two points" in laid.why


def test_another_part_is_not_laid_on_it() -> None:
    laid = align(*seen("plate", "rotor"), OLD_EYE, NEW_EYE, 4.0)
    assert (laid.aligned, laid.transform) == (False, None)
    assert "two different parts" in laid.why


def test_an_empty_field_is_said_with_the_photo_that_has_it() -> None:
    laid = align(old_photo("plate"), photo(NEW_EYE, None), OLD_EYE, NEW_EYE, 4.0)
    assert not laid.aligned
    assert "free field of the new photo" in laid.why


def test_high_walls_seen_from_two_sides_are_refused() -> None:
    far = Pinhole((230.0, 95.0, 300.0))
    tall = replace(NEW, height_mm=30.0)
    old = photo(OLD_EYE, replace(OLD, height_mm=30.0))
    laid = align(old, photo(far, tall), OLD_EYE, far, 30.0)
    assert not laid.aligned
    assert "from the same side" in laid.why


def test_walls_that_look_out_as_far_in_two_directions_are_refused() -> None:
    eyes = [Pinhole((105.0 + aside, 130.0, 320.0)) for aside in (-80.0, 80.0)]
    tall = Prism(plate(), 15.0)
    laid = align(*(photo(eye, tall) for eye in eyes), *eyes, 15.0)
    assert not laid.aligned
    assert "from the same side" in laid.why


TALL_EYES = Pinhole((95.0, 145.0, 330.0)), Pinhole((112.0, 140.0, 310.0))


@cache
def tall_pair() -> tuple[PhotoPixels, PhotoPixels]:
    """One plate, 20 mm high, laid down twice and photographed from two places."""
    parts = (Prism(plate(), 20.0), Prism(plate(), 20.0, 20.0, (108.0, 126.0)))
    old, new = (photo(eye, part) for eye, part in zip(TALL_EYES, parts, strict=True))
    return old, new


@pytest.mark.parametrize("unsaid", [None, 0.0])
def test_a_height_that_nobody_said_is_a_doubt_and_no_difference(unsaid: float | None) -> None:
    laid = align(*tall_pair(), *TALL_EYES, unsaid)
    assert laid.aligned, laid.why
    assert laid.height_mm is None
    # As high as the plate is wide, and no more.
    assert laid.highest_mm == pytest.approx(40.0, abs=4.0)
    assert laid.caution().startswith("How high the outline lies")
    assert laid.size_u > 0.1
    assert differences(laid) == ()
    # Taken for as flat as paper, the same photos show differences that aren't there.
    assert differences(align(*tall_pair(), *TALL_EYES, 0.1)) != ()


def test_a_height_that_was_said_needs_no_caution() -> None:
    laid = align(*seen("plate"), OLD_EYE, NEW_EYE, 4.0)
    assert (laid.caution(), laid.highest_mm, laid.height_mm) == ("", None, 4.0)
    assert laid.size_u < 0.01


def test_a_print_that_nobody_measured_widens_the_doubt_away_from_the_middle() -> None:
    def doubt(print_u: float) -> np.ndarray:
        eyes = [replace(eye, print_u=print_u) for eye in (OLD_EYE, NEW_EYE)]
        outlines = align(*seen("plate"), *eyes, 4.0).outlines
        assert outlines is not None
        return outlines.old_u

    # The plate's ends lie 30 mm from its middle: two prints, each a hundredth off.
    assert (doubt(0.01) - doubt(0.0)).max() == pytest.approx(1.96 * 30 * 0.01 * 2**0.5, rel=0.5)


def test_clicks_and_outline_together_are_better_than_clicks() -> None:
    old, new = seen("plate")
    clicks = common_points([[-28, -18], [25, 10]], off_px=2.0)
    laid = align(old, new, OLD_EYE, NEW_EYE, 4.0, clicks=clicks)
    assert laid.method == "card, two clicks and outline"
    assert error_mm(laid, plate()) < 0.15


def test_clicks_alone_turn_a_round_part() -> None:
    old, new = seen("disc")
    clicks = common_points([[-15, 0], [15, 3]])
    laid = align(old, new, OLD_EYE, NEW_EYE, 4.0, clicks=clicks)
    assert laid.aligned
    assert error_mm(laid, disc()) < 0.2


def test_without_cards_clicks_bring_turn_shift_and_size() -> None:
    old, new = seen("plate")
    clicks = common_points([[-28, -18], [25, 10], [-28, 18]])
    laid = align(old, new, None, NEW_EYE, clicks=clicks)
    assert laid.method == "clicks"
    assert laid.residual_mm is None
    assert laid.residual_px is not None
    assert error_mm(laid, plate()) < 2.0  # the view itself is not corrected


@pytest.mark.parametrize(
    ("own", "said"),
    [
        ([[0, 0], [1, 0]], "too close together"),
        ([[-28, -18], [25, 10]], "mm apart on the old part"),
    ],
)
def test_clicks_that_cannot_be_common_points_are_refused(own: list[list[float]], said: str) -> None:
    clicks = common_points(own)
    if "apart" in said:
        (first, second) = clicks
        clicks = [first, (second[0], common_points([[10, 10]])[0][1])]
    laid = align(*seen("plate"), OLD_EYE, NEW_EYE, 4.0, clicks=clicks)
    assert not laid.aligned
    assert said in laid.why


def test_one_click_is_not_enough_and_a_height_in_the_camera_is_none() -> None:
    old, new = seen("plate")
    with pytest.raises(ShopTrouble, match="two common points"):
        align(old, new, None, None, clicks=common_points([[0, 0]]))
    with pytest.raises(ShopTrouble, match="nothing can lie"):
        align(old, new, OLD_EYE, NEW_EYE, 320.0)


def test_the_same_picture_is_known_and_lies_on_itself() -> None:
    picture = old_photo("plate")
    stored = cv2.imdecode(cv2.imencode(".jpg", picture.rgb, [cv2.IMWRITE_JPEG_QUALITY, 80])[1], 1)
    for again in (picture, PhotoPixels(picture.rgb.copy()), PhotoPixels(stored)):
        laid = align(picture, again, None, None)
        assert laid.method == "same picture"
        assert "same picture" in laid.why
        assert laid.residual_px == 0.0
        assert laid.transform == pytest.approx(np.eye(3))


def textured(seed: int) -> PhotoPixels:
    """A scene full of spots and edges, nothing even in it."""
    rng = np.random.default_rng(seed)
    picture = np.full((600, 800, 3), 120, np.uint8)
    for _ in range(500):
        x, y = rng.integers(0, [800, 600])
        shade = tuple(int(value) for value in rng.integers(20, 235, 3))
        wide, high, turn = (int(value) for value in rng.integers([3, 3, 0], [30, 30, 180]))
        cv2.ellipse(
            picture, (int(x), int(y)), (wide, high), turn, 0, 360, shade, cv2.FILLED, cv2.LINE_AA
        )
    return PhotoPixels(picture)


def test_features_find_a_known_homography() -> None:
    old = textured(1)
    truth = np.array([[0.8, -0.25, 150.0], [0.22, 0.85, 20.0], [8e-5, -5e-5, 1.0]])
    warped = cv2.warpPerspective(
        old.rgb, np.linalg.inv(truth), (800, 600), borderMode=cv2.BORDER_REFLECT
    )
    grain = np.random.default_rng(3).normal(0, 4, warped.shape)
    new = PhotoPixels(np.clip(warped * 0.85 + grain, 0, 255).astype(np.uint8))
    laid = align(old, new, None, None)
    assert laid.method == "features", laid.why
    grid = np.stack(np.meshgrid([200.0, 400, 600], [150.0, 300, 450]), axis=-1).reshape(-1, 1, 2)
    assert laid.transform is not None
    landed = cv2.perspectiveTransform(grid, laid.transform)
    assert np.abs(landed - cv2.perspectiveTransform(grid, truth)).max() < 1.0
    assert laid.residual_px is not None
    assert laid.residual_px < 1.5
    assert laid.residual_mm is None


@pytest.mark.parametrize("mirrored", [False, True])
def test_unrelated_or_mirrored_scenes_are_not_aligned(mirrored: bool) -> None:
    old = textured(1)
    new = PhotoPixels(np.ascontiguousarray(old.rgb[:, ::-1])) if mirrored else textured(2)
    laid = align(old, new, None, None)
    assert (laid.aligned, laid.transform, laid.method) == (False, None, "none")
    assert ("mirrored" if mirrored else "Take both on a bench card") in laid.why


def test_another_part_before_the_same_wall_is_not_aligned_by_the_wall() -> None:
    scenes = [textured(1).rgb.copy() for _ in range(2)]
    for scene, seed in zip(scenes, (5, 6), strict=True):
        scene[100:500, 150:650] = textured(seed).rgb[100:500, 150:650]
    laid = align(PhotoPixels(scenes[0]), PhotoPixels(scenes[1]), None, None)
    assert not laid.aligned


def test_without_cards_an_outline_on_an_even_ground_serves() -> None:
    picture = np.full((600, 800, 3), (205, 208, 212), np.uint8)
    old, new = (picture.copy() for _ in range(2))
    turn = np.array([[0.0, -1.0], [1.0, 0.0]])
    for canvas, points in (
        (old, plate() * 6 + (400, 300)),
        (new, plate() * 5 @ turn.T + (380, 310)),
    ):
        cv2.fillPoly(canvas, [np.round(points * 16).astype(np.int32)], (60, 62, 66), cv2.LINE_AA, 4)
    laid = align(PhotoPixels(old), PhotoPixels(new), None, None)
    assert laid.method == "outline", laid.why
    assert laid.transform is not None
    landed = cv2.perspectiveTransform((plate() * 5 @ turn.T + (380, 310))[:, None], laid.transform)
    assert landed[:, 0] == pytest.approx(plate() * 6 + (400, 300), abs=2.0)
    assert laid.residual_mm is None


def on_even_ground(points: np.ndarray, mirrored: bool = False) -> PhotoPixels:
    canvas = np.full((600, 800, 3), (205, 208, 212), np.uint8)
    cv2.fillPoly(canvas, [np.round(points * 16).astype(np.int32)], (60, 62, 66), cv2.LINE_AA, 4)
    return PhotoPixels(np.ascontiguousarray(canvas[:, ::-1]) if mirrored else canvas)


def test_a_part_that_fits_only_turned_over_is_refused() -> None:
    old = on_even_ground(plate() * 6 + (400, 300))
    new = on_even_ground(plate() * 5 + (380, 310), mirrored=True)
    laid = align(old, new, None, None)
    assert (laid.aligned, laid.transform) == (False, None)
    assert "mirrored" in laid.why
    assert "the same side up" in laid.why


def test_a_part_that_looks_the_same_turned_over_is_aligned_with_a_word_about_that() -> None:
    old = on_even_ground(rotor() * 7 + (400, 300))
    for mirrored in (False, True):
        laid = align(old, on_even_ground(rotor() * 6 + (380, 310), mirrored), None, None)
        assert laid.method == "outline", laid.why
        assert "check that neither photo is mirrored" in laid.why
    odd = on_even_ground(plate() * 6 + (400, 300))
    assert "mirrored" not in align(odd, on_even_ground(plate() * 5 + (380, 310)), None, None).why


@pytest.mark.parametrize("clicked", [False, True])
def test_a_mirrored_card_is_refused_by_its_markers(clicked: bool) -> None:
    eye = Pinhole((95.0, 160.0, 330.0), (105.0, 140.0), 1.57, 1250.0, (1600, 1200))
    right = photo(eye, Prism(rotor(), 2.0, 30.0, (105.0, 140.0)), card=bench_card("a4"))
    wrong = PhotoPixels(np.ascontiguousarray(right.rgb[:, ::-1]))
    clicks = [((700.0, 500.0), (700.0, 500.0)), ((900.0, 600.0), (900.0, 600.0))]
    laid = align(right, wrong, eye, None, 2.0, clicks if clicked else None)
    assert (laid.aligned, laid.transform) == (False, None)
    assert laid.why.startswith("The new photo is mirrored")


def test_clicks_where_the_camera_is_not_known_are_refused() -> None:
    # A wide lens whose bending is known only near the middle: pixel (30, 30) lies beyond that.
    known = scale_over_card()
    theta = known.theta.copy()
    theta[0], theta[3:5] = np.log(1500.0), (-0.06, 0.0)
    theta[5:8] = np.radians(10), 0, 0
    theta[8:] = np.array([0, 0, 300.0]) - turned(theta[5:8]) @ [105.0, 148.0, 0]
    wide = replace(known, theta=theta)
    assert np.isnan(wide.on_plane(np.array([[30.0, 30.0]]), 10.0)).all()
    old, new = (PhotoPixels(np.full((3000, 4000, 3), shade, np.uint8)) for shade in (128, 90))
    middle = ((2000.0, 1500.0), (2000.0, 1500.0))
    for corner in (((30.0, 30.0), (500.0, 600.0)), ((500.0, 600.0), (30.0, 30.0))):
        laid = align(old, new, wide, wide, 10.0, [corner, middle])
        assert (laid.aligned, laid.transform) == (False, None)
        assert "too far from the card" in laid.why


@pytest.mark.parametrize("shades", [(0, 255), (128, 90)])
def test_empty_pictures_are_not_aligned(shades: tuple[int, int]) -> None:
    old, new = (PhotoPixels(np.full((120, 160, 3), shade, np.uint8)) for shade in shades)
    assert not align(old, new, None, None).aligned
