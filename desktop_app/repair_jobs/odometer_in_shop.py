"""The odometer between a car's way in and its way out: what the drive in the shop says of it."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.distance import DistanceUnit, distance_in_words, from_miles
from desktop_app.repair_jobs.odometer_questions import Proposal

MOST_IN_SHOP = 50  # miles that a road test may have where nobody said; common practice, no source
ROUNDED = 1  # an odometer counts whole ones, on the way in and on the way out


def drive_question(
    came: int | None, left: int | None, driven: float | None, unit: DistanceUnit
) -> str | None:
    """Ask about an odometer out that shows less than was driven on the road test; None if plain.

    All in the vehicle's unit. One below the odometer in is asked about elsewhere.
    """
    if came is None or left is None or not driven or left < came:
        return None
    if left - came >= driven - ROUNDED:
        return None
    far, out = distance_in_words(driven, unit), distance_in_words(left, unit)
    if left == came:
        return tr(
            "{driven} were driven, but the odometer out, {out}, is the same as when it came in. "
            "Is that the reading after the drive?",
            driven=far,
            out=out,
        )
    return tr(
        "{driven} were driven, but the odometer out, {out}, is only {more} more than when it "
        "came in. Is that the reading after the drive?",
        driven=far,
        out=out,
        more=distance_in_words(left - came, unit),
    )


def meant_after_drive(
    left: int, came: int, driven: float | None, unit: DistanceUnit
) -> tuple[Proposal, ...]:
    """Return the readings, one slip of the hand away, that go on from `came` by what was driven.

    At most two, the nearest first; all in the vehicle's unit.
    """
    least, most, expected = 0.0, from_miles(MOST_IN_SHOP, unit), came + (driven or 0)
    if driven:
        least, most = driven / 2, 2 * driven + from_miles(10, unit)
    near = {
        value: why
        for value, why in _one_slip_away(str(left))
        if came + least <= value <= came + most
    }
    best = sorted(near, key=lambda value: (abs(value - expected), value))
    return tuple(Proposal(value, tr(near[value])) for value in best[:2])


def _one_slip_away(digits: str) -> Iterator[tuple[int, str]]:
    for place, digit in enumerate(digits):
        for other in "0123456789":
            if other != digit:
                yield (
                    int(digits[:place] + other + digits[place + 1 :]),
                    marked("one digit is another"),
                )
    for i in range(len(digits) - 1):
        swapped = digits[:i] + digits[i + 1] + digits[i] + digits[i + 2 :]
        if swapped != digits:
            yield int(swapped), marked("two digits swapped")
