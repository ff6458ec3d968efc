"""The place of a job's page: put together of the sections that each folder makes."""

from __future__ import annotations

from collections.abc import Callable, Generator, Mapping, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.shop_window.desk import Desk

if TYPE_CHECKING:
    from desktop_app.parts_compared.part_kinds.part_kind import PartKind
    from desktop_app.repair_jobs.screen.heard_section import HeardSection
    from desktop_app.repair_jobs.screen.job_page import JobPage


class JobPlace(QObject):
    """Makes the page with the kinds as they are then, and asks the record what its head says."""

    judge_wanted = Signal(int, int)  # the earlier job, the later one
    bench_wanted = Signal(int, object, object)  # a pair, its photos

    def __init__(
        self,
        desk: Desk,
        kinds: Callable[[], Mapping[str, PartKind]],
        names: Callable[[], dict[str, str]],
        read_symptoms: Callable[[str], tuple[str, ...]],
        read_conditions: Callable[[str], tuple[str, ...]],
    ) -> None:
        super().__init__(desk)
        self._desk, self._kinds, self._names = desk, kinds, names
        self._read_symptoms, self._read_conditions = read_symptoms, read_conditions

    def page(
        self, similar: QWidget, hear: Callable[..., object]
    ) -> Generator[QWidget, None, JobPage]:
        """Make the page, and hand over each section before it.

        `similar` stands beside what was heard, and `hear` is told of it.
        """
        from desktop_app.parts_compared.screen.old_and_new_section import OldAndNewSection
        from desktop_app.repair_jobs.screen.back_on_section import BackOnSection
        from desktop_app.repair_jobs.screen.found_section import FoundSection
        from desktop_app.repair_jobs.screen.gone_section import GoneSection
        from desktop_app.repair_jobs.screen.job_page import JobPage
        from desktop_app.repair_jobs.screen.proof_section import ProofSection
        from desktop_app.returns_watched.screen.watch_section import WatchSection
        from desktop_app.returns_watched.stored_windows import promise_at_hand_over

        desk, kinds, names = self._desk, self._kinds(), self._names()
        watch = WatchSection(desk, names, kinds)
        watch.judge_wanted.connect(self.judge_wanted)
        yield watch
        old_and_new = OldAndNewSection(desk, kinds)
        yield old_and_new
        heard = self._heard(similar)
        heard.heard.connect(hear)
        yield heard
        gone = GoneSection(desk, self._origins, self._refit, promise_at_hand_over, watch.promised)
        yield gone
        found = FoundSection(desk)
        yield found
        back_on = BackOnSection(desk, self._refit, self._replaced)
        yield back_on
        proof = ProofSection(desk, self._asked_by_parts)
        yield proof
        page = JobPage(
            desk,
            [
                (tr("Heard"), heard),
                (tr("Found"), found),
                (tr("Old & New"), old_and_new),
                (tr("Back On"), back_on),
                (tr("Proof"), proof),
                (tr("Gone"), gone),
                (tr("Under watch"), watch),
            ],
            _head_line,
            self._maybe_back,
        )
        old_and_new.said.connect(page.say_above)
        old_and_new.doubted.connect(gone.show_doubted)
        old_and_new.bench_wanted.connect(self.bench_wanted)
        page.back_wanted.connect(self.judge_wanted)
        gone.answer_wanted.connect(page.go_to_answer)
        gone.sheet_wanted.connect(page.sheet_wanted)
        yield page
        yield from page.lay()
        return page

    def _heard(self, similar: QWidget) -> HeardSection:
        from desktop_app.part_photos.screen.vin_offer import VinOffer
        from desktop_app.repair_jobs.screen.heard_section import HeardSection
        from desktop_app.returns_watched.stored_judged_between import refuse_where_judged

        desk, names = self._desk, self._names()
        return HeardSection(
            desk,
            self._read_symptoms,
            lambda s: names.get(s, s),
            refuse_where_judged,
            similar,
            VinOffer(desk),
            self._read_conditions,
        )

    def _refit(self, job_id: int) -> Sequence[tuple[str, bool]]:
        from desktop_app.parts_compared.stored_refit import refit_checks_for

        return self._desk.ask(refit_checks_for, job_id, self._kinds()) or ()

    def _replaced(self, job_id: int) -> str:
        from desktop_app.parts_compared.stored_refit import replaced_in

        return self._desk.ask(replaced_in, job_id, self._kinds()) or ""

    def _origins(self, job_id: int) -> Sequence[tuple[int, str]]:
        from desktop_app.parts_compared.stored_pairs import open_origins

        kinds = self._kinds()
        open_ones = self._desk.ask(open_origins, job_id) or ()
        return [(pair, kinds[k].name if k in kinds else k) for pair, k in open_ones]

    def _asked_by_parts(self, job_id: int) -> Sequence[str]:
        from desktop_app.parts_compared.stored_proof_asked import proof_asked_by_parts

        return self._desk.ask(proof_asked_by_parts, job_id, self._kinds()) or ()

    def _maybe_back(self, job_id: int) -> list[tuple[int, str]]:
        from desktop_app.returns_watched.stored_returns import read_returns_of_job

        rows = self._desk.ask(read_returns_of_job, job_id, self._names()) or ()
        return [(row.earlier_id, row.earlier) for row in rows if row.waits]


def _head_line(job: JobView) -> str:
    came, left = job.came_on, job.left_on
    if left:
        return tr("came {came_on}, left {left_on}", came_on=came, left_on=left)
    return tr("came {came_on}, in the shop", came_on=came)
