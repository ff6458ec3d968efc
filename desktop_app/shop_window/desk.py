"""The desk: the window's side of the record, for doing deeds and hearing what changed."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from datetime import date, datetime
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.past.deed_words import deed_words
from desktop_app.shop_record.past.history import last_number
from desktop_app.shop_record.past.long_reverse import next_is_long
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import NotSaved, ShopTrouble
from desktop_app.shop_record.written_meanwhile import WrittenMeanwhile
from desktop_app.shop_window.errands import Errands
from desktop_app.shop_window.long_undo import LongUndo


class Desk(QObject):
    """Does deeds on the record and says what changed (`changed`) or what went wrong (`told`)."""

    changed = Signal(object)  # Done
    told = Signal(object)  # ShopTrouble, or a plain sentence
    waits = Signal()  # something waits for the server, or waits no more
    named = Signal(str)  # who is at the desk from now on; "" for nobody
    names_wanted = Signal()  # a person looks for where the shop's people are named
    was_shut = Signal()  # nothing can be written any more; `why_shut` says why
    closing = Signal()  # the window goes: what still listens or waits ends now

    def __init__(self, record: ShopRecord, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.record = record
        self.why_shut: ShopTrouble | None = None
        self.not_saved: NotSaved | None = None  # why nothing can be saved, until something is
        self._quiet = False
        self.errands = Errands(self)
        self.errands.told.connect(self.told)
        self._rules: HouseRules | None = None
        self._rules_of = 0  # the last number of the history when they were read
        self._looks_again = False
        self._long: LongUndo | None = None
        record.hurry()
        self.closing.connect(self._hurry_all)

    @property
    def rules(self) -> HouseRules:
        """The shop's house rules, as the pages show them.

        What another desk changed is heard with the next deed here, else right after this event:
        `changed` comes before anything is read by the new rules.
        """
        if self._rules is None:
            with self.record.reading() as connection:
                self._rules_of, self._rules = last_number(connection), read_rules(connection)
        elif not self._looks_again:
            self._looks_again = True
            QTimer.singleShot(0, self, self._look_again)
        return self._rules

    @Slot()
    def _look_again(self) -> None:
        self._looks_again = False
        touched = self._changed_elsewhere()
        if touched:
            self.changed.emit(
                Done(tr("The house rules were changed at another desk"), touched, None)
            )

    def _changed_elsewhere(self) -> frozenset[str]:
        """Read the rules again where the history went on, and name what pages must show anew."""
        before = self._rules
        # Busy or damaged: whoever reads the record next says so.
        with suppress(ShopTrouble), self.record.reading() as connection:
            last = last_number(connection)
            if before is not None and last != self._rules_of:
                self._rules_of, self._rules = last, read_rules(connection)
        return frozenset() if self._rules == before else frozenset({"setting"})

    def name(self, who: str) -> None:
        """Say who is at the desk: what is done from now on carries the name."""
        if who != self.record.who:
            self.record.who = who
            self.named.emit(who)

    def shut(self, why: ShopTrouble) -> None:
        """Say that nothing can be written into this shop any more, until it is opened again."""
        self.why_shut = why
        self.was_shut.emit()

    def now(self) -> datetime:
        """Return the moment by the record's clock."""
        return self.record.clock()

    def today(self) -> date:
        """Return the day by the record's clock."""
        return self.record.clock().date()

    def do(self, deed: Callable[..., Done], *args: Any, **more: Any) -> Done | None:
        """Do a deed of an `actions` file; None where it was refused (the notice strip says why)."""
        return self._try(lambda: deed(self.record, *args, **more))

    def undo(self) -> Done | None:
        """Take the last deed back; one that takes long beside the window: it is told at its end."""
        return self._reverse(0, self.record.undo)

    def redo(self) -> Done | None:
        """Bring the undone deed back, as `undo` takes it back."""
        return self._reverse(1, self.record.redo)

    def ask(self, read: Callable[..., Any], *args: Any) -> Any:
        """Read from the record: `read(connection, *args)`; None (and a notice) where that fails."""
        try:
            with self.record.reading() as connection:
                return read(connection, *args)
        except ShopTrouble as trouble:
            self.told.emit(trouble)
            return None

    def _reverse(self, which: int, reverse: Callable[..., Done]) -> Done | None:
        if self._long is not None:
            self.told.emit(
                ShopTrouble(
                    tr("“{words}” is under way.", words=self._long.words), do=tr("Wait for it.")
                )
            )
            return None
        if not self.ask(next_is_long, which, self.record.undoes_of):
            return self._try(reverse)
        words = deed_words(self.record.undo_and_redo()[which] or "")

        def ended(done: Done | None) -> None:
            self._long = None
            if done is not None:
                self._tell_change(done)
                undone = tr("Undone: {words}.", words=words)
                self.told.emit(tr("Done again: {words}.", words=words) if which else undone)
            elif beside.stopped():
                self.told.emit(tr("Stopped. Nothing was changed."))

        said = tr("Redo: {words}", words=words) if which else tr("Undo: {words}", words=words)
        beside = self._long = LongUndo(self.errands, said, reverse, ended)
        return None

    @contextmanager
    def quietly(self) -> Iterator[None]:
        """Try something again: that it can't be saved is told already."""
        self._quiet = True
        try:
            yield
        finally:
            self._quiet = False

    @Slot()
    def _hurry_all(self) -> None:
        self.record.hurry(everybody=True)

    def _try(self, work: Callable[[], Done]) -> Done | None:
        try:
            done = work()
        except ShopTrouble as trouble:
            if isinstance(trouble, NotSaved):
                self.not_saved = trouble
            if not (self._quiet and isinstance(trouble, NotSaved)):
                self.told.emit(trouble)
            if isinstance(trouble, WrittenMeanwhile) and trouble.tables:
                touched = trouble.tables | self._changed_elsewhere()
                self.changed.emit(Done(trouble.what, touched, None))
            return None
        self.not_saved = None
        self._tell_change(done)
        return done

    def _tell_change(self, done: Done) -> None:
        if done.seq is not None:
            self.changed.emit(done._replace(touched=done.touched | self._after(done)))

    def _after(self, done: Done) -> frozenset[str]:
        """Return what else pages must show anew after a deed; most often nobody was in between."""
        if done.seq == self._rules_of + 1 and "setting" not in done.touched:
            self._rules_of += 1
            return frozenset()
        return self._changed_elsewhere()
