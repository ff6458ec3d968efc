"""The bolt circle of three to eight studs from the distance between two neighbours."""

from __future__ import annotations

import math

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, doubt_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import BRAKE_CAUTION, SumOffered
from desktop_app.parts_compared.shown_value import amount, doubt
from desktop_app.parts_compared.uncertainty import mean_and_spread

NAME = tr("Bolt circle")
LIMIT = tr(
    "Holds for studs that stand evenly on one circle. Middle to middle: inner edge of "
    "one to outer edge of the next. A near miss bolts up and runs off centre: count, "
    "measure, compare."
)


def bolt_circle(chord: float, studs: int) -> float:
    """Return the diameter in the chord's unit: a regular polygon's side is d sin(pi/n)."""
    return chord / math.sin(math.pi / studs)


def _worked(filled: Filled) -> BenchSum:
    studs, chords = filled.whole("studs"), filled.numbers("chord")
    chord = mean_and_spread(chords)[0]
    off = math.hypot(filled.doubt_of_mean("chord_doubt", chords), filled.number("stud_place"))
    diameter, expanded = bolt_circle(chord, studs), bolt_circle(off, studs)
    sentence = tr(
        "{studs} studs, {apart} apart, stand on a circle of {diameter}{doubt}.",
        studs=studs,
        apart=amount(chord, "mm", off),
        diameter=amount(diameter, "mm", expanded),
        doubt=doubt(expanded),
    )
    wanted = filled.maybe("wanted")
    if wanted is not None:
        sentence += " " + _against(diameter - wanted, expanded, wanted)
    return BenchSum(NAME, diameter, "mm", expanded, sentence, LIMIT, filled.inputs())


def _against(apart: float, expanded: float, wanted: float) -> str:
    if abs(apart) <= expanded:
        return tr("The readings don't speak against {wanted}.", wanted=amount(wanted, "mm"))
    by, than = amount(abs(apart), "mm", expanded), amount(wanted, "mm")
    if apart > 0:
        return tr("That is {by} larger than {wanted}: not that circle.", by=by, wanted=than)
    return tr("That is {by} smaller than {wanted}: not that circle.", by=by, wanted=than)


OFFERED = SumOffered(
    id="bolt-circle",
    name=NAME,
    about=tr("The circle that can't be measured straight across with an odd number of studs."),
    kinds=("brake-disc", "wheel-bearing-hub", "wheel-stud-nut"),
    fields=(
        SumField("studs", tr("studs or holes"), "", "whole", least=3, most=8, help=tr("Counted.")),
        SumField("chord", tr("neighbours apart, middle to middle"), "mm", "list", above=0.0,
                 help=tr("One or several pairs of neighbours.")),
        SumField("wanted", tr("circle to hold against"), "mm", optional=True, above=0.0,
                 help=tr("From the old part or the maker's data; may stay empty.")),
        SumField("stud_place", tr("studs may stand off their place by, ±"), "mm", default="0.1",
                 least=0.0, help=tr("0.1 is common practice, no source.")),
        doubt_field("chord_doubt", tr("one reading may be off by, ±"), "mm", "calliper"),
    ),
    work=_worked,
    caution=BRAKE_CAUTION,
)  # fmt: skip
