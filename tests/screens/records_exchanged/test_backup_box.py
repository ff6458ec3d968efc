"""Records In and Out: the whole shop written into one file, where somebody says."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.record import ShopRecord
from tests.conftest import NOON
from tests.from_outside import lose_photo
from tests.records_exchanged.importing import a_shop
from tests.screens.records_page import AtThePage
from tests.shop_record.backed_up import through, with_photo


@pytest.fixture
def record(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture
def at(record: ShopRecord, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[AtThePage]:
    at = AtThePage(record, qtbot, monkeypatch)
    yield at
    at.desk.errands.finish()


def test_a_backup_is_written_and_said(at: AtThePage, tmp_path: Path) -> None:
    with_photo(at.record)
    at.save_as(tmp_path / "shop.zip", "Back up now…")
    assert at.says(f"Wrote {tmp_path / 'shop.zip'}: 1 photo and 1 entry of the history")
    assert at.says("It was read again and is whole.")
    back = through(restore_backup(tmp_path / "shop.zip", tmp_path / "again", NOON))
    assert back.manifest.entries == 1
    assert at.button("Back up now…").isEnabled()


def test_a_file_that_is_there_is_left_alone(at: AtThePage, tmp_path: Path) -> None:
    (tmp_path / "mine.zip").write_text("mine")
    at.save_as(tmp_path / "mine.zip", "Back up now…")
    assert at.says("mine.zip is there already. It was left as it is. Name a new file.")
    assert (tmp_path / "mine.zip").read_text() == "mine"


def test_a_dialog_that_is_put_away_writes_nothing(
    at: AtThePage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = set(tmp_path.iterdir())
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: ("", ""))
    at.press("Back up now…")
    at.settle()
    assert set(tmp_path.iterdir()) == before


def test_a_missing_photo_is_told(at: AtThePage, tmp_path: Path) -> None:
    lose_photo(at.record, with_photo(at.record))
    at.save_as(tmp_path / "shop.zip", "Back up now…")
    assert at.says("Gone or damaged in the shop, so not in it: 1 photo")


def test_stopped_nothing_stays(
    at: AtThePage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for number in range(200):
        at.record.photos.keep(bytes([number]) * 100_000)
    before = set(tmp_path.iterdir())
    said = (str(tmp_path / "shop.zip"), "")
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: said)
    at.press("Back up now…")
    at.press("Stop: backing up")
    at.settle()
    assert at.says("Stopped. Nothing was written.")
    assert set(tmp_path.iterdir()) == before
