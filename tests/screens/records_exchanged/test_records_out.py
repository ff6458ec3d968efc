"""Records In and Out: workbooks, everything taken out, and a whole export brought back."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from pathlib import Path

import pytest
import xlsxwriter
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import new_place
from desktop_app.records_exchanged.screen import export_box
from desktop_app.shop_record.databases.dialect import as_trouble
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from tests.conftest import NOON
from tests.records_exchanged.exported import export
from tests.records_exchanged.importing import a_shop, bring_in, everything, lines
from tests.records_exchanged.test_writing import FIRST
from tests.records_exchanged.test_writing_returns import back_the_same_day
from tests.screens.records_page import AtThePage, counted, old_jobs, row


@pytest.fixture
def record(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture
def at(record: ShopRecord, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[AtThePage]:
    at = AtThePage(record, qtbot, monkeypatch)
    yield at
    at.desk.errands.finish()


def test_what_the_table_of_jobs_leaves_out_is_said_where_the_shop_has_it(at: AtThePage) -> None:
    said = "A return on the day on which the earlier job came is not in jobs.csv"
    back_the_same_day(at.record)
    at.page.came_here()
    assert not at.says(said)  # nobody said yet that it is one
    bring_in(at.record, lines({"job_number": "A2", "return_of": "A1", "judgement": "same symptom"}))
    at.page.came_here()
    assert at.says(said)
    assert at.says("tables/returns.csv has it.")


def test_a_sheet_of_a_workbook_is_chosen(at: AtThePage, tmp_path: Path) -> None:
    file = tmp_path / "old.xlsx"
    book = xlsxwriter.Workbook(file)
    for name, rows in (("Cover", [["Our old jobs"]]), ("Jobs", [["RO #", "Reg"], ["R-1", "TH 1"]])):
        sheet = book.add_worksheet(name)
        for number, cells in enumerate(rows):
            sheet.write_row(number, 0, cells)
    book.close()
    at.choose(file)
    assert at.says("Say which column holds the job number")
    at.pick("Sheet", "Jobs")
    assert at.cells(0) == ["R-1", "TH 1"]
    assert not at.find(QComboBox, "Letters").isVisibleTo(at.page)
    at.try_it()
    assert at.says("0 new, 0 changed, 0 as they were, 1 turned away. There is nothing to bring in.")


def test_letters_are_named_by_hand_and_chosen_columns_stay(at: AtThePage, tmp_path: Path) -> None:
    file = tmp_path / "old.csv"
    file.write_bytes("RO #,Straße,Notiz\nR-1,Größe,ärger\n".encode("cp1250"))
    at.choose(file)
    at.drag("cause", 2)
    at.pick("Letters", "utf-16")
    assert at.says("is not written in utf-16")
    assert not at.button("See what would happen").isEnabled()
    at.pick("Letters", "cp1250")
    assert at.cells(0) == ["R-1", "Größe", "ärger"]
    assert at.heads()[2] == ["cause", "Notiz", "chosen"]


def test_everything_is_taken_out_and_never_over_something(
    at: AtThePage, record: ShopRecord, tmp_path: Path
) -> None:
    bring_in(record, lines(FIRST))
    to = tmp_path / "benchwitness-2026-11-16"
    for folder in (to, to.with_name(f"{to.name}-2")):
        at.choose_folder(tmp_path, "Take everything out…")
        at.settle()
        assert at.says("Wrote 1 job, 0 photos and 1 entry of the history")
        assert at.says(str(folder))
        assert (folder / "jobs.csv").is_file()


def test_taking_out_is_stopped_with_nothing_written(
    at: AtThePage, record: ShopRecord, tmp_path: Path
) -> None:
    bring_in(record, lines(FIRST))
    before = set(tmp_path.iterdir())
    at.choose_folder(tmp_path, "Take everything out…")
    at.press("Stop: taking everything out")
    at.settle()
    assert at.says("Stopped. Nothing was written.")
    assert set(tmp_path.iterdir()) == before


def test_where_the_record_is_not_read_nothing_is_said_of_a_field(
    at: AtThePage, record: ShopRecord, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_asked: object) -> Iterator[None]:
        error = sqlite3.OperationalError("database or disk is full")
        trouble = as_trouble(error)
        assert trouble is not None
        raise trouble

    monkeypatch.setattr(export_box, "export_everything", full)
    at.choose_folder(tmp_path, "Take everything out…")
    at.settle()
    assert at.says("The disk is full. It was broken off. Free some space and try again.")
    assert at.button("Take everything out…").isEnabled()


def test_an_export_comes_back_whole_into_a_new_shop(
    at: AtThePage, record: ShopRecord, tmp_path: Path
) -> None:
    other = new_place(tmp_path / "other", lambda: NOON)
    bring_in(other, lines(FIRST))
    out = tmp_path / "out"
    export(other, out)
    at.drop(out)
    assert at.says("Nothing is written in this one yet, so everything can come back")
    at.bring_in("Bring everything back")
    assert at.says("Everything is back as it was: 1 job, 0 photos, 1 entry of the history.")
    assert everything(record) == everything(other)
    other.close()


def test_into_a_shop_that_has_jobs_only_the_jobs_of_an_export_are_read(
    at: AtThePage, record: ShopRecord, tmp_path: Path
) -> None:
    bring_in(record, lines(FIRST))
    export(record, tmp_path / "out")
    at.choose_folder(tmp_path / "out", "Choose an export’s folder…")
    at.settle()
    [told] = at.told
    assert told.startswith(
        "Something is written in this shop already: only jobs.csv of it is read. It lacks kinds of "
    )
    at.try_it()
    assert at.says("0 new, 0 changed, 1 as they were, 0 turned away.")


def test_a_folder_that_is_no_export_is_refused(at: AtThePage, tmp_path: Path) -> None:
    at.choose_folder(tmp_path, "Choose an export’s folder…")
    assert "is a folder, and not one that everything was taken out into" in at.told[0]
    assert not at.offers("See what would happen")


def test_of_two_dropped_files_the_first_is_read(at: AtThePage, tmp_path: Path) -> None:
    first, second = old_jobs(tmp_path / "a.csv", row(1)), old_jobs(tmp_path / "b.csv", row(2))
    at.drop(first, second)
    assert at.cells(0)[0] == "R-1"
    assert at.told == ["One file at a time is read: the first of what was dropped."]
    assert counted(at.record) == [0, 0, 0]


def test_what_else_is_done_in_the_shop_leaves_what_was_chosen(
    at: AtThePage, record: ShopRecord, tmp_path: Path
) -> None:
    at.choose(old_jobs(tmp_path / "old.csv", row(1)))
    at.drag("cause", 6)
    at.answer("day first", "miles")
    at.try_it()
    at.desk.do(change_rule, "shop_name", "Northside")
    assert at.heads()[6] == ["cause", "Remark", "chosen"]
    at.bring_in("Bring 1 row in")
    assert counted(record, ("job",)) == [1]
