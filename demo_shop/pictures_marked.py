"""Numbers on the parts of a picture of the window, each beside the file that makes the part.

The parts are found by the classes of the widgets, so a number stays right when the window changes;
a part that is not in sight stops the drawing. DEVELOPERS.md lists the numbers.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtCore import QRect
    from PySide6.QtGui import QPainter, QPixmap
    from PySide6.QtWidgets import QWidget

MARKS = "#b8309c"  # nothing of the window has that colour, in light or dark
ROUND = 22  # across, pixels


@dataclass(frozen=True, slots=True)
class Part:
    """A part of the window: the class of its widget, and the file under desktop_app/.

    `row` means the widget around it: all that stand with it in one row or column.
    """

    widget: str
    file: str
    row: bool = False


MARKED = {
    "map-job": (
        Part("Rail", "shop_window/rail.py"),
        Part("WhoIsHere", "above_the_places.py", row=True),
        Part("JobHead", "repair_jobs/screen/job_head.py"),
        Part("_Jump", "shop_window/jumped_page.py", row=True),
        Part("OldAndNewSection", "parts_compared/screen/old_and_new_section.py"),
        Part("PairCard", "parts_compared/screen/pair_card.py"),
        Part("PairHead", "parts_compared/screen/pair_head.py"),
        Part("PairPhotos", "parts_compared/screen/pair_photos.py"),
        Part("ConditionsSeen", "parts_compared/screen/conditions_seen.py"),
        Part("ReadingsTable", "parts_compared/screen/readings_table.py"),
        Part("DimensionDrawing", "parts_compared/screen/dimension_drawing.py"),
        Part("VerdictLabel", "parts_compared/screen/dimension_verdict_label.py"),
        Part("NoticeStrip", "shop_window/notice_strip.py"),
    ),
    "map-bench": (
        Part("PhotoBench", "part_photos/screen/bench_page.py"),
        Part("ToolsRow", "part_photos/screen/bench_tools.py"),
        Part("LockedViews", "part_photos/screen/locked_views.py"),
        Part("BenchStage", "part_photos/screen/bench_stage.py"),
        Part("SidePanel", "part_photos/screen/bench_side_panel.py"),
        Part("MarksList", "part_photos/screen/bench_marks_list.py"),
        Part("ScaleLine", "part_photos/screen/bench_scale_line.py"),
        Part("BenchHelp", "part_photos/screen/bench_help.py"),
    ),
}


def marked_picture(window: QWidget, parts: tuple[Part, ...]) -> QPixmap:
    """Return a picture of the window with a frame and a number on each of the parts."""
    from PySide6.QtGui import QPainter

    framed = [_in_sight(window, _found(window, part), part) for part in parts]
    picture = window.grab()
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(window.font())
    inside = window.rect().adjusted(1, 1, -2, -2)
    for where in framed:
        _frame(painter, where.adjusted(-4, -2, 4, 2).intersected(inside))
    for number, where in enumerate(framed, start=1):
        _number(painter, where, inside, str(number))
    painter.end()
    return picture


def _found(window: QWidget, part: Part) -> QWidget:
    from PySide6.QtWidgets import QWidget

    for widget in window.findChildren(QWidget):
        if type(widget).__name__ == part.widget and widget.isVisible():
            around = widget.parentWidget()
            return around if part.row and around is not None else widget
    raise LookupError(f"The window shows no {part.widget}, which {part.file} should make.")


def _in_sight(window: QWidget, widget: QWidget, part: Part) -> QRect:
    """Return where a widget is in the window, as far as nothing around it cuts it off."""
    from PySide6.QtCore import QPoint

    seen = widget.rect().translated(widget.mapTo(window, QPoint()))
    around = widget.parentWidget()
    while around is not None:
        seen = seen.intersected(around.rect().translated(around.mapTo(window, QPoint())))
        around = None if around is window else around.parentWidget()
    if min(seen.width(), seen.height()) < ROUND // 2:
        raise LookupError(f"{part.widget} of {part.file} is scrolled out of sight.")
    return seen


def _frame(painter: QPainter, where: QRect) -> None:
    from PySide6.QtCore import Qt
    from PySide6.QtGui import QColor, QPen

    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(QColor(MARKS), 2))
    painter.drawRoundedRect(where, 4, 4)


def _number(painter: QPainter, where: QRect, inside: QRect, words: str) -> None:
    """Put the number on the upper right corner, where few words stand."""
    from PySide6.QtCore import QRect, Qt
    from PySide6.QtGui import QColor, QPen

    disc = QRect(0, 0, ROUND, ROUND)
    disc.moveCenter(where.topRight())
    disc.moveLeft(min(disc.left(), inside.right() - ROUND))
    disc.moveTop(max(disc.top(), inside.top()))
    painter.setBrush(QColor(MARKS))
    painter.setPen(QPen(QColor("white"), 2))
    painter.drawEllipse(disc)
    painter.drawText(disc, Qt.AlignmentFlag.AlignCenter, words)
