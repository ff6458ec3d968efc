"""Whether a visit may be called another car's: not while a judged return hangs on both."""

from __future__ import annotations

from sqlalchemy import or_, select
from sqlalchemy.orm import aliased

from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_links import link_kept
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.trouble import ShopTrouble


def refuse_where_judged(deed: Deed, visit_id: int) -> None:
    """Raise a ShopTrouble where a return between this visit and another is judged, or has a cost.

    It would leave the list, the rates and the costs unasked. One that somebody said is of two
    vehicles already is in none of them.
    """
    earlier, later = aliased(Job), aliased(Job)
    wanted = (
        select(ReturnLink, earlier.number.label("first"), later.number.label("number"))
        .join(earlier, earlier.id == ReturnLink.earlier_job_id)
        .join(later, later.id == ReturnLink.later_job_id)
        .where(ReturnLink.same_vehicle == 1)
        .where(or_(earlier.visit_id == visit_id, later.visit_id == visit_id))
        .where(earlier.visit_id != later.visit_id)
        .order_by(ReturnLink.id)
    )
    for row in deed.connection.execute(wanted):
        kept = link_kept(row)
        if kept.judgement is None and not kept.cost.is_written:
            continue
        judged = "has a cost" if kept.judgement is None else f"is judged “{kept.judgement.value}”"
        raise ShopTrouble(
            f"{row.number} {judged} as a return of {row.first}; for another car that would no "
            "longer count.",
            kept="They stay one car, and what was judged holds.",
            do=f"Open {row.number} under It's Back, and say there that they are two vehicles.",
        )
