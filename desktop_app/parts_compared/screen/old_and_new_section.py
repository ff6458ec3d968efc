"""Old & New: the comparison bench of a job, a card for each pair of parts."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QTimer, Slot
from PySide6.QtWidgets import QVBoxLayout

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.instrument import Instrument
from desktop_app.parts_compared.part_kind import PartKind
from desktop_app.parts_compared.screen.kind_choice import KindChoice
from desktop_app.parts_compared.screen.pair_card import PairCard
from desktop_app.parts_compared.stored_pairs import drawer, pairs_of_job, read_pair
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import save_everything
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label


class OldAndNewSection(Section):
    """Cards of the pairs, oldest first, and the line that begins another one."""

    def __init__(self, desk: Desk, kinds: Mapping[str, PartKind]) -> None:
        super().__init__("Old & New")
        self._desk = desk
        self._kinds = kinds
        self._job_id: int | None = None
        self._cards: dict[int, PairCard] = {}
        self._missing: list[int] = []
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._build_next)
        self._place = QVBoxLayout()
        self._place.setSpacing(14)
        self._none = plain_label(
            "Keep the old part on the bench. Choose what kind of part it is: then the two are "
            "laid side by side, and what to measure is said.",
            "quiet",
            wrap=True,
        )
        self._choice = KindChoice(kinds)
        self._choice.wanted.connect(self._lay)
        self.column.addLayout(self._place)
        self.column.addWidget(self._none)
        self.column.addWidget(self._choice)

    def show_job(self, job: JobView) -> None:
        """Show the pairs of a job; cards that are there already are brought up to date."""
        if self._job_id != job.id:
            self._job_id = job.id
            leaving, self._cards = self._cards, {}
            for card in leaving.values():
                save_everything(card)
                self._let_go(card)
            self._choice.clear()
        pairs = self._desk.ask(pairs_of_job, job.id) or ()
        for gone in set(self._cards) - set(pairs):
            self._let_go(self._cards.pop(gone))
        tools = self._desk.ask(drawer) or {}
        for pair_id in pairs:
            if pair_id in self._cards:
                self._show_pair(pair_id, tools)
        self._missing = [one for one in pairs if one not in self._cards]
        self._none.setVisible(not pairs)
        self._build_next()

    @Slot()
    def _build_next(self) -> None:
        """Build the card of one pair; the next one once the window had its turn."""
        if not self._missing:
            return
        pair_id = self._missing.pop(0)
        self._show_pair(pair_id, self._desk.ask(drawer) or {})
        if self._missing:
            self._later.start(0)

    def _show_pair(self, pair_id: int, tools: Mapping[str, Instrument]) -> None:
        pair = self._desk.ask(read_pair, pair_id)
        if pair is None:
            return
        if pair_id in self._cards:
            self._cards[pair_id].show_pair(pair, tools)
            return
        card = PairCard(self._desk, pair_id, self._kind(pair.part_kind))
        card.show_pair(pair, tools)  # before it is on the page: each part is laid out only once
        self._cards[pair_id] = card
        self._place.insertWidget(sum(one < pair_id for one in self._cards), card)
        card.show()

    def _kind(self, name: str) -> PartKind:
        """Return a kind; one that left the shelf has a name and nothing to measure."""
        bare = PartKind(name, name, (), "", (), "", (), (), (), (), (), (), ())
        return self._kinds.get(name, bare)

    def _let_go(self, card: PairCard) -> None:
        self._place.removeWidget(card)
        card.hide()
        card.setParent(None)
        card.deleteLater()

    @Slot(str, str)
    def _lay(self, kind: str, position: str) -> None:
        if self._job_id is None:
            return
        done = self._desk.do(actions.lay_side_by_side, self._job_id, kind, position)
        if done is None or done.made is None:
            return
        self._choice.clear()
        card = self._cards.get(done.made)
        if card is not None:
            card.begin()
