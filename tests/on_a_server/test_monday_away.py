"""Monday Book while the server is away: what was read stays, and says of when it is."""

# ruff: noqa: F811 - the fixtures of a server that can be halted
from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QListWidget
from pytestqt.qtbot import QtBot

from desktop_app.weekly_report.screen.sheet_view import SheetView
from tests.on_a_server.test_hanging import (  # noqa: F401
    AWAY,
    BACK,
    at_the_job,
    folder,
    halted,
    own_server,
)
from tests.servers import Server
from tests.shop_stories.counter import Counter

BOOK = "Monday Book"
AS_OF = "As of 09:00. The shop's server can't be reached."
LATER = "was not read. The shop's server can't be reached: it is read here as soon as that is back."


def is_seen(at: Counter) -> bool:
    """Whether a sheet of the book is seen."""
    return any(sheet.isVisible() for sheet in at.page.findChildren(SheetView))


def test_what_was_read_stays(qtbot: QtBot, own_server: Server, folder: Path) -> None:
    with at_the_job(qtbot, folder) as at:
        at.go(BOOK)
        qtbot.waitUntil(lambda: is_seen(at), timeout=20_000)
        with halted(own_server):
            at.wait_for(AWAY)
            at.wait_for(AS_OF)
            assert is_seen(at)
            at.press("House Rules")
            at.press(BOOK)
            at.wait_for(AS_OF)
            assert is_seen(at)
            at.press("Week before")
            at.wait_for(f"2026-W45 {LATER}")
            assert not is_seen(at)
        at.wait_for(BACK)
        qtbot.waitUntil(lambda: is_seen(at), timeout=20_000)
        assert not at.reads("As of")
        assert not at.reads(LATER)


def test_what_was_never_read_says_so(qtbot: QtBot, own_server: Server, folder: Path) -> None:
    with at_the_job(qtbot, folder) as at:
        with halted(own_server):
            at.wait_for(AWAY)
            at.press(BOOK)
            at.wait_for(f"2026-W46 {LATER}")
            assert at.find(QListWidget, "Sheets of the book").isVisible()
        at.wait_for(BACK)
        qtbot.waitUntil(lambda: is_seen(at), timeout=20_000)
