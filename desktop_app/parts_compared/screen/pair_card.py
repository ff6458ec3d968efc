"""The card of a pair: the removed part and its replacement, from the box label to the verdict."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtWidgets import QApplication, QFrame, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.comparison import PairComparison, PairVerdict
from desktop_app.parts_compared.in_shop_unit import judge_aloud
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.open_steps import open_steps
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_sets.set_reasons import with_set_reasons
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison
from desktop_app.parts_compared.screen.conditions_seen import ConditionsSeen
from desktop_app.parts_compared.screen.pair_facts import PairFacts
from desktop_app.parts_compared.screen.pair_head import PairHead
from desktop_app.parts_compared.screen.pair_photos import PairPhotos
from desktop_app.parts_compared.screen.readings_table import ReadingsTable
from desktop_app.repair_jobs.actions import keep_as_typed
from desktop_app.repair_jobs.parts_in_doubt import PartInDoubt
from desktop_app.repair_jobs.stored_reading import was_answered
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import QuestionLine, save_everything
from desktop_app.shop_window.kept_choice import waiting_choices
from desktop_app.shop_window.refused_drafts import ROW
from desktop_app.shop_window.texts import CautionBox, plain_label


class PairCard(QFrame):
    """Everything about one pair; shown again after each change, and only where it changed.

    `said` carries the verdict in one line while its readings are being typed, `decided` the same
    whenever it may be another one.
    """

    said = Signal(str)
    decided = Signal(str)
    bench_wanted = Signal(int, object, object)  # as PairPhotos says it

    def __init__(self, desk: Desk, pair_id: int, kind: PartKind) -> None:
        super().__init__()
        self.setObjectName("card")
        self._desk = desk
        self._pair_id = pair_id
        self._kind = kind
        self._shown: object = None
        self._line = ""
        self._alone: tuple[PairView, PairComparison] | None = None
        self._sets: tuple[SetComparison, ...] = ()
        self._verdict: PairVerdict | None = None
        self.setAccessibleName(tr("pair: {name}", name=kind.name))
        self.setProperty(ROW, f"pair {pair_id}")
        self._head = PairHead(kind)
        self._head.step_wanted.connect(self._go_to)
        self._head.away.connect(self._take_away)
        self._questions: dict[str, QuestionLine] = {}
        self._question_place = QVBoxLayout()
        self._facts = PairFacts(desk, pair_id, kind)
        self._photos = PairPhotos(desk, pair_id, kind)
        self._photos.bench_wanted.connect(self.bench_wanted)
        self._conditions = ConditionsSeen(desk, pair_id, kind)
        self._readings = ReadingsTable(desk, pair_id, kind)
        self._readings.unread.connect(self._head.say_unread)
        self._readings.in_hand.connect(self._say)
        self._lay_out()

    def show_pair(self, pair: PairView, drawer: Mapping[str, Instrument]) -> None:
        """Show the pair as it is kept now, judged with these instruments."""
        rules = self._desk.rules
        shown = (pair, dict(drawer), rules.length_unit, rules.confidence)
        if self._shown == shown and not waiting_choices(self):
            return  # what waits is sent when it is shown
        self._shown = shown
        self._facts.show_facts(pair)
        self._photos.show_photos(pair)
        self._conditions.show_conditions(pair)
        if not self._kind.dimensions:
            self._head.say_unknown(pair.position, NOT_ON_SHELF)
            return
        judged = judge_aloud(pair, self._kind, drawer, rules.length_unit, rules.confidence)
        self._alone = (pair, judged)
        self._show_verdict()
        self._readings.show_readings(pair, judged, drawer)
        self._ask(judged.questions)

    def origin_field(self) -> QWidget:
        """Return the field that says where the new part comes from."""
        return self._facts.origin_field()

    def keep(self, kept: bool) -> None:
        """Say whether the pair stays as it is: its car has left."""
        self._head.keep(kept)

    def show_sets(self, sets: Sequence[SetComparison]) -> None:
        """Let the sets that the pair belongs to have their say in its verdict."""
        if tuple(sets) != self._sets:
            self._sets = tuple(sets)
            self._show_verdict()

    def where_to_go_on(self) -> QWidget:
        """Return what stands beside the verdict, or where it is said whether the part went on."""
        return self._head.where_to_go_on() or self._facts.fitted_field()

    def in_doubt(self) -> PartInDoubt | None:
        """Return what was decided of a new part that went on, where that is not that it fits."""
        if self._alone is None or self._verdict is None or self._verdict == "fits":
            return None
        if not self._alone[0].fitted:
            return None
        against = self._verdict == "stop and look"
        return PartInDoubt(self._pair_id, self._head.name(), tr(self._verdict), against)

    def _show_verdict(self) -> None:
        if self._alone is not None:
            pair, judged = self._alone
            with_sets = with_set_reasons(judged, self._sets, self._desk.rules.length_unit)
            self._verdict = with_sets.verdict
            steps = open_steps(judged)
            self._head.show_verdict(pair, with_sets, steps)
            self._line = self._head.in_a_line(with_sets, steps)
            self.decided.emit(self._line)
            focus = QApplication.focusWidget()
            if focus is not None and self._readings.isAncestorOf(focus):
                self._say()

    @Slot()
    def _say(self) -> None:
        self.said.emit(self._line)

    def begin(self) -> None:
        """Put the cursor where a new pair begins."""
        if self._kind.dimensions:
            first = next(
                (d for d in self._kind.dimensions if d.essential), self._kind.dimensions[0]
            )
            self._readings.go_to(first.name)
        else:
            self._facts.first_field().setFocus()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(self._head)
        column.addLayout(self._question_place)
        if self._kind.cautions:
            column.addWidget(CautionBox(self._kind.cautions))
        parts: list[tuple[str, QWidget]] = [
            (tr("Photos, by what they show"), self._photos),
            (tr("Seen"), self._conditions),
            (tr("Measured"), self._readings),
            (tr("Where it comes from"), self._facts),
        ]
        if not self._kind.dimensions:
            self._readings.hide()
        for words, widget in parts:
            if words and (widget is not self._readings or self._kind.dimensions):
                column.addWidget(plain_label(words, "heading"))
            column.addWidget(widget)

    def _ask(self, questions: tuple[str, ...]) -> None:
        """Ask about readings that look mistyped, until somebody says they are right."""
        about = f"pair:{self._pair_id}"
        for question, line in self._questions.items():
            if question not in questions:
                line.ask(None)
        for question in questions:
            if question not in self._questions:
                line = QuestionLine()
                line.kept.connect(self._keep)
                self._questions[question] = line
                self._question_place.addWidget(line)
            answered = self._desk.ask(was_answered, about, question)
            self._questions[question].ask(None if answered else question)

    @Slot(str)
    def _keep(self, question: str) -> None:
        self._desk.do(keep_as_typed, f"pair:{self._pair_id}", question)

    @Slot(str)
    def _go_to(self, dimension: str) -> None:
        self._readings.go_to(dimension)

    @Slot()
    def _take_away(self) -> None:
        save_everything(self)
        # The card goes with the deed: not while its own button is still being pressed.
        QTimer.singleShot(0, self, self._away_now)

    @Slot()
    def _away_now(self) -> None:
        self._desk.do(actions.take_pair_away, self._pair_id)


NOT_ON_SHELF = tr(
    "This part kind is not on the shelf any more, so nothing is judged. What was read is kept."
)
