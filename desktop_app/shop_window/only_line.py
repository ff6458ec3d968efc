"""The line that leaves only some rows of a table, and says so as long as some are left out."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.texts import plain_label

LONGEST = 200  # letters


class OnlyLine(QWidget):
    """`wanted` carries the words that are asked for; one press asks for none."""

    wanted = Signal(str)

    def __init__(self, table: str) -> None:
        super().__init__()
        self._line = QLineEdit()
        self._line.setPlaceholderText(tr("Show only rows with …"))
        self._line.setAccessibleName(tr("Show only rows with these words: {table}", table=table))
        self._line.setMaxLength(LONGEST)
        self._line.setClearButtonEnabled(True)
        self._all = QPushButton(tr("Show all rows"))
        self._all.setAccessibleName(tr("Show all rows: {table}", table=table))
        self._told = plain_label("", wrap=True)
        row = QHBoxLayout()
        row.addWidget(self._line, 1)
        row.addWidget(self._all)  # beside the line: once it is gone, a press there does nothing
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(row)
        column.addWidget(self._told)
        self.setFocusProxy(self._line)
        self._line.textChanged.connect(self.wanted)
        self._all.clicked.connect(self._show_all)
        self.tell(0, 0)

    def words(self) -> str:
        """Return the words that stand in it."""
        return self._line.text()

    def show_words(self, words: str) -> None:
        """Put words into it as if they were typed."""
        self._line.setText(words)

    def tell(self, shown: int, rows: int) -> None:
        """Say how many of the rows are shown, where only some are asked for."""
        words = " ".join(self.words().split())
        self._told.setText(
            tr(
                "▽  Rows shown: {shown:,} of {rows:,}, those with “{words}”.",
                shown=shown,
                rows=rows,
                words=words,
            )
        )
        for one in (self._all, self._told):
            one.setVisible(bool(words))

    @Slot()
    def _show_all(self) -> None:
        self._line.setFocus()  # the button goes
        self._line.clear()
