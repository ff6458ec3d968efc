"""Any mixture of deeds, undo and redo leads back to the states it came from."""

from __future__ import annotations

import tempfile
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule
from sqlalchemy import select

from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.past.history import chain_problems
from desktop_app.shop_record.record import create_shop

NAMES = st.text("abcdef", min_size=1, max_size=3)


class UndoMachine(RuleBasedStateMachine):
    """The record beside two plain lists of whole states."""

    def __init__(self) -> None:
        super().__init__()
        self._folder = tempfile.TemporaryDirectory()
        place = Path(self._folder.name) / "shop"
        self.shop = create_shop(place, lambda: datetime(2026, 11, 16, tzinfo=UTC))
        self.past: list[dict[int, str]] = []
        self.future: list[dict[int, str]] = []

    def people(self) -> dict[int, str]:
        with self.shop.reading() as connection:
            return dict(iter(connection.execute(select(Person.id, Person.name))))

    def do(self, work: Any) -> None:
        before = self.people()
        if self.shop.do("A deed", work).seq is not None:
            self.past.append(before)
            self.future.clear()

    @rule(name=NAMES)
    def add(self, name: str) -> None:
        if name not in self.people().values():
            self.do(lambda deed: deed.add(Person, name=name) and None)

    @rule(data=st.data(), name=NAMES)
    def rename(self, data: st.DataObject, name: str) -> None:
        people = self.people()
        if people and name not in people.values():
            one = data.draw(st.sampled_from(sorted(people)))
            self.do(lambda deed: deed.change(Person, one, name=name))

    @rule(data=st.data())
    def remove(self, data: st.DataObject) -> None:
        people = self.people()
        if people:
            one = data.draw(st.sampled_from(sorted(people)))
            self.do(lambda deed: deed.remove(Person, one))

    @precondition(lambda self: self.past)
    @rule()
    def undo(self) -> None:
        now = self.people()
        self.shop.undo()
        assert self.people() == self.past.pop()
        self.future.append(now)

    @precondition(lambda self: self.future)
    @rule()
    def redo(self) -> None:
        now = self.people()
        self.shop.redo()
        assert self.people() == self.future.pop()
        self.past.append(now)

    @invariant()
    def the_chain_holds(self) -> None:
        with self.shop.reading() as connection:
            assert chain_problems(connection)[1] == []

    def teardown(self) -> None:
        self.shop.close()
        self._folder.cleanup()


UndoMachine.TestCase.settings = settings(max_examples=15, stateful_step_count=20, deadline=None)
TestUndoMachine = UndoMachine.TestCase
