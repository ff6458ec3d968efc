"""A return side by side: what was heard, found and done then, and what is there now."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from desktop_app.returns_watched.stored_then_now import JobThen
from desktop_app.shop_window.texts import plain_label


class ThenAndNow(QWidget):
    """Two columns with the same lines; each has a button that opens its job."""

    job_chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(16)
        self._grid.setVerticalSpacing(4)
        for column, stretch in enumerate((0, 1, 1)):
            self._grid.setColumnStretch(column, stretch)
        self._then = QPushButton("Then")
        self._now = QPushButton("Now")
        self._grid.addWidget(self._then, 0, 1)
        self._grid.addWidget(self._now, 0, 2)
        for button in (self._then, self._now):
            button.clicked.connect(self._open)

    def show_jobs(self, then: JobThen, now: JobThen) -> None:
        """Show the two jobs of a return."""
        for button, head, job in ((self._then, "Then", then), (self._now, "Now", now)):
            button.setText(f"{head}: {job.number}")
            button.setAccessibleName(f"Open {job.number}, {head.lower()}")
            button.setProperty("job", job.job_id)
        self._clear()
        top = Qt.AlignmentFlag.AlignTop
        for row, ((name, was), (_, is_now)) in enumerate(
            zip(then.lines(), now.lines(), strict=True), 1
        ):
            self._grid.addWidget(plain_label(name, "quiet"), row, 0, top)
            self._grid.addWidget(plain_label(was, wrap=True), row, 1, top)
            self._grid.addWidget(plain_label(is_now, wrap=True), row, 2, top)

    def _clear(self) -> None:
        for place in reversed(range(self._grid.count())):
            item = self._grid.itemAt(place)
            widget = item.widget() if item is not None else None
            if widget is not None and widget not in (self._then, self._now):
                self._grid.removeWidget(widget)
                widget.deleteLater()

    @Slot()
    def _open(self) -> None:
        job = self.sender().property("job")
        if job is not None:
            self.job_chosen.emit(int(job))
