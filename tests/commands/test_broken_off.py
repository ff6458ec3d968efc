"""A command that is broken off says what of: it has no fields in which anything is kept."""

# ruff: noqa: F811 - the fixtures of the command line
from __future__ import annotations

import errno
import os
import subprocess
import sys
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place
from desktop_app.shop_record.server.server_trouble import server_lost
from tests.commands.test_command_line import Shell, place, shell  # noqa: F401
from tests.conftest import NOON
from tests.faults.conftest import make_read_only, own_disk  # noqa: F401
from tests.faults.test_full_disk import fill
from tests.records_exchanged.exported import fill as filled
from tests.shop_record.backed_up import all_files


def full(*_said: object) -> None:
    raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


@pytest.mark.embedded  # a server has a disk of its own
@pytest.mark.parametrize("command", ["export", "move-shop"])
def test_a_full_disk(shell: Shell, place: str, own_disk: Path, command: str) -> None:
    fill(own_disk)
    said = shell.refused(command, str(own_disk / "x"), "--shop", place)
    broken_off = f"“{command}” was broken off; nothing more was written. Free some space"
    assert said.startswith(f"The disk is full. {broken_off}")
    assert [path.name for path in own_disk.iterdir()] == ["ballast"]


@pytest.mark.embedded  # on a server each photo goes into the database
def test_a_disk_without_room_for_photos(
    shell: Shell, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    record = new_place(tmp_path / "shop", lambda: NOON)
    filled(record)
    record.close()
    monkeypatch.setattr("desktop_app.shop_record.photos.photo_files.sync_folder", full)
    said = shell.refused("move-shop", str(tmp_path / "x"), "--shop", str(tmp_path / "shop"))
    assert "“move-shop” was broken off" in said
    assert "The job" not in said
    assert "add the photo" not in said
    assert not (tmp_path / "x").exists()


@pytest.mark.embedded  # a server has a disk of its own
@pytest.mark.parametrize("which", ["cells_of", "ExportFolder.copy_photo"])
def test_an_export_that_finds_no_room_says_only_that(
    shell: Shell, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, which: str
) -> None:
    record = new_place(tmp_path / "shop", lambda: NOON)
    filled(record)
    record.close()
    monkeypatch.setattr(f"desktop_app.records_exchanged.export_files.{which}", full)
    # What a cursor says that outlived its record comes as a warning here, which is a failure.
    said = shell.refused("export", str(tmp_path / "x"), "--shop", str(tmp_path / "shop"))
    assert "No space left on device. The shop is as it was." in said


@pytest.mark.embedded  # a server has a disk of its own
def test_a_shop_that_is_only_read(shell: Shell, own_disk: Path, tmp_path: Path) -> None:
    new_place(own_disk / "shop", lambda: NOON).close()
    make_read_only(own_disk)
    table = tmp_path / "jobs.csv"
    table.write_text("RO #,opened,concern\n1,2026-03-01,misfire\n")
    said = shell.refused("import", "--dry-run", str(table), "--shop", str(own_disk / "shop"))
    assert said.startswith("The shop's folder can be read but not written. “import” was broken off")


@pytest.mark.parametrize("command", ["find", "backup", "export", "move-shop"])
def test_a_server_that_goes_meanwhile(
    shell: Shell, place: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, command: str
) -> None:
    def away(*_said: object, **_more: object) -> None:
        raise server_lost()

    monkeypatch.setattr("desktop_app.shop_record.record.ShopRecord._begun", away)
    monkeypatch.setattr("desktop_app.shop_record.backups.backup.make_backup", away)
    assert shell.refused(command, str(tmp_path / "x"), "--shop", place) == (
        f"The shop's server can't be reached. “{command}” was broken off; nothing more was "
        "written. Try again when the server is back.\n"
    )


@pytest.mark.embedded  # a server has a disk of its own
@pytest.mark.parametrize("room", [0, 100_000])
@pytest.mark.parametrize("name", ["new/shop", "empty"])
def test_a_shop_that_finds_no_room_leaves_nothing_in_the_way(
    own_disk: Path, room: int, name: str
) -> None:
    (own_disk / "empty").mkdir()
    ballast = fill(own_disk)
    os.truncate(ballast, ballast.stat().st_size - room)
    words = (sys.executable, "-m", "desktop_app", "new-shop", str(own_disk / name))
    done = subprocess.run(words, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout, done.stderr.count("\n")) == (2, "", 1)
    assert "full" in done.stderr
    assert "space" in done.stderr or "Make room" in done.stderr
    assert sorted(path.name for path in own_disk.rglob("*")) == ["ballast", "empty"]
    ballast.unlink()
    assert subprocess.run(words, capture_output=True, check=False).returncode == 0
    assert "shop.sqlite" in all_files(own_disk / name)
