"""The first page when there is no shop yet: make one, open one, or look at the demo."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFileDialog, QPushButton

from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.texts import plain_label


class WelcomePage(ReadingPage):
    """Five ways to begin."""

    new_wanted = Signal(object)  # Path
    open_wanted = Signal(object)  # Path
    server_wanted = Signal()
    demo_wanted = Signal()
    backup_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.column.addWidget(plain_label("Which shop?", "title"))
        for words, says, slot in (
            ("Make a new shop…", "In an empty folder of this computer.", self._new),
            ("Open a shop…", "The folder with its record.", self._open),
            (
                "Open a shop on a server…",
                "Several computers share it; it can be made new there too.",
                self._server,
            ),
            (
                "Bring a backup back…",
                "A shop that is damaged or gone comes back into a new folder.",
                self._backup,
            ),
            (
                "Look at the demo shop",
                "An invented shop with two years of jobs; it is made in under a minute and "
                "nothing of your own is touched.",
                self._demo,
            ),
        ):
            section = Section("")
            button = QPushButton(words)
            button.clicked.connect(slot)
            section.column.addWidget(button)
            section.column.addWidget(plain_label(says, "quiet", wrap=True))
            self.column.addWidget(section)

    @Slot()
    def _new(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, "An empty folder for the new shop")
        if folder:
            self.new_wanted.emit(Path(folder))

    @Slot()
    def _open(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, "The folder of the shop")
        if folder:
            self.open_wanted.emit(Path(folder))

    @Slot()
    def _server(self) -> None:
        self.server_wanted.emit()

    @Slot()
    def _backup(self) -> None:
        self.backup_wanted.emit()

    @Slot()
    def _demo(self) -> None:
        self.demo_wanted.emit()
