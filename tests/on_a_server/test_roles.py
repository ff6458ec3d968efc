"""Who may do what on a server: readers look, workers do deeds, the owner changes the tables."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from random import Random
from typing import Any

import pytest

from desktop_app.commands.shop_place import kinds_of
from desktop_app.repair_jobs import actions
from desktop_app.shop_record import upgrade
from desktop_app.shop_record.backups.generations import make_generation
from desktop_app.shop_record.databases import dialect_postgres
from desktop_app.shop_record.move_shop import move_to_server
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.server.server_roles import give_rights, may_write, roles_of
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.stored_index import JobIndex
from desktop_app.symptom_search.stored_index_check import renew_index
from tests.conftest import NOON
from tests.on_a_server.shops import (
    address_of,
    new_on_server,
    opened,
    opened_as,
    problems_of,
    said,
)
from tests.records_exchanged.importing import bring_in, lines
from tests.servers import OWNER, Server
from tests.shop_record.backed_up import named, through, with_photo
from tests.undo_machine.furnished_shop import put_furnished_shop
from tests.undo_machine.rooms import ROOMS
from tests.undo_machine.shop_under_test import ShopUnderTest

EACH_ROOM = 4  # deeds
TRIES = 300
NOT_ALLOWED = "permission denied"


@pytest.fixture
def shop(server: Server, tmp_path: Path) -> Iterator[ServerAddress]:
    """A shop whose owner made it, with a worker and a reader who each have a login."""
    with new_on_server(server, tmp_path / "owner") as address:
        with opened(tmp_path / "owner") as record:
            with_photo(record)
        add_people(server, address.database)
        yield address
        take_people_out(server, address.database)


def add_people(server: Server, database: str) -> None:
    """Give a worker and a reader a login."""
    for role in roles_of(database):
        server.sql(f"CREATE ROLE {role}_login LOGIN IN ROLE {role}")


def take_people_out(server: Server, database: str) -> None:
    """Take a shop's people and its roles away; its database goes first."""
    server.drop(database)
    for role in roles_of(database):
        server.sql(f"DROP ROLE {role}_login, {role}")


def reader_of(address: ServerAddress) -> str:
    """The login of who only looks."""
    return f"{roles_of(address.database)[0]}_login"


def worker_of(address: ServerAddress) -> str:
    """The login of who works."""
    return f"{roles_of(address.database)[1]}_login"


def test_who_reads_can_look(server: Server, shop: ServerAddress, tmp_path: Path) -> None:
    with opened_as(server, reader_of(shop), shop.database, tmp_path / "bay") as record:
        assert problems_of(record) == []
        [sha256] = record.photos.all_names()
        assert record.photos.read(sha256) == b"a photo"
        assert record.undo_and_redo() == ("Write up a car with its photo", None)
        made = through(make_generation(record.folder, tmp_path / "backups", NOON))
        assert made.manifest.entries == 1
        with record.reading() as connection:
            assert not may_write(connection)


def test_who_reads_is_refused_in_words(server: Server, shop: ServerAddress, tmp_path: Path) -> None:
    attempts: list[Callable[[Any], Any]] = [
        lambda record: named(record, "Tuuli"),
        lambda record: record.undo(),
        lambda record: record.photos.keep(b"another photo"),
        lambda record: bring_in(record, lines({"job_number": "R-1", "opened_on": "2025-04-03"})),
        lambda record: renew_index(record, JobIndex(kinds_of())),
    ]
    with opened_as(server, reader_of(shop), shop.database, tmp_path / "bay") as record:
        for attempt in attempts:
            with pytest.raises(ShopTrouble) as trouble:
                attempt(record)
            assert trouble.value.what == "You may look at this shop's record but not change it."
            assert "owner" in trouble.value.do
        assert problems_of(record) == []


@pytest.mark.parametrize(
    "words",
    [
        "UPDATE history SET who = 'Nobody'",
        "DELETE FROM history",
        "TRUNCATE history",
        "TRUNCATE job CASCADE",
        "UPDATE photo_content SET content = 'x'",
        "DELETE FROM photo_content",
        "UPDATE set_up SET value = 'in a folder'",
        "INSERT INTO set_up VALUES ('more', 'x')",
        "UPDATE alembic_version SET version_num = '0001'",
        "CREATE TABLE more (id int)",
        "ALTER TABLE job ADD COLUMN more text",
        "DROP TABLE job CASCADE",
        "ALTER TABLE history DISABLE TRIGGER history_stays",
        "DROP TRIGGER history_stays ON history",
        "CREATE OR REPLACE FUNCTION history_stays() RETURNS trigger LANGUAGE plpgsql AS "
        "'BEGIN RETURN NULL; END'",
        "CREATE SCHEMA more",
        "CREATE ROLE more",
    ],
)
def test_what_neither_may(server: Server, shop: ServerAddress, words: str) -> None:
    for user in (reader_of(shop), worker_of(shop)):
        refusal = said(server, user, shop.database, words)
        assert NOT_ALLOWED in refusal or "must be owner" in refusal, (user, refusal)
    refusal = said(server, reader_of(shop), shop.database, "INSERT INTO person VALUES ('x', 1, 9)")
    assert NOT_ALLOWED in refusal


def test_nobody_else_gets_in(server: Server, shop: ServerAddress, tmp_path: Path) -> None:
    stranger = f"stranger_of_{shop.database}"
    server.sql(f"CREATE ROLE {stranger} LOGIN")
    try:
        assert NOT_ALLOWED in said(server, stranger, shop.database, "SELECT 1")
        write_place(tmp_path / "bay", ServerPlace(address_of(server, shop.database, stranger)))
        with pytest.raises(ShopTrouble):
            opened(tmp_path / "bay").__enter__()
    finally:
        server.sql(f"DROP ROLE {stranger}")


