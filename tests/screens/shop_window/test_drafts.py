"""Drafts: what is typed stands in the folder's file, and what nobody typed is written by nobody."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from platformdirs import user_data_path
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.drafts import Drafts, are_unwritten
from tests.conftest import NOON
from tests.shop_stories.counter import Counter, sitting


def spare_drafts() -> Path:
    """Where drafts lie that no shop's folder takes."""
    return user_data_path("benchwitness", appauthor=False) / "drafts"


@pytest.fixture
def no_spare_drafts() -> Iterator[None]:
    """Let no folder be made there."""
    spare = spare_drafts()
    shutil.rmtree(spare, ignore_errors=True)
    spare.parent.mkdir(parents=True, exist_ok=True)
    spare.touch()
    yield
    spare.unlink()


FORM, PLATE = "a car is here", "Plate, or the shop's own tag"


def test_a_form_that_nobody_touched_here_leaves_what_another_window_kept(tmp_path: Path) -> None:
    here, there = Drafts(tmp_path), Drafts(tmp_path)
    here.keep(FORM, {"words": "brown van"})
    there.read(FORM)
    here.keep(FORM, {"words": "brown van, smokes"})
    there.keep(FORM, {"words": "brown van"})
    assert Drafts(tmp_path).read(FORM) == {"words": "brown van, smokes"}


def test_a_form_that_was_taken_in_elsewhere_is_not_brought_back(tmp_path: Path) -> None:
    here, there = Drafts(tmp_path), Drafts(tmp_path)
    here.keep(FORM, {"words": "brown van"})
    there.read(FORM)
    here.keep(FORM, {})
    there.keep(FORM, {"words": "brown van", "unit": ""})
    assert Drafts(tmp_path).read(FORM) == {}
    there.keep(FORM, {"words": "brown van again"})
    assert Drafts(tmp_path).read(FORM) == {"words": "brown van again"}


def test_while_the_folder_takes_no_file_drafts_lie_on_this_computer_and_come_back_with_it(
    tmp_path: Path,
) -> None:
    folder, gone = tmp_path / "shop", tmp_path / "gone"
    folder.mkdir()
    Drafts(folder).keep("a note", {"words": "older"})
    folder.rename(gone)
    drafts = Drafts(folder)
    drafts.keep(FORM, {"words": "brown van"})
    assert not are_unwritten(folder)
    assert Drafts(tmp_path / "another").read(FORM) == {}
    gone.rename(folder)
    back = Drafts(folder)
    assert back.read(FORM) == {"words": "brown van"}
    assert back.read("a note") == {"words": "older"}
    back.keep(FORM, {"words": "brown van, smokes"})
    assert sorted(Drafts(folder).forms()) == sorted([FORM, "a note"])
    assert not any(spare_drafts().iterdir())


def test_what_no_file_took_is_written_as_soon_as_one_does(
    tmp_path: Path, no_spare_drafts: None
) -> None:
    drafts, folder = Drafts(tmp_path / "away"), tmp_path / "away"
    drafts.keep(FORM, {"words": "brown van"})
    assert are_unwritten(folder)
    assert not are_unwritten(tmp_path)
    folder.mkdir()
    drafts.keep(FORM, {"words": "brown van"})
    assert not are_unwritten(folder)
    assert Drafts(folder).read(FORM) == {"words": "brown van"}


def test_a_form_emptied_where_no_file_is_taken_holds_nothing_up(
    tmp_path: Path, no_spare_drafts: None
) -> None:
    drafts = Drafts(tmp_path / "away")
    drafts.keep(FORM, {"words": "brown van"})
    drafts.keep(FORM, {"words": ""})
    assert not are_unwritten(tmp_path / "away")


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with sitting(qtbot, tmp_path / "shop", NOON) as counter:
        yield counter


@pytest.mark.embedded
def test_closing_says_that_no_folder_takes_drafts_and_once_more_closes(
    at: Counter, tmp_path: Path, no_spare_drafts: None
) -> None:
    (tmp_path / "shop" / "drafts.json").mkdir()  # as a full disk: no file comes there
    at.press("A car is here")
    at.type_into(QLineEdit, PLATE, "TH 1042")
    at.type_into(QPlainTextEdit, "What the customer says", "misses when damp")
    assert not at.window.close()
    at.wait_for("What is typed can't be kept: no folder for it takes a file.")
    assert at.window.isVisible()
    assert at.window.close()
