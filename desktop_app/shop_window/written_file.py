"""A file that was just written: opened with the computer's own program for it, or shown."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QUrl, Slot
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from desktop_app.language import tr


class WrittenFile(QWidget):
    """Two buttons beside what is said of the file; hidden until there is one."""

    def __init__(self) -> None:
        super().__init__()
        self._file = Path()
        self._open = QPushButton(tr("Open it"))
        self._open.clicked.connect(self._open_it)
        folder = QPushButton(tr("Show the folder"))
        folder.clicked.connect(self._show_folder)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._open)
        row.addWidget(folder)
        self.hide()

    def offer(self, file: Path) -> None:
        """Offer the file that was written last."""
        self._file = file
        self._open.setAccessibleName(tr("Open {file}", file=file.name))
        self.show()

    @Slot()
    def _open_it(self) -> None:
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._file)))

    @Slot()
    def _show_folder(self) -> None:
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._file.parent)))
