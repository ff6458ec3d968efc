"""What a photo's barcode says, offered beside the field where it fits; a person presses."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFrame, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.off_where_shut import off_where_shut
from desktop_app.shop_window.texts import plain_label

NOT_THIS = tr("Not this")


class CodeOffer(QFrame):
    """One offer: what the photo shows, a button for each field it may go into, and a refusal."""

    taken = Signal(str)  # the field that was pressed, by its key
    refused = Signal()

    def __init__(self, desk: Desk, says: str, value: str, fields: Sequence[tuple[str, str]]):
        """`fields` are (key, words of the button)."""
        super().__init__()
        self.setObjectName("question")
        self.setAccessibleName(says)
        column = QVBoxLayout(self)
        column.addWidget(plain_label(says, wrap=True))
        answers = QWidget()
        row = FlowRow(answers)
        for key, words in fields:
            put = QPushButton(words)
            put.setAccessibleName(f"{words}: {value}. {says}")
            put.setProperty("field", key)
            put.clicked.connect(self._take)
            off_where_shut(desk, put)
            row.addWidget(put)
        away = QPushButton(NOT_THIS)
        away.setAccessibleName(f"{NOT_THIS}: {value}. {says}")
        away.clicked.connect(self._refuse)
        row.addWidget(away)
        column.addWidget(answers)

    @Slot()
    def _take(self) -> None:
        self.taken.emit(str(self.sender().property("field")))

    @Slot()
    def _refuse(self) -> None:
        self.refused.emit()


def take_back(offer: CodeOffer) -> None:
    """Take an offer away. A press that is under way on it counts no more: what it said has changed.

    It goes a moment later, for it may be its own button that is being pressed.
    """
    offer.blockSignals(True)
    offer.hide()
    offer.deleteLater()
