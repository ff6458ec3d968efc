"""Fields side by side: as many in a row as there is room for."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget


class FieldRows(QWidget):
    """Lays widgets into columns of one width, at most `most`.

    Each is at least `narrowest` pixels wide, and as wide as the widest has to be. They are read
    along the rows, or `down` one column after the other.
    """

    def __init__(
        self, widgets: Sequence[QWidget], most: int, narrowest: int = 0, *, down: bool = False
    ) -> None:
        super().__init__()
        self._down = down
        self._widgets, self._most, self._narrowest = tuple(widgets), most, narrowest
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._columns = 0
        self._lay(most)

    def minimumSizeHint(self) -> QSize:
        return QSize(self._wide(), super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_anew()

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:  # what stands in them may be wider by now
            self._lay_anew()
        return super().event(event)

    def _wide(self) -> int:
        wide = (one.minimumSizeHint().width() for one in self._widgets if not one.isHidden())
        return max(self._narrowest, *wide, 1)

    def _lay_anew(self) -> None:
        between = self._grid.horizontalSpacing()
        self._lay(max(1, min(self._most, (self.width() + between) // (self._wide() + between))))

    def _lay(self, columns: int) -> None:
        if columns == self._columns:
            return
        self._columns = columns
        for place, widget in enumerate(self._widgets):
            self._grid.removeWidget(widget)
            row, column = divmod(place, columns)
            if self._down:
                column, row = divmod(place, -(-len(self._widgets) // columns))
            self._grid.addWidget(widget, row, column)
        for column in range(self._most):
            self._grid.setColumnStretch(column, 1 if column < columns else 0)
        self.updateGeometry()
