"""One sheet of the Monday Book on the screen: sentences, figures, charts, tables, jobs behind."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QImage, QPaintEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.shop_window.copied_rows import copy_rows
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label, tooltip
from desktop_app.weekly_report.opens_on import TO_ACT_ON
from desktop_app.weekly_report.row_jobs import jobs_of_row, stands_for_jobs
from desktop_app.weekly_report.screen.chart_view import ChartView
from desktop_app.weekly_report.screen.jobs_behind import JobsBehind, figure_shown
from desktop_app.weekly_report.screen.seen_first import SeenFirst
from desktop_app.weekly_report.screen.sheet_rows import as_read
from desktop_app.weekly_report.screen.sheet_table import SheetTable
from desktop_app.weekly_report.sheet_form import Sheet, Table, Total

MANY_ROWS = 20  # from here on some of them can be looked for


class SheetView(QWidget):
    """Shows one sheet; a number can be opened to the jobs behind it."""

    job_wanted = Signal(str)
    sheet_wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(14)
        self._currency = ""
        self._sheet: Sheet | None = None

    def show_sheet(self, sheet: Sheet, currency: str) -> None:
        """Show another sheet in place of the one that is shown."""
        self._sheet, self._currency = sheet, currency
        empty(self._column)
        self._column.addWidget(self._head(sheet))
        if any(total.short for total in sheet.totals):
            first = SeenFirst(sheet, currency)
            first.job_wanted.connect(self.job_wanted)
            first.sheet_wanted.connect(self.sheet_wanted)
            self._column.addWidget(first)
        if sheet.sentences:
            section = Section(sheet.name)
            for words in sheet.sentences:
                section.column.addWidget(_wrapping(words))
            self._column.addWidget(section)
        for chart in sheet.charts:
            self._add_chart(ChartView(chart, sheet.table(chart.table)), chart.title, sheet)
        for table in sheet.tables:
            self._add_table(table, table.title or sheet.name)
        if sheet.totals:
            self._add_totals(sheet.totals)

    def _head(self, sheet: Sheet) -> QWidget:
        copy = _CopyButton(tr("Copy this sheet"))
        copy.setAccessibleName(tr("Copy the sheet {name}", name=sheet.name))
        copy.setToolTip(tooltip(tr("As rows for a spreadsheet or a letter, and as a picture")))
        copy.clicked.connect(self._copy)
        head = QWidget()
        row = QHBoxLayout(head)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(_wrapping(sheet.about, "quiet"), 1)
        row.addWidget(copy)
        return head

    @Slot()
    def _copy(self) -> None:
        copy_rows(self._lines(), self._picture())

    def _picture(self) -> QImage:
        buttons = self.findChildren(_CopyButton)
        for button in buttons:
            button.is_painted = False
        picture = self.grab().toImage()
        for button in buttons:
            button.is_painted = True
        return picture

    def _lines(self) -> list[list[str]]:
        """Return the sheet as rows of cells, its tables as they are seen; blank ones between."""
        sheet = self._sheet
        if sheet is None:
            return []
        blocks = [[[sheet.about]], [[words] for words in sheet.sentences]]
        if sheet.to_do:
            blocks.append([[TO_ACT_ON], *([one.words, ", ".join(one.jobs)] for one in sheet.to_do)])
        seen = {view.accessibleName(): view for view in self.findChildren(SheetTable)}
        for table in sheet.tables:
            name = table.title or sheet.name
            rows = seen[name].lines(whole=True) if table.rows else [[table.nothing]]
            blocks.append([[name], *rows, *([words] for words in table.notes)])
        blocks.append(
            [
                [total.words, as_read(total.value, total.kind, self._currency), total.note]
                for total in sheet.totals
            ]
        )
        return [line for block in blocks if block for line in ([], *block)][1:]

    def _add_totals(self, totals: Sequence[Total]) -> None:
        section, grid = Section(tr("Figures")), QGridLayout()
        grid.setVerticalSpacing(4)
        grid.setHorizontalSpacing(18)
        grid.setColumnStretch(2, 1)
        section.column.addLayout(grid)
        behind = JobsBehind()
        behind.job_wanted.connect(self.job_wanted)
        for row, total in enumerate(totals):
            grid.addWidget(plain_label(total.words, wrap=True), row, 0)
            grid.addWidget(figure_shown(total, self._currency, behind), row, 1)
            grid.addWidget(_wrapping(total.note, "quiet"), row, 2)
        section.column.addWidget(behind)
        self._column.addWidget(section)

    def _add_chart(self, view: ChartView, title: str, sheet: Sheet) -> None:
        section, behind = Section(title), JobsBehind()
        copy = _CopyButton(tr("Copy the picture"))
        copy.setAccessibleName(tr("Copy the picture: {title}", title=title))
        copy.clicked.connect(lambda: view.copy_picture(sheet.about))
        table = next(t for t in sheet.tables if t.name == view.table_name())
        view.pressed.connect(lambda row: behind.show_jobs(jobs_of_row(table, row)))
        behind.job_wanted.connect(self.job_wanted)
        section.column.addWidget(view)
        section.column.addWidget(behind)
        row = QHBoxLayout()
        row.addWidget(copy)
        row.addStretch(1)
        section.column.addLayout(row)
        self._column.addWidget(section)

    def _add_table(self, table: Table, name: str) -> None:
        section = Section(name)
        if not table.rows:
            section.column.addWidget(_wrapping(table.nothing, "quiet"))
        else:
            behind = JobsBehind()
            behind.job_wanted.connect(self.job_wanted)
            view = SheetTable(table, self._currency, name)
            view.activated.connect(
                lambda index: self._opened(table, view.row_of(index), index.column(), behind)
            )
            view.clicked.connect(
                lambda at: behind.show_jobs(_behind_cell(table, view.row_of(at), at.column()))
            )
            if len(table.rows) >= MANY_ROWS:
                section.column.addWidget(view.only_line())
            section.column.addWidget(view)
            section.column.addWidget(behind)
        for words in table.notes:
            section.column.addWidget(_wrapping(words, "quiet"))
        self._column.addWidget(section)

    def _opened(self, table: Table, row: int, column: int, behind: JobsBehind) -> None:
        """Open the row's own job; where it stands for several, go on to their buttons."""
        jobs = _behind_cell(table, row, column)
        behind.show_jobs(jobs)
        if jobs and (len(jobs) == 1 or not stands_for_jobs(table, row)):
            self.job_wanted.emit(jobs[0])
        else:
            behind.go_there()


class _CopyButton(QPushButton):
    """A button that is no part of the picture it copies."""

    is_painted = True

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.is_painted:
            super().paintEvent(event)


def _behind_cell(table: Table, row: int, column: int) -> tuple[str, ...]:
    """Return the numbers of the jobs that a cell counts, or else its row."""
    own = table.behind_of.get(table.columns[column].header)
    return jobs_of_row(table, row) if own is None else own(row)


def _wrapping(words: str, look: str = "") -> QLabel:
    """Return a label whose words can be marked and copied."""
    label = plain_label(words, look, wrap=True)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label
