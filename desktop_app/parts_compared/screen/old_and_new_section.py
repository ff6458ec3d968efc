"""Old & New: the comparison bench of a job, a card for each pair of parts."""

from __future__ import annotations

from collections.abc import Mapping
from functools import partial

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.screen.kind_choice import KindChoice
from desktop_app.parts_compared.screen.pair_card import PairCard
from desktop_app.parts_compared.screen.set_card import SetCard
from desktop_app.parts_compared.screen.sum_bench import SumBench
from desktop_app.parts_compared.stored_pairs import drawer, pairs_of_job, read_pair
from desktop_app.parts_compared.stored_sets import sets_of_pairs
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.parts_in_doubt import PART
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import save_everything
from desktop_app.shop_window.lost_words import GONE, LEFT, let_go
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.saves_itself import tell_page
from desktop_app.shop_window.texts import plain_label


class OldAndNewSection(Section):
    """Cards of the pairs, oldest first, and the line that begins another one.

    `said` carries the verdict on the pair in hand, for where it stays in view; `doubted` the job
    and its parts in doubt, once all are judged; `bench_wanted` a pair with the photos of its
    removed part and its replacement (ids, or None) to measure in.
    """

    said = Signal(str)
    doubted = Signal(int, object)  # tuple of PartInDoubt
    bench_wanted = Signal(int, object, object)

    def __init__(self, desk: Desk, kinds: Mapping[str, PartKind]) -> None:
        super().__init__(tr("Old & New"))
        self._desk = desk
        self._kinds = kinds
        self._job_id: int | None = None
        self._number = ""
        self._cards: dict[int, PairCard] = {}
        self._in_hand: int | None = None  # the pair whose verdict stays in view
        self._missing: list[int] = []
        self._left = False
        self._tools: Mapping[str, Instrument] = {}
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._build_next)
        self._place = QVBoxLayout()
        self._place.setSpacing(14)
        self._none = plain_label(
            tr(
                "Keep the old part on the bench. Choose what kind of part it is: then the "
                "two are laid side by side, and what to measure is said."
            ),
            "quiet",
            wrap=True,
        )
        self._sums = SumBench(desk)
        self._sets: dict[str, SetCard] = {}
        self._together = QVBoxLayout()
        self._together.setSpacing(14)
        self._pairs: dict[int, PairView] = {}
        self._choice = KindChoice(kinds, Drafts(desk.record.folder))
        self._choice.wanted.connect(self._lay)
        self.column.addLayout(self._place)
        self.column.addLayout(self._together)
        self.column.addWidget(self._none)
        self.column.addWidget(self._choice)
        self.column.addWidget(self._sums)

    def show_job(self, job: JobView) -> None:
        """Show the pairs of a job; cards that are there already are brought up to date."""
        if self._job_id != job.id:
            self._job_id = job.id
            leaving: list[QWidget] = [*self._cards.values(), *self._sets.values()]
            self._cards, self._sets, self._pairs = {}, {}, {}
            self._in_hand = None
            for card in leaving:
                save_everything(card)
                self._let_go(card, LEFT)
            self._choice.begin(job.id)
        self._number, self._left = job.number, job.left_at is not None
        for card in self._cards.values():
            card.keep(self._left)
        pairs = self._desk.ask(pairs_of_job, job.id)
        if pairs is None and self._cards:
            return  # what can't be read just now is not gone
        pairs = pairs or ()
        self._pairs = {one: self._pairs[one] for one in pairs if one in self._pairs}
        for gone in set(self._cards) - set(pairs):
            self._let_go(self._cards.pop(gone))
            if gone == self._in_hand:
                self.said.emit("")
        self._tools = self._desk.ask(drawer) or {}
        for pair_id in pairs:
            if pair_id in self._cards:
                self._show_pair(pair_id)
        self._missing = [one for one in pairs if one not in self._cards]
        self._none.setVisible(not pairs)
        self._build_next()

    @Slot()
    def _build_next(self) -> None:
        """Build the card of one pair; the next one once the window had its turn."""
        if self._missing:
            pair_id = self._missing.pop(0)
            self._show_pair(pair_id)
        if self._missing:
            self._later.start(0)
        else:
            self._show_together()

    def _show_together(self) -> None:
        """Show what follows from the pairs together, once all of them are there."""
        if self._job_id is not None:
            self._show_sets(self._job_id)
            on = [one for one in self._pairs.values() if one.fitted]
            read = [(self._kind(one.part_kind), one.readings) for one in on]
            self._sums.show_sums(self._job_id, read)
            doubts = (self._cards[one].in_doubt() for one in sorted(self._cards))
            self.doubted.emit(self._job_id, tuple(one for one in doubts if one is not None))

    def _show_sets(self, job_id: int) -> None:
        """Show the sets that the pairs make, and let each pair's verdict hear of its own."""
        laid = tuple(self._pairs.values())
        sets = self._desk.ask(sets_of_pairs, job_id, laid, self._kinds, self._tools) or ()
        for gone in set(self._sets) - {one.key for one in sets}:
            self._let_go(self._sets.pop(gone))
        for one in sets:
            if one.key not in self._sets:
                card = SetCard(self._desk, one.judged.part_set, one.position)
                self._sets[one.key] = card
                self._together.addWidget(card)
                card.show()
                card.show_set(one)
                tell_page(card, "part_came", card)
            self._sets[one.key].show_set(one)
        for pair_id, pair_card in self._cards.items():
            pair_card.show_sets([one.judged for one in sets if pair_id in one.pair_ids])

    def answer_field(self, about: str, pair_id: int | None) -> QWidget | None:
        """Return where it is said from where the new part of a pair comes, or the pair itself."""
        card = None if pair_id is None else self._cards.get(pair_id)
        if card is None:
            return None
        if about == PART:
            return card.where_to_go_on()
        return card.origin_field() if about == "origin" else None

    def keep_draft(self) -> None:
        """Keep what is only typed into a form."""
        self._sums.keep_draft()
        self._choice.keep_draft()

    def _show_pair(self, pair_id: int) -> None:
        pair = self._desk.ask(read_pair, pair_id)
        if pair is None:
            return
        self._pairs[pair_id] = pair
        if pair_id in self._cards:
            self._cards[pair_id].show_pair(pair, self._tools)
            return
        card = PairCard(self._desk, pair_id, self._kind(pair.part_kind))
        card.said.connect(partial(self._take_in_hand, pair_id))
        card.decided.connect(partial(self._say_again, pair_id))
        card.bench_wanted.connect(self.bench_wanted)
        card.keep(self._left)
        card.show_pair(
            pair, self._tools
        )  # before it is on the page: each part is laid out only once
        self._cards[pair_id] = card
        older = max((one for one in self._cards if one < pair_id), default=None)
        place = 0 if older is None else self._place.indexOf(self._cards[older]) + 1
        self._place.insertWidget(place, card)
        card.show()
        tell_page(card, "part_came", card)

    def _take_in_hand(self, pair_id: int, line: str) -> None:
        self._in_hand = pair_id
        self.said.emit(line)

    def _say_again(self, pair_id: int, line: str) -> None:
        """Let what stays in view follow what is decided by now."""
        if pair_id == self._in_hand:
            self.said.emit(line)

    def _kind(self, name: str) -> PartKind:
        """Return a kind; one that left the shelf has a name and nothing to measure."""
        bare = PartKind(name, name, (), "", (), "", (), (), (), (), (), (), ())
        return self._kinds.get(name, bare)

    def _let_go(self, card: QWidget, said: str = GONE) -> None:
        column = self._place if isinstance(card, PairCard) else self._together
        let_go(
            self._desk,
            column,
            card,
            tr(
                "“{card}” of {number}",
                card=card.accessibleName(),
                number=self._number,
            ),
            said,
        )

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
            QTimer.singleShot(0, card, card.begin)  # once more when the page has its height
