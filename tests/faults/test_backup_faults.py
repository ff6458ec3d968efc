"""Backups under faults: a full disk, a killed program, people who write meanwhile."""

from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
import time
import zipfile
from pathlib import Path

import pytest

from desktop_app.shop_record.backups.backup import make_backup
from desktop_app.shop_record.backups.generations import make_generation
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.databases import dialect_snapshot
from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.covered import unmeasured
from tests.shop_record.backed_up import all_files, archive_of, named, through, with_photo

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = (sys.executable, "-m", "desktop_app")
MORE = 300  # times a second that it is looked whether a killed program has begun
WRITER = """
import sys
from pathlib import Path
from desktop_app.shop_record.record import open_shop
from tests.conftest import NOON
from tests.shop_record.backed_up import with_photo
record = open_shop(Path(sys.argv[1]), lambda: NOON)
for number in range(100_000):
    with_photo(record, b"photo %d" % number)
    print(number, flush=True)
"""


def begun(*words: str) -> subprocess.Popen[str]:
    pipe = subprocess.PIPE
    return subprocess.Popen(words, stdout=pipe, stderr=pipe, text=True, cwd=ROOT)


def with_limit(limit: int, *words: str) -> subprocess.CompletedProcess[str]:
    """Run the program where no file may grow longer than so many bytes: as on a full disk."""
    small = (
        "import resource, runpy, sys; "
        f"resource.setrlimit(resource.RLIMIT_FSIZE, ({limit}, {limit})); "
        "sys.argv = ['benchwitness', *sys.argv[1:]]; "
        "runpy.run_module('desktop_app', run_name='__main__')"
    )
    command = (sys.executable, "-c", small, *words)
    return subprocess.run(
        command, capture_output=True, text=True, cwd=ROOT, env=unmeasured(), check=False
    )


@pytest.fixture
def full(shop: ShopRecord) -> ShopRecord:
    """A shop with photos that take longer to write than its record."""
    named(shop, "Odile")
    for number in range(30):
        with_photo(shop, bytes([number]) * 500_000)
    return shop


@pytest.mark.skipif(os.name == "nt", reason="such limits are POSIX")
@pytest.mark.parametrize("limit", [0, 100_000, 2_000_000, 15_400_000])
def test_where_there_is_no_room_nothing_half_done_stays(
    full: ShopRecord, tmp_path: Path, limit: int
) -> None:
    whole = archive_of(full, tmp_path / "whole.zip")
    before = all_files(tmp_path)
    shop = str(full.folder)
    done = with_limit(limit, "backup", str(tmp_path / "b.zip"), "--shop", shop)
    assert (done.returncode, done.stdout, done.stderr.count("\n")) == (2, "", 1), done.stderr
    assert all_files(tmp_path) == before
    if limit < 400_000:  # else it holds each of the pieces
        done = with_limit(limit, "restore", str(whole), str(tmp_path / "again"))
        assert (done.returncode, done.stdout, done.stderr.count("\n")) == (2, "", 1), done.stderr
        assert "was not written" in done.stderr
        assert all_files(tmp_path) == before


def test_a_full_disk_is_said_and_left_as_it_was(full: ShopRecord, small_disk: Path) -> None:
    file = small_disk / "b.zip"
    words = (*PROGRAM, "backup", str(file), "--shop", str(full.folder))
    done = subprocess.run(words, capture_output=True, text=True, cwd=ROOT, check=False)
    assert done.returncode == 2
    assert "No space left on device" in done.stderr
    assert list(small_disk.iterdir()) == []
    whole = archive_of(full, full.folder.parent / "whole.zip")
    words = (*PROGRAM, "restore", str(whole), str(small_disk / "again"))
    done = subprocess.run(words, capture_output=True, text=True, cwd=ROOT, check=False)
    assert done.returncode == 2
    assert "MB left" in done.stderr
    assert list(small_disk.iterdir()) == []


