"""The rail of places; it scrolls where the window is too low for all of them."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Slot
from PySide6.QtGui import QFocusEvent, QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QFrame, QPushButton, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.texts import plain_label


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
        self._column = QVBoxLayout(inside)
        self._column.addStrut(220)  # wider where the words are
        self._column.setContentsMargins(0, 8, 0, 8)
        self._column.setSpacing(2)
        name = plain_label("Benchwitness", "heading")
        name.setContentsMargins(14, 4, 0, 6)
        self._column.addWidget(name)
        self._column.addStretch(1)
        self.setWidget(inside)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)
        self.verticalScrollBar().rangeChanged.connect(self._bar_came)

    def add(self, button: RailButton) -> None:
        """Add a place's button beneath the others."""
        self._column.insertWidget(self._column.count() - 1, button)

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
        self.keep_in_sight()

    def sizeHint(self) -> QSize:
        hint, bar = self._inside.sizeHint(), self.verticalScrollBar()
        beside = bar.sizeHint().width() if bar.maximum() > 0 else 0
        return QSize(hint.width() + beside, hint.height())

    def minimumSizeHint(self) -> QSize:
        return QSize(self.sizeHint().width(), super().minimumSizeHint().height())

    @Slot()
    def _bar_came(self) -> None:
        self.updateGeometry()
        self.keep_in_sight()