def test_not_even_the_owner_changes_the_history(server: Server, shop: ServerAddress) -> None:
    for words in ("UPDATE history SET who = ''", "DELETE FROM history", "TRUNCATE history"):
        assert "only ever added to" in said(server, OWNER, shop.database, words)
    assert said(server, OWNER, shop.database, "UPDATE set_up SET value = value") == ""


def test_a_worker_writes_takes_back_and_keeps_photos(
    server: Server, shop: ServerAddress, tmp_path: Path
) -> None:
    with opened_as(server, worker_of(shop), shop.database, tmp_path / "bay") as record:
        with record.reading() as connection:
            assert may_write(connection)
        actions.add_person(record, "Tuuli")
        with_photo(record, b"another photo")
        record.undo()
        record.redo()
        assert problems_of(record) == []


def test_a_worker_brings_jobs_in_and_takes_them_back(
    server: Server, shop: ServerAddress, tmp_path: Path
) -> None:
    row = {"opened_on": "2025-04-03", "vehicle": "van", "concern": "hums"}
    table = lines(*({"job_number": f"R-{n}", "plate": f"TH {n}", **row} for n in range(40)))
    with opened_as(server, worker_of(shop), shop.database, tmp_path / "bay") as record:
        assert bring_in(record, table).added == 40
        record.undo()
        assert bring_in(record, table).added == 40
        with_photo(record, b"one more")  # numbers go on after those that were brought in
        assert problems_of(record) == []


def test_a_worker_makes_the_search_anew(
    server: Server, shop: ServerAddress, tmp_path: Path
) -> None:
    with opened_as(server, worker_of(shop), shop.database, tmp_path / "bay") as record:
        assert renew_index(record, JobIndex(kinds_of())) == 1
        assert problems_of(record) == []


def test_a_table_that_comes_later_is_the_workers_too(server: Server, shop: ServerAddress) -> None:
    step = "CREATE TABLE tow_truck (name text, id bigserial PRIMARY KEY)"
    assert said(server, OWNER, shop.database, step) == ""
    add = "INSERT INTO tow_truck (name) VALUES ('ours')"
    assert said(server, worker_of(shop), shop.database, add) == ""
    for words in ("UPDATE tow_truck SET name = 'theirs'", "SELECT setval('tow_truck_id_seq', 9)"):
        assert said(server, worker_of(shop), shop.database, words) == ""
    assert said(server, reader_of(shop), shop.database, "SELECT * FROM tow_truck") == ""
    assert NOT_ALLOWED in said(server, reader_of(shop), shop.database, add)


@pytest.mark.parametrize("who", [reader_of, worker_of])
def test_an_update_is_its_owners(
    server: Server, shop: ServerAddress, tmp_path: Path, who: Callable[[ServerAddress], str]
) -> None:
    older, newest = upgrade.STEPS[-2:]
    form = "UPDATE alembic_version SET version_num = '{}'"
    server.sql(form.format(older), shop.database)
    with (
        pytest.raises(ShopTrouble) as trouble,
        opened_as(server, who(shop), shop.database, tmp_path / "bay"),
    ):
        pass
    assert "needs an update" in trouble.value.what
    assert f"owner ({OWNER}) makes it by opening the shop once" in trouble.value.do
    assert not (tmp_path / "bay" / "backups").exists()
    server.sql(form.format(newest), shop.database)
    with opened_as(server, who(shop), shop.database, tmp_path / "bay") as record:
        assert problems_of(record) == []


def test_rights_can_be_given_again(server: Server, shop: ServerAddress) -> None:
    engine = dialect_postgres.open_server(shop, None)
    with engine.connect() as plain:
        connection = plain.execution_options(writing=True)
        with connection.begin():
            assert give_rights(connection, shop.database) == roles_of(shop.database)
    engine.dispose()
    assert NOT_ALLOWED in said(server, worker_of(shop), shop.database, "DELETE FROM history")


@pytest.fixture(scope="module")
def workers_shop(
    server: Server, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[ShopUnderTest]:
    """The furnished shop moved onto the server, at two desks of workers."""
    folder = tmp_path_factory.mktemp("furnished")
    put_furnished_shop(folder / "shop")
    owner = address_of(server, server.new_name())
    with opened(folder / "shop") as record:
        move_to_server(record, owner, None, None)
    add_people(server, owner.database)
    place = ServerPlace(address_of(server, owner.database, worker_of(owner)))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(
            "tests.undo_machine.shop_under_test.put_furnished_shop",
            lambda to: write_place(to, place),
        )
        shop = ShopUnderTest()
    yield shop
    shop.close()
    take_people_out(server, owner.database)


def some_deeds() -> list[Any]:
    """Some deeds of each room, spread evenly."""
    found = []
    for room, deeds in ROOMS.items():
        names = sorted(deeds, key=lambda deed: deed.__name__)
        for deed in names[:: -(-len(names) // EACH_ROOM)]:
            found.append(pytest.param(deed, deeds[deed], id=f"{room}-{deed.__name__}"))
    return found


@pytest.mark.parametrize(("deed", "choose"), some_deeds())
def test_workers_do_every_kind_of_deed(workers_shop: ShopUnderTest, deed: Any, choose: Any) -> None:
    pick = Random(deed.__name__).randrange
    assert any(workers_shop.do(deed, choose, desk % 2, pick) for desk in range(TRIES))
    workers_shop.undo(1)
    workers_shop.redo(0)
    workers_shop.undo(0)
