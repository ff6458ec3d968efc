"""The lines on a difference picture: solid or dashed, with signs, frames and words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal, TypeAlias

from desktop_app.part_photos.overlay.stretches import stretches

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray
    from PIL.Image import Image

Rgb: TypeAlias = tuple[int, int, int]

WHITE, BLACK = (255, 255, 255), (0, 0, 0)
LINE, HALO, SIGN = 3, 7, 6  # px
SIGNS_APART, DASH = 90, 12  # px along the line
THIN, DOT, DOTS_APART = 2, 3, 9  # px
WORDS = 24  # px high
GAP = 10


@dataclass(frozen=True, slots=True)
class Ink:
    """How a line is drawn, so that it is known without its colour."""

    rgb: Rgb
    dashed: bool
    sign: Literal["diamond", "disc"]


class Pen:
    """Draws on a picture what is given in pixels of the photo that it was cut from."""

    def __init__(self, picture: Image, low: NDArray[np.intp], enlarged: float) -> None:
        from PIL import ImageDraw, ImageFont

        from desktop_app.shop_record.own_program.resource_folder import resource_path

        self.picture = picture
        self._draw = ImageDraw.Draw(picture)
        self._font = ImageFont.truetype(resource_path("fonts", "DejaVuSans.ttf"), WORDS)
        self._low, self._enlarged = low, enlarged
        self._taken: list[tuple[float, float, float, float]] = []

    def closed(self, lines: Sequence[tuple[NDArray[np.float64], NDArray[np.bool_], Ink]]) -> None:
        """Draw closed lines with their signs, all on one pale ground.

        Each has its points (n, 2) and where it is only dotted (n,).
        """
        import numpy as np

        for points_px, _, _ in lines:
            points = self._here(points_px)
            self._line(np.vstack([points, points[:2]]), WHITE, HALO)
        for points_px, dotted, ink in lines:
            points = self._here(points_px)
            for is_dotted, numbers in stretches(dotted.tolist()):
                self._stretch(points[numbers], ink, dotted=is_dotted)
            self._signs(np.vstack([points, points[:2]]), ink)

    def _stretch(self, points: NDArray[np.float64], ink: Ink, *, dotted: bool) -> None:
        import numpy as np

        if not dotted and not ink.dashed:
            self._line(points, ink.rgb, LINE)
            return
        piece, width = (DOT, THIN) if dotted else (DASH, LINE)
        apart = DOTS_APART if dotted else 2 * DASH
        along = _along(points)
        for start in np.arange(0.0, along[-1], apart):
            at = np.linspace(start, min(start + piece, along[-1]), 5)
            part = np.column_stack([np.interp(at, along, v) for v in points.T])
            self._line(part, ink.rgb, width)

    def _signs(self, points: NDArray[np.float64], ink: Ink) -> None:
        import numpy as np

        along = _along(points)
        for at in np.arange(SIGNS_APART / 3, along[-1], SIGNS_APART):
            x, y = (float(np.interp(at, along, v)) for v in points.T)
            self._sign(x, y, ink)

    def framed(self, polygon_px: Sequence[tuple[float, float]], words: str, number: int) -> None:
        """Frame a region and say its size beside it, where nothing was said before."""
        import numpy as np

        points = self._here(np.array(polygon_px))
        closed = np.vstack([points, points[:1]])
        self._line(closed, WHITE, HALO)
        self._line(closed, BLACK, LINE)
        wide, high = self._size(words)
        (left, top), (right, bottom) = points.min(axis=0), points.max(axis=0)
        places = [
            (right + GAP, (top + bottom - high) / 2),
            (left - wide - GAP, (top + bottom - high) / 2),
            ((left + right - wide) / 2, top - high - GAP),
            ((left + right - wide) / 2, bottom + GAP),
            *((right + GAP, bottom + GAP + n * (high + GAP)) for n in range(number + 1)),
        ]
        free = [place for place in places if self._is_free(*place, wide, high)]
        self._words(*(free or places)[0], words)

    def legend(self, entries: Sequence[tuple[str, Ink]], dotted: str = "") -> None:
        """Say at the top left which line is which, and what is dotted where something is."""
        import numpy as np

        y = GAP + WORDS / 2
        for words, ink in entries:
            ends = np.array([[GAP, y], [GAP + 5 * DASH, y]])
            pieces = [ends]
            if ink.dashed:
                starts = [GAP + 2 * n * DASH for n in range(3)]
                pieces = [np.array([[x, y], [x + DASH, y]]) for x in starts]
            for piece in pieces:
                self._line(piece, WHITE, HALO)
            for piece in pieces:
                self._line(piece, ink.rgb, LINE)
            self._sign(GAP + 2.5 * DASH, y, ink)
            self._words(2 * GAP + 5 * DASH, y - WORDS / 2, words)
            y += WORDS + GAP
        if dotted:
            ends = np.array([[GAP, y], [GAP + 5 * DASH, y]])
            self._line(ends, WHITE, HALO)
            self._stretch(ends, Ink(BLACK, False, "disc"), dotted=True)
            self._words(2 * GAP + 5 * DASH, y - WORDS / 2, dotted)

    def bar(self, length_px: float, words: str) -> None:
        """Draw a bar of a known length at the bottom left."""
        import numpy as np

        length, y = length_px * self._enlarged, self.picture.height - 2 * GAP
        ends = np.array([[GAP, y], [GAP + length, y]])
        for width, rgb in ((HALO + 2, WHITE), (LINE + 2, BLACK)):
            self._line(ends, rgb, width)
        self._words(GAP, y - WORDS - GAP, words)

    def _here(self, points_px: NDArray[np.float64]) -> NDArray[np.float64]:
        import numpy as np

        return np.asarray((points_px - self._low + 0.5) * self._enlarged - 0.5)

    def _line(self, points: NDArray[np.float64], rgb: Rgb, width: int) -> None:
        self._draw.line([(float(x), float(y)) for x, y in points], rgb, width, joint="curve")

    def _sign(self, x: float, y: float, ink: Ink) -> None:
        for reach, rgb in ((SIGN + 2, WHITE), (SIGN, ink.rgb)):
            if ink.sign == "disc":
                self._draw.ellipse((x - reach, y - reach, x + reach, y + reach), rgb)
            else:
                up = reach * 1.25
                self._draw.polygon([(x, y - up), (x + up, y), (x, y + up), (x - up, y)], rgb)

    def _size(self, words: str) -> tuple[float, float]:
        left, top, right, bottom = self._draw.textbbox((0, 0), words, self._font)
        return float(right - left), float(bottom - top)

    def _is_free(self, x: float, y: float, wide: float, high: float) -> bool:
        inside = min(x, y) >= 0 and x + wide < self.picture.width
        return (
            inside
            and y + high < self.picture.height
            and all(
                x + wide < left or right < x or y + high < top or bottom < y
                for left, top, right, bottom in self._taken
            )
        )

    def _words(self, x: float, y: float, words: str) -> None:
        wide, high = self._size(words)
        x = min(max(x, 2.0), max(2.0, self.picture.width - wide - 2))
        y = min(max(y, 2.0), max(2.0, self.picture.height - high - 8))
        self._taken.append((x, y, x + wide, y + high))
        self._draw.text((x, y), words, BLACK, self._font, stroke_width=3, stroke_fill=WHITE)


def _along(points: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return how far each point lies from the first, along the line."""
    import numpy as np

    return np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(points, axis=0).T))])
