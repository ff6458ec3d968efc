"""The gap when the rotor tip stands some degrees beside its terminal at the moment of the spark."""

from __future__ import annotations

import math

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, doubt_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import IGNITION_CAUTION, SumOffered
from desktop_app.parts_compared.shown_value import amount, doubt

NAME = tr("Rotor phase")
LIMIT = tr(
    "Straight-line distance between two edges, from the angle beyond half of both "
    "widths. Advance moves that angle with speed and load, so the worst moment may be "
    "another one."
)


def half_width_angle(width: float, radius: float) -> float:
    """Return half the angle in degrees that a face `width` mm wide covers at `radius` mm."""
    return math.degrees(math.asin(min(1.0, width / 2 / radius)))


def phase_gap(terminal: float, tip: float, beyond: float) -> float:
    """Return the distance in mm from tip to terminal, `beyond` degrees apart (law of cosines)."""
    turned = math.radians(beyond)
    # With the half angle, so that nearly equal radii lose no digits.
    return math.hypot(terminal - tip, 2 * math.sqrt(terminal * tip) * math.sin(turned / 2))


def phase_gap_doubt(
    terminal: float, tip: float, beyond: float, off_mm: float, off_deg: float
) -> float:
    """Return the expanded uncertainty in mm, each input moved to both of its ends in turn.

    Moved by its whole doubt, not by the slope alone: straight opposite the slope is nothing.
    """
    here = phase_gap(terminal, tip, beyond)
    moved = [
        [phase_gap(max(0.0, terminal + sign * off_mm), tip, beyond) for sign in (-1, 1)],
        [phase_gap(terminal, max(0.0, tip + sign * off_mm), beyond) for sign in (-1, 1)],
        [phase_gap(terminal, tip, max(0.0, beyond + sign * off_deg)) for sign in (-1, 1)],
    ]
    return math.hypot(*(max(abs(one - here) for one in ends) for ends in moved))


def _worked(filled: Filled) -> BenchSum:
    terminal, tip = filled.number("terminal_radius"), filled.number("tip_radius")
    angle = abs(filled.number("angle"))
    widths = half_width_angle(filled.number("tip_width"), tip) + half_width_angle(
        filled.number("terminal_width"), terminal
    )
    beyond = max(0.0, angle - widths)
    off_mm, off_deg = filled.doubt("reading_doubt"), filled.doubt("angle_doubt")
    straight, gap = abs(terminal - tip), phase_gap(terminal, tip, beyond)
    expanded = phase_gap_doubt(terminal, tip, beyond, off_mm, off_deg)
    where = tr(
        "{angle} off, {beyond} beyond the two faces,",
        angle=amount(angle, "deg"),
        beyond=amount(beyond, "deg", 0.2),
    )
    if beyond == 0:
        where = tr("{angle} off, the tip still faces its terminal:", angle=amount(angle, "deg"))
    sentence = tr(
        "{where} the spark jumps {gap}{doubt}; straight opposite it would be {straight}.",
        where=where,
        gap=amount(gap, "mm", expanded),
        doubt=doubt(expanded),
        straight=amount(straight, "mm", off_mm),
    )
    if gap - straight > expanded:
        sentence += tr(" The turn costs more gap than can be put down to the readings.")
    return BenchSum(NAME, gap, "mm", expanded, sentence, LIMIT, filled.inputs())


OFFERED = SumOffered(
    id="rotor-phase",
    name=NAME,
    about=tr("What a rotor or distributor turned by a few degrees does to the gap."),
    kinds=("distributor-rotor", "distributor-cap"),
    fields=(
        SumField("terminal_radius", tr("terminal radius in the cap"), "mm", above=0.0,
                 help=tr("From the shaft's axis to the face of the terminal.")),
        SumField("tip_radius", tr("tip radius of the rotor"), "mm", above=0.0,
                 help=tr("From the shaft's axis to the tip.")),
        SumField("angle", tr("tip off the terminal's middle by"), "deg", least=-90.0, most=90.0,
                 help=tr("At the moment of the spark, middle to middle.")),
        SumField("tip_width", tr("width of the tip face"), "mm", default="0", least=0.0,
                 help=tr("0 takes the tip as a point: the gap then comes out large.")),
        SumField("terminal_width", tr("width of the terminal face"), "mm", default="0", least=0.0,
                 help=tr("0 takes the terminal as a point.")),
        doubt_field("reading_doubt", tr("one radius reading may be off by, ±"), "mm", "calliper"),
        doubt_field("angle_doubt", tr("the angle may be off by, ±"), "deg", "protractor"),
    ),
    work=_worked,
    caution=IGNITION_CAUTION,
)  # fmt: skip
