"""How the text was read: a row of words, each of which is taken out of the text by a press."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.look import TOUCH
from desktop_app.shop_window.texts import plain_label, tooltip
from desktop_app.symptom_search.question import PERHAPS, Piece
from desktop_app.symptom_search.screen.link_button import LinkButton

_UNTOLD = ("word", PERHAPS)  # kinds of pieces that a shop may say the meaning of


class ReadAsRow(QWidget):
    """Shows the pieces of a question; `taken_out` carries the piece that was pressed.

    Where words mean nothing yet, or are guessed at, `meaning_wanted` says that somebody knows.
    """

    taken_out = Signal(object)  # Piece
    meaning_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pieces: tuple[Piece, ...] = ()
        self._line = FlowRow(self)
        self._buttons: list[QPushButton] = []
        self._label = plain_label(tr("Read as"), "quiet")
        self._label.setMinimumHeight(TOUCH)
        self._line.addWidget(self._label)
        self._meaning = LinkButton(
            tr("Say what it means here"), tr("Say what these words mean here")
        )
        self._meaning.setToolTip(tooltip(tr("What customers say, and what it means in this shop")))
        self._meaning.setMinimumHeight(TOUCH)
        self._meaning.clicked.connect(self.meaning_wanted)
        self.hide()

    def last_piece(self) -> Piece | None:
        """Return the piece that stands last, None where there is none."""
        return self._pieces[-1] if self._pieces else None

    def show_pieces(self, pieces: Sequence[Piece]) -> None:
        """Show what was read, in the order given."""
        if tuple(pieces) == self._pieces:
            return
        self._pieces = tuple(pieces)
        for button in self._buttons:
            self._line.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._buttons = [self._button(place, one) for place, one in enumerate(self._pieces)]
        self._line.removeWidget(self._meaning)
        for button in (*self._buttons, self._meaning):
            self._line.addWidget(button)  # the way to a meaning stands last
        self._meaning.setVisible(any(one.kind in _UNTOLD for one in self._pieces))
        self.setVisible(bool(self._buttons))
        self.updateGeometry()

    def _button(self, place: int, piece: Piece) -> QPushButton:
        shown = piece.shown if piece.kind == "word" else f"{tr(piece.kind)}: {piece.shown}"
        button = QPushButton(f"{shown}  ✕".replace("&", "&&"))
        button.setAccessibleName(tr("Take out {what}", what=shown))
        button.setToolTip(tooltip(tr("Take “{what}” out of the question", what=piece.shown)))
        button.setMinimumHeight(TOUCH)
        button.setProperty("place", place)
        button.clicked.connect(self._pressed)
        return button

    @Slot()
    def _pressed(self) -> None:
        button = self.sender()
        assert isinstance(button, QPushButton)
        self.taken_out.emit(self._pieces[int(button.property("place"))])
