"""A draft goes with what it was about, but never while that can be brought back."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
SOON = 1  # ms, after which it is looked what an earlier sitting left
PLACE, LIMIT = "Position of the part", "where the limits stand, "


def kept(folder: Path) -> str:
    """Return the file of drafts."""
    file = folder / "drafts.json"
    return file.read_text("utf-8") if file.exists() else "{}"


def forms(folder: Path) -> set[str]:
    """Return the forms that have a draft."""
    return set(json.loads(kept(folder)))


def half_type(at: Counter, folder: Path, name: str, words: str) -> None:
    """Type words that are not entered, and wait until they are a draft."""
    at.type_into(QLineEdit, name, words)
    at.bot.waitUntil(lambda: words in kept(folder), timeout=5000)


def open_job(at: Counter) -> None:
    """Find the one job and open it."""
    at.go("Ask the Old Jobs")
    at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == "Job")


def a_pair_with_a_limit_half_typed(at: Counter, folder: Path) -> None:
    """Take a car in, lay a pair out, half type a limit of it, and where the next part sits."""
    desk = at.program.desk
    assert desk is not None
    desk.do(actions.write_up, WriteUp("misses", plate="TH 1", odometer=1000))
    open_job(at)
    at.type_into(QLineEdit, "Part kind", "brake disc", enter=True)
    at.press("More dimensions")
    half_type(at, folder, LIMIT, "stamped on the h")
    half_type(at, folder, PLACE, "front le")


def sit_down_and_rise(qtbot: QtBot, folder: Path) -> None:
    """Open the shop, and close it once everything beside the window has ended."""
    with sitting(qtbot, folder, MONDAY, SOON) as at:
        qtbot.wait(50)
        at.quiet()


def test_the_draft_of_a_pair_that_was_taken_out_goes_and_the_others_stay(
    qtbot: QtBot, tmp_path: Path
) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY, SOON) as at:
        a_pair_with_a_limit_half_typed(at, folder)
        at.press("Undo")
        at.wait_for("Undone: ")
        assert "stamped on the h" in kept(folder)
        at.press("Redo")  # it is there again, with what was half typed
        at.press("More dimensions")
        assert at.find(QLineEdit, LIMIT).text() == "stamped on the h"
        at.press("Undo")
    assert any(form.startswith("limits-") for form in forms(folder))
    with sitting(qtbot, folder, MONDAY, SOON) as at:
        at.bot.waitUntil(lambda: not any(form.startswith("limits-") for form in forms(folder)))
        open_job(at)
        assert at.find(QLineEdit, PLACE).text() == "front le"


def test_no_form_of_a_job_that_was_undone_stays(qtbot: QtBot, tmp_path: Path) -> None:
    folder = tmp_path / "shop"
    with sitting(qtbot, folder, MONDAY, SOON) as at:
        a_pair_with_a_limit_half_typed(at, folder)
        for name, words in (
            ("Trouble codes, found", "P03"),
            ("Trouble codes, after repair", "P01"),
            ("The proof failed: what did it show?", "misses ag"),
            ("What was seen or tried", "the cap is crus"),
            ("Odometer out", "1,010"),
        ):
            half_type(at, folder, name, words)
        at.press("Odometer replaced, or car sold: not said")
        half_type(at, folder, "Note", "to a neigh")
        typed = forms(folder)
        desk = at.program.desk
        assert desk is not None
        while desk.record.can_undo():
            desk.undo()
        assert typed <= forms(folder)
    sit_down_and_rise(qtbot, folder)
    assert len(typed) == 8
    assert not typed & forms(folder)
