"""How vehicles, visits and jobs are kept: the tables."""

from __future__ import annotations

from sqlalchemy import CheckConstraint, ForeignKey, Index, text

from desktop_app.shop_record.tables import KEPT, Kept, Mapped, mapped_column

# The jobs whose window ends by time and distance together, as their index says it.
BOTH_MUST_END = "window_rule = 'both'"

# Days are ISO 8601 dates, moments ISO 8601 with the shop's offset; money is in cents;
# an odometer is a whole number in the vehicle's own unit.


class Vehicle(Kept):
    """A vehicle, known by its VIN, else by its plate or the shop's own tag.

    `vin` and `plate_key` are kept as they are compared, `plate` as it was written.
    """

    __tablename__ = "vehicle"
    __table_args__ = (CheckConstraint("odometer_unit IN ('mi', 'km')", name="odometer_unit"), KEPT)

    vin: Mapped[str | None] = mapped_column(index=True)
    plate: Mapped[str | None]
    plate_key: Mapped[str | None] = mapped_column(index=True)
    tag: Mapped[str | None]
    description: Mapped[str] = mapped_column(default="")
    odometer_unit: Mapped[str]


class VehicleEvent(Kept):
    """Something that happened to the vehicle itself: its odometer replaced, its owner changed."""

    __tablename__ = "vehicle_event"
    __table_args__ = (
        CheckConstraint("kind IN ('odometer replaced', 'sold')", name="kind"),
        KEPT,
    )

    vehicle_id: Mapped[int] = mapped_column(ForeignKey("vehicle.id"), index=True)
    kind: Mapped[str]
    happened_on: Mapped[str]
    reading_before: Mapped[int | None]
    reading_after: Mapped[int | None]
    note: Mapped[str] = mapped_column(default="")


class Customer(Kept):
    """Who owns or brings the vehicle; a name and a phone, both optional."""

    __tablename__ = "customer"

    name: Mapped[str]
    phone: Mapped[str] = mapped_column(default="")


class Person(Kept):
    """Someone of the shop."""

    __tablename__ = "person"

    name: Mapped[str] = mapped_column(unique=True)
    here: Mapped[int] = mapped_column(default=1)


class Visit(Kept):
    """A vehicle is in the shop, from the hour it comes to the hour it leaves.

    Either `odometer_in` is a number or `odometer_unread` says why it cannot be read.
    `odometer_source` is `read` (as is None), `told` by the customer, or `estimated`.
    """

    __tablename__ = "visit"

    vehicle_id: Mapped[int] = mapped_column(ForeignKey("vehicle.id"), index=True)
    customer_id: Mapped[int | None] = mapped_column(ForeignKey("customer.id"), index=True)
    came_at: Mapped[str] = mapped_column(index=True)
    left_at: Mapped[str | None]
    odometer_in: Mapped[int | None]
    odometer_out: Mapped[int | None]
    odometer_unread: Mapped[str | None]
    odometer_source: Mapped[str | None]
    brought_by: Mapped[str] = mapped_column(default="")


class Job(Kept):
    """One concern of a visit with one cause, one correction and one hand-over.

    `cause_found` is 1 (named), 0 (not caught) or None (not said yet); `window_rule` is `first`
    (whichever ends first) or `both`. `declined` holds what was declined or left undone; "nothing"
    is an answer, None is not. `says_same` is 1 where the customer says it is the same trouble.
    A window of 0 days has no limit in time, one of 0 miles none in distance. `window_months` are
    the calendar months that `window_days` were counted from at hand-over (until then they are the
    most days of so many months); `window_from` says whose promise it is. The fault came once in
    `fault_every` of `fault_every_unit`. `work` is None for a repair, else `inspection` or
    `maintenance`: no rate counts these. `search_hours` of `hours` went into finding the cause.
    """

    __tablename__ = "job"
    __table_args__ = (
        Index("ix_job_left", "left_at"),
        # Long windows are few, and looked for among all jobs each time the watch is read.
        Index("ix_job_window_days", "window_days"),
        # A server's has the same condition; saying so here would load its driver at every start.
        Index("ix_job_both_must_end", "visit_id", sqlite_where=text(BOTH_MUST_END)),
        CheckConstraint("proof_level BETWEEN 0 AND 4", name="proof_level"),
        CheckConstraint("window_rule IN ('first', 'both')", name="window_rule"),
        KEPT,
    )

    number: Mapped[str] = mapped_column(unique=True)
    visit_id: Mapped[int] = mapped_column(ForeignKey("visit.id"), index=True)
    concern: Mapped[str] = mapped_column(default="")
    says_same: Mapped[int] = mapped_column(default=0)
    system: Mapped[str] = mapped_column(default="")
    cause_found: Mapped[int | None]
    cause: Mapped[str] = mapped_column(default="")
    correction: Mapped[str] = mapped_column(default="")
    technician_id: Mapped[int | None] = mapped_column(ForeignKey("person.id"), index=True)
    hours: Mapped[float | None]
    unbilled_hours: Mapped[float | None]
    price_cents: Mapped[int | None]
    proof_level: Mapped[int | None]
    proof_words: Mapped[str] = mapped_column(default="")
    proof_distance: Mapped[float | None]
    declined: Mapped[str | None]
    left_at: Mapped[str | None]
    odometer_out: Mapped[int | None]
    window_days: Mapped[int]
    window_miles: Mapped[int]
    window_rule: Mapped[str]
    window_months: Mapped[int | None]
    window_from: Mapped[str | None]
    fault_every: Mapped[float | None]
    fault_every_unit: Mapped[str | None]
    work: Mapped[str | None]
    search_hours: Mapped[float | None]


