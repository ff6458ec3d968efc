"""What became of the year's counted jobs in another window than the one they left with."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import TYPE_CHECKING

from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, CountedJobs
from desktop_app.returns_watched.judgement import counts_against
from desktop_app.returns_watched.met_by import is_aside, is_unsure
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.window import Window
from desktop_app.weekly_report.year_behind import YearBehind
from desktop_app.weekly_report.year_columns import year_columns

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days = NDArray[np.int64]


def jobs_in_window(year: YearBehind, window: Window) -> CountedJobs:
    """Return the counted jobs with all that is known of them inside a window that time ends.

    When the car went out of sight counts as in each job's own window, and what came or was told
    after a sale that ends windows counts in none.
    """
    import numpy as np

    places = {job.number: place for place, job in enumerate(year.counted)}
    first = {name: np.full(len(places), NEVER) for name in ("back", "waits", "aside", "unsure")}
    # The latest first, so that the soonest stays.
    for one in sorted(year.returns, key=lambda one: -one.row.candidate.days):
        met, place = one.row.candidate, places.get(one.row.earlier)
        if place is None or met.after_sale:
            continue
        counts = _counts_as(one.row)
        if counts and window.in_window(met.days, met.distance_miles):
            first[counts][place] = met.days
    in_sight = _known(job.in_sight for job in year.counted)
    return replace(
        year_columns(year),
        window_days=np.full(len(places), window.days),
        back_after=first["back"],
        waits_after=first["waits"],
        aside_after=first["aside"],
        unsure_after=first["unsure"],
        lost_after=np.where(in_sight < window.days, in_sight, NEVER),
    )


def _counts_as(row: ReturnRow) -> str:
    if counts_against(row.judgement, row.cause_class):
        return "back"
    if row.is_open:
        return "waits"
    if is_aside(row):
        return "aside"
    return "unsure" if is_unsure(row) else ""


def _known(days: Iterable[int | None]) -> Days:
    import numpy as np

    return np.array([NEVER if day is None else day for day in days], dtype=np.int64)
