"""The figures of a week on the screen, sheet by sheet, as they stand in the workbook."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import (
    QAbstractItemView,
    QGridLayout,
    QLabel,
    QSizePolicy,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheets
from desktop_app.weekly_report.screen.sheet_rows import SheetRows, as_read
from desktop_app.weekly_report.screen.weeks_chart import WeeksChart
from desktop_app.weekly_report.sheet_form import Sheet, Table, Total

ROW_HEIGHT = 34
MOST_ROWS = 8  # shown without scrolling
WIDEST = 260
_NOTHING = {
    "Left this week": "No job was handed over in this week.",
    "Came back": "No car came back in this week.",
    "Under watch": "No window was open.",
}


class FiguresView(QWidget):
    """One section for each sheet of the workbook."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(14)
        self._sentences = self._section(column, "Read first")
        totals = Section("Totals")
        self._totals = QGridLayout()
        self._totals.setVerticalSpacing(4)
        self._totals.setHorizontalSpacing(18)
        self._totals.setColumnStretch(2, 1)
        totals.column.addLayout(self._totals)
        self._chart = WeeksChart()
        chart = Section("26 weeks")
        chart.column.addWidget(self._chart)
        column.addWidget(totals)
        column.addWidget(chart)
        self._tables: dict[str, tuple[QTableView, SheetRows, QWidget]] = {}
        for name in _NOTHING:
            self._add_table(column, name)

    def show_figures(self, figures: WeekFigures) -> None:
        """Show the figures of a week."""
        sheets = {sheet.name: sheet for sheet in week_sheets(figures)}
        empty(self._sentences)
        for words in sheets["Read first"].sentences:
            self._sentences.addWidget(_wrapping(words))
        self._show_totals(sheets["Totals"].totals, figures.shop.currency)
        self._chart.show_weeks(figures.weeks)
        for name in _NOTHING:
            self._show_table(sheets[name], figures.shop.currency)

    def _section(self, column: QVBoxLayout, name: str) -> QVBoxLayout:
        section, inside = Section(name), QVBoxLayout()
        section.column.addLayout(inside)
        column.addWidget(section)
        return inside

    def _add_table(self, column: QVBoxLayout, name: str) -> None:
        section, rows, table = Section(name), SheetRows(), QTableView()
        table.setModel(rows)
        table.setAccessibleName(name)
        table.setTabKeyNavigation(False)
        table.setWordWrap(False)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
        nothing = _wrapping(_NOTHING[name], "quiet")
        section.column.addWidget(nothing)
        section.column.addWidget(table)
        column.addWidget(section)
        self._tables[name] = (table, rows, nothing)

    def _show_totals(self, totals: Sequence[Total], currency: str) -> None:
        empty(self._totals)
        for row, total in enumerate(totals):
            figure = plain_label(as_read(total.value, total.kind, currency))
            figure.setAccessibleName(f"{total.words}: {figure.text()}")
            self._totals.addWidget(plain_label(total.words), row, 0)
            self._totals.addWidget(figure, row, 1)
            self._totals.addWidget(_wrapping(total.note, "quiet"), row, 2)

    def _show_table(self, sheet: Sheet, currency: str) -> None:
        view, rows, nothing = self._tables[sheet.name]
        table = sheet.table
        assert table is not None
        rows.show_table(table, currency)
        nothing.setVisible(not table.rows)
        view.setVisible(bool(table.rows))
        self._fit(view, table, currency)

    def _fit(self, view: QTableView, table: Table, currency: str) -> None:
        metrics = view.fontMetrics()
        for number, column in enumerate(table.columns):
            shown = (as_read(row[number], column.kind, currency)[:60] for row in table.rows)
            wide = max(map(metrics.horizontalAdvance, (column.header, *shown)))
            view.setColumnWidth(number, min(WIDEST, wide + 26))
        lines = min(len(table.rows), MOST_ROWS)
        head = view.horizontalHeader().sizeHint().height()
        bar = view.horizontalScrollBar().sizeHint().height()
        view.setFixedHeight(head + lines * ROW_HEIGHT + bar + 6)


def _wrapping(words: str, look: str = "") -> QLabel:
    """Return a label that is as high as its words need in the width it gets, and no higher."""
    label = plain_label(words, look, wrap=True)
    label.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
    return label
