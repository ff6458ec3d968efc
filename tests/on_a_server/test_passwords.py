"""The password of a server: asked for, kept in the keyring alone, never in a file or in a log."""

from __future__ import annotations

import logging
from collections.abc import Iterator
from pathlib import Path

import keyring
import keyring.backends.fail
import pytest
from keyring.backend import KeyringBackend
from keyring.errors import PasswordDeleteError

from desktop_app.commands.command_line import run
from desktop_app.commands.server_place import folder_for
from desktop_app.commands.shop_place import own_folder
from desktop_app.repair_jobs import actions
from desktop_app.shop_record.server import server_password
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.server.server_password import (
    forget_password,
    keep_password,
    password_for,
)
from desktop_app.shop_record.server.server_shop import create_on_server
from desktop_app.shop_record.server.server_trouble import PasswordWanted
from tests.conftest import NOON
from tests.on_a_server.shops import address_of, opened
from tests.servers import OWNER, Server, running
from tests.shop_record.backed_up import named

SECRET = "kWq7-dRum-93-xT"
KEEPER = "keeper"  # whom the server lets in without one, to look after it
RULES = f"host all {KEEPER} 127.0.0.1/32 trust\nhost all all 127.0.0.1/32 scram-sha-256\n"


class Ring(KeyringBackend):
    """A keyring that is forgotten with the test."""

    priority = 1.0  # type: ignore[assignment]

    def __init__(self) -> None:
        super().__init__()
        self.kept: dict[tuple[str, str], str] = {}

    def get_password(self, service: str, username: str) -> str | None:
        return self.kept.get((service, username))

    def set_password(self, service: str, username: str, password: str) -> None:
        self.kept[service, username] = password

    def delete_password(self, service: str, username: str) -> None:
        if self.kept.pop((service, username), None) is None:
            raise PasswordDeleteError(username)


@pytest.fixture(scope="module")
def guarded() -> Iterator[Server]:
    """A server that wants passwords."""
    with running() as started:
        started.sql(f"CREATE ROLE {KEEPER} SUPERUSER LOGIN")
        started.sql(f"ALTER ROLE {OWNER} PASSWORD '{SECRET}'")
        (started.folder / "data" / "pg_hba.conf").write_text(RULES)
        started.sql("SELECT pg_reload_conf()", user=KEEPER)
        while started.sql("SELECT count(*) FROM pg_hba_file_rules", user=KEEPER) != [(2,)]:
            pass
        yield started


@pytest.fixture(autouse=True)
def ring(monkeypatch: pytest.MonkeyPatch) -> Iterator[Ring]:
    """A keyring of the test's own, and a program that was just started."""
    ours = Ring()
    keyring.set_keyring(ours)
    start_anew(monkeypatch)
    yield ours
    keyring.set_keyring(keyring.backends.fail.Keyring())


