"""The head of a job's page: which job and car this is, and what leads on from here."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QPushButton, QVBoxLayout, QWidget

from desktop_app.repair_jobs.screen.folded_buttons import FoldedButtons
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label, tooltip

_ASIDE = 18  # pixels at both sides
_APART = 12  # pixels between the car and when it came, and about the line in the row


class JobHead(QWidget):
    """As low as it can be: it stays in sight, and everything else of the page has to scroll.

    One row of buttons has to do: those that find no room in it stand behind the last one.
    """

    def __init__(self, jumps: Iterable[QPushButton]) -> None:
        super().__init__()
        self._title = plain_label("", "heading", wrap=True)
        self._when = plain_label("", "quiet")
        self._above = plain_label("", wrap=True)
        self._above.hide()
        self._named = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._named.setSpacing(0)
        self._named.addWidget(self._title, 1)
        self._named.addWidget(self._when)
        box = QWidget()
        box.setObjectName("close")  # its buttons have less room beside their words
        self._row = FlowRow(box, spacing=4)
        self._jumps = tuple(jumps)
        self._line, self._more = _between(), FoldedButtons()
        for one in (*self._jumps, self._line, self._more):
            self._row.addWidget(one)
        self._leads: tuple[QPushButton, ...] = ()
        column = QVBoxLayout(self)
        column.setContentsMargins(_ASIDE, 0, _ASIDE, 0)
        column.setSpacing(4)
        column.addLayout(self._named)
        column.addWidget(box)
        column.addWidget(self._above)

    def name(self, words: str, when: str = "") -> None:
        """Say which job and car this is, and when it came and went."""
        self._title.setText(words)
        self._when.setText(when)
        self._fit()

    def say_above(self, words: str) -> None:
        """Keep a line in view above the page; empty takes it away."""
        self._above.setText(words)
        self._above.setToolTip(tooltip(words))
        self._above.setVisible(bool(words))

    def show_leads(self, leads: Sequence[QPushButton]) -> None:
        """Put these behind the jumps, in place of those that were there."""
        for button in self._leads:
            self._row.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._leads = tuple(leads)
        for button in self._leads:
            self._row.insert_from_end(1, button)
        self._fold()

    def event(self, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.Resize, QEvent.Type.LayoutRequest):  # or another font
            self._fit()
            self._fold()
        return super().event(event)

    def _fit(self) -> None:
        """Say when beside the car where both have their room in one line, else beneath it."""
        car, when = (
            one.fontMetrics().horizontalAdvance(one.text()) for one in (self._title, self._when)
        )
        beside = car + when + _APART <= self._named.geometry().width()
        way = QBoxLayout.Direction
        self._named.setDirection(way.LeftToRight if beside else way.TopToBottom)

    def _fold(self) -> None:
        """Put behind the last button what finds no room; what is next to be done always has it."""
        buttons, room = (*self._jumps, *self._leads), self.contentsRect().width()
        room, apart = room - 2 * _ASIDE, self._row.spacing()
        wide = {one: one.sizeHint().width() + apart for one in buttons}
        folded: list[QPushButton] = []
        if sum(wide.values()) + _APART > room:
            room -= self._more.sizeHint().width()
            in_turn = sorted(buttons, key=lambda one: one.objectName() != "next")
            for one in in_turn:
                room -= wide[one]
                if room < 0:
                    folded.append(one)
            folded.sort(key=buttons.index)
        self._line.setVisible(not folded)
        self._more.fold(buttons, folded)


def _between() -> QWidget:
    """Return the line between what leads down the page and what leads away from it."""
    line = QFrame()
    line.setFrameShape(QFrame.Shape.VLine)
    line.setFixedSize(_APART, 24)
    return line
