"""A return side by side: what was heard, found and done then, and what is there now."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.screen.photo_strip import PhotoStrip
from desktop_app.returns_watched.job_then import JobThen
from desktop_app.returns_watched.told_now import ToldNow
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label

_NAME, _THEN, _NOW, _NAME_AGAIN = range(4)  # the last is there where now stands below then
_BELOW = 100  # rows of the grid from a line of then to that of now, where it stands below


class ThenAndNow(QWidget):
    """Two columns with the same lines and the photos of the parts; a button opens each job.

    Where the letters leave no room for both, now stands below then, with the lines named again.
    """

    job_chosen = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(16)
        self._grid.setVerticalSpacing(4)
        self._below = False
        self._placed: dict[QWidget, tuple[int, int]] = {}  # row and column where both have room
        self._stretch()
        self._then = QPushButton(tr("Then"))
        self._now = QPushButton(tr("Now"))
        self._strips: dict[int, PhotoStrip] = {}
        self._labels: dict[tuple[int, int], QLabel] = {}
        for column, button in enumerate((self._then, self._now), 1):
            self._place(button, 0, column)
            button.clicked.connect(self._open)

    def show_jobs(self, then: JobThen, now: JobThen) -> None:
        """Show the two jobs of a return."""
        for button, head, job in ((self._then, tr("Then"), then), (self._now, tr("Now"), now)):
            self._head(button, head, job)
        row = 0
        for row, ((name, was), (_, is_now)) in enumerate(
            zip(then.lines(), now.lines(), strict=True), 1
        ):
            self._put(row, name, was, is_now)
        for column, head, job in ((1, tr("Then"), then), (2, tr("Now"), now)):
            self._show_photos(row + 1, column, head, job)

    def show_told(self, then: JobThen, now: ToldNow) -> None:
        """Show the earlier job beside what was told; there is no later job."""
        self._head(self._then, tr("Then"), then)
        self._now.setText(tr("Now: {number}", number=now.number))
        self._now.setAccessibleName(tr("{number}: there is no later job", number=now.number))
        off_because(
            self._now,
            tr("It was only heard of: the car was not here, and so there is no later job."),
        )
        told, row = dict(now.lines()), 0
        for row, (name, was) in enumerate(then.lines(), 1):
            self._put(row, name, was, told.get(name, ""))
        self._show_photos(row + 1, 1, tr("Then"), then)
        if 2 in self._strips:
            self._strips[2].hide()

    def minimumSizeHint(self) -> QSize:
        """Say what it needs at least: one column, and the names of the lines."""
        return QSize(self._least(columns=1), super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def event(self, event: QEvent) -> bool:
        done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:  # other words, or larger ones
            self._fit()
        return done

    def _fit(self) -> None:
        below = self.width() < self._least(columns=2)
        if below == self._below:
            return
        self._below = below
        self._stretch()
        for widget, (row, column) in self._placed.items():
            self._grid.removeWidget(widget)
            self._put_down(widget, row, column)

    def _least(self, columns: int) -> int:
        """Return the least width with so many columns beside the names of the lines."""
        names, widest = 0, 0
        for widget, (_, column) in self._placed.items():
            wide = widget.minimumSizeHint().width()
            if column in (_NAME, _NAME_AGAIN):
                names = max(names, wide)
            else:
                widest = max(widest, wide)
        return names + columns * (widest + self._grid.horizontalSpacing())

    def _stretch(self) -> None:
        for column, stretch in enumerate((0, 1, 0 if self._below else 1)):
            self._grid.setColumnStretch(column, stretch)

    def _place(self, widget: QWidget, row: int, column: int) -> None:
        self._placed[widget] = row, column
        self._put_down(widget, row, column)

    def _put_down(self, widget: QWidget, row: int, column: int) -> None:
        if column == _NAME_AGAIN:
            widget.setVisible(self._below)
        if self._below and column in (_NOW, _NAME_AGAIN):
            row, column = row + _BELOW, _THEN if column == _NOW else _NAME
        top = Qt.AlignmentFlag.AlignTop if isinstance(widget, QLabel) else Qt.AlignmentFlag(0)
        self._grid.addWidget(widget, row, column, top)

    def _head(self, button: QPushButton, head: str, job: JobThen) -> None:
        button.setText(f"{head}: {job.number}")
        named = tr("Open {number}, {then_or_now}", number=job.number, then_or_now=head.lower())
        button.setAccessibleName(named)
        button.setProperty("job", job.job_id)
        off_because(button, "")

    def _put(self, row: int, *words: str) -> None:
        for column, one in enumerate((*words, words[_NAME])):
            label = self._labels.get((row, column))
            if label is None:
                names = column in (_NAME, _NAME_AGAIN)
                label = plain_label("", "quiet" if names else "", wrap=not names)
                self._labels[row, column] = label
                self._place(label, row, column)
            label.setText(one)

    def _show_photos(self, row: int, column: int, head: str, job: JobThen) -> None:
        """Show the photos of the parts; the strip is made with the first one that there is."""
        strip = self._strips.get(column)
        if strip is None and job.photos:
            strip = self._strips[column] = PhotoStrip(
                self._desk, tr("Photos of the parts, {then_or_now}", then_or_now=head.lower())
            )
            self._place(strip, row, column)
            strip.opened.connect(self._open_from_photo)
        if strip is not None:
            strip.setProperty("job", job.job_id)
            strip.show_photos(job.photos)
            strip.setVisible(bool(job.photos))

    @Slot(object)
    def _open_from_photo(self, _photo: int) -> None:
        self.job_chosen.emit(int(self.sender().property("job")))

    @Slot()
    def _open(self) -> None:
        job = self.sender().property("job")
        if job is not None:
            self.job_chosen.emit(int(job))
