"""How judgements about returns are kept: the table."""

from __future__ import annotations

from sqlalchemy import ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from desktop_app.shop_record.tables import KEPT, Kept


class ReturnLink(Kept):
    """What a person decided about an earlier job and a later one of the same vehicle.

    `cause_class` is why it came back; `cost_cents` what the shop did not get paid; `same_vehicle`
    is 0 where a person said that the two are different vehicles after all.
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
