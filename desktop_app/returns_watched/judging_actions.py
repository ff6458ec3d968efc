"""What is written down beside a judgement: further kinds, views, evidence, cost and change.

`shown` is what the page showed: where something else stands there by now, it is not written over.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from typing import Any

from desktop_app.language import tr
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.link_actions import CONFIRMED, Values, change_link
from desktop_app.returns_watched.return_cost import AMOUNTS, MOST_CENTS, MOST_HOURS
from desktop_app.returns_watched.said_beside import (
    also_kept,
    checked_also,
    checked_helping,
    helping_kept,
)
from desktop_app.returns_watched.stored_links import kept_judgement
from desktop_app.returns_watched.stored_refused import refuse_a_gain, refuse_first_repairer
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.kept_value import LAST_KEPT, OLDEST_KEPT
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

# The days of a promise of change, by their names in the record.
CHANGE_DAYS = {
    "change_due": tr("Due on"),
    "change_done_on": tr("Done on"),
    "change_check_on": tr("Look on whether it helped"),
}


def say_also(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    also: Iterable[str],
    shown: Judging | None = None,
) -> Done:
    """Say which further kinds of comeback a return is, beside the one that it was judged."""
    wanted = tuple(also)

    def values(link: Any) -> dict[str, Any]:
        word = None if link is None else link.judgement
        main = None if word is None else kept_judgement(word)
        return {"also": also_kept(checked_also(wanted, main), main)}

    return change_link(
        record,
        tr("Say what it is as well"),
        earlier_job,
        later_job,
        values,
        shown,
        ("judgement", "also"),
    )


def name_helping_causes(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    helping: Iterable[str],
    shown: Judging | None = None,
) -> Done:
    """Name the causes that helped; the main one is left out."""
    wanted = checked_helping(helping)

    def values(link: Any) -> dict[str, Any]:
        return {"helping_causes": helping_kept(wanted, None if link is None else link.cause_class)}

    return change_link(
        record,
        tr("Name what helped"),
        earlier_job,
        later_job,
        values,
        shown,
        ("cause_class", "helping"),
    )


def write_evidence(
    record: ShopRecord, earlier_job: int, later_job: int, words: str, shown: Judging | None = None
) -> Done:
    """Write what the judgement rests on: the old part kept, codes, the comparison."""
    values = {"evidence": words.strip() or None}
    return change_link(
        record, tr("Write the evidence"), earlier_job, later_job, values, shown, ("evidence",)
    )


def write_first_view(
    record: ShopRecord, earlier_job: int, later_job: int, words: str, shown: Judging | None = None
) -> Done:
    """Write what the one who did the first repair says about it."""
    values = {"first_view": words.strip() or None}
    return change_link(
        record,
        tr("Write the first repairer's view"),
        earlier_job,
        later_job,
        values,
        shown,
        ("first_view",),
    )


def say_dangerous(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    dangerous: bool | None,
    shown: Judging | None = None,
) -> Done:
    """Say whether somebody could have been hurt; None where nobody says."""
    values = {"dangerous": None if dangerous is None else int(dangerous)}
    words = tr("Say whether it was dangerous")
    return change_link(record, words, earlier_job, later_job, values, shown, ("dangerous",))


def look_again(
    record: ShopRecord, earlier_job: int, later_job: int, shown: Judging | None = None
) -> Done:
    """Confirm a judgement as a second person: who is at the desk, and the day.

    Raises ShopTrouble where nobody is named at the desk, or the same person judged or did the
    earlier repair.
    """
    who, day = record.who, record.clock().date()

    def own_work(deed: Deed, _link: Any, _written: Values) -> None:
        refuse_first_repairer(deed, earlier_job, who)

    def values(link: Any) -> dict[str, Any]:
        if link is None or link.judgement is None:
            raise ShopTrouble(
                tr("There is no judgement to confirm yet."), do=tr("Judge the return first.")
            )
        if not who:
            raise ShopTrouble(
                tr("Nobody is named at the desk."),
                do=tr("Choose who is here, then press it again."),
            )
        if who == link.judged_by:
            raise ShopTrouble(
                tr("{who} judged this return.", who=who),
                do=tr("A second look takes a second person."),
            )
        return {"second_look": f"{who}, {day.isoformat()}"}

    return change_link(
        record,
        tr("Confirm the judgement"),
        earlier_job,
        later_job,
        values,
        shown,
        (*CONFIRMED, "second_look"),
        own_work,
    )


def take_second_look_back(
    record: ShopRecord, earlier_job: int, later_job: int, shown: Judging | None = None
) -> Done:
    """Take a second look back; the judgement stays."""
    values = {"second_look": None}
    return change_link(
        record,
        tr("Take the second look back"),
        earlier_job,
        later_job,
        values,
        shown,
        ("second_look",),
    )


def write_unpaid_hours(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    hours: float | None,
    shown: Judging | None = None,
) -> Done:
    """Write the hours of work that nobody pays for this return; None where nobody knows.

    Here and for each amount: raises ShopTrouble where more would have come back than it cost.
    """
    if hours is not None and not 0 <= hours <= MOST_HOURS:
        raise ShopTrouble(
            tr("The hours are not accepted."),
            do=tr("Accepted: 0 to {most:,}.", most=MOST_HOURS),
        )
    values = {"unbilled_hours": hours}
    return change_link(
        record,
        tr("Write the hours of the return"),
        earlier_job,
        later_job,
        values,
        shown,
        ("cost.unbilled_hours",),
        refuse_a_gain,
    )


def write_amount(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    name: str,
    cents: int | None,
    shown: Judging | None = None,
) -> Done:
    """Write one amount of the cost by its name in the record; cents, None where nobody knows."""
    if name not in AMOUNTS:
        raise ShopTrouble(tr("“{name}” is no part of the cost of a return.", name=name))
    if cents is not None and not 0 <= cents <= MOST_CENTS:
        raise ShopTrouble(tr("The amount is not accepted."), do=tr("Accepted: 0 to 1,000,000.00."))
    words = tr("Write the cost of the return: {amount}", amount=AMOUNTS[name].lower())
    values, over = {name: cents}, (f"cost.{name}",)
    return change_link(record, words, earlier_job, later_job, values, shown, over, refuse_a_gain)


def name_who_changes(
    record: ShopRecord, earlier_job: int, later_job: int, name: str, shown: Judging | None = None
) -> Done:
    """Name who does what was promised."""
    values = {"change_by": name.strip() or None}
    return change_link(
        record, tr("Name who changes it"), earlier_job, later_job, values, shown, ("change.by",)
    )


def set_change_day(
    record: ShopRecord,
    earlier_job: int,
    later_job: int,
    name: str,
    day: date | None,
    shown: Judging | None = None,
) -> Done:
    """Set a day of the promise by its name in the record; None leaves it open again.

    What is said to be done on a day that has not come is refused, and a day that is none of ours.
    """
    if name not in CHANGE_DAYS:
        raise ShopTrouble(tr("“{name}” is no day of a promise.", name=name))
    if name == "change_done_on" and day is not None and day > record.clock().date():
        raise ShopTrouble(
            tr("{day} has not come yet.", day=day.isoformat()),
            do=tr("Write the day on which it was done."),
        )
    if day is not None and not OLDEST_KEPT <= day <= LAST_KEPT:
        raise ShopTrouble(
            tr("{day} is not accepted.", day=day.isoformat()),
            do=tr(
                "Accepted: {first} to {last}.",
                first=OLDEST_KEPT.isoformat(),
                last=LAST_KEPT.isoformat(),
            ),
        )
    values = {name: None if day is None else day.isoformat()}
    words = tr("Set the day of a change: {which_day}", which_day=CHANGE_DAYS[name].lower())
    over = (name.replace("change_", "change."),)
    return change_link(record, words, earlier_job, later_job, values, shown, over)
