"""The run of a belt around two pulleys, and what a longer or shorter belt does to it."""

from __future__ import annotations

import math

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, doubt_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import BELT_CAUTION, SumOffered
from desktop_app.parts_compared.shown_value import amount, doubt

NAME = tr("Belt run around two pulleys")
LIMIT = tr(
    "Holds for two pulleys, belt not crossed, diameters where the belt runs. Runs over "
    "more pulleys need every centre: there the tensioner's own marks decide."
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
            tr("the pulleys would overlap."),
            tr("Accepted: at least {least:g} mm.", least=(large + small) / 2),
        )
    run = open_run(large, small, centres)
    off_centres, off_pulley = filled.doubt("centres_doubt"), filled.doubt("pulley_doubt")
    # A longer way apart costs twice itself, a larger pulley about half its circumference.
    expanded = math.hypot(2 * off_centres, math.pi / 2 * off_pulley, math.pi / 2 * off_pulley)
    sentence = tr(
        "The run is {length} long{doubt}.",
        length=amount(run, "mm", expanded),
        doubt=doubt(expanded),
    )
    belt = filled.maybe("belt")
    if belt is not None:
        sentence += " " + _belt_words(belt, run, expanded, (large, small))
    return BenchSum(NAME, run, "mm", expanded, sentence, LIMIT, filled.inputs())


def _belt_words(belt: float, run: float, expanded: float, pulleys: tuple[float, float]) -> str:
    apart = belt - run
    if abs(apart) <= expanded:
        return tr("A belt of {length} can't be told from that.", length=amount(belt, "mm"))
    large, small = pulleys
    if belt < open_run(large, small, (large + small) / 2):
        return tr(
            "A belt of {length} doesn't go around these pulleys at all.", length=amount(belt, "mm")
        )
    moved = abs(centres_for(belt, large, small) - centres_for(run, large, small))
    values = {
        "length": amount(belt, "mm"),
        "more": amount(abs(apart), "mm", expanded),
        "moved": amount(moved, "mm", expanded / 2),
    }
    if apart > 0:
        return tr(
            "A belt of {length} is {more} longer: the pulleys stand {moved} farther.", **values
        )
    return tr("A belt of {length} is {more} shorter: the pulleys stand {moved} nearer.", **values)


OFFERED = SumOffered(
    id="belt-run",
    name=NAME,
    about=tr("The belt length that two pulleys ask for."),
    kinds=("serpentine-belt", "alternator", "tensioner-idler", "water-pump"),
    fields=(
        SumField("one_pulley", tr("one pulley's diameter"), "mm", above=0.0,
                 help=tr("Where the belt runs.")),
        SumField("other_pulley", tr("the other pulley's diameter"), "mm", above=0.0,
                 help=tr("Where the belt runs.")),
        SumField("centres", tr("centres apart"), "mm", above=0.0,
                 help=tr("Middle of shaft to middle.")),
        SumField("belt", tr("length of the belt to hold against"), "mm", optional=True, above=0.0,
                 help=tr("As marked or measured; may stay empty.")),
        doubt_field("centres_doubt", tr("the centres may be off by, ±"), "mm", "steel rule"),
        doubt_field("pulley_doubt", tr("one diameter may be off by, ±"), "mm", "calliper"),
    ),
    work=_worked,
    caution=BELT_CAUTION,
)  # fmt: skip
