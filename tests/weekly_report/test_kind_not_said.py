"""A part whose kind nobody said is of no kind: jobs are not grouped by it."""

from __future__ import annotations

from desktop_app.weekly_report.year_behind import PartFitted
from tests.weekly_report.year_made import done


def test_kinds_that_were_not_said_are_none() -> None:
    unsaid, pads = PartFitted(""), PartFitted("brake-pads")
    assert done("J-1", parts=(unsaid, pads)).part_kinds == ("brake-pads",)
    assert done("J-2", parts=(unsaid,)).part_kinds == ()
