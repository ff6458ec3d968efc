"""What the program is: its version, its licences, and where it keeps what on this computer."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QUrl, Slot
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QPlainTextEdit, QPushButton

from desktop_app.language import tr
from desktop_app.shop_record.own_program.licences import OWN_LICENCE, licences
from desktop_app.shop_record.own_program.own_version import version
from desktop_app.shop_record.own_program.problem_report import LOG
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.written_file import OPEN_OTHERWISE


class ThisProgram(Section):
    """Shows it for the shop in a folder, where one is open."""

    def __init__(self, folder: Path | None) -> None:
        super().__init__(tr("This program"))
        self._folder = folder
        self.column.addWidget(plain_label(f"Benchwitness {version()}. {OWN_LICENCE}.", wrap=True))
        if folder is not None:
            said = tr(
                "This shop lies in {folder}; its log is the file {log} there.",
                folder=folder,
                log=LOG,
            )
            self.column.addWidget(plain_label(said, wrap=True))
            show = QPushButton(tr("Show the folder"))
            show.clicked.connect(self._show_folder)
            self.column.addWidget(show)
            self._not_shown = plain_label("", wrap=True)
            self._not_shown.hide()
            self.column.addWidget(self._not_shown)
        self._licences = QPlainTextEdit()
        self._licences.setReadOnly(True)
        self._licences.setTabChangesFocus(True)
        self._licences.setAccessibleName(tr("Libraries and their licences"))
        self._licences.setMinimumHeight(10 * self.fontMetrics().height())
        self._licences.hide()
        self._press = QPushButton(tr("Libraries and their licences"))
        self._press.clicked.connect(self._show_licences)
        self.column.addWidget(self._press)
        self.column.addWidget(self._licences)

    @Slot()
    def _show_folder(self) -> None:
        if not QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._folder))):
            says = tr("This computer names no program for {file}.", file=self._folder)
            self._not_shown.setText(f"{says} {OPEN_OTHERWISE}")
            self._not_shown.show()

    @Slot()
    def _show_licences(self) -> None:
        self._licences.setPlainText("\n".join(f"{name}: {said}" for name, said in licences()))
        self._licences.show()
        self._press.hide()
        self._licences.setFocus()