@pytest.mark.skipif(os.name == "nt", reason="there is no kill -9")
@pytest.mark.parametrize("after_ms", [0, 5, 20, 60, 120])
def test_a_killed_backup_leaves_no_file_that_looks_good(
    full: ShopRecord, tmp_path: Path, after_ms: int
) -> None:
    file, again = tmp_path / "b.zip", tmp_path / "again"
    program = begun(*PROGRAM, "backup", str(file), "--shop", str(full.folder))
    while program.poll() is None and not list(tmp_path.glob(".b.zip.being-written-*")):
        time.sleep(1 / MORE)
    time.sleep(after_ms / 1000)
    program.send_signal(signal.SIGKILL)
    program.communicate()
    if file.exists():  # it was done already
        through(restore_backup(file, again, NOON))
    else:
        made = archive_of(full, file)  # what is left of it is in nobody's way
        through(restore_backup(made, again, NOON))
    record = open_shop(again, lambda: NOON)
    assert check_shop(record, [(sha256, "") for sha256 in full.photos.all_names()]).ok
    record.close()


@pytest.mark.skipif(os.name == "nt", reason="there is no kill -9")
@pytest.mark.parametrize("after_ms", [0, 20, 60])
def test_a_killed_restore_leaves_no_shop_that_is_not_whole(
    full: ShopRecord, tmp_path: Path, after_ms: int
) -> None:
    file, again = archive_of(full, tmp_path / "b.zip"), tmp_path / "again"
    program = begun(*PROGRAM, "restore", str(file), str(again))
    while program.poll() is None and not list(tmp_path.glob(".again.being-restored-*")):
        time.sleep(1 / MORE)
    time.sleep(after_ms / 1000)
    program.send_signal(signal.SIGKILL)
    program.communicate()
    if not again.exists():
        through(restore_backup(file, again, NOON))
    record = open_shop(again, lambda: NOON)
    assert check_shop(record, [(sha256, "") for sha256 in full.photos.all_names()]).ok
    record.close()


@pytest.mark.parametrize("pages", [1, 1000])
def test_backups_are_whole_while_another_program_writes(
    shop: ShopRecord, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, pages: int
) -> None:
    """Page by page the writer always comes in between; then all are copied at once."""
    monkeypatch.setattr(dialect_snapshot, "_PAGES", pages)
    named(shop, "Odile")
    writer = begun(sys.executable, "-c", WRITER, str(shop.folder))
    assert writer.stdout is not None
    try:
        for number in range(6):
            acknowledged = int(writer.stdout.readline())
            file = archive_of(shop, tmp_path / f"{number}.zip")
            back = through(restore_backup(file, tmp_path / str(number), NOON))
            assert back.manifest.entries >= acknowledged + 2
            assert back.manifest.missing_photos == ()
        assert writer.poll() is None
    finally:
        writer.kill()
        _, said = writer.communicate()
    assert said == ""


@pytest.mark.embedded
def test_a_record_that_somebody_holds_for_long_is_said(
    shop: ShopRecord, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(dialect_snapshot, "_WAIT_S", 0.2)
    other = sqlite3.connect(shop.folder / FILE_NAME, isolation_level=None)
    other.execute("BEGIN EXCLUSIVE")
    with pytest.raises(ShopTrouble, match="busy in another program"):
        archive_of(shop, tmp_path / "b.zip")
    other.execute("ROLLBACK")
    other.close()
    archive_of(shop, tmp_path / "b.zip")
    assert {one.name for one in tmp_path.iterdir()} == {"shop", "b.zip"}


@pytest.mark.embedded
@pytest.mark.skipif(os.name == "nt", reason="rights are POSIX")
def test_a_photo_that_cannot_be_read_hinders_no_backup(full: ShopRecord, tmp_path: Path) -> None:
    photo = next(iter(full.photos.all_names()))
    full.photos.path(photo).unlink()
    full.photos.path(photo).mkdir()
    made = through(make_backup(full.folder, tmp_path / "b.zip", NOON))
    assert made.manifest.missing_photos == (photo,)
    generation = through(make_generation(full.folder, tmp_path / "backups", NOON))
    assert generation.manifest.missing_photos == (photo,)


def test_a_disk_that_gives_back_something_else_is_found(
    full: ShopRecord, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    write = zipfile.ZipFile.writestr

    def flip(self: zipfile.ZipFile, info: zipfile.ZipInfo, content: bytes) -> None:
        photo = info.filename.startswith("photos/")
        write(self, info, bytes([content[0] ^ 1]) + content[1:] if photo else content)

    monkeypatch.setattr(zipfile.ZipFile, "writestr", flip)
    with pytest.raises(ShopTrouble, match="does not give back what was written to it"):
        archive_of(full, tmp_path / "b.zip")
    assert {one.name for one in tmp_path.iterdir()} == {"shop"}
