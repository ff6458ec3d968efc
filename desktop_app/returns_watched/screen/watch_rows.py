"""The jobs on watch as rows of a table, what ends first at the top."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.watch_words import (
    STATE_SIGNS,
    ends_in_words,
    left_in_words,
    state_of,
)
from desktop_app.returns_watched.watching import WatchedJob

HEADERS = (tr("Job"), tr("Vehicle"), tr("Probably ends"), tr("Left"), tr("State"))
WIDTHS = (92, 150, 206, 170, 120)
VEHICLE, LEFT, STATE = 1, 3, 4


def watch_words(job: WatchedJob, unit: DistanceUnit) -> Sequence[str]:
    """Return one job on watch, in words under HEADERS; distances in the unit."""
    state = state_of(job)
    return (
        f"{STATE_SIGNS[state]}  {job.job}",
        job.vehicle,
        ends_in_words(job.ends),
        left_in_words(job, unit),
        tr(state),
    )
