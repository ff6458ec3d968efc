"""The ground a part lies on: workshop paper, a steel bench, a rubber mat, a worn wooden top."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_shop.bench_camera.grain import Grain, Pixels


def ground_colour(ground: str, x: Pixels, y: Pixels, grain: Grain) -> Pixels:
    """Linear colour, shape (..., 3), of the bench at positions in mm."""
    return {"paper": _paper, "steel": _steel, "mat": _mat, "wood": _wood}[ground](x, y, grain)


def _blend(base: Pixels, other: tuple[float, float, float], amount: NDArray[Any]) -> Pixels:
    share = np.clip(amount, 0, 1)[..., None]
    return np.asarray(base * (1 - share) + np.array(other, np.float32) * share, np.float32)


def _flat(colour: tuple[float, float, float], light: Pixels) -> Pixels:
    return np.asarray(np.array(colour, np.float32) * light[..., None], np.float32)


def _paper(x: Pixels, y: Pixels, grain: Grain) -> Pixels:
    """Blue-white wiping paper: embossed dots, soft creases, a few oily finger marks."""
    dots = np.cos(x * 2 * np.pi / 4.4) * np.cos(y * 2 * np.pi / 4.4)
    light = 1 + 0.035 * dots + 0.03 * grain.soft(x, y, 60) + 0.015 * grain.sharp(x, y, 5)
    base = _flat((0.50, 0.56, 0.62), light)
    oily = np.clip(grain.sharp(x + 90, y, 45) - 2.0, 0, 1) * 0.55
    return _blend(base, (0.22, 0.20, 0.16), oily)


def _steel(x: Pixels, y: Pixels, grain: Grain) -> Pixels:
    """Brushed steel sheet with scratches and dull patches."""
    brushed = grain.sharp(x * 0.06, y, 5)
    light = 1 + 0.07 * brushed + 0.09 * grain.soft(x, y, 90)
    scratch = np.clip(np.abs(grain.soft(x * 0.25 + y * 0.3, y * 0.02 + 7, 9)) * -9 + 0.55, 0, 1)
    base = _flat((0.33, 0.34, 0.35), light)
    base = _blend(base, (0.52, 0.53, 0.54), scratch * 0.35)
    stain = np.clip(grain.sharp(x, y + 50, 60) - 1.6, 0, 1) * 0.3
    return _blend(base, (0.13, 0.10, 0.075), stain)


def _mat(x: Pixels, y: Pixels, grain: Grain) -> Pixels:
    """Grey ribbed rubber mat with dust in the grooves."""
    rib = np.clip(np.cos(x * 2 * np.pi / 5.0) * 4, -1, 1)
    light = 1 + 0.16 * rib + 0.10 * grain.soft(x, y, 50) + 0.07 * grain.sharp(x, y, 4)
    base = _flat((0.115, 0.12, 0.125), light)
    return _blend(base, (0.26, 0.24, 0.21), np.clip(grain.sharp(x, y, 40) - 1.4, 0, 1) * 0.35)


def _wood(x: Pixels, y: Pixels, grain: Grain) -> Pixels:
    """A beech bench top: long fibres, board joints, old oil."""
    wavy = y + 3 * grain.soft(x * 0.1, y * 0.3, 40)
    fibre = grain.sharp(x * 0.03, wavy, 9)
    board = np.floor(y / 62)
    tone = 0.12 * np.sin(board * 12.9)
    light = 1 + 0.11 * fibre + tone + 0.10 * grain.soft(x, y, 110)
    base = _flat((0.33, 0.215, 0.125), light)
    joint = np.clip(1.3 - np.abs(y - board * 62 - 1) * 1.6, 0, 1)
    base = _blend(base, (0.05, 0.033, 0.02), joint * 0.8)
    return _blend(
        base, (0.085, 0.055, 0.035), np.clip(grain.sharp(x, y + 20, 75) - 1.5, 0, 1.2) * 0.6
    )
