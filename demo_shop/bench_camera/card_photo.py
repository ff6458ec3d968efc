"""Takes a photo of a part on the bench card, from far enough that the whole card is seen."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from zlib import crc32

import numpy as np

from demo_shop.bench_camera.card_under import CardUnder
from demo_shop.bench_camera.exposure import Exposure
from demo_shop.bench_camera.film import LARGEST_ON_CARD, develop, written
from demo_shop.bench_camera.grain import Grain
from demo_shop.bench_camera.light import Lamp, Shade
from demo_shop.bench_camera.photographer import (
    FOCAL_PX,
    WIDTH,
    BenchPhoto,
    subject_of,
    truth_of,
    view_of,
)
from demo_shop.bench_camera.pieces import Pose
from demo_shop.bench_camera.pinhole import Camera, look_at, turn_about
from demo_shop.bench_camera.shading import Scene, shade_scene
from demo_shop.bench_camera.subject import Order, Side, Subject, View

LONG_SIDE = 2400  # pixels: 4.3 megapixels, held upright
FOCAL_35_MM = 26


@dataclass(frozen=True, slots=True)
class CardPoint:
    """A feature as it is marked in the upright photo, and how high it lies above the card."""

    at_px: tuple[float, float]
    height_mm: float


@dataclass(frozen=True, slots=True)
class _LaidOut:
    """The part on the card, the camera above them, and the chance for what comes next."""

    name: tuple[str, Side, str]
    order: Order
    subject: Subject
    view: View
    pose: Pose
    card: CardUnder
    camera: Camera


def photograph_on_card(
    kind: str,
    side: Side,
    view: str,
    sizes: Mapping[str, float],
    *,
    seed: int,
    taken_at: datetime,
) -> BenchPhoto:
    """A photo of a part lying on an A4 bench card; the same arguments give the same bytes.

    As `photograph`, but held upright (3:4) and roughly above. Heights of the truth's points are
    heights above the card.
    """
    laid = _lay_out(kind, side, view, sizes, seed)
    rng, subject, pose = laid.order.rng, laid.subject, laid.pose
    seen = Exposure(laid.camera)
    seen.take(subject.pieces, pose)
    corners = subject.corners(pose)
    reach = float(np.linalg.norm(np.ptp(corners, axis=0))) / 2
    warm = rng.uniform(-0.05, 0.05)
    lamp = Lamp(
        *(rng.uniform(55, 66), 90 + rng.uniform(-60, 60)),
        *((1.0 + warm, 0.98, 0.94 - warm), rng.uniform(0.95, 1.1)),
    )
    shade = Shade(lamp, subject.pieces, pose, (corners.min(0) + corners.max(0)) / 2, reach, rng)
    ground = laid.view.grounds[int(rng.integers(len(laid.view.grounds)))]
    scene = Scene(seen, subject.pieces, pose, ground, lamp, shade, Grain(rng), laid.card)
    picture = develop(shade_scene(scene), rng.uniform(1.25, 1.4), rng)
    orientation = int(rng.choice((1, 6, 6, 8)))
    truth = truth_of(subject, pose, seen, laid.name, laid.order.drawn, orientation)
    jpeg = written(picture, taken_at, orientation, FOCAL_35_MM, LARGEST_ON_CARD)
    return BenchPhoto(jpeg, truth)


def card_points(
    kind: str, side: Side, view: str, sizes: Mapping[str, float], *, seed: int
) -> dict[str, CardPoint]:
    """Where the features of such a photo are, without drawing it."""
    laid = _lay_out(kind, side, view, sizes, seed)
    places = laid.pose.out(np.array([*laid.subject.features.values()], float))
    pixels = laid.camera.project(places)
    return {
        name: CardPoint((float(x), float(y)), float(place[2]))
        for name, (x, y), place in zip(laid.subject.features, pixels, places, strict=True)
    }


def _lay_out(kind: str, side: Side, view: str, sizes: Mapping[str, float], seed: int) -> _LaidOut:
    rng = np.random.default_rng([seed, crc32(f"{kind}/{side}/{view}/card".encode())])
    order = Order(side, 0.75 if side == "removed" else 0.0, sizes, rng)
    subject = subject_of(kind, order)
    chosen = view_of(kind, subject, view)
    pose = subject.standing(chosen, turn_about("z", rng.uniform(-12, 12)))
    card = CardUnder()
    camera = look_at(
        card.page_middle() + np.array([*rng.uniform(-6, 6, 2), 0.0]),
        rng.uniform(335, 370),
        rng.uniform(76, 84),
        -90 + rng.uniform(-8, 8),
        rng.uniform(-3, 3),
        FOCAL_PX * LONG_SIDE / WIDTH,
        (LONG_SIDE * 3 // 4, LONG_SIDE),
    )
    return _LaidOut((kind, side, view), order, subject, chosen, pose, card, camera)
