"""The rail of places; it scrolls where the window is too low for all of them.

Where the window is narrow it lies above the page, in as many lines as its words take.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Slot
from PySide6.QtGui import QFocusEvent, QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QFrame, QPushButton, QScrollArea, QSizePolicy, QVBoxLayout, QWidget
from shiboken6 import delete

from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.look import dress_anew
from desktop_app.shop_window.texts import plain_label

COLUMN = 220  # pixels that it is wide beside the page, or more where the words are
LINES_MOST = 3  # that are in sight above the page; it is scrolled beyond them


class RailButton(QPushButton):
    """Keeps room for its words in bold, in which they stand where its place is shown."""

    def sizeHint(self) -> QSize:
        hint, bold = super().sizeHint(), self.font()
        bold.setBold(True)
        more = QFontMetrics(bold).horizontalAdvance(self.text())
        more -= self.fontMetrics().horizontalAdvance(self.text())
        return QSize(hint.width() + max(0, more), hint.height())

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        bring_up(self, 0, 0)


class Rail(QScrollArea):
    """The program's name, and the buttons of the places beneath it: never cut at the side."""

    def __init__(self) -> None:
        super().__init__()
        inside = QWidget()
        inside.setObjectName("rail")
        self._inside = inside
        self._flat = False
        self._buttons: list[RailButton] = []
        self._name = plain_label("Benchwitness", "heading")
        self._name.setContentsMargins(14, 4, 0, 6)
        self._lay_out()
        self.setWidget(inside)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.verticalScrollBar().rangeChanged.connect(self._bar_came)

    def add(self, button: RailButton) -> None:
        """Add a place's button beneath the others."""
        self._buttons.append(button)
        layout = self._inside.layout()
        if isinstance(layout, QVBoxLayout):
            layout.insertWidget(layout.count() - 1, button)
        elif layout is not None:
            layout.addWidget(button)

    def column(self) -> int:
        """Return how many pixels it takes beside a page."""
        shown = (one.sizeHint().width() for one in self._buttons if not one.isHidden())
        return max(COLUMN, *shown, 0)

    def lie_flat(self, flat: bool) -> None:
        """Lie above the page, line by line, or stand beside it as a column."""
        if flat == self._flat:
            return
        self._flat = flat
        self._lay_out()
        dress_anew(self._inside)  # which has another room about the words for each way
        self._bar_came()

    def keep_in_sight(self) -> None:
        """Scroll to the place that is shown."""
        shown = (one for one in self._inside.findChildren(RailButton) if one.isChecked())
        for button in shown:
            self.ensureWidgetVisible(button, 0, 0)

    def event(self, event: QEvent) -> bool:
        """Be as wide as the words are by now."""
        done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return done

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._flat:
            self.updateGeometry()  # another width, other lines
        self.keep_in_sight()

    def sizeHint(self) -> QSize:
        if self._flat:
            return QSize(self._inside.minimumSizeHint().width(), self._high())
        hint, bar = self._inside.sizeHint(), self.verticalScrollBar()
        beside = bar.sizeHint().width() if bar.maximum() > 0 else 0
        return QSize(hint.width() + beside, hint.height())

    def minimumSizeHint(self) -> QSize:
        hint = self.sizeHint()
        return hint if self._flat else QSize(hint.width(), super().minimumSizeHint().height())

    def _high(self) -> int:
        """Return how high its lines are in the width that it has."""
        layout = self._inside.layout()
        lines = layout.heightForWidth(self.width()) if layout is not None else 0
        line = max((one.sizeHint().height() for one in self._buttons), default=0)
        return min(lines, LINES_MOST * line)

    def _lay_out(self) -> None:
        """Put the buttons into the layout of the way in which it lies."""
        old = self._inside.layout()
        if old is not None:
            delete(old)  # its widgets stay
        self._inside.setProperty("flat", self._flat)
        self._name.setVisible(not self._flat)
        fixed, preferred = QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred
        if self._flat:
            self.setSizePolicy(preferred, fixed)
            lines = FlowRow(self._inside, spacing=0)
            for button in self._buttons:
                lines.addWidget(button)
            return
        self.setSizePolicy(fixed, preferred)
        column = QVBoxLayout(self._inside)
        column.addStrut(COLUMN)
        column.setContentsMargins(0, 8, 0, 8)
        column.setSpacing(2)
        for widget in (self._name, *self._buttons):
            column.addWidget(widget)
        column.addStretch(1)

    @Slot()
    def _bar_came(self) -> None:
        self.updateGeometry()
        self.keep_in_sight()
