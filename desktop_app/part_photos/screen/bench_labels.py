"""The words of the marks on a stage: at its edges, each with a thin line to its mark."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QPainter, QPen

from desktop_app.language import tr
from desktop_app.part_photos.label_places import EDGE, Room, Words, label_places
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.screen.bench_mark_item import (
    INK,
    MarkItem,
    draw_words,
    label_box,
    words_size,
)

_MORE = tr("{} more in the list")
_LIGHT = QColor(255, 255, 255, 190)


def draw_labels(
    painter: QPainter,
    items: Sequence[MarkItem],
    stage: QSize,
    seen_at: Callable[[Pixel], QPointF],
) -> None:
    """Write what the marks say, in the order they were drawn, so that words stay where they are.

    What finds no room is left out, and how many that are is said; only then the chosen mark comes
    first. The words of a note stand where somebody put them.
    """
    notes = [one for one in items if one.shown.mark.type == "note" and one.shown.label]
    wide = stage.width()
    boxes = [
        label_box(painter, seen_at(one.lines.label_at), one.shown.label, wide) for one in notes
    ]
    others = [one for one in items if one.shown.mark.type != "note" and one.shown.label]
    wanted = [(one, at) for one in others if (at := _spoken_of(one, stage, seen_at)) is not None]
    points = [seen_at(point) for one in items for point in one.shown.mark.points_px]
    taken = [Room(box.x(), box.y(), box.width(), box.height()) for box in boxes]
    spots = [(point.x(), point.y()) for point in points]

    def placed_rooms() -> list[Room | None]:
        words = [Words(at, *words_size(painter, one.shown.label)) for one, at in wanted]
        return label_places(words, (wide, stage.height()), spots, taken)

    rooms = placed_rooms()
    if None in rooms:
        wanted.sort(key=lambda one: not one[0].shown.chosen)
        taken.append(_corner(painter, stage, len(wanted)))
        rooms = placed_rooms()
        left_out = sum(room is None for room in rooms)
        corner = taken[-1]
        box = QRectF(corner.left, corner.top, corner.width, corner.height)
        draw_words(painter, box, _MORE.format(left_out))
    placed = [(one, at, room) for (one, at), room in zip(wanted, rooms, strict=True) if room]
    for _one, at, room in placed:
        _draw_leader(painter, QPointF(*room.nearest(at)), QPointF(*at))
    for one, _at, room in placed:
        draw_words(painter, QRectF(room.left, room.top, room.width, room.height), one.shown.label)
    for one, box in zip(notes, boxes, strict=True):
        draw_words(painter, box, one.shown.label)


def _corner(painter: QPainter, stage: QSize, most: int) -> Room:
    """Return the room at the lower right where it stands how many marks are without words."""
    width, height = words_size(painter, _MORE.format(most))
    return Room(stage.width() - EDGE - width, stage.height() - EDGE - height, width, height)


def _spoken_of(
    item: MarkItem, stage: QSize, seen_at: Callable[[Pixel], QPointF]
) -> tuple[float, float] | None:
    """Return where the line from the words ends: a place of the mark that is in sight, or None."""
    for pixel in (item.lines.label_at, *item.shown.mark.points_px):
        at = seen_at(pixel)
        if 0 <= at.x() < stage.width() and 0 <= at.y() < stage.height():
            return at.x(), at.y()
    return None


def _draw_leader(painter: QPainter, start: QPointF, end: QPointF) -> None:
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for pen in (QPen(_LIGHT, 2.6), QPen(INK, 0.9)):
        painter.setPen(pen)
        painter.drawLine(start, end)
    painter.restore()
