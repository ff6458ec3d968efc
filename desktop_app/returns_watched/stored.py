"""How windows, judgements about returns and what customers said are kept: the tables."""

from __future__ import annotations

from sqlalchemy import CheckConstraint, ForeignKey, Index

from desktop_app.shop_record.tables import KEPT, Kept, Mapped, mapped_column


class ReturnLink(Kept):
    """What a person decided about an earlier job and a later one of the same vehicle.

    `cause_class` is why it came back and `helping_causes` (JSON, a list) what helped; `also` (JSON,
    a list) further kinds of comeback that it is. `cost_cents` is what the shop did not get paid
    and nobody has split; the other amounts are its parts, `recovered_cents` what came back of it.
    `first_view` is what the first technician says. `same_vehicle` is 0 where a person said that the
    two are different vehicles after all. `dangerous` is 1 where somebody could have been hurt, 0
    where not, None where nobody said.
    """

    __tablename__ = "return_link"
    __table_args__ = (
        Index("uq_return_link", "earlier_job_id", "later_job_id", unique=True),
        KEPT,
    )

    earlier_job_id: Mapped[int] = mapped_column(ForeignKey("job.id"))
    later_job_id: Mapped[int] = mapped_column(ForeignKey("job.id"), index=True)
    judgement: Mapped[str | None]
    judged_by: Mapped[str] = mapped_column(default="")
    judged_at: Mapped[str | None]
    why: Mapped[str] = mapped_column(default="")
    cause_class: Mapped[str | None]
    cost_cents: Mapped[int | None]
    change_promised: Mapped[str] = mapped_column(default="")
    same_vehicle: Mapped[int] = mapped_column(default=1)
    also: Mapped[str | None]
    helping_causes: Mapped[str | None]
    evidence: Mapped[str | None]
    first_view: Mapped[str | None]
    second_look: Mapped[str | None]
    unbilled_hours: Mapped[float | None]
    parts_cents: Mapped[int | None]
    sublet_cents: Mapped[int | None]
    tow_cents: Mapped[int | None]
    loan_car_cents: Mapped[int | None]
    goodwill_cents: Mapped[int | None]
    recovered_cents: Mapped[int | None]
    change_by: Mapped[str | None]
    change_due: Mapped[str | None]
    change_done_on: Mapped[str | None]
    change_check_on: Mapped[str | None]
    dangerous: Mapped[int | None]


class KindWindow(Kept):
    """The shop's promise for one part kind; where there is none the house rules' promise holds.

    Days or months, and miles; a limit that is None is not part of the promise.
    """

    __tablename__ = "kind_window"
    __table_args__ = (CheckConstraint("rule IN ('first', 'both')", name="rule"), KEPT)

    part_kind: Mapped[str] = mapped_column(unique=True)
    days: Mapped[int | None]
    months: Mapped[int | None]
    miles: Mapped[int | None]
    rule: Mapped[str]


class CustomerAsked(Kept):
    """A customer was asked how the car does, and what was said.

    `source` is `told` (as is None) or `paper`: another shop's bill was seen. A person may judge the
    same trouble told as a return that this shop never saw, with the words of `return_link`.
    """

    __tablename__ = "customer_asked"
    __table_args__ = (
        CheckConstraint(
            "answer IN ('fine', 'same trouble', 'other trouble', 'not reached', 'car is gone')",
            name="answer",
        ),
        KEPT,
    )

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"), index=True)
    asked_on: Mapped[str]
    answer: Mapped[str]
    odometer_told: Mapped[int | None]
    words: Mapped[str] = mapped_column(default="")
    asked_by: Mapped[str] = mapped_column(default="")
    source: Mapped[str | None]
    judgement: Mapped[str | None]
    judged_by: Mapped[str | None]
    judged_at: Mapped[str | None]
    why: Mapped[str | None]
    cause_class: Mapped[str | None]
    dangerous: Mapped[int | None]


class MoneyOwed(Kept):
    """What a supplier owes for a part: credit for a core, or a claim for one that died early."""

    __tablename__ = "money_owed"
    __table_args__ = (
        CheckConstraint("what IN ('core', 'claim')", name="what"),
        CheckConstraint("state IN ('open', 'asked', 'paid', 'refused')", name="state"),
        KEPT,
    )

    pair_id: Mapped[int] = mapped_column(ForeignKey("pair.id"), index=True)
    what: Mapped[str]
    amount_cents: Mapped[int | None]
    since: Mapped[str]
    state: Mapped[str]
    next_step: Mapped[str] = mapped_column(default="")
    ended_on: Mapped[str | None]
