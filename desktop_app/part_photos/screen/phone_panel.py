"""The window beside the window: the code for the phone, what photos are taken for, what came."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.part_photos.phone.own_certificate import HOW_TO_GET, can_lock
from desktop_app.part_photos.screen.phone_addresses import addresses_here
from desktop_app.part_photos.screen.phone_bay import PhoneBay
from desktop_app.part_photos.screen.phone_code import PhoneCode
from desktop_app.part_photos.screen.phone_waiting import PhoneWaiting
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label

NO_PLACE = tr("No part is chosen: press “From a phone…” at one. Photos wait here until then.")
OFF = tr(
    "The page for phones is closed. Choose this computer's address on the shop's own "
    "Wi-Fi, then open the page; it closes when this program does, or after half an "
    "hour without a photo."
)
NO_ADDRESS = tr(
    "This computer has no address that a phone could reach. Join the shop's Wi-Fi, then "
    "press “From a phone…” again."
)
WARNS = tr("The phone's browser warns, once, of a certificate that nobody vouches for.")
LOCKED = tr(
    "Photos travel locked. The phone's browser warns, for nobody vouches for this "
    "certificate: look at its details there, and go on only if its SHA-256 is this "
    "one: {certificate}"
)
WATCHED = tr(
    "Photos travel unlocked: others on this Wi-Fi can watch. Use the shop's own, not the guests'."
)
HOW = tr(
    "Point the phone's camera at the code, on the same Wi-Fi, and open what it finds. "
    "Side and view can be changed on the phone. If the page does not come, this "
    "computer's firewall keeps it out: let this program through, or port {port}."
)


class PhonePanel(QWidget):
    """Stands beside the main window and follows the bay; closing it leaves the page open."""

    def __init__(self, bay: PhoneBay, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(tr("Photos from a phone"))
        self.resize(680, 400)
        self._bay = bay
        self._was_on = False
        self._place = plain_label("", "heading", wrap=True)
        self._says = plain_label("", wrap=True)
        self._watched = plain_label(WATCHED, "quiet", wrap=True)
        self._code = PhoneCode()
        self._address: QLabel = plain_label("", wrap=True)
        self._address.setAccessibleName(tr("Address for the phone"))
        self._address.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self._how = plain_label("", "quiet", wrap=True)
        self._choice = ChoiceList()
        self._choice.setAccessibleName(tr("Address of this computer"))
        self._locked = QCheckBox(
            tr("Lock what travels (TLS, a certificate of this computer's own)")
        )
        off_because(self._locked, "" if can_lock() else HOW_TO_GET, WARNS)
        self._open = QPushButton(tr("Open the page for phones"))
        self._open.setObjectName("next")
        self._shut = QPushButton(tr("Close the page"))
        self._lay_out()
        self._open.clicked.connect(self._open_now)
        self._shut.clicked.connect(bay.switch_off)
        on_key(self, Qt.Key.Key_Escape, tr("closes the photos from a phone"), self.close)
        bay.changed.connect(self.show_bay)
        self.look()

    def look(self) -> None:
        """Look which addresses this computer has now, and what waits."""
        if not self._bay.is_on():
            before = self._choice.currentData()
            self._choice.clear()
            for each in addresses_here():
                self._choice.addItem(each.words(), each.number)
            self._choice.setCurrentIndex(max(0, self._choice.findData(before)))
        self._bay.look()
        self.show_bay()
        self._next().setFocus()

    @Slot()
    def show_bay(self) -> None:
        """Show how it stands."""
        on, place, url = self._bay.is_on(), self._bay.place(), self._bay.url()
        sign = f"{SIDE_SIGNS[place.offer.side]} " if place else ""
        self._place.setText(f"{sign}{place.offer.words()}" if place else NO_PLACE)
        if url != self._address.text():
            self._code.show_address(url)
            self._address.setText(url)
        beside_on: tuple[QWidget, ...] = (self._code, self._address, self._how, self._shut)
        for widget in beside_on:
            widget.setVisible(on)
        self._choice.setVisible(not on)
        self._locked.setVisible(not on)
        mark = self._bay.certificate()
        self._watched.setText(LOCKED.format(certificate=mark) if mark else WATCHED)
        self._open.setVisible(not on)
        off_because(self._open, "" if self._choice.count() else NO_ADDRESS)
        if on is not self._was_on:  # the button that had the cursor went with it
            self._was_on = on
            self._next().setFocus()
        self._says.setText(said(self._bay) if on else OFF)
        self._how.setText(HOW.format(port=url.partition("/#")[0].rpartition(":")[2]))

    def _next(self) -> QPushButton:
        return self._shut if self._bay.is_on() else self._open

    def _lay_out(self) -> None:
        row = QHBoxLayout()
        row.addWidget(self._choice, 1)
        row.addWidget(self._open)
        row.addWidget(self._shut)
        beside = QVBoxLayout()
        for widget in (self._address, self._how, self._says, self._watched):
            beside.addWidget(widget)
        beside.addStretch(1)
        code = QHBoxLayout()
        code.addWidget(self._code, 0, Qt.AlignmentFlag.AlignTop)
        code.addLayout(beside, 1)
        column = QVBoxLayout(self)
        column.addWidget(self._place)
        column.addLayout(code)
        column.addWidget(self._locked)
        column.addLayout(row)
        column.addWidget(PhoneWaiting(self._bay))
        column.addStretch(1)

    @Slot()
    def _open_now(self) -> None:
        locked = self._locked.isChecked()
        self._bay.switch_on(str(self._choice.currentData()), locked=locked)


def said(bay: PhoneBay) -> str:
    """Say how many came, how long the page stays open, who was turned away."""
    came, strangers = bay.counts()
    minutes = int(bay.seconds_left() // 60) + 1
    words = [
        tr("No photo came.")
        if not came
        else tr("One photo came.")
        if came == 1
        else tr("{photos} different photos came.", photos=came),
        tr("The page closes in {minutes} min without another one.", minutes=minutes),
    ]
    if strangers == 1:
        words.append(tr("Once somebody without the code was turned away."))
    elif strangers:
        times = tr("{times} times somebody without the code was turned away.", times=strangers)
        words.append(times)
    return " ".join(words)


def show_panel(bay: PhoneBay, beside: QWidget) -> PhonePanel:
    """Show the one panel of a bay, over the window that `beside` is in."""
    window = beside.window()
    found = window.findChild(PhonePanel)
    panel = found if isinstance(found, PhonePanel) else PhonePanel(bay, window)
    if found is not None:
        panel.look()
    panel.show()
    panel.activateWindow()
    return panel
