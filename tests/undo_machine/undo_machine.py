"""The machine: deeds in any order at two desks, undo, redo, old entries taken back."""

from __future__ import annotations

import os

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, rule

from tests.undo_machine.deeds_to_do import Deeds
from tests.undo_machine.rooms import EVERYTHING
from tests.undo_machine.shop_under_test import ShopUnderTest

LONG = os.environ.get("BENCHWITNESS_LONG") == "1"
SETTINGS = settings(
    max_examples=400 if LONG else 5,
    stateful_step_count=60 if LONG else 30,
    derandomize=not LONG,
    deadline=None,
    database=None,
    suppress_health_check=list(HealthCheck),
)
DESKS = st.integers(0, 1)


class UndoMachine(RuleBasedStateMachine):
    """Deeds of one room most of the time, those of all others between."""

    room: Deeds = EVERYTHING

    def __init__(self) -> None:
        super().__init__()
        self.shop = ShopUnderTest()

    @rule(data=st.data(), desk=DESKS)
    def do_something_here(self, data: st.DataObject, desk: int) -> None:
        self._do(self.room, data, desk)

    @rule(data=st.data(), desk=DESKS)
    def do_something_more_here(self, data: st.DataObject, desk: int) -> None:
        self._do(self.room, data, desk)

    @rule(data=st.data(), desk=DESKS)
    def do_something_anywhere(self, data: st.DataObject, desk: int) -> None:
        self._do(EVERYTHING, data, desk)

    @rule(desk=DESKS)
    def undo(self, desk: int) -> None:
        self.shop.undo(desk)

    @rule(desk=DESKS)
    def redo(self, desk: int) -> None:
        self.shop.redo(desk)

    @rule(data=st.data(), desk=DESKS)
    def take_back(self, data: st.DataObject, desk: int) -> None:
        back = data.draw(st.integers(0, min(12, self.shop.entries - 1)))
        self.shop.take_back(self.shop.entries - back, desk)

    @rule(desk=DESKS)
    def close_and_open(self, desk: int) -> None:
        self.shop.close_and_open(desk)

    @rule(days=st.sampled_from([1, 20, 120]))
    def days_go_by(self, days: int) -> None:
        self.shop.clock.go_on(days)

    @invariant()
    def what_is_offered_can_be_done(self) -> None:
        self.shop.offers_what_it_does()

    def teardown(self) -> None:
        try:
            assert [one for one in self.shop.checked().problems if one.lost] == []
        finally:
            self.shop.close()

    def _do(self, deeds: Deeds, data: st.DataObject, desk: int) -> None:
        def pick(of: int) -> int:
            return int(data.draw(st.integers(0, of - 1)))

        deed = list(deeds)[pick(len(deeds))]
        self.shop.do(deed, deeds[deed], desk, pick)
