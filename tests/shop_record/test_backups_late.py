"""What is said of backups: a clock that ran ahead, the same disk, a trial that failed."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.shop_record.backups.backups_late import backup_troubles, too_long_ago
from desktop_app.shop_record.backups.backups_made import backup_before, daily_backup
from desktop_app.shop_record.backups.backups_remembered import MEMORY
from desktop_app.shop_record.backups.restore_drill import last_drill, monthly_drill
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord, create_shop
from tests.faults.conftest import own_disk  # noqa: F401 - a disk of the test's own
from tests.past_any_deed import past_any_deed
from tests.shop_record.backed_up import all_files, named, through, with_photo
from tests.shop_record.test_generations import Clock


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def shop(tmp_path: Path, clock: Clock) -> Iterator[ShopRecord]:
    record = create_shop(tmp_path / "shop", clock)
    with_photo(record)
    yield record
    record.close()


def said(shop: ShopRecord) -> str:
    return " ".join(one.sentence() for one in backup_troubles(shop))


def test_days_of_a_clock_that_ran_ahead_silence_nothing(shop: ShopRecord, clock: Clock) -> None:
    through(daily_backup(shop))
    clock.later(days=100)
    through(daily_backup(shop))
    clock.later(days=-90)
    assert too_long_ago(shop) is None  # it holds everything that there is
    named(shop, "Odile")
    late = too_long_ago(shop)
    assert late is not None
    assert late.what == (
        "The last good backup of this shop is 10 days old. One is dated 2027-02-24 12:00, which is "
        "still to come, and lacks what was done since."
    )
    assert "Is this computer's clock right?" in late.do
    through(daily_backup(shop))
    assert too_long_ago(shop) is None


def test_a_remembered_day_to_come_counts_for_nothing(
    shop: ShopRecord, clock: Clock, tmp_path: Path
) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    change_rule(shop, "second_backup_folder", str(stick))
    clock.later(days=100)
    through(daily_backup(shop))
    stick.rename(tmp_path / "plugged out")
    clock.later(days=-90)
    through(daily_backup(shop))
    late = too_long_ago(shop)
    assert late is not None
    assert late.what.startswith(f"There is no backup in {stick}. One is dated 2027-02-24 12:00")


def test_a_second_folder_on_the_shops_own_disk_is_said(
    shop: ShopRecord,
    tmp_path: Path,
    own_disk: Path,  # noqa: F811 - the fixture
) -> None:
    second = tmp_path / "second"
    change_rule(shop, "second_backup_folder", str(second))
    through(daily_backup(shop))
    assert said(shop) == ""  # it is not plugged in
    second.mkdir()
    assert f"{second} lies on the same disk as the shop: one broken disk takes both." in said(shop)
    change_rule(shop, "second_backup_folder", str(own_disk))
    assert said(shop) == ""


def test_once_a_month_the_newest_backup_comes_back_on_trial(shop: ShopRecord, clock: Clock) -> None:
    assert through(monthly_drill(shop)) is None  # nothing to try yet
    assert "No backup was brought back on trial yet" in last_drill(shop.folder).words()
    through(daily_backup(shop))
    before = all_files(shop.folder)
    drill = through(monthly_drill(shop))
    assert drill is not None
    assert drill.of == "2026-11-16-120000"
    assert last_drill(shop.folder).words() == (
        "On 2026-11-16 a backup was last brought back on trial: it was whole."
    )
    assert all_files(shop.folder) | {MEMORY: b""} == before | {MEMORY: b""}
    assert not list((shop.folder / "backups").glob(".on-trial-*"))
    for days, due in ((29, False), (1, True)):
        clock.later(days=days)
        through(daily_backup(shop))
        assert (through(monthly_drill(shop)) is not None) == due
    assert said(shop) == ""


def test_a_trial_that_fails_is_said_and_tried_again(shop: ShopRecord, clock: Clock) -> None:
    [made] = through(daily_backup(shop))
    photo = next((made.folder.parent / "photos").glob("??/*"))
    whole = photo.read_bytes()
    photo.chmod(0o644)
    photo.write_bytes(b"a Photo")
    through(monthly_drill(shop))
    assert "was brought back on trial on 2026-11-16, and that failed: The backup is not used" in (
        said(shop)
    )
    assert last_drill(shop.folder).whole_at == ""
    photo.write_bytes(whole)
    clock.later(hours=1)
    through(monthly_drill(shop))
    assert said(shop) == ""


def test_a_row_that_the_history_does_not_know_fails_the_trial(shop: ShopRecord) -> None:
    with past_any_deed(shop) as connection:
        connection.exec_driver_sql("UPDATE job SET cause = 'other' WHERE id = 1")
    through(daily_backup(shop))
    drill = through(monthly_drill(shop))
    assert drill is not None
    assert drill.wrong.startswith("1 problem in its record, job row 1")


def test_a_trial_that_was_stopped_leaves_nothing(shop: ShopRecord) -> None:
    through(daily_backup(shop))
    steps = monthly_drill(shop)
    next(steps)
    assert list((shop.folder / "backups").glob(".on-trial-*"))
    steps.close()
    assert not list((shop.folder / "backups").glob(".on-trial-*"))
    assert last_drill(shop.folder).tried_at == ""


@pytest.mark.parametrize("kept", ["[]", '{"drill": 3}', '{"drill": {"whole_at": "soon"}}', "{"])
def test_an_odd_memory_is_no_trial(shop: ShopRecord, kept: str) -> None:
    (shop.folder / MEMORY).write_text(kept)
    assert last_drill(shop.folder).whole_at == ""
    through(backup_before(shop, "an import"))
    assert through(monthly_drill(shop)) is not None


def test_a_trial_of_days_to_come_is_none(shop: ShopRecord, clock: Clock) -> None:
    clock.later(days=400)
    through(daily_backup(shop))
    through(monthly_drill(shop))
    clock.later(days=-400)
    assert through(monthly_drill(shop)) is None  # there is none of the true days yet
    through(daily_backup(shop))
    assert through(monthly_drill(shop)) is not None
    assert last_drill(shop.folder).tried_at == clock().isoformat(timespec="seconds")
