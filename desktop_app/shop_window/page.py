"""A page that is read from top to bottom: a title, and sections in the order of the work."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QCoreApplication, QEvent, QSize, Qt, Signal
from PySide6.QtGui import QMoveEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QFrame,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from desktop_app.shop_window.held_still import HeldStill
from desktop_app.shop_window.tab_order import (
    after_gone,
    first_of,
    laid_after,
    next_stop,
    takes_tab,
)
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
        self.column.setContentsMargins(0, 0, 0, 0)  # the look gives the room about it
        self.column.setSpacing(10)
        if heading:
            self.column.addWidget(plain_label(heading, "heading", wrap=True))


class _Laid(QWidget):
    """Says when what stands on it was laid out."""

    laid = Signal()

    def event(self, event: QEvent) -> bool:
        done = super().event(event)
        if event.type() in (QEvent.Type.LayoutRequest, QEvent.Type.Resize):
            self.laid.emit()
        return done


class _Inside(_Laid):
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
        self.body = _Laid()
        self.body.setMaximumWidth(WIDTH)
        self.column = _Column(self.body)
        self.column.setContentsMargins(0, 0, 0, 0)
        self.column.setSpacing(14)
        outer.addWidget(self.body)
        outer.addStretch(1)
        self.setWidget(inside)
        self._shown_anew = False
        self._still = HeldStill(self)
        for laid in (inside.laid, self.body.laid):
            laid.connect(self._still.laid)

    @contextmanager
    def held_still(self) -> Iterator[None]:
        """Show the page anew with what has the cursor where it is seen.

        A button that goes leaves the cursor to what follows it and stays; the page stays too.
        """
        button = QApplication.focusWidget()
        if button is not None and self._inside.isAncestorOf(button):
            self._still.hold(button)
        if not isinstance(button, QAbstractButton) or not self._inside.isAncestorOf(button):
            yield
            return
        following = laid_after(self._inside, button)
        self._shown_anew = True
        try:
            yield
        finally:
            self._shown_anew = False
            now = QApplication.focusWidget()
            if now is None or (now is button and not takes_tab(button)):
                there = first_of(following)
                if there is not None:
                    there.setFocus(Qt.FocusReason.OtherFocusReason)

    def lie_anew(self) -> None:
        """Keep nothing in its place: something else is shown, from its top."""
        self._still.let_go()

    def moveEvent(self, event: QMoveEvent) -> None:
        super().moveEvent(event)
        self._still.laid()  # a line above the page came or went

    def focusNextPrevChild(self, onward: bool) -> bool:
        """Let Tab follow the page as it is laid out; at its ends it leaves the page."""
        if self._shown_anew:
            return True  # what has the cursor goes; where it is put is seen to after that
        there = next_stop(self._inside, onward) or after_gone(self._inside)
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
