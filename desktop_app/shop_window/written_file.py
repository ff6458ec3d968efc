"""A file that was just written: opened with the computer's own program for it, or shown."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QUrl, SignalInstance, Slot
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

OPEN_OTHERWISE = tr("Open it with a program that you choose.")


class WrittenFile(QWidget):
    """Two buttons beside what is said of the file; hidden until there is one."""

    def __init__(self, told: SignalInstance) -> None:
        """`told` is emitted with what hinders the opening."""
        super().__init__()
        self._file, self._told = Path(), told
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
        self._show(self._file)

    @Slot()
    def _show_folder(self) -> None:
        self._show(self._file.parent)

    def _show(self, what: Path) -> None:
        if not what.exists():
            do = tr("It was moved or taken away; write it again.")
            self._told.emit(ShopTrouble(tr("{file} is not there.", file=what), do=do))
        elif not QDesktopServices.openUrl(QUrl.fromLocalFile(str(what))):
            says = tr("This computer names no program for {file}.", file=what)
            self._told.emit(ShopTrouble(says, do=OPEN_OTHERWISE))
