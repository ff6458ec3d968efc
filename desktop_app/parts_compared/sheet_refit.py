"""Closing up on the sheet: the points of the fitted parts' kinds, and what was answered to them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.refit_points import refit_points
from desktop_app.parts_compared.sheet_blocks import Block, Heading, Listed, Words
from desktop_app.repair_jobs.hand_over import refit_unanswered
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_checks import check_words


def refit_file_blocks(job: JobView, fitted: Iterable[PartKind]) -> Iterator[Block]:
    """Yield what was answered to the points for when the fitted parts go back on, and what not."""
    points = refit_points(fitted)
    if not points:
        return
    yield Heading(tr("Before it is closed up"))
    ticked = job.ticked("refit", [words for words, _ in points])
    for outcome, name in (("done", tr("Ticked as done")), ("not needed", tr("Not needed"))):
        said = [check_words(words).rstrip(".") for words, kept in ticked.items() if kept == outcome]
        if said:
            yield Words(f"{'; '.join(said)}.", name, "quiet")
    left = refit_unanswered(job, points)
    if left:
        said = [f"⚠ {tr(words)}" if hurts else tr(words) for words, hurts in left]
        yield Listed(tr("No answer was given to"), tuple(said), "◌")
