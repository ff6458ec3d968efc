"""Which of two laid photos is the old part's and which the new one's, for each way to show them."""

from __future__ import annotations

from typing import Literal

from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.signs import SIDE_NAMES, SIDE_SIGNS
from desktop_app.shop_window import look
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label

OverlayMode = Literal["wipe", "blend", "alternate", "differences"]
COLOURS = {"removed": look.REMOVED, "replacement": look.REPLACEMENT}
HATCHED = "▨"
_REACH = 5.5  # screen pixels from a sign's middle to its rim


class OverlayLegend(QWidget):
    """A line of words above the stage; a side has its sign and its colour, as everywhere."""

    def __init__(self) -> None:
        super().__init__()
        row = FlowRow(self, spacing=18)
        self._words: dict[str, QLabel] = {}
        for side, sign in SIDE_SIGNS.items():
            entry = QWidget()
            beside = QHBoxLayout(entry)
            beside.setContentsMargins(0, 0, 0, 0)
            beside.setSpacing(6)
            drawn = plain_label(sign)
            drawn.setStyleSheet(f"color: {COLOURS[side].name()}; font-size: 15pt;")
            self._words[side] = plain_label("")
            beside.addWidget(drawn)
            beside.addWidget(self._words[side])
            row.addWidget(entry)
        self._hatched = plain_label(
            HATCHED + "  " + tr("hatched: they differ by more than the uncertainty")
        )
        row.addWidget(self._hatched)
        self._dotted = plain_label("┄  " + tr("dotted: not compared, or only coarsely"))
        row.addWidget(self._dotted)

    def show_mode(
        self,
        mode: OverlayMode,
        share: float,
        *,
        new_is_seen: bool,
        outlined: bool = True,
        dotted: bool = False,
    ) -> None:
        """Say it for this way; `share` is how much of the new photo is seen in the blend.

        `outlined` tells whether outlines are drawn, `dotted` whether some of them only dotted.
        """
        per_cent = round(100 * share)
        seen = {"removed": not new_is_seen, "replacement": new_is_seen}
        where = {"removed": tr("left of the line"), "replacement": tr("right of the line")}
        drawn = {"removed": tr("solid line"), "replacement": tr("dashed line")}
        part = {"removed": f"{100 - per_cent} %", "replacement": f"{per_cent} %"}
        if not outlined:
            drawn = {"removed": tr("seen alone"), "replacement": tr("not drawn")}
        now = {one: tr("seen now") if there else tr("hidden now") for one, there in seen.items()}
        for side, label in self._words.items():
            said = {
                "wipe": f"{where[side]}: {SIDE_NAMES[side]}",
                "blend": f"{SIDE_NAMES[side]}, {part[side]}",
                "alternate": f"{SIDE_NAMES[side]}, {now[side]}",
                "differences": f"{drawn[side]}: {SIDE_NAMES[side]}",
            }
            label.setText(said[mode])
        self._hatched.setVisible(mode == "differences" and outlined)
        self._dotted.setVisible(mode == "differences" and outlined and dotted)


def draw_sign(painter: QPainter, side: str, at: QPointF, halo: QColor) -> None:
    """Draw a side's sign on the screen: a diamond or a disc with a rim."""
    painter.save()
    painter.setPen(QPen(halo, 2.0))
    painter.setBrush(COLOURS[side])
    if side == "removed":
        reach = 1.2 * _REACH
        ways = ((0, -reach), (reach, 0), (0, reach), (-reach, 0))
        painter.drawPolygon(QPolygonF([at + QPointF(x, y) for x, y in ways]))
    else:
        painter.drawEllipse(at, _REACH, _REACH)
    painter.restore()
