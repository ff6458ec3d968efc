"""Words beneath a picture that scroll where they are long, so that they never push it away."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

_LEAST_LINES = 3


class LowWords(QScrollArea):
    """As high as its labels where there is room, and never asks for more than a few lines."""

    def __init__(self, *labels: QLabel) -> None:
        super().__init__()
        self._inside = QWidget()
        self._labels = labels
        self._column = QVBoxLayout(self._inside)
        self._column.setContentsMargins(0, 0, 0, 0)
        for label in labels:
            self._column.addWidget(label)
        self._column.addStretch(1)
        self.setWidget(self._inside)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)

    def fit(self) -> None:
        """Take the height of the words that are shown now."""
        self.setVisible(any(not label.isHidden() and label.text() for label in self._labels))
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), self._wanted())

    def minimumSizeHint(self) -> QSize:
        least = _LEAST_LINES * self.fontMetrics().lineSpacing()
        return QSize(0, min(self._wanted(), least))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self.updateGeometry()

    def _wanted(self) -> int:
        return self._column.totalHeightForWidth(max(1, self.viewport().width()))
