"""Choosing a part kind by typing: its name, or what else the trade calls it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import QStringListModel, Qt, Signal, Slot
from PySide6.QtWidgets import QComboBox, QCompleter, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.parts_compared.kind_names import kind_called, kind_names
from desktop_app.parts_compared.part_kind import PartKind
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.texts import plain_label


class TypeAhead(QComboBox):
    """An editable choice whose list narrows while one types."""

    def __init__(self, name: str, hint: str) -> None:
        super().__init__()
        self.setEditable(True)
        self.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.setAccessibleName(name)
        line = self.lineEdit()
        assert line is not None
        line.setAccessibleName(name)
        line.setPlaceholderText(hint)

    def offer(self, names: list[str], typed: list[str]) -> None:
        """Offer `names` in the list, and all of `typed` while somebody types."""
        self.clear()
        self.addItems(names)
        self.setCurrentIndex(-1)
        finder = QCompleter(QStringListModel(typed, self), self)
        finder.setFilterMode(Qt.MatchFlag.MatchContains)
        finder.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.setCompleter(finder)

    def wheelEvent(self, event: Any) -> None:
        event.ignore()  # scrolling the page must not change an answer


class KindChoice(QWidget):
    """Kind, position, and the button that lays the two parts side by side."""

    wanted = Signal(str, str)  # the kind's id, the position

    def __init__(self, kinds: Mapping[str, PartKind]) -> None:
        super().__init__()
        self._kinds = kinds
        self._kind = TypeAhead("Part kind", "rotor, pads, plug …")
        names = kind_names(kinds)
        self._kind.offer(sorted(one.name for one in kinds.values()), list(names))
        self._kind.currentTextChanged.connect(self._offer_positions)
        self._position = TypeAhead("Position of the part", "front left, cylinder 3 …")
        button = QPushButton("Lay old and new side by side")
        button.clicked.connect(self._lay)
        for line in (self._kind.lineEdit(), self._position.lineEdit()):
            assert line is not None
            line.returnPressed.connect(self._lay)
        self._refusal = plain_label("", wrap=True)
        self._refusal.hide()
        row = QHBoxLayout()
        row.addWidget(Labelled("Part kind", self._kind), 3)
        row.addWidget(Labelled("Position", self._position), 2)
        row.addWidget(button, 0, Qt.AlignmentFlag.AlignBottom)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(row)
        column.addWidget(self._refusal)

    def clear(self) -> None:
        """Empty the fields for the next pair."""
        self._kind.setCurrentIndex(-1)
        self._kind.clearEditText()
        self._position.clearEditText()

    @Slot()
    def _lay(self) -> None:
        text = self._kind.currentText()
        kind = kind_called(text, self._kinds)
        words = ""
        if kind is None:
            said = f"“{text.strip()}” is no one kind on the shelf. " if text.strip() else ""
            words = f"✎ {said}Type part of a name such as rotor, pads or belt, and choose a kind."
        self._refusal.setText(words)
        self._refusal.setVisible(bool(words))
        if kind is not None:
            self.wanted.emit(kind.id, self._position.currentText().strip())

    @Slot(str)
    def _offer_positions(self, text: str) -> None:
        kind = kind_called(text, self._kinds)
        typed = self._position.currentText()
        sides = list(kind.sides) if kind else []
        self._position.offer(sides, sides)
        self._position.setEditText(typed)
