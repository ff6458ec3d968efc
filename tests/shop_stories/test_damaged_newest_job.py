"""A newest job that can't be read keeps nothing else from being there after the start."""

from __future__ import annotations

import sqlite3
from datetime import UTC, datetime
from pathlib import Path

from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import new_place
from desktop_app.part_photos.screen.phone_status import PhoneStatus
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record_name import FILE_NAME
from tests.shop_stories.counter import sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


def test_the_window_is_ready_all_the_same(qtbot: QtBot, tmp_path: Path) -> None:
    folder = tmp_path / "shop"
    record = new_place(folder, lambda: MONDAY)
    actions.write_up(record, WriteUp("misses", plate="TH 1", odometer=1000))
    record.close()
    with sqlite3.connect(folder / FILE_NAME) as connection:
        connection.execute("UPDATE visit SET came_at = 'rubbish'")
    with sitting(qtbot, folder, MONDAY) as at:
        qtbot.waitUntil(lambda: bool(at.window.findChildren(PhoneStatus)), timeout=10_000)
