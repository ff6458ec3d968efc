"""The places are made before anybody goes there, and work as ones that were made when wanted."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.place_names import FIRST_RULES, HEARD, JOB, ON_RAIL, RULES
from tests.conftest import NOON
from tests.shop_stories.counter import Counter, sitting

LATER_MS = 3_600_000  # the day's backup, which these stories don't wait for


def made(at: Counter) -> dict[str, QWidget]:
    return {name.split(" (")[0]: page for name, page in at.window.pages().items()}


def all_made(at: Counter) -> bool:
    return {JOB, *ON_RAIL} <= made(at).keys()


def test_every_place_is_there_before_anybody_goes_to_it(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON, backup_after_ms=LATER_MS) as at:
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)
        assert at.window.here() == ON_RAIL[0]  # nobody was led anywhere
        before = made(at)
        for place in ON_RAIL[1:]:
            at.go(place)
        assert made(at) == before
        at.picture(tmp_path, "made-ahead")


def test_one_that_is_wanted_while_it_is_made(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON, backup_after_ms=LATER_MS) as at:
        qtbot.waitUntil(lambda: HEARD in made(at), timeout=20_000)
        assert RULES not in made(at)
        at.go(RULES)
        at.go(HEARD)
        qtbot.waitUntil(lambda: all_made(at), timeout=20_000)
        assert at.window.here() == HEARD


def test_a_window_that_is_closed_meanwhile(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON, backup_after_ms=LATER_MS) as at:
        qtbot.waitUntil(lambda: HEARD in made(at), timeout=20_000)
        assert at.window.close()
        there = made(at)
        qtbot.wait(600)
        assert made(at) == there


def test_a_window_that_nobody_works_at_makes_none(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON) as at:
        qtbot.wait(1500)
        at.quiet()
        assert made(at).keys() == {FIRST_RULES, ON_RAIL[0]}  # a new shop began with the first
