"""Bench Card: how a card is used, a card printed or saved, and the ruler of each printed one."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import QLocale, Qt, Slot
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QPushButton, QVBoxLayout
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAPER_WORDS, bench_card, usual_paper
from desktop_app.part_photos.bench_card.how_to import how_to
from desktop_app.part_photos.card_actions import note_printed_card, write_card
from desktop_app.part_photos.mark_actions import Follow
from desktop_app.part_photos.screen.card_painting import CardPreview, HowToPicture
from desktop_app.part_photos.screen.card_printing import ask_printer, no_printer, print_card
from desktop_app.part_photos.screen.card_row import CardRow, DamagedCardRow
from desktop_app.part_photos.stored_cards import AnyCard, DamagedCard, cards_by_id
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField, Labelled
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.place_names import CARD
from desktop_app.shop_window.refused_drafts import KeepsRefused, RefusedDrafts
from desktop_app.shop_window.texts import plain_label, tooltip


class BenchCardPage(KeepsRefused, ReadingPage):
    """Three pictures, a card to print, and the cards that the shop has."""

    def __init__(self, desk: Desk, follow: Follow | None = None) -> None:
        """`follow` lets readings follow their marks where a ruler gives photos a new scale."""
        super().__init__()
        self._desk = desk
        self._follow = follow
        self._rows: dict[int, CardRow | DamagedCardRow] = {}
        territory = QLocale.territoryToCode(QLocale.system().territory())
        self._layout = bench_card(usual_paper(territory, desk.rules.paper))
        self._preview = CardPreview(self._layout)
        self._print = self._button(tr("Print…"), tr("Print the card"), self._ask_to_print)
        self._save = self._button(tr("Save as PDF…"), tr("Save the card as PDF"), self._ask_to_save)
        self._save.setObjectName("next")
        self._printed = self._button(
            tr("Note a printed card"), tr("Note that a card of this paper is printed"), self._note
        )
        self._why_not = plain_label("", "quiet", wrap=True)
        self._says = plain_label("", wrap=True)
        self._none = plain_label(
            tr("No card is noted yet. Print one, or note one that you printed from the PDF."),
            "quiet",
            wrap=True,
        )
        self.column.addWidget(plain_label(CARD, "title"))
        self.column.addWidget(self._how_to())
        self.column.addWidget(self._to_print())
        self.column.addWidget(self._list())
        self._refused = RefusedDrafts(desk)
        self._refused.begin("refused-cards", self)
        desk.changed.connect(self._heard)

    def came_here(self) -> None:
        """Read the printed cards again, and look for printers, when the place is shown."""
        missing = no_printer()
        self._print.setEnabled(not missing)
        self._print.setToolTip(tooltip(missing) if missing else "")
        self._print.setAccessibleDescription(missing)
        self._why_not.setText(missing)
        self._why_not.setVisible(bool(missing))
        self._read()

    def keep_draft(self) -> None:
        """Keep rulers whose photos are still worked out anew, before the page is left."""
        for row in self._rows.values():
            if isinstance(row, CardRow):
                row.keep_draft()

    def _how_to(self) -> Section:
        section = Section(tr("How it is used"))
        row = QHBoxLayout()
        row.setSpacing(24)
        for number, step in enumerate(how_to(), 1):
            column = QVBoxLayout()
            column.addWidget(HowToPicture(step))
            column.addWidget(plain_label(f"{number}  {step.words}", wrap=True))
            column.addStretch(1)
            row.addLayout(column, 1)
        section.column.addLayout(row)
        section.column.addWidget(
            plain_label(
                tr(
                    "The markers tell the scale, and where the camera was. Use stiff card, "
                    "or glue the page to a board: paper that arches spoils lengths (common "
                    "practice, no source)."
                ),
                "quiet",
                wrap=True,
            )
        )
        return section

    def _to_print(self) -> Section:
        section = Section(tr("Print a card"))
        papers = [(paper, words) for paper, words in PAPER_WORDS.items()]
        choice = ChoiceField(tr("Paper of the card"), papers, self._choose)
        choice.show_value(self._layout.paper)
        buttons = FlowRow()
        for button in (self._print, self._save, self._printed):
            buttons.addWidget(button)
        beside = QVBoxLayout()
        beside.setSpacing(12)
        beside.addWidget(Labelled(tr("Paper"), choice))
        beside.addWidget(
            plain_label(
                tr(
                    "Print it at 100 %, not fitted to the page. Then measure its ruler "
                    "with a calliper and enter the length below, once for each printed "
                    "card. Photos taken on it before follow, and so do the readings that "
                    "were taken from them."
                ),
                wrap=True,
            )
        )
        beside.addLayout(buttons)
        beside.addWidget(self._why_not)
        beside.addWidget(self._says)
        beside.addStretch(1)
        row = QHBoxLayout()
        row.setSpacing(24)
        row.addWidget(self._preview, 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(beside, 1)
        section.column.addLayout(row)
        return section

    def _list(self) -> Section:
        section = Section(tr("Printed cards"))
        self._cards = QVBoxLayout()
        self._cards.setSpacing(16)
        section.column.addWidget(self._none)
        section.column.addLayout(self._cards)
        return section

    def _button(self, words: str, name: str, slot: Callable[[], None]) -> QPushButton:
        button = QPushButton(words)
        button.setAccessibleName(name)
        button.clicked.connect(slot)
        return button

    def _choose(self, paper: str) -> None:
        self._layout = bench_card(paper)
        self._preview.show_card(self._layout)
        self._says.setText("")

    def _read(self) -> None:
        kept: dict[int, AnyCard] | None = self._desk.ask(cards_by_id)
        if kept is None:
            return
        cards = {number: card for number, card in kept.items() if card.in_use}
        for number, row in list(self._rows.items()):
            damaged = isinstance(cards.get(number), DamagedCard)
            if number not in cards or damaged != isinstance(row, DamagedCardRow):
                del self._rows[number]
                self._cards.removeWidget(row)
                row.setParent(None)
                row.deleteLater()
        for place, card in enumerate(cards.values()):
            self._show_card(place, card)
        self._none.setVisible(not cards)

    def _show_card(self, place: int, card: AnyCard) -> None:
        there = self._rows.get(card.id)
        if isinstance(there, CardRow) and not isinstance(card, DamagedCard):
            there.show_card(card)
        elif there is None:
            if isinstance(card, DamagedCard):
                there = DamagedCardRow(self._desk, card)
            else:
                there = CardRow(self._desk, card, self._follow)
            self._rows[card.id] = there
            self._cards.insertWidget(place, there)
            there.show()  # not with the next layout: keys typed meanwhile would find it hidden
            self._refused.bring_back(there)

    @Slot()
    def _note(self) -> None:
        done = self._desk.do(note_printed_card, self._layout)
        if done is not None:
            self._says.setText(_noted(done))

    @Slot()
    def _ask_to_save(self) -> None:
        proposed = Path.home() / f"bench-card-{self._layout.paper}.pdf"
        chosen, _ = QFileDialog.getSaveFileName(
            self, tr("Save the card"), str(proposed), tr("PDF (*.pdf)")
        )
        if chosen:
            to = Path(chosen)
            to = to if to.suffix.lower() == ".pdf" else to.with_name(f"{to.name}.pdf")
            said = tr("Saved as {to}. When it is printed, press “Note a printed card”.", to=to)
            self._run(tr("Saving the card"), partial(write_card, self._layout, to), said)

    @Slot()
    def _ask_to_print(self) -> None:
        layout = self._layout
        printer = ask_printer(self, layout)
        if printer is not None:
            work = partial(print_card, layout, printer)
            self._run(tr("Printing the card"), work, tr("Sent to the printer."), layout)

    def _run(
        self, words: str, work: Callable[[], None], said: str, printed: CardLayout | None = None
    ) -> None:
        def done(_result: Any) -> None:
            noted = self._desk.do(note_printed_card, printed) if printed is not None else None
            if isValid(self):
                self._says.setText(f"{said} {_noted(noted)}" if noted is not None else said)

        self._says.setText("")
        self._desk.errands.run(words, work, done)

    @Slot(object)
    def _heard(self, done: Done) -> None:
        if {"printed_card", "setting"} & done.touched and self.isVisible():
            self._read()


def _noted(done: Done) -> str:
    return tr(
        "Noted below as card {made}: write that number on it, and measure its ruler.",
        made=done.made,
    )
