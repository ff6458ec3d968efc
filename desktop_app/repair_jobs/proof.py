"""How far a repair was proved before the car left, and what is worth saying at hand-over."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum

from desktop_app.repair_jobs.concern_conditions import condition_words


class ProofLevel(IntEnum):
    """The ladder of proof; 0 to 4 are recorded at hand-over and each includes the ones below.

    TIME is not recorded: it comes by itself, once the car was seen fine after its window.
    """

    UNPROVEN = 0
    BAY = 1
    ROAD = 2
    FULL_TRIP = 3
    SAME_CONDITIONS = 4
    TIME = 5

    @property
    def word(self) -> str:
        """The level in a word or two."""
        return _LADDER[self][0]

    @property
    def means(self) -> str:
        """What must have been done for this level."""
        return _LADDER[self][1]


_LADDER = {
    ProofLevel.UNPROVEN: ("unproven", "Nothing was tried after the repair."),
    ProofLevel.BAY: ("bay", "It works in the bay: no leak, no code, measured again and good."),
    ProofLevel.ROAD: ("road", "It was driven on the road."),
    ProofLevel.FULL_TRIP: (
        "full trip",
        "The car's own test for this system ran and passed, with no pending code.",
    ),
    ProofLevel.SAME_CONDITIONS: (
        "same conditions",
        "It was driven under the conditions the customer told us of.",
    ),
    ProofLevel.TIME: ("time", "The car was seen fine after its window had ended."),
}

RECORDED_LEVELS = tuple(level for level in ProofLevel if level is not ProofLevel.TIME)


# The check without which "no pending code" is nobody's word.
CODES_READ = "the codes read again afterwards, the pending ones too: none is left"


@dataclass(frozen=True, slots=True)
class ProofChecks:
    """What proves a repair of one system. The maker's procedure comes first."""

    system: str
    bay: tuple[str, ...]
    road: tuple[str, ...]
    enough: str


@dataclass(frozen=True, slots=True)
class ProofReached:
    """What was recorded about the proof of one job.

    Of the conditions told of, some were recreated, some were not; of the rest nobody said.
    """

    level: ProofLevel
    recreated: Sequence[str] = ()
    not_recreated: Sequence[str] = ()
    unticked: Sequence[str] = ()
    codes_were_read: bool = False
    not_said: Sequence[str] = ()

    @property
    def all_met(self) -> bool:
        """Whether conditions were told of and every one of them was met."""
        return bool(self.recreated) and not self.not_recreated and not self.not_said

    @property
    def chosen_beyond(self) -> bool:
        """Whether "same conditions" was chosen without every condition being met."""
        return self.level is ProofLevel.SAME_CONDITIONS and not self.all_met


def worth_saying(proof: ProofReached) -> tuple[str, ...]:
    """Return the sentences to say and print at hand-over; they never call a car safe to drive."""
    said = []
    if proof.level is ProofLevel.UNPROVEN:
        said.append("This repair was not proved before the car left.")
    elif proof.level is ProofLevel.BAY:
        said.append("Proved in the bay only; it was not driven.")
    elif proof.level is ProofLevel.ROAD:
        said.append("Driven, but the car's own test for this system was not seen to pass.")
    elif proof.level is ProofLevel.FULL_TRIP:
        said.append(_full_trip(proof))
    elif proof.level is ProofLevel.SAME_CONDITIONS:
        said.extend(_same_conditions(proof))
    if proof.level is ProofLevel.FULL_TRIP and not proof.codes_were_read:
        said.append("That no code was pending afterwards is not written down.")
    if proof.recreated:
        said.append(f"Tried: {_listed(proof.recreated)}.")
    if proof.not_recreated:
        said.append(f"Not tried: {_listed(proof.not_recreated)}.")
    if proof.not_said:
        said.append(f"Not said whether tried: {_listed(proof.not_said)}.")
    said.extend(f"Left open: {check}." for check in proof.unticked)
    return tuple(said)


def _full_trip(proof: ProofReached) -> str:
    if proof.not_recreated or proof.not_said:
        return "The car's own test passed; the conditions you told us of were not all tried."
    return "The car's own test passed."


def _same_conditions(proof: ProofReached) -> tuple[str, ...]:
    if proof.all_met:
        return ()
    if proof.recreated or proof.not_recreated or proof.not_said:
        return ("Not every condition you told us of is written down as met.",)
    return ("No condition was told of, so there was none to meet.",)


def _listed(conditions: Sequence[str]) -> str:
    return ", ".join(condition_words(condition) for condition in conditions)
