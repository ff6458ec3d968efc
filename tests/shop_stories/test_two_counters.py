"""Two counters on one shop: what one writes appears at the other, whatever is being typed there."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import open_place
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.record import ShopRecord, create_shop
from desktop_app.shop_record.server.server_address import read_address
from desktop_app.shop_record.server.server_folder import ServerPlace
from desktop_app.shop_record.server.server_shop import create_on_server
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.unsent import UNSENT
from tests.servers import running
from tests.shop_stories.counter import Counter, sitting

NOW = datetime(2026, 11, 16, 9, tzinfo=UTC)


@pytest.fixture(params=["in a folder", "on a server"])
def folder(request: pytest.FixtureRequest, tmp_path: Path) -> Path:
    """The folder of a new shop, of either sort."""
    if request.param == "on a server":
        found: Path = request.getfixturevalue("server_folder")
        return found
    create_shop(tmp_path / "shop", lambda: NOW).close()
    return tmp_path / "shop"


def other_counter(folder: Path) -> ShopRecord:
    """Open the shop as another counter has it, with one job in it."""
    other = open_place(folder, lambda: NOW)
    other.know_tables()
    actions.write_up(other, WriteUp("It misses in the wet.", plate="TH 1", odometer=1000))
    return other


def open_the_job(at: Counter) -> None:
    """Go to the one job, and wait until the window listens to the others."""
    at.bot.waitUntil(lambda: at.program._others is not None, timeout=5000)
    at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == "Job")


def kept(record: ShopRecord) -> JobView:
    """Return the job as the record has it."""
    with record.reading() as connection:
        found = read_job(connection, 1)
    assert found is not None
    return found


def test_what_another_counter_writes_appears_and_nothing_typed_is_lost(
    qtbot: QtBot, folder: Path, tmp_path: Path
) -> None:
    other = other_counter(folder)
    with sitting(qtbot, folder, NOW, backup_after_ms=1) as at:
        open_the_job(at)
        cause = at.find(QPlainTextEdit, "Cause")
        cause.setFocus()
        qtbot.keyClicks(cause, "The cap is ")
        actions.write_correction(other, 1, "Cap and rotor renewed.")
        at.wait_for("Cap and rotor renewed.")
        assert cause.toPlainText() == "The cap is "
        at.picture(tmp_path, "two-counters")
    assert kept(other).cause == "The cap is "
    assert kept(other).correction == "Cap and rotor renewed."
    other.close()


def test_the_server_goes_and_comes_back(qtbot: QtBot, tmp_path: Path) -> None:
    with running() as server:
        name = server.new_database()
        address = read_address(server.address(name))[0]
        folder = tmp_path / "own-server"
        create_on_server(folder, ServerPlace(address), lambda: NOW).close()
        other_counter(folder).close()
        with sitting(qtbot, folder, NOW, backup_after_ms=None) as at:
            at.program._hear_others()
            open_the_job(at)
            server.stop("immediate")
            at.wait_for("The shop's server can't be reached since 09:00.")
            cause = at.find(QPlainTextEdit, "Cause")
            cause.setFocus()
            qtbot.keyClicks(cause, "Carbon track inside the cap.")
            at.leave()
            assert cause.toPlainText() == "Carbon track inside the cap."
            assert "Carbon track" in (folder / "drafts.json").read_text("utf-8")
            at.picture(tmp_path, "server-away")
            server.start()
            at.wait_for("The server is back; what was typed meanwhile is saved.")
        record = open_place(folder, lambda: NOW)
        assert kept(record).cause == "Carbon track inside the cap."
        record.close()


def test_all_that_waits_is_sent_whatever_page_it_was_typed_on(qtbot: QtBot, tmp_path: Path) -> None:
    with running() as server:
        address = read_address(server.address(server.new_database()))[0]
        folder = tmp_path / "own-server"
        create_on_server(folder, ServerPlace(address), lambda: NOW).close()
        other_counter(folder).close()
        with sitting(qtbot, folder, NOW, backup_after_ms=None) as at:
            at.program._hear_others()
            at.go("House Rules")
            at.go("Ask the Old Jobs")
            open_the_job(at)
            server.stop("immediate")
            at.wait_for("The shop's server can't be reached since 09:00.")
            at.type_into(QPlainTextEdit, "Cause", "Carbon track inside the cap.")
            at.press("House Rules")
            at.type_into(QLineEdit, "Shop name", "Corner Garage")
            at.press("J-101")
            assert not at.reads("was undone or taken out")
            assert at.find(QPlainTextEdit, "Cause").isEnabled()
            kept_here = (folder / "drafts.json").read_text("utf-8")
            assert "Carbon track" in kept_here
            assert "Corner Garage" in kept_here
            server.start()
            at.wait_for("The server is back; what was typed meanwhile is saved.")
        record = open_place(folder, lambda: NOW)
        assert kept(record).cause == "Carbon track inside the cap."
        with record.reading() as connection:
            assert read_rules(connection).shop_name == "Corner Garage"
        record.close()
        assert Drafts(folder).read(UNSENT) == {}


LONG = "Carbon track inside the cap. " * 60


def test_what_was_not_sent_before_the_program_ended_is_shown_whole(
    qtbot: QtBot, server_folder: Path
) -> None:
    Drafts(server_folder).keep(UNSENT, {"J-101: Cause": LONG})
    for _ in range(2):  # it stays until somebody says that it is where it belongs
        with sitting(qtbot, server_folder, NOW, backup_after_ms=1) as at:
            at.wait_for("Something was typed while the server was away, and not sent")
            at.press("Not Sent")
            assert at.find(QPlainTextEdit, "J-101: Cause").toPlainText() == LONG
    with sitting(qtbot, server_folder, NOW, backup_after_ms=1) as at:
        at.press("Not Sent")
        at.press("All of it is where it belongs")
    with sitting(qtbot, server_folder, NOW, backup_after_ms=1) as at:
        qtbot.waitUntil(lambda: at.program._others is not None, timeout=5000)
        assert not at.reads("not sent before the program ended")


def test_what_came_before_the_window_listened_is_shown_too(qtbot: QtBot, folder: Path) -> None:
    other = other_counter(folder)
    with sitting(qtbot, folder, NOW, backup_after_ms=None) as at:
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        actions.write_correction(other, 1, "Cap and rotor renewed.")
        at.program._hear_others()
        at.wait_for("Cap and rotor renewed.")
    other.close()


def test_what_is_told_while_others_are_read_is_shown_too(qtbot: QtBot, folder: Path) -> None:
    other = other_counter(folder)
    with sitting(qtbot, folder, NOW, backup_after_ms=1) as at:
        open_the_job(at)
        for number in range(20):
            actions.write_correction(other, 1, f"Renewed, {number}.")
        at.wait_for("Renewed, 19.")
    other.close()


@pytest.mark.parametrize("answer", ["Keep what I typed", "Keep what was written"])
def test_two_windows_type_into_one_field_and_the_second_chooses(
    qtbot: QtBot, folder: Path, answer: str
) -> None:
    other_counter(folder).close()
    with (
        sitting(qtbot, folder, NOW, backup_after_ms=1) as first,
        sitting(qtbot, folder, NOW, backup_after_ms=1) as second,
    ):
        for at in (first, second):
            open_the_job(at)
        for at, words in ((first, "The cap is cracked."), (second, "The rotor is burned.")):
            cause = at.find(QPlainTextEdit, "Cause")
            cause.setFocus()
            qtbot.keyClicks(cause, words)
        first.leave()
        second.leave()
        asked, held = (
            (second, first) if second.reads("Written at another desk") else (first, second)
        )
        asked.wait_for("Written at another desk meanwhile")
        mine = asked.find(QPlainTextEdit, "Cause").toPlainText()
        theirs = held.find(QPlainTextEdit, "Cause").toPlainText()
        assert {mine, theirs} == {"The cap is cracked.", "The rotor is burned."}
        assert asked.reads(f"Typed here, not kept: “{mine}”")
        assert asked.reads(theirs)
        asked.press(answer)
        wanted = mine if answer == "Keep what I typed" else theirs
        qtbot.waitUntil(
            lambda: all(
                at.find(QPlainTextEdit, "Cause").toPlainText() == wanted for at in (first, second)
            ),
            timeout=8000,
        )
    record = open_place(folder, lambda: NOW)
    assert kept(record).cause == wanted
    record.close()
