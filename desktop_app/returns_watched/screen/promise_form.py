"""A promise that is changed as a whole: its fields, the button that keeps it, what came of that."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import NamedTuple

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.screen.asked_line import AskedLine
from desktop_app.returns_watched.screen.promise_fields import PromiseFields
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown, WrittenMeanwhile
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.typed_together import TypedTogether
from desktop_app.shop_window.which_of_two import MINE, THEIRS, both, hearing


class Stands(NamedTuple):
    """Whose promise it is, what is kept for it (None: nothing of its own), and what holds now."""

    about: str
    kept: Promise | None
    holds: Promise
    unit: DistanceUnit


class PromiseForm(TypedTogether):
    """What is typed here stays while another desk writes; of two promises a person chooses."""

    def __init__(self, desk: Desk, name: str, keep_words: str, keep: Callable[[], object]) -> None:
        super().__init__()
        self._desk = desk
        self._now: Stands | None = None
        self._shown: Stands | None = None  # what the fields showed before the typing
        self._fields, self._asked = PromiseFields(), AskedLine()
        self._draft = self._fields.draft(Drafts(desk.record.folder), self.unsaved)
        self._told = plain_label("", wrap=True)
        self._keep = keep
        self.setAccessibleName(name)
        button = QPushButton(keep_words)
        button.setAccessibleName(keep_words)
        button.clicked.connect(keep)
        row = QHBoxLayout()
        row.addWidget(button)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._fields)
        column.addLayout(row)
        column.addWidget(self._asked)
        column.addWidget(self._told)

    def show_stands(self, now: Stands) -> None:
        """Show what stands; what is typed for the same stays, in the unit it was begun in."""
        before, self._now = self._shown, now
        if before is None or before.about != now.about:
            self._take(now)
            self._draft.begin(f"promise of {now.about}")
        elif self._is_untouched(before):
            self._take(now)

    def show_unit(self, unit: DistanceUnit) -> None:
        """Say in which unit the distance is typed, while nothing is chosen to be promised."""
        self._fields.show_unit(unit)

    def forget(self) -> None:
        """Let go of what is typed: what is shown next takes its place."""
        self._shown = None
        self._draft.keep()

    def go_on_from_there(self) -> None:
        """Take what stands now, by this desk's own deed, for what the typing began with."""
        self._shown = self._now if self._shown is not None else None

    def about(self) -> str:
        """Return whose promise is shown; empty where none is."""
        return "" if self._shown is None else self._shown.about

    def begin(self) -> None:
        """Put the cursor where the typing begins."""
        self._fields.begin()

    def tell(self, words: str) -> None:
        """Say beneath the fields what came of it."""
        self._told.setText(words)

    def keep_typed(self) -> None:
        """Keep what is typed, as the button does; not while a person is asked which one holds."""
        if self.unsaved() and not self._asked.isVisibleTo(self):
            self._keep()

    def unsaved(self) -> bool:
        """Whether another promise is typed than the one that was shown."""
        return self._shown is not None and not self._is_untouched(self._shown)

    def text(self) -> str:
        """Return what stands in the fields."""
        return self._fields.text()

    def keep(self, deed: Callable[..., Done], *about: object, told: str = tr("Kept")) -> None:
        """Keep what is typed by a deed that is told what the page showed."""
        assert self._shown is not None
        try:
            typed = self._fields.typed()
        except ShopTrouble as trouble:
            self.refuse()
            self.tell(trouble.sentence())
            return
        self._do(deed, about, typed, self._shown, told)

    def _do(
        self,
        deed: Callable[..., Done],
        about: tuple[object, ...],
        promise: Promise,
        shown: Stands,
        told: str,
    ) -> None:
        news: list[WrittenMeanwhile] = []

        heard = hearing(deed, news.append)
        done = self._desk.do(heard, *about, promise, shown=Shown(shown.kept))
        if done is not None:
            now = Stands(shown.about, promise, promise, self._desk.rules.unit_of_distance)
            self._take(now)
            self.tell(
                tr(
                    "{kept}, from now on: {promise}.",
                    kept=told,
                    promise=promise_in_words(promise, now.unit),
                )
            )
        elif news and promise == shown.holds:
            self.tell(news[0].sentence())  # nothing was typed: there is nothing to choose
        elif news:
            self._ask_which(news[0], partial(self._do, deed, about, promise), promise, told)

    def _ask_which(
        self, news: WrittenMeanwhile, again: Callable[..., None], promise: Promise, told: str
    ) -> None:
        unit = self._desk.rules.unit_of_distance

        def mine() -> None:
            assert self._now is not None
            again(self._now, told)

        def theirs() -> None:
            assert self._now is not None
            self._take(self._now)

        self._asked.ask(both(news, promise_in_words(promise, unit)), {MINE: mine, THEIRS: theirs})

    def _take(self, stands: Stands) -> None:
        """Show a promise in place of what was typed."""
        self._shown = self._now = stands
        self._fields.show_unit(stands.unit)
        self._fields.show_promise(stands.holds)
        self._asked.put_away()
        self._draft.look_again()

    def _is_untouched(self, shown: Stands) -> bool:
        try:
            return self._fields.typed() == shown.holds
        except ShopTrouble:
            return False
