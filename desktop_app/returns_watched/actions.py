"""What the shop does about returns: judges them, takes that back and says why."""

from __future__ import annotations

from typing import Any

from desktop_app.language import tr
from desktop_app.returns_watched.judgement import Judgement, return_cause
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.link_actions import change_link
from desktop_app.returns_watched.return_cost import MOST_CENTS
from desktop_app.returns_watched.said_beside import also_kept, helping_kept
from desktop_app.returns_watched.stored_judged_between import refuse_where_others_judged
from desktop_app.returns_watched.stored_links import link_kept
from desktop_app.returns_watched.stored_refused import refuse_a_gain
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

NOT_JUDGED = tr("Nothing was judged.")
BESIDE = ("judgement", "why", "cause_class")  # a judgement is not given beside another's reasons


def judge_return(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    judgement: str,
    *,
    why: str | None = None,
    cause_class: str | None = None,
    cost_cents: int | None = None,
    by: str | None = None,
    shown: Judging | None = None,
) -> Done:
    """Write down what a person decided about a later job and an earlier one of the same vehicle.

    `by` is who decided, where it is not who is at the desk. With `shown`, here and in the deeds
    below, it is refused (WrittenMeanwhile) where other things stand there by now. Raises
    ShopTrouble for an unknown judgement or cause, jobs that cannot be a return, or where nobody is
    named: a judgement that nobody gave is none.
    """
    decided = judgement_named(judgement)
    who = who_judges(record, decided, by)
    more = _checked(why=why, cause_class=cause_class, cost_cents=cost_cents)
    said = {name: value for name, value in more.items() if value is not None}

    def values(link: Any) -> dict[str, Any]:
        now = record.clock().isoformat(timespec="seconds")
        judged = {"judgement": decided.value, "judged_by": who, "judged_at": now}
        if link is None:
            return {**judged, **said}
        same = link.judgement == decided.value
        if same and link.judged_by == who:
            judged["judged_at"] = link.judged_at  # pressed twice: the first moment stays
        kept = link_kept(link)
        if not same:
            said["also"] = also_kept(kept.also, decided)
        if "cause_class" in said:
            said["helping_causes"] = helping_kept(kept.helping, said["cause_class"])
        return {**judged, **said}

    words = tr("Judge the return “{judgement}”", judgement=tr(decided.value))
    first = None if cost_cents is None else refuse_a_gain
    return change_link(record, words, earlier_job, later_job, values, shown, BESIDE, first)


def take_judgement_back(
    record: ShopRecord, earlier_job: int, later_job: int, shown: Judging | None = None
) -> Done:
    """Let a return wait for judgement again; what was said about it stays."""
    values = {"judgement": None, "judged_by": "", "judged_at": None, "second_look": None}
    return change_link(
        record, tr("Take the judgement back"), earlier_job, later_job, values, shown, BESIDE
    )


def say_why(
    record: ShopRecord, earlier_job: int, later_job: int, why: str, shown: Judging | None = None
) -> Done:
    """Write the sentence that says why the judgement is what it is."""
    values, over = _checked(why=why), ("judgement", "why")
    return change_link(
        record, tr("Say why it came back"), earlier_job, later_job, values, shown, over
    )


def name_cause_class(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    cause_class: str | None,
    shown: Judging | None = None,
) -> Done:
    """Name the class of cause; None leaves it open again. The main one does not also help."""
    named = {"cause_class": None} if not cause_class else _checked(cause_class=cause_class)

    def values(link: Any) -> dict[str, Any]:
        helping = () if link is None else link_kept(link).helping
        return {**named, "helping_causes": helping_kept(helping, cause_class)}

    words, over = tr("Name the cause of the return"), ("judgement", "cause_class", "helping")
    return change_link(record, words, earlier_job, later_job, values, shown, over)


def promise_change(
    record: ShopRecord, earlier_job: int, later_job: int, change: str, shown: Judging | None = None
) -> Done:
    """Write what the shop will do differently from now on."""
    values, over = {"change_promised": change.strip()}, ("change.words",)
    return change_link(record, tr("Promise a change"), earlier_job, later_job, values, shown, over)


def say_not_same_vehicle(
    record: ShopRecord, earlier_job: int, later_job: int, shown: Judging | None = None
) -> Done:
    """Say that two jobs are of different vehicles; they are not proposed again as a return.

    Refused where that would part another return that is judged or has a cost.
    """
    words, over, values = (
        tr("Say these are two vehicles"),
        (*BESIDE, "same_vehicle"),
        {"same_vehicle": 0},
    )
    around = refuse_where_others_judged
    return change_link(record, words, earlier_job, later_job, values, shown, over, around=around)


def say_same_vehicle(
    record: ShopRecord, earlier_job: int, later_job: int, shown: Judging | None = None
) -> Done:
    """Say that two jobs are of one vehicle after all; what was judged about them holds again."""
    words, over = tr("Say it is the same vehicle"), ("judgement", "same_vehicle")
    return change_link(record, words, earlier_job, later_job, {"same_vehicle": 1}, shown, over)


def who_judges(record: ShopRecord, decided: Judgement, by: str | None) -> str:
    """Return who gives a judgement: `by`, or else who is at the desk; a ShopTrouble for nobody."""
    who = (record.who if by is None else by).strip()
    if not who:
        raise ShopTrouble(
            tr("Nobody is named who judges it “{judgement}”.", judgement=tr(decided.value)),
            kept=NOT_JUDGED,
            do=tr("Say who is here, then judge it."),
        )
    return who


def cause_named(cause_class: str) -> str:
    """Return the id of a cause of returns; a ShopTrouble for one that there is not."""
    if return_cause(cause_class) is None:
        raise ShopTrouble(tr("“{typed}” is not one of the causes of a return.", typed=cause_class))
    return cause_class


def _checked(
    *, why: str | None = None, cause_class: str | None = None, cost_cents: int | None = None
) -> dict[str, Any]:
    if cost_cents is not None and not 0 <= cost_cents <= MOST_CENTS:
        raise ShopTrouble(tr("The cost is not accepted."), do=tr("Accepted: 0 to 1,000,000.00."))
    values: dict[str, Any] = {}
    if why is not None:
        values["why"] = why.strip()
    if cause_class:
        values["cause_class"] = cause_named(cause_class)
    if cost_cents is not None:
        values["cost_cents"] = cost_cents
    return values


def judgement_named(text: str) -> Judgement:
    """Return the judgement of this name; a ShopTrouble for one that there is not."""
    try:
        return Judgement(text.strip().lower())
    except ValueError:
        accepted = ", ".join(each.value for each in Judgement)
        raise ShopTrouble(
            tr("“{typed}” is not a judgement.", typed=text),
            do=tr("Accepted: {accepted}.", accepted=accepted),
        ) from None
