"""The code that a phone's camera reads: black on white in either look, with its quiet margin."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop_app.language import tr

_MARGIN = 4  # modules, as ISO/IEC 18004 asks
SIDE = 260  # pixels


class PhoneCode(QWidget):
    """Draws an address as a QR code."""

    def __init__(self) -> None:
        super().__init__()
        self._rows: tuple[bytes, ...] = ()
        self.setAccessibleName(tr("The address as a code for the phone's camera"))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def show_address(self, address: str) -> None:
        """Show another address; none where it is empty."""
        import segno

        made = segno.make(address, error="m", micro=False) if address else None
        self._rows = tuple(bytes(row) for row in made.matrix) if made else ()
        self.setVisible(bool(self._rows))
        self.update()

    def rows(self) -> tuple[bytes, ...]:
        """Return the modules that are drawn, 1 for a dark one."""
        return self._rows

    def sizeHint(self) -> QSize:
        return QSize(SIDE, SIDE)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), Qt.GlobalColor.white)
        count = len(self._rows) + 2 * _MARGIN
        # Whole pixels: a module that is now three and now four wide is harder to read.
        module = max(1, min(self.width(), self.height()) // count)
        left = (self.width() - module * len(self._rows)) // 2
        top = (self.height() - module * len(self._rows)) // 2
        for y, row in enumerate(self._rows):
            for x, dark in enumerate(row):
                if dark:
                    at = QRectF(left + x * module, top + y * module, module, module)
                    painter.fillRect(at, QColor(0, 0, 0))
        painter.end()
