"""What is seen first of a week: its figures in a row, and what somebody has to do."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.weekly_report.opens_on import MOST_NAMED, NOTHING_TO_DO, THE_WEEK, TO_ACT_ON
from desktop_app.weekly_report.screen.jobs_behind import JobsBehind, figure_shown, job_button
from desktop_app.weekly_report.sheet_form import Sheet, ToDo


class SeenFirst(QWidget):
    """The figures as buttons that open their jobs; beneath them the jobs to act on."""

    job_wanted = Signal(str)
    sheet_wanted = Signal(str)

    def __init__(self, sheet: Sheet, currency: str) -> None:
        super().__init__()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(14)
        column.addWidget(self._figures(sheet, currency))
        column.addWidget(self._to_do(sheet))

    def _figures(self, sheet: Sheet, currency: str) -> Section:
        section, row = Section(THE_WEEK), QWidget()
        flow, behind = FlowRow(row, spacing=12), JobsBehind()
        behind.job_wanted.connect(self.job_wanted)
        for total in sheet.totals:
            if total.short and total.value is not None:
                flow.addWidget(figure_shown(total, currency, behind, total.short))
        section.column.addWidget(row)
        section.column.addWidget(behind)
        return section

    def _to_do(self, sheet: Sheet) -> Section:
        section, grid = Section(TO_ACT_ON), QGridLayout()
        grid.setHorizontalSpacing(18)
        grid.setColumnStretch(0, 2)
        grid.setColumnStretch(1, 3)
        for row, one in enumerate(sheet.to_do):
            words = plain_label(f"{one.words} ({len(one.jobs)})", wrap=True)
            grid.addWidget(words, row, 0, Qt.AlignmentFlag.AlignVCenter)
            grid.addWidget(self._jobs(one), row, 1)
        if not sheet.to_do:
            section.column.addWidget(plain_label(NOTHING_TO_DO, "quiet"))
        section.column.addLayout(grid)
        return section

    def _jobs(self, one: ToDo) -> QWidget:
        jobs = QWidget()
        row = FlowRow(jobs)
        for number in one.jobs[:MOST_NAMED]:
            row.addWidget(job_button(number, self._open))
        if len(one.jobs) > MOST_NAMED:
            more = QPushButton(tr("All: {sheet}", sheet=one.sheet))
            more.setAccessibleName(tr("All of them, on the sheet {sheet}", sheet=one.sheet))
            more.setProperty("sheet", one.sheet)
            more.clicked.connect(self._turn)
            row.addWidget(more)
        return jobs

    @Slot()
    def _open(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self.job_wanted.emit(button.text())

    @Slot()
    def _turn(self) -> None:
        self.sheet_wanted.emit(str(self.sender().property("sheet")))
