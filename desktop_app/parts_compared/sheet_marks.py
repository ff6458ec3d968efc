"""Marks printed over their photo: black lines with a white rim, each with its words."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

from desktop_app.parts_compared.sheet_facts import MarkPrinted, Spot

BLACK, WHITE = "#000000", "#FFFFFF"
LINE, RIM = 0.8, 2.2  # points
TICK, HEAD = 3.0, 5.0
SIZE, PAD = 6.5, 1.5  # of the words, and around them

Box = tuple[float, float, float, float]  # left, bottom, right, top


def marked(picture: Any, marks: Sequence[MarkPrinted], font: str) -> Any:
    """Return a printed picture (a flowable) with its marks over it; words stay inside of it."""
    from reportlab.pdfbase.pdfmetrics import stringWidth
    from reportlab.platypus import Flowable

    width, height = picture.drawWidth, picture.drawHeight
    lines = [line for one in marks for line in strokes(one, width, height)]
    taken: list[Box] = []
    for one in marks:
        wide = stringWidth(one.words, font, SIZE) + 2 * PAD if one.words else 0.0
        at = _point(one.label_at, width, height)
        taken.append(free_place(at, (wide, SIZE + 2 * PAD), (width, height), taken))

    class MarkedPicture(Flowable):  # type: ignore[misc]
        hAlign = "LEFT"

        def wrap(self, *_room: float) -> tuple[float, float]:
            return width, height

        def draw(self) -> None:
            picture.drawOn(self.canv, 0, 0)
            self.canv.saveState()
            self.canv.setLineCap(1)
            for colour, thick in ((WHITE, RIM), (BLACK, LINE)):
                self.canv.setStrokeColor(colour)
                self.canv.setLineWidth(thick)
                for line in lines:
                    _draw(self.canv, line)
            self.canv.setFont(font, SIZE)
            for one, box in zip(marks, taken, strict=True):
                if one.words:
                    _write(self.canv, one.words, box)
            self.canv.restoreState()

    return MarkedPicture()


def strokes(mark: MarkPrinted, width: float, height: float) -> list[tuple[Spot, ...]]:
    """Return all polylines of a mark in points of the page, y up from the picture's foot."""
    drawn = [tuple(_point(one, width, height) for one in line) for line in mark.lines]
    for one, other in mark.sizes:
        start, end = _point(one, width, height), _point(other, width, height)
        drawn += [(start, end), _tick(start, end), _tick(end, start)]
    for tail, tip in mark.arrows:
        start, end = _point(tail, width, height), _point(tip, width, height)
        drawn += [(start, end), _head(start, end)]
    return drawn


def free_place(at: Spot, size: Spot, picture: Spot, taken: Sequence[Box]) -> Box:
    """Return where words of a size stand: right above a spot, inside the picture, off others.

    Where all of the picture is taken, they stand over others.
    """
    (wide, high), (width, height) = size, picture
    left = min(max(at[0] - wide / 2, 0.0), max(width - wide, 0.0))
    lowest, highest = 0.0, max(height - high, 0.0)
    wanted = min(max(at[1] + 2.0, lowest), highest)
    steps = [wanted + way * n * (high + 0.5) for n in range(40) for way in (1, -1)]
    for bottom in steps:
        box = (left, bottom, left + wide, bottom + high)
        if lowest <= bottom <= highest and not any(_overlap(box, one) for one in taken):
            return box
    return left, wanted, left + wide, wanted + high


def _overlap(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def _point(spot: Spot, width: float, height: float) -> Spot:
    return spot[0] * width, (1 - spot[1]) * height


def _tick(at: Spot, other: Spot) -> tuple[Spot, Spot]:
    away = math.dist(at, other) or 1.0
    x, y = (other[1] - at[1]) / away * TICK, (at[0] - other[0]) / away * TICK
    return (at[0] - x, at[1] - y), (at[0] + x, at[1] + y)


def _head(tail: Spot, tip: Spot) -> tuple[Spot, Spot, Spot]:
    back = math.atan2(tail[1] - tip[1], tail[0] - tip[0])
    one, other = (
        (tip[0] + HEAD * math.cos(back + turn), tip[1] + HEAD * math.sin(back + turn))
        for turn in (0.4, -0.4)
    )
    return one, tip, other


def _draw(canvas: Any, line: Sequence[Spot]) -> None:
    path = canvas.beginPath()
    path.moveTo(*line[0])
    for spot in line[1:]:
        path.lineTo(*spot)
    canvas.drawPath(path)


def _write(canvas: Any, words: str, box: Box) -> None:
    left, bottom, right, top = box
    canvas.setFillColor(WHITE)
    canvas.setLineWidth(0.4)
    canvas.rect(left, bottom, right - left, top - bottom, stroke=1, fill=1)
    canvas.setFillColor(BLACK)
    canvas.drawString(left + PAD, bottom + PAD + 0.8, words)
