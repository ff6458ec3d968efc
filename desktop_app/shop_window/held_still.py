"""What is pressed on a long page stays under the mouse, whatever changes its height above it.

Where it can't, because it goes, a quick press more at that place reaches nothing else: whoever
presses three times means the same thing three times.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, Qt, QTimer, Slot
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QAbstractButton, QApplication, QScrollArea, QWidget
from shiboken6 import isValid

_PRESSES = (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonDblClick)


class HeldStill(QObject):
    """Holds one widget of a scrolling page, for as long as presses count as quick."""

    def __init__(self, page: QScrollArea) -> None:
        super().__init__(page)
        self._page = page
        self._held: QWidget | None = None
        self._at = 0  # where it was laid out
        self._pressed: QWidget | None = None
        self._place = QRect()  # where that was seen, on the screen
        self._quick = QTimer(self)
        self._quick.setSingleShot(True)
        self._quick.timeout.connect(self._over)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        self._application = application
        application.focusChanged.connect(self._focus_went)
        page.verticalScrollBar().valueChanged.connect(self.let_go)

    def hold(self, widget: QWidget | None) -> None:
        """Hold a widget where it is seen now; one that is not seen is not held."""
        self.let_go()
        if widget is None or not self._is_inside(widget) or widget.visibleRegion().isEmpty():
            return
        self._held, self._at = widget, self._top(widget)
        self._pressed = widget
        self._place = _on_screen(widget)
        self._application.installEventFilter(self)  # no longer than needed: it sees every event
        self._quick.start(self._application.doubleClickInterval())

    @Slot()
    def let_go(self) -> None:
        """Let the page lie as it is laid out from now on."""
        self._held = None

    @Slot()
    def laid(self) -> None:
        """Scroll by as much as what is held was moved."""
        held = self._held
        if held is None or not isValid(held) or not self._is_inside(held) or held.isHidden():
            return
        before, self._at = self._at, self._top(held)
        if self._at != before:
            bar = self._page.verticalScrollBar()
            bar.setValue(bar.value() + self._at - before)
            self._held = held  # it was scrolled to stay, not to see something else

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Swallow a press at the place of the last one that would reach something else.

        Whoever typed in between means what is pressed then.
        """
        if event.type() == QEvent.Type.KeyPress:
            self._over()
        elif (
            event.type() in _PRESSES
            and isinstance(event, QMouseEvent)
            and isinstance(watched, QWidget)
            and watched is not self._pressed
            and self._is_inside(watched)
            and self._place.contains(event.globalPosition().toPoint())
        ):
            self._quick.start(self._application.doubleClickInterval())
            return True
        return super().eventFilter(watched, event)

    @Slot("QWidget*", "QWidget*")
    def _focus_went(self, _left: QWidget | None, now: QWidget | None) -> None:
        pressed = QApplication.mouseButtons() != Qt.MouseButton.NoButton
        # In a field or a list the next press means another place of it.
        if isinstance(now, QAbstractButton) and pressed and self._is_inside(now):
            if not (self._quick.isActive() and self._place.intersects(_on_screen(now))):
                self.hold(now)  # else it came to where something else was pressed just now
        elif now is not self._held:
            self.let_go()

    @Slot()
    def _over(self) -> None:
        self._quick.stop()
        self._application.removeEventFilter(self)
        self._held = self._pressed = None

    def _is_inside(self, widget: QWidget) -> bool:
        inside = self._page.widget()
        return inside is not None and inside.isAncestorOf(widget)

    def _top(self, widget: QWidget) -> int:
        inside = self._page.widget()
        return 0 if inside is None else widget.mapTo(inside, QPoint(0, 0)).y()


def _on_screen(widget: QWidget) -> QRect:
    return QRect(widget.mapToGlobal(QPoint(0, 0)), widget.size())
