"""Records In and Out: a backup is chosen, what it holds is said, and it comes into a new folder."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog, QListWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.backups.backups_made import backup_before, daily_backup
from desktop_app.shop_record.backups.restore_drill import monthly_drill
from desktop_app.shop_record.record import ShopRecord, open_shop
from tests.conftest import NOON
from tests.records_exchanged.importing import a_shop
from tests.screens.records_page import AtThePage
from tests.shop_record.backed_up import all_files, archive_of, named, through, with_photo


@pytest.fixture
def record(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture
def at(record: ShopRecord, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[AtThePage]:
    at = AtThePage(record, qtbot, monkeypatch)
    yield at
    at.desk.errands.finish()


def listed(at: AtThePage) -> list[str]:
    at.page.came_here()
    at.settle()
    found = at.find(QListWidget, "The backups of this shop")
    return [found.item(row).text() for row in range(found.count())]


def choose(at: AtThePage, row: int) -> None:
    found = at.find(QListWidget, "The backups of this shop")
    found.setFocus()
    found.setCurrentRow(row)


def bring_back(at: AtThePage, to: Path) -> None:
    at.choose_folder(to, "Bring it back into a new folder…")
    at.settle()


def test_each_backup_says_what_it_holds_and_why_it_was_made(at: AtThePage) -> None:
    with_photo(at.record)
    through(backup_before(at.record, "an import"))
    named(at.record, "Odile")
    through(daily_backup(at.record))
    holds = "1 job, 1 photo, {} of the history, the last of 2026-11-16 12:00"
    assert listed(at) == [
        f"2026-11-16 12:00: {holds.format('2 entries')}",
        f"2026-11-16 12:00, before an import: {holds.format('1 entry')}",
    ]
    assert at.says("No backup was brought back on trial yet; that is done once a month by itself.")
    assert not at.button("Bring it back into a new folder…").isEnabled()
    choose(at, 0)
    assert at.says("Read again and found whole when it was made, 2026-11-16 12:00.")
    through(monthly_drill(at.record))
    listed(at)
    choose(at, 0)
    assert at.says("brought back on trial and whole on 2026-11-16 12:00.")
    assert at.says("On 2026-11-16 a backup was last brought back on trial: it was whole.")


def test_it_comes_into_a_new_folder_and_is_opened_from_there(at: AtThePage, tmp_path: Path) -> None:
    with_photo(at.record)
    through(daily_backup(at.record))
    named(at.record, "Odile")
    before = all_files(at.record.folder)
    (tmp_path / "mine").mkdir()
    (tmp_path / "mine" / "letter.txt").write_text("mine")
    listed(at)
    choose(at, 0)
    bring_back(at, tmp_path / "mine")
    folder = tmp_path / "mine" / "shop-of-2026-11-16"
    assert at.says(f"The shop is back in {folder}, as it was on 2026-11-16 12:00: 1 photo and 1 ")
    with at.bot.waitSignal(at.page.shop_wanted) as wanted:
        at.press("Open it")
    assert wanted.args == [folder]
    again = open_shop(folder, lambda: NOON)
    assert again.can_undo() == "Write up a car with its photo"
    again.close()
    bring_back(at, tmp_path / "mine")
    assert (tmp_path / "mine" / "shop-of-2026-11-16-2").is_dir()
    (tmp_path / "new").mkdir()
    bring_back(at, tmp_path / "new")
    assert at.says(f"The shop is back in {tmp_path / 'new'},")
    assert all_files(at.record.folder) == before
    assert (tmp_path / "mine" / "letter.txt").read_text() == "mine"


def test_a_file_and_a_generation_on_a_stick_are_chosen_by_the_dialog(
    at: AtThePage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with_photo(at.record)
    file = archive_of(at.record, tmp_path / "shop.zip")
    [made] = through(daily_backup(at.record))
    stick = made.folder.parent.rename(tmp_path / "stick")
    assert listed(at) == []
    assert at.says("No backup was found.")
    for chosen in (file, stick / made.folder.name / "manifest.json"):
        monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_, c=chosen: (str(c), ""))
        at.press("Another backup…")
        at.settle()
        place = chosen if chosen == file else chosen.parent
        assert at.says(f"It lies in {place}.")
    (tmp_path / "new").mkdir()
    bring_back(at, tmp_path / "new")
    assert at.says(f"The shop is back in {tmp_path / 'new'},")


def test_what_is_no_backup_is_said(
    at: AtThePage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "holiday.zip").write_bytes(b"holiday")
    chosen = (str(tmp_path / "holiday.zip"), "")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: chosen)
    at.press("Another backup…")
    at.settle()
    assert at.says("The backup is not used")
    assert not at.button("Bring it back into a new folder…").isEnabled()


@pytest.mark.embedded
def test_a_damaged_one_is_not_brought_back(at: AtThePage, tmp_path: Path) -> None:
    named(at.record, "Odile")
    [made] = through(daily_backup(at.record))
    copy = made.folder / "shop.sqlite"
    copy.write_bytes(copy.read_bytes()[:-1] + b"?")
    listed(at)
    choose(at, 0)
    (tmp_path / "new").mkdir()
    bring_back(at, tmp_path / "new")
    assert at.says("shop.sqlite is not as it was written")
    assert not at.offers("Open it")
    assert list((tmp_path / "new").iterdir()) == []


def test_stopped_nothing_stays(at: AtThePage, tmp_path: Path) -> None:
    named(at.record, "Odile")
    for number in range(200):
        at.record.photos.keep(bytes([number]) * 100_000)
    through(daily_backup(at.record))
    listed(at)
    choose(at, 0)
    (tmp_path / "new").mkdir()
    at.choose_folder(tmp_path / "new", "Bring it back into a new folder…")
    at.press("Stop: bringing a backup back")
    at.settle()
    assert at.says("Stopped. Nothing was written.")
    assert list((tmp_path / "new").iterdir()) == []


def test_a_day_to_come_is_said(at: AtThePage) -> None:
    named(at.record, "Odile")
    [made] = through(daily_backup(at.record))
    manifest = made.folder / "manifest.json"
    manifest.write_text(manifest.read_text().replace("2026-11-16T12", "2031-11-16T12", 1))
    assert listed(at)[0].startswith("2031-11-16 12:00 (still to come by this computer's clock): ")