def start_anew(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let the program end and start again: it remembers no password."""
    monkeypatch.setattr(server_password, "_said", {})


@pytest.fixture
def address(guarded: Server) -> Iterator[ServerAddress]:
    """The address of a database that is not there yet."""
    found = address_of(guarded, guarded.new_name())
    yield found
    guarded.sql(f"DROP DATABASE IF EXISTS {found.database} WITH (FORCE)", user=KEEPER)


def with_secret(address: ServerAddress, secret: str = SECRET) -> str:
    """The address as somebody types it who puts the password into it."""
    return address.text().replace("@", f":{secret}@", 1)


def files_with(secret: str, *folders: Path) -> list[str]:
    """The files that hold a password somewhere."""
    found = (file for folder in folders for file in folder.rglob("*") if file.is_file())
    return [str(file) for file in found if secret.encode() in file.read_bytes()]


def order(*words: str) -> int:
    """Carry out a command line."""
    return run(words, lambda _folder: 0, lambda _folder, _picture: None)


@pytest.mark.parametrize("password", [None, "a wrong one"])
def test_a_server_that_wants_a_password_says_so(
    address: ServerAddress, tmp_path: Path, password: str | None
) -> None:
    with pytest.raises(PasswordWanted) as trouble:
        create_on_server(tmp_path / "shop", ServerPlace(address), lambda: NOON, password)
    assert f"wants the password of {OWNER}" in trouble.value.what
    assert "a wrong one" not in trouble.value.sentence()
    assert not (tmp_path / "shop").exists()


def test_what_was_entered_is_known_till_the_end(
    address: ServerAddress, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = tmp_path / "shop"
    create_on_server(folder, ServerPlace(address), lambda: NOON, SECRET).close()
    with opened(folder) as record:
        actions.add_person(record, "Tuuli")
    start_anew(monkeypatch)
    with pytest.raises(PasswordWanted):
        opened(folder).__enter__()
    assert keep_password(address, SECRET)
    with opened(folder) as record:
        actions.add_person(record, "Ben")
    forget_password(address)
    forget_password(address)
    assert password_for(address) is None
    with pytest.raises(PasswordWanted):
        opened(folder).__enter__()


def test_a_new_shop_by_an_address_with_a_password_prints_none(
    address: ServerAddress,
    ring: Ring,
    tmp_path: Path,
    strange_home: Path,
    capfd: pytest.CaptureFixture[str],
    caplog: pytest.LogCaptureFixture,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    caplog.set_level(logging.DEBUG)
    assert order("new-shop", with_secret(address)) == 0
    start_anew(monkeypatch)
    assert order("check", "--shop", address.text()) == 0  # now the keyring has it
    assert order("backup", str(tmp_path / "aside.zip"), "--shop", address.text()) == 0
    with opened(folder_for(address)) as record:
        named(record, "Tuuli")
    printed = capfd.readouterr()
    assert address.text() in printed.out
    assert list(ring.kept.values()) == [SECRET]
    assert SECRET not in printed.out + printed.err + caplog.text
    assert folder_for(address).is_relative_to(own_folder())
    assert (folder_for(address) / "server.toml").is_file()
    assert files_with(SECRET, tmp_path, strange_home) == []
    assert files_with(address.database, strange_home) != []


def test_a_slip_in_an_address_takes_no_good_password_out_of_the_keyring(
    address: ServerAddress, ring: Ring
) -> None:
    assert order("new-shop", with_secret(address)) == 0
    assert keyring.get_password("benchwitness", address.text()) == SECRET
    assert order("check", "--shop", with_secret(address, "slip-of-the-hand")) == 2
    assert keyring.get_password("benchwitness", address.text()) == SECRET
    assert order("check", "--shop", with_secret(address)) == 0


@pytest.mark.parametrize("command", ["new-shop", "move-shop", "check"])
def test_a_wrong_password_is_refused_in_one_line_without_it(
    address: ServerAddress, tmp_path: Path, command: str, capfd: pytest.CaptureFixture[str]
) -> None:
    wrong = "Ab1-wrong-one-7"
    place = with_secret(address, wrong)
    if command == "move-shop":
        assert order("new-shop", str(tmp_path / "shop")) == 0
        capfd.readouterr()
        assert order(command, place, "--shop", str(tmp_path / "shop")) == 2
    else:
        assert (
            order(*((command, place) if command == "new-shop" else (command, "--shop", place))) == 2
        )
    printed = capfd.readouterr()
    assert "wants the password" in printed.err
    assert printed.err.count("\n") == 1
    assert wrong not in printed.out + printed.err
    assert files_with(wrong, tmp_path) == []


def test_a_shop_is_moved_to_an_address_with_a_password(
    address: ServerAddress,
    tmp_path: Path,
    strange_home: Path,
    capfd: pytest.CaptureFixture[str],
) -> None:
    assert order("new-shop", str(tmp_path / "shop")) == 0
    assert order("move-shop", with_secret(address), "--shop", str(tmp_path / "shop")) == 0
    printed = capfd.readouterr()
    assert address.text() in printed.out
    assert SECRET not in printed.out + printed.err
    assert files_with(SECRET, tmp_path, strange_home) == []


def test_at_a_terminal_it_is_asked_for_once(
    address: ServerAddress, ring: Ring, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[str] = []
    typed = iter(["a wrong one", SECRET])

    def answer(words: str) -> str:
        asked.append(words)
        return next(typed)

    monkeypatch.setattr("getpass.getpass", answer)
    monkeypatch.setattr("sys.stdin.isatty", lambda: True, raising=False)
    assert order("new-shop", address.text()) == 2
    assert ring.kept == {}  # what the server did not take is not kept
    assert order("new-shop", address.text()) == 0
    assert len(asked) == 2
    assert all(OWNER in words for words in asked)
    assert list(ring.kept.values()) == [SECRET]


def test_without_a_keyring_it_is_known_till_the_end_alone(
    address: ServerAddress, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keyring.set_keyring(keyring.backends.fail.Keyring())
    assert order("new-shop", with_secret(address)) == 0
    assert not keep_password(address, SECRET)
    write_place(tmp_path / "shop", ServerPlace(address))
    opened(tmp_path / "shop").__enter__().close()
    start_anew(monkeypatch)
    with pytest.raises(PasswordWanted):
        opened(tmp_path / "shop").__enter__()
