"""A job as a page shows it: the job, its visit, its vehicle and all that was written down."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.repair_jobs.proof import CODES_READ
from desktop_app.repair_jobs.same_check import each_once, same_check
from desktop_app.repair_jobs.who_did_what import Did, Doer

# What is kept of a check that was answered; what was counted of a fault is kept among them too.
_ANSWERS = ("done", "not needed")


@dataclass(frozen=True, slots=True)
class VehicleSeen:
    """A vehicle as it is shown."""

    id: int
    vin: str
    plate: str
    tag: str
    description: str
    odometer_unit: str

    @property
    def name(self) -> str:
        """Return how the shop speaks of it: plate, else tag, else the VIN's end; then its class."""
        first = self.plate or self.tag or (f"VIN …{self.vin[-6:]}" if self.vin else tr("no plate"))
        return f"{first} · {self.description}" if self.description else first


@dataclass(frozen=True, slots=True)
class CodeRead:
    """A trouble code that was read: its row's id, the code, stored/pending/permanent, when."""

    id: int
    code: str
    kind: str
    stage: str


@dataclass(frozen=True, slots=True)
class CheckMade:
    """A finding or a ticked check: its row's id, kind, words, outcome."""

    id: int
    kind: str
    words: str
    outcome: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ProofWritten:
    """What of a job its proof is judged by, beside what is kept of the proof itself."""

    system: str
    proof_distance: float | None
    conditions: Mapping[str, bool]
    codes: tuple[CodeRead, ...]
    checks: tuple[CheckMade, ...]

    @property
    def codes_were_read(self) -> bool:
        """Whether it is written down that the codes were read after the repair."""
        read = any(code.stage == "after repair" for code in self.codes)
        return read or any(one.words == CODES_READ and one.outcome == "done" for one in self.checks)

    def ticked(self, kind: str, checks: Iterable[str]) -> dict[str, str]:
        """Return the outcome of each of the checks of a list, "" where nobody answered it.

        A check is kept as it is written; one that was kept as it is spoken, or in other words,
        counts as well.
        """
        kept = {one.words: one.outcome for one in self.checks if one.kind == kind}
        said = {same_check(words): outcome for words, outcome in kept.items() if outcome}

        def outcome_of(words: str) -> str:
            return kept.get(words) or kept.get(tr(words)) or said.get(same_check(words), "")

        return {words: outcome_of(words) for words in checks}

    def proof_points(self, asked: Sequence[str]) -> tuple[str, ...]:
        """Return the checks that are asked for as proof, each once, then what was answered besides.

        The list goes by system and parts, which may be chosen after it was answered.
        """
        made = [one for one in self.checks if one.kind == "proof" and one.outcome in _ANSWERS]
        answered = [one.words for one in made]
        found = {same for one in asked for same in (tr(one), same_check(one))}
        besides = (one for one in answered if same_check(one) not in found)
        return each_once((*asked, *besides), answered)


@dataclass(frozen=True, slots=True, kw_only=True)
class JobView(ProofWritten):
    """Everything of one job that a page or a sheet shows; money in cents, days in ISO 8601.

    `work` is None for a repair; `named` has those of the four things somebody is named for.
    """

    id: int
    number: str
    visit_id: int
    concern: str
    says_same: bool
    cause_found: bool | None
    cause: str
    correction: str
    technician_id: int | None
    technician: str
    work: str | None
    search_hours: float | None
    hours: float | None
    unbilled_hours: float | None
    price_cents: int | None
    proof_level: int | None
    proof_words: str
    declined: str | None
    left_at: str | None
    window_days: int
    window_months: int | None
    window_miles: int
    window_rule: str
    came_at: str
    odometer_in: int | None
    odometer_unread: str | None
    odometer_source: str | None
    odometer_out: int | None
    brought_by: str
    customer: str
    phone: str
    vehicle: VehicleSeen
    symptoms: tuple[str, ...]
    named: Mapping[Did, Doer]

    @property
    def came_on(self) -> str:
        """The day on which the vehicle came."""
        return self.came_at[:10]

    @property
    def left_on(self) -> str | None:
        """The day of the hand-over."""
        return None if self.left_at is None else self.left_at[:10]


@dataclass(frozen=True, slots=True)
class EventSeen:
    """Something that happened to a vehicle; readings are in its own unit, None where not known."""

    id: int
    on: str
    kind: str
    before: int | None
    after: int | None
    note: str


@dataclass(frozen=True, slots=True)
class EarlierJob:
    """A job of a vehicle in one line, for "this car was here before"."""

    id: int
    number: str
    came_on: str
    left_on: str | None
    concern: str
    correction: str
