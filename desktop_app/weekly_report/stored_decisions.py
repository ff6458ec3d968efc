"""How the judgements of a week's returns came about, read from the history in one go."""

from __future__ import annotations

import json
from collections.abc import Collection, Iterator
from datetime import date
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.returns_watched.judged_before import (
    JUDGED_COLUMNS,
    JudgedOnce,
    LinkChanged,
    judged_over_time,
)
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.shop_record.history import first_entry
from desktop_app.shop_record.tables import HistoryEntry

_TABLE = ReturnLink.__tablename__


def decisions_since(
    connection: Connection, links: Collection[Any], since: date
) -> dict[int, tuple[JudgedOnce, ...]]:
    """Return by id what was decided about some rows of return_link since a day, oldest first.

    The history's newest end is read through once, however many rows there are. What was decided
    before that day stands as the row has it.
    """
    if not links:
        return {}
    changes: dict[int, list[LinkChanged]] = {row.id: [] for row in links}
    for link_id, change in _changes(connection, since):
        if link_id in changes:
            changes[link_id].append(change)
    return {
        row.id: judged_over_time(
            {name: getattr(row, name) for name in JUDGED_COLUMNS}, changes[row.id]
        )
        for row in links
    }


def _changes(connection: Connection, since: date) -> Iterator[tuple[int, LinkChanged]]:
    """Yield the changes of any return since a day, the newest first, each with the row's id."""
    wanted = (
        select(
            HistoryEntry.seq,
            HistoryEntry.at,
            HistoryEntry.who,
            HistoryEntry.reverses,
            HistoryEntry.body,
        )
        .where(HistoryEntry.seq >= first_entry(connection, since))
        .where(HistoryEntry.body.contains(f'"table":"{_TABLE}"', autoescape=True))
        .order_by(HistoryEntry.seq.desc())
    )
    for seq, at, who, reverses, body in connection.execute(wanted):
        for change in reversed(json.loads(body)["changes"]):
            if change["table"] == _TABLE:
                link = LinkChanged(seq, at, who, reverses, change["before"], change["after"])
                yield change["row_id"], link
