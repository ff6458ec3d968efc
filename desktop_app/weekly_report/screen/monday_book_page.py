"""Monday Book: a week's figures as they stand in the workbook, and the button that writes it."""

from __future__ import annotations

from collections.abc import Callable, Generator, Mapping
from functools import partial
from pathlib import Path

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QLineEdit,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.stored_reading import job_by_number
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.server.server_trouble import ServerLost
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.errands import Errand
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.place_names import MONDAY
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.written_file import WrittenFile
from desktop_app.weekly_report.actions import Kinds, file_name, look_at_week, write_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.screen.figures_view import FiguresView
from desktop_app.weekly_report.sheet_form import Sheet
from desktop_app.weekly_report.week import Week, read_week, week_of

BESIDE_WEEK = 26  # pixels: the frame of the field for the week
AGAIN = tr("Turn to it once more.")
WHEN_BACK = tr("The shop's server can't be reached: it is read here as soon as that is back.")


class MondayBookPage(QWidget):
    """The page; it opens on the week that ended last when somebody first goes there."""

    job_chosen = Signal(int)

    def __init__(
        self,
        desk: Desk,
        names: Mapping[str, str],
        kinds: Callable[[], Kinds] = dict,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._desk, self._names, self._kinds = desk, names, kinds
        self._week = week_of(desk.today()).moved(-1)
        self._seen = False
        self._stale = True
        self._asked: Errand | None = None
        self._writing: Errand | None = None
        self._folder = Path.home()
        self._field = QLineEdit()
        self._days = plain_label("")
        self._told = plain_label("", "quiet", wrap=True)
        self._wrote_words = ""  # what was said of the last one written stays to be read
        self._bar = QProgressBar()
        self._stop = QPushButton(tr("Stop writing"))
        self._write = QPushButton(tr("Write the week"))
        self._written = WrittenFile(desk.told)
        self._figures = FiguresView()
        self._figures.job_wanted.connect(self._open_job)
        self._figures.sheet_wanted.connect(self._turn_to_sheet)
        self._known: WeekFigures | None = None
        self._known_at = desk.now()
        self._sheets: dict[str, Sheet] = {}
        self._lay_out()
        desk.changed.connect(self._hear)
        desk.told.connect(self._hear_told)

    def came_here(self) -> None:
        """Read the week again where something has changed."""
        week = self._field.fontMetrics().horizontalAdvance(" 2026-W47 ")
        self._field.setFixedWidth(week + BESIDE_WEEK)  # the text may be larger by now
        if not self._seen:
            self._seen, self._week = True, week_of(self._desk.today()).moved(-1)
            self._show_week()
        if self._stale:
            self._read()

    def _lay_out(self) -> None:
        before, after = QPushButton(tr("◀  Week before")), QPushButton(tr("Week after  ▶"))
        before.clicked.connect(self._go_back)
        after.clicked.connect(self._go_on)
        self._field.setAccessibleName(tr("Week, such as 2026-W47"))
        self._field.returnPressed.connect(self._typed)
        self._write.setObjectName("next")
        self._write.clicked.connect(self._write_now)
        self._stop.clicked.connect(self._stop_now)
        self._bar.setAccessibleName(tr("How far the writing is"))
        turned = QWidget()
        row = FlowRow(turned)
        as_what = plain_label(tr("as a spreadsheet (XLSX)"), "quiet")
        for widget in (before, self._field, after, self._write, as_what, self._days):
            row.addWidget(widget)
        foot = QHBoxLayout()
        foot.addWidget(self._told, 1)
        foot.addWidget(self._bar)
        foot.addWidget(self._stop)
        foot.addWidget(self._written)
        self._figures.hide()
        self._bar.hide()
        self._stop.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 8)
        column.addWidget(plain_label(MONDAY, "title"))
        column.addWidget(turned)
        column.addLayout(foot)
        column.addWidget(self._figures, 1)
        column.addStretch(0)
        self._show_week()

    @Slot(str)
    def _open_job(self, number: str) -> None:
        job = self._desk.ask(job_by_number, number)
        if job is not None:
            self.job_chosen.emit(job)

    @Slot()
    def _go_back(self) -> None:
        self._turn_to(self._week.moved(-1))

    @Slot()
    def _go_on(self) -> None:
        self._turn_to(self._week.moved(1))

    @Slot()
    def _typed(self) -> None:
        try:
            self._turn_to(read_week(self._field.text()))
        except ShopTrouble as trouble:
            self._told.setText(trouble.sentence())

    def _turn_to(self, week: Week) -> None:
        self._week = week
        self._show_week()
        self._figures.wait(tr("Reading {week} …", week=week))
        self._read()

    def _show_week(self) -> None:
        week = self._week
        self._field.setText(str(week))
        self._days.setText(
            tr(
                "{monday} to {sunday}",
                monday=day_in_words(week.monday),
                sunday=day_in_words(week.sunday),
            )
        )

    @Slot(object)
    def _hear(self, _done: Done) -> None:
        self._stale = True
        if self.isVisible():
            self._read()

    def _read(self) -> None:
        """Read the week beside the window; only the answer to the last asking is shown."""
        self._stale = False
        if self._asked is not None:
            self._asked.stop()
        record, week, kinds = self._desk.record, self._week, self._kinds()
        name = self._figures.chosen()

        def work() -> tuple[WeekFigures, Sheet]:
            figures = look_at_week(record, week, self._names, kinds)
            return figures, week_sheet(figures, name)

        self._asked = self._desk.errands.run(tr("Reading the week"), work, self._show)
        self._asked.failed.connect(self._gave_up)

    def _show(self, found: tuple[WeekFigures, Sheet]) -> None:
        figures, sheet = found
        if figures.week != self._week:
            return
        self._asked = None
        self._known, self._sheets = figures, {sheet.name: sheet}
        self._known_at = self._desk.now()
        self._figures.show()
        self._turn_to_sheet(self._figures.chosen())
        if self._writing is None and self._told.text() != self._wrote_words:
            self._told.setText("")
        self._say_as_of()

    @Slot(str)
    def _turn_to_sheet(self, name: str) -> None:
        """Show a sheet; one that was not worked out yet is made beside the window."""
        figures = self._known
        if figures is None:
            return
        if figures.week != self._week:
            return  # it comes with the week that is read now
        if name in self._sheets:
            self._figures.show_sheet(self._sheets[name], figures.shop.currency)
            return
        self._figures.wait(tr("Working out “{name}” …", name=name))

        def show(sheet: Sheet) -> None:
            if self._known is figures:
                self._sheets[name] = sheet
                if self._figures.chosen() == name:
                    self._figures.show_sheet(sheet, figures.shop.currency)

        work = partial(week_sheet, figures, name)
        errand = self._desk.errands.run(tr("Working out “{name}”", name=name), work, show)
        errand.failed.connect(self._not_worked_out)

    @Slot(object)
    def _not_worked_out(self, _trouble: object) -> None:
        name = self._figures.chosen()
        if name not in self._sheets:
            self._figures.wait(tr("“{name}” was not worked out. Choose it once more.", name=name))

    @Slot(object)
    def _gave_up(self, trouble: object) -> None:
        if trouble is not None:
            self._asked, self._stale = None, True
            if self._known is None or self._known.week != self._week:
                away = isinstance(trouble, ServerLost)
                self._figures.wait(
                    tr(
                        "{week} was not read. {when_back}",
                        week=self._week,
                        when_back=WHEN_BACK if away else AGAIN,
                    )
                )
                self._figures.show()
            self._say_as_of()

    @Slot(object)
    def _hear_told(self, news: object) -> None:
        if isinstance(news, ShopTrouble):
            self._say_as_of()

    def _say_as_of(self) -> None:
        """Where the server is away, say when what is shown was read."""
        known, away = self._known, self._desk.record.away
        if away is not None and known is not None and known.week == self._week:
            self._told.setText(
                tr("As of {time:%H:%M}. {trouble}", time=self._known_at, trouble=away.what)
            )

    @Slot()
    def _write_now(self) -> None:
        proposed = str(self._folder / file_name(self._week))
        form = tr("Workbook (*.xlsx)")
        chosen, _ = QFileDialog.getSaveFileName(self, tr("Write the week"), proposed, form)
        if not chosen:
            return
        to = Path(chosen)
        to = to if to.suffix else to.with_suffix(".xlsx")
        self._folder = to.parent
        week, record, kinds = self._week, self._desk.record, self._kinds()

        def work() -> Generator[Step, None, WeekFigures]:
            return write_week(record, week, to, self._names, kinds)

        self._write.setEnabled(False)
        self._written.hide()
        self._told.setText(tr("Writing {name} …", name=to.name))
        self._bar.setRange(0, 0)
        self._bar.show()
        self._stop.show()
        errand = self._desk.errands.run(
            tr("Write {week}", week=week), work, partial(self._wrote, to)
        )
        self._writing = errand
        errand.stepped.connect(self._step)
        errand.failed.connect(self._not_written)

    @Slot()
    def _stop_now(self) -> None:
        if self._writing is not None:
            self._writing.stop()

    @Slot(object)
    def _step(self, step: Step) -> None:
        self._bar.setRange(0, step.of)
        self._bar.setValue(step.done)
        self._told.setText(f"{step.words} …")

    def _wrote(self, to: Path, figures: WeekFigures) -> None:
        self._over()
        self._wrote_words = tr("Wrote {week} to {file}.", week=figures.week, file=to)
        self._told.setText(self._wrote_words)
        self._written.offer(to)

    @Slot(object)
    def _not_written(self, trouble: object) -> None:
        self._over()
        if isinstance(trouble, ShopTrouble):
            self._told.setText(trouble.sentence())
        else:
            self._told.setText(
                tr("Stopped; nothing was written.")
                if trouble is None
                else tr("It was not written.")
            )

    def _over(self) -> None:
        self._writing = None
        self._write.setEnabled(True)
        self._bar.hide()
        self._stop.hide()
