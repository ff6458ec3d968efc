"""Beside the photos: the list of marks, the fields of the chosen one, how it stands with scales."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.screen.bench_mark_damaged import MarkDamaged
from desktop_app.part_photos.screen.bench_mark_details import MarkDetails
from desktop_app.part_photos.screen.bench_marks_list import MarksList
from desktop_app.part_photos.screen.bench_work import BenchWork
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, refused_fields
from desktop_app.shop_window.texts import plain_label

_NARROW, _WIDE = 212, 340  # screen pixels
_DETAILS_AT = 4  # under the heading, the list, and what is said where it is empty or damaged


class SidePanel(QScrollArea):
    """Scrolls where the window is low; the fields of marks not chosen wait with what is typed."""

    def __init__(
        self,
        desk: Desk,
        work: BenchWork,
        readings: BenchReadings | None,
        scales: Iterable[QWidget],
    ) -> None:
        super().__init__()
        self._desk, self._work, self._readings = desk, work, readings
        self._details: dict[int, MarkDetails] = {}
        self.list = MarksList()
        self._empty = plain_label(tr("No mark yet."), "quiet", wrap=True)
        self._damaged = MarkDamaged()
        self._damaged.unwanted.connect(work.remove)
        self._inside = QWidget()
        self._column = QVBoxLayout(self._inside)
        self._column.setContentsMargins(4, 0, 4, 0)
        self._column.addWidget(plain_label(tr("Marks")))
        self._column.addWidget(self.list)
        self._column.addWidget(self._empty)
        self._column.addWidget(self._damaged)
        self._column.addWidget(plain_label(tr("Scale")))
        for line in scales:
            self._column.addWidget(line)
        self._column.addStretch(1)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setMinimumWidth(_NARROW)
        self.setMaximumWidth(_WIDE)
        self.setWidget(self._inside)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep what is inside as narrow as the panel: long words break, nothing is cut off."""
        self._inside.setMaximumWidth(self.viewport().width())
        super().resizeEvent(event)

    def show_marks(self, chosen: int | None) -> None:
        """List the marks, and show the fields of the chosen one."""
        lines = [(mark_id, self._work.line(mark_id)) for mark_id in self._work.listed()]
        self.list.show_marks(lines, chosen)
        self.list.setVisible(bool(lines))
        self._empty.setVisible(not lines)
        self.show_details(chosen)

    def show_details(self, chosen: int | None) -> None:
        """Show the fields of the chosen mark; a damaged one has none."""
        marks = self._work.marks
        self._damaged.show_mark(self._work.damaged.get(chosen) if chosen is not None else None)
        chosen = chosen if chosen in marks else None
        for gone in [one for one in self._details if one not in marks]:
            details = self._details.pop(gone)
            self._tell_typed(details)
            details.hide()
            details.deleteLater()
        if chosen is not None and chosen not in self._details:
            self._details[chosen] = self._made(chosen)
        for mark_id, details in self._details.items():
            details.setVisible(mark_id == chosen)
        if chosen is not None:
            said, as_last = self._work.said_now(chosen), self._work.as_last(chosen)
            self._details[chosen].show_mark(marks[chosen], *said, as_last=as_last)

    def _tell_typed(self, details: QWidget) -> None:
        """Say what was typed for a mark that is gone now, so that it can be written elsewhere."""
        fields = details.findChildren(LineField)
        typed = [f"“{one.text()}”" for one in fields if one.unsaved() and one.text().strip()]
        if typed:
            self._desk.told.emit(
                ShopTrouble(
                    tr(
                        "A mark is gone. Typed for it and not kept: {typed}.",
                        typed=", ".join(typed),
                    ),
                    do=tr("Type it again where it belongs."),
                )
            )

    def go_to_name(self, mark_id: int) -> None:
        """Put the cursor into the name of a mark, where its fields are shown."""
        if mark_id in self._details:
            self._details[mark_id].go_to_name()

    def not_accepted(self) -> int | None:
        """Return a mark of which a field holds something that was not accepted, or None."""
        waiting = (one for one, details in self._details.items() if refused_fields(details))
        return next(waiting, None)

    def _made(self, mark_id: int) -> MarkDetails:
        side = self._work.side_of(mark_id)
        made = MarkDetails(self._desk, self._work.marks[mark_id], side, self._readings)
        made.unwanted.connect(self._work.remove)
        made.snap_wanted.connect(self._work.look_closely)
        made.refused.connect(self._work.read)
        self._column.insertWidget(_DETAILS_AT, made)
        return made
