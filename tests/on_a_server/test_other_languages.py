"""A server that speaks another language is understood as well as one that speaks English."""

from __future__ import annotations

import subprocess
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.server.server_shop import create_on_server
from desktop_app.shop_record.server.server_trouble import PasswordWanted
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.on_a_server.shops import address_of, opened
from tests.on_a_server.test_passwords import KEEPER, RULES, SECRET
from tests.servers import OWNER, Server, running

LANGUAGES = ("de_DE", "fr_FR", "ru_RU")
GUEST, UNKNOWN = "guest", "nobody"

pytestmark = pytest.mark.needs_tool("localedef")


@pytest.fixture(scope="module")
def known() -> Iterator[Path]:
    """A folder of languages that the server may read, whoever it is."""
    with tempfile.TemporaryDirectory(prefix=".benchwitness-languages-") as folder:
        yield Path(folder)


@pytest.fixture(scope="module", params=LANGUAGES)
def abroad(request: pytest.FixtureRequest, known: Path) -> Iterator[Server]:
    """A server of another language that wants passwords, with a guest who has no rights."""
    language = request.param
    made = known / f"{language}.UTF-8"
    command = ["localedef", "-i", language, "-f", "UTF-8", str(made)]
    if subprocess.run(command, capture_output=True).returncode:
        pytest.skip(f"this computer does not know {language}")
    for folder in (known, made):
        folder.chmod(0o755)
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("LOCPATH", str(known))
        with running(
            ("fsync=off", "max_connections=100", f"lc_messages={language}.UTF-8")
        ) as server:
            server.sql(f"CREATE ROLE {KEEPER} SUPERUSER LOGIN")
            server.sql(f"CREATE ROLE {GUEST} LOGIN PASSWORD '{SECRET}'")
            server.sql(f"ALTER ROLE {OWNER} PASSWORD '{SECRET}'")
            (server.folder / "data" / "pg_hba.conf").write_text(
                f"host all {UNKNOWN} 127.0.0.1/32 trust\n{RULES}"
            )
            server.sql("SELECT pg_reload_conf()", user=KEEPER)
            while server.sql("SELECT count(*) FROM pg_hba_file_rules", user=KEEPER) != [(3,)]:
                pass
            yield server


@pytest.fixture
def address(abroad: Server) -> Iterator[ServerAddress]:
    """The address of a database that is not there yet."""
    found = address_of(abroad, abroad.new_name())
    yield found
    abroad.sql(f"DROP DATABASE IF EXISTS {found.database} WITH (FORCE)", user=KEEPER)


def refusal(server: Server, database: str, user: str, folder: Path) -> ShopTrouble:
    """What is said to somebody who wants to open a shop and is not let in."""
    write_place(folder, ServerPlace(address_of(server, database, user)))
    with pytest.raises(ShopTrouble) as trouble:
        opened(folder).__enter__()
    return trouble.value


def test_it_speaks_that_language(abroad: Server) -> None:
    log = (abroad.folder / "server.log").read_text("utf-8")
    assert not log.isascii()


@pytest.mark.parametrize("password", [None, "a wrong one"])
def test_a_password_is_asked_for(
    address: ServerAddress, tmp_path: Path, password: str | None
) -> None:
    with pytest.raises(PasswordWanted) as trouble:
        create_on_server(tmp_path / "shop", ServerPlace(address), lambda: NOON, password)
    assert ("What was tried is not the one." in trouble.value.what) is (password is not None)


def test_a_database_that_is_missing_is_made(address: ServerAddress, tmp_path: Path) -> None:
    create_on_server(tmp_path / "shop", ServerPlace(address), lambda: NOON, SECRET).close()
    with opened(tmp_path / "shop") as record:
        assert record.can_undo() is None


def test_the_other_refusals_are_told_apart(
    abroad: Server, address: ServerAddress, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    create_on_server(tmp_path / "shop", ServerPlace(address), lambda: NOON, SECRET).close()
    monkeypatch.setenv("PGPASSWORD", SECRET)
    away = refusal(abroad, "not_there", OWNER, tmp_path / "away")
    assert away.what == "There is no database not_there on 127.0.0.1."
    guest = refusal(abroad, address.database, GUEST, tmp_path / "guest")
    assert guest.what.startswith(f"{GUEST} has no right to the shop")
    unknown = refusal(abroad, address.database, UNKNOWN, tmp_path / "unknown")
    assert unknown.what.startswith(f"The server knows no {UNKNOWN}")
