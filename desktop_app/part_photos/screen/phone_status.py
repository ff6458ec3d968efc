"""What the window says of phones while the page is open, or while photos wait for a place."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Slot
from PySide6.QtWidgets import QPushButton

from desktop_app.language import tr
from desktop_app.part_photos.screen.phone_bay import PhoneBay, phone_of
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import tooltip


class PhoneStatus(QPushButton):
    """Stands above every page, hidden while it has nothing to say; pressed, it shows the panel."""

    def __init__(self, bay: PhoneBay) -> None:
        super().__init__()
        self._bay = bay
        self.clicked.connect(self._press)
        self.hide()

    @Slot()
    def begin(self) -> None:
        """Speak from now on, once it has its place; look what waits in the tray from before."""
        self._bay.changed.connect(self._say)
        self._say()
        self._bay.look()

    @Slot()
    def _say(self) -> None:
        came, _ = self._bay.counts()
        waits = len(self._bay.waiting())
        words = []
        if self._bay.is_on():
            words.append(_open(came))
        if waits:
            words.append(
                tr("one photo waits") if waits == 1 else tr("{photos} photos wait", photos=waits)
            )
        self.setText(tr("Phone: {words}", words=", ".join(words)))
        place = self._bay.place()
        about = place.offer.words() if place and self._bay.is_on() else tr("Photos from a phone")
        self.setToolTip(tooltip(about))
        self.setAccessibleName(f"{self.text()}. {about}")
        self.setVisible(bool(words))

    @Slot()
    def _press(self) -> None:
        from desktop_app.part_photos.screen.phone_panel import show_panel

        show_panel(self._bay, self)


def _open(came: int) -> str:
    """Say that it is open; a photo that was sent twice counts once here, unlike on the phone."""
    if came == 0:
        return tr("open")
    if came == 1:
        return tr("open, one photo")
    return tr("open, {photos} different photos", photos=came)


def phone_status(desk: Desk) -> PhoneStatus:
    """Return the status of a desk's bay; it speaks as soon as it was put somewhere."""
    status = PhoneStatus(phone_of(desk))
    QTimer.singleShot(0, status, status.begin)
    return status
