"""The search in the window: its page, the similar jobs beside what is written, and its index."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Slot
from PySide6.QtWidgets import QWidget

from desktop_app.shop_window.desk import Desk
from desktop_app.symptom_search.screen.ask_page import AskPage
from desktop_app.symptom_search.screen.index_errand import IndexErrand
from desktop_app.symptom_search.screen.old_jobs import Kinds, OldJobs, Words
from desktop_app.symptom_search.screen.similar_jobs import SimilarJobs


class SearchPlace(QObject):
    """Makes what the search shows.

    `open_job` is told the job that somebody chose; `to_write_up` goes to where a car is written up.
    """

    def __init__(
        self,
        desk: Desk,
        words: Words,
        kinds: Kinds,
        open_job: Callable[[int], object],
        to_write_up: Callable[[], QWidget],
    ) -> None:
        super().__init__(desk)
        self._desk, self._open_job, self._to_write_up = desk, open_job, to_write_up
        self._old_jobs = OldJobs(desk.record, words, kinds)
        self.index = IndexErrand(desk)

    def page(self) -> AskPage:
        """Return Ask the Old Jobs."""
        page = AskPage(self._desk, self._old_jobs, self.index)
        page.job_chosen.connect(self._open_job)
        page.like_wanted.connect(self._start_like)
        return page

    def similar_jobs(self) -> SimilarJobs:
        """Return what stands beside the words of a concern."""
        similar = SimilarJobs(self._desk, self._old_jobs)
        similar.job_chosen.connect(self._open_job)
        return similar

    @Slot(int)
    def _start_like(self, job_id: int) -> None:
        from desktop_app.repair_jobs.screen.write_up_page import WriteUpPage

        page = self._to_write_up()
        assert isinstance(page, WriteUpPage)
        page.start_like(job_id)
