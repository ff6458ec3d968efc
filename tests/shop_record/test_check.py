"""The check finds damage in database, history and photos, and says what to do."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import open_place
from desktop_app.commands.whole_check import whole_check
from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.checks import looked_over, record_check
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.checks.record_check import described
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.upgrade import DESCRIBED
from tests.conftest import NOON
from tests.from_outside import damage, lose_photo, spoil_photo
from tests.shop_record.backed_up import through
from tests.shop_record.test_opening import OLD_RECORDS


def test_a_whole_shop_has_no_problems(shop: ShopRecord) -> None:
    shop.do("Add", lambda d: d.add(Person, name="Odile") and None)
    photo = shop.photos.keep(b"a photo")
    checked = check_shop(shop, [(photo, "job J-101")])
    assert checked.as_json() == {
        "ok": True,
        "problems": [],
        "photos_checked": 1,
        "history_entries_checked": 1,
    }


def test_missing_and_changed_photos_are_named_with_their_job(shop: ShopRecord) -> None:
    gone, changed = shop.photos.keep(b"one"), shop.photos.keep(b"two")
    lose_photo(shop, gone)
    spoil_photo(shop, changed, b"other")
    checked = check_shop(shop, [(gone, "job J-101"), (changed, "job J-102")])
    assert not checked.ok
    assert [(p.where, "missing" in p.what, "changed" in p.what) for p in checked.problems] == [
        ("job J-101", True, False),
        ("job J-102", False, True),
    ]


@pytest.mark.embedded  # a server lets no row point nowhere
def test_a_row_that_points_nowhere_is_found(shop: ShopRecord) -> None:
    damage(
        shop,
        "INSERT INTO vehicle_event (vehicle_id, kind, happened_on, note) "
        "VALUES (77, 'sold', '2026-01-01', '')",
    )
    checked = check_shop(shop, [])
    assert [(p.where, p.what) for p in checked.problems] == [
        ("the database", "vehicle_event row 1 points to a row of vehicle that is missing"),
        ("vehicle_event row 1", "was put in past the history: no deed has made it"),
    ]


def test_of_very_many_rows_that_were_changed_some_are_named_and_the_rest_counted(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("Odile", "Benno", "Tuuli"):
        shop.do(f"Add {name}", lambda d, n=name: d.add(Person, name=n) and None)
    damage(shop, "UPDATE person SET name = 'x' || id")
    monkeypatch.setattr(record_check, "MOST_NAMED", 1)
    first, rest = check_shop(shop, []).problems
    assert first.where == "person row 1"
    assert rest.what == "2 more rows are not as the history says."
    assert (first.lost, rest.lost) == (True, True)


@pytest.mark.embedded  # that of a server can only be looked at as a copy
def test_where_there_is_no_room_for_a_copy_the_record_itself_is_looked_at(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_record: Path, _copy: Path) -> Iterator[Step]:
        yield Step(0, 1, "")
        raise OSError(28, "No space left on device")

    shop.do("Add", lambda d: d.add(Person, name="Odile") and None)
    damage(shop, "UPDATE person SET name = 'x'")
    monkeypatch.setattr(looked_over, "snapshot_steps", full)
    [problem] = through(whole_check(shop)).problems
    assert problem.where == "person row 1"


@pytest.mark.embedded
def test_the_tables_are_described_as_the_program_knows_them(shop: ShopRecord) -> None:
    with shop.reading() as connection:
        now = described(connection)
    assert now in DESCRIBED, f"add {now} to upgrade.DESCRIBED; with a new step, in place of others"


@pytest.mark.parametrize("saved", sorted(OLD_RECORDS.glob("*.sqlite")), ids=lambda p: p.stem)
def test_a_record_of_an_older_form_is_whole_once_it_was_brought_up_to_date(
    tmp_path: Path, saved: Path
) -> None:
    shutil.copy(saved, tmp_path / FILE_NAME)
    record = open_place(tmp_path, lambda: NOON)
    assert check_shop(record, []).problems == ()
    record.close()
