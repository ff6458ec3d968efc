"""What a job is: a repair unless somebody says that it is an inspection or maintenance."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.who_actions import choose_work
from desktop_app.repair_jobs.who_did_what import WORK_WORDS, Work
from desktop_app.shop_record.written_meanwhile import Shown
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.texts import tooltip

KIND_OF_WORK = tr("Kind of work")


class KindOfWorkField(KeptChoiceField):
    """Saves the kind of work itself."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, KIND_OF_WORK, [*WORK_WORDS.items()], self._say)
        self._job: JobView | None = None
        self.setToolTip(
            tooltip(
                tr("Inspections and maintenance are in no comeback rate; their car is watched too")
            )
        )

    def show_job(self, job: JobView) -> None:
        """Show what kind of work a job is."""
        self._job = job
        self.show_value(job.work, job.id)

    def _say(self, work: Work | None) -> object:
        if self._job is None:
            return None
        return self._desk.do(choose_work, self._job.id, work, shown=Shown(self._job.work))
