"""What a photo on the bench card promises, over rendered photos whose truth is known.

The renderer shares no camera code with the program. In 24 such photos of 12 megapixels (tilt to
30 degrees, 250 to 450 mm away) 95 of 100 lengths were right to 0.02 mm with true pixels, and 97 of
100 intervals held the truth, snapped or clicked; here fewer and smaller photos guard that.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

import numpy as np
import pytest

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.find_scale import card_scale
from desktop_app.part_photos.marks.mark import Mark, MarkType
from desktop_app.part_photos.marks.measure import measure
from desktop_app.part_photos.marks.snap import snapped
from desktop_app.part_photos.photo_pixels import PhotoPixels, photo_pixels
from tests.part_photos.rendered_bench import Floats, Solid, Taken, by_chance, disc, render

CARD = bench_card("a4")
SEEDS = range(9)
WIDTH = 3264  # pixels: 8 megapixels
HEIGHT_HALF_WIDTH = 1.0  # mm to which heights are known


@dataclass(frozen=True)
class Found:
    """One feature measured three ways: value minus truth and expanded uncertainty, mm."""

    kind: MarkType
    true: float
    exact: float
    clicked: tuple[float, float]
    snapped: tuple[float, float]
    on_edges: bool
    from_height: float


def features(rng: np.random.Generator) -> tuple[list[Floats], list[tuple[MarkType, float, Floats]]]:
    """Outlines of a plate, a rotor's arm and a disc, and what can be measured on them."""
    wide, tip, radius = rng.uniform(12, 40), rng.uniform(2, 8), rng.uniform(5, 15)
    plate = np.array([(60, 80), (60 + wide, 80), (60 + wide, 105), (60, 105)], float)
    arm = [(60, 130), (90, 130), (90, 137), (90 + tip, 137), (90 + tip, 143), (90, 143)]
    outlines = [plate, np.array([*arm, (90, 150), (60, 150)], float), disc(130, 140, radius)]
    down, across = 80 + 25 * rng.uniform(0.3, 0.7), 60 + wide * rng.uniform(0.3, 0.7)
    turns = np.linspace(0, 2 * np.pi, 10, endpoint=False) + rng.uniform(0, 0.6)
    rim = np.column_stack([130 + radius * np.cos(turns), 140 + radius * np.sin(turns)])
    end = 60 + wide
    kinds: list[tuple[MarkType, float, list[tuple[float, float]] | Floats]] = [
        ("length", wide, [(60, down), (end, down)]),
        ("length", 25.0, [(across, 80), (across, 105)]),
        ("length", 30.0, [(60, 133.5), (90, 133.5)]),
        ("length", 6.0, [(90 + tip / 2, 137), (90 + tip / 2, 143)]),
        ("point-to-line", tip, [(90 + tip, 140), (90, 132), (90, 148)]),
        ("parallel-distance", wide, [(60, 84), (60, 101), (end, 84), (end, 101)]),
        ("circle", 2 * radius, rim),
    ]
    return outlines, [(kind, true, np.array(points, float)) for kind, true, points in kinds]


def measured(seed: int) -> list[Found]:
    """Render one photo and measure everything on it that lies well inside it."""
    rng = np.random.default_rng(1000 + seed)
    height, grey = rng.uniform(3, 20), float(rng.choice([0.06, 0.12, 0.3, 0.45]))
    outlines, kinds = features(rng)
    taken = by_chance(seed, (100, 120), WIDTH)
    solids = [Solid(one, height, grey, grey * rng.uniform(0.3, 0.8)) for one in outlines]
    pixels = photo_pixels(render(CARD, solids, taken, seed), "image/jpeg")
    scale = card_scale(pixels, [CARD], taken.print_scale + rng.normal(0, 0.03) / 150, 0.05 / 150)
    given = height + rng.uniform(-1, 1) * HEIGHT_HALF_WIDTH
    found = []
    for kind, true, points in kinds:
        at = taken.pixels(np.column_stack([points, np.full(len(points), height)]))
        if not inside(at, taken):
            continue
        exact = measure(mark(kind, at, height, 0.0), scale)
        click = mark(kind, at + rng.normal(0, 1, at.shape), given, HEIGHT_HALF_WIDTH)
        edge = snapped(click, pixels, scale)
        values = [measure(one, scale) for one in (click, edge)]
        pairs = [(one.value - true, one.expanded_uncertainty) for one in values]
        above = -taken.place[2] - height
        from_height = 1.96 * true * HEIGHT_HALF_WIDTH / math.sqrt(3) / above
        found.append(Found(kind, true, exact.value - true, *pairs, all(edge.snapped), from_height))
    return found


def mark(kind: MarkType, at: Floats, height: float, height_u: float) -> Mark:
    return Mark(kind, tuple((float(x), float(y)) for x, y in at), kind, height, height_u)


def inside(at: Floats, taken: Taken) -> bool:
    return bool(((at > 20) & (at < np.array([taken.width, taken.height]) - 20)).all())


@cache
def all_found() -> tuple[Found, ...]:
    return tuple(one for seed in SEEDS for one in measured(seed))


def share(held: list[bool]) -> float:
    return sum(held) / len(held)


def test_there_is_enough_to_judge_by() -> None:
    assert len(all_found()) >= 60
    assert sum(one.on_edges for one in all_found()) >= 15


def test_with_true_pixels_and_height_sizes_are_right_to_five_hundredths() -> None:
    errors = np.array([one.exact for one in all_found()])
    assert abs(errors.mean()) < 0.01
    assert np.quantile(abs(errors), 0.95) < 0.05


def test_points_on_found_edges_keep_lengths_within_a_tenth_beside_the_height() -> None:
    off = [
        abs(one.snapped[0]) - one.from_height
        for one in all_found()
        if one.on_edges and 5 <= one.true <= 40
    ]
    assert np.quantile(off, 0.9) < 0.10


@pytest.mark.parametrize("way", ["clicked", "snapped"])
def test_the_stated_intervals_hold_the_truth(way: str) -> None:
    held = [abs(pair[0]) < pair[1] for one in all_found() for pair in [getattr(one, way)]]
    # 95 of 100 are promised; below 87 of some 70 would happen once in a hundred times.
    assert share(held) >= 0.87


def test_clicks_scatter_as_much_as_is_said() -> None:
    """Intervals that always hold the truth would be no better than those that seldom do."""
    spread = np.std([one.clicked[0] / one.clicked[1] * 1.96 for one in all_found()])
    assert 0.6 < spread < 1.2


def test_the_picture_and_the_truth_agree_to_a_tenth_of_a_pixel() -> None:
    """The renderer's own check: a bright plate on the card, its left edge by half the light."""
    plate = np.array([(60, 80), (100, 80), (100, 120), (60, 120)], float)
    taken = by_chance(3, (80, 100), 1600)
    pixels: PhotoPixels = photo_pixels(
        render(CARD, [Solid(plate, 8.0, 0.06)], taken, 3), "image/jpeg"
    )
    truth = taken.pixels(np.array([[100.0, y, 8.0] for y in (90, 100, 110)]))
    outward = taken.pixels(np.array([[101.0, y, 8.0] for y in (90, 100, 110)])) - truth
    from desktop_app.part_photos.marks.edge_near import edge_near

    offs = [edge_near(pixels.rgb, at, way, 0.8) for at, way in zip(truth, outward, strict=True)]
    told = [one for one in offs if one is not None]
    assert not told or max(map(abs, told)) < 0.35
