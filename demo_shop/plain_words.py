"""The words of plain jobs: what the customer says, what was found, and why a car came back."""

from __future__ import annotations

import random
from dataclasses import dataclass

from demo_shop.plain_faults import PlainFault
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.repair_jobs.road_test import EveryUnit

_SINCE = (
    "All of last week.", "For about a month.", "From the first frost on.", "It started on holiday.",
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


# What some of these words say about how often it comes: once in so many.
_EVERY: dict[str, tuple[float, EveryUnit]] = {
    "Once or twice a week.": (5, "days"),
    "It did it twice on the way here.": (4, "mi"),
    "Three times this month.": (10, "days"),
    "It comes and goes.": (40, "mi"),
    "Not every time.": (3, "drives"),
}


@dataclass(frozen=True, slots=True)
class BackReason:
    """Why a car came back: the judgement, its cause class and words; what was found and done.

    `also`, `helping`, `evidence` and the first repairer's `view` stand beside the judgement;
    `change` is what the shop will do differently.
    """

    judgement: str
    cause_class: str
    why: str
    found: str
    done: str
    also: tuple[str, ...] = ()
    helping: tuple[str, ...] = ()
    evidence: str = ""
    view: str = ""
    change: str = ""


BACK_REASONS = (
    BackReason("same part", "wrong-part", "The part was for the sister engine and did not belong.",
               "The part fitted was the wrong one for this car.", "The right part fitted.",
               helping=("bad-information",), evidence="Both parts kept, numbers photographed.",
               change="Old and new are laid side by side before anything is fitted."),
    BackReason("same part", "part-died-early", "The part we fitted failed too soon.",
               "The new part has failed.", "Part renewed again under the supplier's promise.",
               also=("same symptom",), evidence="The failed part is kept for the supplier."),
    BackReason("same symptom", "not-the-whole", "The part was bad, but it was not all of it.",
               "A second fault beside the first one.", "The rest of it mended, looked at twice.",
               helping=("left-unproven",), view="The first fault explained all that I saw."),
    BackReason("same symptom", "wrong-place", "The part taken off was as it should be.",
               "Another part than thought.", "The right part renewed.",
               evidence="The part that was taken off is as it should be."),
    BackReason("from our hands", "fitted-badly", "It was not fitted as it should be.",
               "A connector not home after our work.", "Put right and secured.",
               also=("same system",), evidence="Photo of the connector as it was found.",
               view="I was called to the counter half-way through.",
               change="Connectors are pulled at once more before the cover goes on."),
    BackReason("same symptom", "left-unproven", "A longer drive would have shown it here.",
               "Shows only after an hour of driving.", "Mended and driven for an hour.",
               view="There was no hour left that day."),
    BackReason("same system", "not-set-up", "The learning after the repair was left out.",
               "Learning was not done after the repair.", "Learning done as the maker says.",
               also=("same symptom",),
               change="The learning stands on the job sheet as a tick of its own."),
    BackReason("same symptom", "other-use", "A wash with the bonnet open did it, not our work.",
               "Water in the connector after a pressure wash.", "Dried, greased and closed.",
               evidence="The customer told of the wash."),
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

    def every(self, concern: str) -> tuple[float, EveryUnit] | None:
        """Return how often it comes, where the words say so."""
        return next((every for words, every in _EVERY.items() if concern.endswith(words)), None)

    def repair(self, fault: PlainFault, caught: bool) -> tuple[str, str]:
        """Return the cause and the correction, or what was tried where it was not caught."""
        if not caught:
            tried = self._chance.choice(_TRIED)
            return tried.format(miles=self._chance.randrange(6, 30)) + ".", ""
        cause, correction = self._chance.choice(fault.fixes)
        return f"{cause}.", f"{correction}."

    def back_reason(self, proof: int) -> BackReason:
        """Return why a car came back: the reasons in turn, so that every one is there.

        What was proved under its own conditions, or on a full trip, did not leave unproven.
        """
        while True:
            self._back += 1
            reason = BACK_REASONS[self._back % len(BACK_REASONS)]
            left_unproven = "left-unproven" in (reason.cause_class, *reason.helping)
            if proof < ProofLevel.FULL_TRIP or not left_unproven:
                return reason
