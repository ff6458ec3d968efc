"""The shop's folder goes while it is open, as a stick is pulled out: said, kept, saved later."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import new_place
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.shop_record.trouble import NotSaved
from tests.conftest import NOON
from tests.faults.busy_shop import opened
from tests.shop_record.backed_up import named
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.one_job import take_in

GONE = "The shop's folder is not where it was when it was opened."
KEPT = "What is typed is kept on this computer, and comes back with the shop."


def pull_out_and_type(at: Counter, folder: Path, elsewhere: Path) -> None:
    """Move the folder away, and type a cause."""
    folder.rename(elsewhere)
    at.type_into(QPlainTextEdit, "Cause", "tip burned back")
    at.wait_for(GONE)


def cause(at: Counter) -> QPlainTextEdit:
    return at.find(QPlainTextEdit, "Cause")


@pytest.mark.embedded  # a server's record lies elsewhere
def test_what_is_typed_meanwhile_is_saved_once_the_folder_is_back(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("desktop_app.shop_window.saved_again.AGAIN_MS", 100)
    folder, elsewhere = tmp_path / "shop", tmp_path / "pulled out"
    with sitting(qtbot, folder, NOON) as at:
        take_in(at, "misses when damp", "90100")
        pull_out_and_type(at, folder, elsewhere)
        elsewhere.rename(folder)
        at.bot.waitUntil(lambda: at.window.strip.words() == "", timeout=5000)
    with opened(folder) as record, record.reading() as connection:
        assert connection.exec_driver_sql("SELECT cause FROM job").scalar_one() == "tip burned back"


@pytest.mark.embedded
def test_what_is_typed_meanwhile_comes_back_with_the_folder(qtbot: QtBot, tmp_path: Path) -> None:
    folder, elsewhere = tmp_path / "shop", tmp_path / "pulled out"
    with sitting(qtbot, folder, NOON) as at:
        take_in(at, "misses when damp", "90100")
        pull_out_and_type(at, folder, elsewhere)
        at.press("A car is here")
        at.type_into(QLineEdit, "Plate, or the shop's own tag", "TH 7")
        assert not at.window.close()
        assert at.window.strip.words().startswith(f"{GONE} {KEPT}")
        assert at.window.close()
    elsewhere.rename(folder)
    with sitting(qtbot, folder, NOON) as at:
        at.press("A car is here")
        assert at.find(QLineEdit, "Plate, or the shop's own tag").text() == "TH 7"
        at.press("Empty the form")
        at.go("Ask the Old Jobs")
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        at.bot.waitUntil(lambda: cause(at).toPlainText() == "tip burned back")


@pytest.mark.embedded
def test_a_folder_that_another_one_lies_in_the_place_of_is_not_written_to(tmp_path: Path) -> None:
    folder = tmp_path / "shop"
    new_place(folder, lambda: NOON).close()
    with opened(folder) as record:
        named(record, "Bram")
        folder.rename(tmp_path / "before")
        new_place(folder, lambda: NOON).close()
        with opened(folder) as another:
            with pytest.raises(NotSaved, match="is not where it was"):
                named(record, "Tuuli")
            named(another, "Odile")
            with another.reading() as connection:
                assert [name for _, name in people_here(connection)] == ["Odile"]
