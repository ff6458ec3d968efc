"""The verdict on parts that meet: is there room between them, before and after."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal, TypeAlias

from desktop_app.parts_compared.part_sets.part_set import GivenTerm, PartSet, PartTerm
from desktop_app.parts_compared.part_sets.set_room import SetRoom, Share
from desktop_app.parts_compared.part_sets.set_shares import (
    SetRead,
    given_share,
    given_step,
    rooms_of_side,
)
from desktop_app.parts_compared.uncertainty import (
    Doubt,
    Estimate,
    combined,
    difference_estimate,
    rectangular,
    side_estimate,
)

SetVerdict: TypeAlias = Literal[
    "room enough", "may touch", "may run out", "too close to tell", "not measured"
]
AGAINST: frozenset[str] = frozenset({"may touch", "may run out"})


@dataclass(frozen=True, slots=True)
class SetComparison:
    """A set judged, in the set's unit: the room before and after, and how it changed.

    `before` and `after` are the tightest place of their side; `places` are all the places after.
    `change` is known without what cancels; `taken` was not measured but taken from the set.
    """

    part_set: PartSet
    verdict: SetVerdict
    before: SetRoom | None
    after: SetRoom | None
    places: tuple[SetRoom, ...]
    change: Estimate | None
    at_most: Share | None
    next_steps: tuple[str, ...]
    taken: tuple[Share, ...] = ()

    @property
    def settled_against(self) -> bool:
        """Whether these parts together speak against the replacements: stop and look."""
        return self.verdict in AGAINST

    @property
    def settled_for(self) -> bool:
        """Whether these parts together leave room enough."""
        return self.verdict == "room enough"


def judge_set(read: SetRead) -> SetComparison:
    """Judge the parts of a set together. The same input always gives the same answer.

    A room that play can use up even where the doubt of the readings is in the parts' favour
    counts against them. One that only doubt decides about is too close to tell. One that is left
    at the worst is enough, once both ends could be looked at.
    """
    before, after = rooms_of_side(read, "removed"), rooms_of_side(read, "replacement")
    at_most = _at_most(read)
    verdict: SetVerdict = "not measured"
    decisive: SetRoom | None = None
    if after.rooms:
        judged = [(_judge_room(read.part_set, room, at_most), room) for room in after.rooms]
        verdict, decisive = min(judged, key=_gravest)
    steps = _steps(read, verdict, decisive, after.missing)
    return SetComparison(
        part_set=read.part_set,
        verdict=verdict,
        before=min(before.rooms, key=lambda room: room.lowest, default=None),
        after=decisive,
        places=after.rooms,
        change=_change(read),
        at_most=at_most,
        next_steps=steps,
        taken=() if decisive is None else decisive.taken,
    )


def _at_most(read: SetRead) -> Share | None:
    term = read.part_set.given_term(read.part_set.at_most_given)
    return None if term is None else given_share(term, read.entered)


_GRAVITY: tuple[SetVerdict, ...] = (
    "may touch",
    "may run out",
    "too close to tell",
    "not measured",
    "room enough",
)


def _gravest(judged: tuple[SetVerdict, SetRoom]) -> tuple[int, float]:
    verdict, room = judged
    return _GRAVITY.index(verdict), room.lowest


def _judge_room(part_set: PartSet, room: SetRoom, at_most: Share | None) -> SetVerdict:
    left = room.value - part_set.at_least
    if left + room.doubt <= room.play:
        return "may touch"
    if at_most is not None:
        further, off = at_most.value - room.value, at_most.half_width
        if further + room.doubt + off <= room.play:
            return "may run out"
        if further <= room.worst + off:
            return "too close to tell"
    if left <= room.worst:
        return "too close to tell"
    return "not measured" if part_set.at_most_given and at_most is None else "room enough"


def _change(read: SetRead) -> Estimate | None:
    """Return the sum after less the sum before; what is the same in both cancels.

    None where a part was measured on one side only, or nothing was measured on either.
    """
    values: list[float] = []
    doubts: list[Doubt] = []
    measured = False
    for term in read.part_set.parts:
        if term.side != "own":
            continue
        one = _changed(read, term)
        if one is None:
            return None
        measured = measured or one.u > 0
        values.append(term.times * one.value)
        doubts.append(Doubt(abs(term.times) * one.u, one.dof))
    for given in read.part_set.given:
        doubts.extend(_new_each_time(given, read))
    return combined(math.fsum(values), doubts) if measured else None


def _changed(read: SetRead, term: PartTerm) -> Estimate | None:
    old, new = read.side_of(term, "removed"), read.side_of(term, "replacement")
    if old is not None and new is not None:
        return difference_estimate(old, new)
    if term.value is None:
        return None
    assumed = Estimate(term.value, rectangular(term.half_width).u)
    if old is None and new is None:
        return Estimate(0.0, 0.0)
    known_old = assumed if old is None else side_estimate(old)
    known_new = assumed if new is None else side_estimate(new)
    doubts = [Doubt(one.u, one.dof) for one in (known_old, known_new)]
    return combined(known_new.value - known_old.value, doubts)


def _new_each_time(given: GivenTerm, read: SetRead) -> list[Doubt]:
    share = None if given.cancels or not given.times else given_share(given, read.entered)
    return [] if share is None else [rectangular(share.reach)] * 2


def _steps(
    read: SetRead, verdict: SetVerdict, room: SetRoom | None, missing: tuple[str, ...]
) -> tuple[str, ...]:
    if room is None:
        return missing
    steps: list[str] = []
    if verdict in ("may touch", "may run out", "too close to tell"):
        steps += [one.do for one in room.taken if one.moves]
    if verdict == "too close to tell":
        doubtful = [one for one in room.shares if not one.moves and one.reach > 0]
        steps += [max(doubtful, key=lambda one: one.reach).do] if doubtful else []
    limit = read.part_set.given_term(read.part_set.at_most_given)
    if limit is not None and given_share(limit, read.entered) is None:
        steps.append(given_step(limit))
    return tuple(steps)
