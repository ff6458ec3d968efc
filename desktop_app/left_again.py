"""Where the window was left, at the next start: each place is remembered as it is shown."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import ExitStack

from PySide6.QtCore import QObject, Slot

from desktop_app.shop_window import place_names as place
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.left_here import LeftHere
from desktop_app.shop_window.main_window import MainWindow


class LeftAgain(QObject):
    """Remembers the place that is shown, and goes there again."""

    def __init__(self, window: MainWindow, desk: Desk, open_job: Callable[[int], object]) -> None:
        super().__init__(desk)
        self._window, self._desk, self._open_job = window, desk, open_job
        self._left = LeftHere(desk.record.folder)
        window.came_to.connect(self._keep)

    def go_in(self, *, is_new: bool) -> None:
        """Go to the place that was left, or to the first rules of a shop that is new.

        It counts as left again once it is shown: what fails, or never ends, is not tried twice.
        """
        name, jobs = self._left.place(), self._left.jobs()
        self._left.came_to(place.ASK)
        with ExitStack() as where_it_fails:
            where_it_fails.callback(self._window.go_to, place.ASK)
            if is_new:
                self._window.go_to(place.FIRST_RULES)
            elif name == place.JOB and jobs and self._is_there(jobs[0]):
                self._open_job(jobs[0])
            else:
                self._window.go_to(place.ASK if name == place.JOB else name)
            where_it_fails.pop_all()

    def _is_there(self, job: int) -> bool:
        from desktop_app.repair_jobs.stored_reading import are_all_there

        return bool(self._desk.ask(are_all_there, (job,)))

    @Slot(str)
    def _keep(self, name: str) -> None:
        job: int | None = None
        if name == place.JOB:
            from desktop_app.repair_jobs.screen.job_page import JobPage

            page = self._window.page(name)
            assert isinstance(page, JobPage)
            job = page.job_id
        self._left.came_to(name, job)
