"""What suppliers owe: the credit for a core, a claim for a part that died early."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from desktop_app.language import marked


class What(StrEnum):
    """What is owed."""

    CORE = marked("core")
    CLAIM = marked("claim")


class State(StrEnum):
    """How far it is; paid and refused are its ends."""

    OPEN = marked("open")
    ASKED = marked("asked")
    PAID = marked("paid")
    REFUSED = marked("refused")

    @property
    def is_end(self) -> bool:
        """True where nothing more is expected."""
        return self in (State.PAID, State.REFUSED)


@dataclass(frozen=True, slots=True)
class Owed:
    """One sum that a supplier owes for a part; the amount in cents, None where nobody knows it."""

    id: int
    pair_id: int
    job_number: str
    part: str
    supplier: str
    what: What
    amount_cents: int | None
    since: date
    state: State
    next_step: str = ""
    ended_on: date | None = None

    def days_open(self, today: date) -> int:
        """Return for how many days it has been owed, until its end or today."""
        return max(0, ((self.ended_on or today) - self.since).days)


def still_owed_cents(all_owed: Iterable[Owed]) -> tuple[int, int]:
    """Return the sum that is still open in cents, and of how many the amount is not known."""
    waiting = [one for one in all_owed if not one.state.is_end]
    known = sum(one.amount_cents or 0 for one in waiting)
    return known, sum(one.amount_cents is None for one in waiting)
