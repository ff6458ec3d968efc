"""What an hour of work cost when a return was judged, read from the history of the house rule."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from datetime import UTC, date, datetime, timedelta
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.returns_watched.hour_cost import HourCosts
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.kept_value import kept_moment, kept_whole
from desktop_app.shop_record.past.history import first_entry
from desktop_app.shop_record.tables import HistoryEntry, Setting

_RULE = "hour_cost_cents"
_MOST = 2**53


def read_hour_costs(connection: Connection, judged_at: Iterable[str | None]) -> HourCosts:
    """Read what an hour costs, and what it cost since the first of some judgements.

    A rule that stands as it came was never changed: no history is read for it.
    """
    now = read_rules(connection).hour_cost_cents
    moments = [moment for at in judged_at if (moment := moment_judged(at)) is not None]
    row_id = connection.execute(select(Setting.id).where(Setting.name == _RULE)).scalar()
    if not moments or row_id is None:
        return HourCosts(now)
    return HourCosts(now, tuple(_changes(connection, row_id, min(moments).date())))


def moment_judged(at: str | None) -> datetime | None:
    """Return the moment of a judgement as the costs go by it; None where nobody judged."""
    return None if at is None else kept_moment(at).astimezone(UTC)


def _changes(connection: Connection, row_id: int, since: date) -> Iterator[tuple[datetime, int]]:
    """Yield when the rule was changed and what it said before.

    An entry's body is JSON with sorted names and no spaces: the row is found by its letters.
    """
    table = Setting.__tablename__
    named = f'"row_id":{row_id},"table":"{table}"' + "}"
    wanted = (
        select(HistoryEntry.at, HistoryEntry.body)
        .where(HistoryEntry.seq >= first_entry(connection, since - timedelta(days=1)))
        .where(HistoryEntry.body.contains(named, autoescape=True))
        .order_by(HistoryEntry.seq)
    )
    for at, body in connection.execute(wanted):
        for change in json.loads(body)["changes"]:
            if change["table"] == table and change["row_id"] == row_id:
                yield kept_moment(at).astimezone(UTC), _cents(change["before"])


def _cents(before: dict[str, Any] | None) -> int:
    value = HouseRules().hour_cost_cents if before is None else json.loads(before["value"])
    return kept_whole(value, 0, _MOST, tr("what an hour costs"))
