"""On the way to a server nobody reads along, and nobody else passes for it."""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from desktop_app.shop_record.server.server_address import ServerAddress, read_address
from desktop_app.shop_record.server.server_shop import connected
from desktop_app.shop_record.server.server_trouble import ServerLost
from desktop_app.shop_record.trouble import ShopTrouble
from tests.servers import OWNER, Server, running

pytestmark = pytest.mark.needs_tool("openssl")
NAME = "counter-server"


@pytest.fixture(scope="module")
def afar() -> Iterator[Server]:
    """A server whose certificate the tests choose."""
    with running() as started:
        yield started


@pytest.fixture(autouse=True)
def another_computer(monkeypatch: pytest.MonkeyPatch) -> None:
    """Any name leads to this computer, as far as the driver is concerned."""
    monkeypatch.setenv("PGHOSTADDR", "127.0.0.1")


@pytest.fixture
def certificate(tmp_path: Path) -> Callable[..., Path]:
    """Makes certificates that sign themselves; each returns its file, the key lies beside it."""

    def make(name: str, file: str = "server") -> Path:
        made = tmp_path / f"{file}.crt"
        words = ["openssl", "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2"]
        words += ["-subj", f"/CN={name}", "-addext", f"subjectAltName=DNS:{name}"]
        words += ["-keyout", str(made.with_suffix(".key")), "-out", str(made)]
        subprocess.run(words, check=True, capture_output=True)
        return made

    return make


def shows(server: Server, certificate: Path | None) -> None:
    """Let a server show a certificate, or speak without any."""
    data = server.folder / "data"
    for ending in ("crt", "key") if certificate else ():
        file = data / f"server.{ending}"
        shutil.copyfile(certificate.with_suffix(f".{ending}"), file)  # type: ignore[union-attr]
        file.chmod(0o600)
        if os.geteuid() == 0:
            shutil.chown(file, "postgres")
    [[before]] = server.sql("SELECT pg_conf_load_time()")
    server.sql(f"ALTER SYSTEM SET ssl = {'on' if certificate else 'off'}")
    server.sql("SELECT pg_reload_conf()")
    while server.sql("SELECT pg_conf_load_time()") == [(before,)]:
        pass


def address(server: Server, asked: str = "", name: str = NAME) -> ServerAddress:
    """The address of a server under a name that is not this computer's."""
    return read_address(f"postgresql://{OWNER}@{name}:{server.port}/postgres{asked}")[0]


def refused(where: ServerAddress) -> ShopTrouble:
    """How a connection was refused."""
    with pytest.raises(ShopTrouble) as trouble:
        connected(where, "a password").dispose()
    return trouble.value


def is_protected(where: ServerAddress) -> bool:
    """Connect, and tell whether the server speaks TLS on that connection."""
    engine = connected(where, None)
    try:
        with engine.connect() as connection, connection.begin():
            said = "SELECT ssl FROM pg_stat_ssl WHERE pid = pg_backend_pid()"
            return bool(connection.exec_driver_sql(said).scalar())
    finally:
        engine.dispose()


def test_a_server_that_proves_who_it_is_is_spoken_to(
    afar: Server, certificate: Callable[..., Path]
) -> None:
    made = certificate(NAME)
    shows(afar, made)
    assert is_protected(address(afar, f"?sslrootcert={made}"))
    assert is_protected(address(afar, f"?sslrootcert={made}&sslmode=verify-ca"))


@pytest.mark.parametrize("asked", ["", "?sslmode=require", "?sslrootcert={other}"])
def test_a_server_without_tls_is_refused(
    afar: Server, certificate: Callable[..., Path], asked: str
) -> None:
    shows(afar, None)
    trouble = refused(address(afar, asked.format(other=certificate(NAME))))
    assert f"The connection to {NAME} could not be protected" in trouble.what
    assert trouble.kept == "Nothing was sent."
    assert not isinstance(trouble, ServerLost)


@pytest.mark.parametrize(
    ("shown", "asked"),
    [
        (NAME, ""),  # signed by nobody whom this computer knows
        (NAME, "?sslrootcert={other}"),
        (NAME, "?sslrootcert={other}&sslmode=verify-ca"),
        (NAME, "?sslrootcert={made}.is-not-there"),
        ("another-server", "?sslrootcert={made}"),
        ("counter-server.example", "?sslrootcert={made}"),
    ],
)
def test_a_server_that_does_not_prove_who_it_is_is_refused(
    afar: Server, certificate: Callable[..., Path], shown: str, asked: str
) -> None:
    made, other = certificate(shown), certificate(NAME, "other")
    shows(afar, made)
    trouble = refused(address(afar, asked.format(made=made, other=other)))
    assert f"The connection to {NAME} could not be protected" in trouble.what
    assert "sslrootcert=FILE" in trouble.do
    assert not isinstance(trouble, ServerLost)


def test_who_says_require_is_not_read_along(afar: Server, certificate: Callable[..., Path]) -> None:
    shows(afar, certificate("another-server"))
    assert is_protected(address(afar, "?sslmode=require"))


def test_a_server_of_this_computer_needs_none(afar: Server) -> None:
    shows(afar, None)
    assert not is_protected(address(afar, name="localhost"))
