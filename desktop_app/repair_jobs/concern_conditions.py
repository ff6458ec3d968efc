"""The conditions under which a concern happens, never happens, or was not asked about."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from typing import NamedTuple

from desktop_app.language import marked, tr


class Tick(StrEnum):
    """What is known about one condition. "Never" is evidence; "not asked" says nothing."""

    HAPPENS = marked("happens")
    NEVER = marked("never")
    NOT_ASKED = marked("not asked")

    def next(self) -> Tick:
        """Return the state that one more press gives."""
        order = (Tick.NOT_ASKED, Tick.HAPPENS, Tick.NEVER)
        return order[(order.index(self) + 1) % len(order)]


class ConcernCondition(NamedTuple):
    """One condition: the id that is kept; its words, and the heading that it stands under.

    Both are shown in the language spoken, by tr().
    """

    id: str
    words: str
    heading: str


_LISTED: dict[str, dict[str, str]] = {
    marked("Engine"): {
        "cold": marked("cold"),
        "first-minute": marked("in the first minute"),
        "warming": marked("warming up"),
        "hot": marked("hot"),
        "restart-hot": marked("started again hot"),
    },
    marked("Pedal and load"): {
        "idle": marked("at idle"),
        "light-press": marked("a light press on the pedal"),
        "steady": marked("steady speed"),
        "pulling": marked("pulling hard or uphill"),
        "overrun": marked("lifting off"),
        "take-up": marked("moving off or changing direction"),
    },
    marked("Speed and gear"): {
        "low-speed": marked("slow"),
        "high-speed": marked("fast"),
        "one-gear": marked("in one gear only"),
        "in-gear": marked("standing in gear"),
        "shifting": marked("changing gear"),
    },
    marked("Road and steering"): {
        "smooth": marked("smooth road"),
        "rough": marked("rough road"),
        "bump": marked("over a bump"),
        "turning": marked("in a turn"),
        "full-lock": marked("on full lock"),
        "parking": marked("parking"),
    },
    marked("Brakes"): {
        "braking": marked("braking"),
        "braking-hard": marked("braking hard"),
        "after-drive": marked("just after a drive"),
    },
    marked("Weather"): {
        "dry": marked("dry"),
        "damp": marked("damp"),
        "rain": marked("rain"),
        "wash": marked("after a wash"),
        "freezing": marked("frost"),
        "hot-day": marked("a hot day"),
    },
    marked("Fuel"): {
        "tank-full": marked("tank full"),
        "tank-low": marked("tank low"),
        "just-filled": marked("just filled up"),
        "other-fuel": marked("fuel from elsewhere"),
    },
    marked("Electrics"): {
        "ac-on": marked("air conditioning on"),
        "lamps-on": marked("lamps on"),
        "demister-on": marked("demister on"),
        "blower-on": marked("blower on"),
        "with-switch": marked("when one thing is switched on"),
    },
    marked("Time"): {
        "first-start": marked("the first start of the day"),
        "after-standing": marked("after standing"),
        "after-minutes": marked("after some minutes"),
        "short-trips": marked("on short trips"),
        "random": marked("at random"),
        "always": marked("always"),
        "since-last-visit": marked("since the last visit"),
    },
    marked("Carrying"): {
        "passengers": marked("with passengers"),
        "loaded": marked("loaded"),
        "trailer": marked("with a trailer"),
        "roof-box": marked("with a roof box"),
    },
}

CONDITIONS = tuple(
    ConcernCondition(identity, words, heading)
    for heading, listed in _LISTED.items()
    for identity, words in listed.items()
)
CONDITION_IDS = frozenset(condition.id for condition in CONDITIONS)
_WORDS = {condition.id: condition.words for condition in CONDITIONS}


def condition_words(identity: str) -> str:
    """Return the words of a condition; an unknown id is shown as it is."""
    words = _WORDS.get(identity)
    return identity if words is None else tr(words)


def condition_as_written(identity: str) -> str:
    """Return the words of a condition as they are written here, the same in every language."""
    return _WORDS.get(identity, identity)


def conditions_in_words(ticks: Mapping[str, Tick]) -> str:
    """Return what was answered as one line: "happens: cold, damp; never: hot"; else nothing."""
    parts = []
    for state in (Tick.HAPPENS, Tick.NEVER):
        said = [tr(c.words) for c in CONDITIONS if ticks.get(c.id) is state]
        if said:
            parts.append(f"{tr(state.value)}: {', '.join(said)}")
    return "; ".join(parts)
