"""Closing up on the sheet: the points of the fitted parts' kinds that nobody answered."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.refit_points import refit_points
from desktop_app.parts_compared.sheet_blocks import Block, Heading, Listed
from desktop_app.repair_jobs.hand_over import refit_unanswered
from desktop_app.repair_jobs.job_view import JobView


def refit_file_blocks(job: JobView, fitted: Iterable[PartKind]) -> Iterator[Block]:
    """Yield what has no answer among the points for when the fitted parts go back on."""
    left = refit_unanswered(job, refit_points(fitted))
    if left:
        yield Heading(tr("Before it is closed up"))
        points = tuple(f"⚠ {tr(words)}" if hurts else tr(words) for words, hurts in left)
        yield Listed(tr("No answer was given to"), points, "◌")
