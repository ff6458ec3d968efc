"""The shared folder of a new shop's photos: empty, marked, and as it was where no shop was made."""

from __future__ import annotations

import errno
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import psycopg
import pytest
from sqlalchemy.exc import DBAPIError

from desktop_app.shop_record.move_shop import move_to_server
from desktop_app.shop_record.photos.photo_files import MARK
from desktop_app.shop_record.record import create_shop
from desktop_app.shop_record.server import server_shop
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.server.server_shop import create_on_server
from desktop_app.shop_record.server.server_trouble import PhotosUnknown
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.on_a_server.shops import address_of, new_on_server, opened
from tests.servers import Server
from tests.shop_record.backed_up import all_files, with_photo


class Killed(BaseException):
    """The program ends here and now."""


@pytest.fixture
def shared(tmp_path: Path) -> Path:
    """The shared folder, empty yet."""
    (tmp_path / "shared").mkdir()
    return tmp_path / "shared"


@pytest.fixture
def address(server: Server) -> Iterator[ServerAddress]:
    """The address of a database that is not there yet."""
    found = address_of(server, server.new_name())
    yield found
    server.drop(found.database)


@pytest.fixture
def make(address: ServerAddress, shared: Path, tmp_path: Path) -> Callable[[], None]:
    """Make a shop there, whose photos lie in the shared folder."""
    place = ServerPlace(address, shared)
    return lambda: create_on_server(tmp_path / "bay", place, lambda: NOON).close()


def takes_a_photo(folder: Path) -> bool:
    """Tell whether a shop was made that can be worked in."""
    with opened(folder) as record:
        return record.photos.read(with_photo(record)) == b"a photo"


def test_two_shops_do_not_share_a_folder(
    make: Callable[[], None], server: Server, shared: Path, tmp_path: Path
) -> None:
    make()
    before = all_files(shared)
    with (
        pytest.raises(PhotosUnknown, match="holds the photos of another shop"),
        new_on_server(server, tmp_path / "other", shared),
    ):
        pass
    with pytest.raises(ShopTrouble, match="is not empty"):
        make()  # once more, over itself
    assert all_files(shared) == before
    assert takes_a_photo(tmp_path / "bay")


def test_a_folder_that_holds_anything_is_refused(
    make: Callable[[], None], address: ServerAddress, shared: Path, tmp_path: Path
) -> None:
    (shared / "holiday.jpg").write_bytes(b"somebody's")
    with pytest.raises(PhotosUnknown, match="is not empty"):
        make()
    record = create_shop(tmp_path / "shop", lambda: NOON)
    with pytest.raises(PhotosUnknown, match="is not empty") as trouble:
        move_to_server(record, address, shared, None)
    record.close()
    assert "also where the photos that lie there are the same" in trouble.value.do
    assert all_files(shared) == {"holiday.jpg": b"somebody's"}


def test_a_shop_that_is_not_made_leaves_no_mark(
    server: Server, shared: Path, tmp_path: Path
) -> None:
    with (
        new_on_server(server, tmp_path / "bay-1") as address,
        pytest.raises(ShopTrouble, match="is not empty"),
    ):
        create_on_server(tmp_path / "again", ServerPlace(address, shared), lambda: NOON)
    assert list(shared.iterdir()) == []


def test_a_move_that_fails_leaves_the_folder_empty(
    address: ServerAddress, shared: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def differs(*_: Any) -> None:
        raise ShopTrouble("They differ.")

    record = create_shop(tmp_path / "shop", lambda: NOON)
    with_photo(record)
    with monkeypatch.context() as patch:
        patch.setattr("desktop_app.shop_record.moved.refuse_difference", differs)
        with pytest.raises(ShopTrouble, match="They differ"):
            move_to_server(record, address, shared, None)
    assert list(shared.iterdir()) == []
    assert move_to_server(record, address, shared, None).photos == 1
    record.close()


def test_a_mark_that_is_not_safely_on_the_disk_makes_no_shop(
    make: Callable[[], None], shared: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_file: int) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    with monkeypatch.context() as patch:
        patch.setattr("desktop_app.shop_record.photos.photo_folder_mark.os.fsync", full)
        with pytest.raises(ShopTrouble, match="No space left"):
            make()
    assert list(shared.iterdir()) == []
    make()
    assert takes_a_photo(tmp_path / "bay")


@pytest.mark.parametrize("torn", [False, True])
def test_what_a_killed_program_left_is_taken_over(
    make: Callable[[], None],
    shared: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    torn: bool,
) -> None:
    def killed(*_: Any) -> None:
        raise Killed

    with monkeypatch.context() as patch:
        patch.setattr(server_shop, "keep_mark", killed)
        with pytest.raises(Killed):
            make()
    assert (shared / MARK).exists()
    if torn:  # the power failed meanwhile
        (shared / MARK).write_bytes(b"")
    make()
    assert takes_a_photo(tmp_path / "bay")


@pytest.mark.parametrize("kept", [False, True])
def test_where_nobody_said_whether_it_was_made_the_mark_stays(
    make: Callable[[], None],
    address: ServerAddress,
    shared: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    kept: bool,
) -> None:
    really = psycopg.Connection.commit

    def unanswered(connection: psycopg.Connection[Any]) -> None:
        if kept:
            really(connection)
        connection.close()
        raise psycopg.OperationalError("the connection is lost")

    with monkeypatch.context() as patch:
        patch.setattr(psycopg.Connection, "commit", unanswered)
        with pytest.raises(DBAPIError, match="the connection is lost"):
            make()
    assert (shared / MARK).exists()
    if kept:
        write_place(tmp_path / "bay", ServerPlace(address, shared))
    else:
        make()
    assert takes_a_photo(tmp_path / "bay")
