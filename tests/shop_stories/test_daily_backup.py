"""The window backs the shop up by itself once a day, and says where a backup is late."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from desktop_app.commands.demo import MARKER
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import create_shop, open_shop
from tests.shop_record.backed_up import named
from tests.shop_stories.counter import sitting

MORNING = datetime(2026, 11, 16, 8, tzinfo=UTC)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    record = create_shop(tmp_path / "shop", lambda: MORNING - timedelta(days=30))
    named(record, "Tuuli")
    record.close()
    return tmp_path / "shop"


def made(folder: Path) -> list[str]:
    return [where.name for _, where in generations_in(folder / "backups")]


def has(folder: Path, number: int) -> Callable[[], bool]:
    return lambda: len(made(folder)) == number


def test_once_a_day_beside_the_work(qtbot: QtBot, folder: Path) -> None:
    for hours, number in ((0, 1), (4, 1), (24, 2)):
        with sitting(qtbot, folder, MORNING + timedelta(hours=hours), backup_after_ms=1) as at:
            qtbot.waitUntil(has(folder, number), timeout=15_000)
            at.quiet()
            assert not at.reads("no backup")
    assert made(folder) == ["2026-11-16-080000", "2026-11-17-080000"]


def test_a_second_disk_that_stays_away_is_said(qtbot: QtBot, folder: Path, tmp_path: Path) -> None:
    record = open_shop(folder, lambda: MORNING)
    change_rule(record, "second_backup_folder", str(tmp_path / "stick"))
    record.close()
    with sitting(qtbot, folder, MORNING, backup_after_ms=1) as at:
        qtbot.waitUntil(has(folder, 1), timeout=15_000)
        at.wait_for(f"There is no backup in {tmp_path / 'stick'}. Plug the second disk in")
        at.go("Heard")
        assert at.reads("There is no backup in")
        at.press("Put the notice away")
        assert not at.reads("There is no backup in")


@pytest.mark.parametrize("why", ["a demo", "nobody asks"])
def test_an_invented_shop_is_left_alone(qtbot: QtBot, folder: Path, why: str) -> None:
    if why == "a demo":
        (folder / MARKER).write_text("")
    with sitting(qtbot, folder, MORNING, backup_after_ms=1 if why == "a demo" else None) as at:
        at.go("Heard")
        at.go("House Rules")
        assert made(folder) == []


def test_where_it_cannot_be_written_it_is_said(qtbot: QtBot, folder: Path) -> None:
    (folder / "backups").write_text("in the way")
    with sitting(qtbot, folder, MORNING, backup_after_ms=1) as at:
        at.wait_for("was not written")
        assert at.reads("Nothing half done was left")
