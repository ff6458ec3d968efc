"""What is kept of a proof beside the job itself: conditions met, the car's own tests, steps."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from desktop_app.language import tr
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.provocation import Provoked
from desktop_app.repair_jobs.road_test import FaultEvery
from desktop_app.repair_jobs.self_tests_compared import Stage, StageTests


@dataclass(frozen=True, slots=True)
class CaughtKept:
    """The proof failed before the car left: its row's id, the moment (ISO 8601), what happened."""

    id: int
    caught_at: str
    words: str


def caught_in_words(one: CaughtKept) -> str:
    """Return when it was caught, to stand before what happened: "on 16 November 2026, 14:05:"."""
    at = datetime.fromisoformat(one.caught_at)
    return tr("on {day}, {at:%H:%M}:", day=day_in_words(at.date()), at=at)


@dataclass(frozen=True, slots=True)
class ProofKept:
    """Everything of one job's proof that does not stand in the job itself.

    `conditions` maps a condition to whether it was met; not said is left out. `steps` maps a step
    to its moment. `miles_a_day` is the car's rate of use, None where its visits don't tell.
    """

    conditions: Mapping[str, bool] = field(default_factory=dict)
    tests: Mapping[Stage, StageTests] = field(default_factory=dict)
    steps: Mapping[str, str] = field(default_factory=dict)
    caught: tuple[CaughtKept, ...] = ()
    every: FaultEvery | None = None
    provoked: Provoked | None = None
    miles_a_day: float | None = None

    @property
    def found(self) -> StageTests:
        """The car's own tests as they were found."""
        return self.tests.get("found", StageTests())

    @property
    def after(self) -> StageTests:
        """The car's own tests after the repair."""
        return self.tests.get("after repair", StageTests())
