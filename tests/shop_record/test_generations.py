"""Generations share their photos, go when they need not stay, and each comes back whole."""

from __future__ import annotations

import json
from collections.abc import Iterator
from contextlib import closing
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from desktop_app.shop_record.backups.backup_check import backup_problems
from desktop_app.shop_record.backups.backups_late import too_long_ago
from desktop_app.shop_record.backups.backups_made import daily_backup, remember
from desktop_app.shop_record.backups.generations import generations_in, make_generation
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord, create_shop, open_shop
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.from_outside import damage, lose_photo
from tests.shop_record.backed_up import all_files, named, through, with_photo


class Clock:
    """A clock that a test sets on."""

    def __init__(self) -> None:
        self.now = NOON

    def __call__(self) -> datetime:
        return self.now

    def later(self, **more: float) -> None:
        self.now += timedelta(**more)


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def shop(tmp_path: Path, clock: Clock) -> Iterator[ShopRecord]:
    record = create_shop(tmp_path / "shop", clock)
    named(record, "Odile")
    yield record
    record.close()


@pytest.fixture
def base(shop: ShopRecord) -> Path:
    return shop.folder / "backups"


def photos_in(base: Path) -> set[str]:
    return {path.name for path in base.glob("photos/??/*")}


def test_one_a_day_and_no_more(shop: ShopRecord, base: Path, clock: Clock) -> None:
    assert len(through(daily_backup(shop))) == 1
    clock.later(hours=3)
    assert through(daily_backup(shop)) == []
    clock.later(days=1)
    assert len(through(daily_backup(shop))) == 1
    assert [folder.name for _, folder in generations_in(base)] == [
        "2026-11-16-120000",
        "2026-11-17-150000",
    ]


def test_an_empty_shop_has_nothing_to_lose(tmp_path: Path, clock: Clock) -> None:
    record = create_shop(tmp_path / "empty", clock)
    assert through(daily_backup(record)) == []
    clock.later(days=100)
    assert too_long_ago(record) is None
    record.close()


def test_only_new_photos_are_copied_and_each_generation_comes_back(
    shop: ShopRecord, base: Path, clock: Clock, tmp_path: Path
) -> None:
    first = with_photo(shop, b"first")
    one = through(make_generation(shop.folder, base, clock()))
    before = (base / "photos" / first[:2] / first).stat()
    clock.later(days=1)
    second = with_photo(shop, b"second")
    two = through(make_generation(shop.folder, base, clock()))
    assert photos_in(base) == {first, second}
    assert (base / "photos" / first[:2] / first).stat() == before
    for made, photos in ((one, [first]), (two, [first, second])):
        folder = tmp_path / made.folder.name
        through(restore_backup(made.folder, folder, clock()))
        again = open_shop(folder, clock)
        assert sorted(again.photos.all_names()) == sorted(photos)
        assert check_shop(again, [(sha256, "") for sha256 in photos]).ok
        again.close()


def test_a_copy_that_lost_bytes_is_copied_anew(shop: ShopRecord, base: Path, clock: Clock) -> None:
    photo = with_photo(shop, b"a photo")
    through(make_generation(shop.folder, base, clock()))
    copy = base / "photos" / photo[:2] / photo
    copy.chmod(0o644)
    copy.write_bytes(b"a ph")
    clock.later(days=1)
    through(make_generation(shop.folder, base, clock()))
    assert copy.read_bytes() == b"a photo"


def test_a_copy_with_a_flipped_bit_is_mended_within_a_month(
    shop: ShopRecord, base: Path, clock: Clock
) -> None:
    photo = with_photo(shop, b"a photo")
    through(make_generation(shop.folder, base, clock()))
    copy = base / "photos" / photo[:2] / photo
    copy.chmod(0o644)
    copy.write_bytes(b"a Photo")
    for _ in range(30):
        clock.later(days=1)
        through(make_generation(shop.folder, base, clock()))
    assert copy.read_bytes() == b"a photo"


