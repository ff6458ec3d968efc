"""What the shop does about a return that it never saw: the same deeds as for one that it saw.

Each takes the earlier job and the customer's answer in which the return was told; it is written on
the first answer that belongs to it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from desktop_app.language import tr
from desktop_app.returns_watched.actions import (
    BESIDE,
    NOT_JUDGED,
    cause_named,
    judgement_named,
    who_judges,
)
from desktop_app.returns_watched.customer_answers import CustomerSaid
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_told_judging import told_in_answer
from desktop_app.returns_watched.written_meanwhile import check_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


def judge_told(
    record: ShopRecord,
    job: int,
    asked: int,
    judgement: str,
    *,
    why: str | None = None,
    cause_class: str | None = None,
    by: str | None = None,
    shown: Judging | None = None,
) -> Done:
    """Write down what a person decided about the same trouble that was told; a second time too.

    With `shown`, here and below, it is refused (WrittenMeanwhile) where other things stand there by
    now. Raises ShopTrouble for an unknown judgement or cause, where nobody is named, or where the
    same trouble is not told any more.
    """
    decided = judgement_named(judgement)
    who = who_judges(record, decided, by)
    said = {} if why is None else {"why": why.strip()}
    if cause_class:
        said["cause_class"] = cause_named(cause_class)

    def values(now: CustomerSaid) -> dict[str, Any]:
        at = record.clock().isoformat(timespec="seconds")
        if now.judgement is decided and now.judged_by == who and now.judged_at:
            at = now.judged_at  # pressed twice: the first moment stays
        return {"judgement": decided.value, "judged_by": who, "judged_at": at, **said}

    words = tr("Judge the return that was told “{judgement}”", judgement=tr(decided.value))
    return _change(record, words, job, asked, values, shown, BESIDE)


def take_told_judgement_back(
    record: ShopRecord, job: int, asked: int, shown: Judging | None = None
) -> Done:
    """Let what was told wait for a judgement again; what was said about it stays."""
    values = {"judgement": None, "judged_by": None, "judged_at": None}
    return _change(record, tr("Take the judgement back"), job, asked, values, shown, BESIDE)


def say_why_told(
    record: ShopRecord, job: int, asked: int, why: str, shown: Judging | None = None
) -> Done:
    """Write the sentence that says why the judgement is what it is."""
    values, over = {"why": why.strip()}, ("judgement", "why")
    return _change(record, tr("Say why it came back"), job, asked, values, shown, over)


def name_told_cause(
    record: ShopRecord,
    job: int,
    asked: int,
    cause_class: str | None,
    shown: Judging | None = None,
) -> Done:
    """Name the class of cause; None leaves it open again."""
    values = {"cause_class": cause_named(cause_class) if cause_class else None}
    over = ("judgement", "cause_class")
    return _change(record, tr("Name the cause of the return"), job, asked, values, shown, over)


def say_told_dangerous(
    record: ShopRecord, job: int, asked: int, dangerous: bool | None, shown: Judging | None = None
) -> Done:
    """Say whether somebody could have been hurt; None where nobody says."""
    values = {"dangerous": None if dangerous is None else int(dangerous)}
    words = tr("Say whether it was dangerous")
    return _change(record, words, job, asked, values, shown, ("dangerous",))


def _change(
    record: ShopRecord,
    words: str,
    job: int,
    asked: int,
    values: Mapping[str, Any] | Callable[[CustomerSaid], Mapping[str, Any]],
    shown: Judging | None,
    over: Sequence[str],
) -> Done:
    def work(deed: Deed) -> None:
        told = told_in_answer(deed.connection, job, asked)
        if told is None:
            raise ShopTrouble(
                tr("That customer tells of the same trouble no longer."),
                kept=NOT_JUDGED,
                do=tr("Look at the answers on the job's page, under Under watch."),
            )
        if shown is not None:
            check_as_shown(words, shown, told.judged_on, over)
        written = values(told.judged_on) if callable(values) else values
        deed.change(CustomerAsked, told.judged_on.id, **written)

    return record.do(words, work)
