"""The run of a belt around two pulleys, and what a longer or shorter belt does to it."""

from __future__ import annotations

import math

from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, doubt_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import BELT_CAUTION, SumOffered
from desktop_app.parts_compared.shown_value import amount, doubt

NAME = "Belt run around two pulleys"
LIMIT = (
    "Holds for two pulleys, belt not crossed, diameters where the belt runs. Runs over more "
    "pulleys need every centre: there the tensioner's own marks decide."
)


def open_run(large: float, small: float, centres: float) -> float:
    """Return the length in mm around two pulleys of these diameters, uncrossed.

    Two tangents and the two arcs they leave, from plane geometry. Raises ValueError where the
    pulleys would overlap.
    """
    if centres < (large + small) / 2:
        raise ValueError("the pulleys overlap")
    half = (large - small) / 2
    straight = 2 * math.sqrt(centres**2 - half**2)
    return straight + math.pi * (large + small) / 2 + 2 * half * math.asin(half / centres)


def centres_for(length: float, large: float, small: float) -> float:
    """Return the distance of centres in mm for a belt length; ValueError where it is too short."""
    low = (large + small) / 2
    if length < open_run(large, small, low):
        raise ValueError("the belt is too short for these pulleys")
    high = low + length
    for _ in range(200):
        middle = (low + high) / 2
        low, high = (middle, high) if open_run(large, small, middle) < length else (low, middle)
    return (low + high) / 2


def _worked(filled: Filled) -> BenchSum:
    sizes = sorted((filled.number("one_pulley"), filled.number("other_pulley")))
    small, large = sizes
    centres = filled.number("centres")
    if centres < (large + small) / 2:
        raise filled.trouble(
            "centres",
            "the pulleys would overlap.",
            f"Accepted: at least {(large + small) / 2:g} mm.",
        )
    run = open_run(large, small, centres)
    off_centres, off_pulley = filled.doubt("centres_doubt"), filled.doubt("pulley_doubt")
    # A longer way apart costs twice itself, a larger pulley about half its circumference.
    expanded = math.hypot(2 * off_centres, math.pi / 2 * off_pulley, math.pi / 2 * off_pulley)
    sentence = f"The run is {amount(run, 'mm', expanded)} long{doubt(expanded)}."
    belt = filled.maybe("belt")
    if belt is not None:
        sentence += " " + _belt_words(belt, run, expanded, (large, small))
    return BenchSum(NAME, run, "mm", expanded, sentence, LIMIT, filled.inputs())


def _belt_words(belt: float, run: float, expanded: float, pulleys: tuple[float, float]) -> str:
    apart = belt - run
    if abs(apart) <= expanded:
        return f"A belt of {amount(belt, 'mm')} can't be told from that."
    large, small = pulleys
    if belt < open_run(large, small, (large + small) / 2):
        return f"A belt of {amount(belt, 'mm')} doesn't go around these pulleys at all."
    moved = abs(centres_for(belt, large, small) - centres_for(run, large, small))
    side = "longer" if apart > 0 else "shorter"
    return (
        f"A belt of {amount(belt, 'mm')} is {amount(abs(apart), 'mm', expanded)} {side}: the "
        f"pulleys stand {amount(moved, 'mm', expanded / 2)} {'farther' if apart > 0 else 'nearer'}."
    )


OFFERED = SumOffered(
    id="belt-run",
    name=NAME,
    about="The belt length that two pulleys ask for.",
    kinds=("serpentine-belt", "alternator", "tensioner-idler", "water-pump"),
    fields=(
        SumField("one_pulley", "one pulley's diameter", "mm", above=0.0,
                 help="Where the belt runs."),
        SumField("other_pulley", "the other pulley's diameter", "mm", above=0.0,
                 help="Where the belt runs."),
        SumField("centres", "centres apart", "mm", above=0.0, help="Middle of shaft to middle."),
        SumField("belt", "length of the belt to hold against", "mm", optional=True, above=0.0,
                 help="As marked or measured; may stay empty."),
        doubt_field("centres_doubt", "the centres may be off by, ±", "mm", "steel rule"),
        doubt_field("pulley_doubt", "one diameter may be off by, ±", "mm", "calliper"),
    ),
    work=_worked,
    caution=BELT_CAUTION,
)  # fmt: skip
