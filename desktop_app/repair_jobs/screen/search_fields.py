"""Who searched for the cause, and how many of the job's hours that took."""

from __future__ import annotations

from desktop_app.figures_shown import shown
from desktop_app.language import tr
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.done_by_field import IF_ANOTHER, DoneByField
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.typed_entry import read_hours
from desktop_app.repair_jobs.who_actions import write_search_hours
from desktop_app.repair_jobs.who_did_what import check_search
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField

SEARCH_HOURS = tr("Search hours")


class SearchFields:
    """Two fields that save themselves, `who_box` and `hours_box`; a shop may leave both alone."""

    def __init__(self, desk: Desk) -> None:
        self._job: JobView | None = None
        self._who = DoneByField(desk, "searched")
        self._hours = LineField(SEARCH_HOURS, self._save_hours)
        self.who_box = Labelled(self._who.accessibleName(), self._who, IF_ANOTHER)
        part = tr("spent on finding the cause, of all Hours under Back On; may stay empty")
        self.hours_box = Labelled(SEARCH_HOURS, self._hours, part)
        self._holds = WhichHolds(desk, self.hours_box)

    def show_job(self, job: JobView) -> None:
        """Show who searched on a job, and for how long."""
        if self._job is not None and self._job.id != job.id:
            self._holds.leave()
        self._job = job
        self._who.show_job(job)
        hours = job.search_hours
        text = "" if hours is None else shown(f"{hours:,.2f}".rstrip("0").rstrip("."))
        self._holds.show_kept(hours, text)

    def _save_hours(self, text: str) -> object:
        if self._job is None:
            return None
        try:
            hours = read_hours(text)
            check_search(hours, self._job.hours)
        except ShopTrouble as trouble:
            self.hours_box.refuse(trouble.sentence())
            return None
        self.hours_box.refuse("")
        return self._holds.save(hours, write_search_hours, self._job.id, hours)
