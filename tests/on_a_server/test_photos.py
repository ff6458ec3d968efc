"""Photos of a shop on a server: kept there by their hash, looked at from copies that are held."""

from __future__ import annotations

import errno
import hashlib
from collections.abc import Iterator
from pathlib import Path

import psycopg
import pytest

from desktop_app.commands.mending import mend
from desktop_app.commands.whole_check import whole_check
from desktop_app.shop_record.backups.generations import make_generation
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.checks.problem import Checked
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_folder import read_place, write_place
from desktop_app.shop_record.step import walked
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.on_a_server.shops import database_of, opened, problems_of
from tests.servers import Server
from tests.shop_record.backed_up import through, with_photo

PICTURE = bytes(range(256)) * 2000


@pytest.fixture
def here(server_folder: Path) -> Iterator[ShopRecord]:
    """The shop as one workstation has it open."""
    with opened(server_folder) as record:
        yield record


@pytest.fixture
def there(server_folder: Path, tmp_path: Path) -> Iterator[ShopRecord]:
    """The same shop as another workstation has it open, whose folder is its own."""
    write_place(tmp_path / "bay-2", read_place(server_folder))
    with opened(tmp_path / "bay-2") as record:
        yield record


def copies(record: ShopRecord) -> list[Path]:
    """The copies of photos that lie on a workstation."""
    return sorted((record.folder / "photos").glob("??/*"))


def write_over(path: Path, content: bytes) -> None:
    """Change a file that is not to be changed."""
    path.chmod(0o644)
    path.write_bytes(content)


def test_a_photo_is_there_for_the_others(here: ShopRecord, there: ShopRecord) -> None:
    sha256 = with_photo(here, PICTURE)
    assert copies(there) == []
    assert there.photos.read(sha256) == PICTURE
    assert [one.name for one in copies(there)] == [sha256]
    assert list(there.photos.all_names()) == [sha256]
    assert there.photos.is_whole(sha256)


def test_a_place_is_given_where_the_whole_photo_lies(here: ShopRecord, there: ShopRecord) -> None:
    sha256 = with_photo(here, PICTURE)
    path = there.photos.path(sha256)
    assert path.read_bytes() == PICTURE
    assert path.is_relative_to(there.folder)


def test_a_photo_that_the_server_lost_comes_back_from_a_copy_here(
    here: ShopRecord, server: Server
) -> None:
    sha256 = with_photo(here, PICTURE)
    server.sql("DELETE FROM photo_content", database_of(here.folder))
    (wrong,) = walked(whole_check(here)).problems
    assert wrong.what == f"The photo {sha256} in the server's database is missing."
    (said,) = walked(mend(here, Checked((wrong,), 0, 0)))
    assert "was brought back from" in said
    assert walked(whole_check(here)).ok
    copies(here)[0].unlink()
    assert here.photos.read(sha256) == PICTURE


@pytest.mark.parametrize("change", [PICTURE[:-1], b"", PICTURE[:-1] + b"\x00"])
def test_a_copy_that_was_changed_is_fetched_anew(here: ShopRecord, change: bytes) -> None:
    sha256 = with_photo(here, PICTURE)
    for ask in (here.photos.read, lambda name: here.photos.path(name).read_bytes()):
        write_over(copies(here)[0], change)
        assert ask(sha256) == PICTURE
    assert copies(here)[0].read_bytes() == PICTURE


def test_the_same_photo_twice_is_kept_once(here: ShopRecord, there: ShopRecord) -> None:
    assert here.photos.keep(PICTURE) == there.photos.keep(PICTURE)
    assert len(list(here.photos.all_names())) == 1


def test_without_room_for_a_copy_the_photo_is_on_the_server(
    here: ShopRecord, there: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_file: int) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr("desktop_app.shop_record.photos.photo_files.os.fsync", full)
    sha256 = with_photo(here, PICTURE)
    assert here.photos.read(sha256) == PICTURE
    assert copies(here) == []
    assert there.photos.read(sha256) == PICTURE


def test_one_that_is_gone_from_the_server_is_named(here: ShopRecord, server: Server) -> None:
    gone, stays = with_photo(here, PICTURE), with_photo(here, PICTURE[::-1])
    assert problems_of(here) == []
    server.sql(f"DELETE FROM photo_content WHERE sha256 = '{gone}'", database_of(here.folder))
    assert problems_of(here) == [f"The photo {gone} in the server's database is missing."]
    copies(here)[0 if copies(here)[0].name == gone else 1].unlink()
    with pytest.raises(ShopTrouble, match="not on the shop's server any more"):
        here.photos.read(gone)
    assert here.photos.read(stays) == PICTURE[::-1]


def test_the_server_refuses_a_flipped_byte(here: ShopRecord, server: Server) -> None:
    sha256 = with_photo(here, PICTURE)
    flip = "UPDATE photo_content SET content = set_byte(content, 700, 0)"
    with pytest.raises(psycopg.errors.CheckViolation):
        server.sql(flip, database_of(here.folder))
    other = hashlib.sha256(b"another").hexdigest()
    add = f"INSERT INTO photo_content VALUES ('{other}', 'changed')"
    with pytest.raises(psycopg.errors.CheckViolation):
        server.sql(add, database_of(here.folder))
    assert here.photos.is_whole(sha256)


def test_a_connection_lost_meanwhile_costs_no_photo(here: ShopRecord, server: Server) -> None:
    sha256 = with_photo(here, PICTURE)
    cut = "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = "
    server.sql(f"{cut} 'benchwitness'")
    assert here.photos.is_whole(sha256)
    server.sql(f"{cut} 'benchwitness'")
    assert here.photos.keep(b"one more") in set(here.photos.all_names())


def test_a_backup_has_photos_that_nobody_looked_at_here(
    here: ShopRecord, there: ShopRecord, tmp_path: Path
) -> None:
    sha256 = with_photo(here, PICTURE)
    made = through(make_generation(there.folder, tmp_path / "backups", NOON))
    through(restore_backup(made.folder, tmp_path / "back", NOON))
    with opened(tmp_path / "back") as record:
        assert record.photos.read(sha256) == PICTURE
        assert problems_of(record) == []


def test_a_row_that_was_changed_past_the_server_is_not_said_to_be_mended(
    here: ShopRecord, server: Server
) -> None:
    sha256, database = with_photo(here, PICTURE), database_of(here.folder)
    server.sql("ALTER TABLE photo_content DROP CONSTRAINT photo_content_check", database)
    server.sql("UPDATE photo_content SET content = 'changed'", database)
    looked = walked(whole_check(here))
    assert [one.photo for one in looked.problems] == [sha256]
    (said,) = walked(mend(here, looked))
    assert "is still damaged" in said
    take_out = f"DELETE FROM photo_content WHERE sha256 = '{sha256}'"
    assert take_out in said
    server.sql(take_out, database)
    (said,) = walked(mend(here, looked))
    assert "was brought back from" in said
    assert walked(whole_check(here)).ok
