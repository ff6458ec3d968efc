"""A list to choose from that the wheel leaves alone: scrolling must not change an answer."""

from __future__ import annotations

from typing import Any

from PySide6 import QtWidgets
from PySide6.QtCore import QChildEvent, QEvent, QSize, Qt
from PySide6.QtGui import QHelpEvent, QPaintEvent
from PySide6.QtWidgets import QComboBox, QFrame, QStyledItemDelegate, QWidget

from desktop_app.shop_window.said_whole import say_whole

SPARE = 4  # pixels that words take beyond what the style reckons with


class ChoiceList(QComboBox):
    """Opened by a press or a key; the wheel goes on to the page that it stands on."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def sizeHint(self) -> QSize:
        return self._roomy(super().sizeHint())

    def minimumSizeHint(self) -> QSize:
        return self._roomy(super().minimumSizeHint())

    def _roomy(self, hint: QSize) -> QSize:
        """Return a width in which the words are read whole."""
        return hint + QSize(SPARE, 0)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Show with a … that what is chosen goes on, where it finds no room."""
        option = QtWidgets.QStyleOptionComboBox()
        self.initStyleOption(option)
        shown = self._elided(option)
        if shown == option.currentText:
            super().paintEvent(event)
            return
        option.currentText = shown
        painter = QtWidgets.QStylePainter(self)
        painter.drawComplexControl(QtWidgets.QStyle.ComplexControl.CC_ComboBox, option)
        painter.drawControl(QtWidgets.QStyle.ControlElement.CE_ComboBoxLabel, option)
        painter.end()  # now, and not when Python comes to it

    def event(self, event: QEvent) -> bool:
        """Say under the mouse what is chosen, where it is not read whole, and what it is for."""
        if event.type() != QEvent.Type.ToolTip or not isinstance(event, QHelpEvent):
            return super().event(event)
        option = QtWidgets.QStyleOptionComboBox()
        self.initStyleOption(option)
        if self._elided(option) == option.currentText:
            return super().event(event)
        say_whole(self, event, self.currentText())
        return True

    def _elided(self, option: QtWidgets.QStyleOptionComboBox) -> str:
        """Return what of the words that are chosen is shown."""
        if self.isEditable():
            return option.currentText
        field = QtWidgets.QStyle.SubControl.SC_ComboBoxEditField
        kind = QtWidgets.QStyle.ComplexControl.CC_ComboBox
        room = self.style().subControlRect(kind, option, field, self).width()
        return self.fontMetrics().elidedText(option.currentText, Qt.TextElideMode.ElideRight, room)

    def childEvent(self, event: QChildEvent) -> None:
        super().childEvent(event)
        made = event.type() == QEvent.Type.ChildPolished
        if made and isinstance(opens := event.child(), QFrame):
            # Qt asks the style about what opens when it makes it, with the first entry, and what
            # it noted for that stays for good: the style leaves it out where notes are taken away,
            # unless it has a style sheet of its own. An empty one will do.
            opens.setStyleSheet("*{}")
            opens.ensurePolished()
            # Qt's own knows no height of a row.
            self.setItemDelegate(QStyledItemDelegate(self))

    def wheelEvent(self, event: Any) -> None:
        event.ignore()
