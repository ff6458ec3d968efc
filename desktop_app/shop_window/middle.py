"""The middle of the window, where the page is; it scrolls one that has no room there."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QStackedWidget


class Middle(QScrollArea):
    """As large as the window leaves it: the page that is shown has all of it, or what it needs."""

    def __init__(self) -> None:
        super().__init__()
        self.stack = QStackedWidget()
        self.setWidget(self.stack)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.stack.currentChanged.connect(self._fit)

    def event(self, event: QEvent) -> bool:
        """Look again when the page needs another room."""
        done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:
            self._fit()
        return done

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    @Slot()
    def _fit(self) -> None:
        """Lay the page that is shown out in the room that is there, where that is enough for it.

        Each page scrolls within itself first. One that needs more gets what it would like.
        """
        page, room = self.stack.currentWidget(), self.maximumViewportSize()
        if page is None:
            return
        least = page.minimumSizeHint().expandedTo(page.minimumSize())
        layout = page.layout()
        by_width = layout if layout is not None and layout.hasHeightForWidth() else None
        if by_width is not None:
            wide = max(room.width(), least.width())
            least.setHeight(by_width.minimumHeightForWidth(wide))
        if least.height() > room.height():
            room.setWidth(room.width() - self.verticalScrollBar().sizeHint().width())
            if by_width is not None:
                wide = max(room.width(), least.width())
                least.setHeight(by_width.heightForWidth(wide))
        elif least.width() > room.width():
            room.setHeight(room.height() - self.horizontalScrollBar().sizeHint().height())
        self.stack.resize(least.expandedTo(room))
