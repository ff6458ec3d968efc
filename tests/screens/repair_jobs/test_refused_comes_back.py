"""What was typed and not accepted outlives the program being killed, and is refused again."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from tests.screens.repair_jobs.test_half_typed_lines import (
    MONDAY,
    as_killed,
    open_job,
    two_jobs,
)
from tests.shop_stories.counter import Counter, sitting

PRICE, WRONG = "Price", "450 plus tax"


def refusals(at: Counter) -> list[str]:
    """Return what the page says of what it doesn't accept."""
    labels = [one for one in at.page.findChildren(QLabel) if one.isVisible()]
    return [one.text() for one in labels if one.text().startswith("✎")]


def price_refused(qtbot: QtBot, folder: Path, left: Path) -> Path:
    """Type a price that is none, and return what a program that was killed then leaves behind."""
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        at.type_into(QLineEdit, PRICE, "400", enter=True)
        at.type_into(QLineEdit, PRICE, WRONG)
        as_killed(at, folder, left, WRONG)
        at.type_into(QLineEdit, PRICE, "400", enter=True)
    return left


@pytest.mark.parametrize(
    ("name", "words"),
    [
        (PRICE, WRONG),
        ("Hours", "a lot"),
        ("Search hours", "a whole day"),
        ("As found: bytes of mode 01 PID 01", "00 07 E5"),
        ("Driven", "round the block"),
        ("Window by distance", "far"),
    ],
)
def test_it_comes_back_to_its_job_with_the_reason(
    qtbot: QtBot, tmp_path: Path, name: str, words: str
) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        at.type_into(QLineEdit, name, words)
        left = as_killed(at, folder, tmp_path / "left", words)
        said = refusals(at)
        assert said
        at.find(QLineEdit, name).clear()
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-102")
        assert at.find(QLineEdit, name).text() != words
        at.go("Ask the Old Jobs")
        open_job(at, "J-101")
        assert at.find(QLineEdit, name).text() == words
        assert refusals(at) == said
        at.find(QLineEdit, name).clear()


def test_a_price_that_is_mended_is_kept_and_no_draft_any_more(qtbot: QtBot, tmp_path: Path) -> None:
    left = price_refused(qtbot, tmp_path / "shop", tmp_path / "left")
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-101")
        at.type_into(QLineEdit, PRICE, "450", enter=True)
        desk = at.program.desk
        assert desk is not None
        assert desk.ask(read_job, 1).price_cents == 45_000
        assert refusals(at) == []
        assert (left / "drafts.json").read_text("utf-8") == "{}"


def test_typing_taken_back_in_its_field_is_no_draft_any_more(qtbot: QtBot, tmp_path: Path) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        at.type_into(QLineEdit, PRICE, WRONG)
        as_killed(at, folder, tmp_path / "left", WRONG)
        field = at.find(QLineEdit, PRICE)
        while field.text():
            qtbot.keyClick(field, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
        kept = folder / "drafts.json"
        qtbot.waitUntil(lambda: kept.read_text("utf-8") == "{}", timeout=5000)


def test_the_car_is_held_by_it_again(qtbot: QtBot, tmp_path: Path) -> None:
    left = price_refused(qtbot, tmp_path / "shop", tmp_path / "left")
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-101")
        at.wait_for("“Price” under “Back On”")
        at.type_into(QLineEdit, PRICE, "450", enter=True)


def test_closing_says_it_and_what_is_left_behind_is_there_again(
    qtbot: QtBot, tmp_path: Path
) -> None:
    left = price_refused(qtbot, tmp_path / "shop", tmp_path / "left")
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-101")
        assert not at.window.close()
        assert "“Price” under “Back On” of J-101 is not accepted." in at.window.strip.words()
        assert at.window.close()
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-101")
        assert at.find(QLineEdit, PRICE).text() == WRONG
        at.type_into(QLineEdit, PRICE, "450", enter=True)


def test_where_another_desk_wrote_meanwhile_nothing_comes_back_over_it(
    qtbot: QtBot, tmp_path: Path
) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        field = at.find(QLineEdit, "Hours")
        field.setFocus()
        qtbot.keyClicks(field, "2")
        desk = at.program.desk
        assert desk is not None
        actions.write_hours(desk.record, 1, 0.5, False)
        qtbot.keyClick(field, Qt.Key.Key_Return)
        at.wait_for("Written at another desk meanwhile")
        drafts = folder / "drafts.json"
        assert not drafts.exists() or '"2"' not in drafts.read_text("utf-8")
        at.press("Keep what was written")
