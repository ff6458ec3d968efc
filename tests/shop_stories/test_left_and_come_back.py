"""The window comes back where it was left, killed or closed; jobs opened last are at hand."""

from __future__ import annotations

import shutil
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.screen.job_page import JobPage
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window.left_here import LeftHere
from desktop_app.shop_window.place_names import ASK, JOB, MONDAY, ON_RAIL
from desktop_app.shop_window.window_memory import window_memory
from desktop_app.symptom_search.screen.link_button import LinkButton
from tests.shop_stories.counter import Counter, sitting

NOW = datetime(2026, 11, 16, 8, 0, tzinfo=UTC)


def write_jobs(at: Counter, number: int) -> None:
    for one in range(1, number + 1):
        said = WriteUp("misses", plate=f"TH {one}", odometer=1000)
        assert at.program.desk is not None
        assert at.program.desk.do(actions.write_up, said) is not None


def open_job(at: Counter, number: str) -> None:
    at.go(ASK)
    at.type_into(QLineEdit, "Ask the old jobs", number, enter=True)
    at.bot.waitUntil(lambda: at.window.here() == JOB)
    at.quiet()


def offered(at: Counter) -> list[str]:
    """What stands beside “Opened last” on the page that is shown."""
    links = [one for one in at.page.findChildren(LinkButton) if one.isVisible()]
    return [one.text() for one in links if one.text().startswith("J-")]


def test_a_job_is_shown_again_after_closing(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        write_jobs(at, 2)
        open_job(at, "J-101")
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        assert at.window.here() == JOB
        assert at.reads("J-101")
        assert at.button("J-101").isChecked()  # on the rail, as before


@pytest.mark.parametrize("name", [MONDAY, *ON_RAIL[-2:]])
def test_a_place_is_shown_again_after_a_kill(qtbot: QtBot, tmp_path: Path, name: str) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        write_jobs(at, 1)
        at.go(name)
        shutil.copytree(tmp_path / "shop", tmp_path / "killed")
        (left,) = window_memory().allKeys()  # before anything is closed
        window_memory().setValue(left.replace("/shop", "/killed"), window_memory().value(left))
        at.go(ASK)
    with sitting(qtbot, tmp_path / "killed", NOW) as at:
        assert at.window.here() == name


def test_every_place_of_the_rail_is_one_to_come_back_to(tmp_path: Path) -> None:
    for name in (*ON_RAIL, JOB):
        LeftHere(tmp_path).came_to(name)
        assert LeftHere(tmp_path).place() == name


def test_jobs_opened_last_are_offered_while_nothing_is_asked(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        write_jobs(at, 10)
        assert not at.reads("Opened last")
        for number in (*range(101, 111), 103):
            open_job(at, f"J-{number}")
        at.go(ASK)
        assert not offered(at)  # there stands still what was asked
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        assert at.window.here() == ASK
        last = [103, *range(110, 103, -1)]
        assert offered(at) == [f"J-{one} TH {one - 100}" for one in last]
        at.press("J-108 TH 8")
        at.bot.waitUntil(lambda: at.window.here() == JOB)
        assert at.reads("J-108")
        at.go(ASK)
        assert offered(at)[:2] == ["J-108 TH 8", "J-103 TH 3"]


def test_a_job_that_is_gone_is_left_out_and_not_gone_to(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        write_jobs(at, 2)
        open_job(at, "J-101")
        open_job(at, "J-102")
        assert at.program.desk is not None
        at.program.desk.undo()
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        assert at.window.here() == ASK
        assert offered(at) == ["J-101 TH 1"]


def test_a_page_that_fails_is_not_opened_at_each_start(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        write_jobs(at, 1)
        open_job(at, "J-101")

    def fail(*_: object) -> None:
        raise RuntimeError("planted")

    monkeypatch.setattr(JobPage, "open_job", fail)
    with qtbot.captureExceptions() as raised, sitting(qtbot, tmp_path / "shop", NOW) as at:
        assert at.window.here() == ASK
    assert [str(one[1]) for one in raised] == ["planted"]
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        assert at.window.here() == ASK


def test_another_shop_was_left_elsewhere(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        write_jobs(at, 1)
        at.go(MONDAY)
    with sitting(qtbot, tmp_path / "other", NOW) as at:
        write_jobs(at, 1)
        assert at.window.here() == ASK
    with sitting(qtbot, tmp_path / "shop", NOW) as at:
        assert at.window.here() == MONDAY
