"""Takes a photo of a part of known size on the bench, and keeps what is true about it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from zlib import crc32

import numpy as np
from PIL import Image

from demo_shop.bench_camera.exposure import Exposure
from demo_shop.bench_camera.film import blur_behind, develop, written
from demo_shop.bench_camera.grain import Grain, Pixels
from demo_shop.bench_camera.light import Lamp, Shade
from demo_shop.bench_camera.part_shelf import BUILDERS
from demo_shop.bench_camera.pieces import Pose
from demo_shop.bench_camera.pinhole import Camera, Floats, look_at, turn_about
from demo_shop.bench_camera.shading import Scene, bench_points, shade_scene
from demo_shop.bench_camera.subject import Order, Point, Side, Subject, View

WIDTH, HEIGHT = 1600, 1200
FOCAL_PX = 1202.0  # a phone's main camera: 26 mm on the 43.27 mm diagonal of small film
_ORIENTATIONS = (1, 1, 1, 6, 8, 3)


@dataclass(frozen=True, slots=True)
class Truth:
    """What is true of a photo; pixels are the upright picture's, with centres at whole numbers."""

    kind: str
    side: str
    view: str
    sizes: Mapping[str, float]
    camera: Camera
    points_mm: Mapping[str, Point]  # named features on the bench, z up from the bench top
    points_px: Mapping[str, tuple[float, float]]
    visible: frozenset[str]  # features in the frame with nothing of the part before them
    orientation: int  # the EXIF tag: how the stored pixels are turned


@dataclass(frozen=True, slots=True)
class BenchPhoto:
    """A photo as a phone would hand it over, with its truth."""

    jpeg: bytes
    truth: Truth


def kinds() -> tuple[str, ...]:
    """The part kinds that can be photographed."""
    return tuple(BUILDERS)


def views(kind: str) -> tuple[str, ...]:
    """The views of one kind; ValueError for a kind that isn't drawn."""
    return tuple(subject_of(kind, Order("replacement", 0.0, {}, np.random.default_rng(0))).views)


def photograph(
    kind: str,
    side: Side,
    view: str,
    sizes: Mapping[str, float],
    *,
    seed: int,
    taken_at: datetime,
    grime: float | None = None,
    width: int = WIDTH,
) -> BenchPhoto:
    """A photo of a part whose sizes (mm) are known; the same arguments give the same bytes.

    Sizes carry the names of the part kind's dimensions; those not said take a usual value, and
    those that can't be seen (resistances) are passed over.

    `grime` from 0 (clean) to 1 (filthy); removed parts are dirty when it isn't said. ValueError for
    an unknown kind or view. `width` in pixels makes a smaller photo (4:3) of the same scene.
    """
    dirt = (0.75 if side == "removed" else 0.0) if grime is None else grime
    rng = np.random.default_rng([seed, crc32(f"{kind}/{side}/{view}".encode())])
    order = Order(side, dirt, sizes, rng)
    subject = subject_of(kind, order)
    chosen = view_of(kind, subject, view)
    pose, camera = _set_up(subject, chosen, rng, width)
    seen = Exposure(camera)
    seen.take(subject.pieces, pose)
    picture = _take(subject, chosen, pose, seen, rng)
    orientation = int(rng.choice(_ORIENTATIONS))
    truth = truth_of(subject, pose, seen, (kind, side, view), order.drawn, orientation)
    return BenchPhoto(written(picture, taken_at, orientation), truth)


def subject_of(kind: str, order: Order) -> Subject:
    if kind not in BUILDERS:
        raise ValueError(f"no photo of {kind!r} can be drawn; there are: {', '.join(BUILDERS)}")
    return BUILDERS[kind](order)


def view_of(kind: str, subject: Subject, wanted: str) -> View:
    """The view of that name; words after it don't matter ("side, tip to the right" is "side")."""
    fitting = [name for name in subject.views if wanted.startswith(name)]
    if not fitting:
        raise ValueError(f"{kind} has no view {wanted!r}; there are: {', '.join(subject.views)}")
    return subject.views[max(fitting, key=len)]


