"""The shape of what follows a hand-over: a judgement, a promise, an answer, money owed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from demo_shop.people import COUNTER, OWNER


@dataclass(frozen=True, slots=True)
class ChangeStory:
    """What the shop promised to do differently: `due` and `check` are "month-day".

    `done` is the moment at which somebody said that it is done; empty: not yet.
    """

    words: str
    by: str = ""
    due: str = ""
    done: str = ""
    check: str = ""


@dataclass(frozen=True, slots=True)
class ReturnStory:
    """What was decided about an earlier and a later job, why, and what it cost.

    `at_first` is an earlier decision that was revised: judgement, cause class and moment. `cents`
    are the amounts by their names in the record, `hours` those that nobody pays. `looked_again`
    names who confirmed it, later on the same day.
    """

    earlier: str
    later: str
    judgement: str
    cause_class: str
    why: str
    on: str
    judged_by: str = OWNER
    at_first: tuple[str, str, str] | None = None
    also: tuple[str, ...] = ()
    helping: tuple[str, ...] = ()
    evidence: str = ""
    first_view: str = ""
    looked_again: str = ""
    hours: float | None = None
    cents: Mapping[str, int] = field(default_factory=dict)
    change: ChangeStory | None = None


@dataclass(frozen=True, slots=True)
class AskedStory:
    """A customer was asked how the car does; `odometer` as told, in the car's unit.

    `paper` is True where another shop's bill was seen. `judged` is what a person decided about the
    same trouble told: judgement, cause class, why, and the moment.
    """

    key: str
    at: str
    answer: str
    odometer: int | None = None
    words: str = ""
    who: str = COUNTER
    paper: bool = False
    judged: tuple[str, str, str, str] | None = None
    dangerous: bool | None = None


@dataclass(frozen=True, slots=True)
class OwedStory:
    """What a supplier owes for the pair at a place of a job, from a moment on.

    `then` are later moments with the state reached and the next step.
    """

    key: str
    place: int
    what: str
    cents: int | None
    at: str
    next_step: str = ""
    then: tuple[tuple[str, str, str], ...] = ()