def test_a_photo_lost_in_the_shop_stays_in_its_backups(
    shop: ShopRecord, base: Path, clock: Clock
) -> None:
    photo = with_photo(shop)
    through(make_generation(shop.folder, base, clock()))
    lose_photo(shop, photo)
    clock.later(days=1)
    made = through(make_generation(shop.folder, base, clock()))
    assert made.manifest.missing_photos == ()
    assert made.manifest.member(f"photos/{photo[:2]}/{photo}").size == len(b"a photo")


def test_older_ones_go_with_the_photos_that_only_they_had(
    shop: ShopRecord, base: Path, clock: Clock
) -> None:
    lost, kept = shop.photos.keep(b"nobody's"), with_photo(shop, b"kept")
    through(make_generation(shop.folder, base, clock()))
    lose_photo(shop, lost)
    (base / "notes").mkdir()
    (base / "notes" / "mine.txt").write_text("mine")
    assert photos_in(base) == {lost, kept}
    gone = 0
    for _ in range(14):
        for hours in (8, 16):
            clock.later(hours=hours)
            gone += through(make_generation(shop.folder, base, clock())).gone
    assert gone > 10
    assert photos_in(base) == {kept}
    assert (base / "notes" / "mine.txt").read_text() == "mine"
    assert list(backup_problems(shop)) == []


def test_stopped_or_killed_half_way_there_is_no_generation(
    shop: ShopRecord, base: Path, clock: Clock
) -> None:
    with_photo(shop)
    steps = make_generation(shop.folder, base, clock())
    next(steps)
    next(steps)
    assert generations_in(base) == []  # so it would be, were the program killed now
    steps.close()
    assert generations_in(base) == []
    assert not list(base.glob(".being-made-*"))


def test_a_folder_without_a_manifest_is_no_backup(shop: ShopRecord, base: Path) -> None:
    [made] = through(daily_backup(shop))
    (made.folder / "manifest.json").unlink()
    assert generations_in(base) == []
    with pytest.raises(ShopTrouble, match=r"has no manifest\.json"):
        through(restore_backup(made.folder, base.parent.parent / "again", NOON))


def test_the_second_disk_gets_its_own_when_it_is_there(
    shop: ShopRecord, clock: Clock, tmp_path: Path
) -> None:
    stick = tmp_path / "stick"
    change_rule(shop, "second_backup_folder", str(stick))
    assert len(through(daily_backup(shop))) == 1
    stick.mkdir()
    [made] = through(daily_backup(shop))
    assert made.folder.parent.parent == stick
    through(restore_backup(made.folder, tmp_path / "again", clock()))
    assert all_files(made.folder)["shop.sqlite"] == all_files(tmp_path / "again")["shop.sqlite"]


def test_a_backup_that_is_too_old_is_told(shop: ShopRecord, clock: Clock) -> None:
    clock.later(days=6, hours=23)
    assert too_long_ago(shop) is None
    clock.later(hours=1)
    none = too_long_ago(shop)
    assert none is not None
    assert none.what == "There is no backup of this shop."
    through(daily_backup(shop))
    assert too_long_ago(shop) is None
    clock.later(days=8)
    old = too_long_ago(shop)
    assert old is not None
    assert old.what == "The last good backup of this shop is 8 days old."
    change_rule(shop, "days_without_backup", 9)
    assert too_long_ago(shop) is None


def test_a_stick_that_stays_away_is_told(shop: ShopRecord, clock: Clock, tmp_path: Path) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    change_rule(shop, "second_backup_folder", str(stick))
    through(daily_backup(shop))
    stick.rename(tmp_path / "plugged out")
    for _ in range(7):
        assert too_long_ago(shop) is None
        clock.later(days=1)
        through(daily_backup(shop))
    late = too_long_ago(shop)
    assert late is not None
    assert late.what == f"The last good backup in {stick} is 7 days old."


