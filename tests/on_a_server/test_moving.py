"""A shop carried onto a server and back: the same in every row, or as if nobody had tried."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select

from desktop_app.commands.command_line import run
from desktop_app.commands.server_place import folder_for
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record import move_shop
from desktop_app.shop_record import moved as moving
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.move_shop import Moved, move_into_folder, move_to_server
from desktop_app.shop_record.past import history
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server import server_shop
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.server.server_roles import roles_of
from desktop_app.shop_record.server.server_trouble import ServerLost, server_lost
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble
from tests.on_a_server.shops import address_of, database_of, opened, problems_of
from tests.servers import Server
from tests.shop_record.backed_up import all_files
from tests.undo_machine.furnished_shop import put_furnished_shop
from tests.undo_machine.whole_state import State, differences, state_of


class Stopped(Exception):
    """Somebody ended the program."""


@dataclass(frozen=True)
class Everything:
    """All that a shop keeps."""

    rows: State
    entries: list[Any]
    given: dict[str, int]
    photos: dict[str, bytes]
    undo: tuple[str | None, str | None]


def everything(record: ShopRecord) -> Everything:
    """Read all that a shop keeps, each table by the program's own names."""
    with record.reading() as connection:
        wanted = select(HistoryEntry.__table__).order_by(HistoryEntry.seq)
        entries = [tuple(row) for row in connection.execute(wanted)]
        given = {name: n for name, n in dialect.ids_given(connection).items() if n}
        assert history.chain_problems(connection) == (len(entries), [])
    photos = {name: record.photos.read(name) for name in record.photos.all_names()}
    return Everything(state_of(record), entries, given, photos, record.undo_and_redo())


def same(one: Everything, other: Everything) -> None:
    """Hold two shops against each other."""
    assert differences(one.rows, other.rows) == []
    assert one.rows.keys() == other.rows.keys()
    assert one == other


@pytest.fixture
def furnished(tmp_path: Path) -> Path:
    """The folder of a shop that has a row of everything, and undone deeds."""
    folder = tmp_path / "shop"
    put_furnished_shop(folder)
    with opened(folder) as record:
        actions.add_person(record, "who goes again")
        record.undo()
        record.do("Take Bo out", lambda deed: deed.change(Person, 2, here=0))
        record.undo()
    return folder


@pytest.fixture
def address(server: Server) -> Iterator[ServerAddress]:
    """The address of a database that is not there yet."""
    found = address_of(server, server.new_name())
    yield found
    server.drop(found.database)


@pytest.fixture
def moved(furnished: Path, address: ServerAddress, tmp_path: Path) -> Path:
    """The folder of the furnished shop as it was moved onto the server."""
    with opened(furnished) as record:
        move_to_server(record, address, None, None)
    write_place(tmp_path / "moved", ServerPlace(address))
    return tmp_path / "moved"


def is_empty(server: Server, address: ServerAddress) -> bool:
    """Tell whether a database has nothing in it, if it is there, and no roles belong to it."""
    names = ", ".join(f"'{role}'" for role in roles_of(address.database))
    if server.sql(f"SELECT 1 FROM pg_roles WHERE rolname IN ({names})"):
        return False
    if not server.sql(f"SELECT 1 FROM pg_database WHERE datname = '{address.database}'"):
        return True
    said = "SELECT relname FROM pg_class WHERE relnamespace = 'public'::regnamespace"
    return server.sql(said, address.database) == []


def order(*words: str) -> int:
    """Carry out a command line."""
    return run(words, lambda _folder: 0, lambda _folder, _picture: None)


def test_onto_a_server_and_back_it_is_the_same(
    furnished: Path, moved: Path, tmp_path: Path
) -> None:
    with opened(furnished) as record, opened(moved) as there:
        before = everything(record)
        assert before.photos
        assert before.rows["own_kind"]
        same(before, everything(there))
        told = move_into_folder(there, tmp_path / "back")
    assert told == Moved(
        sum(len(rows) for name, rows in before.rows.items() if " " not in name),
        *(len(before.entries), len(before.photos), 0),
    )
    with opened(tmp_path / "back") as back:
        same(before, everything(back))
        assert problems_of(back) == []


@pytest.mark.parametrize("pieces", [1, 7])
def test_a_shop_larger_than_a_piece_is_moved_piece_by_piece(
    furnished: Path, address: ServerAddress, tmp_path: Path, pieces: int
) -> None:
    write_place(tmp_path / "moved", ServerPlace(address))
    with opened(furnished) as record, pytest.MonkeyPatch.context() as patch:
        patch.setattr(moving, "AT_A_TIME", pieces)
        move_to_server(record, address, None, None)
        with opened(tmp_path / "moved") as there:
            same(everything(record), everything(there))
            with there.reading() as connection:
                blocks = list(dialect.all_rows(connection, "history", ["seq", "at"], pieces))
    assert len(blocks) > 3
    assert all(len(rows) == pieces for rows in blocks[:-1])


