"""What the visits of a car, and what was told, say of a job: back, to be judged, not ours."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from desktop_app.returns_watched.judgement import Judgement, counts_against, return_cause
from desktop_app.returns_watched.returns_list import ReturnRow


class MetBy(NamedTuple):
    """The first return of each sort that a job met, seen or told; None where there is none.

    `back` is a comeback, `waits` is to be judged, `aside` came for a cause that is not ours, of
    `unsure` a person said that nobody can tell: all inside the window. `later` has a reason or was
    judged a comeback, and came after the window.
    """

    back: ReturnRow | None = None
    waits: ReturnRow | None = None
    aside: ReturnRow | None = None
    unsure: ReturnRow | None = None
    later: ReturnRow | None = None


NOBODY = MetBy()


def met_by(rows: Sequence[ReturnRow]) -> MetBy:
    """Return what a job met by its returns, in whatever order these are."""
    if not rows:
        return NOBODY
    by_days = sorted(rows, key=_when)
    return MetBy(
        next((one for one in by_days if one.is_comeback), None),
        next((one for one in by_days if one.waits), None),
        next((one for one in by_days if one.in_window and is_aside(one)), None),
        next((one for one in by_days if one.in_window and is_unsure(one)), None),
        next((one for one in by_days if _came_later(one)), None),
    )


def _when(row: ReturnRow) -> tuple[int, bool, int, str]:
    """Return the days to a return; within a day what the clock knows of goes by its time."""
    return (row.candidate.days, row.arrival is None, row.arrival or 0, row.later)


def is_aside(row: ReturnRow) -> bool:
    """True where it was judged, as whatever, by a cause that is not ours: in no rate."""
    cause = return_cause(row.cause_class or "")
    return row.judgement is not None and cause is not None and not cause.ours


def is_unsure(row: ReturnRow) -> bool:
    """True where a person judged that nobody can tell, and named no cause that is not ours."""
    return row.judgement is Judgement.CANNOT_TELL and not is_aside(row)


def _came_later(row: ReturnRow) -> bool:
    if row.in_window:
        return False
    return row.is_open or counts_against(row.judgement, row.cause_class)
