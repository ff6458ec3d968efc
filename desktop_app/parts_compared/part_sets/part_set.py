"""A part set: which dimensions of which kinds combine into one room, and what it must be."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

from desktop_app.parts_compared.part_kinds.part_kind import COMMON_PRACTICE

TermSide: TypeAlias = Literal["own", "removed", "replacement"]
Enters: TypeAlias = Literal["value", "play"]

TERM_SIDES: tuple[TermSide, ...] = ("own", "removed", "replacement")
ENTERS: tuple[Enters, ...] = ("value", "play")


@dataclass(frozen=True, slots=True)
class PartTerm:
    """A dimension that counts `times` its value in the sum.

    `side` "own" is the removed part before and the replacement after; another side is the same
    part in both sums. `value` ± `half_width`, where given, stand in for what was not measured.
    With `each_of`, the name of a count on the same part, as many readings as were counted are
    one for each `place` instead of repeats.
    """

    kind: str
    dimension: str
    times: float
    side: TermSide = "own"
    value: float | None = None
    half_width: float = 0.0
    each_of: str = ""
    place: str = "place"


@dataclass(frozen=True, slots=True)
class GivenTerm:
    """Something of the car that belongs to the sum: `value` ± `half_width`, counted `times`.

    A `value` of None must be entered by the shop. What enters as "play" moves while the car runs:
    an entered figure replaces its half-width. `cancels` where it is the same before and after.
    """

    name: str
    label: str
    times: float
    half_width: float
    enters: Enters = "value"
    value: float | None = None
    cancels: bool = False
    basis: str = COMMON_PRACTICE
    how: str = ""


@dataclass(frozen=True, slots=True)
class PartSet:
    """Parts that meet: the signed sum that is their `result`, its limits, and the words for it.

    `at_most_given` names the given term that is the upper limit; it is not judged until entered.
    """

    id: str
    name: str
    result: str
    unit: str
    parts: tuple[PartTerm, ...]
    given: tuple[GivenTerm, ...]
    at_least: float
    say_room: str
    say_touch: str
    say_run_out: str = ""
    at_most_given: str = ""
    honest: str = ""
    cautions: tuple[str, ...] = ()

    @property
    def kinds(self) -> tuple[str, ...]:
        """Return the ids of the kinds that meet, each once."""
        return tuple(dict.fromkeys(one.kind for one in self.parts))

    def given_term(self, name: str) -> GivenTerm | None:
        """Return the given term of that name, or None."""
        return next((one for one in self.given if one.name == name), None)
