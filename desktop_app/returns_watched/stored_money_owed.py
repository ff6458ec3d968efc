"""Reading what suppliers owe."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from typing import Any

from sqlalchemy import Connection, Select, or_, select

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_names import NO_KINDS, kind_words, place_words
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.owed import Owed, State, What
from desktop_app.returns_watched.stored import MoneyOwed
from desktop_app.returns_watched.stored_links import kept_cents
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.kept_value import damaged, kept_day, kept_word, row_place

_WHAT = tr("“core” or “claim”")
_STATE = tr("“open”, “asked”, “paid” or “refused”")

Kinds = Mapping[str, PartKind]  # the kinds by their ids, for the names of parts


def owed_for_job(connection: Connection, job_id: int, kinds: Kinds = NO_KINDS) -> tuple[Owed, ...]:
    """Read what is owed for the parts of one job, in the order in which it was written."""
    wanted = _wanted().where(Pair.job_id == job_id).order_by(MoneyOwed.id)
    return _read(connection, wanted, kinds)


def money_still_owed(connection: Connection, on: date = date.max) -> tuple[Owed, ...]:
    """Read all that was owed on a day and not paid or refused by then, the oldest first.

    What ended later stands as open: how far it was then is not kept.
    """
    ends = [state.value for state in State if state.is_end]
    wanted = _wanted().where(
        MoneyOwed.since <= on.isoformat(),
        or_(MoneyOwed.state.not_in(ends), MoneyOwed.ended_on > on.isoformat()),
    )
    found = _read(connection, wanted.order_by(MoneyOwed.since, MoneyOwed.id))
    return tuple(_as_it_stood(one, on) for one in found)


def claims_between(connection: Connection, first: date, last: date) -> tuple[Owed, ...]:
    """Read the claims written from one day to another as they stood on the last, oldest first."""
    wanted = _wanted().where(
        MoneyOwed.what == What.CLAIM,
        MoneyOwed.since >= first.isoformat(),
        MoneyOwed.since <= last.isoformat(),
    )
    found = _read(connection, wanted.order_by(MoneyOwed.since, MoneyOwed.id))
    return tuple(_as_it_stood(one, last) for one in found)


def _as_it_stood(one: Owed, on: date) -> Owed:
    """Return a sum as it stood on a day: what ended later was open; how far is not kept."""
    later = one.state.is_end and one.ended_on is not None and one.ended_on > on
    return replace(one, state=State.OPEN, ended_on=None) if later else one


def owed_since(deed: Deed, owed: int) -> str:
    """Return the day since which a sum is owed; empty where it is not there any more."""
    since = deed.connection.execute(select(MoneyOwed.since).where(MoneyOwed.id == owed)).scalar()
    return since or ""


def parts_of_job(
    connection: Connection, job_id: int, kinds: Kinds = NO_KINDS
) -> tuple[tuple[int, str, str], ...]:
    """Return (pair id, part in words, supplier) of each pair of a job."""
    wanted = (
        select(Pair.id, Pair.part_kind, Pair.position, Pair.supplier)
        .where(Pair.job_id == job_id)
        .order_by(Pair.id)
    )
    return tuple((r.id, _part(r, kinds), r.supplier) for r in connection.execute(wanted))


def _wanted() -> Select[*tuple[Any, ...]]:
    return (
        select(MoneyOwed, Pair.part_kind, Pair.position, Pair.supplier, Job.number)
        .join(Pair, Pair.id == MoneyOwed.pair_id)
        .join(Job, Job.id == Pair.job_id)
    )


def _read(
    connection: Connection, wanted: Select[*tuple[Any, ...]], kinds: Kinds = NO_KINDS
) -> tuple[Owed, ...]:
    return tuple(_owed(row, kinds) for row in connection.execute(wanted))


def _owed(row: Any, kinds: Kinds) -> Owed:
    place = row_place("money_owed", row.id, row.number)
    what = kept_word(row.what, tuple(What), _WHAT, place)
    state = kept_word(row.state, tuple(State), _STATE, place)
    since = kept_day(row.since, place)
    ended_on = None if row.ended_on is None else kept_day(row.ended_on, place)
    if ended_on is not None and ended_on < since:
        raise damaged(row.ended_on, tr("a day from {since} on", since=row.since), place)
    return Owed(
        id=row.id,
        pair_id=row.pair_id,
        job_number=row.number,
        part=_part(row, kinds),
        supplier=row.supplier,
        what=what,
        amount_cents=kept_cents(row.amount_cents, place),
        since=since,
        state=state,
        next_step=row.next_step,
        ended_on=ended_on,
    )


def _part(row: Any, kinds: Kinds) -> str:
    name = kind_words(row.part_kind, kinds)
    place = place_words(row.position.strip(), row.part_kind, kinds)
    return f"{name}, {place}" if place else name
