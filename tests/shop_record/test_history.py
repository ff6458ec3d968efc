"""The chain of entries: whatever is changed afterwards outside the program is found."""

from __future__ import annotations

import hashlib
import json

import pytest
from sqlalchemy import select

from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.past.history import (
    GENESIS,
    Entry,
    chain_problems,
    chained_hash,
    sort_out,
)
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import HistoryEntry
from tests.from_outside import damage


@pytest.fixture
def busy(shop: ShopRecord) -> ShopRecord:
    for name in ("Odile", "Benno", "Tuuli"):
        shop.do(f"Add {name}", lambda d, n=name: d.add(Person, name=n) and None)
    return shop


def problems(shop: ShopRecord) -> list[str]:
    with shop.reading() as connection:
        return chain_problems(connection)[1]


def test_an_untouched_chain_holds(busy: ShopRecord) -> None:
    with busy.reading() as connection:
        assert chain_problems(connection) == (3, [])


def test_the_hash_can_be_computed_with_standard_tools(busy: ShopRecord) -> None:
    """The formula of the docstring, written out once more with hashlib alone."""
    with busy.reading() as connection:
        rows = connection.execute(select(HistoryEntry).order_by(HistoryEntry.seq)).mappings().all()
    previous = GENESIS
    for row in rows:
        inner = hashlib.sha256(b"\x00" + row["body"].encode()).digest()
        chained = b"\x01" + bytes.fromhex(previous) + str(row["seq"]).encode() + inner
        assert hashlib.sha256(chained).hexdigest() == row["hash"]
        previous = row["hash"]


def test_a_changed_entry_is_named(busy: ShopRecord) -> None:
    damage(busy, "UPDATE history SET body = replace(body, 'Benno', 'Bruno') WHERE seq = 2")
    assert problems(busy) == ["history entry 2 (“Add Benno”) was changed after it was written"]


@pytest.mark.parametrize("kept", ["no hash", "", "abc"])
def test_an_entry_whose_hash_is_none_any_more_is_named(busy: ShopRecord, kept: str) -> None:
    damage(busy, "UPDATE history SET hash = :kept WHERE seq = 1", kept=kept)
    assert "history entry 1 (“Add Odile”) was changed after it was written" in problems(busy)


def test_a_missing_entry_is_named(busy: ShopRecord) -> None:
    damage(busy, "DELETE FROM history WHERE seq = 2")
    assert "history entries 2 to 2 are missing" in problems(busy)


def test_the_number_of_an_entry_is_part_of_its_hash() -> None:
    assert chained_hash(GENESIS, 1, "{}") != chained_hash(GENESIS, 2, "{}")


def test_the_body_says_everything(busy: ShopRecord) -> None:
    with busy.reading() as connection:
        body = connection.execute(
            select(HistoryEntry.body).where(HistoryEntry.seq == 1)
        ).scalar_one()
    said = json.loads(body)
    assert said["words"] == "Add Odile"
    assert said["changes"] == [
        {
            "table": "person",
            "row_id": 1,
            "before": None,
            "after": {"id": 1, "name": "Odile", "here": 1},
        }
    ]


def test_stacks_are_replayed_from_entries() -> None:
    def entry(seq: int, reverses: int | None = None) -> Entry:
        return Entry(seq, f"deed {seq}", "", reverses)

    undo, redo = sort_out([entry(1), entry(2), entry(3, 2), entry(4, 3), entry(5, 4)])
    assert [e.seq for e in undo] == [1]
    assert [e.seq for e in redo] == [5]
