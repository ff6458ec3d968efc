"""A shop at two desks beside a plain list of whole states: what undo and redo must lead to."""

from __future__ import annotations

import tempfile
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from hypothesis import note
from hypothesis.control import currently_in_test_context

from desktop_app.commands.shop_place import kinds_of, open_place
from desktop_app.commands.whole_check import whole_check
from desktop_app.job_history.take_back_actions import undo_from_here
from desktop_app.shop_record.checks.problem import Checked
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.past.history import done_in, last_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.stored_index import JobIndex
from tests.undo_machine.deeds_to_do import Chooser, Given, Pick, Seen
from tests.undo_machine.furnished_shop import WallClock, put_furnished_shop
from tests.undo_machine.whole_state import (
    SEARCH,
    State,
    differences,
    state_of,
    with_taken_back,
    without_search,
)


@dataclass(slots=True)
class Step:
    """One entry of the history with the whole states before and after it.

    None where the shop was furnished with it: those states nobody saw.
    """

    seq: int
    before: State | None
    after: State | None


class ShopUnderTest:
    """Two desks in a copy of the furnished shop; all that they do is held against whole states."""

    def __init__(self) -> None:
        self._temporary = tempfile.TemporaryDirectory()
        self._folder = Path(self._temporary.name) / "shop"
        put_furnished_shop(self._folder)
        self.clock = WallClock()
        self.desks = [self._opened(who) for who in ("Ana", "Bo")]
        self.state = state_of(self.desks[0])
        self.entries = self._entries()
        self.past = [Step(seq, None, None) for seq in range(1, self.entries + 1)]
        self.future: list[Step] = []
        self.refused = ""  # why the last deed was refused
        self._indexes: dict[str, JobIndex] = {}  # by the shop's own kinds: they name the parts

    def do(self, deed: Callable[..., Any], choose: Chooser, desk: int, pick: Pick) -> bool:
        """Do a deed at a desk; tell whether it was accepted and changed something."""
        return self._do(deed, choose(Seen(self.desks[desk], self.state, pick)), desk)

    def do_on_gone_rows(self, deed: Callable[..., Any], choose: Chooser, pick: Pick) -> bool:
        """Do a deed of a page whose rows were all taken out at another desk."""
        nothing: State = {table: {} for table in self.state}
        return self._do(deed, choose(Seen(self.desks[0], nothing, pick)), 0)

    def _do(self, deed: Callable[..., Any], given: Given, desk: int) -> bool:
        record = self.desks[desk]
        _say(f"desk {desk}: {deed.__name__}{given.args} {given.named}")
        step = self._done(lambda: deed(record, *given.args, **given.named))
        if step is None:
            return False
        self.past.append(step)
        self.future.clear()
        return True

    def undo(self, desk: int) -> None:
        """Take the last deed back: all is as it was before."""
        if not self.past:
            self._is_refused(self.desks[desk].undo, "There is nothing to undo.")
            return
        step = self._done(self.desks[desk].undo)
        assert step is not None, "what was done last can always be undone"
        self._undone(step)

    def redo(self, desk: int) -> None:
        """Bring the last deed back that was undone: all is as it was after it."""
        if not self.future:
            self._is_refused(self.desks[desk].redo, "There is nothing to redo.")
            return
        step = self._done(self.desks[desk].redo)
        assert step is not None, "what was undone last can always be brought back"
        self._redone(step)

    def take_back(self, seq: int, desk: int) -> None:
        """Take an entry back, however old: refused where it was changed since, else as before it.

        One at the end of what can be undone or redone counts as that.
        """
        _say(f"desk {desk}: take back entry {seq} of {self.entries}")
        with self.desks[0].reading() as connection:
            changes, bulk = done_in(connection, seq)
        told = all(one.gone is None for one in bulk)
        wanted = with_taken_back(self.state, changes, bulk) if told else None
        step = self._done(lambda: undo_from_here(self.desks[desk], seq))
        if step is None:
            if wanted is not None and wanted != without_search(self.state):
                assert "hangs on it" in self.refused, "refused, though nothing stood against it"
            return
        if told:
            assert wanted is not None, "taken back, though it was changed since"
            _same(wanted, without_search(self.state))
        if self.past and self.past[-1].seq == seq:
            self._undone(step)
        elif self.future and self.future[-1].seq == seq:
            self._redone(step)
        else:
            self.past.append(step)
            self.future.clear()

    def close_and_open(self, desk: int) -> None:
        """Close the shop at a desk and open it again: nothing is another."""
        self._open_anew(desk)
        self._is(state_of(self.desks[desk]))

    def offers_what_it_does(self) -> None:
        """Undo and redo are offered where there is something to take back or to bring back."""
        undo, redo = self.desks[self.entries % 2].undo_and_redo()
        assert (undo is not None) == bool(self.past)
        assert (redo is not None) == bool(self.future)

    def checked(self) -> Checked:
        """Check the whole shop."""
        steps = whole_check(self.desks[1])
        while True:
            try:
                next(steps)
            except StopIteration as end:
                found: Checked = end.value
                return found

    def close(self) -> None:
        """Close both desks and throw the shop away."""
        for record in self.desks:
            record.close()
        self._temporary.cleanup()

    def _open_anew(self, *desks: int) -> None:
        for desk in desks or range(len(self.desks)):
            who = self.desks[desk].who
            self.desks[desk].close()
            self.desks[desk] = self._opened(who)

    def _opened(self, who: str) -> ShopRecord:
        record = open_place(self._folder, self.clock)
        record.who = who
        return record

    def _done(self, work: Callable[[], Any]) -> Step | None:
        """Let something be done; None where it was refused, or changed nothing."""
        before, self.refused = self.state, ""
        try:
            done = work()
        except ShopTrouble as trouble:
            self._changed_nothing(trouble)
            return None
        after, entries = state_of(self.desks[0]), self._entries()
        if isinstance(done, Done):
            assert done.seq in (None, entries)
            assert (done.seq is None) == (entries == self.entries)
        if entries == self.entries:
            self._is(after)
            return None
        assert entries == self.entries + 1, "a deed is one entry"
        self.state, self.entries = after, entries
        self._search_is_in_step()
        return Step(entries, before, after)

    def _undone(self, step: Step) -> None:
        last = self.past.pop()
        if last.before is not None:
            self._is(last.before)
        self.future.append(Step(step.seq, self.state, step.before))

    def _redone(self, step: Step) -> None:
        last = self.future.pop()
        if last.after is not None:
            self._is(last.after)
        self.past.append(Step(step.seq, last.before, self.state))

    def _changed_nothing(self, trouble: ShopTrouble) -> None:
        _say(f"  refused: {trouble}")
        self.refused = trouble.what
        assert self.refused.strip()
        assert self._entries() == self.entries
        self._is(state_of(self.desks[0]))

    def _is_refused(self, work: Callable[[], Any], why: str) -> None:
        with pytest.raises(ShopTrouble) as refused:
            work()
        assert refused.value.what == why

    def _is(self, wanted: State) -> None:
        _same(wanted, self.state)

    def _entries(self) -> int:
        with self.desks[0].reading() as connection:
            return last_number(connection)

    def _search_is_in_step(self) -> None:
        own = str(self.state["own_kind"])
        with self.desks[0].reading() as connection:
            if own not in self._indexes:
                self._indexes[own] = JobIndex(kinds_of(self.desks[0], connection))
            texts = self._indexes[own].texts(connection, sorted(self.state["job"]))
        fresh = {job: words._asdict() for job, words in texts.items()}
        _same({SEARCH: fresh}, {SEARCH: self.state[SEARCH]})


def _same(wanted: State, found: State) -> None:
    differ = differences(wanted, found)
    assert not differ, differ


def _say(words: str) -> None:
    """Say what is done, in the report of an example that failed."""
    if currently_in_test_context():
        note(words)
