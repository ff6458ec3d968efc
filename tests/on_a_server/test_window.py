"""A shop on a server in the window: opened, made, refused in words, never holding the window up."""

# ruff: noqa: F811 - the fixtures of a server that wants passwords
from __future__ import annotations

import socket
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import keyring
import keyring.backends.fail
import pytest
from PySide6.QtWidgets import QAbstractButton, QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.commands.server_place import folder_for
from desktop_app.commands.shop_place import last_shop, new_place, open_place, remember
from desktop_app.program import Program
from desktop_app.repair_jobs import actions
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import ServerPlace, read_place, write_place
from desktop_app.shop_record.server.server_password import keep_password
from desktop_app.shop_record.server.server_roles import roles_of
from desktop_app.shop_record.server.server_shop import create_on_server
from desktop_app.shop_window.place_names import FIRST_RULES
from desktop_app.shop_window.server_door import CONNECTING, KEPT, NOT_KEPT
from tests.conftest import NOON
from tests.on_a_server.shops import address_of, new_on_server
from tests.on_a_server.test_passwords import (  # noqa: F401 - a server that wants passwords
    KEEPER,
    OWNER,
    SECRET,
    Ring,
    guarded,
    ring,
    start_anew,
)
from tests.servers import Server, running
from tests.shop_stories.counter import Counter, sitting


class AtTheDoor(Counter):
    """Somebody who has no shop open yet: pages are pressed on as soon as they are laid out."""

    def press(self, name: str) -> None:
        def laid_out() -> bool:
            button = self.button(name)
            middle = button.mapTo(self.window, button.rect().center())
            return self.window.childAt(middle) is button

        self.bot.waitUntil(laid_out)
        super().press(name)


@contextmanager
def program_on(
    qtbot: QtBot, folder: Path | None, backup_after_ms: int | None = None
) -> Iterator[Counter]:
    """Start the program, whether it comes to a shop or not."""
    program = Program(folder, lambda: NOON, backup_after_ms)
    program.window.resize(1366, 900)
    program.start()
    at = AtTheDoor(qtbot, program)
    qtbot.waitUntil(lambda: program.desk is not None or bool(at.window.here()), timeout=10_000)
    program.window.activateWindow()
    qtbot.waitUntil(program.window.isActiveWindow)
    try:
        yield at
    finally:
        if program.desk is not None:
            at.quiet()
        program.close()
        program.window.deleteLater()


def to_the_page(at: Counter) -> None:
    at.press("Open a shop on a server…")
    at.bot.waitUntil(lambda: at.window.here() == "On a Server")


def in_the_shop(at: Counter) -> Callable[[], bool]:
    return lambda: (
        at.program.desk is not None and at.window.here() in ("Ask the Old Jobs", FIRST_RULES)
    )


@pytest.fixture
def unmade(guarded: Server) -> Iterator[ServerAddress]:
    """The address of a database that is not there yet, on a server that wants a password."""
    found = address_of(guarded, guarded.new_name())
    yield found
    guarded.sql(f"DROP DATABASE IF EXISTS {found.database} WITH (FORCE)", user=KEEPER)


@pytest.mark.parametrize("there_is_one", [True, False])
def test_a_shop_is_made_there_and_found_again(
    qtbot: QtBot,
    unmade: ServerAddress,
    ring: Ring,
    monkeypatch: pytest.MonkeyPatch,
    there_is_one: bool,
) -> None:
    if not there_is_one:
        keyring.set_keyring(keyring.backends.fail.Keyring())
    with program_on(qtbot, None) as at:
        to_the_page(at)
        short = f"{unmade.user}@127.0.0.1:{unmade.port}/{unmade.database}"
        at.type_into(QLineEdit, "Address", short)
        at.press("Open it")
        at.wait_for(f"The server wants the password of {OWNER}")
        at.type_into(QLineEdit, "Password", "not this one")
        at.press("Make a new shop there")
        at.wait_for(f"The server wants the password of {OWNER}")
        assert at.find(QLineEdit, "Password").text() == "not this one"
        at.type_into(QLineEdit, "Password", SECRET)
        at.press("Make a new shop there")
        qtbot.waitUntil(in_the_shop(at), timeout=20_000)
        assert at.window.here() == FIRST_RULES
        at.wait_for(KEPT if there_is_one else NOT_KEPT)
        at.go("House Rules")
        at.wait_for(f"Record: {unmade.text()}")
        assert at.reads("Photos: in the database")
        assert at.reads(f"You are: {OWNER}")
        assert at.reads("One a day for the whole shop")
        assert not at.reads(SECRET)
        lines = at.window.findChildren(QLineEdit)
        assert SECRET not in [line.text() for line in lines]
    assert list(ring.kept.values()) == ([SECRET] if there_is_one else [])
    assert last_shop() == str(folder_for(unmade))
    start_anew(monkeypatch)
    with program_on(qtbot, None) as at:
        if there_is_one:
            qtbot.waitUntil(in_the_shop(at), timeout=10_000)
        else:
            at.wait_for(f"The server wants the password of {OWNER}")
            assert at.find(QLineEdit, "Address").text() == unmade.text()
            at.type_into(QLineEdit, "Password", SECRET, enter=True)
            qtbot.waitUntil(in_the_shop(at), timeout=10_000)


