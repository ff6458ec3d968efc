"""Rows that came in bulk before the record got more columns are still known as they came."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import Connection, insert, select
from sqlalchemy.sql.schema import Table

from desktop_app.commands.shop_place import new_place
from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record import bulk, deed
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.databases.dialect import give_ids_from
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.past import history
from desktop_app.shop_record.past.older_forms import LATER_COLUMNS, HashOfForms
from desktop_app.shop_record.past.rows_hash import RowsHash
from desktop_app.shop_record.record import ShopRecord
from tests.conftest import NOON
from tests.from_outside import damage
from tests.watched_shop import job, vehicle

OLD = Path(__file__).parent.parent / "old_records"


def columns(file: Path) -> dict[str, set[str]]:
    record = sqlite3.connect(file)
    tables = [row[0] for row in record.execute("SELECT name FROM sqlite_master WHERE type='table'")]
    found = {
        table: {row[1] for row in record.execute(f'PRAGMA table_info("{table}")')}
        for table in tables
    }
    record.close()
    return found


def test_every_column_that_came_later_is_known() -> None:
    *older, newest = (columns(file) for file in sorted(OLD.glob("*.sqlite")))
    for was in older:
        for table in newest.keys() & was.keys():
            later = newest[table] - was[table]
            forms = LATER_COLUMNS.get(table, ())
            known = [{name for form in forms[:n] for name in form} for n in range(len(forms) + 1)]
            assert later in known, table


ROWS = st.lists(st.tuples(st.integers(), st.text(max_size=3)), max_size=5)


@given(ROWS, st.booleans())
def test_rows_without_what_came_later_have_the_hash_of_then(
    rows: list[tuple[Any, ...]], written: bool
) -> None:
    """The table has two columns, and got `work` and `search_hours` between them."""
    then = RowsHash()
    then.take(rows)
    now = HashOfForms("job", ["id", "work", "search_hours", "concern"])
    now.take([(one, "repair" if written else None, None, words) for one, words in rows])
    assert now.holds(then.hexdigest()) is (not written or not rows)
    assert now.holds(now.now())


def rows_added_then(connection: Connection, table: Table, first: int, last: int) -> bulk.BulkRows:
    """Remember rows as a program of the record's first form would have."""
    added = bulk.rows_added(connection, table, first, last)
    gone = {name for form in LATER_COLUMNS.get(table.name, ()) for name in form}
    kept = [column for column in table.columns if column.name not in gone]
    then = RowsHash()
    wanted = table.select().with_only_columns(*kept).where(table.c.id.between(first, last))
    then.take([tuple(row) for row in connection.execute(wanted.order_by(table.c.id))])
    return bulk.BulkRows(table.name, first, last, added.rows, then.hexdigest())


@pytest.fixture
def shop(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> ShopRecord:
    """A shop into which thirty jobs came before the record got more columns."""
    record = new_place(tmp_path / "shop", lambda: NOON)
    monkeypatch.setattr(deed, "rows_added", rows_added_then)

    one = job(record, vehicle(record), "J-1", "2026-01-05", None)

    def work(now: Deed) -> None:
        like = dict(now.connection.execute(select(*Job.__table__.columns)).mappings().one())
        rows = [{**like, "id": one + n, "number": f"B-{n}"} for n in range(1, 31)]
        now.connection.execute(insert(Job), rows)
        give_ids_from(now.connection, "job", one + 30)
        now.remember_added(Job, one + 1, one + 30)

    record.do("Bring in old jobs", work)
    monkeypatch.undo()
    return record


def test_they_are_no_damage_and_come_out_and_back(shop: ShopRecord) -> None:
    assert check_shop(shop, []).problems == ()
    shop.undo()
    assert check_shop(shop, []).problems == ()
    shop.redo()
    assert check_shop(shop, []).problems == ()
    shop.close()


def test_what_was_taken_out_before_comes_back(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    """An import undone before the record got more columns, and done again after."""
    gone = {name for form in LATER_COLUMNS["job"] for name in form}
    kept = [n for n, one in enumerate(Job.__table__.columns) if one.name not in gone]
    whole = bulk.canonical

    def then(rows: Sequence[Sequence[Any]]) -> bytes:
        return whole([[row[place] for place in kept] for row in rows])

    with shop.reading() as connection:
        [added] = history.done_in(connection, history.last_number(connection))[1]
    monkeypatch.setattr(bulk, "canonical", then)
    monkeypatch.setattr(HashOfForms, "now", lambda _: added.sha256)
    shop.undo()
    monkeypatch.undo()
    shop.redo()
    assert check_shop(shop, []).problems == ()
    shop.close()


def test_what_is_changed_past_the_history_is_found_in_them_too(shop: ShopRecord) -> None:
    damage(shop, "UPDATE job SET work = 'maintenance' WHERE id = 7")
    [problem] = check_shop(shop, []).problems
    assert "job rows 2 to 31" in problem.where
    shop.close()
