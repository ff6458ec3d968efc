"""The one way in which what is said about a return is written down."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from contextlib import AbstractContextManager, nullcontext
from typing import Any

from desktop_app.language import tr
from desktop_app.repair_jobs.later_visit import is_later_visit
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_links import LinkKept, job_days, link_between, link_kept
from desktop_app.returns_watched.stored_one_car import are_one_car
from desktop_app.returns_watched.written_meanwhile import check_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

_UNSAID: Mapping[str, Any] = {
    **{"judgement": None, "judged_at": None, "cause_class": None, "cost_cents": None},
    **{"judged_by": "", "why": "", "change_promised": "", "same_vehicle": 1},
}
Values = Mapping[str, Any]
LookFirst = Callable[[Deed, Any, Values], None]
Around = Callable[[Deed, int, int], AbstractContextManager[None]]
CONFIRMED = ("judgement", "judged_by", "why", "cause_class")  # what a second person confirms


def change_link(
    record: ShopRecord,
    words: str,
    earlier_job: int,
    later_job: int,
    values: Values | Callable[[Any], Values],
    shown: Judging | None = None,
    over: Sequence[str] = (),
    first: LookFirst | None = None,
    around: Around | None = None,
) -> Done:
    """Write columns of the row about two jobs; the row is made where there is none.

    `values` may be worked out from the row as it is (None where there is none). `shown` is what the
    page showed that the deed was done on: raises WrittenMeanwhile where that is not what stands
    there now, among the names `over` that the deed writes over. `first` looks at the row and at
    what is to be written, and may refuse; `around` stands around the writing, and may refuse what
    came of it. Raises ShopTrouble where the later job cannot be a return of the earlier one.
    """

    def work(deed: Deed) -> None:
        link = link_between(deed.connection, earlier_job, later_job)
        if shown is not None:
            check_as_shown(words, shown, LinkKept() if link is None else link_kept(link), over)
        written = values(link) if callable(values) else values
        if first is not None:
            first(deed, link, written)
        jobs = {"earlier_job_id": earlier_job, "later_job_id": later_job}
        if link is None:
            _check_days(deed, earlier_job, later_job)
        with nullcontext() if around is None else around(deed, earlier_job, later_job):
            if link is None:
                deed.add(ReturnLink, **{**jobs, **_UNSAID, **written})
            else:
                deed.change(ReturnLink, link.id, **_unconfirmed(link, written))

    return record.do(words, work)


def _unconfirmed(link: Any, written: Values) -> Values:
    """Take the second look back where what it confirmed becomes something else."""
    changed = (name for name in CONFIRMED if name in written)
    if "second_look" in written or not any(written[n] != getattr(link, n) for n in changed):
        return written
    return {**written, "second_look": None}


def _check_days(deed: Deed, earlier_job: int, later_job: int) -> None:
    then, now = job_days(deed.connection, earlier_job), job_days(deed.connection, later_job)
    if then is None or now is None:
        raise no_job()
    if not is_later_visit(then.came_at, then.left_at, now.came_at) or not are_one_car(
        deed.connection, then.vehicle_id, now.vehicle_id
    ):
        raise ShopTrouble(
            tr(
                "{later} cannot be a return of {earlier}.",
                later=now.number,
                earlier=then.number,
            ),
            kept=tr("Nothing was changed."),
            do=tr("A return is a later visit of the same vehicle, after the hand-over."),
        )


def no_job() -> ShopTrouble:
    """Return the trouble of a job that was taken out meanwhile."""
    return ShopTrouble(
        tr("That job is no longer there: it was undone or taken out."),
        kept=tr("Nothing was changed."),
    )