class JobPerson(Kept):
    """Who did one of the four things of a job; no row means the job's technician, or nobody said.

    The fitted parts and the correction are the work of who `refitted`.
    """

    __tablename__ = "job_person"
    __table_args__ = (
        CheckConstraint("did IN ('wrote up', 'searched', 'refitted', 'proved')", name="did"),
        Index("uq_job_person", "job_id", "did", unique=True),
        KEPT,
    )

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"))
    did: Mapped[str]
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)


class JobSymptom(Kept):
    """A symptom group that the concern belongs to, read from the words or chosen by a person."""

    __tablename__ = "job_symptom"
    __table_args__ = (Index("uq_job_symptom", "job_id", "symptom", unique=True), KEPT)

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"))
    symptom: Mapped[str] = mapped_column(index=True)
    chosen: Mapped[int] = mapped_column(default=0)


class JobCondition(Kept):
    """When the fault happens (1) or never happens (0); no row means nobody asked."""

    __tablename__ = "job_condition"
    __table_args__ = (Index("uq_job_condition", "job_id", "condition", unique=True), KEPT)

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"))
    condition: Mapped[str]
    happens: Mapped[int]


class TroubleCode(Kept):
    """A trouble code: its kind (stored, pending, permanent) and when it was read."""

    __tablename__ = "trouble_code"
    __table_args__ = (
        CheckConstraint("stage IN ('found', 'after repair')", name="stage"),
        CheckConstraint("kind IN ('stored', 'pending', 'permanent')", name="kind"),
        KEPT,
    )

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"), index=True)
    code: Mapped[str] = mapped_column(index=True)
    kind: Mapped[str]
    stage: Mapped[str]


class JobCheck(Kept):
    """Something looked at or ticked: an inspection finding, a refit check, a proof check.

    `outcome` is free words for a finding; for the lists it is `done` or `not needed`.
    """

    __tablename__ = "job_check"
    __table_args__ = (
        CheckConstraint("kind IN ('inspection', 'refit', 'proof')", name="kind"),
        KEPT,
    )

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"), index=True)
    kind: Mapped[str]
    words: Mapped[str]
    outcome: Mapped[str] = mapped_column(default="")


class ConditionMet(Kept):
    """Whether a condition the customer told of was met on the proof drive (1) or not (0)."""

    __tablename__ = "condition_met"
    __table_args__ = (Index("uq_condition_met", "job_id", "condition", unique=True), KEPT)

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"))
    condition: Mapped[str]
    met: Mapped[int]


class SelfTests(Kept):
    """The car's own tests as they were read once: the four bytes of mode 01 PID 01, as typed."""

    __tablename__ = "self_tests"
    __table_args__ = (
        CheckConstraint("stage IN ('found', 'after repair')", name="stage"),
        Index("uq_self_tests", "job_id", "stage", unique=True),
        KEPT,
    )

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"))
    stage: Mapped[str]
    typed: Mapped[str]
    read_at: Mapped[str]


class SelfTest(Kept):
    """One of the car's own tests, as a person read it; `not run` is never `complete`."""

    __tablename__ = "self_test"
    __table_args__ = (
        CheckConstraint("stage IN ('found', 'after repair')", name="stage"),
        CheckConstraint("state IN ('complete', 'not run', 'not fitted')", name="state"),
        Index("uq_self_test", "job_id", "stage", "monitor", unique=True),
        KEPT,
    )

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"))
    stage: Mapped[str]
    monitor: Mapped[str]
    state: Mapped[str]


class ProofStep(Kept):
    """A step of the order in which nothing is lost (codes saved, cleared, driven ...), and when."""

    __tablename__ = "proof_step"
    __table_args__ = (Index("uq_proof_step", "job_id", "step", unique=True), KEPT)

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"))
    step: Mapped[str]
    done_at: Mapped[str]


class CaughtHere(Kept):
    """The proof failed before the car left: never a return, always written down."""

    __tablename__ = "caught_here"

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"), index=True)
    caught_at: Mapped[str]
    words: Mapped[str]


class Answered(Kept):
    """A question about an odd entry that a person has answered with "right as typed"."""

    __tablename__ = "answered"
    __table_args__ = (Index("ix_answered_about", "about"), KEPT)

    about: Mapped[str]
    question: Mapped[str]


class OwnPhrase(Kept):
    """What this shop's customers say, and the symptom group that it means here."""

    __tablename__ = "own_phrase"

    phrase: Mapped[str] = mapped_column(unique=True)
    symptom: Mapped[str]
