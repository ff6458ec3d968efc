"""Monday Book: a week is looked at, turned, and written to a workbook."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QPointF, QRect, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QApplication,
    QFileDialog,
    QLabel,
    QLineEdit,
    QListWidget,
    QPushButton,
    QTableView,
)
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored_reading import job_by_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.weekly_report.screen.chart_view import ChartView
from desktop_app.weekly_report.screen.monday_book_page import MondayBookPage
from desktop_app.weekly_report.screen.sheet_rows import as_read
from desktop_app.weekly_report.screen.sheet_view import SheetView
from desktop_app.weekly_report.sheet_form import Chart, Table
from desktop_app.weekly_report.sheets.sheet_words import columns
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle
from tests.weekly_report.week_written import opened, table_rows

WAIT = 20_000  # ms; the library for many rows is read from disk the first time


@pytest.fixture
def page(shop: ShopRecord, desk: Desk, qtbot: QtBot) -> MondayBookPage:
    a_week_of_returns(shop)
    page = MondayBookPage(desk, {})
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    page.came_here()
    _settle(desk, qtbot)
    return page


def _settle(desk: Desk, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=WAIT)
    QApplication.processEvents()  # what was just laid out is shown in the next turn


def _press(page: MondayBookPage, qtbot: QtBot, words: str) -> None:
    button = next(b for b in page.findChildren(QPushButton) if words in b.text())
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def _says(page: MondayBookPage, words: str) -> bool:
    return any(words in x.text() for x in page.findChildren(QLabel) if x.isVisibleTo(page))


def _turn_to(page: MondayBookPage, desk: Desk, qtbot: QtBot, sheet: str) -> None:
    sheets = page.findChild(QListWidget)
    [item] = sheets.findItems(sheet, Qt.MatchFlag.MatchExactly)
    sheets.setCurrentItem(item)
    _settle(desk, qtbot)


def _table(page: MondayBookPage, name: str) -> QTableView:
    return next(t for t in page.findChildren(QTableView) if t.accessibleName() == name)


def _field(page: MondayBookPage) -> QLineEdit:
    return page.findChild(QLineEdit)


def _choose(monkeypatch: pytest.MonkeyPatch, path: Path | None) -> list[str]:
    proposed: list[str] = []

    def answer(_parent: object, _title: str, name: str, _form: str) -> tuple[str, str]:
        proposed.append(Path(name).name)
        return ("" if path is None else str(path), "")

    monkeypatch.setattr(QFileDialog, "getSaveFileName", answer)
    return proposed


def test_it_opens_on_the_week_that_ended_last(
    page: MondayBookPage, desk: Desk, qtbot: QtBot
) -> None:
    assert _field(page).text() == "2026-W46"
    assert _says(page, "9 November 2026 to 15 November 2026")
    assert _says(page, "3 jobs left in the week, 2 counted; not counted: 1 not caught.")
    _turn_to(page, desk, qtbot, "Left this week")
    model = _table(page, "Left this week").model()
    assert [model.index(row, 0).data() for row in range(3)] == ["J-160", "J-161", "J-162"]
    heads = [model.headerData(at, Qt.Orientation.Horizontal) for at in range(model.columnCount())]
    assert model.index(1, heads.index("Price")).data() == "$184.50"
    _turn_to(page, desk, qtbot, "Windows")
    assert _table(page, "Under watch").model().rowCount() == 6


def test_a_figure_is_opened_to_its_jobs(
    page: MondayBookPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    _turn_to(page, desk, qtbot, "Windows")
    states = _table(page, "What became of the year's jobs")
    qtbot.waitUntil(states.isVisible)
    spot = states.visualRect(states.model().index(0, 0)).center()
    qtbot.mouseClick(states.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    qtbot.waitUntil(lambda: _says(page, "jobs stand behind it"))
    shown = [b for b in page.findChildren(QPushButton) if b.isVisible()]
    first = next(b for b in shown if b.text().startswith("J-"))
    with qtbot.waitSignal(page.job_chosen) as chosen:
        qtbot.mouseClick(first, Qt.MouseButton.LeftButton)
    with shop.reading() as connection:
        assert chosen.args == [job_by_number(connection, first.text())]


def test_a_figure_of_read_first_is_opened_to_its_jobs(page: MondayBookPage, qtbot: QtBot) -> None:
    named = {button.accessibleName(): button for button in page.findChildren(QPushButton)}
    qtbot.mouseClick(named["Jobs handed over: 3"], Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: _says(page, "3 jobs stand behind “Jobs handed over”."))
    shown = {b.text() for b in page.findChildren(QPushButton) if b.isVisibleTo(page)}
    assert {"J-160", "J-161", "J-162"} <= shown


def test_a_cell_opens_to_the_jobs_that_its_column_counts(
    page: MondayBookPage, desk: Desk, qtbot: QtBot
) -> None:
    _turn_to(page, desk, qtbot, "Proof")
    table = _table(page, "By how far it was proved")
    qtbot.waitUntil(table.isVisible)
    headers = [
        table.model().headerData(n, Qt.Orientation.Horizontal).split()
        for n in range(table.model().columnCount())
    ]
    table.clicked.emit(table.model().index(0, headers.index(["Comebacks"])))
    assert _says(page, "No job stands behind it.")
    table.clicked.emit(table.model().index(0, 0))
    assert not _says(page, "No job stands behind it.")


def test_a_row_that_is_a_job_is_opened_by_enter(
    page: MondayBookPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    _turn_to(page, desk, qtbot, "Came back")
    table = _table(page, "Came back in the week")
    table.setFocus()
    table.selectRow(0)
    with qtbot.waitSignal(page.job_chosen) as chosen:
        qtbot.keyClick(table, Qt.Key.Key_Return)
    later = table.model().index(0, 1).data()
    with shop.reading() as connection:
        assert chosen.args == [job_by_number(connection, later)]
    # Beside the later job stands the earlier one, to be opened as well.
    earlier = table.model().index(0, 0).data()
    for number in (later, earlier):
        buttons = [b for b in page.findChildren(QPushButton) if b.text() == number]
        qtbot.waitUntil(buttons[0].isVisible)


def test_enter_on_a_row_of_several_jobs_leads_to_their_buttons(
    page: MondayBookPage, desk: Desk, qtbot: QtBot
) -> None:
    _turn_to(page, desk, qtbot, "Windows")
    states = _table(page, "What became of the year's jobs")
    states.setFocus()
    states.selectRow(0)
    qtbot.keyClick(states, Qt.Key.Key_Return)
    focused = page.focusWidget()
    assert isinstance(focused, QPushButton)
    assert focused.text().startswith("J-")


def test_a_sheet_says_its_period_and_is_copied_whole(
    page: MondayBookPage, desk: Desk, qtbot: QtBot
) -> None:
    _turn_to(page, desk, qtbot, "Money owed")
    line = "2026-W46, 2026-11-09 to 2026-11-15 · made 2026-11-16"
    qtbot.waitUntil(lambda: _says(page, line))
    QGuiApplication.clipboard().clear()
    _press(page, qtbot, "Copy this sheet")
    assert not QGuiApplication.clipboard().pixmap().isNull()


def test_a_copied_sheet_is_rows_and_a_picture_without_the_button(
    page: MondayBookPage, desk: Desk, qtbot: QtBot
) -> None:
    _turn_to(page, desk, qtbot, "Left this week")
    table = _table(page, "Left this week")
    table.selectRow(0)  # the sheet is copied whole all the same
    _press(page, qtbot, "Copy this sheet")
    mime = QGuiApplication.clipboard().mimeData()
    lines = [line.split("\t") for line in mime.text().splitlines()]
    assert "2026-W46, 2026-11-09 to 2026-11-15 · made 2026-11-16" in lines[0][0]
    assert lines[1:3] == [[""], ["Left this week"]]
    job = table.model().index(0, 0).data()
    assert [one[0] for one in lines[4:]].count(job) == 1
    assert len(lines[4:]) >= table.model().rowCount() > 1
    assert len(lines[4]) == len(lines[3]) == table.model().columnCount()
    assert f"<td>{job}</td>" in mime.html()
    button = next(b for b in page.findChildren(QPushButton) if b.text() == "Copy this sheet")
    picture = QGuiApplication.clipboard().image()
    seen = button.parentWidget().parentWidget()
    at = QRect(button.mapTo(seen, QPoint(0, 0)), button.size())
    assert picture.size() == seen.size()
    drawn = picture.copy(at)
    colours = {drawn.pixel(x, y) for x in range(at.width()) for y in range(at.height())}
    assert len(colours) == 1  # nothing is drawn where the button stands


@pytest.mark.parametrize("width", [1280, 1040])
def test_words_are_read_whole_without_being_cut(
    page: MondayBookPage, desk: Desk, qtbot: QtBot, width: int
) -> None:
    page.resize(width - 90, 700)
    _turn_to(page, desk, qtbot, "Definitions")
    table = _table(page, "Words and figures")
    qtbot.waitUntil(table.isVisible)
    assert not table.horizontalScrollBar().isVisible()
    for row in range(table.model().rowCount()):
        assert table.rowHeight(row) >= table.sizeHintForRow(row)


def test_a_long_sentence_is_read_to_its_end(page: MondayBookPage, desk: Desk, qtbot: QtBot) -> None:
    page.resize(700, 700)
    _turn_to(page, desk, qtbot, "Read first")

    def whole() -> bool:
        found = (one for one in page.findChildren(QLabel) if "Foretold, other hands" in one.text())
        return all(one.height() >= one.heightForWidth(one.width()) > 0 for one in found)

    qtbot.waitUntil(whole)
    [label] = [one for one in page.findChildren(QLabel) if "Foretold, other hands" in one.text()]
    assert label.height() > 2 * label.fontMetrics().height()


def test_money_below_nothing_is_read_with_its_sign_before_the_currency() -> None:
    # U+2060 keeps the sign and the amount on one line.
    assert as_read(-371.5, "money", "$") == "−\u2060$371.50"
    assert as_read(1030, "money", "$") == "$1,030.00"


def test_the_costs_say_their_currency_and_no_word_of_them_is_cut(qtbot: QtBot) -> None:
    cause = "right, but not the whole of it, and looked at twice"
    cells = columns(("Cause", "words"), ("Total", "money"))
    table = Table("CostByCause", cells, ((cause, 980.0),))
    chart = Chart("Costs", "bars", "CostByCause", "Cause", ("Total",), "Cause", "Cost in $",
                  currency="$")  # fmt: skip
    view = ChartView(chart, table)
    qtbot.addWidget(view)
    view.resize(900, 300)
    assert view.words_of(0) == f"Cause {cause}: Total $980.00"
    # Where the bars begin, the names before them have their room.
    names = view.fontMetrics().horizontalAdvance(cause)
    assert view.row_at(QPointF(names, 100)) is None
    # The last figure beneath has its half beyond the end of the bars.
    half = view.fontMetrics().horizontalAdvance("$1,000") / 2
    assert view.row_at(QPointF(view.width() - half, 100)) is None
    assert view.row_at(QPointF(view.width() - half - 12, 100)) == 0


def test_a_chart_is_walked_opened_and_copied(
    page: MondayBookPage, desk: Desk, qtbot: QtBot
) -> None:
    _turn_to(page, desk, qtbot, "Rate")
    chart = page.findChildren(ChartView)[0]
    # A sheet that has just come has its room only when the window has laid it out.
    qtbot.waitUntil(lambda: chart.size().height() == chart.sizeHint().height())
    chart.setFocus()
    qtbot.keyClick(chart, Qt.Key.Key_Left)
    assert "2026-W46" in chart.words_of(25)
    qtbot.keyClick(chart, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: _says(page, "No job stands behind it."))
    QGuiApplication.clipboard().clear()
    _press(page, qtbot, "Copy the picture")
    assert not QGuiApplication.clipboard().pixmap().isNull()


def test_weeks_are_turned_and_typed(page: MondayBookPage, desk: Desk, qtbot: QtBot) -> None:
    _turn_to(page, desk, qtbot, "Left this week")
    _press(page, qtbot, "Week before")
    _settle(desk, qtbot)
    assert _field(page).text() == "2026-W45"
    qtbot.waitUntil(lambda: _says(page, "No job was handed over in this week."), timeout=WAIT)
    _press(page, qtbot, "Week after")
    _settle(desk, qtbot)
    _turn_to(page, desk, qtbot, "Read first")
    qtbot.waitUntil(lambda: _says(page, "3 jobs left in the week"), timeout=WAIT)
    _field(page).clear()
    qtbot.keyClicks(_field(page), "2026-W36")
    qtbot.keyClick(_field(page), Qt.Key.Key_Return)
    _settle(desk, qtbot)
    qtbot.waitUntil(lambda: _says(page, "1 job left in the week"), timeout=WAIT)


def test_no_sheet_stands_under_anothers_name_or_week(
    page: MondayBookPage, desk: Desk, qtbot: QtBot
) -> None:
    words = page.findChild(SheetView)
    assert words.isVisible()
    sheets = page.findChild(QListWidget)
    [item] = sheets.findItems("Costs", Qt.MatchFlag.MatchExactly)
    sheets.setCurrentItem(item)
    assert _says(page, "Working out “Costs” …")
    assert not words.isVisible()
    _settle(desk, qtbot)
    assert not _says(page, "Working out")
    assert words.isVisible()
    _press(page, qtbot, "Week before")
    assert _says(page, "Reading 2026-W45 …")
    assert not words.isVisible()
    _settle(desk, qtbot)
    assert not _says(page, "Reading 2026-W45")
    assert words.isVisible()


def test_a_week_that_is_none_is_refused_in_words(page: MondayBookPage, qtbot: QtBot) -> None:
    _field(page).clear()
    qtbot.keyClicks(_field(page), "2025-W53")
    qtbot.keyClick(_field(page), Qt.Key.Key_Return)
    assert _says(page, "There is no week 2025-W53.")
    assert _says(page, "3 jobs left in the week")


def test_a_new_hand_over_is_seen_at_once(
    page: MondayBookPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    job(shop, vehicle(shop, plate="NEW"), "J-170", "2026-11-10", "2026-11-10")
    desk.do(judge_return, 1, 2, "same part")
    _settle(desk, qtbot)
    assert _says(page, "4 jobs left in the week")


def test_the_week_is_written_where_the_person_says(
    page: MondayBookPage,
    desk: Desk,
    qtbot: QtBot,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    proposed = _choose(monkeypatch, tmp_path / "mine.xlsx")
    _press(page, qtbot, "Write the week")
    qtbot.waitUntil(lambda: _says(page, "Wrote 2026-W46 to"), timeout=WAIT)
    assert proposed == ["week-2026-W46.xlsx"]
    rows = table_rows(opened(tmp_path / "mine.xlsx"), "Left this week")
    assert [row["Job"] for row in rows] == ["J-160", "J-161", "J-162"]


def test_choosing_no_file_writes_nothing(
    page: MondayBookPage, desk: Desk, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    _choose(monkeypatch, None)
    _press(page, qtbot, "Write the week")
    assert not desk.errands.busy()


def test_a_writing_that_is_stopped_leaves_nothing(
    page: MondayBookPage,
    desk: Desk,
    qtbot: QtBot,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    _choose(monkeypatch, tmp_path / "mine.xlsx")
    _press(page, qtbot, "Write the week")
    _press(page, qtbot, "Stop writing")
    qtbot.waitUntil(lambda: _says(page, "Stopped; nothing was written."), timeout=WAIT)
    _settle(desk, qtbot)
    assert not list(tmp_path.glob("*mine*"))


def test_a_place_that_cannot_be_written_is_told(
    page: MondayBookPage,
    desk: Desk,
    qtbot: QtBot,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    _choose(monkeypatch, tmp_path / "gone" / "mine.xlsx")
    with qtbot.waitSignal(desk.told, timeout=WAIT):
        _press(page, qtbot, "Write the week")
    _settle(desk, qtbot)
    assert _says(page, "There is no folder")


def test_every_control_has_a_name(page: MondayBookPage) -> None:
    for kind in (QPushButton, QLineEdit, QTableView):
        for control in page.findChildren(kind):
            text = control.text() if hasattr(control, "text") else ""
            assert control.accessibleName() or text
