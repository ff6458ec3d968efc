"""Marks printed over their photo: black lines with a white rim, words at the picture's rim."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

from desktop_app.parts_compared.sheet_facts import BarPrinted, MarkPrinted, Spot
from desktop_app.parts_compared.sheet_labels import Box, free_place, nearest, rim_place

BLACK, WHITE = "#000000", "#FFFFFF"
LINE, RIM, THIN = 0.8, 2.2, 0.4  # points
TICK, HEAD = 3.0, 5.0
SIZE, PAD = 6.5, 1.5  # of the words, and around them
OFF = 3.0  # points between the marks and the words, at least
PART = (0.45, 0.2, 0.0)  # of the marks' longer side: so far around them the part may reach
BAR_AT, BAR_HIGH = 5.0, 2.4  # off the picture's corner; of the bar


def marked(
    picture: Any, marks: Sequence[MarkPrinted], font: str, bar: BarPrinted | None = None
) -> Any:
    """Return a printed picture (a flowable) with its marks over it, and a scale bar in its corner.

    Words stand at the picture's rim where there is room, each with a line to its mark.
    """
    from reportlab.pdfbase.pdfmetrics import stringWidth
    from reportlab.platypus import Flowable

    width, height = picture.drawWidth, picture.drawHeight
    lines = [line for one in marks for line in strokes(one, width, height)]
    corner = [] if bar is None else [_bar_box(bar, width, stringWidth(bar.words, font, SIZE))]
    sizes = [
        (stringWidth(one.words, font, SIZE) + 2 * PAD if one.words else 0.0, SIZE + 2 * PAD)
        for one in marks
    ]
    boxes, leaders = labels(marks, sizes, (width, height), corner)

    class MarkedPicture(Flowable):  # type: ignore[misc]
        hAlign = "LEFT"

        def wrap(self, *_room: float) -> tuple[float, float]:
            return width, height

        def draw(self) -> None:
            picture.drawOn(self.canv, 0, 0)
            self.canv.saveState()
            self.canv.setLineCap(1)
            for colour, rim in ((WHITE, RIM - LINE), (BLACK, 0.0)):
                self.canv.setStrokeColor(colour)
                for drawn, thick in ((leaders, THIN), (lines, LINE)):
                    self.canv.setLineWidth(thick + rim)
                    for line in drawn:
                        _draw(self.canv, line)
            self.canv.setFont(font, SIZE)
            for one, box in zip(marks, boxes, strict=True):
                if one.words:
                    _write(self.canv, one.words, box)
            if bar is not None:
                _draw_bar(self.canv, bar, width)
            self.canv.restoreState()

    return MarkedPicture()


def labels(
    marks: Sequence[MarkPrinted], sizes: Sequence[Spot], picture: Spot, taken: Sequence[Box]
) -> tuple[list[Box], list[tuple[Spot, Spot]]]:
    """Return where the words of each mark stand, and the lines that lead to their marks.

    `sizes` are those of the words in points, `taken` what else stands on the picture.
    """
    spots = [spot for one in marks for line in strokes(one, *picture) for spot in line]
    boxes: list[Box] = []
    leaders: list[tuple[Spot, Spot]] = []
    for one, size in zip(marks, sizes, strict=True):
        at, there = _point(one.label_at, *picture), [*taken, *boxes]
        tried = (rim_place(at, size, picture, there, _around(spots, by), leaders) for by in PART)
        rim = next((place for place in tried if place is not None), None) if one.words else None
        boxes.append(rim or free_place(at, size, picture, there))
        if rim is not None:
            leaders.append((nearest(rim, at), at))
    return boxes, leaders


def _around(spots: Sequence[Spot], by: float) -> Box:
    """Return the box around all spots, larger on each side by a share of its longer side."""
    across, up = zip(*(spots or [(0.0, 0.0)]), strict=True)
    free = OFF + by * max(max(across) - min(across), max(up) - min(up))
    return min(across) - free, min(up) - free, max(across) + free, max(up) + free


def _bar_box(bar: BarPrinted, width: float, words: float) -> Box:
    return 0.0, 0.0, BAR_AT + max(bar.share * width, words) + OFF, BAR_AT + BAR_HIGH + SIZE + OFF


def _draw_bar(canvas: Any, bar: BarPrinted, width: float) -> None:
    """Draw a bar that is half black, half white, with its length above it."""
    long, top = bar.share * width, BAR_AT + BAR_HIGH
    canvas.setFillColor(WHITE)
    canvas.rect(BAR_AT - 2, BAR_AT - 2, long + 4, BAR_HIGH + SIZE + 5, stroke=0, fill=1)
    canvas.setStrokeColor(BLACK)
    canvas.setLineWidth(0.6)
    canvas.rect(BAR_AT, BAR_AT, long, BAR_HIGH, stroke=1, fill=1)
    canvas.setFillColor(BLACK)
    canvas.rect(BAR_AT, BAR_AT, long / 2, BAR_HIGH, stroke=0, fill=1)
    canvas.drawString(BAR_AT, top + 1.5, bar.words)


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
