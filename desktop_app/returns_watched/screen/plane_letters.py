"""Where the words of the plane of the watch stand: room for the scales, a free place for a name."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFontMetrics

from desktop_app.language import tr


class PlaneLetters(NamedTuple):
    """How high a line of the plane's words is, and how wide the words at its side; in pixels."""

    line: float = 20.0
    aside: float = 70.0


USUAL = PlaneLetters()


def letters_of(metrics: QFontMetrics) -> PlaneLetters:
    """Measure the letters that the plane is written in."""
    aside = max(metrics.horizontalAdvance(words) for words in ("100%", tr("by time")))
    return PlaneLetters(float(metrics.height()), float(aside))


def least_covering(places: Sequence[QRectF], marks: Sequence[QPointF]) -> QRectF:
    """Return the place that lies over the fewest marks, of several the first."""
    around = places[0]
    for one in places[1:]:
        around = around.united(one)
    near = [mark for mark in marks if around.contains(mark)]
    return min(places, key=lambda place: sum(place.contains(mark) for mark in near))
