"""Fields that mean something only together, and are kept as one when the last of them is left."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QApplication, QWidget

from desktop_app.shop_window.being_saved import saving


class TypedTogether(QWidget):
    """Holds the fields; whoever goes on to something beside the card they stand on leaves them.

    Where the window itself is left, for a telephone call, they wait as they are.
    """

    def __init__(self) -> None:
        super().__init__()
        self._refused: str | None = None  # what stood in the fields and was not accepted
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._focus_went)

    def save_now(self) -> None:
        """Keep what is typed, if anything is; what is told meanwhile goes with it."""
        with saving(self, self.text()):
            self.keep_typed()

    def keep_typed(self) -> None:
        """Keep what is typed, if anything is."""
        raise NotImplementedError

    def refuse(self) -> None:
        """Note that what stands in the fields is not accepted, and was told so.

        It is not tried again until it is changed. What a server that is away couldn't take is not
        refused, and is tried each time the fields are left.
        """
        self._refused = self.text()

    def unsaved(self) -> bool:
        """Whether something is typed that is not kept."""
        raise NotImplementedError

    def text(self) -> str:
        """Return everything that stands in the fields, to see whether it was changed."""
        raise NotImplementedError

    @Slot("QWidget*", "QWidget*")
    def _focus_went(self, left: QWidget | None, now: QWidget | None) -> None:
        card = self.parentWidget()
        if left is None or now is None or card is None or not card.isAncestorOf(left):
            return
        if card.isAncestorOf(now) or now.window() is not self.window():
            return
        if self.text() != self._refused:
            self._refused = None
            self.save_now()
