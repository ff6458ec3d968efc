"""From the counter to Monday: one job through the whole window, by a person's clicks and keys."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from openpyxl import load_workbook
from PySide6.QtWidgets import QFileDialog, QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from demo_shop.bench_camera.photographer import photograph
from desktop_app.repair_jobs.actions import add_person
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.stored_returns import read_returns
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.record import open_shop
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.one_job import find_the_cause, finish, open_job, take_in

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
CONCERN = "Concern, in the customer's own words"
READINGS = {
    "tip radius from the shaft axis": ("26.62; 26.64; 26.63", "27.44; 27.45; 27.46"),
    "bore diameter": ("12.70; 12.70", "12.70; 12.70"),
    "tip height above the seat": ("24.30; 24.32; 24.31", "24.31; 24.30; 24.33"),
    "tip angle from the key": ("90; 90; 90", "90; 90; 90"),
}


def measure(at: Counter) -> None:
    for label, (old, new) in READINGS.items():
        at.type_into(QLineEdit, f"{label}, removed", old, enter=True)
        at.type_into(QLineEdit, f"{label}, replacement", new, enter=True)


def photos(folder: Path) -> list[Path]:
    files = []
    for side in ("removed", "replacement"):
        shot = photograph("distributor-rotor", side, "top", {}, seed=7, taken_at=MONDAY, width=320)
        file = folder / f"{side}.jpg"
        file.write_bytes(shot.jpeg)
        files.append(file)
    return files


def test_a_job_from_the_counter_to_mondays_report(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    shop = tmp_path / "shop"
    pictures = photos(tmp_path)
    with sitting(qtbot, shop, MONDAY) as at:
        # The car comes; what is said is read into a symptom and its conditions.
        take_in(at, "misses when damp and pulling uphill", "118,420")
        assert at.reads("J-101")
        at.find(QPlainTextEdit, CONCERN)
        find_the_cause(at)
        # Both parts on the bench.
        at.type_into(QLineEdit, "Part kind", "distributor rotor")
        at.press("Lay old and new side by side")
        at.wait_for("not enough measured")
        for picture, side in zip(pictures, ("removed part", "replacement"), strict=True):
            monkeypatch.setattr(
                QFileDialog, "getOpenFileNames", lambda *_a, p=picture, **_k: ([str(p)], "")
            )
            at.press(f"Choose photo files: photos of the {side}")
            at.quiet()
        measure(at)
        at.wait_for("fits")
        assert at.reads("Wear can explain that.")
        at.picture(tmp_path, "old-and-new")
        # Before everything is said the car does not leave, and it is said what is missing.
        at.press("Hand the car over")
        at.wait_for("the origin of the new distributor rotor")
    # The program was closed in the middle; nothing is lost.
    with sitting(qtbot, shop, MONDAY + timedelta(hours=2)) as at:
        open_job(at)
        at.choose("origin of the new part", "new, from another maker")
        finish(at)
        at.press("Undo")
        at.wait_for("Undone: Write down what was declined.")
        at.press("Redo")
        at.press("Hand the car over")
        at.wait_for("Someone can get hurt where these are left out")
        at.press("Hand over all the same")
        at.wait_for("Left on 2 March 2026")
        at.picture(tmp_path, "gone")
    # 41 days and 880 miles later it is back.
    with sitting(qtbot, shop, MONDAY + timedelta(days=41)) as at:
        take_in(at, "it misses again", "119,300")
        at.press("Is it J-101 again?")
        qtbot.waitUntil(lambda: at.window.here() == "It's Back")
        at.quiet()
        at.wait_for("same symptom: misfire")
        at.program.desk.do(add_person, "Odile")
        at.press("Same symptom:")
        at.press("Odile")
        at.quiet()
        at.picture(tmp_path, "its-back")
        # Monday: the week is written and found by its figures.
        book = tmp_path / "week.xlsx"
        monkeypatch.setattr(
            QFileDialog, "getSaveFileName", lambda *_a, **_k: (str(book), "Workbook (*.xlsx)")
        )
        at.go("Monday Book")
        at.type_into(QLineEdit, "Week, such as 2026-W47", "2026-W15", enter=True)
        at.quiet()
        at.press("Write the week")
        at.quiet()
        assert book.is_file()
        # And the job is found by a mistyped symptom.
        at.go("Ask the Old Jobs")
        at.type_into(QLineEdit, "Ask the old jobs", "missfire in the damp")
        at.quiet()
        at.wait_for("distributor rotor")
        at.picture(tmp_path, "ask")
    check_what_is_kept(shop, book)


def check_what_is_kept(shop: Path, book: Path) -> None:
    record = open_shop(shop, lambda: MONDAY + timedelta(days=42))
    with record.reading() as connection:
        job = read_job(connection, 1)
        (back,) = read_returns(connection)
    assert job.cause_found is True
    assert job.left_on == "2026-03-02"
    assert back.judgement is not None
    assert back.judgement.value == "same symptom"
    assert back.candidate.days == 41
    assert back.candidate.distance_miles == 880
    photos = list(record.photos.all_names())
    assert len(photos) == 2
    assert check_shop(record, [(name, "") for name in photos]).ok
    record.close()
    sheet = load_workbook(book, data_only=True)["Came back"]
    cells = [str(cell) for row in sheet.iter_rows(values_only=True) for cell in row]
    assert "J-101" in cells
    assert "J-102" in cells
