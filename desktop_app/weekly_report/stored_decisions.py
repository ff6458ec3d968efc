"""How the judgements of a week's returns came about, read from the history in one go."""

from __future__ import annotations

import json
from collections.abc import Collection, Iterator, Mapping
from datetime import date
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.returns_watched.judged_before import (
    JUDGED_COLUMNS,
    JudgedOnce,
    LinkChanged,
    judged_over_time,
)
from desktop_app.shop_record.past.history import first_entry
from desktop_app.shop_record.tables import HistoryEntry


def decisions_since(
    connection: Connection, links: Collection[Any], since: date, table: str
) -> dict[int, tuple[JudgedOnce, ...]]:
    """Return by id what was decided about some rows of a table since a day, oldest first.

    It is the table of the returns, or that of customers' answers, on which what was told is judged.

    The history's newest end is read through once, however many rows there are. What was decided
    before that day stands as the row has it.
    """
    if not links:
        return {}
    changes: dict[int, list[LinkChanged]] = {row.id: [] for row in links}
    for link_id, change in _changes(connection, since, table):
        if link_id in changes:
            changes[link_id].append(change)
    return {
        row.id: judged_over_time(
            _named({name: getattr(row, name) for name in JUDGED_COLUMNS}), changes[row.id]
        )
        for row in links
    }


def _named(row: Mapping[str, Any]) -> Mapping[str, Any]:
    """Return what a row keeps with nobody as "": an answer that nobody judged has no name."""
    return {**row, "judged_by": row["judged_by"] or ""} if "judged_by" in row else row


def _changes(connection: Connection, since: date, table: str) -> Iterator[tuple[int, LinkChanged]]:
    """Yield the changes of a table's rows since a day, the newest first, each with the row's id."""
    wanted = (
        select(
            HistoryEntry.seq,
            HistoryEntry.at,
            HistoryEntry.who,
            HistoryEntry.reverses,
            HistoryEntry.body,
        )
        .where(HistoryEntry.seq >= first_entry(connection, since))
        .where(HistoryEntry.body.contains(f'"table":"{table}"', autoescape=True))
        .order_by(HistoryEntry.seq.desc())
    )
    for seq, at, who, reverses, body in connection.execute(wanted):
        for change in reversed(json.loads(body)["changes"]):
            if change["table"] == table:
                was, now = (row and _named(row) for row in (change["before"], change["after"]))
                yield change["row_id"], LinkChanged(seq, at, who, reverses, was, now)
