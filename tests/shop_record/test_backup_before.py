"""Before an import and before an update the shop is backed up: quickly, and with the reason."""

from __future__ import annotations

import json
import os
import shutil
import sqlite3
from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.records_exchanged.import_actions import import_rows
from desktop_app.shop_record.backups.backup_opened import open_backup
from desktop_app.shop_record.backups.backup_turn import AnothersTurn, my_turn
from desktop_app.shop_record.backups.backups_made import backup_before, daily_backup
from desktop_app.shop_record.backups.generations import generations_in, make_generation
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.records_exchanged.importing import a_shop, backed_up_before, bring_in, lines
from tests.records_exchanged.test_writing import FIRST
from tests.screens.records_page import reads
from tests.shop_record.backed_up import named, through, with_photo

OLD = Path(__file__).parent.parent / "old_records"


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


def reasons(shop: ShopRecord) -> list[str]:
    made = generations_in(shop.folder / "backups")
    return [open_backup(folder).manifest.reason for _, folder in made]


@pytest.mark.embedded
def test_the_backup_before_an_import_holds_what_was_there_and_comes_back(
    shop: ShopRecord, tmp_path: Path
) -> None:
    photo = with_photo(shop)
    bring_in(shop, lines(FIRST))
    [backup] = backed_up_before(shop)
    said = open_backup(backup).manifest
    assert (said.jobs, said.photos(), said.entries) == (1, 1, 1)
    assert said.last_at.startswith("2026-11-16")
    through(restore_backup(backup, tmp_path / "again", NOON))
    again = open_shop(tmp_path / "again", lambda: NOON)
    with again.reading() as connection:
        assert connection.exec_driver_sql("SELECT number FROM job").all() == [("J-1",)]
    assert again.photos.read(photo) == b"a photo"
    again.close()


def test_two_of_one_second_and_the_days_stand_side_by_side(shop: ShopRecord) -> None:
    named(shop, "Odile")
    for _ in range(2):
        through(backup_before(shop, "an import"))
    assert len(through(daily_backup(shop))) == 1  # what was made for a reason is not the day's
    assert through(daily_backup(shop)) == []
    assert reasons(shop) == ["before an import", "before an import", ""]
    assert [folder.name for _, folder in generations_in(shop.folder / "backups")] == [
        f"2026-11-16-120000{number}" for number in ("", "-2", "-3")
    ]


def test_photos_cost_no_room_in_a_hurry_and_are_copied_with_the_days_backup(
    shop: ShopRecord,
) -> None:
    photo = with_photo(shop)
    backup = through(backup_before(shop, "an import"))
    ours, theirs = backup.parent / "photos" / photo[:2] / photo, shop.photos.path(photo)
    assert ours.samefile(theirs)
    through(daily_backup(shop))
    assert not ours.samefile(theirs)
    assert ours.read_bytes() == theirs.read_bytes()


def test_where_a_disk_knows_no_second_name_it_is_copied(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(*_: object) -> None:
        raise OSError("not on this disk")

    monkeypatch.setattr(os, "link", refuse)
    photo = with_photo(shop)
    backup = through(backup_before(shop, "an import"))
    assert (backup.parent / "photos" / photo[:2] / photo).read_bytes() == b"a photo"


@pytest.mark.embedded
def test_a_photo_damaged_in_the_shop_is_named_and_hinders_nothing(
    shop: ShopRecord, tmp_path: Path
) -> None:
    photo = with_photo(shop)
    shop.photos.path(photo).chmod(0o644)
    shop.photos.path(photo).write_bytes(b"a Photo")
    backup = through(backup_before(shop, "an import"))
    assert open_backup(backup).manifest.missing_photos == (photo,)
    through(restore_backup(backup, tmp_path / "again", NOON))


@pytest.mark.embedded
def test_an_import_is_not_begun_where_no_backup_can_be_made(shop: ShopRecord) -> None:
    with_photo(shop)
    (shop.folder / "backups").write_text("in the way")
    with pytest.raises(ShopTrouble, match="was not written"):
        bring_in(shop, lines(FIRST))
    with shop.reading() as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM job").scalar_one() == 1


@pytest.mark.embedded
def test_who_stops_the_backup_stops_the_import(shop: ShopRecord) -> None:
    class Stopped(Exception):
        pass

    def stop(step: Step) -> None:
        raise Stopped

    with_photo(shop)
    with pytest.raises(Stopped):
        import_rows(shop, (), "jobs.csv", reads(), backing_up=stop)
    assert reasons(shop) == []
    assert not list((shop.folder / "backups").glob(".being-made-*"))


def test_an_older_shop_is_backed_up_with_its_photos_before_its_update(tmp_path: Path) -> None:
    folder = tmp_path / "shop"
    folder.mkdir()
    shutil.copy(OLD / "0001.sqlite", folder / FILE_NAME)
    open_shop(folder, lambda: NOON).close()
    [(_, backup)] = generations_in(folder / "backups")
    said = open_backup(backup).manifest
    assert (said.reason, said.record_form, said.jobs) == ("before an update", "0001", 1)
    through(restore_backup(backup, tmp_path / "again", NOON))
    assert not list(folder.glob("shop-before-*"))


def test_of_a_damaged_older_record_a_copy_is_set_aside(tmp_path: Path) -> None:
    shutil.copy(OLD / "0001.sqlite", tmp_path / FILE_NAME)
    with sqlite3.connect(tmp_path / FILE_NAME) as raw:
        raw.execute("UPDATE history SET body = 'other' WHERE seq = 1")
    raw.close()
    open_shop(tmp_path, lambda: NOON).close()
    assert generations_in(tmp_path / "backups") == []
    assert len(list(tmp_path.glob("shop-before-*.sqlite"))) == 1


def test_one_at_a_time_and_who_waits_says_so(shop: ShopRecord) -> None:
    named(shop, "Odile")
    base = shop.folder / "backups"
    base.mkdir()
    turn = through(my_turn(base, waits=False))
    with pytest.raises(AnothersTurn):
        through(daily_backup(shop))
    waiting = make_generation(shop.folder, base, shop.clock(), "before an import")
    assert next(waiting).words.startswith("Waiting for another window")
    turn.close()
    assert "Waiting" not in next(waiting).words
    through(waiting)
    assert reasons(shop) == ["before an import"]


def test_an_older_manifest_says_less_and_is_read(shop: ShopRecord) -> None:
    with_photo(shop)
    [made] = through(daily_backup(shop))
    file = made.folder / "manifest.json"
    said = json.loads(file.read_text())
    for name in ("reason", "jobs", "last_at"):
        del said[name]
    file.write_text(json.dumps(said))
    older = open_backup(made.folder).manifest
    assert (older.reason, older.jobs, older.last_at) == ("", None, "")
    assert older.made_at == NOON.isoformat(timespec="seconds")
