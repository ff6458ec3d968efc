"""Where a new shop is made: a folder is proposed, which can be typed over or chosen."""

from __future__ import annotations

from contextlib import suppress
from itertools import count
from os.path import exists  # of a folder that nobody may look into, Path's raises an error
from pathlib import Path

from PySide6.QtCore import QStandardPaths, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QLineEdit, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.page import Section

_NAME = "Benchwitness"


class NewShopBox(Section):
    """The folder, and the button that makes the shop in it.

    `named` is the folder in which a shop was looked for in vain: probably that one is meant.
    """

    wanted = Signal(object)  # Path

    def __init__(self, named: Path | None = None) -> None:
        super().__init__("")
        meant = named if named and not exists(named) else _in_documents()
        self._line = QLineEdit(str(meant.absolute()))
        self._line.setMaximumWidth(640)
        self._line.returnPressed.connect(self._make)
        self._box = Labelled(
            tr("Folder of a new shop"),
            self._line,
            tr("A new or an empty folder of this computer."),
        )
        make, other = QPushButton(tr("Make a new shop")), QPushButton(tr("Another folder…"))
        make.clicked.connect(self._make)
        other.clicked.connect(self._choose)
        buttons = QWidget()
        row = FlowRow(buttons)
        row.addWidget(make)
        row.addWidget(other)
        self.column.addWidget(self._box)
        self.column.addWidget(buttons)

    @Slot()
    def _choose(self) -> None:
        folder = QFileDialog.getExistingDirectory(
            self, tr("An empty folder for the new shop"), str(Path(self._line.text()).parent)
        )
        if folder:
            self._line.setText(folder)
            self._line.setFocus()

    @Slot()
    def _make(self) -> None:
        folder = Path(self._line.text().strip())
        with suppress(RuntimeError):  # nobody here has that home folder
            folder = folder.expanduser()
        whole = folder.is_absolute()
        self._box.refuse("" if whole else tr("Type the whole path of the folder."))
        if whole:
            self.wanted.emit(folder)


def _in_documents() -> Path:
    documents = QStandardPaths.StandardLocation.DocumentsLocation
    beside = QStandardPaths.writableLocation(documents)
    return free_folder(Path(beside) if beside else Path.home())


def free_folder(beside: Path) -> Path:
    """Return a folder in another one whose name nothing has there yet."""
    names = (_NAME if number == 1 else f"{_NAME} {number}" for number in count(1))
    return next(beside / name for name in names if not exists(beside / name))
