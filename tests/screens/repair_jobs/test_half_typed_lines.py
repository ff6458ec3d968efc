"""What is half typed into a line of a job's page outlives the program being killed."""

from __future__ import annotations

import shutil
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.stored_pairs import read_pair
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window.drafts import Drafts
from tests.shop_stories.counter import Counter, sitting

EVENT = "Odometer replaced, or car sold: not said"
MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


def open_job(at: Counter, number: str) -> None:
    """Open a job by its number, as at the counter."""
    at.go("Ask the Old Jobs")
    at.type_into(QLineEdit, "Ask the old jobs", number, enter=True)
    at.bot.waitUntil(lambda: at.window.here() == "Job" and at.reads(f"{number}   TH"))


def as_killed(at: Counter, folder: Path, left: Path, words: str) -> Path:
    """Wait until typing rests, and return what a program that was killed then leaves behind."""
    kept = folder / "drafts.json"
    at.bot.waitUntil(lambda: kept.exists() and words in kept.read_text("utf-8"), timeout=5000)
    shutil.copytree(folder, left, ignore=shutil.ignore_patterns("*.lock"))
    return left


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("What was seen or tried", "the cap is crus"),
        ("Trouble codes, found", "P03"),
        ("Trouble codes, after repair", "P01"),
        ("The proof failed: what did it show?", "misses ag"),
        ("Part kind", "distributor ro"),
        ("Position of the part", "front le"),
    ],
)
def test_a_line_half_typed_comes_back_with_its_job(
    qtbot: QtBot, tmp_path: Path, name: str, words: str
) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        at.type_into(QLineEdit, name, words)
        left = as_killed(at, folder, tmp_path / "left", words)
        at.find(QLineEdit, name).clear()
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-102")
        assert at.find(QLineEdit, name).text() == ""
        at.go("Ask the Old Jobs")
        open_job(at, "J-101")
        assert at.find(QLineEdit, name).text() == words


def test_a_finding_that_was_entered_is_no_draft_any_more(qtbot: QtBot, tmp_path: Path) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        at.type_into(QLineEdit, "What was seen or tried", "the cap is crus")
        left = as_killed(at, folder, tmp_path / "left", "the cap is crus")
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-101")
        field = at.find(QLineEdit, "What was seen or tried")
        field.setFocus()
        qtbot.keyClicks(field, "ted")
        qtbot.keyClick(field, Qt.Key.Key_Return)
        desk = at.program.desk
        assert desk is not None
        assert [one.words for one in desk.ask(read_job, 1).checks] == ["the cap is crusted"]
        assert (left / "drafts.json").read_text("utf-8") == "{}"


def test_what_happened_to_a_car_half_told_comes_back_unfolded(qtbot: QtBot, tmp_path: Path) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        at.press(EVENT)
        at.type_into(QLineEdit, "Note", "to a neigh")
        as_killed(at, folder, tmp_path / "before", "to a neigh")
        at.choose("What happened", "sold")  # said last, it is kept with the rest
        left = as_killed(at, folder, tmp_path / "left", '"kind": "1"')
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-101")
        assert at.find(QLineEdit, "Note").text() == "to a neigh"
        assert at.find(QComboBox, "What happened").currentText() == "sold"
        at.press("Note what happened to the car")
        at.wait_for("sold. to a neigh")
        assert (left / "drafts.json").read_text("utf-8") == "{}"


def test_a_limit_without_its_other_half_comes_back_with_its_pair(
    qtbot: QtBot, tmp_path: Path
) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        at.type_into(QLineEdit, "Part kind", "brake disc", enter=True)
        at.press("More dimensions")
        at.type_into(QLineEdit, "where the limits stand, ", "stamped on the h")
        left = as_killed(at, folder, tmp_path / "left", "stamped on the h")
        at.find(QLineEdit, "where the limits stand, ").clear()
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-101")
        at.press("More dimensions")
        assert at.find(QLineEdit, "where the limits stand, ").text() == "stamped on the h"
        at.find(QLineEdit, "where the limits stand, ").clear()


def test_a_limit_that_is_kept_and_was_typed_wrong_since_can_be_emptied(
    qtbot: QtBot, tmp_path: Path
) -> None:
    folder, most = tmp_path / "shop", "at most, "
    with sitting(qtbot, folder, MONDAY) as at:
        two_jobs(at)
        open_job(at, "J-101")
        at.type_into(QLineEdit, "Part kind", "brake disc", enter=True)
        at.press("More dimensions")
        at.type_into(QLineEdit, most, "0.1", enter=True)
        at.type_into(QLineEdit, most, "0.1 or so", enter=True)
        left = as_killed(at, folder, tmp_path / "left", "0.1 or so")
        at.type_into(QLineEdit, most, "0.1", enter=True)
    with sitting(qtbot, left, MONDAY) as at:
        open_job(at, "J-101")
        desk = at.program.desk
        assert desk is not None
        assert [one.at_most for one in desk.ask(read_pair, 1).limits] == [0.1]
        at.press("More dimensions")
        field = at.find(QLineEdit, most)
        assert field.text() == "0.1 or so"
        field.setFocus()
        field.selectAll()
        qtbot.keyClick(field, Qt.Key.Key_Delete)
        qtbot.keyClick(field, Qt.Key.Key_Return)
        assert [one.at_most for one in desk.ask(read_pair, 1).limits] in ([], [None])


def two_jobs(at: Counter) -> None:
    """Take in two cars."""
    desk = at.program.desk
    assert desk is not None
    for plate in ("TH 1", "TH 2"):
        desk.do(actions.write_up, WriteUp("misses", plate=plate, odometer=1000))


def test_a_folder_that_takes_no_file_costs_no_typing_until_the_program_ends(tmp_path: Path) -> None:
    drafts = Drafts(tmp_path / "not there")
    drafts.keep("findings of J-101", {"typed": "rotor tip burned"})
    assert drafts.read("findings of J-101") == {"typed": "rotor tip burned"}
    (tmp_path / "not there").mkdir()
    drafts.keep("codes of J-101", {"typed": "P0301"})
    again = Drafts(tmp_path / "not there")
    assert again.read("findings of J-101") == {"typed": "rotor tip burned"}
    again.keep("findings of J-101", {"typed": ""})
    assert again.read("findings of J-101") == {}
