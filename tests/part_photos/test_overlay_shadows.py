"""Where a part ends: not at a shadow's rim, and not where burnt metal is as pale as the paper."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from desktop_app.part_photos.overlay.faint_edge import closed_runs, faint_edge
from desktop_app.part_photos.overlay.outline import evenly, outward_normals
from desktop_app.part_photos.overlay.over_paper import over_paper
from desktop_app.part_photos.overlay.pale_rim import pale_rim
from desktop_app.part_photos.overlay.part_mask import part_mask, part_masks
from desktop_app.part_photos.overlay.part_view import PartView
from desktop_app.part_photos.overlay.shade_rim import shade_rim

PAPER, DARK, BURNT = (205, 214, 224), (60, 60, 60), (215, 212, 196)
DEEP_SHADE = (74, 77, 81)  # about as dark as the part, in the paper's colour
SHADE, METAL = (150, 157, 164), (150, 150, 150)
PER_MM = 8.0
SQUARE = np.array([[10, 10], [20, 10], [20, 20], [10, 20]], float)  # mm


def view(strip: tuple[int, int, int], left: float, right: float) -> PartView:
    """A dark square on tinted paper with a strip along all of its right side, bounds in mm."""
    rgb = np.full((240, 240, 3), PAPER, np.uint8)
    rgb[80:160, 80:160] = DARK
    rgb[80:160, int(left * PER_MM) : int(right * PER_MM)] = strip
    grain = np.random.default_rng(1).normal(0, 1.5, rgb.shape)
    rgb = np.clip(rgb + grain, 0, 255).astype(np.uint8)
    return PartView(rgb, np.ones((240, 240), bool), (0.0, 0.0), PER_MM)


def on_right_side(points: NDArray[np.float64]) -> NDArray[np.bool_]:
    return (points[:, 0] > 19.5) & (np.abs(points[:, 1] - 15) < 4)


@pytest.mark.parametrize(("strip", "far"), [(BURNT, 1.0), (PAPER, 0.0), (SHADE, 0.0)])
def test_only_what_has_another_colour_than_paper_belongs_to_the_part(
    strip: tuple[int, int, int], far: float
) -> None:
    edge = evenly(SQUARE, 0.25, 0.2)
    found = pale_rim(over_paper(view(strip, 20, 21), edge), edge, outward_normals(edge))
    right = on_right_side(edge)
    assert found[right] == pytest.approx(far, abs=0.2)
    assert not found[(edge[:, 0] < 19)].any()


@pytest.mark.parametrize(("strip", "doubted"), [(SHADE, True), (METAL, False), (DARK, False)])
def test_an_outline_with_shade_inside_is_doubted_and_one_with_metal_is_not(
    strip: tuple[int, int, int], doubted: bool
) -> None:
    edge = evenly(SQUARE, 0.25, 0.2)
    found = shade_rim(over_paper(view(strip, 18, 20), edge), edge, outward_normals(edge), 8.0)
    assert (found[on_right_side(edge)] > 1.0).all() == doubted
    assert found[on_right_side(edge)].any() == doubted
    assert not found[(edge[:, 0] < 15)].any()


@pytest.mark.parametrize(("strip", "doubted"), [(DEEP_SHADE, True), (SHADE, False), (PAPER, False)])
def test_an_edge_beside_shade_as_dark_as_the_part_is_not_told(
    strip: tuple[int, int, int], doubted: bool
) -> None:
    edge = evenly(SQUARE, 0.25, 0.2)
    found = faint_edge(over_paper(view(strip, 20, 24), edge), edge, outward_normals(edge))
    assert found[on_right_side(edge)].all() == doubted
    assert found.any() == doubted
    assert not found[(edge[:, 0] < 18)].any()


def test_a_spur_into_shade_is_doubted_on_all_of_its_sides() -> None:
    # Two millimetres of deep shade beside the square were taken for the part, bare paper beyond.
    spur = np.array(
        [[10, 10], [20, 10], [20, 13], [22, 13], [22, 17], [20, 17], [20, 20], [10, 20]]
    )
    edge = evenly(spur.astype(float), 0.25, 0.2)
    seen = over_paper(view(DEEP_SHADE, 20, 24), edge)
    found = faint_edge(seen, edge, outward_normals(edge))
    assert found[edge[:, 0] > 20.5].all()


def test_short_gaps_of_a_ring_are_filled_over_its_end_too() -> None:
    ring = np.array([0, 1, 0, 0, 1, 0, 0, 0, 0, 1], bool)
    assert closed_runs(ring, 2).astype(int).tolist() == [1, 1, 1, 1, 1, 0, 0, 0, 0, 1]
    assert not closed_runs(np.zeros(5, bool), 9).any()


def scene(rim_px: float, ratio: tuple[float, float, float]) -> NDArray[np.uint8]:
    """A dark square 20 mm wide at two pixels a millimetre, and its shadow at the lower right."""
    high = wide = 200
    x, y = np.meshgrid(np.arange(wide), np.arange(high))
    inner = np.minimum.reduce([x - 80, 128 - x, y - 80, 128 - y])
    inner = np.clip(inner / rim_px + 0.5, 0, 1)[..., None]
    light = np.array(PAPER) / 255.0
    light = light**2.2 * (1 + inner * (np.array(ratio) - 1))
    rgb = np.round(255 * light ** (1 / 2.2))
    rgb[70:110, 70:110] = DARK
    grain = np.random.default_rng(2).normal(0, 1.0, rgb.shape)
    return np.asarray(np.clip(rgb + grain, 0, 255), np.uint8)


def test_a_deep_shadow_with_a_soft_rim_is_no_part() -> None:
    rgb = scene(12.0, (0.17, 0.19, 0.22))
    found = part_mask(rgb, np.ones(rgb.shape[:2], bool), 2.0)
    assert found is not None
    assert found[70:110, 70:110].mean() > 0.95
    assert found.sum() == pytest.approx(1600, rel=0.08)


def test_an_even_shadow_with_a_sharp_rim_is_left_open() -> None:
    rgb = scene(0.5, (0.5, 0.5, 0.5))
    found = part_masks(rgb, np.ones(rgb.shape[:2], bool), 2.0)
    assert found is not None
    least, most = found
    assert least.sum() == pytest.approx(1600, rel=0.08)
    assert not (least & ~most).any()
