"""A page that is read from top to bottom: a title, and sections in the order of the work."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QEvent, QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from desktop_app.shop_window.tab_order import next_stop
from desktop_app.shop_window.texts import plain_label

ROUNDS = 4  # of laying out, until what wraps has its height and its height has its place
WIDTH = 1180  # pixels; longer lines are hard to read


class Section(QFrame):
    """One boxed part of a page, under its heading; its content goes into `column`."""

    def __init__(self, heading: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.setAccessibleName(heading)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(18, 12, 18, 16)
        self.column.setSpacing(10)
        if heading:
            self.column.addWidget(plain_label(heading, "heading"))


class _Inside(QWidget):
    """What is scrolled: as high as it is at its width, with no room for a narrower one below."""

    def minimumSizeHint(self) -> QSize:
        hint, layout = super().minimumSizeHint(), self.layout()
        knows = layout is not None and layout.hasHeightForWidth()
        return QSize(hint.width(), 0) if knows else hint


class _Column(QVBoxLayout):
    """As high as it is at the width that it gets: a wider page gives it no more than that."""

    def heightForWidth(self, width: int) -> int:
        return super().heightForWidth(min(width, WIDTH))


class ReadingPage(QScrollArea):
    """A scrolling page; sections are added one under the other."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        inside = _Inside()
        self._inside = inside
        outer = QVBoxLayout(inside)
        outer.setContentsMargins(16, 12, 16, 24)
        self.body = QWidget()
        self.body.setMaximumWidth(WIDTH)
        self.column = _Column(self.body)
        self.column.setContentsMargins(0, 0, 0, 0)
        self.column.setSpacing(14)
        outer.addWidget(self.body)
        outer.addStretch(1)
        self.setWidget(inside)

    def focusNextPrevChild(self, onward: bool) -> bool:
        """Let Tab follow the page as it is laid out; at its ends it leaves the page."""
        there = next_stop(self._inside, onward)
        if there is None:
            return super().focusNextPrevChild(onward)
        reason = Qt.FocusReason.TabFocusReason if onward else Qt.FocusReason.BacktabFocusReason
        there.setFocus(reason)
        self.ensureWidgetVisible(there, 50, 80)
        return True

    def settle(self) -> None:
        """Lay out now what was just put onto the page, so that it is never seen half laid out."""
        for _ in range(ROUNDS):  # what got its width asks for another height
            QCoreApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest.value)

    def bring_up(self, widget: QWidget) -> None:
        """Scroll so that a widget inside is seen from its top."""
        top = widget.mapTo(self._inside, widget.rect().topLeft()).y()
        self.verticalScrollBar().setValue(max(0, top - 8))
