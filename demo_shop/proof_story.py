"""The shape of a job's proof: how often the fault came, what was met, what the car's tests say."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from desktop_app.repair_jobs.road_test import EveryUnit
from desktop_app.repair_jobs.self_tests import SelfTestState


@dataclass(frozen=True, slots=True)
class ProofStory:
    """What is written about a proof beside its level; what is empty nobody wrote down.

    `every`: the fault came once in so many. `met` and `not_met` are conditions that the customer
    told of. `found` and `after` are the car's four bytes as typed, `by_hand` how single tests stood
    after the repair. `steps` are ticked at their moments, and `caught_here` is a moment with what
    the proof showed. `provoked` counts the fault on purpose, before and after.
    """

    every: tuple[float, EveryUnit] | None = None
    met: tuple[str, ...] = ()
    not_met: tuple[str, ...] = ()
    found: str = ""
    after: str = ""
    by_hand: Mapping[str, SelfTestState] = field(default_factory=dict)
    steps: Mapping[str, str] = field(default_factory=dict)
    caught_here: tuple[str, str] | None = None
    provoked: str = ""
