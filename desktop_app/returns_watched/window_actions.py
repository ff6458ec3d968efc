"""What is promised: the window of the shop, of a part kind, and of one job before it leaves."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.kind_windows import FROM_JOB, Promise
from desktop_app.returns_watched.link_actions import no_job
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.stored import KindWindow
from desktop_app.returns_watched.stored_links import JobDays, job_days
from desktop_app.returns_watched.stored_windows import (
    kind_window_row,
    read_kind_windows,
    shop_promise,
)
from desktop_app.shop_record.as_shown import check_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.house_rules import change_rules, check_rule, read_rules
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import Setting
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown


def promise_of_shop(
    record: ShopRecord, promise: Promise, shown: Shown[Promise] | None = None
) -> Done:
    """Change what the shop promises where neither a job nor a part kind has its own.

    Jobs that have left keep the window that they were handed over with. Raises WrittenMeanwhile
    where the shop promises something else by now than the page has `shown`.
    """

    def look(deed: Deed) -> None:
        now = shop_promise(read_rules(deed.connection))
        check_as_shown(deed, Setting, shown, now, promise, _said_in(deed))

    return change_rules(record, tr("Change the shop's window"), _columns(promise, 0), look)


def promise_for_kind(
    record: ShopRecord,
    part_kind: str,
    promise: Promise | None,
    shown: Shown[Promise | None] | None = None,
) -> Done:
    """Change what is promised for a part kind; with None the shop's own promise holds again.

    Jobs that have left keep the window that they were handed over with. Raises WrittenMeanwhile
    where something else is promised for the kind by now than the page has `shown`.
    """
    if not part_kind.strip():
        raise ShopTrouble(tr("Which part kind?"), do=tr("Choose the kind that the promise is for."))

    def work(deed: Deed) -> None:
        row = kind_window_row(deed.connection, part_kind)
        now = read_kind_windows(deed.connection).get(part_kind)
        check_as_shown(deed, KindWindow, shown, now, promise, _said_in(deed))
        if promise is None:
            if row is not None:
                deed.remove(KindWindow, row)
            return
        values = {
            "days": promise.days,
            "months": promise.months,
            "miles": promise.miles,
            "rule": promise.rule,
        }
        if row is None:
            deed.add(KindWindow, part_kind=part_kind, **values)
        else:
            deed.change(KindWindow, row, **values)

    return record.do(tr("Change the window for {kind}", kind=kind_words(part_kind)), work)


def change_window(
    record: ShopRecord, job: int, days: Any, miles: Any, rule: str, months: Any = None
) -> Done:
    """Change the promise of one job before it is handed over: days or months, miles, how they end.

    Nothing (an empty text, None or 0) is no such limit. After the hand-over the customer has it,
    and it stays as it was given.
    """
    with record.reading() as connection:
        known = job_days(connection, job)
    if known is None:
        raise no_job()
    promise = Promise(
        _limit("window_days", days),
        _limit("window_months", months),
        _limit("window_miles", miles),
        check_rule("window_rule", rule),
    )
    values = _columns(promise, None) | {"window_from": FROM_JOB}

    def work(deed: Deed) -> None:
        _check_is_here(job_days(deed.connection, job), job)  # perhaps handed over meanwhile
        deed.change(Job, job, **values)

    return record.do(tr("Change the window of {number}", number=known.number), work)


def _said_in(deed: Deed) -> Callable[[Promise | None], str]:
    """Return how a promise is said in the shop's unit."""
    unit = read_rules(deed.connection).unit_of_distance

    def said(promise: Promise | None) -> str:
        return tr("the shop's own promise") if promise is None else promise_in_words(promise, unit)

    return said


def _check_is_here(known: JobDays | None, job: int) -> None:
    if known is None:
        raise no_job()
    if known.left_at is not None:
        raise ShopTrouble(
            tr(
                "{number} was handed over on {left_at} with its window.",
                number=known.number,
                left_at=known.left_at[:10],
            ),
            kept=tr("The window is as it was given."),
            do=tr("A window can be changed until the car leaves."),
        )


def _columns(promise: Promise, no_months: int | None) -> dict[str, Any]:
    """Return a promise as rules and jobs keep it, before anyone knows the day of the hand-over."""
    return {
        "window_days": promise.most_days,
        "window_months": promise.months or no_months,
        "window_miles": promise.miles or 0,
        "window_rule": promise.rule,
    }


def _limit(rule: str, value: Any) -> int | None:
    if value in (None, 0) or not str(value).strip():
        return None
    limit: int = check_rule(rule, value)
    return limit
