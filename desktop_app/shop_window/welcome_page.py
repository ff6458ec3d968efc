"""The first page when there is no shop yet: make one, open one, or look at the demo."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.language_box import LanguageBox
from desktop_app.shop_window.new_shop_box import NewShopBox
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.two_presses import TwoPresses


class WelcomePage(ReadingPage):
    """Ways to begin; `opened` are the folders of shops that were open before, the last first.

    `named` is the folder in which a shop was looked for in vain.
    """

    new_wanted = Signal(object)  # Path
    open_wanted = Signal(object)  # Path
    server_wanted = Signal()
    demo_wanted = Signal()
    demo_unwanted = Signal(object)  # Path
    backup_wanted = Signal()

    def __init__(
        self,
        opened: Sequence[Path] = (),
        named: Path | None = None,
        is_demo: Callable[[Path], bool] = lambda _folder: False,
    ) -> None:
        super().__init__()
        self._rows: dict[Path, QWidget] = {}
        self.column.addWidget(plain_label(tr("Which shop?"), "title"))
        if opened:
            self.column.addWidget(self._again(opened, is_demo))
        new = NewShopBox(named)
        new.wanted.connect(self.new_wanted)
        self.column.addWidget(new)
        for words, says, slot in (
            (tr("Open a shop…"), tr("The folder with its record."), self._open),
            (
                tr("Open a shop on a server…"),
                tr("Several computers share it; it can be made new there too."),
                self._server,
            ),
            (
                tr("Bring a backup back…"),
                tr("A shop that is damaged or gone comes back into a new folder."),
                self._backup,
            ),
            (
                tr("Look at the demo shop"),
                tr(
                    "An invented shop with two years of jobs; it is made in a minute or two "
                    "and nothing of your own is touched."
                ),
                self._demo,
            ),
        ):
            section = Section("")
            button = QPushButton(words)
            button.clicked.connect(slot)
            section.column.addWidget(button)
            section.column.addWidget(plain_label(says, "quiet", wrap=True))
            self.column.addWidget(section)
        self.column.addWidget(LanguageBox())

    def _again(self, opened: Sequence[Path], is_demo: Callable[[Path], bool]) -> Section:
        section = Section(tr("Opened before"))
        for folder in opened:
            row = self._rows[folder] = QWidget()
            button = QPushButton(folder.name)
            button.setAccessibleName(tr("Open {folder}", folder=folder))
            button.clicked.connect(partial(self.open_wanted.emit, folder))
            column = QVBoxLayout(row)
            column.setContentsMargins(0, 0, 0, 0)
            column.addWidget(button)
            column.addWidget(plain_label(str(folder), "quiet", wrap=True))
            if is_demo(folder):
                away = TwoPresses(tr("Take the demo shop away"), tr("Delete it: press once more"))
                away.pressed_twice.connect(partial(self.demo_unwanted.emit, folder))
                column.addWidget(away, 0, Qt.AlignmentFlag.AlignLeft)
            section.column.addWidget(row)
        return section

    def take_off(self, folder: Path) -> Callable[[Any], None]:
        """Return what takes a shop off the list, once it is gone."""
        return lambda _gone: self._rows[folder].hide()

    @Slot()
    def _open(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, tr("The folder of the shop"))
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
