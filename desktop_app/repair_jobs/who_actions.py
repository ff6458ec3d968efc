"""What the shop says of a job's work: who did what, how long was searched, what kind it is."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.repair_jobs import stored_lookup as look
from desktop_app.repair_jobs.entry_bounds import MOST_HOURS, check_bounds, check_word
from desktop_app.repair_jobs.one_row import keep_answer
from desktop_app.repair_jobs.stored import Job, JobPerson
from desktop_app.repair_jobs.stored_counted import came_back_as_judged
from desktop_app.repair_jobs.who_did_what import (
    DIDS,
    SAY_WHO,
    WORKS,
    Did,
    Work,
    check_search,
    work_words,
)
from desktop_app.shop_record.as_shown import change_as_shown, check_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown


def say_who(
    record: ShopRecord,
    job_id: int,
    did: Did,
    person: int | None,
    shown: Shown[int | None] | None = None,
) -> Done:
    """Say who did one of the four things of a job; None takes the name out again.

    `shown` is the person that a page showed there. Raises WrittenMeanwhile where it is another.
    """
    check_word(tr("what was done"), did, DIDS)

    def work(deed: Deed) -> None:
        row, now = look.doer_row(deed, job_id, did)
        check_as_shown(deed, JobPerson, shown, now, person, lambda one: _name(deed, one))
        answer = None if person is None else {"person_id": person}
        keep_answer(deed, JobPerson, row, {"job_id": job_id, "did": did}, answer)

    return record.do(SAY_WHO[did], work)


def write_search_hours(
    record: ShopRecord,
    job_id: int,
    hours: float | None,
    shown: Shown[float | None] | None = None,
) -> Done:
    """Write down how many of the job's hours went into finding the cause; None: nobody wrote it."""
    check_bounds(tr("That number of hours"), hours, MOST_HOURS)

    def work(deed: Deed) -> None:
        check_search(hours, look.hours(deed, job_id).whole)
        change_as_shown(deed, Job, job_id, shown, search_hours=hours)

    return record.do(tr("Write down the search hours"), work)


def choose_work(
    record: ShopRecord,
    job_id: int,
    work: Work | None,
    shown: Shown[Work | None] | None = None,
) -> Done:
    """Say what kind of work a job is: None a repair, else one that no rate counts.

    Refused where that would take a judged comeback out of every rate.
    """
    if work is not None:
        check_word(tr("the kind of work"), work, WORKS)

    def say(deed: Deed) -> None:
        if work is not None and came_back_as_judged(deed.connection, job_id):
            raise ShopTrouble(
                tr(
                    "This job came back, as was judged: as {kind_of_work} no rate would hold it.",
                    kind_of_work=work_words(work),
                ),
                kept=tr("Nothing was changed."),
                do=tr("If it was no repair, take the judgement back first, under It's Back."),
            )
        change_as_shown(deed, Job, job_id, shown, work_words, work=work)

    return record.do(tr("Say what kind of work it is"), say)


def _name(deed: Deed, person: int | None) -> str:
    """Return whom another desk has named, for the words of what stands there."""
    name = None if person is None else look.person_name(deed, person)
    return tr("nobody is named") if name is None else f"“{name}”"