def test_a_password_in_the_address_is_taken_out_of_sight(
    qtbot: QtBot,
    unmade: ServerAddress,
    ring: Ring,
) -> None:
    with program_on(qtbot, None) as at:
        to_the_page(at)
        said = unmade.text().replace("@", f":{SECRET}@", 1)
        at.type_into(QLineEdit, "Address", said)
        at.press("Open it")
        at.wait_for(f"There is no database {unmade.database}")
        assert at.find(QLineEdit, "Address").text() == unmade.text()
        password = at.find(QLineEdit, "Password")
        assert password.text() == SECRET
        assert password.echoMode() is QLineEdit.EchoMode.Password
        assert not folder_for(unmade).exists()
    assert ring.kept == {}


@pytest.mark.parametrize(
    ("typed", "refused"),
    [
        ("", "No address is said."),
        ("ftp://counter/shop", "addresses are not understood"),
        ("tuuli@counter", "the name of the database is missing"),
        ("tuuli@counter/shop?sslmode=disable", "would let others read along"),
    ],
)
def test_what_is_no_address_is_said_beneath_it(qtbot: QtBot, typed: str, refused: str) -> None:
    with program_on(qtbot, None) as at:
        to_the_page(at)
        at.type_into(QLineEdit, "Address", typed)
        at.press("Open it")
        at.wait_for(refused)
        assert at.find(QLineEdit, "Address").text() == typed
        at.type_into(QLineEdit, "Address", "t")
        assert not at.reads(refused)


def test_a_server_that_is_away_at_the_start_is_tried_again(qtbot: QtBot, tmp_path: Path) -> None:
    with running() as server:
        folder = tmp_path / "shop"
        with new_on_server(server, folder):
            remember(folder)
            server.stop("immediate")
            with program_on(qtbot, None) as at:
                at.wait_for("can't be reached")
                at.press("Try again")
                at.wait_for("can't be reached")
                assert last_shop() == str(folder)
                server.start()
                at.press("Try again")
                qtbot.waitUntil(in_the_shop(at), timeout=10_000)
            assert last_shop() == str(folder_for(read_place(folder).address))


@pytest.fixture
def silent() -> Iterator[ServerAddress]:
    """The address of a server that takes a connection and never says a word."""
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        one.listen()
        yield ServerAddress("127.0.0.1", one.getsockname()[1], "shop", "tuuli")


def test_nobody_has_to_wait_for_a_silent_server(
    qtbot: QtBot, silent: ServerAddress, tmp_path: Path
) -> None:
    write_place(tmp_path / "shop", ServerPlace(silent))
    program = Program(tmp_path / "shop", lambda: NOON)
    program.window.resize(1366, 900)
    program.start()
    at = AtTheDoor(qtbot, program)
    at.wait_for(CONNECTING)
    at.press("Stop")
    at.wait_for("Stopped. No shop was opened.")
    assert at.find(QLineEdit, "Address").text() == silent.text()
    at.press("Open it")
    at.wait_for(CONNECTING)
    program.close()  # and here too
    program.window.deleteLater()
    assert program.desk is None


def test_photos_in_a_shared_folder(qtbot: QtBot, server: Server, tmp_path: Path) -> None:
    address = address_of(server, server.new_name())
    with program_on(qtbot, None) as at:
        to_the_page(at)
        at.type_into(QLineEdit, "Address", address.text())
        at.choose("Where the photos lie", "In a shared folder")
        at.press("Make a new shop there")
        at.wait_for("No shared folder is named")
        at.type_into(QLineEdit, "The shared folder of the photos", str(tmp_path / "photos"))
        at.press("Make a new shop there")
        at.wait_for("There is no folder")
        assert not folder_for(address).exists()
        (tmp_path / "photos").mkdir()
        at.press("Make a new shop there")
        qtbot.waitUntil(in_the_shop(at), timeout=20_000)
        at.go("House Rules")
        at.wait_for(f"Photos: in {tmp_path / 'photos'}")
    write_place(folder_for(address), ServerPlace(address))  # as another computer has it
    with program_on(qtbot, None) as at:
        at.wait_for("this computer does not know where")
        at.choose("Where the photos lie", "In a shared folder")
        at.type_into(QLineEdit, "The shared folder of the photos", str(tmp_path / "photos"))
        at.press("Open it")
        qtbot.waitUntil(in_the_shop(at), timeout=10_000)
    server.drop(address.database)


