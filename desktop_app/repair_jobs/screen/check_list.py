"""A list of checks, each with two big buttons: done, or not needed here."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import marked, tr
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_checks import check_sentence, check_words
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.kept_choice import put_back
from desktop_app.shop_window.signed_button import SignedButton
from desktop_app.shop_window.texts import plain_label

NO_HEADINGS: Mapping[str, str] = {}
# As they are kept, and the sign of each that was given.
OUTCOMES = ((marked("done"), "✓"), (marked("not needed"), "–"))


class AnswerButton(SignedButton):
    """An answer to a check; `by_key` says that a key gave it, not the mouse."""

    by_key = Signal()

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        before = self.isChecked()
        super().keyReleaseEvent(event)
        if self.isChecked() and not before:
            self.by_key.emit()


class CheckList(QWidget):
    """Checks of one kind (`refit` or `proof`); `hurts` marks those that guard against injury.

    Where they are done in several places, `headings` say of a check which begins with it.
    Who answers with a key comes to the next check that has no answer: one key for each.
    """

    def __init__(self, desk: Desk, kind: str) -> None:
        super().__init__()
        self._desk = desk
        self._kind = kind
        self._job_id: int | None = None
        self._lines: dict[str, dict[str, QPushButton]] = {}
        self._shown: tuple[tuple[str, bool], ...] = ()
        self._headings = NO_HEADINGS
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(4)

    def show_checks(
        self,
        job: JobView,
        checks: Sequence[tuple[str, bool]],
        headings: Mapping[str, str] = NO_HEADINGS,
    ) -> None:
        """Show the checks (words as kept, hurts) and what was ticked of them."""
        self._job_id = job.id
        if tuple(checks) != self._shown or headings != self._headings:
            self._shown, self._headings = tuple(checks), headings
            self._build()
        outcomes = job.ticked(self._kind, self._lines)
        for words, buttons in self._lines.items():
            for outcome, button in buttons.items():
                button.setChecked(outcomes[words] == outcome)

    def unticked(self) -> tuple[str, ...]:
        """Return the words of the checks that have no answer."""
        return tuple(
            words
            for words, buttons in self._lines.items()
            if not any(b.isChecked() for b in buttons.values())
        )

    def _build(self) -> None:
        empty(self._column)
        self._lines = {}
        for words, hurts in self._shown:
            if words in self._headings:
                self._column.addWidget(plain_label(self._headings[words], wrap=True))
            says, sentence = check_words(words), check_sentence(words)
            line = QWidget()
            row = QHBoxLayout(line)
            row.setContentsMargins(0, 0, 0, 0)
            row.addWidget(plain_label(f"⚠  {sentence}" if hurts else sentence, wrap=True), 1)
            self._lines[words] = {}
            for outcome, sign in OUTCOMES:
                button = AnswerButton(tr(outcome), sign)
                button.setAccessibleName(f"{says}: {tr(outcome)}")
                button.setProperty("words", words)
                button.setProperty("outcome", outcome)
                button.clicked.connect(self._press)
                button.by_key.connect(self._go_on)
                self._lines[words][outcome] = button
                row.addWidget(button)
            self._column.addWidget(line)

    @Slot()
    def _press(self) -> None:
        button = self.sender()
        assert isinstance(button, QPushButton)
        if self._job_id is None:
            return
        outcome = str(button.property("outcome")) if button.isChecked() else ""
        words = str(button.property("words"))
        if self._desk.do(actions.tick_check, self._job_id, self._kind, words, outcome) is None:
            put_back(button, not button.isChecked())

    @Slot()
    def _go_on(self) -> None:
        """Put the cursor on the next check without an answer, further down first."""
        words = list(self._lines)
        here = words.index(str(self.sender().property("words")))
        button = self._open_one(words[here + 1 :] + words[:here])
        if button is not None:
            button.setFocus(Qt.FocusReason.TabFocusReason)
            bring_up(button)

    def show_open(self) -> bool:
        """Bring the first check without an answer into sight; False where there is none.

        The cursor is not put on an answer there: whoever types on would give it unawares.
        """
        button = self.open_answer()
        if button is not None:
            bring_up(button)
        return button is not None

    def open_answer(self) -> QPushButton | None:
        """Return where the first check is answered that has no answer; None where there is none."""
        return self._open_one(self._lines)

    def _open_one(self, words: Iterable[str]) -> QPushButton | None:
        left = self.unticked()
        following = next((one for one in words if one in left), None)
        return None if following is None else self._lines[following]["done"]
