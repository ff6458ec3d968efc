"""The check finds damage in database, history and photos, and says what to do."""

from __future__ import annotations

import sqlite3

from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.check import check_shop
from desktop_app.shop_record.record import FILE_NAME, ShopRecord


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
    shop.photos.path(gone).unlink()
    shop.photos.path(changed).chmod(0o644)
    shop.photos.path(changed).write_bytes(b"other")
    checked = check_shop(shop, [(gone, "job J-101"), (changed, "job J-102")])
    assert not checked.ok
    assert [(p.where, "missing" in p.what, "changed" in p.what) for p in checked.problems] == [
        ("job J-101", True, False),
        ("job J-102", False, True),
    ]


def test_a_row_that_points_nowhere_is_found(shop: ShopRecord) -> None:
    raw = sqlite3.connect(shop.folder / FILE_NAME)
    raw.execute(
        "INSERT INTO vehicle_event (vehicle_id, kind, happened_on, note) "
        "VALUES (77, 'sold', '2026-01-01', '')"
    )
    raw.commit()
    raw.close()
    checked = check_shop(shop, [])
    assert [p.what for p in checked.problems] == [
        "vehicle_event row 1 points to a row of vehicle that is missing"
    ]