def test_after_the_move_the_deeds_from_before_are_undone(furnished: Path, moved: Path) -> None:
    with opened(furnished) as record, opened(moved) as there:
        for _ in range(12):
            assert record.undo().words == there.undo().words
        for _ in range(5):
            assert record.redo().words == there.redo().words
        assert differences(state_of(record), state_of(there)) == []
        assert problems_of(there) == []


def test_numbers_that_were_given_out_are_not_given_again(furnished: Path, moved: Path) -> None:
    with opened(furnished) as record, opened(moved) as there:
        given = everything(record).given["person"]
        assert given > max(state_of(record)["person"])
        for shop in (record, there):
            assert actions.add_person(shop, "Tuuli").made == given + 1


def test_photos_lie_in_a_shared_folder_where_that_is_wanted(
    server: Server, furnished: Path, address: ServerAddress, tmp_path: Path
) -> None:
    shared = tmp_path / "shared"
    shared.mkdir()
    with opened(furnished) as record:
        before = everything(record)
        assert move_to_server(record, address, shared, None).photos == len(before.photos)
    assert server.sql("SELECT 1 FROM photo_content", address.database) == []
    write_place(tmp_path / "bay", ServerPlace(address, shared))
    with opened(tmp_path / "bay") as there:
        same(before, everything(there))


def test_photos_that_are_missing_or_damaged_are_told(
    furnished: Path, address: ServerAddress, tmp_path: Path
) -> None:
    gone, damaged, *whole = sorted((furnished / "photos").glob("??/*"))
    gone.unlink()
    damaged.chmod(0o644)
    damaged.write_bytes(b"something else")
    with opened(furnished) as record:
        told = move_to_server(record, address, None, None)
        assert (told.photos, told.missing) == (len(whole), 2)
    write_place(tmp_path / "bay", ServerPlace(address))
    with opened(tmp_path / "bay") as there:
        assert sorted(there.photos.all_names()) == [path.name for path in whole]
        told = move_into_folder(there, tmp_path / "back")
        named = {gone.name, damaged.name} & {
            row["sha256"] for row in state_of(there)["photo"].values()
        }
        assert (told.photos, told.missing) == (len(whole), len(named))


