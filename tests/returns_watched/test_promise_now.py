"""Whether a promise still runs when the car stands at the counter: days, distance, or unknown."""

from __future__ import annotations

import pytest

from desktop_app.returns_watched.promise_now import DrivenSince, PromiseNow, promise_now
from desktop_app.returns_watched.window import Window

FIRST, BOTH = Window(90, 3000), Window(90, 3000, "both")
DAYS, MILES = Window(90, 0), Window(0, 3000)
RUNS, BY_DAYS, NOT_KNOWN, OVER_BY_DAYS, OVER_BY_DISTANCE = PromiseNow
UNREAD = DrivenSince()


def read(miles: float) -> DrivenSince:
    return DrivenSince(miles, until_now=True)


@pytest.mark.parametrize(
    ("window", "days", "driven", "said"),
    [
        (FIRST, 40, UNREAD, BY_DAYS),
        (FIRST, 40, read(1200), RUNS),
        (FIRST, 90, read(3000), RUNS),
        (FIRST, 40, read(4488), OVER_BY_DISTANCE),
        (FIRST, 91, read(1200), OVER_BY_DAYS),
        (FIRST, 91, UNREAD, OVER_BY_DAYS),
        (BOTH, 40, UNREAD, RUNS),
        (BOTH, 40, read(4488), RUNS),
        (BOTH, 91, read(1200), RUNS),
        (BOTH, 91, UNREAD, NOT_KNOWN),
        (BOTH, 91, read(4488), OVER_BY_DAYS),
        (BOTH, 400, read(3001), OVER_BY_DISTANCE),
        (DAYS, 40, UNREAD, RUNS),
        (DAYS, 40, read(4488), RUNS),
        (DAYS, 91, read(10), OVER_BY_DAYS),
        (MILES, 400, UNREAD, NOT_KNOWN),
        (MILES, 400, read(1200), RUNS),
        (MILES, 2, read(4488), OVER_BY_DISTANCE),
        # Read at a visit in between: that much was driven at least.
        (FIRST, 40, DrivenSince(1200), BY_DAYS),
        (FIRST, 40, DrivenSince(4488), OVER_BY_DISTANCE),
        (MILES, 400, DrivenSince(1200), NOT_KNOWN),
    ],
)
def test_what_can_be_said_of_a_promise(
    window: Window, days: int, driven: DrivenSince, said: PromiseNow
) -> None:
    assert promise_now(window, days, driven) is said
