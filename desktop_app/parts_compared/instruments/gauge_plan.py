"""The plan of a gauge study: who reads which part how often, and which reading comes next."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from desktop_app.parts_compared.instruments.gauge_study import ENOUGH_DOF, GaugeReading, cells_of

Place = tuple[str, int, int]
MOST_PARTS = 10
MOST_TRIALS = 20


@dataclass(frozen=True, slots=True)
class GaugePlan:
    """The people in their order, the number of parts, and how often each is read by each."""

    people: tuple[str, ...]
    parts: int = 1
    trials: int = 10

    def with_room_for(self, readings: Iterable[GaugeReading]) -> GaugePlan:
        """Return the plan, larger where something was read that it has no place for."""
        seen = tuple(readings)
        more = dict.fromkeys((*self.people, *(one.person for one in seen)))
        return replace(
            self,
            people=tuple(more),
            parts=max((self.parts, *(one.part for one in seen))),
            trials=max((self.trials, *(one.trial for one in seen))),
        )

    def places(self, who: str = "") -> list[Place]:
        """Return all places in the order of reading, those of `who` first.

        One person reads all parts before beginning with the first again, so that the last
        value of a part isn't fresh in mind.
        """
        people = sorted(self.people, key=lambda one: one != who)
        return [
            (person, part, trial)
            for person in people
            for trial in range(1, self.trials + 1)
            for part in range(1, self.parts + 1)
        ]

    def next_place(self, readings: Iterable[GaugeReading], who: str = "") -> Place | None:
        """Return the first empty place, or None where the plan is full."""
        return next(iter(self.empty_places(readings, who)), None)

    def empty_places(self, readings: Iterable[GaugeReading], who: str = "") -> list[Place]:
        """Return the places still to read, in their order."""
        taken = {(one.person, one.part, one.trial) for one in readings}
        return [place for place in self.places(who) if place not in taken]

    def too_few(self, readings: Sequence[GaugeReading], who: str = "") -> int | None:
        """Return how many more readings make the study enough; None where the plan has too few.

        Each repeat counts; the first reading of a part by a person has nothing to repeat.
        """
        count = {cell: len(values) for cell, values in cells_of(readings).items()}
        dof = sum(count.values()) - len(count)
        if dof >= ENOUGH_DOF:
            return 0
        for more, (person, part, _) in enumerate(self.empty_places(readings, who), 1):
            dof += (person, part) in count
            count[person, part] = 1
            if dof >= ENOUGH_DOF:
                return more
        return None
