"""The list of returns: each pair that the rules propose or a person judged, with what was said."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import TypeAlias

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit, distance_in_words, from_miles
from desktop_app.returns_watched.candidate import Candidate, CandidateJson
from desktop_app.returns_watched.customer_answers import HeardBy, heard_words
from desktop_app.returns_watched.judgement import Judgement, counts_against, return_cause

ReturnKey: TypeAlias = tuple[int, int, int]
VisitKey: TypeAlias = tuple[str, date, int | None]
NO_DISTANCE = tr("no odometer to say how far")


@dataclass(frozen=True, slots=True)
class ReturnRow:
    """One earlier and one later job of a vehicle, how they meet, and what a person decided.

    `came_on` is the day on which the later job was opened, `left_on` the earlier one's hand-over.
    Where the shop never saw the return, `heard_by` says how it knows of it: `later_id` is 0 then,
    the later job's place says how and when, `came_on` is the day on which it was told, and
    `asked_id` is the answer in which it was told first, `judged_id` the one on which it is judged;
    both are 0 for a visit. `dangerous` is None where nobody
    said whether somebody could have been hurt.
    `vehicle_key` is equal for all rows of one reading that mean one vehicle (two can be called by
    the same words); each way of reading has its own keys, so rows are compared without them.
    `arrival` tells the visits of one day apart where the clock can.
    """

    candidate: Candidate
    earlier_id: int
    later_id: int
    vehicle: str
    left_on: date
    came_on: date
    concern_then: str = ""
    concern_now: str = ""
    why: str = ""
    cause_class: str | None = None
    cost_cents: int | None = None
    judged_by: str = ""
    judged_at: str | None = None
    change_promised: str = ""
    heard_by: HeardBy | None = None
    asked_id: int = 0
    judged_id: int = 0
    dangerous: bool | None = None
    vehicle_key: str = field(default="", compare=False, repr=False)
    arrival: int | None = field(default=None, compare=False, repr=False)

    @property
    def visit(self) -> VisitKey:
        """What all jobs of one visit share: the vehicle, the day on which it came, and when."""
        return (self.vehicle_key or self.vehicle, self.came_on, self.arrival)

    @property
    def is_told(self) -> bool:
        """True where the shop never saw the return."""
        return self.heard_by is not None

    @property
    def key(self) -> ReturnKey:
        """What no other row of the record has: the earlier job, and the later one or the answer."""
        return (self.earlier_id, self.later_id, self.asked_id)

    @property
    def earlier(self) -> str:
        """The number of the earlier job."""
        return self.candidate.earlier

    @property
    def later(self) -> str:
        """The number of the later job; how and when it was told where there is none."""
        if self.heard_by is not None:
            return heard_words(self.heard_by, self.came_on)
        return self.candidate.later

    @property
    def opens(self) -> str:
        """The number of the job to open for it: the later one, the earlier where there is none."""
        return self.earlier if self.is_told else self.later

    @property
    def judgement(self) -> Judgement | None:
        """What a person decided, or None."""
        return self.candidate.judgement

    @property
    def in_window(self) -> bool:
        """True where the later visit lies in the earlier job's main window."""
        return self.candidate.in_window

    @property
    def is_comeback(self) -> bool:
        """True where it was judged a comeback of our making and lies in the window."""
        return self.in_window and counts_against(self.judgement, self.cause_class)

    @property
    def waits(self) -> bool:
        """True where it lies in the window and nobody has judged it or what lies between.

        This is the one rule for what waits: in lists, counts and commands.
        """
        return self.in_window and self.candidate.waits

    @property
    def is_open(self) -> bool:
        """True where nobody has judged it yet, inside the window or beyond it."""
        return self.candidate.waits

    @property
    def state_words(self) -> str:
        """How far the judging of it is, in words; one that hangs in a chain is judged with it."""
        if self.judgement is not None:
            return tr(self.judgement.value)
        if self.candidate.in_chain:
            return tr("judged in its chain")
        return tr("not judged")

    @property
    def cause_words(self) -> str:
        """Why it came back, in words; empty where nobody said."""
        cause = return_cause(self.cause_class or "")
        return cause.words if cause is not None else ""

    def as_json(self) -> CandidateJson:
        """Return the fields of the command contract."""
        return self.candidate.as_json()

    def apart(self, unit: DistanceUnit) -> str:
        """Return how far apart the two are: "41 days, 880 mi", or the days and why no more."""
        gone = self.candidate.days
        days = tr("1 day") if gone == 1 else tr("{days} days", days=gone)
        if self.candidate.distance_miles is None:
            return f"{days} ({NO_DISTANCE})"
        return f"{days}, {self.distance_words(unit)}"

    def distance_words(self, unit: DistanceUnit) -> str:
        """Return the distance for people, or that no odometer says it."""
        miles = self.candidate.distance_miles
        return NO_DISTANCE if miles is None else distance_in_words(from_miles(miles, unit), unit)
