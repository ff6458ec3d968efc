"""A backup holds the whole shop, and a shop that was brought back is the same one."""

from __future__ import annotations

import shutil
import zipfile
from pathlib import Path

import pytest

from desktop_app.shop_record import upgrade
from desktop_app.shop_record.backups.backup import make_backup
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.shop_record.backed_up import all_files, archive_of, named, through, with_photo

OLD_RECORDS = sorted((Path(__file__).parent.parent / "old_records").glob("*.sqlite"))


def rows_of(record: ShopRecord) -> list[str]:
    with record.reading() as connection:
        raw = connection.connection.driver_connection
        assert raw is not None
        return list(raw.iterdump())


def test_all_of_a_shop_comes_back(shop: ShopRecord, tmp_path: Path) -> None:
    photo = with_photo(shop)
    only_an_undo_brings_it_back = shop.photos.keep(b"another photo")
    (shop.folder / "part_kinds").mkdir()
    (shop.folder / "part_kinds" / "Our tie rod.toml").write_text("name = 'tie rod'")
    made = through(make_backup(shop.folder, tmp_path / "shop.zip", NOON))
    assert made.manifest.missing_photos == ()
    named(shop, "Somebody who came later")
    restored = through(restore_backup(made.file, tmp_path / "again", NOON))
    assert restored.manifest == made.manifest
    again = open_shop(tmp_path / "again", lambda: NOON)
    shop.undo()
    with again.reading() as connection, shop.reading() as live:
        for table in ("person", "job", "photo"):
            words = f"SELECT * FROM {table}"
            found = connection.exec_driver_sql(words).all()
            assert found == live.exec_driver_sql(words).all()
    assert sorted(again.photos.all_names()) == sorted([photo, only_an_undo_brings_it_back])
    assert again.photos.read(photo) == b"a photo"
    assert (again.folder / "part_kinds" / "Our tie rod.toml").read_text() == "name = 'tie rod'"
    assert check_shop(again, [(photo, "job J-1")]).ok
    named(again, "Who works on")  # the chain goes on
    assert check_shop(again, []).ok
    again.close()


@pytest.mark.embedded
def test_the_bytes_of_an_untouched_shop_are_the_same(shop: ShopRecord, tmp_path: Path) -> None:
    with_photo(shop)
    file = archive_of(shop, tmp_path / "shop.zip")
    through(restore_backup(file, tmp_path / "again", NOON))
    found = all_files(tmp_path / "again")
    assert found.pop("restored-from.json")
    before = all_files(shop.folder)
    assert found.keys() == before.keys()
    again = open_shop(tmp_path / "again", lambda: NOON)
    assert rows_of(shop) == rows_of(again)
    again.close()


def test_any_program_for_zips_reads_it_and_nothing_is_packed(
    shop: ShopRecord, tmp_path: Path
) -> None:
    photo = with_photo(shop)
    with zipfile.ZipFile(archive_of(shop, tmp_path / "shop.zip")) as archive:
        assert archive.testzip() is None
        assert archive.namelist() == ["shop.sqlite", f"photos/{photo[:2]}/{photo}", "manifest.json"]
        assert archive.read(f"photos/{photo[:2]}/{photo}") == b"a photo"
        assert all(info.compress_type == zipfile.ZIP_STORED for info in archive.infolist())


def test_a_shop_in_which_nothing_is_written_comes_back(shop: ShopRecord, tmp_path: Path) -> None:
    file = archive_of(shop, tmp_path / "shop.zip")
    restored = through(restore_backup(file, tmp_path / "again", NOON))
    assert (restored.manifest.shop, restored.manifest.entries) == ("", 0)


