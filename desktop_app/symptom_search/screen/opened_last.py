"""The jobs that were opened last on this computer: a row of links, each opens its job again."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QWidget

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.left_here import LeftHere
from desktop_app.shop_window.look import TOUCH
from desktop_app.shop_window.texts import plain_label, tooltip
from desktop_app.symptom_search.found import Hit
from desktop_app.symptom_search.screen.hit_rows import title
from desktop_app.symptom_search.screen.link_button import LinkButton
from desktop_app.symptom_search.screen.old_jobs import OldJobs


class OpenedLast(QWidget):
    """Shows the jobs that are still there; without any it is not seen."""

    job_chosen = Signal(int)

    def __init__(self, desk: Desk, old_jobs: OldJobs, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk, self._old_jobs = desk, old_jobs
        self._left = LeftHere(desk.record.folder)
        self._shown: tuple[Hit, ...] = ()
        self._line = FlowRow(self)
        self.hide()

    def look(self) -> None:
        """Show which jobs were opened last by now."""
        jobs = self._left.jobs()
        try:
            hits = self._old_jobs.behind(jobs) if jobs else ()
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)
            return
        if hits != self._shown:
            self._shown = hits
            self._line.clear()
            label = plain_label(tr("Opened last"), "quiet")
            label.setMinimumHeight(TOUCH)
            for widget in (label, *map(self._link, hits)):
                self._line.addWidget(widget)
            self.updateGeometry()
        self.setVisible(bool(hits))

    def _link(self, hit: Hit) -> LinkButton:
        link = LinkButton(f"{hit.number} {hit.plate}".strip(), title(hit))
        link.setToolTip(tooltip(f"{title(hit)}: {hit.concern}"))
        link.setMinimumHeight(TOUCH)
        link.setProperty("job", hit.job_id)
        link.clicked.connect(self._pressed)
        return link

    @Slot()
    def _pressed(self) -> None:
        self.job_chosen.emit(int(self.sender().property("job")))
