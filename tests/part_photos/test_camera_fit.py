"""The camera fitted to corners alone: what it finds, and whether its doubt is honest."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.camera_fit import CameraFit, fit_camera
from desktop_app.part_photos.camera.camera_model import CornerModel, Priors, outward
from desktop_app.part_photos.camera.card_refusals import MOST_ARCH_MM, MOST_OFF_MM
from desktop_app.part_photos.camera.card_scale import view_of
from desktop_app.part_photos.camera.card_warnings import camera_covariance, card_warnings
from desktop_app.part_photos.camera.focal_prior import LensPrior, contradicted, lens_prior
from desktop_app.part_photos.camera.lens import project, rays_from
from tests.part_photos.camera_pictures import Floats, View

SIZE, FOCAL = (4000, 3000), 3004.6
CORNERS = np.array([marker.corners_mm for marker in bench_card("a4").markers])
FLAT, OUT = CORNERS.reshape(-1, 2), outward(CORNERS).reshape(-1, 2)
MODEL = CornerModel(FLAT, OUT)
PRIORS = Priors(FOCAL, 0.03, ((SIZE[0] - 1) / 2, (SIZE[1] - 1) / 2), 24.0)
ALL_MARKERS = tuple(range(20))


def truth(seed: int, most_tilt: float = 30.0) -> Floats:
    """A camera and a card that the priors expect, drawn at random."""
    random = np.random.default_rng(seed)
    view = View(
        distance=random.uniform(330, 480),
        tilt=random.uniform(0, most_tilt),
        towards=random.uniform(0, 360),
        roll=random.uniform(0, 360),
        size=SIZE,
        focal=FOCAL * np.exp(random.normal(0, 0.03)),
        margin=(105.0, 140.0),
    )
    theta = view.theta()
    theta[1:5] += random.normal(0, 1, 4) * [24, 24, 0.06, 0.1] - [0, 0, view.k1, 0]
    return np.array([*theta, *(random.normal(0, 1, 3) * [0.15, 0.4, 0.4])])


def fitted(
    values: Floats, seed: int = 0, noise: float = 0.1, markers: tuple[int, ...] = ALL_MARKERS
) -> CameraFit:
    """Fit to the corners of these markers, each off by `noise` pixels."""
    rows = np.isin(np.repeat(ALL_MARKERS, 4), markers)
    seen = CornerModel(FLAT[rows], OUT[rows]).pixels(values)
    seen += np.random.default_rng(seed).normal(0, noise, seen.shape)
    return fit_camera(FLAT[rows], seen, PRIORS, OUT[rows])


def length_of(theta: Floats, pixels: Floats, height: float) -> float:
    """Between two pixels on the plane at this height, mm."""
    place, directions = rays_from(theta, pixels)
    ends = place + ((-height - place[2]) / directions[:, 2])[:, None] * directions
    return float(np.linalg.norm(ends[0] - ends[1]))


def length_and_doubt(fit: CameraFit, pixels: Floats, height: float) -> tuple[float, float]:
    """A length, and its standard uncertainty from the fit alone, by numeric derivatives."""
    theta = fit.values[:11]
    steps = np.diag(np.sqrt(np.diag(fit.covariance)[:11]) * 0.1)
    ups, downs = ([length_of(theta + s * row, pixels, height) for row in steps] for s in (1, -1))
    slopes = (np.array(ups) - np.array(downs)) / (2 * np.diag(steps))
    return length_of(theta, pixels, height), float(
        np.sqrt(slopes @ fit.covariance[:11, :11] @ slopes)
    )


def test_perfect_corners_give_the_pose_back() -> None:
    values = truth(3)
    values[3:5] = values[11:] = 0.0
    fit = fitted(values, noise=0.0)
    assert fit.used.all()
    assert fit.rms_px < 0.02
    view, right = (view_of(one[:11], FLAT.mean(0)) for one in (fit.values, values))
    assert view.tilt_deg == pytest.approx(right.tilt_deg, abs=0.3)
    assert view.mm_per_px == pytest.approx(right.mm_per_px, rel=1e-3)
    # Lens, arch and distance trade places within what the priors allow.
    assert np.all(np.abs(fit.values - values) < 2 * np.sqrt(np.diag(fit.covariance)))


@pytest.mark.parametrize("markers", [ALL_MARKERS, (0, 1, 2, 3, 4), (0, 4, 10)])
def test_the_doubt_of_a_length_is_honest(markers: tuple[int, ...]) -> None:
    # Of 24 intervals that each hold the truth with 95 %, 19 or more do with a probability of .999
    # (binomial distribution). Lengths of 60 mm, 40 mm above the card.
    ends = np.array([[75.0, 140.0, -40.0], [135.0, 140.0, -40.0]])
    scores = []
    for seed in range(24):
        values = truth(seed)
        fit = fitted(values, seed, markers=markers)
        length, doubt = length_and_doubt(fit, project(values[:11], ends), 40.0)
        scores.append((length - 60.0) / doubt)
    assert sum(abs(score) < 1.96 for score in scores) >= 19
    assert 0.5 < float(np.std(scores)) < 1.5


def test_one_marker_is_enough_for_an_answer_with_its_doubt() -> None:
    for seed in range(6):
        values = truth(seed, most_tilt=20)
        fit = fitted(values, seed, markers=(7,))
        sure = np.sqrt(np.diag(fit.covariance))
        assert np.all(sure > 0)
        # Next to nothing is learnt of the lens: the prior stays.
        assert sure[0] == pytest.approx(0.03, rel=0.1)
        assert abs(fit.values[0] - values[0]) < 4 * sure[0]


def test_corners_that_are_elsewhere_dont_count() -> None:
    values = truth(5)
    seen = MODEL.pixels(values)
    seen[8:12] += [4.0, -3.0]
    fit = fit_camera(FLAT, seen, PRIORS, OUT)
    assert np.flatnonzero(~fit.used).tolist() == [8, 9, 10, 11]
    assert fit.left_out == pytest.approx(0.05)
    assert fit.rms_px < 0.05


def test_grown_black_is_told_from_distance() -> None:
    values = truth(8)
    values[11] = 0.2
    fit = fitted(values, noise=0.05)
    assert fit.values[11] == pytest.approx(0.2, abs=0.02)
    held = fit_camera(FLAT, MODEL.pixels(values), PRIORS)
    assert held.values[11] == held.covariance[11, 11] == 0.0
    assert held.rms_px > 5 * fit.rms_px


def test_arched_paper_is_not_taken_for_another_lens() -> None:
    flat_priors = Priors(FOCAL, 0.03, PRIORS.centre_px, 24.0, arch_u_mm=0.0)
    arched, stiff = [], []
    for seed in range(8):
        values = truth(seed)
        seen = MODEL.pixels(values)
        arched.append(fit_camera(FLAT, seen, PRIORS, OUT).values[0] - values[0])
        stiff.append(fit_camera(FLAT, seen, flat_priors, OUT).values[0] - values[0])
    assert np.std(arched) < 0.03 < np.std(stiff)


def test_a_photo_that_is_not_quite_sharp_is_told_to_be_marked_with_care() -> None:
    fit, prior = fitted(truth(3)), lens_prior(*SIZE, 26.0, True)
    assert card_warnings(fit, prior, 1.9) == ()
    assert card_warnings(fit, prior, 2.1) == (
        "The photo is not quite sharp: mark edges with care.",
    )


def test_a_saddle_shows_in_what_remains() -> None:
    values = truth(2)
    values[11:] = 0.0
    across = (FLAT - FLAT.mean(0)) / [96, 130]
    for height, least in ((1.0, 0.25), (0.02, 0.0)):
        saddle = -height * across[:, 0] * across[:, 1]
        fit = fit_camera(FLAT, project(values[:11], np.column_stack([FLAT, saddle])), PRIORS, OUT)
        assert (fit.spread_px > 0.25) == (least > 0)


def test_more_noise_is_seen_and_doubles_the_doubt() -> None:
    values = truth(4)
    fine, coarse = fitted(values, 1, noise=0.15), fitted(values, 1, noise=0.6)
    assert fine.sigma_px == pytest.approx(0.15, rel=0.25)
    assert coarse.sigma_px == pytest.approx(0.6, rel=0.25)
    assert coarse.covariance[10, 10] > fine.covariance[10, 10]


def test_real_lenses_need_no_growth_or_outward_directions() -> None:
    board = np.array([(x * 25.0, y * 25.0) for y in range(6) for x in range(9)])
    theta = View(distance=500, tilt=20, size=(640, 480), focal=536.0, k1=-0.2).theta()
    seen = project(theta, np.column_stack([board, np.zeros(len(board))]))
    priors = Priors(536.0, 0.03, (319.5, 239.5), 8.0, k1_u=0.3, k2_u=0.3, arch_u_mm=0.0)
    fit = fit_camera(board, seen, priors)
    assert fit.values[3] == pytest.approx(-0.2, abs=0.01)
    assert fit.rms_px < 0.02


def test_corners_in_one_line_are_no_card() -> None:
    line = np.column_stack([np.linspace(0, 100, 6), np.zeros(6)])
    with pytest.raises(np.linalg.LinAlgError):
        fit_camera(line, line * 10 + 300, PRIORS)


def priors_of(prior: LensPrior) -> Priors:
    """What the fit asks for, from what is known of the lens."""
    return Priors(prior.focal_px, prior.focal_rel_u, prior.centre_px, prior.centre_u_px)


def cropped(seed: int, stretch: float) -> tuple[CameraFit, Floats, Floats, Floats]:
    """Fit a part of a picture off its middle, made wider, that names no lens.

    Also return the middle of the seen corners, mm, and the pixels of 30 mm there, at the card and
    30 mm above it, each (2, 2).
    """
    values = truth(seed, most_tilt=15)
    values[11:] *= 0.5
    whole, wider = MODEL.pixels(values), np.array([stretch, 1.0])
    cut = np.random.default_rng(seed).uniform([0, 0], [900, 700])
    size = np.array([2900.0, 2175.0])
    inside = ((whole > cut) & (whole < cut + size)).all(1).reshape(-1, 4).all(1)
    rows = np.repeat(inside, 4)
    prior = lens_prior(round(size[0] * stretch), round(size[1]), None, as_taken=False)
    seen = (whole[rows] - cut) * wider
    seen += np.random.default_rng(seed).normal(0, 0.1, seen.shape)
    fit = fit_camera(FLAT[rows], seen, priors_of(prior), OUT[rows])
    known = replace(fit, covariance=np.pad(camera_covariance(fit, prior), (0, 3)))
    to_side = np.array([15.0, 0.0])
    left, right = FLAT[rows].mean(0) - to_side, FLAT[rows].mean(0) + to_side
    low, high = (np.array([[*left, z], [*right, z]]) for z in (0.0, -30.0))
    ends = [(project(values[:11], one) - cut) * wider for one in (low, high)]
    return known, FLAT[rows], *ends


@pytest.mark.parametrize("stretch", [1.0, 1.04])
def test_a_crop_that_names_no_lens_doubts_what_lies_above_the_card(stretch: float) -> None:
    """The corners fit another camera nearly as well; on the card itself sizes stay sure."""
    scores, doubts = [], []
    for seed in range(12):
        fit, corners, low, high = cropped(seed, stretch)
        view = view_of(fit.values[:11], corners.mean(0))
        if fit.spread_px * view.mm_per_px > MOST_OFF_MM or fit.arch_mm > MOST_ARCH_MM:
            continue  # such a photo is refused
        on_card, u_on_card = length_and_doubt(fit, low, 0.0)
        above, u_above = length_and_doubt(fit, high, 30.0)
        assert on_card == pytest.approx(30.0, abs=0.3)
        scores.append((above - 30.0) / u_above)
        doubts.append(u_above / u_on_card)
    assert len(scores) >= 6
    assert np.median(doubts) > 4
    assert max(abs(score) for score in scores) < 2.2


@pytest.mark.parametrize("share", [1.0, 0.9, 0.75])
def test_a_corner_cut_out_is_noticed_by_the_card_and_then_covered(share: float) -> None:
    """Even where EXIF claims that nothing was cut; no whole picture is taken for a cut one."""
    size = np.array(SIZE) * share
    sure = lens_prior(round(size[0]), round(size[1]), 26.0, as_taken=True)
    noticed, scores = [], []
    for seed in range(10):
        values = truth(seed)
        cut = np.random.default_rng(seed).integers(0, 2, 2) * (np.array(SIZE) - size)
        seen = MODEL.pixels(values) - cut
        rows = np.repeat(((seen > 0) & (seen < size)).all(1).reshape(-1, 4).all(1), 4)
        seen += np.random.default_rng(seed).normal(0, 0.1, seen.shape)
        fit = fit_camera(FLAT[rows], seen[rows], priors_of(sure), OUT[rows])
        unsure = contradicted(sure)
        again = fit_camera(FLAT[rows], seen[rows], priors_of(unsure), OUT[rows])
        noticed.append(sure.strained(fit.values) or again.spread_px < fit.spread_px / 2)
        known = replace(again, covariance=np.pad(camera_covariance(again, unsure), (0, 3)))
        middle = FLAT[rows].mean(0)
        ends = np.array([[middle[0] + x, middle[1], -40.0] for x in (-25.0, 25.0)])
        length, doubt = length_and_doubt(known, project(values[:11], ends) - cut, 40.0)
        scores.append((length - 50.0) / doubt)
    assert sum(noticed) == (0 if share == 1.0 else 10)
    assert max(abs(score) for score in scores) < 1.96
