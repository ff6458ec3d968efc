"""A mark that is damaged in the record: what that means, and the button that takes it out."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.stored_marks import DamagedMark
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label


class MarkDamaged(QWidget):
    """Shown in place of the fields of a mark that can't be read."""

    unwanted = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._mark: DamagedMark | None = None
        self._words = plain_label("", wrap=True)
        out = QPushButton(tr("Take out"))
        out.setAccessibleName(tr("Take the damaged mark out"))
        out.clicked.connect(self._ask_out)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._words)
        buttons = FlowRow()
        buttons.addWidget(out)
        column.addLayout(buttons)
        self.hide()

    def show_mark(self, mark: DamagedMark | None) -> None:
        """Show this mark; None: another one is chosen, or none."""
        self._mark = mark
        self.setVisible(mark is not None)
        if mark is not None:
            self._words.setText(
                tr(
                    "⚠  What the record holds of {words} was changed from outside and "
                    "can't be read. It is not drawn and says nothing. Take it out, or put "
                    "your last good copy of shop.sqlite in its place.",
                    words=mark.words(),
                )
            )

    @Slot()
    def _ask_out(self) -> None:
        if self._mark is not None:
            self.unwanted.emit(self._mark.id)
