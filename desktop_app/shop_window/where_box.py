"""Where this shop is, on House Rules; and the password, where its server wants another one."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.server.server_folder import read_place
from desktop_app.shop_record.server.server_password import (
    keep_password,
    newest_password,
    remember_password,
)
from desktop_app.shop_record.server.server_trouble import ServerRefuses
from desktop_app.shop_record.where_kept import where_kept
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.server_door import KEPT, NOT_KEPT
from desktop_app.shop_window.texts import plain_label, tooltip

WHERE = tr("Where this shop is")


class WhereBox(Section):
    """Looks whenever it is shown, beside the window: a server may take its time."""

    other_wanted = Signal()  # another shop than this one

    def __init__(self, desk: Desk) -> None:
        super().__init__(WHERE)
        self._desk = desk
        self._lines: list[QLabel] = []
        self._line = QLineEdit()
        self._line.setEchoMode(QLineEdit.EchoMode.Password)
        self._line.setMaximumWidth(420)
        self._line.returnPressed.connect(self._try_it)
        self._try = QPushButton(tr("Try it"))
        self._try.setAccessibleName(tr("Try the password"))
        self._try.clicked.connect(self._try_it)
        self._password = QWidget()
        row = QHBoxLayout(self._password)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(Labelled(tr("The password that holds now"), self._line))
        row.addWidget(self._try)
        row.addStretch(1)
        self.column.addWidget(self._password)
        self._password.hide()
        other = QPushButton(tr("Another shop…"))
        other.setToolTip(tooltip(tr("Closes this one, and asks which; it can be made new there")))
        other.clicked.connect(self.other_wanted)
        across = QHBoxLayout()
        across.addWidget(other)
        across.addStretch(1)
        self.column.addLayout(across)
        desk.told.connect(self._look_at_server)
        desk.changed.connect(self._hear)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._look()

    @Slot(object)
    def _hear(self, done: Done) -> None:
        self._look_at_server()

    @Slot()
    def _look_at_server(self) -> None:
        """Ask for the password while the server wants another one."""
        wanted = isinstance(self._desk.record.away, ServerRefuses)
        self._password.setVisible(wanted)

    def _look(self) -> None:
        self._look_at_server()
        record = self._desk.record
        if record.away is None:
            self._desk.errands.run(
                tr("Looking where this shop is"), lambda: where_kept(record), self._say
            )

    def _say(self, found: list[tuple[str, str]]) -> None:
        for line in self._lines:
            line.deleteLater()
        self._lines = [plain_label(f"{name}: {words}", wrap=True) for name, words in found]
        for at, line in enumerate(self._lines):
            self.column.insertWidget(at + 1, line)  # below the heading

    @Slot()
    def _try_it(self) -> None:
        """Say the password; whoever listens to the server tries it within a second."""
        password, record = self._line.text(), self._desk.record
        if not password:
            return
        address = read_place(record.folder).address
        remember_password(address, password)
        self._line.clear()

        def keep() -> bool:
            newest = newest_password(address, password)  # another may have been typed since
            return keep_password(address, newest or password)

        self._desk.errands.run(tr("Keeping the password"), keep, self._kept)

    @Slot(object)
    def _kept(self, kept: bool) -> None:
        self._desk.told.emit(KEPT if kept else NOT_KEPT)
