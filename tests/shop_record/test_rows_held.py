"""Whatever deeds do, rows stand as the history says; whatever is done past them does not."""

from __future__ import annotations

import tempfile
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError

from desktop_app.commands.shop_place import new_place
from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.faults.busy_shop import by_hand
from tests.from_outside import damage, hands_in
from tests.records_exchanged.importing import bring_in, lines

DEEDS = st.lists(
    st.tuples(
        st.sampled_from(("add", "name", "remove", "undo", "redo", "table")), st.integers(1, 9)
    ),
    max_size=12,
)


def do(record: ShopRecord, what: str, number: int) -> None:
    """Do it where it can be done."""
    try:
        if what == "add":
            record.do("Add", lambda deed: deed.add(Person, name=f"{number} new") and None)
        elif what == "name":
            record.do("Name", lambda deed: deed.change(Person, number, name=f"{number} other"))
        elif what == "remove":
            record.do("Remove", lambda deed: deed.remove(Person, number))
        elif what == "table":
            row = {"job_number": f"R-{number}", "opened_on": "2025-04-03", "plate": f"T {number}"}
            bring_in(record, lines(row | {"concern": "hums", "technician": f"{number} told"}))
        elif what == "undo":
            record.undo()
        else:
            record.redo()
    except (ShopTrouble, IntegrityError):
        pass  # refused: nobody there, nothing to undo, two of one name


@settings(max_examples=25)
@given(DEEDS)
def test_after_any_deeds_nothing_is_found(deeds: list[tuple[str, int]]) -> None:
    with tempfile.TemporaryDirectory() as folder:
        record = new_place(Path(folder) / "shop", lambda: NOON)
        for what, number in deeds:
            do(record, what, number)
        assert check_shop(record, []).problems == ()
        record.close()


@settings(max_examples=15)
@given(DEEDS, st.data())
def test_after_any_deeds_a_row_changed_past_them_is_found(
    deeds: list[tuple[str, int]], data: st.DataObject
) -> None:
    with tempfile.TemporaryDirectory() as folder:
        record = new_place(Path(folder) / "shop", lambda: NOON)
        for what, number in [*deeds, ("add", 11), ("table", 12)]:
            do(record, what, number)
        with hands_in(record.folder) as raw:
            ids = raw.execute(text("SELECT id FROM person ORDER BY id")).scalars().all()
        said = ("UPDATE person SET name = 'x' WHERE id = :id", "DELETE FROM person WHERE id = :id")
        damage(record, data.draw(st.sampled_from(said)), id=data.draw(st.sampled_from(ids)))
        found = [one.where for one in check_shop(record, []).problems]
        assert any(where.startswith("person row") for where in found)
        record.close()


@pytest.mark.embedded
def test_a_value_of_a_kind_that_no_deed_writes_is_found_among_rows_of_a_table(
    tmp_path: Path,
) -> None:
    record = new_place(tmp_path / "shop", lambda: NOON)
    do(record, "table", 1)
    with by_hand(record.folder) as raw:
        # A flipped bit can make bytes of a text; by hand the table must first forget to refuse it.
        raw.execute("PRAGMA writable_schema = ON")
        raw.execute("UPDATE sqlite_master SET sql = replace(sql, 'STRICT', '') WHERE name = 'job'")
        raw.execute("PRAGMA writable_schema = RESET")
    with by_hand(record.folder) as raw:
        raw.execute("UPDATE job SET cause = x'00ff' WHERE id = 1")
    found = [one.where for one in check_shop(record, []).problems]
    assert "job rows 1 to 1" in found
    record.close()
