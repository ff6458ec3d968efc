"""What is refused about a return: more got back than it cost, and a look at one's own work."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, replace
from typing import Any

from sqlalchemy import select

from desktop_app.language import tr
from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.returns_watched.return_cost import CostWritten, ReturnCost, money, return_cost
from desktop_app.returns_watched.stored_hour_cost import moment_judged, read_hour_costs
from desktop_app.returns_watched.stored_links import LinkKept, link_kept
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.trouble import ShopTrouble

_OF_THE_COST = {each.name for each in fields(CostWritten)}


def refuse_a_gain(deed: Deed, link: Any, written: Mapping[str, Any]) -> None:
    """Raise a ShopTrouble where more would have come back than the return cost.

    `written` are the columns that change; the hour costs what it did at the judgement that will
    stand there. What makes a gain of before smaller passes.
    """
    kept = LinkKept() if link is None else link_kept(link)
    judged_at = written.get("judged_at", kept.judged_at)
    hour = read_hour_costs(deed.connection, [judged_at]).at(moment_judged(judged_at))
    amounts = {name: value for name, value in written.items() if name in _OF_THE_COST}
    before, after = _cost(kept.cost, hour), _cost(replace(kept.cost, **amounts), hour)
    if after.total_cents >= min(before.total_cents, 0):
        return
    currency = read_rules(deed.connection).currency
    back = money(after.recovered_cents, currency)
    gone = money(after.total_cents + after.recovered_cents, currency)
    raise ShopTrouble(
        tr("Got back {back} is more than the {gone} that this return cost.", back=back, gone=gone),
        kept=tr("The cost is as it was."),
        do=tr("Write what it cost first. What was got back beyond that is no cost of a return."),
    )


def refuse_first_repairer(deed: Deed, earlier_job: int, who: str) -> None:
    """Raise a ShopTrouble where the one who did the earlier repair would confirm the judgement."""
    wanted = select(Job.number, Person.name).join(Person, Person.id == Job.technician_id)
    row = deed.connection.execute(wanted.where(Job.id == earlier_job)).first()
    if row is not None and row.name == who:
        raise ShopTrouble(
            tr("{who} did the repair on {number}.", who=who, number=row.number),
            kept=tr("The judgement stands as it was."),
            do=tr("A second look takes somebody who did not do the first repair."),
        )


def _cost(written: CostWritten, hour_cost_cents: int) -> ReturnCost:
    found = return_cost(replace(written, cost_cents=written.cost_cents or 0), hour_cost_cents)
    assert found is not None  # an amount of 0 is written
    return found
