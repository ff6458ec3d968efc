"""An import in the history: one entry, checked by its hashes, taken back and brought back whole."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import text

from desktop_app.repair_jobs import actions
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.past_any_deed import past_any_deed
from tests.records_exchanged.importing import a_shop, bring_in, everything, lines
from tests.records_exchanged.test_writing import BACK, COIL, FIRST, PLUG

FILE = lines({**FIRST, **COIL}, {**FIRST, **PLUG}, BACK)


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


def is_whole(shop: ShopRecord) -> bool:
    return check_shop(shop, ()).ok


def test_an_import_is_one_entry_that_holds_no_values(shop: ShopRecord) -> None:
    bring_in(shop, FILE)
    with shop.reading() as connection:
        [(words, body)] = connection.execute(text("SELECT words, body FROM history")).all()
    assert words == "Import jobs.csv"
    facts = json.loads(body)
    assert facts["changes"] == []
    [jobs] = [one for one in facts["bulk"] if one["table"] == "job"]
    assert (jobs["first"], jobs["last"], jobs["rows"], jobs["gone"]) == (1, 2, 2, None)
    assert "misfires" not in body
    assert is_whole(shop)


def test_an_import_is_undone_and_redone_whole(shop: ShopRecord) -> None:
    bring_in(shop, lines({**FIRST, "job_number": "A0", "opened_on": "2023-01-05"}))
    empty = everything(shop)
    bring_in(shop, FILE)
    full = everything(shop)
    for _ in range(2):
        done = shop.undo()
        assert "job" in done.touched
        assert everything(shop) == empty
        assert is_whole(shop)
        shop.redo()
        assert everything(shop) == full
        assert is_whole(shop)


def test_an_import_that_changed_known_jobs_is_undone_too(shop: ShopRecord) -> None:
    bring_in(shop, lines(FIRST))
    before = everything(shop)
    changed = {**FIRST, **COIL, "concern": "stalls when hot", "codes": "P0401", "technician": "Ed"}
    new = {**BACK, "job_number": "A9"}
    bring_in(shop, lines(changed, new))
    after = everything(shop)
    assert after != before
    shop.undo()
    assert everything(shop) == before
    shop.redo()
    assert everything(shop) == after


def test_what_was_done_after_it_is_undone_before_it(shop: ShopRecord) -> None:
    bring_in(shop, FILE)
    actions.write_correction(shop, 1, "another coil")
    assert shop.undo().words == "Write down the correction"
    assert shop.undo().words == "Import jobs.csv"
    assert everything(shop)["job"] == []


def test_a_row_changed_from_outside_stands_against_the_undo(shop: ShopRecord) -> None:
    bring_in(shop, FILE)
    with past_any_deed(shop) as connection:
        connection.execute(text("UPDATE job SET cause = 'else' WHERE id = 1"))
    before = everything(shop)
    with pytest.raises(ShopTrouble, match="changed since"):
        shop.undo()
    assert everything(shop) == before


def test_an_id_that_was_given_out_once_is_never_given_out_again(shop: ShopRecord) -> None:
    bring_in(shop, FILE)
    shop.undo()
    bring_in(shop, FILE)
    assert [row[0] for row in everything(shop)["job"]] == [3, 4]


def test_who_adds_a_job_by_hand_after_an_import_gets_the_next_id(shop: ShopRecord) -> None:
    bring_in(shop, FILE)
    done = actions.add_job(shop, 1, "It rattles")
    assert done.made == 3
