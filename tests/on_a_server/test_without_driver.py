"""A computer that lacks the driver of a server's database: shell and window say so."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import new_place
from tests.commands.test_command_line import Shell, shell  # noqa: F401 - the command line
from tests.conftest import NOON
from tests.on_a_server.test_window import program_on, to_the_page

SAID = "needs the driver of its database, which is not installed here"
NOWHERE = "nobody@127.0.0.1:1/shop"


@pytest.fixture(autouse=True)
def no_driver(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let nothing be loaded that stands on the driver, nor the driver itself."""
    stand_on_it = ("server_patience", "server_text", "server_trips")
    ours = (f"desktop_app.shop_record.server.{name}" for name in stand_on_it)
    for name in ("psycopg", *ours):
        monkeypatch.setitem(sys.modules, name, None)


@pytest.mark.embedded  # there is no server to be on
@pytest.mark.parametrize("command", ["new-shop", "move-shop", "check"])
def test_a_command_says_so(shell: Shell, tmp_path: Path, command: str) -> None:  # noqa: F811
    address = f"postgresql+psycopg://{NOWHERE}"
    new_place(tmp_path / "shop", lambda: NOON).close()
    words = {
        "new-shop": ("new-shop", address),
        "move-shop": ("move-shop", address, "--shop", str(tmp_path / "shop")),
        "check": ("check", "--shop", address),
    }
    assert SAID in shell.refused(*words[command])


@pytest.mark.parametrize("button", ["Make a new shop there", "Open it"])
def test_the_window_says_so(qtbot: QtBot, button: str) -> None:
    with program_on(qtbot, None) as at:
        to_the_page(at)
        at.type_into(QLineEdit, "Address", NOWHERE)
        at.press(button)
        at.wait_for(SAID)
