"""A shop that is damaged, write-protected, gone or on a network disk: what is said and kept."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import open_place
from desktop_app.program import Program
from desktop_app.shop_record import shared_disk
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.first_look import first_look
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from tests.conftest import NOON
from tests.faults.busy_shop import busy_shop, found_in, opened
from tests.faults.conftest import make_read_only
from tests.servers import copy_shop
from tests.shop_record.backed_up import all_files, named, through
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.one_job import take_in, write_up


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("whole") / "shop"
    busy_shop(folder)
    return folder


@pytest.fixture
def shop(made: Path, tmp_path: Path) -> Path:
    copy_shop(made, tmp_path / "shop")
    return tmp_path / "shop"


def try_to_take_in(at: Counter) -> QPlainTextEdit:
    """Fill the page for a car that is here, as far as it goes, and press its button."""
    at.go("Heard")
    write_up(at, "misses when damp", "90100")
    at.press("Take the car in")
    return at.find(QPlainTextEdit, "What the customer says")


def all_off(at: Counter, why: str) -> bool:
    """Tell whether each control that writes is off and says why."""
    at.go("House Rules")
    rule = at.find(QLineEdit, "Early days")
    at.go("Records In and Out")
    file = at.button("Choose a file…")
    at.go("Ask the Old Jobs")
    at.press("Our own phrases")
    phrases = [at.button("Keep what it means here"), at.button("Take this phrase away")]
    top = [at.button("A car is here"), at.button("No undo"), at.button("No redo")]
    for control in (rule, file, *phrases, *top):
        assert not control.isEnabled(), control.accessibleName()
        assert why in tooltip_of(control), tooltip_of(control)
    return True


def tooltip_of(control: QWidget) -> str:
    """The tooltip that is shown over a control: its own, or that of the box it stands in."""
    around: QWidget | None = control
    while around is not None and not (around.toolTip() and not around.isEnabled()):
        around = around.parentWidget()
    return "" if around is None else around.toolTip()


def damage(shop: Path, table: str) -> None:
    """Fill the pages of a table with nothing, but for its root."""
    with opened(shop) as record, record.reading() as connection:
        root = connection.exec_driver_sql(
            f"SELECT rootpage FROM sqlite_master WHERE name = '{table}'"
        ).scalar_one()
        size = connection.exec_driver_sql("PRAGMA page_size").scalar_one()
    content = bytearray((shop / FILE_NAME).read_bytes())
    content[(root - 1) * size : root * size] = bytes(size)
    (shop / FILE_NAME).write_bytes(content)


def test_a_whole_shop_has_nothing_to_say(shop: Path) -> None:
    with opened(shop) as record:
        assert first_look(record) is None
        named(record, "Tuuli")


@pytest.mark.embedded
def test_a_damaged_shop_is_read_only_and_its_backup_is_offered(shop: Path) -> None:
    damage(shop, "gauge_study")
    before = (shop / FILE_NAME).read_bytes()
    backup = generations_in(shop / "backups")[-1][1]
    with opened(shop) as record:
        said = first_look(record)
        assert isinstance(said, ShopDamaged)
        assert f"“benchwitness restore {backup} NEWFOLDER”" in said.do
        assert "2026-11-16 12:00" in said.do
        with pytest.raises(ShopDamaged, match="is damaged"):
            named(record, "Tuuli")
        with pytest.raises(ShopDamaged, match="is damaged"):
            record.undo()
        with record.reading() as connection:  # what can be read is
            assert connection.exec_driver_sql("SELECT count(*) FROM job").scalar_one() == 32
    assert (shop / FILE_NAME).read_bytes() == before
    back = through(restore_backup(backup, shop.parent / "again", NOON))
    assert back.manifest.missing_photos == ()
    assert found_in(shop.parent / "again") == []


@pytest.mark.embedded
def test_the_window_says_it_and_refuses_in_a_sentence(shop: Path, qtbot: QtBot) -> None:
    damage(shop, "gauge_study")
    before = (shop / FILE_NAME).read_bytes()
    with sitting(qtbot, shop, NOON, backup_after_ms=60_000) as at:
        at.wait_for("nothing is written into it any more. Your last good backup is of 2026-11-16")
        at.press("Put the notice away")
        assert all_off(at, "The shop's record is damaged")
        concern = try_to_take_in(at)
        at.wait_for("The shop's record is damaged")
        assert concern.toPlainText() == "misses when damp"
        at.window.close()
        assert at.reads("What is typed under “Heard” can't be kept")
        assert at.window.isVisible()
    assert (shop / FILE_NAME).read_bytes() == before


@pytest.mark.embedded
@pytest.mark.parametrize(
    ("content", "says"),
    [
        (b"", "is not a shop's record"),
        (b"%PDF-1.7 of somebody", "is not a shop's record"),
        (b"SQLite format 3\x00" * 9, "is not a shop's record"),
        (None, "is gone"),
    ],
)
def test_what_is_no_record_is_refused_and_the_backup_offered(
    shop: Path, content: bytes | None, says: str
) -> None:
    (shop / FILE_NAME).unlink()
    if content is not None:
        (shop / FILE_NAME).write_bytes(content)
    before = all_files(shop)
    with pytest.raises(ShopDamaged, match=says) as refused:
        open_place(shop, lambda: NOON)
    assert "Your last good backup is of 2026-11-16 12:00" in refused.value.do
    assert all_files(shop) == before


@pytest.mark.embedded
def test_the_window_offers_it_too(shop: Path, qtbot: QtBot) -> None:
    (shop / FILE_NAME).write_bytes(b"")
    program = Program(shop, lambda: NOON)
    qtbot.addWidget(program.window)
    program.window.show()
    program.open_shop()
    assert "Your last good backup is of" in program.window.strip.words()
    program.close()


@pytest.mark.embedded
def test_a_folder_that_cannot_be_written_is_said_at_the_start(
    made: Path, own_disk: Path, qtbot: QtBot
) -> None:
    shutil.copytree(made, own_disk / "shop", ignore=shutil.ignore_patterns("backups"))
    make_read_only(own_disk)
    with sitting(qtbot, own_disk / "shop", NOON, backup_after_ms=60_000) as at:
        at.wait_for("can be read but not written (Read-only file system).")
        at.press("Put the notice away")
        assert all_off(at, "can be read but not written")
        concern = try_to_take_in(at)
        at.wait_for("The shop's folder can be read but not written.")
        assert concern.toPlainText() == "misses when damp"
        at.window.close()
        assert at.reads("What is typed under “Heard” can't be kept")
        assert at.window.isVisible()
    assert found_in(own_disk / "shop") == []


def test_a_second_window_on_the_same_computer_is_a_second_desk(shop: Path, qtbot: QtBot) -> None:
    with sitting(qtbot, shop, NOON) as at, opened(shop) as other:
        named(other, "Tuuli")
        take_in(at, "misses when damp", "90100")
    assert found_in(shop) == []


MOUNTS = r"""
/dev/sda1 / ext4 rw 0 0
//server/share /mnt/office\040disk cifs rw 0 0
server:/export /mnt/nfs nfs4 rw 0 0
tmpfs /mnt/nfs/fast tmpfs rw 0 0
host:/x /media/u/ssh fuse.sshfs rw 0 0
"""


@pytest.mark.parametrize(
    ("folder", "kind"),
    [
        ("/mnt/office disk/shop", "cifs"),
        ("/mnt/nfs", "nfs4"),
        ("/mnt/nfs/fast/shop", None),
        ("/mnt/nfs-not", None),
        ("/media/u/ssh/a/b", "fuse.sshfs"),
        ("/srv/shop", None),
    ],
)
def test_a_network_disk_is_told_by_its_kind(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, folder: str, kind: str | None
) -> None:
    mounts = tmp_path / "mounts"
    mounts.write_text(MOUNTS)
    monkeypatch.setattr(shared_disk, "MOUNTS", mounts)
    monkeypatch.setattr(Path, "resolve", lambda self: self)
    said = shared_disk.on_shared_disk(Path(folder))
    assert (said is None) == (kind is None)
    if said is not None:
        assert f"({kind})" in said.what
        assert "Two computers must not open it at once" in said.what


@pytest.mark.embedded
def test_on_a_network_disk_the_window_and_the_check_say_so(
    shop: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(shared_disk, "file_system_of", lambda _folder: "smb3")
    with sitting(qtbot, shop, NOON, backup_after_ms=60_000) as at:
        at.wait_for("lies on a network disk (smb3). Two computers must not open it at once")
    with opened(shop) as record:
        said = first_look(record)
    assert isinstance(said, ShopTrouble)
