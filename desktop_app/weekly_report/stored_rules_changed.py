"""Which house rules a week changed, read from the history."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import date, timedelta
from typing import Any

from sqlalchemy import Connection, or_, select

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.returns_watched.kind_windows import promise_of
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.return_cost import money
from desktop_app.returns_watched.stored import KindWindow
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.past.history import first_entry
from desktop_app.shop_record.rule_words import rule_words, value_words
from desktop_app.shop_record.tables import HistoryEntry, Setting
from desktop_app.weekly_report.figures import ShopWords

_RULE, _KIND = Setting.__tablename__, KindWindow.__tablename__
_Row = dict[str, Any] | None
_Changed = dict[str, tuple[_Row, _Row]]
_USUAL = HouseRules()
_PROMISE = ("window_days", "window_months", "window_miles", "window_rule")  # said as one


def rules_changed(connection: Connection, monday: date, shop: ShopWords) -> tuple[str, ...]:
    """Return one sentence on the rules that a week left otherwise than it found them, or none."""
    end = monday + timedelta(weeks=1)
    rules, promises = _changed(connection, monday, end)
    said = [
        *_promise(connection, rules, end, shop),
        *_rules(rules, shop),
        *(
            tr("the promise for {kind}", kind=shop.kind(kind))
            for kind, (before, after) in promises.items()
            if before != after
        ),
    ]
    return (
        (tr("Changed in the house rules in this week: {changes}.", changes="; ".join(said)),)
        if said
        else ()
    )


def _changed(connection: Connection, since: date, until: date | None) -> tuple[_Changed, _Changed]:
    """Return the house rules and the kinds' promises by name, before and after a period."""
    named = {row.id: row.name for row in connection.execute(select(Setting.id, Setting.name))}
    kinds = connection.execute(select(KindWindow.id, KindWindow.part_kind))
    named_kinds = {row.id: row.part_kind for row in kinds}
    rules: _Changed = {}
    promises: _Changed = {}
    for table, row_id, before, after in _changes(connection, since, until):
        known = {**(before or {}), **(after or {})}
        name = known.get("name") or named.get(row_id)
        found = rules
        if table == _KIND:
            name, found = known.get("part_kind") or named_kinds.get(row_id), promises
        if name is not None:
            found[name] = (found.get(name, (before, None))[0], after)
    return rules, promises


def _rules(changed: _Changed, shop: ShopWords) -> Iterator[str]:
    for name, (before, after) in changed.items():
        was, now = _value(name, before), _value(name, after)
        if was != now and name not in _PROMISE:
            was, now = (_in_words(name, value, shop) for value in (was, now))
            yield tr("{rule} from {was} to {now}", rule=rule_words(name), was=was, now=now)


def _in_words(name: str, value: Any, shop: ShopWords) -> str:
    if isinstance(value, str):
        return f"“{value_words(value)}”"
    return money(value, shop.currency) if name.endswith("_cents") else figure(value, ",")


def _promise(
    connection: Connection, changed: _Changed, end: date, shop: ShopWords
) -> Iterator[str]:
    """Say the shop's promise before and after the week, where one of its four rules changed."""
    if changed.keys().isdisjoint(_PROMISE):
        return
    rules, (later, _) = read_rules(connection), _changed(connection, end, None)
    was, now = [], []
    for name in _PROMISE:
        # What the week left alone stood as the first change since found it.
        kept = _value(name, later[name][0]) if name in later else getattr(rules, name)
        before, after = changed.get(name, (None, None))
        was.append(_value(name, before) if name in changed else kept)
        now.append(_value(name, after) if name in changed else kept)
    if was != now:
        said_was, said_now = (
            promise_in_words(promise_of(*one), shop.distance_unit) for one in (was, now)
        )
        yield tr("the shop's promise from “{was}” to “{now}”", was=said_was, now=said_now)


def _value(name: str, row: _Row) -> Any:
    """Return what a row says of a rule; the usual where there is none, or no such rule any more."""
    return getattr(_USUAL, name, None) if row is None else json.loads(row["value"])


def _changes(
    connection: Connection, since: date, until: date | None
) -> Iterator[tuple[str, int, _Row, _Row]]:
    """Yield what the deeds of a period changed of the rules, the oldest first."""
    said = [
        HistoryEntry.body.contains(f'"table":"{table}"', autoescape=True)
        for table in (_RULE, _KIND)
    ]
    wanted = (
        select(HistoryEntry.body)
        .where(HistoryEntry.seq >= first_entry(connection, since))
        .where(or_(*said))
        .order_by(HistoryEntry.seq)
    )
    if until is not None:
        wanted = wanted.where(HistoryEntry.seq < first_entry(connection, until))
    for body in connection.execute(wanted).scalars():
        for one in json.loads(body)["changes"]:
            if one["table"] in (_RULE, _KIND):
                yield one["table"], one["row_id"], one["before"], one["after"]
