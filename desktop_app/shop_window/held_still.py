"""What is pressed on a long page stays under the mouse, whatever changes its height above it.

What changes may lie above the page as well. Where a button can't stay, because it goes, a quick
press more at that place reaches nothing else: whoever presses three times means the same thing
three times.

Held is what gets the cursor by the press, and a button that has it. One that takes no cursor when
it is pressed (on macOS buttons may not) is held only where a page asks for it:
`ReadingPage.held_still`.
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
        self._at = 0  # where it is seen in the window
        self._pressed: QWidget | None = None
        self._with_cursor: QWidget | None = None  # it may be pressed again, or left
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
        """Hold a widget where it is seen now, or was; one that is not seen is not held."""
        if widget is not None and widget is self._held:
            self._quick.start(self._application.doubleClickInterval())
            return
        self.let_go()
        if widget is None or not self._is_inside(widget) or widget.visibleRegion().isEmpty():
            return
        self._held, self._at = widget, self._top(widget)
        self._quick.start(self._application.doubleClickInterval())
        self._pressed, self._place = None, QRect()
        if isinstance(widget, QAbstractButton):  # in a field the next press means another place
            self._pressed = widget
            self._place = _on_screen(widget)
            self._application.installEventFilter(self)  # no longer than needed: it sees all events

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
        moved = self._top(held) - self._at
        if moved:
            bar = self._page.verticalScrollBar()
            bar.setValue(bar.value() + moved)
            self._held = held  # it was scrolled to stay, not to see something else

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Swallow a press at the place of the last one that would reach something else.

        Whoever typed in between means what is pressed then.
        """
        if event.type() == QEvent.Type.KeyPress:
            self._over()
        elif event.type() == QEvent.Type.FocusOut:
            self._cursor_goes()  # before what is left says less, and the rest moves up
        elif event.type() in _PRESSES and isinstance(event, QMouseEvent):
            if (
                self._quick.isActive()
                and isinstance(watched, QWidget)
                and watched is not self._pressed
                and self._is_inside(watched)
                and self._place.contains(event.globalPosition().toPoint())
            ):
                self._quick.start(self._application.doubleClickInterval())
                return True
            if watched is self._with_cursor and isinstance(watched, QAbstractButton):
                self.hold(self._with_cursor)  # pressed once more, it takes no focus anew
        return super().eventFilter(watched, event)

    @Slot("QWidget*", "QWidget*")
    def _focus_went(self, _left: QWidget | None, now: QWidget | None) -> None:
        if isValid(self._page):  # the cursor also goes with a page that ends
            self._watch(now)
            self._cursor_goes()

    def _cursor_goes(self) -> None:
        """Hold what the cursor is put into by a press; let go of what it was taken from."""
        now = QApplication.focusWidget()
        pressed = QApplication.mouseButtons() != Qt.MouseButton.NoButton
        if now is not None and pressed and self._is_inside(now):
            came = self._pressed is not None and self._place.intersects(_on_screen(now))
            if not (came and isinstance(now, QAbstractButton)):
                self.hold(now)  # else it came to where something else was pressed just now
        elif now is not self._held:
            self.let_go()

    def _watch(self, now: QWidget | None) -> None:
        if self._with_cursor is not None and isValid(self._with_cursor):
            self._with_cursor.removeEventFilter(self)
        self._with_cursor = now if self._page.isVisible() else None
        if self._with_cursor is not None:
            self._with_cursor.installEventFilter(self)

    @Slot()
    def _over(self) -> None:
        self._quick.stop()
        self._application.removeEventFilter(self)
        self._held = self._pressed = None

    def _is_inside(self, widget: QWidget) -> bool:
        inside = self._page.widget()
        return inside is not None and inside.isAncestorOf(widget)

    def _top(self, widget: QWidget) -> int:
        return widget.mapTo(self._page.window(), QPoint(0, 0)).y()


def _on_screen(widget: QWidget) -> QRect:
    return QRect(widget.mapToGlobal(QPoint(0, 0)), widget.size())
