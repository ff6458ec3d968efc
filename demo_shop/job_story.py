"""The shape of a story: a car, a job, a pair of parts, as the demo's data tell them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from desktop_app.repair_jobs.who_did_what import Work

NEW_OTHER, NEW_MAKER = "new, other maker's", "new, vehicle maker's"
REMAN, USED, CUSTOMERS = "reman", "used", "customer's own"


@dataclass(frozen=True, slots=True)
class CarStory:
    """A car by its class and age; `decade` is the first year it may have been built in."""

    key: str
    description: str
    plate: str
    decade: int
    customer: str
    unit: str = "mi"
    has_vin: bool = True


@dataclass(frozen=True, slots=True)
class Measured:
    """What was typed for one dimension on both sides; an empty side was not measured.

    `first` is what was typed before, with another instrument, and then measured again.
    """

    dimension: str
    removed: str
    replacement: str
    instrument: str = ""
    first: tuple[str, str, str] | None = None


@dataclass(frozen=True, slots=True)
class PairStory:
    """A removed part and its replacement; `verdict` is what the comparison must say of them.

    `views` are the camera's views, those of `on_card` with a bench card under the part; `old` and
    `new` are the true sizes (mm) it draws.
    """

    kind: str
    verdict: str
    measured: tuple[Measured, ...] = ()
    position: str = ""
    origin: str | None = NEW_OTHER
    supplier: str = ""
    lot: str = ""
    number_on_box: str = ""
    number_removed: str = ""
    number_on_part: str = ""
    seen_old: tuple[str, ...] = ()
    seen_new: tuple[str, ...] = ()
    explained: tuple[tuple[str, str, str], ...] = ()
    limits: tuple[tuple[str, float | None, float | None, str], ...] = ()
    fitted: bool = True
    fate: str = "kept until a week after the hand-over"
    note_old: str = ""
    note_new: str = ""
    views: tuple[str, ...] = ()
    on_card: tuple[str, ...] = ()
    old: Mapping[str, float] = field(default_factory=dict)
    new: Mapping[str, float] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class JobStory:
    """One job from the concern to the hand-over; moments are written "month-day hour:minute".

    `left` empty: still in the shop. `cause` empty with `caught` False: not caught. `same_visit`
    names the job whose visit this is another line of. `searched`, `refitted` and `proved` name who
    did that where it was not the technician; `search_hours` of the hours went into searching.
    """

    key: str
    car: str
    came: str
    left: str
    odometer: int | None
    odometer_out: int | None
    concern: str
    system: str
    cause: str = ""
    correction: str = ""
    technician: str = "Marek"
    hours: float | None = None
    cents: int | None = None
    proof: int | None = None
    proof_words: str = ""
    proof_distance: float | None = None
    declined: str = "nothing"
    happens: tuple[str, ...] = ()
    never: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()
    pending: tuple[str, ...] = ()
    codes_after: tuple[str, ...] = ()
    findings: tuple[str, ...] = ()
    refit: int = 99
    caught: bool = True
    unread: str = ""
    unbilled: float | None = None
    says_same: bool = False
    same_visit: str = ""
    brought_by: str = ""
    customer: str = ""
    pairs: tuple[PairStory, ...] = ()
    work: Work | None = None
    search_hours: float | None = None
    searched: str = ""
    refitted: str = ""
    proved: str = ""


@dataclass(frozen=True, slots=True)
class CarEvent:
    """Something that happened to a car, and the moment at which the shop was told of it."""

    car: str
    kind: str
    on: str
    told: str
    note: str
    before: int | None = None
    after: int | None = None
