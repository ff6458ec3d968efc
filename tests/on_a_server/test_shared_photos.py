"""Photos in a folder that several desks reach: nothing goes into another, nor into none.

A network share that is not connected leaves an empty folder in its place.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.commands.mending import mend
from desktop_app.commands.server_place import open_wanted
from desktop_app.commands.whole_check import whole_check
from desktop_app.shop_record.backups.generations import make_generation
from desktop_app.shop_record.first_look import first_look
from desktop_app.shop_record.move_shop import move_into_folder
from desktop_app.shop_record.photos.photo_files import MARK
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.server.server_trouble import PhotosUnknown
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.on_a_server.shops import new_on_server, opened, problems_of
from tests.servers import Server
from tests.shop_record.backed_up import all_files, through, with_photo

PICTURE = bytes(range(256)) * 200


@pytest.fixture
def shared(tmp_path: Path) -> Path:
    """The shared folder, empty yet."""
    (tmp_path / "shared").mkdir()
    return tmp_path / "shared"


@pytest.fixture
def address(server: Server, shared: Path, tmp_path: Path) -> Iterator[ServerAddress]:
    """Where the shop is whose photos lie there; the desk of bay 1 knows it."""
    with new_on_server(server, tmp_path / "bay-1", shared) as found:
        yield found


@pytest.fixture
def here(address: ServerAddress, tmp_path: Path) -> Iterator[ShopRecord]:
    """The shop as that desk has it open."""
    assert address
    with opened(tmp_path / "bay-1") as record:
        yield record


@pytest.fixture
def unmounted(here: ShopRecord, shared: Path, tmp_path: Path) -> tuple[str, Path]:
    """A photo that was taken in before the share went, and where the share is meanwhile."""
    sha256 = with_photo(here, PICTURE)
    shared.rename(tmp_path / "share")
    shared.mkdir()
    return sha256, tmp_path / "share"


def connect_again(share: Path, shared: Path) -> None:
    """Let the share lie over the empty folder again."""
    shared.rmdir()  # nothing was written into it
    share.rename(shared)


def test_a_photo_is_there_for_the_others(
    here: ShopRecord, address: ServerAddress, server: Server, shared: Path, tmp_path: Path
) -> None:
    write_place(tmp_path / "bay-2", ServerPlace(address, shared))
    sha256 = with_photo(here, PICTURE)
    with opened(tmp_path / "bay-2") as there:
        assert there.photos.read(sha256) == PICTURE
        assert server.sql("SELECT 1 FROM photo_content", address.database) == []
        path = there.photos.path(sha256)
        path.chmod(0o644)
        path.write_bytes(PICTURE[1:])
        assert problems_of(here) == [
            f"The photo file shared/{sha256[:2]}/{sha256} was changed after it was taken in."
        ]


def test_a_desk_that_does_not_know_the_folder_is_told(
    address: ServerAddress, tmp_path: Path
) -> None:
    write_place(tmp_path / "bay-3", ServerPlace(address))
    with pytest.raises(ShopTrouble, match="does not know where") as trouble:
        opened(tmp_path / "bay-3").__enter__()
    assert "name that folder there" in trouble.value.do


def test_no_photo_goes_into_the_empty_folder_of_a_share_that_is_away(
    here: ShopRecord, unmounted: tuple[str, Path], shared: Path
) -> None:
    sha256, share = unmounted
    with pytest.raises(ShopTrouble, match="can't be reached") as trouble:
        here.photos.keep(PICTURE[::-1])
    assert "what you typed" in trouble.value.kept
    assert "Is the shared folder connected?" in trouble.value.do
    with pytest.raises(PhotosUnknown, match="can't be reached"):
        here.photos.read(sha256)
    connect_again(share, shared)
    assert here.photos.read(here.photos.keep(PICTURE[::-1])) == PICTURE[::-1]
    assert here.photos.read(sha256) == PICTURE


def test_no_folder_is_made_where_the_share_was(here: ShopRecord, shared: Path) -> None:
    (shared / MARK).unlink()
    shared.rmdir()
    with pytest.raises(ShopTrouble, match="can't be reached"):
        here.photos.keep(PICTURE)
    assert not shared.exists()


def test_while_the_share_is_away_the_shop_opens_and_is_backed_up(
    here: ShopRecord, unmounted: tuple[str, Path], shared: Path, tmp_path: Path
) -> None:
    sha256, share = unmounted
    with opened(here.folder) as again:
        said = first_look(again)
        assert said is not None
        assert "can't be reached" in said.what
        assert "Everything else is there" in said.kept
        made = through(make_generation(again.folder, tmp_path / "backups", NOON))
        assert made.manifest.missing_photos == (sha256,)
        looked = through(whole_check(again))
        assert [one.where for one in looked.problems] == ["the shared folder"]  # no photo is lost
        assert through(mend(again, looked)) == []
        with pytest.raises(PhotosUnknown, match="can't be reached"):
            move_into_folder(again, tmp_path / "carried")
    connect_again(share, shared)
    assert first_look(here) is None
    assert through(whole_check(here)).ok


def test_a_folder_that_is_named_wrongly_is_refused_at_once(
    address: ServerAddress, shared: Path, tmp_path: Path
) -> None:
    (tmp_path / "elsewhere").mkdir()
    with pytest.raises(PhotosUnknown, match="Is the shared folder connected"):
        open_wanted(address, None, tmp_path / "elsewhere", lambda: NOON, new=False)
    record, _ = open_wanted(address, None, shared, lambda: NOON, new=False)
    record.close()


def test_what_nobody_names_and_what_was_changed_goes_into_the_trash_of_the_folder(
    here: ShopRecord, shared: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    sha256 = with_photo(here, PICTURE)
    through(make_generation(here.folder, here.folder / "backups", NOON))
    changed, odd = shared / sha256[:2] / sha256, shared / "odd.txt"
    changed.chmod(0o644)
    changed.write_bytes(b"another part")
    odd.write_text("nobody's")
    os.utime(odd, (1, 1))
    really = Path.rename

    def on_one_disk(path: Path, to: Path) -> Path:
        if path.is_relative_to(shared) and not to.is_relative_to(shared):
            raise OSError(18, "Invalid cross-device link")
        return really(path, to)

    monkeypatch.setattr(Path, "rename", on_one_disk)
    said = through(mend(here, through(whole_check(here))))
    assert [odd.name in one or sha256 in one for one in said] == [True, True]
    assert {path.name: path.read_bytes() for path in (shared / "trash").rglob("*.*")} == {
        odd.name: b"nobody's"
    }
    assert [one.read_bytes() for one in (shared / "trash").rglob(sha256)] == [b"another part"]
    assert here.photos.read(sha256) == PICTURE
    for one in (shared / "trash").rglob("*"):
        os.utime(one, (1, 1))
    assert through(whole_check(here)).ok  # what lies in the trash is not told again


def test_a_folder_with_another_shop_s_mark_is_refused(
    here: ShopRecord, server: Server, address: ServerAddress, shared: Path, tmp_path: Path
) -> None:
    other = tmp_path / "other photos"
    other.mkdir()
    with new_on_server(server, tmp_path / "other", other):
        write_place(tmp_path / "bay-2", ServerPlace(address, other))
        with pytest.raises(PhotosUnknown, match="of another shop"), opened(tmp_path / "bay-2"):
            pass
        server.sql("DELETE FROM set_up WHERE name = 'photo_folder'", address.database)
        with pytest.raises(PhotosUnknown, match="of another shop"), opened(tmp_path / "bay-2"):
            pass  # also where the record is of before there were marks
    (shared / MARK).unlink()
    with opened(tmp_path / "bay-1") as record:
        assert record.photos.read(with_photo(record)) == b"a photo"
    before = all_files(other)
    (shared / MARK).write_bytes(before[MARK])  # now that folder lies in its place
    with pytest.raises(PhotosUnknown, match="of another shop"):
        here.photos.keep(PICTURE)
