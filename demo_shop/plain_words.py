"""The words of plain jobs: what the customer says, what was found, and why a car came back."""

from __future__ import annotations

import random
from dataclasses import dataclass

from demo_shop.plain_faults import PlainFault

_SINCE = (
    "Since last week.", "For about a month.", "Since the frost.", "It started on holiday.",
    "Once or twice a week.", "Every single day.", "My daughter noticed it first.",
    "Worse than it was in spring.", "My neighbour says it is nothing.", "Only when I am late.",
    "It did it twice on the way here.",
    "My brother had it for a week.", "It has always done it a little.", "Three times this month.",
    "The last place could not find it.", "I need it on Friday.", "It comes and goes.",
    "Not every time.", "Getting worse.",
)  # fmt: skip
_AGAIN = ("It is back:", "Again:", "Same as before:", "It did it again:", "Not cured:")
_TRIED = (
    "Did not happen in {miles} miles; nothing stored that speaks of it",
    "Driven {miles} miles under what was told; it did not happen",
    "Looked for an hour and driven {miles} miles, nothing to be seen",
)


@dataclass(frozen=True, slots=True)
class BackReason:
    """Why a car came back: the judgement, its cause class and words; what was found and done."""

    judgement: str
    cause_class: str
    why: str
    found: str
    done: str


BACK_REASONS = (
    BackReason("same part", "wrong-part", "The part was for the sister engine and did not belong.",
               "The part fitted was the wrong one for this car.", "The right part fitted."),
    BackReason("same part", "part-died-early", "The part we fitted failed too soon.",
               "The new part has failed.", "Part renewed again under the supplier's promise."),
    BackReason("same symptom", "not-the-whole", "The part was bad, but it was not all of it.",
               "A second fault beside the first one.", "The rest of it mended, looked at twice."),
    BackReason("same symptom", "wrong-place", "The part taken off was as it should be.",
               "Another part than thought.", "The right part renewed."),
    BackReason("from our hands", "fitted-badly", "It was not fitted as it should be.",
               "A connector not home after our work.", "Put right and secured."),
    BackReason("same symptom", "left-unproven", "A longer drive would have shown it here.",
               "Shows only after an hour of driving.", "Mended and driven for an hour."),
    BackReason("same system", "not-set-up", "The learning after the repair was left out.",
               "Learning was not done after the repair.", "Learning done as the maker says."),
)  # fmt: skip


class PlainWords:
    """Gives each plain job words of its own; no concern is said twice."""

    def __init__(self, chance: random.Random) -> None:
        self._chance = chance
        self._said: set[str] = set()
        self._back = -1

    def concern(self, fault: PlainFault, *, again: bool) -> tuple[str, tuple[str, ...]]:
        """Return what the customer says, and the ids of the conditions named in it."""
        while True:
            when, happens = self._chance.choice(fault.whens)
            words = f"{self._chance.choice(fault.heads)} {when}."
            if again:
                words = f"{self._chance.choice(_AGAIN)} {words[0].lower()}{words[1:]}"
            words = f"{words} {self._chance.choice(_SINCE)}"
            if words not in self._said:
                self._said.add(words)
                return words, happens

    def repair(self, fault: PlainFault, caught: bool) -> tuple[str, str]:
        """Return the cause and the correction, or what was tried where it was not caught."""
        if not caught:
            tried = self._chance.choice(_TRIED)
            return tried.format(miles=self._chance.randrange(6, 30)) + ".", ""
        cause, correction = self._chance.choice(fault.fixes)
        return f"{cause}.", f"{correction}."

    def back_reason(self) -> BackReason:
        """Return why a car came back: the reasons in turn, so that every one is there."""
        self._back += 1
        return BACK_REASONS[self._back % len(BACK_REASONS)]
