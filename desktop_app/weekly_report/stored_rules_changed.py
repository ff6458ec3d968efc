"""Which house rules a week changed, read from the history."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from datetime import date, timedelta
from typing import Any

from sqlalchemy import Connection, or_, select

from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.returns_watched.stored import KindWindow
from desktop_app.shop_record.history import first_entry
from desktop_app.shop_record.house_rules import all_rules
from desktop_app.shop_record.tables import HistoryEntry, Setting

_RULE, _KIND = Setting.__tablename__, KindWindow.__tablename__
_Row = dict[str, Any] | None


def rules_changed(connection: Connection, monday: date) -> tuple[str, ...]:
    """Return one sentence on the rules that a week left otherwise than it found them, or none."""
    named = {row.id: row.name for row in connection.execute(select(Setting.id, Setting.name))}
    kinds = connection.execute(select(KindWindow.id, KindWindow.part_kind))
    named_kinds = {row.id: row.part_kind for row in kinds}
    rules: dict[str, tuple[_Row, _Row]] = {}
    promises: dict[str, tuple[_Row, _Row]] = {}
    for table, row_id, before, after in _changes(connection, monday):
        known = {**(before or {}), **(after or {})}
        name = known.get("name") or named.get(row_id)
        found = rules
        if table == _KIND:
            name, found = known.get("part_kind") or named_kinds.get(row_id), promises
        if name is not None:
            found[name] = (found.get(name, (before, None))[0], after)
    said = [*_rules(rules), *_promises(promises)]
    return (f"Changed in the house rules in this week: {'; '.join(said)}.",) if said else ()


def _rules(changed: Mapping[str, tuple[_Row, _Row]]) -> Iterator[str]:
    usual = {rule.name: rule.default for rule in all_rules()}
    for name, (before, after) in changed.items():
        was, now = _value(before, usual.get(name)), _value(after, usual.get(name))
        if was != now:
            yield f"{name.replace('_', ' ')} from {was} to {now}"


def _promises(changed: Mapping[str, tuple[_Row, _Row]]) -> Iterator[str]:
    for kind, (before, after) in changed.items():
        if before != after:
            yield f"the promise for {kind_words(kind)}"


def _value(row: _Row, usual: object) -> object:
    return usual if row is None else json.loads(row["value"])


def _changes(connection: Connection, monday: date) -> Iterator[tuple[str, int, _Row, _Row]]:
    """Yield what the week's deeds changed of the rules, the oldest first."""
    said = [
        HistoryEntry.body.contains(f'"table":"{table}"', autoescape=True)
        for table in (_RULE, _KIND)
    ]
    wanted = (
        select(HistoryEntry.body)
        .where(HistoryEntry.seq >= first_entry(connection, monday))
        .where(HistoryEntry.seq < first_entry(connection, monday + timedelta(weeks=1)))
        .where(or_(*said))
        .order_by(HistoryEntry.seq)
    )
    for body in connection.execute(wanted).scalars():
        for one in json.loads(body)["changes"]:
            if one["table"] in (_RULE, _KIND):
                yield one["table"], one["row_id"], one["before"], one["after"]
