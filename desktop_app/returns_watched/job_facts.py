"""What the rules of returns know of a job, and what two jobs share."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date

from desktop_app.language import marked, tr
from desktop_app.parts_compared.part_kinds.kind_names import NO_KINDS, kind_words, place_words
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.later_visit import came_later
from desktop_app.repair_jobs.odometer import ReadingSource, RunningMiles
from desktop_app.repair_jobs.systems import system_in_a_sentence
from desktop_app.returns_watched.window import Window


@dataclass(frozen=True, slots=True)
class JobFacts:
    """What the rules need to know of a job.

    `vehicle` is any key that is equal for one vehicle. `symptoms` holds the short plain names of
    symptom groups ("misfire"), `system` an id or nothing, `code_families` the
    family of each code that has one.
    Odometers are on the vehicle's running scale; None where it cannot say. `positions` are the
    part kinds with the place on the vehicle where one was replaced. `window` is the job's own,
    where it has one; `sold_on` is the day after which it ends because the car was sold.
    `odometer_source` says how the odometer at its coming was read. Where the vehicle came more than
    once on that day, `came_clock` and `left_clock` are the times of this visit as `clock_of` gives
    them, and `told_apart` says that the clock knows when each visit of that day came.
    """

    number: str
    vehicle: str
    opened_on: date
    handed_over_on: date | None = None
    odometer_in: RunningMiles | None = None
    odometer_out: RunningMiles | None = None
    symptoms: frozenset[str] = frozenset()
    system: str = ""
    codes: frozenset[str] = frozenset()
    code_families: Mapping[str, str] = field(default_factory=dict, compare=False)
    part_kinds: frozenset[str] = frozenset()
    positions: frozenset[tuple[str, str]] = frozenset()
    customer_says_same: bool = False
    window: Window | None = None
    sold_on: date | None = None
    odometer_source: ReadingSource = "read"
    came_clock: int | None = None
    left_clock: int | None = None
    told_apart: bool = False
    traits: frozenset[tuple[str, str]] = field(init=False, compare=False, repr=False)

    def __post_init__(self) -> None:
        traits = {("symptom", name) for name in self.symptoms}
        traits |= {("code", code) for code in self.codes}
        traits |= {("family", name) for name in self.code_families.values()}
        traits |= {("part kind", kind) for kind in self.part_kinds}
        if self.system:
            traits.add(("system", self.system))
        object.__setattr__(self, "traits", frozenset(traits))

    @property
    def arrival(self) -> int | None:
        """What tells its visit from the others of that day; None where all of them are one."""
        return self.came_clock if self.told_apart else None


def may_return(earlier: JobFacts, later: JobFacts) -> bool:
    """True where the later job can be a return at all: one vehicle, a later visit, handed over.

    It is `is_later_visit`, of days that were read already.
    """
    return (
        earlier.vehicle == later.vehicle
        and earlier.handed_over_on is not None
        and earlier.handed_over_on <= later.opened_on
        and (
            earlier.opened_on != later.opened_on
            or came_later(earlier.came_clock, earlier.left_clock, later.came_clock)
        )
    )


CUSTOMER_SAYS_SAME = marked("customer says it's the same")


def reasons(earlier: JobFacts, later: JobFacts) -> tuple[str, ...]:
    """Return what the two jobs share, in the words of the command contract; `spoken` shows them."""
    said: list[str] = []
    # Millions of pairs may be asked: what one of the two has nothing of is passed over.
    if earlier.symptoms and later.symptoms:
        said += [f"same symptom: {name}" for name in sorted(earlier.symptoms & later.symptoms)]
    if earlier.system and earlier.system == later.system:
        said.append(f"same system: {later.system}")
    if earlier.codes and later.codes:
        same_codes = earlier.codes & later.codes
        said += [f"same code: {code}" for code in sorted(same_codes)]
        said += _related(earlier, later, same_codes)
    if earlier.part_kinds and later.part_kinds:
        said += [
            f"same part kind: {kind}" for kind in sorted(earlier.part_kinds & later.part_kinds)
        ]
    if earlier.positions and later.positions:
        same_places = {place for _, place in earlier.positions & later.positions if place}
        said += [f"same position: {place}" for place in sorted(same_places)]
    if later.customer_says_same:
        said.append(CUSTOMER_SAYS_SAME)
    return tuple(said)


def spoken(reason: str, kinds: Mapping[str, PartKind] = NO_KINDS) -> str:
    """Return a reason as a person reads it: part kinds and systems by name, not by their ids.

    `kinds` are those that the two jobs may share; a position is said as one of them says it.
    """
    shared, _, what = reason.partition(": ")
    match shared:
        case "same symptom":
            return tr("same symptom: {symptom}", symptom=tr(what))
        case "same system":
            return tr("same system: {system}", system=system_in_a_sentence(what))
        case "same code":
            return tr("same code: {code}", code=what)
        case "related code":
            then, _, now = what.partition(" and ")
            return tr("related code: {then} and {now}", then=then, now=now)
        case "same part kind":
            return tr("same part kind: {part_kind}", part_kind=kind_words(what, kinds))
        case "same position":
            said = (place_words(what, kind, kinds) for kind in kinds)
            return tr("same position: {place}", place=next((s for s in said if s != what), what))
        case _:
            return tr(reason)


def _related(earlier: JobFacts, later: JobFacts, same: frozenset[str]) -> Iterator[str]:
    told = {earlier.code_families[code] for code in same if code in earlier.code_families}
    ours, theirs = set(earlier.code_families.values()), set(later.code_families.values())
    for family in sorted((ours & theirs) - told):
        then = min(c for c, name in earlier.code_families.items() if name == family)
        now = min(c for c, name in later.code_families.items() if name == family)
        yield f"related code: {then} and {now}"


def shares_anything(earlier: JobFacts, later: JobFacts) -> bool:
    """True where `reasons` would say anything; the quick way to know it."""
    return later.customer_says_same or not earlier.traits.isdisjoint(later.traits)
