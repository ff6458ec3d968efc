"""How far a pad, shoe or disc still goes, from what it lost over the distance so far."""

from __future__ import annotations

import math
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import (
    SumField,
    distance_unit_field,
    doubt_field,
)
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import BRAKE_CAUTION, SumOffered
from desktop_app.parts_compared.shown_value import amount

NAME = tr("Remaining life of pads and discs")
LIMIT = tr(
    "Holds while the car is driven and braked as before. The thinnest place decides; "
    "the vehicle maker's limit and the law come first, and a brake with a fault isn't "
    "judged by distance."
)
#: Pads of one axle this far apart are asked about, mm (common practice, no source).
UNEVEN = 1.0


@dataclass(frozen=True, slots=True)
class Wear:
    """Thickness when fitted, now and at the limit in mm, and the distance between."""

    first: float
    now: float
    limit: float
    distance: float

    @property
    def rate(self) -> float:
        """Loss in mm for each unit of distance."""
        return (self.first - self.now) / self.distance

    def left(self) -> float:
        """Return the distance to the limit; below zero where it is passed."""
        return (self.now - self.limit) / self.rate

    def left_doubt(self, off: float) -> float:
        """Return the expanded uncertainty of the distance left, each reading +- off mm.

        First-order propagation (JCGM 100:2008, 5.1.2). Today's thickness enters twice: what is
        left and what was lost. The limit is exact.
        """
        lost = self.first - self.now
        by_now = self.distance * (self.first - self.limit) / lost**2
        by_first = self.distance * (self.now - self.limit) / lost**2
        return off * math.hypot(by_now, by_first)


def _worked(filled: Filled) -> BenchSum:
    all_now, unit = filled.numbers("now"), filled.choice("distance_unit")
    wear = Wear(
        filled.number("first"), min(all_now), filled.number("limit"), filled.number("distance")
    )
    off = filled.doubt("reading_doubt")
    if wear.limit >= wear.first:
        raise filled.trouble(
            "limit",
            tr("it is no less than the thickness when fitted."),
            tr("Accepted: the maker's least thickness."),
        )
    if wear.first - wear.now <= math.sqrt(2) * off:
        raise filled.trouble(
            "now",
            tr("the wear so far is no more than the readings may miss."),
            tr("Accepted: less than when fitted. Measure again after more distance."),
        )
    left, expanded = max(0.0, wear.left()), wear.left_doubt(off)
    sentence = tr(
        "{worn} in {distance:g} {unit} is {rate:.2g} mm in 1000 {unit}. {how_far}",
        worn=amount(wear.first - wear.now, "mm", off),
        distance=wear.distance,
        unit=tr(unit),
        rate=1000 * wear.rate,
        how_far=_left_words(wear, off, tr(unit)),
    )
    if max(all_now) - min(all_now) > UNEVEN:
        sentence += tr(
            " The thickest is {by} above the thinnest: look at slides, pins and pistons.",
            by=amount(max(all_now) - min(all_now), "mm", off),
        )
    return BenchSum(NAME, left, unit, expanded, sentence, LIMIT, filled.inputs())


def _left_words(wear: Wear, off: float, unit: str) -> str:
    limit = amount(wear.limit, "mm")
    if wear.now + off <= wear.limit:
        return tr("The thinnest is below the limit of {limit}: it has to be replaced.", limit=limit)
    if wear.now - off <= wear.limit:
        return tr(
            "The thinnest may already be at the limit of {limit}: treat it as worn out.",
            limit=limit,
        )
    left, expanded = wear.left(), wear.left_doubt(off)
    step = 10 if expanded < 1000 else 100
    return tr(
        "At that rate {limit} is reached after about {left} {unit} more (± {off}).",
        limit=limit,
        left=round(left / step) * step,
        unit=unit,
        off=math.ceil(expanded / step) * step,
    )


OFFERED = SumOffered(
    id="pad-life",
    name=NAME,
    about=tr("From the wear so far to the distance at which the maker's limit is reached."),
    kinds=("brake-pads", "brake-disc", "brake-shoes-drum"),
    fields=(
        SumField("first", tr("thickness when fitted"), "mm", above=0.0,
                 help=tr("Measured then, or a new one of the same part number.")),
        SumField("now", tr("thickness now"), "mm", "list", least=0.0,
                 help=tr(
                     "All pads of the axle, inner and outer, parted by a semicolon: the "
                     "thinnest decides."
                 )),
        SumField("limit", tr("least thickness by the maker"), "mm", least=0.0,
                 help=tr("Stamped on the disc or in the vehicle maker's data.")),
        SumField("distance", tr("driven in between"), "", above=0.0, help=tr("From the odometer.")),
        distance_unit_field(),
        doubt_field("reading_doubt", tr("one reading may be off by, ±"), "mm", "calliper"),
    ),
    work=_worked,
    caution=BRAKE_CAUTION,
)  # fmt: skip