def test_nothing_that_is_there_is_written_over(shop: ShopRecord, tmp_path: Path) -> None:
    (tmp_path / "shop.zip").write_text("mine")
    with pytest.raises(ShopTrouble, match="is there already"):
        archive_of(shop, tmp_path / "shop.zip")
    assert (tmp_path / "shop.zip").read_text() == "mine"
    file = archive_of(shop, tmp_path / "other.zip")
    (tmp_path / "again").mkdir()
    (tmp_path / "again" / "note.txt").write_text("mine")
    with pytest.raises(ShopTrouble, match="not empty"):
        through(restore_backup(file, tmp_path / "again", NOON))
    assert all_files(tmp_path / "again") == {"note.txt": b"mine"}


def test_an_empty_folder_may_be_filled(shop: ShopRecord, tmp_path: Path) -> None:
    (tmp_path / "again").mkdir()
    through(restore_backup(archive_of(shop, tmp_path / "shop.zip"), tmp_path / "again", NOON))
    assert (tmp_path / "again" / FILE_NAME).is_file()


@pytest.mark.embedded
@pytest.mark.parametrize("harm", ["gone", "changed"])
def test_a_photo_that_is_gone_or_changed_is_told_and_the_rest_is_kept(
    shop: ShopRecord, tmp_path: Path, harm: str
) -> None:
    photo, whole = with_photo(shop), shop.photos.keep(b"whole")
    path = shop.photos.path(photo)
    path.chmod(0o644)
    if harm == "gone":
        path.unlink()
    else:
        path.write_bytes(b"a Photo")
    made = through(make_backup(shop.folder, tmp_path / "shop.zip", NOON))
    assert made.manifest.missing_photos == (photo,)
    restored = through(restore_backup(made.file, tmp_path / "again", NOON))
    assert restored.manifest.missing_photos == (photo,)
    assert [p.name for p in (tmp_path / "again" / "photos").glob("??/*")] == [whole]


def test_stopped_half_way_nothing_stays(shop: ShopRecord, tmp_path: Path) -> None:
    with_photo(shop)
    file = archive_of(shop, tmp_path / "whole.zip")
    before = set(tmp_path.iterdir())
    steps = make_backup(shop.folder, tmp_path / "shop.zip", NOON)
    next(steps)
    next(steps)
    steps.close()
    back = restore_backup(file, tmp_path / "again", NOON)
    next(back)
    back.close()
    assert set(tmp_path.iterdir()) == before


@pytest.mark.embedded
def test_of_a_damaged_record_no_backup_is_made(shop: ShopRecord, tmp_path: Path) -> None:
    named(shop, "Odile")
    with shop.reading() as connection:
        connection.exec_driver_sql("UPDATE history SET body = 'x'")
        connection.commit()
    with pytest.raises(ShopTrouble, match="was changed after it was written"):
        archive_of(shop, tmp_path / "shop.zip")
    assert {one.name for one in tmp_path.iterdir()} == {"shop"}


@pytest.mark.parametrize("saved", OLD_RECORDS, ids=lambda path: path.stem)
def test_a_backup_of_an_older_form_comes_back_and_is_upgraded_when_it_is_opened(
    tmp_path: Path, saved: Path
) -> None:
    (tmp_path / "old").mkdir()
    shutil.copy(saved, tmp_path / "old" / FILE_NAME)
    made = through(make_backup(tmp_path / "old", tmp_path / "old.zip", NOON))
    assert made.manifest.record_form == saved.stem
    through(restore_backup(made.file, tmp_path / "again", NOON))
    with open_shop(tmp_path / "again", lambda: NOON).reading() as connection:
        found = connection.exec_driver_sql("SELECT version_num FROM alembic_version").scalar()
    assert found == upgrade.NEWEST


def test_a_name_that_not_every_disk_keeps_is_asked_to_be_changed(
    shop: ShopRecord, tmp_path: Path
) -> None:
    (shop.folder / "part_kinds").mkdir()
    (shop.folder / "part_kinds" / "con.toml").write_text("")
    with pytest.raises(ShopTrouble, match=r"con\.toml can't be taken"):
        archive_of(shop, tmp_path / "shop.zip")