def _set_up(
    subject: Subject, view: View, rng: np.random.Generator, width: int
) -> tuple[Pose, Camera]:
    """Lays the part down and steps back until it fills the frame as the view wants it."""
    pose = subject.standing(view, turn_about("z", rng.uniform(-9, 9)))
    elevation = float(np.clip(view.elevation + rng.uniform(-4, 4), 12, 88))
    azimuth = view.azimuth + rng.uniform(-7, 7)
    roll = rng.uniform(-4, 4)
    if view.close_up is None:
        corners = subject.corners(pose)
        target = (corners.min(0) + corners.max(0)) / 2
    else:
        target = pose.out(np.array(view.close_up[0]))[0]
        signs = np.array([[i, j, k] for i in (-1, 1) for j in (-1, 1) for k in (-1, 1)])
        corners = target + signs * view.close_up[1] * 0.7
    size, focal = (width, width * 3 // 4), FOCAL_PX * width / WIDTH
    fill = view.fill * rng.uniform(0.95, 1.05)
    distance = 6 * float(np.ptp(corners, axis=0).max())
    for _ in range(6):
        camera = look_at(target, distance, elevation, azimuth, roll, focal, size)
        spread = np.ptp(camera.project(corners), axis=0) / np.array(size)
        distance *= float(spread.max()) / fill
    drift = rng.uniform(-0.02, 0.02, 2) * distance
    aside = camera.turn[0] * drift[0] + camera.turn[1] * drift[1]
    return pose, look_at(target + aside, distance, elevation, azimuth, roll, focal, size)


def _take(
    subject: Subject, view: View, pose: Pose, seen: Exposure, rng: np.random.Generator
) -> Image.Image:
    corners = subject.corners(pose)
    middle = (corners.min(0) + corners.max(0)) / 2
    reach = float(np.linalg.norm(np.ptp(corners, axis=0))) / 2
    if view.close_up is not None:  # a finer shadow over the little that is shown
        middle = pose.out(np.array(view.close_up[0]))[0]
        reach = min(reach, 3.0 * view.close_up[1])
    warm = rng.uniform(-0.05, 0.05)
    lamp = Lamp(
        rng.uniform(48, 62),
        view.azimuth + rng.choice([-1, 1]) * rng.uniform(60, 125),
        (1.0 + warm, 0.98, 0.94 - warm),
        rng.uniform(1.15, 1.4),
    )
    shade = Shade(lamp, subject.pieces, pose, middle, reach, rng)
    ground = view.grounds[int(rng.integers(len(view.grounds)))]
    scene = Scene(seen, subject.pieces, pose, ground, lamp, shade, Grain(rng))
    light = shade_scene(scene)
    picture = develop(light, rng.uniform(1.5, 1.75), rng)
    return blur_behind(picture, _out_of_focus(seen, corners))


def _out_of_focus(seen: Exposure, corners: Floats) -> Pixels:
    """How far each coarse pixel of the bench lies outside the part's own depth, 0 to 1."""
    depths = seen.camera.depth(corners)
    near, far = float(depths.min()), float(depths.max())
    ground = bench_points(seen, 4)
    points = np.concatenate([ground, np.zeros((*ground.shape[:2], 1), np.float32)], 2)
    along = (points - seen.camera.place) @ seen.camera.turn[2]
    slack = 0.5 * (far - near) + 0.1 * far
    outside = np.maximum(along - far, near - along) / slack
    outside[np.isfinite(seen.depth[2::4, 2::4])] = 0
    return np.asarray(np.clip(outside, 0, 1), np.float32)


def truth_of(
    subject: Subject,
    pose: Pose,
    seen: Exposure,
    name: tuple[str, str, str],
    sizes: Mapping[str, float],
    orientation: int,
) -> Truth:
    names = list(subject.features)
    points = pose.out(np.array([subject.features[n] for n in names], float))
    pixels = seen.camera.project(points)
    depths = seen.camera.depth(points)
    clear: set[str] = set()
    for label, (px, py), depth in zip(names, pixels, depths, strict=True):
        column, row = round(float(px)), round(float(py))
        if 0 <= column < seen.camera.width and 0 <= row < seen.camera.height:
            around = seen.depth[max(row - 1, 0) : row + 2, max(column - 1, 0) : column + 2]
            if depth <= float(around.max()) + 1.5:
                clear.add(label)
    return Truth(
        *name,
        sizes=dict(sizes),
        camera=seen.camera,
        points_mm={n: _point(p) for n, p in zip(names, points, strict=True)},
        points_px={n: (float(p[0]), float(p[1])) for n, p in zip(names, pixels, strict=True)},
        visible=frozenset(clear),
        orientation=orientation,
    )


def _point(place: Floats) -> Point:
    return float(place[0]), float(place[1]), float(place[2])
