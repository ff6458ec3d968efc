"""The camera fit on real photos of a chessboard, against the published camera and OpenCV's pose.

The 13 photos left01 to left14 are OpenCV's own calibration samples (Debian package opencv-doc,
Apache-2.0 and BSD-3-Clause); their corners lie in chessboard_corners.json. The intrinsics are the
published ones of left_intrinsics.yml in the same package: focal length 535.92 pixels, centre
(342.28, 235.57), k1 -0.2664, k2 -0.0386, p1 0.00178, p2 -0.00028, k3 0.2384.
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

import cv2
import numpy as np
import pytest

from desktop_app.part_photos.camera.camera_fit import CameraFit, fit_camera
from desktop_app.part_photos.camera.camera_model import Priors
from desktop_app.part_photos.camera.lens import rays_from, turned
from tests.part_photos.camera_pictures import Floats

DATA = json.loads((Path(__file__).parent / "chessboard_corners.json").read_text("utf-8"))["photos"]
SQUARE = 25.0  # mm
ACROSS, DOWN = 9, 6
GRID = np.array([(x * SQUARE, y * SQUARE) for y in range(DOWN) for x in range(ACROSS)])
RING = np.array(
    [x in (0, ACROSS - 1) or y in (0, DOWN - 1) for y in range(DOWN) for x in range(ACROSS)]
)
PUBLISHED = np.array([[535.91573, 0, 342.28316], [0, 535.91573, 235.57083], [0, 0, 1]])
LENS = np.array([-0.266372609, -0.038588899, 0.001783195, -0.000281221, 0.238391531])
# A guess 3 % off, as EXIF may be, and an old camera's lens, which bends more than a phone's;
# the board is taken as rigid.
PRIORS = Priors(
    552.0, 0.05, (319.5, 239.5), 20.0, k1_u=0.3, k2_u=0.3, growth_u_mm=0.0, arch_u_mm=0.0
)


@cache
def fitted(name: str) -> CameraFit:
    """The camera fitted to the ring of outer corners alone, as to a card round a free field."""
    return fit_camera(GRID[RING], np.array(DATA[name])[RING], PRIORS)


def lengths_inside(name: str) -> list[tuple[float, float]]:
    """Error and standard uncertainty of the fit for lengths of three squares inside, mm."""
    fit, seen = fitted(name), np.array(DATA[name]).reshape(DOWN, ACROSS, 2)
    theta, spread = fit.values[:11], fit.covariance[:11, :11]
    pairs = [(seen[y, x], seen[y, x + 3]) for y in range(1, DOWN - 1) for x in range(1, ACROSS - 4)]
    pairs += [
        (seen[y, x], seen[y + 3, x]) for y in range(1, DOWN - 4) for x in range(1, ACROSS - 1)
    ]
    steps = 1e-3 * np.sqrt(np.diag(spread)) + 1e-12
    found = []
    for pair in pairs:
        pixels = np.array(pair)
        value = length(theta, pixels)
        slopes = [(length(theta + step, pixels) - value) / step.sum() for step in np.diag(steps)]
        # The ends are corners too, as uncertain as those of the ring turned out to be.
        u = np.sqrt(
            np.array(slopes) @ spread @ np.array(slopes)
            + 2 * (fit.sigma_px * value / distance(pixels)) ** 2
        )
        found.append((value - 3 * SQUARE, float(u)))
    return found


def length(theta: Floats, pixels: Floats) -> float:
    place, directions = rays_from(theta, pixels)
    ends = place - (place[2] / directions[:, 2])[:, None] * directions
    return float(np.linalg.norm(ends[0] - ends[1]))


def distance(pixels: Floats) -> float:
    return float(np.linalg.norm(pixels[0] - pixels[1]))


def test_lengths_inside_the_ring_are_right_within_what_the_fit_says() -> None:
    found = np.array([one for name in DATA for one in lengths_inside(name)])
    errors, u = found.T
    assert len(found) >= 250
    assert np.quantile(abs(errors), 0.95) < 0.03 * SQUARE
    assert (abs(errors) < 1.96 * u).mean() >= 0.90
    assert np.median(u) < 0.2  # mm on 75: a doubt far too large would hold everything


@pytest.mark.parametrize("name", DATA)
def test_the_pose_is_that_of_opencv_with_the_published_camera(name: str) -> None:
    board = np.column_stack([GRID, np.zeros(len(GRID))])
    done, turn, shift = cv2.solvePnP(board, np.array(DATA[name]), PUBLISHED, LENS)
    assert done
    theta = fitted(name).values
    between = turned(theta[5:8]) @ cv2.Rodrigues(turn)[0].T
    degrees = np.degrees(np.arccos(np.clip((np.trace(between) - 1) / 2, -1, 1)))
    assert degrees < 3.0
    assert np.linalg.norm(theta[8:11]) == pytest.approx(np.linalg.norm(shift), rel=0.06)


def test_the_focal_length_comes_out_near_the_published_one() -> None:
    """One photo alone says little about it; thirteen agree with what all of them gave together."""
    found = [float(np.exp(fitted(name).values[0])) for name in DATA]
    assert np.median(found) == pytest.approx(535.92, rel=0.03)
