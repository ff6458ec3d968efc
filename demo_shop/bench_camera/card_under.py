"""The printed bench card under a part: flat, at true size, the part in its free field."""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw, ImageFilter, ImageFont

from demo_shop.bench_camera.grain import Pixels
from demo_shop.bench_camera.pinhole import Floats
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, bench_card
from desktop_app.part_photos.bench_card.card_page import card_page
from desktop_app.part_photos.bench_card.drawing import TINT, Area, Line, Shape, Stroke, Words
from desktop_app.shop_record.own_program.resource_folder import resource_path

_DOTS = 12  # a millimetre, twice as fine as a photo sees it
_PAPER, _TONER = 0.78, 0.035  # of the light that falls on them
_SOFT = 0.8  # dots: what a photo's pixel takes together


class CardUnder:
    """One card; the bench's origin is the middle of its free field, x right, y away from us."""

    def __init__(self, paper: str = "a4") -> None:
        self.layout: CardLayout = bench_card(paper)
        assert self.layout.free_field_mm is not None
        left, top, right, bottom = self.layout.free_field_mm
        self._middle = np.array([(left + right) / 2, (top + bottom) / 2])
        self._size = np.array(PAGES_MM[paper])
        self._sheet = _sheet(paper)

    def on_card(self, points_mm: Floats) -> Floats:
        """Card positions, shape (n, 2), of bench points, shape (n, 2 or 3)."""
        return np.asarray(self._middle + points_mm[:, :2] * [1, -1])

    def page_middle(self) -> Floats:
        """The middle of the page on the bench, shape (3,)."""
        aside = (self._size / 2 - self._middle) * [1, -1]
        return np.array([aside[0], aside[1], 0.0])

    def over(self, colour: Pixels, ground: Pixels) -> Pixels:
        """The bench's colour (h, w, 3) with the card on it; `ground` (h, w, 2) is in mm."""
        at = (ground * np.array([1, -1], np.float32) + self._middle.astype(np.float32)) * _DOTS
        at -= 0.5
        high, wide = self._sheet.shape[:2]
        inside = (at >= 0).all(-1) & (at[..., 0] < wide - 1) & (at[..., 1] < high - 1)
        x, y = at[inside].T
        column, row = x.astype(int), y.astype(int)
        across, down = (x - column)[:, None], (y - row)[:, None]
        upper = self._sheet[row, column] * (1 - across) + self._sheet[row, column + 1] * across
        below = self._sheet[row + 1, column] * (1 - across)
        below += self._sheet[row + 1, column + 1] * across
        covered = colour.copy()
        covered[inside] = upper * (1 - down) + below * down
        return covered


@cache
def _sheet(paper: str) -> Pixels:
    """What the page throws back of the light, shape (h, w, 3)."""
    layout = bench_card(paper)
    wide, high = (round(side * _DOTS) for side in PAGES_MM[paper])
    tint, *shapes = card_page(layout)
    count = len(layout.markers)
    black = Image.new("L", (wide, high), 0)
    for shape in shapes[count:]:
        _drawn(ImageDraw.Draw(black), shape)
    ink: Pixels = np.asarray(black, np.float32) / np.float32(255)
    field: Pixels = np.zeros_like(ink)
    _fill(field, tint)
    for marker in shapes[:count]:
        _fill(ink, marker)
    soft = [_soft(plane)[..., None] for plane in (ink, field)]
    tinted = (np.array(TINT, np.float32) / 255) ** np.float32(2.2)
    bare = _PAPER * (1 + (tinted - 1) * soft[1])
    return np.asarray(bare + (_TONER - bare) * soft[0], np.float32)


def _soft(plane: Pixels) -> Pixels:
    image = Image.fromarray(np.round(plane * 255).astype(np.uint8))
    return np.asarray(image.filter(ImageFilter.GaussianBlur(_SOFT)), np.float32) / np.float32(255)


def _fill(plane: Pixels, shape: Shape) -> None:
    """Fill upright rectangles to the share that they cover of each dot, so that no edge moves."""
    assert isinstance(shape, Area)
    for piece in shape.pieces:
        (left, top), (right, bottom) = np.min(piece, 0), np.max(piece, 0)
        across, down = (_covered(*ends) for ends in ((left, right), (top, bottom)))
        rows, columns = slice(down[0], down[1]), slice(across[0], across[1])
        plane[rows, columns] += np.outer(down[2], across[2]).astype(np.float32)


def _covered(low: float, high: float) -> tuple[int, int, NDArray[np.float64]]:
    """The first dot, the one behind the last, and the share covered of each."""
    first, behind = int(np.floor(low * _DOTS)), int(np.ceil(high * _DOTS))
    dots = np.arange(first, behind)
    share = np.minimum(dots + 1, high * _DOTS) - np.maximum(dots, low * _DOTS)
    return first, behind, share


def _drawn(draw: ImageDraw.ImageDraw, shape: Shape) -> None:
    """Draw a picture, a line or words; their edges are not measured by."""
    if isinstance(shape, Words):
        face = "DejaVuSans-Bold.ttf" if shape.bold else "DejaVuSans.ttf"
        font = ImageFont.truetype(str(resource_path("fonts") / face), shape.size * _DOTS)
        draw.text(_dots((shape.at,))[0], shape.words, 255, font, anchor="ls")
    elif isinstance(shape, Stroke):
        draw.line(_dots(shape.points), 255, max(1, round(shape.width * _DOTS)))
    else:
        for piece in shape.pieces:
            draw.polygon(_dots(piece), 255 if shape.ink == "black" else 0)


def _dots(points: Line) -> list[tuple[float, float]]:
    return [(x * _DOTS - 0.5, y * _DOTS - 0.5) for x, y in points]
