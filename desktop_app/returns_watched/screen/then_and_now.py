"""A return side by side: what was heard, found and done then, and what is there now."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.screen.photo_strip import PhotoStrip
from desktop_app.returns_watched.job_then import JobThen
from desktop_app.returns_watched.told_now import ToldNow
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import plain_label


class ThenAndNow(QWidget):
    """Two columns with the same lines and the photos of the parts; a button opens each job."""

    job_chosen = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(16)
        self._grid.setVerticalSpacing(4)
        for column, stretch in enumerate((0, 1, 1)):
            self._grid.setColumnStretch(column, stretch)
        self._then = QPushButton(tr("Then"))
        self._now = QPushButton(tr("Now"))
        self._strips: dict[int, PhotoStrip] = {}
        self._labels: dict[tuple[int, int], QLabel] = {}
        for column, button in enumerate((self._then, self._now), 1):
            self._grid.addWidget(button, 0, column)
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
        self._now.setEnabled(False)
        told, row = dict(now.lines()), 0
        for row, (name, was) in enumerate(then.lines(), 1):
            self._put(row, name, was, told.get(name, ""))
        self._show_photos(row + 1, 1, tr("Then"), then)
        if 2 in self._strips:
            self._strips[2].hide()

    def _head(self, button: QPushButton, head: str, job: JobThen) -> None:
        button.setText(f"{head}: {job.number}")
        named = tr("Open {number}, {then_or_now}", number=job.number, then_or_now=head.lower())
        button.setAccessibleName(named)
        button.setProperty("job", job.job_id)
        button.setEnabled(True)

    def _put(self, row: int, *words: str) -> None:
        for column, one in enumerate(words):
            label = self._labels.get((row, column))
            if label is None:
                label = plain_label("", "" if column else "quiet", wrap=bool(column))
                self._labels[row, column] = label
                self._grid.addWidget(label, row, column, Qt.AlignmentFlag.AlignTop)
            label.setText(one)

    def _show_photos(self, row: int, column: int, head: str, job: JobThen) -> None:
        """Show the photos of the parts; the strip is made with the first one that there is."""
        strip = self._strips.get(column)
        if strip is None and job.photos:
            strip = self._strips[column] = PhotoStrip(
                self._desk, tr("Photos of the parts, {then_or_now}", then_or_now=head.lower())
            )
            self._grid.addWidget(strip, row, column)
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