def test_photos_that_could_not_be_asked_for_are_not_said_to_be_missing(
    moved: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def away(*_: object) -> bool:
        raise server_lost()

    monkeypatch.setattr(
        "desktop_app.shop_record.photos.photos_on_server.PhotosOnServer.is_whole", away
    )
    with opened(moved) as there, pytest.raises(ServerLost):
        move_into_folder(there, tmp_path / "back")
    assert not (tmp_path / "back").exists()


def test_the_command_says_which_photos_were_left_out(
    furnished: Path, address: ServerAddress, capsys: pytest.CaptureFixture[str]
) -> None:
    next((furnished / "photos").glob("??/*")).unlink()
    assert order("move-shop", address.text(), "--shop", str(furnished)) == 0
    assert (
        "1 of the photos were gone or damaged before and are not in it" in capsys.readouterr().out
    )


@pytest.mark.parametrize("holds", ["a shop", "CREATE TABLE theirs (id int)"])
def test_a_database_that_is_not_empty_is_refused(
    server: Server, furnished: Path, address: ServerAddress, holds: str
) -> None:
    with opened(furnished) as record:
        if holds == "a shop":
            move_to_server(record, address, None, None)
        else:
            server.sql(f"CREATE DATABASE {address.database} TEMPLATE template0")
            server.sql(holds, address.database)
        before = server.sql("SELECT relname FROM pg_class ORDER BY 1", address.database)
        with pytest.raises(ShopTrouble, match="is not empty"):
            move_to_server(record, address, None, None)
    assert server.sql("SELECT relname FROM pg_class ORDER BY 1", address.database) == before


def test_a_database_that_sorts_otherwise_is_refused(
    server: Server, furnished: Path, address: ServerAddress
) -> None:
    server.sql(
        f"CREATE DATABASE {address.database} TEMPLATE template0 ENCODING 'LATIN1' LC_COLLATE 'C' "
        "LC_CTYPE 'C'"
    )
    with opened(furnished) as record, pytest.raises(ShopTrouble, match="UTF8"):
        move_to_server(record, address, None, None)
    assert is_empty(server, address)


@contextmanager
def stopped_at(name: str, at: int) -> Iterator[None]:
    """Stop the move in one of its pieces; of a piece that goes by steps, at one of them."""
    place = next(one for one in (move_shop, moving, server_shop) if hasattr(one, name))
    real: Callable[..., Any] = getattr(place, name)

    def by_steps(*args: Any) -> Iterator[Any]:
        for number, step in enumerate(real(*args)):
            if number == at:
                raise Stopped
            yield step

    def at_once(*_: Any, **__: Any) -> Any:
        raise Stopped

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(place, name, by_steps if name in ("_photos", "carry_over") else at_once)
        yield


TO_SERVER = [
    *(("_photos", 0), ("_photos", 2), ("carry_over", 0), ("carry_over", 13), ("carry_over", 39)),
    *((name, 0) for name in ("refuse_unfit", "set_up", "refuse_difference", "counted")),
]
INTO_FOLDER = [("_photos", 1), ("refuse_difference", 0), ("counted", 0)]


@pytest.mark.parametrize(("piece", "at"), TO_SERVER)
def test_a_move_onto_a_server_that_is_stopped_leaves_nothing(
    server: Server, furnished: Path, address: ServerAddress, piece: str, at: int
) -> None:
    with opened(furnished) as record:
        before = all_files(furnished)
        with stopped_at(piece, at), pytest.raises(Stopped):
            move_to_server(record, address, None, None)
        assert is_empty(server, address)
        assert all_files(furnished) == before
        if piece == "counted":  # what was stopped at its very end can be done again
            assert move_to_server(record, address, None, None).entries


def test_a_server_that_is_lost_meanwhile_leaves_nothing(
    server: Server, furnished: Path, address: ServerAddress, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = moving.counted

    def cut(target: Any) -> Any:
        server.sql(
            "SELECT pg_terminate_backend(pid) FROM pg_stat_activity "
            f"WHERE datname = '{address.database}'"
        )
        return real(target)

    monkeypatch.setattr(moving, "counted", cut)
    with opened(furnished) as record:
        before = everything(record)
        with pytest.raises(ShopTrouble, match="can't be reached"):
            move_to_server(record, address, None, None)
        assert is_empty(server, address)
        same(before, everything(record))


@pytest.mark.parametrize(("piece", "at"), INTO_FOLDER)
def test_a_move_into_a_folder_that_is_stopped_leaves_none(
    moved: Path, tmp_path: Path, piece: str, at: int
) -> None:
    before = {path.name for path in tmp_path.iterdir()}
    with opened(moved) as there:
        with stopped_at(piece, at), pytest.raises(Stopped):
            move_into_folder(there, tmp_path / "back")
        assert {path.name for path in tmp_path.iterdir()} == before
        if piece == "counted":
            assert move_into_folder(there, tmp_path / "back").entries


def test_what_differs_in_the_end_is_refused(
    server: Server, furnished: Path, address: ServerAddress, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = moving.carry_over

    def one_letter_off(source: Any, target: Any) -> Iterator[Any]:
        yield from real(source, target)
        target.exec_driver_sql("UPDATE job SET concern = concern || '.' WHERE id = 3")

    monkeypatch.setattr(moving, "carry_over", one_letter_off)
    with opened(furnished) as record, pytest.raises(ShopTrouble, match="the table job differs"):
        move_to_server(record, address, None, None)
    assert is_empty(server, address)


def test_a_folder_that_holds_something_is_refused(moved: Path, tmp_path: Path) -> None:
    (tmp_path / "full").mkdir()
    (tmp_path / "full" / "letter.txt").write_text("dear shop")
    (tmp_path / "file").write_text("")
    with opened(moved) as there:
        for place in ("full", "file"):
            with pytest.raises(ShopTrouble, match="not empty"):
                move_into_folder(there, tmp_path / place)
        (tmp_path / "empty").mkdir()
        assert move_into_folder(there, tmp_path / "empty").entries
    assert (tmp_path / "full" / "letter.txt").read_text() == "dear shop"


def test_the_command_moves_there_and_back(
    furnished: Path, address: ServerAddress, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (furnished / "part_kinds").mkdir()
    kind = Path("resources/part_kinds/spark-plug.toml").read_text("utf-8")
    (furnished / "part_kinds" / "spark-plug.toml").write_text(kind, "utf-8")
    assert order("move-shop", address.text(), "--shop", str(furnished), "--json") == 0
    there = json.loads(capsys.readouterr().out)
    assert (folder_for(address) / "part_kinds" / "spark-plug.toml").read_text("utf-8") == kind
    assert there["shop"] == address.text()
    assert order("move-shop", str(tmp_path / "back"), "--shop", address.text(), "--json") == 0
    back = json.loads(capsys.readouterr().out)
    for fact in ("rows", "history_entries", "photos", "photos_missing"):
        assert there[fact] == back[fact]
    assert there["history_entries"] > 20
    assert database_of(folder_for(address)) == address.database
    with opened(furnished) as record, opened(tmp_path / "back") as again:
        same(everything(record), everything(again))
    assert order("move-shop", address.text(), "--shop", str(furnished)) == 2
    assert "is not empty" in capsys.readouterr().err