def test_a_file_that_was_written_counts(shop: ShopRecord, clock: Clock) -> None:
    [made] = through(daily_backup(shop))
    clock.later(days=8)
    remember(shop.folder, "file", made.manifest)
    assert too_long_ago(shop) is not None  # made eight days ago too
    fresh = through(make_generation(shop.folder, shop.folder.parent / "other", clock()))
    remember(shop.folder, "file", fresh.manifest)
    assert too_long_ago(shop) is None


@pytest.mark.parametrize(
    ("sql", "how"),
    [
        ("DELETE FROM history WHERE seq = 3", "entry 3 is missing"),
        ("UPDATE history SET hash = 'ab' WHERE seq = 3", "entry 3 is another one"),
    ],
)
def test_a_history_that_was_cut_or_written_anew_is_found(
    shop: ShopRecord, sql: str, how: str
) -> None:
    named(shop, "Ana")
    named(shop, "Ben")
    through(daily_backup(shop))
    assert list(backup_problems(shop)) == []
    damage(shop, sql)
    [problem] = backup_problems(shop)
    assert (problem.where, problem.lost) == ("the history", True)
    assert how in problem.what


def test_a_damaged_backup_is_found_by_the_check(shop: ShopRecord) -> None:
    [made] = through(daily_backup(shop))
    copy = made.folder / "shop.sqlite"
    content = bytearray(copy.read_bytes())
    content[5000] ^= 1
    copy.write_bytes(content)
    [problem] = backup_problems(shop)
    assert str(made.folder) in problem.where
    assert "shop.sqlite in it is not as it was written" in problem.what


def test_backups_that_cannot_be_opened_are_all_named_by_the_check(
    shop: ShopRecord, clock: Clock
) -> None:
    folders = []
    for said in (b"{}", b"[]"):
        [made] = through(daily_backup(shop))
        (made.folder / "manifest.json").write_bytes(said)
        folders.append(made.folder)
        clock.later(days=1)
    problems = list(backup_problems(shop))
    assert len(problems) == len(folders)
    for folder, problem in zip(reversed(folders), problems, strict=True):
        assert str(folder) in problem.where
        assert problem.what.startswith("The backup is not used")


@pytest.mark.parametrize("moment", ["2026-11-18T12:00:00", "soon", None])
def test_a_restored_shop_whose_memory_of_it_was_spoiled_is_still_checked(
    shop: ShopRecord, clock: Clock, tmp_path: Path, moment: str | None
) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    change_rule(shop, "second_backup_folder", str(stick))
    older = through(daily_backup(shop))[-1]
    clock.later(days=1)
    named(shop, "Ana")
    through(daily_backup(shop))
    through(restore_backup(older.folder, tmp_path / "again", clock()))
    memory = tmp_path / "again" / "restored-from.json"
    memory.write_text(json.dumps(json.loads(memory.read_text()) | {"restored_at": moment}))
    with closing(open_shop(tmp_path / "again", clock)) as again:
        [problem] = backup_problems(again)
    assert "entry 3 is missing" in problem.what


def test_after_an_older_backup_was_brought_back_the_history_may_part_there(
    shop: ShopRecord, clock: Clock, tmp_path: Path
) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    change_rule(shop, "second_backup_folder", str(stick))
    older = through(daily_backup(shop))[-1]
    clock.later(days=1)
    named(shop, "Ana")
    through(daily_backup(shop))
    clock.later(hours=1)
    through(restore_backup(older.folder, tmp_path / "again", clock()))
    again = open_shop(tmp_path / "again", clock)
    named(again, "Ben")
    assert list(backup_problems(again)) == []
    clock.later(days=1)
    through(daily_backup(again))
    with again.reading() as connection:
        connection.exec_driver_sql("DELETE FROM history WHERE seq = 3")
        connection.commit()
    assert any("entry 3 is missing" in problem.what for problem in backup_problems(again))
    again.close()


def test_a_second_folder_must_be_said_wholly(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="the whole path of a folder"):
        change_rule(shop, "second_backup_folder", "stick")
