"""What a visit cost is counted once, with however many earlier jobs it was written."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from desktop_app.returns_watched.return_cost import ReturnCost
    from desktop_app.weekly_report.year_behind import ReturnDone


def costs_once(
    returns: tuple[ReturnDone, ...], left_out: Collection[str]
) -> tuple[ReturnDone, ...]:
    """Return the same returns, without a cost that was written a second time for one visit.

    Whoever writes a cost with a second earlier job is asked to write only what is not written yet:
    other amounts are added, the very same ones are taken for a repetition, whatever an hour cost
    when each was judged. Of these the first stays that is a comeback in a rate.
    """
    written: dict[object, list[ReturnDone]] = {}
    for one in returns:
        if one.cost is not None:
            written.setdefault(one.row.visit, []).append(one)
    again: set[int] = set()
    for some in written.values():
        if len(some) > 1:
            seen: list[ReturnCost] = []
            for one in sorted(some, key=lambda one: not _counts(one, left_out)):
                assert one.cost is not None
                written_so = replace(one.cost, work_cents=0)  # priced by the day of its judgement
                if written_so in seen:
                    again.add(id(one))
                seen.append(written_so)
    if not again:
        return returns
    return tuple(replace(one, cost=None) if id(one) in again else one for one in returns)


def costs_unwritten(returns: Iterable[ReturnDone]) -> int:
    """Return how many visits have no cost written, with whichever earlier job they were met.

    A return that was only told has no visit that a cost could be written for.
    """
    visits: dict[object, bool] = {}
    for one in returns:
        if one.row.is_told:
            continue
        visits[one.row.visit] = visits.get(one.row.visit, False) or one.cost is not None
    return sum(not written for written in visits.values())


def _counts(one: ReturnDone, left_out: Collection[str]) -> bool:
    return one.row.is_comeback and one.row.earlier not in left_out
