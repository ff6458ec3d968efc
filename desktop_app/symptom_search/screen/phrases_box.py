"""What words mean in this shop: a phrase and its symptom, and the list of those kept so far."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QStringListModel, Qt, Signal, Slot
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QListView,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.written_meanwhile import Shown
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.line_draft import LineDraft
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.off_where_shut import off_where_shut, why_shut
from desktop_app.shop_window.texts import plain_label
from desktop_app.symptom_search.own_phrases import (
    MOST_LETTERS,
    PhraseKept,
    kept_as,
    meant_until_now,
)
from desktop_app.symptom_search.phrase_actions import (
    add_phrase,
    change_phrase,
    take_phrase_away,
)
from desktop_app.symptom_search.screen.list_height import show_lines
from desktop_app.symptom_search.screen.old_jobs import OldJobs
from desktop_app.symptom_search.screen.symptom_choice import LINES, SymptomChoice
from desktop_app.symptom_search.stored_phrases import read_phrases
from desktop_app.symptom_search.untold_words import Untold

_LISTED = tr("This shop's own phrases. Press one to change it or to take it away.")
_NONE = tr("No phrase is the shop's own yet. What is kept here counts with the next letter typed.")
_NOT_OURS = tr("No phrase of the shop's own is written above. Press one in the list first.")


class PhrasesBox(QFrame):
    """One form for new phrases and kept ones: a phrase of the shop in its field is changed.

    `kept` says that a phrase was kept, changed or taken away; `left` that the box was left.
    """

    kept = Signal()
    left = Signal()

    def __init__(self, desk: Desk, old_jobs: OldJobs, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._desk, self._old_jobs = desk, old_jobs
        self._own: tuple[PhraseKept, ...] = ()
        self._offered = ("", "")  # what stands in the form without being typed there
        self._phrase, self._choice = QLineEdit(), SymptomChoice()
        self._hint = plain_label("", "quiet", wrap=True)
        self._over_list = plain_label(_NONE, "quiet", wrap=True)
        self._rows, self._list = QStringListModel(self), QListView()
        self._keep, self._away = QPushButton(tr("Keep")), QPushButton(tr("Take away"))
        self._close = QPushButton(tr("Close"))
        self._build()
        typed = {"phrase": self._phrase, "symptom": self._choice.line}
        self._draft = LineDraft(self, Drafts(desk.record.folder), typed, waits=self._is_typed)
        self._choice.offer(old_jobs.words().groups)
        desk.changed.connect(self._hear)
        self._draft.begin("own phrase")
        self._read()
        off_where_shut(desk, self._keep, self._away)

    def open_for(self, said: Untold) -> None:
        """Offer to say what these words mean; what was typed here already stays."""
        if said.words and self._phrase.text() in ("", self._offered[0]):
            self._offer(said.words[:MOST_LETTERS], said.perhaps)
        self._read()
        self.show()
        if self._phrase.text().strip():
            self._choice.take_focus()
        else:
            self._phrase.setFocus()

    def _is_typed(self) -> bool:
        lines = (self._phrase.text(), self._choice.line.text())
        return any(lines) and lines != self._offered

    def _offer(self, phrase: str, symptom: str) -> None:
        self._phrase.setText(phrase)
        self._choice.choose(symptom)
        self._offered = (self._phrase.text(), self._choice.line.text())
        self._draft.keep()

    def _build(self) -> None:
        self._phrase.setAccessibleName(tr("What customers say"))
        self._phrase.setPlaceholderText(tr("it bucks"))
        self._phrase.setMaxLength(MOST_LETTERS)
        self._phrase.textChanged.connect(self._say)
        self._phrase.returnPressed.connect(self._choice.take_focus)
        self._choice.turned.connect(self._say)
        self._choice.entered.connect(self._press_keep)
        self._keep.setObjectName("next")
        self._keep.setAccessibleName(tr("Keep what it means here"))
        self._keep.clicked.connect(self._press_keep)
        self._away.setAccessibleName(tr("Take this phrase away"))
        self._away.clicked.connect(self._press_away)
        self._close.setAccessibleName(tr("Close the shop's own phrases"))
        self._close.clicked.connect(self._leave)
        self._list.setAccessibleName(tr("The shop's own phrases"))
        self._list.setModel(self._rows)
        self._list.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self._list.clicked.connect(self._take_up)
        self._list.activated.connect(self._take_up)  # by the Enter key
        inside = Qt.ShortcutContext.WidgetWithChildrenShortcut
        left = tr("leaves the shop's own phrases")
        on_key(self, Qt.Key.Key_Escape, left, self._leave, inside)
        self._lay_out()

    def _lay_out(self) -> None:
        says, means = plain_label(tr("When a customer says")), plain_label(tr("it means here"))
        says.setBuddy(self._phrase)
        means.setBuddy(self._choice.line)
        show_lines(self._list, LINES)
        buttons = QHBoxLayout()
        for button in (self._keep, self._away, self._close):
            buttons.addWidget(button)
        left = QVBoxLayout()
        for widget in (says, self._phrase, self._list, self._over_list):
            left.addWidget(widget)
        left.addStretch(1)
        right = QVBoxLayout()
        right.addWidget(means)
        right.addWidget(self._choice)
        right.addLayout(buttons)
        sides = QHBoxLayout()
        sides.setSpacing(12)
        sides.addLayout(left, 1)
        sides.addLayout(right, 1)
        column = QVBoxLayout(self)
        column.addLayout(sides)
        column.addWidget(self._hint)

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if "own_phrase" in done.touched:
            self._read()

    def _read(self) -> None:
        self._own = self._desk.ask(read_phrases) or ()
        shown = self._old_jobs.words().shown
        self._rows.setStringList(
            [
                tr("“{phrase}” means {symptom}", phrase=p.phrase, symptom=shown(p.symptom))
                for p in self._own
            ]
        )
        self._over_list.setText(_LISTED if self._own else _NONE)
        self._list.setVisible(bool(self._own))
        self._say()

    @Slot()
    def _say(self) -> None:
        """Say what the phrase means so far, before anything is kept."""
        phrase, symptom = self._phrase.text(), self._choice.chosen()
        words = self._old_jobs.words()
        same = kept_as(phrase, words, self._own)
        hint = ""
        if same is not None:
            hint = tr(
                "Here it means {symptom}, kept as “{phrase}”.",
                symptom=words.shown(same.symptom),
                phrase=same.phrase,
            )
        elif other := meant_until_now(phrase, symptom, words):
            names = tr(" and ").join(group.shown for group in other)
            hint = tr(
                "So far it is read as {names}; kept here, the shop's meaning holds.", names=names
            )
        self._hint.setText(hint)  # empty it keeps its line, so that nothing below moves
        off_because(self._away, why_shut(self._desk) or ("" if same is not None else _NOT_OURS))

    @Slot()
    def _press_keep(self) -> None:
        phrase, symptom = self._phrase.text(), self._choice.chosen()
        words = self._old_jobs.words()
        same = kept_as(phrase, words, self._own)
        if not symptom:
            self._hint.setText(
                tr("Which symptom? Choose one in its list, or type more of its name.")
            )
            self._choice.take_focus()
        elif same is None:
            self._ended(self._desk.do(add_phrase, words, phrase, symptom))
        else:
            shown = Shown(same.symptom)
            self._ended(self._desk.do(change_phrase, words, same.id, symptom, shown))

    @Slot()
    def _press_away(self) -> None:
        same = kept_as(self._phrase.text(), self._old_jobs.words(), self._own)
        if same is not None:
            self._ended(self._desk.do(take_phrase_away, same.id))

    def _ended(self, done: Done | None) -> None:
        """Empty the form where the deed was done; what was refused stays in it."""
        if done is None:
            self._read()  # another desk may have changed the list
            return
        self._offer("", "")
        self._phrase.setFocus()
        self.kept.emit()

    @Slot(QModelIndex)
    def _take_up(self, index: QModelIndex) -> None:
        kept = self._own[index.row()]
        self._offer(kept.phrase, kept.symptom)
        self._choice.take_focus()

    @Slot()
    def _leave(self) -> None:
        self.hide()
        self.left.emit()
