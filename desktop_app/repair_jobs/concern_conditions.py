"""The conditions under which a concern happens, never happens, or was not asked about."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum


class Tick(StrEnum):
    """What is known about one condition. "Never" is evidence; "not asked" says nothing."""

    HAPPENS = "happens"
    NEVER = "never"
    NOT_ASKED = "not asked"

    def next(self) -> Tick:
        """Return the state that one more press gives."""
        order = (Tick.NOT_ASKED, Tick.HAPPENS, Tick.NEVER)
        return order[(order.index(self) + 1) % len(order)]


@dataclass(frozen=True, slots=True)
class ConcernCondition:
    """One condition: the id that is kept, the words shown, and the heading it stands under."""

    id: str
    words: str
    heading: str


_LISTED: dict[str, dict[str, str]] = {
    "Engine": {
        "cold": "cold",
        "first-minute": "in the first minute",
        "warming": "warming up",
        "hot": "hot",
        "restart-hot": "started again hot",
    },
    "Pedal and load": {
        "idle": "at idle",
        "light-press": "a light press on the pedal",
        "steady": "steady speed",
        "pulling": "pulling hard or uphill",
        "overrun": "lifting off",
        "take-up": "moving off or changing direction",
    },
    "Speed and gear": {
        "low-speed": "slow",
        "high-speed": "fast",
        "one-gear": "in one gear only",
        "in-gear": "standing in gear",
        "shifting": "changing gear",
    },
    "Road and steering": {
        "smooth": "smooth road",
        "rough": "rough road",
        "bump": "over a bump",
        "turning": "in a turn",
        "full-lock": "on full lock",
        "parking": "parking",
    },
    "Brakes": {
        "braking": "braking",
        "braking-hard": "braking hard",
        "after-drive": "just after a drive",
    },
    "Weather": {
        "dry": "dry",
        "damp": "damp",
        "rain": "rain",
        "wash": "after a wash",
        "freezing": "frost",
        "hot-day": "a hot day",
    },
    "Fuel": {
        "tank-full": "tank full",
        "tank-low": "tank low",
        "just-filled": "just filled up",
        "other-fuel": "fuel from elsewhere",
    },
    "Electrics": {
        "ac-on": "air conditioning on",
        "lamps-on": "lamps on",
        "demister-on": "demister on",
        "blower-on": "blower on",
        "with-switch": "when one thing is switched on",
    },
    "Time": {
        "first-start": "the first start of the day",
        "after-standing": "after standing",
        "after-minutes": "after some minutes",
        "short-trips": "on short trips",
        "random": "at random",
        "always": "always",
        "since-last-visit": "since the last visit",
    },
    "Carrying": {
        "passengers": "with passengers",
        "loaded": "loaded",
        "trailer": "with a trailer",
        "roof-box": "with a roof box",
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
    return _WORDS.get(identity, identity)


def conditions_in_words(ticks: Mapping[str, Tick]) -> str:
    """Return what was answered as one line: "happens: cold, damp; never: hot"; else nothing."""
    parts = []
    for state in (Tick.HAPPENS, Tick.NEVER):
        said = [c.words for c in CONDITIONS if ticks.get(c.id) is state]
        if said:
            parts.append(f"{state.value}: {', '.join(said)}")
    return "; ".join(parts)
