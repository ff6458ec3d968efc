"""One printed card in the list: when it was printed, how long its ruler is, and what that means."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.part_photos.bench_card.card_layouts import PAPER_WORDS
from desktop_app.part_photos.bench_card.ruler_length import (
    check_ruler,
    ruler_length,
    said_of_ruler,
    shown_length,
)
from desktop_app.part_photos.card_actions import note_ruler, put_card_away
from desktop_app.part_photos.mark_actions import Follow
from desktop_app.part_photos.stored_cards import PrintedCardKept
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.texts import plain_label


class CardRow(QFrame):
    """A card with a field for its ruler that saves itself, and a button to put it away."""

    def __init__(
        self,
        desk: Desk,
        card: PrintedCardKept,
        follow: Follow | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._desk = desk
        self._card = card
        self._follow = follow
        paper = PAPER_WORDS.get(card.layout.paper, card.layout.name)
        name = f"Card {card.id}, {paper}, printed {card.printed_on.isoformat()}"
        self.setAccessibleName(name)
        self._field = LineField(f"Ruler of card {card.id} as measured", self._save)
        self._field.setPlaceholderText("not measured")
        self._field.setFixedWidth(180)
        self._box = Labelled("Ruler as measured", self._field)
        self._means = plain_label("", "quiet", wrap=True)
        away = QPushButton("Put away")
        away.setAccessibleName(f"Put card {card.id} away")
        away.clicked.connect(self._away)
        beside = QVBoxLayout()
        beside.addWidget(plain_label(name))
        beside.addWidget(self._means)
        beside.addStretch(1)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(18)
        row.addWidget(self._box)
        row.addLayout(beside, 1)
        row.addWidget(away, 0, Qt.AlignmentFlag.AlignTop)
        self.show_card(card)

    def show_card(self, card: PrintedCardKept) -> None:
        """Show what is kept of the card now."""
        self._card = card
        unit = self._desk.rules.length_unit
        nominal = card.layout.check_length_mm
        self._box.hint(f"drawn: {shown_length(nominal, unit)}")
        self._field.show_value(shown_length(card.measured_mm, unit))
        self._means.setText(said_of_ruler(card.measured_mm, nominal, card.measured_on))

    def _save(self, text: str) -> Done | None:
        try:
            measured = ruler_length(text, self._desk.rules.length_unit)
            if measured is not None:
                check_ruler(measured, self._card.layout.check_length_mm)
        except ShopTrouble as trouble:
            self._means.setText(f"✎ {trouble.sentence()}")
            return None
        return self._desk.do(note_ruler, self._card.id, measured, self._follow)

    @Slot()
    def _away(self) -> None:
        self._desk.do(put_card_away, self._card.id)