def test_who_may_only_look_finds_the_controls_off(
    qtbot: QtBot, server: Server, tmp_path: Path
) -> None:
    with new_on_server(server, tmp_path / "owner") as address:
        readers, _ = roles_of(address.database)
        record = open_place(tmp_path / "owner", lambda: NOON)
        actions.add_person(record, "Tuuli")
        record.close()
        server.sql(f'CREATE ROLE looks LOGIN IN ROLE "{readers}"')
        write_place(tmp_path / "shop", ServerPlace(address_of(server, address.database, "looks")))
        with sitting(qtbot, tmp_path / "shop", NOON, backup_after_ms=1) as at:
            at.wait_for("looks may look at the shop on the server, and not write.")
            assert not at.button("A car is here").isEnabled()
            at.go("House Rules")
            at.wait_for("You are: looks")
            own = tmp_path / "shop" / "backups"  # who may look may take a copy home
            qtbot.waitUntil(lambda: len(generations_in(own)) == 1, timeout=20_000)
            at.quiet()
        server.sql("DROP ROLE looks")


def test_who_works_is_let_work_and_backed_up(qtbot: QtBot, server: Server, tmp_path: Path) -> None:
    with new_on_server(server, tmp_path / "owner") as address:
        _, workers = roles_of(address.database)
        server.sql(f'CREATE ROLE works LOGIN IN ROLE "{workers}"')
        folder = tmp_path / "shop"
        write_place(folder, ServerPlace(address_of(server, address.database, "works")))
        record = open_place(folder, lambda: NOON)
        actions.add_person(record, "Tuuli")
        record.close()
        with sitting(qtbot, folder, NOON, backup_after_ms=1) as at:
            qtbot.waitUntil(lambda: len(generations_in(folder / "backups")) == 1, timeout=20_000)
            at.quiet()
            assert at.button("A car is here").isEnabled()
            assert at.window.strip.words() == ""
        server.sql("DROP OWNED BY works", address.database)
        server.sql("DROP ROLE works")


def test_another_password_while_the_shop_is_open(
    qtbot: QtBot,
    guarded: Server,
    ring: Ring,
    tmp_path: Path,
) -> None:
    address = address_of(guarded, guarded.new_name())
    folder = tmp_path / "shop"
    create_on_server(folder, ServerPlace(address), lambda: NOON, SECRET).close()
    keep_password(address, SECRET)
    with sitting(qtbot, folder, NOON, backup_after_ms=1) as at:
        qtbot.waitUntil(lambda: at.program._others is not None)  # it listens to the server
        at.go("House Rules")
        at.type_into(QLineEdit, "Shop name", "Corner Garage", enter=True)
        guarded.sql(f"ALTER ROLE {OWNER} PASSWORD 'another-1'", user=KEEPER)
        try:
            cut_off(guarded)
            at.wait_for("The shop's server is there, and lets nobody in from here.")
            at.type_into(QLineEdit, "Shop name", "Corner Garage and Tyres", enter=True)
            at.type_into(QLineEdit, "The password that holds now", "wrong", enter=True)
            at.wait_for("lets nobody in")
            at.type_into(QLineEdit, "The password that holds now", "another-1", enter=True)
            at.wait_for("The server is back; what was typed meanwhile is saved.")
            qtbot.waitUntil(lambda: not shown(at, "Try the password"))
        finally:
            guarded.sql(f"ALTER ROLE {OWNER} PASSWORD '{SECRET}'", user=KEEPER)
    assert list(ring.kept.values()) == ["another-1"]
    guarded.sql(f"DROP DATABASE {address.database} WITH (FORCE)", user=KEEPER)


def shown(at: Counter, name: str) -> bool:
    buttons = at.window.findChildren(QAbstractButton)
    return any(one.isVisible() and one.accessibleName() == name for one in buttons)


def cut_off(server: Server) -> None:
    """End everybody's connection, as a server does that is started anew."""
    server.sql(
        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity "
        "WHERE application_name LIKE 'benchwitness%'",
        user=KEEPER,
    )


def test_a_shop_in_a_folder_says_where_it_is(qtbot: QtBot, tmp_path: Path) -> None:
    new_place(tmp_path / "shop", lambda: NOON).close()
    with sitting(qtbot, tmp_path / "shop", NOON) as at:
        at.go("House Rules")
        at.wait_for(f"Record: {tmp_path / 'shop' / 'shop.sqlite'}")
        assert at.reads(f"Photos: {tmp_path / 'shop' / 'photos'}")
