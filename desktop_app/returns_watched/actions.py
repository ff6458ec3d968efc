"""What the shop does about returns: judges them, takes that back, says why, changes a promise."""

from __future__ import annotations

from typing import Any

from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.judgement import Judgement, return_cause
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_links import job_days, link_between
from desktop_app.returns_watched.window import Window
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.house_rules import check_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

MOST_CENTS = 100_000_000


def judge_return(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    judgement: str,
    *,
    why: str | None = None,
    cause_class: str | None = None,
    cost_cents: int | None = None,
) -> Done:
    """Write down what a person decided about a later job and an earlier one of the same vehicle.

    Raises ShopTrouble for an unknown judgement or cause, or jobs that cannot be a return.
    """
    decided = _judgement(judgement)
    more = _checked(why=why, cause_class=cause_class, cost_cents=cost_cents)
    values: dict[str, Any] = {
        "judgement": decided.value,
        "judged_by": record.who,
        "judged_at": record.clock().isoformat(timespec="seconds"),
        **{name: value for name, value in more.items() if value is not None},
    }
    with record.reading() as connection:
        link = link_between(connection, earlier_job, later_job)
    # Pressed twice it is one judgement: the first moment stays.
    if link is not None and link.judgement == decided.value and link.judged_by == record.who:
        values.pop("judged_at")
    return _change(record, f"Judge the return “{decided.value}”", earlier_job, later_job, values)


def take_judgement_back(record: ShopRecord, earlier_job: int, later_job: int) -> Done:
    """Let a return wait for judgement again; what was said about it stays."""
    values = {"judgement": None, "judged_by": "", "judged_at": None}
    return _change(record, "Take the judgement back", earlier_job, later_job, values)


def say_why(record: ShopRecord, earlier_job: int, later_job: int, why: str) -> Done:
    """Write the sentence that says why the judgement is what it is."""
    return _change(record, "Say why it came back", earlier_job, later_job, _checked(why=why))


def name_cause_class(
    record: ShopRecord, earlier_job: int, later_job: int, cause_class: str | None
) -> Done:
    """Name the class of cause; None leaves it open again."""
    values = {"cause_class": None} if not cause_class else _checked(cause_class=cause_class)
    return _change(record, "Name the cause of the return", earlier_job, later_job, values)


def write_cost(
    record: ShopRecord, earlier_job: int, later_job: int, cost_cents: int | None
) -> Done:
    """Write what the return cost the shop, in cents; None where nobody knows."""
    values = {"cost_cents": None} if cost_cents is None else _checked(cost_cents=cost_cents)
    return _change(record, "Write the cost of the return", earlier_job, later_job, values)


def promise_change(record: ShopRecord, earlier_job: int, later_job: int, change: str) -> Done:
    """Write what the shop will do differently from now on."""
    values = {"change_promised": change.strip()}
    return _change(record, "Promise a change", earlier_job, later_job, values)


def say_not_same_vehicle(record: ShopRecord, earlier_job: int, later_job: int) -> Done:
    """Say that two jobs are of different vehicles; they are not proposed again as a return."""
    values = {"same_vehicle": 0}
    return _change(record, "Say these are two vehicles", earlier_job, later_job, values)


def change_window(record: ShopRecord, job: int, days: Any, miles: Any, rule: str) -> Done:
    """Change the promise of one job before it is handed over: days, miles, how they end.

    After the hand-over the customer has it, and it stays as it was given.
    """
    with record.reading() as connection:
        known = job_days(connection, job)
    if known is None:
        raise _no_job(job)
    if known.left_at is not None:
        raise ShopTrouble(
            f"{known.number} was handed over on {known.left_at[:10]} with its window.",
            kept="The window is as it was given.",
            do="A window can be changed until the car leaves.",
        )
    kept = Window(
        check_rule("window_days", days),
        check_rule("window_miles", miles),
        check_rule("window_rule", rule),
    )

    def work(deed: Deed) -> None:
        deed.change(
            Job, job, window_days=kept.days, window_miles=int(kept.miles), window_rule=kept.rule
        )

    return record.do(f"Change the window of {known.number}", work)


def _change(
    record: ShopRecord, words: str, earlier_job: int, later_job: int, values: dict[str, Any]
) -> Done:
    def work(deed: Deed) -> None:
        link = link_between(deed.connection, earlier_job, later_job)
        if link is not None:
            deed.change(ReturnLink, link.id, **values)
            return
        _check_days(deed, earlier_job, later_job)
        jobs = {"earlier_job_id": earlier_job, "later_job_id": later_job}
        unsaid = {"judgement": None, "judged_at": None, "cause_class": None, "cost_cents": None}
        unwritten = {"judged_by": "", "why": "", "change_promised": "", "same_vehicle": 1}
        deed.add(ReturnLink, **{**jobs, **unsaid, **unwritten, **values})

    return record.do(words, work)


def _check_days(deed: Deed, earlier_job: int, later_job: int) -> None:
    then, now = job_days(deed.connection, earlier_job), job_days(deed.connection, later_job)
    if then is None or now is None:
        raise _no_job(earlier_job if then is None else later_job)
    if then.left_at is None or then.left_at[:10] > now.came_at[:10] or earlier_job == later_job:
        raise ShopTrouble(
            f"{now.number} cannot be a return of {then.number}.",
            kept="Nothing was changed.",
            do="The earlier job must be handed over before the later visit begins.",
        )


def _checked(
    *, why: str | None = None, cause_class: str | None = None, cost_cents: int | None = None
) -> dict[str, Any]:
    if cause_class and return_cause(cause_class) is None:
        raise ShopTrouble(f"“{cause_class}” is not one of the causes of a return.")
    if cost_cents is not None and not 0 <= cost_cents <= MOST_CENTS:
        raise ShopTrouble("The cost is not accepted.", do="Accepted: 0 to 1,000,000.00.")
    values: dict[str, Any] = {}
    if why is not None:
        values["why"] = why.strip()
    if cause_class:
        values["cause_class"] = cause_class
    if cost_cents is not None:
        values["cost_cents"] = cost_cents
    return values


def _judgement(text: str) -> Judgement:
    try:
        return Judgement(text.strip().lower())
    except ValueError:
        accepted = ", ".join(each.value for each in Judgement)
        raise ShopTrouble(f"“{text}” is not a judgement.", do=f"Accepted: {accepted}.") from None


def _no_job(job: int) -> ShopTrouble:
    return ShopTrouble(
        f"That job (number {job} in the record) is no longer there.", kept="Nothing was changed."
    )
