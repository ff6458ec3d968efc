"""A shop that is damaged or gone comes back from a backup, by the window alone."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QLineEdit, QListWidget, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import last_shop
from desktop_app.program import Program
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.record import create_shop, open_shop
from desktop_app.shop_record.record_name import FILE_NAME
from tests.conftest import NOON
from tests.faults.busy_shop import busy_shop
from tests.faults.test_damaged_or_unwritable import damage
from tests.servers import copy_shop
from tests.shop_record.backed_up import named
from tests.shop_record.test_backup_before import OLD
from tests.shop_stories.counter import Counter, sitting


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("whole") / "shop"
    busy_shop(folder)
    return folder


@pytest.fixture
def shop(made: Path, tmp_path: Path) -> Path:
    copy_shop(made, tmp_path / "shop")
    return tmp_path / "shop"


@pytest.fixture
def new_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    folder = tmp_path / "new shop"
    folder.mkdir()
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(folder))
    return folder


def start(qtbot: QtBot, started: list[Program], folder: Path) -> Counter:
    program = Program(folder, lambda: NOON)
    started.append(program)
    program.window.resize(1366, 900)
    program.window.show()
    program.open_shop()
    return Counter(qtbot, program)


def bring_the_newest_back(at: Counter) -> None:
    def there() -> bool:
        return at.find(QListWidget, "The backups of this shop").count() == 2

    at.bot.waitUntil(there, timeout=8000)
    found = at.find(QListWidget, "The backups of this shop")
    found.setFocus()
    at.bot.keyClick(found, Qt.Key.Key_Home)
    at.wait_for("Holds 32 jobs, 12 photos")
    at.press("Bring it back into a new folder…")
    at.wait_for("The shop is back in")


def other_window(at: Counter) -> Program:
    """The window that went on with the shop that was brought back."""
    other = at.beside().program
    at.bot.waitUntil(lambda: other.desk is not None, timeout=8000)
    return other


@pytest.mark.embedded
def test_a_shop_whose_record_is_gone_comes_back_by_the_first_page(
    qtbot: QtBot, started: list[Program], shop: Path, new_folder: Path
) -> None:
    (shop / FILE_NAME).write_bytes(b"")
    at = start(qtbot, started, shop)
    at.wait_for("is not a shop's record")
    at.press("Bring a backup back…")
    bring_the_newest_back(at)
    at.press("Open it")
    qtbot.waitUntil(lambda: at.program.desk is not None, timeout=8000)
    assert at.window.here() == "Ask the Old Jobs"
    assert last_shop() == str(new_folder)
    at.quiet()


@pytest.mark.embedded
def test_a_damaged_shop_offers_it_beside_the_notice_and_goes_on_in_the_new_one(
    qtbot: QtBot, shop: Path, new_folder: Path
) -> None:
    damage(shop, "gauge_study")
    before = (shop / FILE_NAME).read_bytes()
    with sitting(qtbot, shop, NOON, backup_after_ms=60_000) as at:
        at.wait_for("nothing is written into it any more")
        at.press("Bring a backup back…")
        assert at.window.here() == "Records In and Out"
        bring_the_newest_back(at)
        at.press("Open it")
        other = other_window(at)
        assert not at.window.isVisible()
        assert other.desk is not None
        assert other.desk.record.folder == new_folder
        there = Counter(qtbot, other)
        there.press("A car is here")
        assert there.find(QLineEdit, "Plate").isEnabled()
        there.quiet()
    assert (shop / FILE_NAME).read_bytes() == before
    assert not other.window.isVisible()


@pytest.mark.embedded
def test_what_is_typed_and_not_kept_holds_the_old_window_open(
    qtbot: QtBot, shop: Path, new_folder: Path
) -> None:
    damage(shop, "gauge_study")
    with sitting(qtbot, shop, NOON, backup_after_ms=60_000) as at:
        at.wait_for("nothing is written into it any more")
        at.go("Heard")
        at.type_into(QPlainTextEdit, "What the customer says", "misses when damp")
        at.press("Bring a backup back…")
        bring_the_newest_back(at)
        at.press("Open it")
        other = other_window(at)
        assert at.window.isVisible()
        assert at.reads("What is typed under “Heard” can't be kept")
        Counter(qtbot, other).quiet()


def test_an_older_shop_is_backed_up_and_brought_up_to_date_beside_the_window(
    qtbot: QtBot, started: list[Program], tmp_path: Path
) -> None:
    folder = tmp_path / "shop"
    folder.mkdir()
    shutil.copy(OLD / "0001.sqlite", folder / FILE_NAME)
    at = start(qtbot, started, folder)
    assert at.program.desk is None  # it is under way
    qtbot.waitUntil(lambda: at.program.desk is not None, timeout=15_000)
    at.quiet()
    assert len(generations_in(folder / "backups")) == 1


def test_an_older_shop_that_cannot_be_backed_up_is_left_as_it_is(
    qtbot: QtBot, started: list[Program], tmp_path: Path
) -> None:
    folder = tmp_path / "shop"
    folder.mkdir()
    shutil.copy(OLD / "0001.sqlite", folder / FILE_NAME)
    (folder / "backups").write_text("in the way")
    before = (folder / FILE_NAME).read_bytes()
    at = start(qtbot, started, folder)
    at.wait_for("was not written")
    assert at.window.here() == "Which shop?"
    assert (folder / FILE_NAME).read_bytes() == before


def test_of_two_windows_one_backs_up_and_the_other_sees_it(qtbot: QtBot, tmp_path: Path) -> None:
    folder = tmp_path / "shop"
    record = create_shop(folder, lambda: NOON)
    named(record, "Odile")
    record.close()
    with (
        sitting(qtbot, folder, NOON, backup_after_ms=1) as one,
        sitting(qtbot, folder, NOON, backup_after_ms=1) as other,
    ):
        qtbot.waitUntil(lambda: len(generations_in(folder / "backups")) == 1, timeout=15_000)
        for at in (one, other):
            at.quiet()
            assert not at.reads("backup")
    assert len(generations_in(folder / "backups")) == 1
    open_shop(folder, lambda: NOON).close()
