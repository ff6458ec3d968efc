"""Who did one of the four things of a job: a quiet choice that needs no answer."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.language import tr
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.person_field import PersonField
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.repair_jobs.who_actions import say_who
from desktop_app.repair_jobs.who_did_what import TECHNICIANS, Did
from desktop_app.shop_record.written_meanwhile import Shown
from desktop_app.shop_window.desk import Desk

NAMES: Mapping[Did, str] = {
    "wrote up": tr("Written up by"),
    "searched": tr("Searched by"),
    "refitted": tr("Refitted by"),
    "proved": tr("Proved by"),
}

IF_ANOTHER = tr("only if it was not the technician")


class DoneByField(PersonField):
    """The people of the shop; without an answer it was the technician, or nobody said."""

    def __init__(self, desk: Desk, did: Did) -> None:
        super().__init__(desk, NAMES[did], self._say)
        self._did = did
        self._job: JobView | None = None

    def show_job(self, job: JobView) -> None:
        """Show who is named on a job; one who has left the shop stays named."""
        self._job = job
        people = [*(self._desk.ask(people_here) or ())]
        doer = job.named.get(self._did)
        if doer is not None and all(person != doer.id for person, _ in people):
            people.append((doer.id, doer.name))
        nobody = tr("the technician") if self._did in TECHNICIANS else tr("not said")
        self.show_people((None, nobody), people)
        self.show_value(None if doer is None else doer.id, job.id)

    def _say(self, person: int | None) -> object:
        if self._job is None:
            return None
        shown = Shown(self._kept)
        return self._desk.do(say_who, self._job.id, self._did, person, shown=shown)
