"""Decides about the returns of plain jobs: why, what it cost, what is promised, who confirms it."""

from __future__ import annotations

import random
from collections.abc import Callable
from datetime import date, timedelta
from typing import Any

from demo_shop.follow_teller import first_repairer
from demo_shop.people import COUNTER, OWNER, TECHNICIANS
from demo_shop.plain_words import BackReason
from demo_shop.storyteller import Storyteller
from desktop_app.returns_watched import actions as returns
from desktop_app.returns_watched import judging_actions as beside
from desktop_app.shop_record.deed import Done

DAYS_TO_CHANGE, DAYS_UNTIL_DONE = 14, 10
RECENT = 182  # days; what was promised before is long done and is not told any more


class PlainJudge:
    """Judges plain returns at the desk of the storyteller's record."""

    def __init__(self, teller: Storyteller, seed: int) -> None:
        self._teller = teller
        self._chance = random.Random(seed)
        self._promised: set[tuple[int, int]] = set()

    def judge(self, pair: tuple[int, int], reason: BackReason, hours: float) -> None:
        """Write down what is decided about a comeback, and what it cost."""
        first = first_repairer(self._teller, pair)
        said = {"why": reason.why, "cause_class": reason.cause_class}
        self._do(OWNER, returns.judge_return, pair, reason.judgement, **said)
        if reason.also:
            self._do(OWNER, beside.say_also, pair, reason.also)
        if reason.helping:
            self._do(OWNER, beside.name_helping_causes, pair, reason.helping)
        if reason.evidence:
            self._do(OWNER, beside.write_evidence, pair, reason.evidence)
        if reason.view:
            self._do(first, beside.write_first_view, pair, reason.view)
        if reason.cause_class != "other-use":
            self._costs(pair, reason, hours)
        if self._chance.random() < 0.5:
            others = [name for name in TECHNICIANS if name != first]
            self._do(self._chance.choice(others), beside.look_again, pair)
        if reason.change:
            self._promise(pair, reason)

    def _costs(self, pair: tuple[int, int], reason: BackReason, hours: float) -> None:
        self._do(COUNTER, beside.write_unpaid_hours, pair, hours)
        parts = 100 * self._chance.randrange(20, 160)
        if reason.cause_class in ("part-died-early", "wrong-part", "wrong-place"):
            self._do(COUNTER, beside.write_amount, pair, "parts_cents", parts)
        if reason.cause_class == "part-died-early":
            self._do(COUNTER, beside.write_amount, pair, "recovered_cents", parts)
        if self._chance.random() < 0.3:
            self._do(COUNTER, beside.write_amount, pair, "loan_car_cents", 3_000)

    def _promise(self, pair: tuple[int, int], reason: BackReason) -> None:
        today = self._teller.clock().date()
        if (self._teller.calendar.today - today).days > RECENT:
            return
        self._promised.add(pair)
        self._do(OWNER, returns.promise_change, pair, reason.change)
        self._do(OWNER, beside.name_who_changes, pair, self._chance.choice(TECHNICIANS))
        self._day(pair, "change_due", today + timedelta(days=DAYS_TO_CHANGE))

    def change(self, pair: tuple[int, int]) -> None:
        """Write down that what was promised is done today."""
        if pair in self._promised:
            self._day(pair, "change_done_on", self._teller.clock().date())

    def _day(self, pair: tuple[int, int], name: str, day: date) -> None:
        self._do(OWNER, beside.set_change_day, pair, name, day)

    def _do(
        self, who: str, deed: Callable[..., Done], pair: tuple[int, int], *words: Any, **more: Any
    ) -> None:
        self._teller.do(who, deed, *pair, *words, **more)
