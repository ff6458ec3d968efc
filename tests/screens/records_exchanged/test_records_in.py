"""Records In and Out: a file chosen, columns set, questions answered, rows brought in."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QListWidget, QTableView
from pytestqt.qtbot import QtBot
from sqlalchemy import text

from desktop_app.shop_record.record import ShopRecord
from tests.records_exchanged.importing import a_shop, backed_up_before
from tests.screens.records_page import AtThePage, counted, old_jobs, row


@pytest.fixture
def record(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture
def at(record: ShopRecord, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[AtThePage]:
    at = AtThePage(record, qtbot, monkeypatch)
    yield at
    at.desk.errands.finish()


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return old_jobs(tmp_path / "old.csv", row(1), row(2, "05/06/2025"), row(3, "99/99/2025"))


def test_the_empty_place_says_what_to_do(at: AtThePage) -> None:
    assert at.says("Choose a table of old jobs, or drop it here")
    assert at.says("Take everything out")
    assert not at.says("Which column is what")


def test_a_file_is_shown_as_it_is_read(at: AtThePage, file: Path) -> None:
    at.choose(file)
    assert at.says("3 rows below the headers, parted by commas, read as utf-8.")
    assert at.heads()[:2] == [["job number", "RO #", "likely"], ["opened on", "Date In", "likely"]]
    assert at.heads()[6] == ["left out", "Remark", "–"]
    assert at.cells(0)[0] == "R-1"
    assert at.cells(0)[6] == "rang 1"


def test_nothing_goes_in_before_what_is_open_was_answered(
    at: AtThePage, file: Path, record: ShopRecord
) -> None:
    at.choose(file)
    assert not at.button("See what would happen").isEnabled()
    assert at.says("Answer first what the file leaves open.")
    assert at.cells(0)[1] == "⚠ 03/04/2025"
    at.answer("day first: 3 April 2025")
    assert at.cells(0)[1] == "3 April 2025"
    at.answer("month first: 4 March 2025")
    assert at.cells(0)[1] == "4 March 2025"
    assert not at.button("See what would happen").isEnabled()
    at.answer("kilometres")
    assert at.cells(0)[3] == "90,100 km"
    at.try_it()
    would = "What would become of 3 rows: 2 new, 0 changed, 0 as they were, 1 turned away."
    assert at.says(would)
    away = at.find(QTableView, "Rows turned away").model()
    shown = [away.index(0, column).data() for column in range(4)]
    assert shown == ["⚠ 4", "opened on", "99/99/2025", "The calendar has no such day."]
    assert counted(record) == [0, 0, 0]


def test_rows_are_brought_in_opened_and_taken_back(
    at: AtThePage, file: Path, record: ShopRecord
) -> None:
    at.choose(file)
    at.answer("day first", "miles")
    at.try_it()
    at.bring_in("Bring 2 rows in")
    assert counted(record) == [2, 2, 2]
    assert at.says("3 rows read: 2 new, 0 changed, 0 as they were, 1 turned away.")
    assert record.can_undo() == "Import old.csv"
    assert at.says("Undo takes all of it back: “Import old.csv”.")
    with at.bot.waitSignal(at.page.job_wanted) as opened:
        at.press("R-2")
    with record.reading() as connection:
        assert opened.args == [connection.execute(text("SELECT max(id) FROM job")).scalar()]
    assert at.desk.undo() is not None
    assert counted(record) == [0, 0, 0]
    assert at.says("“Import old.csv” was undone")
    assert not at.says("3 rows read")


def test_the_shop_is_backed_up_and_a_second_time_changes_nothing(
    at: AtThePage, file: Path, record: ShopRecord
) -> None:
    at.choose(file)
    at.answer("day first", "miles")
    at.try_it()
    at.bring_in()
    assert not at.says("as it was before lies in")  # there was nothing yet
    at.choose(old_jobs(file, row(1), row(2, "05/06/2025", "90200")))
    at.try_it()
    assert at.says("0 new, 1 changed, 1 as they were, 0 turned away")
    at.bring_in("Bring 1 row in")
    [backup] = backed_up_before(record)
    assert at.says(f"The shop as it was before lies in {backup}.")
    at.try_it()
    assert at.says("There is nothing to bring in.")
    assert at.offers("See what")
    assert not at.offers("row in")
    assert not at.offers("rows in")


def test_rows_turned_away_are_saved_mended_and_brought_in(
    at: AtThePage, file: Path, record: ShopRecord, tmp_path: Path
) -> None:
    at.choose(file)
    at.answer("day first", "miles")
    at.try_it()
    at.bring_in()
    before = file.read_bytes()
    at.save_as(file, "Save the rows that were turned away…")
    assert at.says("old.csv is the file that the rows came from.")
    assert file.read_bytes() == before
    to = tmp_path / "mend.csv"
    at.save_as(to, "Save the rows that were turned away…")
    assert at.says(f"They lie in {to}.")
    assert "The calendar has no such day." in to.read_text("utf-8")
    to.write_text(to.read_text("utf-8").replace("99/99/2025", "09/09/2025"), "utf-8")
    at.choose(to)
    assert at.says("The columns are taken from the last file like this one.")
    at.try_it()
    at.bring_in("Bring 1 row in")
    assert counted(record, ("job",)) == [3]


def test_a_column_is_given_a_field_by_the_list(at: AtThePage, file: Path) -> None:
    at.choose(file)
    at.pick("Column of the file", "Remark")
    at.pick("It is read as", "cause")
    assert at.heads()[6] == ["cause", "Remark", "chosen"]
    at.pick("Column of the file", "Date In")
    at.pick("It is read as", "left out")
    assert at.heads()[1][0] == "left out"
    assert at.cells(0)[1] == "03/04/2025"
    assert not at.says("03/04/2025” may be")  # nothing of it is read, so nothing is asked
    at.pick("Column of the file", "RO #")
    at.pick("It is read as", "left out")
    assert at.says("Say which column holds the job number")


def test_a_column_is_given_a_field_by_dragging_and_by_enter(at: AtThePage, file: Path) -> None:
    at.choose(file)
    at.drag("cause", 6)
    assert at.heads()[6] == ["cause", "Remark", "chosen"]
    at.drag("plate", 6)  # one cell only: it leaves the column that it had
    assert [head[0] for head in at.heads()][2] == "left out"
    assert at.heads()[6][0] == "plate"
    fields = at.page.findChildren(QListWidget)[0]
    at.table.setCurrentIndex(at.table.model().index(1, 2))
    fields.setCurrentItem(fields.findItems("VIN", Qt.MatchFlag.MatchEndsWith)[0])
    at.bot.keyClick(fields, Qt.Key.Key_Return)
    at.settle()
    assert at.heads()[2][0] == "VIN"
    assert at.says("Row 3, “Reg”: “TH 2” is read as VIN: TH 2.")
    at.drag("correction", 6)  # may be gathered from several
    assert [head[0] for head in at.heads()].count("correction") == 2


def test_the_map_is_kept_for_the_next_file_and_forgotten(
    at: AtThePage, file: Path, tmp_path: Path
) -> None:
    at.choose(file)
    at.drag("cause", 6)
    at.answer("month first", "miles")
    at.try_it()
    at.bring_in()
    at.choose(old_jobs(tmp_path / "next.csv", row(7, "04/05/2025")))
    assert at.says("The columns are taken from the last file like this one.")
    assert at.heads()[6] == ["cause", "Remark", "as last time"]
    assert at.says("Answered as for the last file like this.")
    assert at.cells(0)[1] == "5 April 2025"
    assert at.button("See what would happen").isEnabled()
    at.press("Forget this map")
    at.settle()
    assert at.heads()[6][0] == "left out"
    at.choose(tmp_path / "next.csv")
    assert not at.says("The columns are taken from the last file like this one.")


def test_a_file_that_tells_its_own_order_is_not_read_by_the_last_one(
    at: AtThePage, file: Path, tmp_path: Path
) -> None:
    at.choose(file)
    at.answer("month first", "miles")
    at.try_it()
    at.bring_in()
    at.choose(old_jobs(tmp_path / "next.csv", row(7, "04/05/2025"), row(8, "28/02/2025")))
    assert at.cells(0)[1] == "4 May 2025"
    assert at.cells(1)[1] == "28 February 2025"


def test_headers_further_down_are_named_by_hand(at: AtThePage, tmp_path: Path) -> None:
    at.choose(old_jobs(tmp_path / "old.csv", "RO #,Reg", "R-1,TH 1", head="Our jobs,2025"))
    assert at.says("Say which column holds the job number")
    at.pick("Headers in row", "2")
    assert at.heads()[0][:2] == ["job number", "RO #"]
    assert at.cells(0) == ["R-1", "TH 1"]


def test_what_cannot_be_read_says_so_and_another_file_may_follow(
    at: AtThePage, file: Path, tmp_path: Path
) -> None:
    nothing = tmp_path / "nothing.csv"
    nothing.touch()
    at.choose(nothing)
    assert at.says("is empty. Accepted: a table with headers as CSV or XLSX.")
    at.choose(file)
    assert not at.says("is empty")
    assert at.heads()[0][0] == "job number"


def test_a_dropped_file_is_taken_and_stays_while_one_is_elsewhere(
    at: AtThePage, file: Path
) -> None:
    at.drop(file)
    at.answer("day first")
    at.page.hide()
    at.page.show()
    assert at.cells(0)[1] == "3 April 2025"
    at.choose(file)  # the same file anew: nothing is answered
    assert at.cells(0)[1] == "⚠ 03/04/2025"


def test_an_import_is_stopped_half_way_with_nothing_done(
    at: AtThePage, record: ShopRecord, tmp_path: Path
) -> None:
    rows = [row(number, "13/04/2025") for number in range(1, 20_001)]
    at.choose(old_jobs(tmp_path / "long.csv", *rows))
    at.answer("miles")
    at.try_it()
    at.press("Bring 20,000 rows in")
    at.bot.waitUntil(lambda: at.says("4,000 of 20,000 rows"), timeout=20_000)
    assert not at.find(QComboBox, "It is read as").isEnabled()
    at.press("Stop: bringing records in")
    at.settle()
    assert at.says("Stopped. Nothing of the file was brought in.")
    assert counted(record) == [0, 0, 0]
    assert record.can_undo() is None
    assert at.find(QComboBox, "It is read as").isEnabled()
