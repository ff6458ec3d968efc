"""The head of a pair: does the replacement fit, why, and what to do next."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_numbers import numbers_differ
from desktop_app.parts_compared.signs import PAIR_SIGNS
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.long_button import LongButton
from desktop_app.shop_window.tab_order import NEVER_FIRST
from desktop_app.shop_window.texts import plain_label

FIRST_REASONS = 3


class PairHead(QFrame):
    """Kind and position, the verdict in large letters, the first reasons, the next steps."""

    step_wanted = Signal(str)  # the dimension to measure
    away = Signal()

    def __init__(self, kind: PartKind) -> None:
        super().__init__()
        self._kind, self._name = kind, kind.name
        self._title = plain_label(kind.name, "heading", wrap=True)
        self._verdict: QLabel = plain_label("", "title", wrap=True)
        self._unread = plain_label("", wrap=True)
        self._unread.hide()
        self._reasons = plain_label("", wrap=True)
        self._all = QPushButton(tr("All reasons"))
        self._all.setCheckable(True)
        self._all.setAccessibleName(tr("All reasons, {name}", name=kind.name))
        self._all.toggled.connect(self._show_reasons)
        self._said: tuple[str, ...] = ()
        self._first: tuple[str, ...] = ()
        self._steps = QVBoxLayout()
        self._steps.setSpacing(4)
        self._steps_shown: list[tuple[str, str]] = []
        self._first_step: LongButton | None = None
        self._away = QPushButton(tr("Take the pair away"))
        self._away.setAccessibleName(tr("Take the pair away: {name}", name=kind.name))
        self._away.setProperty(NEVER_FIRST, True)  # Enter right after a jump must not take it away
        self._away.clicked.connect(self.away)
        top = QHBoxLayout()
        top.addWidget(self._title, 1)
        top.addWidget(self._away)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(top)
        column.addWidget(self._verdict)
        column.addWidget(self._unread)
        column.addLayout(self._steps)
        reasons = QHBoxLayout()
        reasons.addWidget(self._reasons, 1)
        reasons.addWidget(self._all)
        column.addLayout(reasons)

    def show_verdict(
        self,
        pair: PairView,
        judged: PairComparison,
        steps: Sequence[tuple[str, str]],
    ) -> None:
        """Show what came out; `steps` are (dimension, words) of what to do next."""
        self._say_title(pair.position)
        self._verdict.setText(f"{PAIR_SIGNS[judged.verdict]}  {tr(judged.verdict)}")
        self._verdict.setAccessibleName(
            tr("verdict on the {name}: {verdict}", name=self._name, verdict=tr(judged.verdict))
        )
        differ = numbers_differ(pair.number_on_box, pair.number_on_part)
        reasons = [f"–  {one}" for one in judged.reasons if one not in judged.questions]
        self._said = (*([f"≠  {differ}"] if differ else []), *reasons)
        # What is not measured yet stands above already, as what to do next.
        missing = {f"–  {d.sentence}" for d in judged.dimensions if d.verdict == "not measured"}
        self._first = tuple(one for one in self._said if one not in missing)[:FIRST_REASONS]
        self._all.setVisible(0 < len(self._first) < len(self._said))
        self._show_reasons(self._all.isChecked())
        if list(steps) != self._steps_shown:
            self._steps_shown = list(steps)
            self._build_steps()

    def in_a_line(self, judged: PairComparison, steps: Sequence[tuple[str, str]]) -> str:
        """Return the verdict in one line: its sign and words, and the first thing to know."""
        why = ""
        if judged.verdict == "not enough measured" and steps:
            why = f"→ {steps[0][1]}"
        elif judged.verdict == "stop and look":
            why = next((one for one in judged.reasons if one not in judged.questions), "")
        sign = PAIR_SIGNS[judged.verdict]
        return f"{sign}  {self._title.text()}: {tr(judged.verdict)}.  {why}".rstrip()

    def name(self) -> str:
        """Return what the pair is called: its kind, and where on the car it is."""
        return self._title.text()

    def where_to_go_on(self) -> QWidget | None:
        """Return what to press beside the verdict: the first step, else all that was decided."""
        if self._first_step is not None:
            return self._first_step
        return None if self._all.isHidden() else self._all

    @Slot(int)
    def say_unread(self, fields: int) -> None:
        """Say beside the verdict that something typed is not part of it."""
        words = (
            tr("✎  One entry below can't be read and is not in this verdict. Mend it first.")
            if fields == 1
            else tr(
                "✎  {entries} entries below can't be read and are not in this verdict. "
                "Mend it first.",
                entries=fields,
            )
        )
        self._unread.setText(words if fields else "")
        self._unread.setVisible(bool(fields))

    def keep(self, kept: bool) -> None:
        """Let nobody take the pair away by a slip of the hand once the car has left."""
        self._away.setVisible(not kept)

    def say_unknown(self, position: str, words: str) -> None:
        """Say why nothing is judged."""
        self._say_title(position)
        self._verdict.setText(tr("◌  not judged"))
        self._said = self._first = (words,)
        self._all.hide()
        self._show_reasons(False)

    def _say_title(self, position: str) -> None:
        place = self._kind.place_said(position)
        words = f"{self._name}, {place}" if place else self._name
        self._title.setText(words[:1].upper() + words[1:])

    def _build_steps(self) -> None:
        empty(self._steps)
        self._first_step = None
        for dimension, words in self._steps_shown[:FIRST_REASONS]:
            button = LongButton(f"→  {words}")
            button.setAccessibleName(tr("Next: {words}", words=words))
            button.setProperty("dimension", dimension)
            button.clicked.connect(self._press)
            self._steps.addWidget(button)
            self._first_step = self._first_step or button
        more = len(self._steps_shown) - FIRST_REASONS
        if more > 0:
            words = (
                tr("Then 1 more thing is to do.")
                if more == 1
                else tr("Then {more} more things are to do.", more=more)
            )
            self._steps.addWidget(plain_label(words, "quiet"))

    @Slot(bool)
    def _show_reasons(self, all_of_them: bool) -> None:
        shown = self._said if all_of_them else self._first
        self._reasons.setText("\n".join(shown))
        self._reasons.setVisible(bool(shown))

    @Slot()
    def _press(self) -> None:
        self.step_wanted.emit(str(self.sender().property("dimension")))
