"""A shop on a server: its address, the password, where photos lie; opened, or made there."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QLineEdit, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.server.server_address import ServerAddress, is_address, read_address
from desktop_app.shop_record.server.server_trouble import PasswordWanted, PhotosUnknown, ServerLost
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import ChoiceField, Labelled
from desktop_app.shop_window.line_draft import LineDraft
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.texts import plain_label

OPEN, AGAIN, MAKE = tr("Open it"), tr("Try again"), tr("Make a new shop there")
_WHAT = tr(
    "Where several computers share one shop, its record is in a database of a "
    "PostgreSQL server. Whoever looks after that server gives you the address and a "
    "password."
)
_ADDRESS = tr(
    "Who you are there, the server, and the name of the database, as in "
    "tuuli@counter-server/benchwitness."
)
_PASSWORD = tr("Kept in this system's keyring once the server has taken it, and in no file.")
_PHOTOS = tr(
    "Chosen when a shop is made. A shared folder must be reached by all its computers; "
    "for a shop that is there already it is asked for only where this computer does "
    "not know it yet."
)


@dataclass(frozen=True, slots=True)
class Wanted:
    """The shop that is wanted: its address, the password and the shared folder where one is said.

    `new` is to be made; else it is there already.
    """

    address: ServerAddress
    password: str | None
    photos: Path | None
    new: bool


class ServerPage(ReadingPage):
    """What is refused stands beneath its field; nothing that was typed goes."""

    wanted = Signal(object)  # Wanted

    def __init__(self, drafts: Drafts) -> None:
        """Take the drafts of this computer: there may be no shop yet."""
        super().__init__()
        self._address = self._line(tr("Address"), _ADDRESS)
        self._password = self._line(tr("Password"), _PASSWORD)
        self._line_of(self._password).setEchoMode(QLineEdit.EchoMode.Password)
        self._line_of(self._address).setPlaceholderText("tuuli@counter-server/benchwitness")
        places = [(False, tr("In the database")), (True, tr("In a shared folder"))]
        self._choice = ChoiceField(tr("Where the photos lie"), places, self._chosen)
        self._choice.setMaximumWidth(420)
        self._folder = self._line(tr("The shared folder of the photos"), "")
        self._browse = QPushButton(tr("Choose the folder…"))
        self._browse.clicked.connect(self._choose)
        self._open = QPushButton(OPEN)
        self._open.setObjectName("next")
        self._open.clicked.connect(self._press_open)
        self._make = QPushButton(MAKE)
        self._make.clicked.connect(self._press_make)
        self._lay_out()
        lines = {"address": self._line_of(self._address), "photos": self._line_of(self._folder)}
        draft = LineDraft(self, drafts, lines, waits=self._has_no_secret)
        draft.begin("server")
        shared = bool(lines["photos"].text())
        self._choice.show_value(shared)
        self._chosen(shared)
        for line in lines.values():
            line.editingFinished.connect(draft.keep)

    def came_here(self) -> None:
        """Let who comes here type at once."""
        box = self._password if self._line_of(self._address).text() else self._address
        box.field.setFocus()

    def show_address(self, address: ServerAddress) -> None:
        """Show where a shop is that could not be opened."""
        self._line_of(self._address).setText(address.text())

    def refuse(self, trouble: ShopTrouble) -> None:
        """Say why it did not come about, beneath the field that it is about."""
        box = self._password if isinstance(trouble, PasswordWanted) else self._address
        if isinstance(trouble, PhotosUnknown):
            box = self._folder
            self._choice.show_value(True)
            self._chosen(True)
        box.refuse(trouble.sentence())
        self._open.setText(AGAIN if isinstance(trouble, ServerLost) else OPEN)
        (self._open if isinstance(trouble, ServerLost) else box.field).setFocus()

    def wait(self, yes: bool) -> None:
        """Let nothing be pressed while it is tried; what was said before goes."""
        for button in (self._open, self._make):
            off_because(
                button, tr("The server is being asked: wait for what it says.") if yes else ""
            )
        if yes:
            self._mended()

    def forget_password(self) -> None:
        """Keep no password in a field once it was used."""
        self._line_of(self._password).clear()

    def _has_no_secret(self) -> bool:
        """Tell whether the address can be kept in a file: a password may be typed in it."""
        typed = self._line_of(self._address).text().strip()
        who = typed.rpartition("//")[2].partition("@")[0]
        return ":" not in who and "password" not in typed.casefold()

    def _line(self, name: str, hint: str) -> Labelled:
        line = QLineEdit()
        line.setMaximumWidth(560)
        line.textEdited.connect(self._mended)
        line.returnPressed.connect(self._press_open)
        return Labelled(name, line, hint)

    @staticmethod
    def _line_of(box: Labelled) -> QLineEdit:
        assert isinstance(box.field, QLineEdit)
        return box.field

    def _lay_out(self) -> None:
        self.column.addWidget(plain_label(tr("A Shop on a Server"), "title"))
        where, photos = Section(""), Section(tr("Photos"))
        where.column.addWidget(plain_label(_WHAT, wrap=True))
        where.column.addWidget(self._address)
        where.column.addWidget(self._password)
        photos.column.addWidget(Labelled(tr("Where the photos lie"), self._choice, _PHOTOS))
        photos.column.addWidget(self._folder)
        photos.column.addLayout(_row(self._browse))
        self.column.addWidget(where)
        self.column.addWidget(photos)
        self.column.addLayout(_row(self._open, self._make))

    @Slot(object)
    def _chosen(self, shared: object) -> None:
        for widget in (self._folder, self._browse):
            widget.setVisible(bool(shared))

    @Slot()
    def _choose(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, tr("The shared folder of the photos"))
        if folder:
            self._line_of(self._folder).setText(folder)
            self._mended()

    @Slot()
    def _mended(self) -> None:
        for box in (self._address, self._password, self._folder):
            box.refuse("")

    @Slot()
    def _press_open(self) -> None:
        self._ask(new=False)

    @Slot()
    def _press_make(self) -> None:
        self._ask(new=True)

    def _ask(self, *, new: bool) -> None:
        if not self._open.isEnabled():
            return
        try:
            self.wanted.emit(self._read(new=new))
        except ShopTrouble as trouble:
            self.refuse(trouble)

    def _read(self, *, new: bool) -> Wanted:
        line, secret = self._line_of(self._address), self._line_of(self._password)
        said = line.text().strip()
        if not said:
            raise ShopTrouble(tr("No address is said."), do=_ADDRESS)
        address, password = read_address(said if is_address(said) else f"postgresql://{said}")
        if password:  # nobody shall read it over a shoulder
            line.setText(address.text())
            secret.setText(password)
        photos = self._line_of(self._folder).text().strip() if self._choice.currentData() else None
        if photos == "" and new:
            raise PhotosUnknown(
                tr("No shared folder is named for the photos."), do=tr("Choose one.")
            )
        return Wanted(address, secret.text() or None, Path(photos) if photos else None, new)


def _row(*widgets: QWidget) -> QHBoxLayout:
    row = QHBoxLayout()
    for widget in widgets:
        row.addWidget(widget)
    row.addStretch(1)
    return row
