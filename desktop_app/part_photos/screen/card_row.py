"""One printed card in the list: when it was printed, how long its ruler is, and what that means."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layouts import PAPER_WORDS
from desktop_app.part_photos.bench_card.ruler_length import (
    check_ruler,
    ruler_length,
    said_of_ruler,
    shown_length,
)
from desktop_app.part_photos.card_actions import note_ruler, put_card_away
from desktop_app.part_photos.mark_actions import Follow
from desktop_app.part_photos.print_actions import SaidAhead, said_by_ruler
from desktop_app.part_photos.stored_cards import DamagedCard, PrintedCardKept
from desktop_app.part_photos.stored_scales import any_may_rest_on
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.errands import Errand
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.texts import plain_label, tooltip


class CardRow(QFrame):
    """A card with a field for its ruler that saves itself, and a button to put it away.

    Where photos rest on the card, what their marks will say is worked out beside the window first;
    then ruler, photos and marks are kept in one deed.
    """

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
        self._errand: Errand | None = None
        self._turn = 0
        self._refused = ""
        self._waits: float | None = None  # the ruler that the errand works for
        paper = PAPER_WORDS.get(card.layout.paper, card.layout.name)
        name = tr(
            "Card {id}, {paper}, printed {day}",
            id=card.id,
            paper=paper,
            day=card.printed_on.isoformat(),
        )
        self.setAccessibleName(name)
        self._field = LineField(tr("Ruler of card {id} as measured", id=card.id), self._save)
        self._field.setPlaceholderText(tr("not measured"))
        self._field.setFixedWidth(180)
        self._box = Labelled(tr("Ruler as measured"), self._field)
        self._means = plain_label("", "quiet", wrap=True)
        beside = QVBoxLayout()
        beside.addWidget(plain_label(name))
        beside.addWidget(self._means)
        beside.addStretch(1)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(18)
        row.addWidget(self._box)
        row.addLayout(beside, 1)
        row.addWidget(away_button(desk, card.id), 0, Qt.AlignmentFlag.AlignTop)
        self.show_card(card)

    def show_card(self, card: PrintedCardKept) -> None:
        """Show what is kept of the card now."""
        self._card = card
        unit = self._desk.rules.length_unit
        nominal = card.layout.check_length_mm
        self._box.hint(tr("drawn: {length}", length=shown_length(nominal, unit)))
        if self._errand is None:
            self._field.show_value(shown_length(card.measured_mm, unit))
            said = said_of_ruler(card.measured_mm, nominal, card.measured_on)
            typed = self._field.unsaved()
            self._means.setText(
                (self._refused or tr("Kept till now: {said}", said=said)) if typed else said
            )

    def keep_draft(self) -> None:
        """Keep a ruler that is still worked out for, without waiting for it."""
        if self._errand is not None:
            self._keep({})

    def _save(self, text: str) -> Done | str | None:
        try:
            measured = ruler_length(text, self._desk.rules.length_unit)
            if measured is not None:
                check_ruler(measured, self._card.layout.check_length_mm)
        except ShopTrouble as trouble:
            self._refused = f"✎ {trouble.sentence()}"
            self._means.setText(self._refused)
            return None
        self._refused = ""
        self._stop_working()
        if not self._desk.ask(any_may_rest_on, self._card.id):
            return self._desk.do(note_ruler, self._card.id, measured, self._follow)
        self._waits = measured
        work = partial(said_by_ruler, self._desk.record, self._card.id, measured)
        words = tr("Working out the photos on card {id} anew", id=self._card.id)
        self._turn += 1
        then = partial(self._worked_out, self._turn)
        self._errand = self._desk.errands.run(words, work, then)
        self._errand.failed.connect(self._failed)
        self._means.setText(tr("Working out the photos on this card anew …"))
        return text  # it is kept as soon as these are, or when the page is left before

    def _worked_out(self, turn: int, ahead: SaidAhead) -> None:
        if isValid(self) and self._errand is not None and turn == self._turn:
            self._keep(ahead)

    def _keep(self, ahead: SaidAhead) -> None:
        self._stop_working()
        done = self._desk.do(note_ruler, self._card.id, self._waits, self._follow, ahead)
        if done is None:
            self._give_back()
        elif done.seq is None:
            self.show_card(self._card)

    @Slot(object)
    def _failed(self, _trouble: object) -> None:
        """Leave the ruler in its field, not kept, where the errand failed or was stopped."""
        if self._errand is not None and self.sender() is self._errand:
            self._errand = None
            self._give_back()

    def _stop_working(self) -> None:
        if self._errand is not None:
            self._errand.stop()
            self._errand = None

    def _give_back(self) -> None:
        typed = self._field.text()
        self._field.forget()
        self._field.setText(typed)
        self._means.setText(
            tr("✎ This length is not kept yet. Press Enter in its field to keep it.")
        )


class DamagedCardRow(QFrame):
    """A card that can't be read: named, with a button to put it away."""

    def __init__(self, desk: Desk, card: DamagedCard) -> None:
        super().__init__()
        words = tr(
            "⚠  Card {id} is damaged in the record: something else changed it. A photo "
            "on it counts as one on a card that nobody measured.",
            id=card.id,
        )
        self.setAccessibleName(tr("Card {id}, damaged in the record", id=card.id))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(18)
        row.addWidget(plain_label(words, wrap=True), 1)
        row.addWidget(away_button(desk, card.id), 0, Qt.AlignmentFlag.AlignTop)


def away_button(desk: Desk, card_id: int) -> QPushButton:
    """Return the button that puts a card away."""
    button = QPushButton(tr("Put away"))
    button.setAccessibleName(tr("Put card {card_id} away", card_id=card_id))
    button.setToolTip(tooltip(tr("It leaves this list. Photos can still be said to show it.")))
    button.clicked.connect(lambda: desk.do(put_card_away, card_id))
    return button
