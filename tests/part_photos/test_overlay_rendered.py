"""Old and new parts on the bench card, photographed by a camera that the program has to find."""

from __future__ import annotations

from functools import cache

import cv2
import numpy as np
from numpy.typing import NDArray

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.find_scale import card_scale
from desktop_app.part_photos.overlay.align import Clicks, align
from desktop_app.part_photos.overlay.alignment import Alignment
from desktop_app.part_photos.overlay.difference import differences
from desktop_app.part_photos.photo_pixels import photo_pixels
from tests.part_photos.overlay_scenes import Prism, rotor
from tests.part_photos.rendered_bench import Solid, Taken, by_chance, render

CARD = bench_card("a4")
WIDTH = 2400
BODY = np.array([[-13.0, 3.0], [24.0, -6.0], [24.0, 6.0], [0.0, 13.9]])  # points on both parts


class Pair:
    """A worn and a new rotor, dark, laid down anyhow and photographed from anywhere."""

    def __init__(self, seed: int) -> None:
        rng = np.random.default_rng(7000 + seed)
        self.height, self.wear = float(rng.uniform(3, 15)), float(rng.uniform(0.5, 1))
        grey = float(rng.choice([0.06, 0.12]))
        self.parts = [
            Prism(
                rotor(tip),
                self.height,
                rng.uniform(0, 360),
                (105 + rng.normal(0, 8), 130 + rng.normal(0, 8)),
            )
            for tip in (6.0 - self.wear, 6.0)
        ]
        self.taken = [by_chance(2 * seed + which + 500, (105, 130), WIDTH) for which in (0, 1)]
        solids = [
            Solid(part.laid(), self.height, grey * lit, grey / 2)
            for part, lit in zip(self.parts, (1.0, 1.3), strict=True)
        ]
        self.pixels = [
            photo_pixels(render(CARD, [solid], taken, seed), "image/jpeg")
            for solid, taken in zip(solids, self.taken, strict=True)
        ]
        self.scales = [
            card_scale(pixels, [CARD], taken.print_scale)
            for pixels, taken in zip(self.pixels, self.taken, strict=True)
        ]

    def laid(self, off_mm: float = 0.0, clicks: Clicks | None = None) -> Alignment:
        """Align at a height that is wrong by so much."""
        return align(*self.pixels, *self.scales, self.height + off_mm, clicks)

    def shown(self, which: int, own: NDArray[np.float64]) -> NDArray[np.float64]:
        """Pixels of points of the part, given in its own mm."""
        return pixels_of(self.taken[which], self.parts[which], own, self.height)

    def error_mm(self, laid: Alignment) -> float:
        """Root mean square of where points of the body land against where they belong."""
        assert laid.transform is not None
        assert laid.px_per_mm is not None
        landed = cv2.perspectiveTransform(self.shown(1, BODY)[:, None], laid.transform)[:, 0]
        apart = landed - self.shown(0, BODY)
        return float(np.sqrt((apart**2).sum(axis=1).mean()) / laid.px_per_mm)


def pixels_of(
    taken: Taken, part: Prism, own: NDArray[np.float64], height: float
) -> NDArray[np.float64]:
    points = part.laid(own)
    return taken.pixels(np.column_stack([points, np.full(len(points), height)]))


@cache
def pair(seed: int) -> Pair:
    return Pair(seed)


def test_a_worn_tip_shows_with_its_size_though_the_height_is_wrong_by_a_millimetre() -> None:
    worn = pair(3)
    for off_mm in (0.0, 1.0):
        laid = worn.laid(off_mm)
        assert laid.method == "card and outline", laid.why
        assert worn.error_mm(laid) < 0.15
        (tip,) = differences(laid)
        assert tip.side == "more"
        assert tip.size_mm is not None
        assert tip.expanded_u_mm is not None
        assert abs(tip.size_mm - worn.wear) < tip.expanded_u_mm < 0.5


def test_where_walls_hide_too_much_it_is_said_and_two_clicks_align() -> None:
    high = pair(0)
    refused = high.laid()
    assert not refused.aligned
    assert "click two points" in refused.why
    wobble = np.array([[1.5, -1.0], [-1.0, 1.5]])
    old, new = high.shown(0, BODY[:2]) + wobble, high.shown(1, BODY[:2]) - wobble
    clicks = [
        ((float(a[0]), float(a[1])), (float(b[0]), float(b[1])))
        for a, b in zip(old, new, strict=True)
    ]
    laid = high.laid(clicks=clicks)
    assert laid.aligned, laid.why
    assert high.error_mm(laid) < 0.7
