"""The air gap between rotor tip and cap terminal, before and after, and how it changed."""

from __future__ import annotations

import math
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, doubt_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import IGNITION_CAUTION, SumOffered
from desktop_app.parts_compared.shown_value import amount, doubt

NAME = tr("Rotor gap and its change")
LIMIT = tr(
    "No one gap is good on every engine: the vehicle maker's figure decides. The gap "
    "itself is vague, its change is not, because terminal, play and seat are the same "
    "for both rotors."
)


@dataclass(frozen=True, slots=True)
class GapWobble:
    """How far each thing may move or miss the gap, each +- mm; the tool once for each radius."""

    shaft: float
    bend: float
    seat: float
    terminal_reading: float
    tip_reading: float

    def terms(self) -> tuple[float, ...]:
        """Return all terms."""
        return (self.shaft, self.bend, self.seat, self.terminal_reading, self.tip_reading)

    def worst(self) -> float:
        """Return the wobble if everything adds up, +- mm."""
        return math.fsum(self.terms())

    def usual(self) -> float:
        """Return the root of the summed squares, +- mm (JCGM 100:2008, 5.1.2)."""
        return math.hypot(*self.terms())


def shaft_wobble(play: float, lever: float) -> float:
    """Return +- mm at the tip from the shaft's whole side play at its bushing.

    `lever` is tip height over bushing height, seen from the lower bearing.
    """
    return play * lever / 2


def _worked(filled: Filled) -> BenchSum:
    terminal = filled.number("terminal_radius")
    before = terminal - filled.number("old_tip_radius")
    after = terminal - filled.number("new_tip_radius")
    off = filled.doubt("reading_doubt")
    shaft = shaft_wobble(filled.number("shaft_play"), filled.number("lever"))
    wobble = GapWobble(shaft, filled.number("bend"), filled.number("cap_seat"), off, off)
    expanded = filled.doubt_of_difference("reading_doubt")
    sentence = _sentence(before, after, wobble, expanded)
    return BenchSum(NAME, after - before, "mm", expanded, sentence, LIMIT, filled.inputs())


def _sentence(before: float, after: float, wobble: GapWobble, expanded: float) -> str:
    usual, worst = wobble.usual(), wobble.worst()
    change = after - before
    by = amount(abs(change), "mm", expanded)
    moved = tr("It is {by} larger", by=by) if change > 0 else tr("It is {by} smaller", by=by)
    if abs(change) <= expanded:
        moved = tr("No change was found")
    return tr(
        "The gap was {before} and is {after} with the new rotor (± {usual} as a "
        "rule, ± {worst} at worst). {moved}{doubt}. {touching}",
        before=amount(before, "mm", usual),
        after=amount(after, "mm", usual),
        usual=amount(usual, "mm", usual),
        worst=amount(worst, "mm", usual),
        moved=moved,
        doubt=doubt(expanded),
        touching=_touching(before, after, worst),
    )


def _touching(before: float, after: float, worst: float) -> str:
    if before <= 0:
        return tr("By these radii the old rotor had no gap, and yet it ran: check the radii.")
    if after <= 0:
        return tr(
            "The new tip would touch the terminal: stop and look, this may be the wrong part."
        )
    if after <= worst:
        return tr(
            "If everything adds up, the new tip can touch the terminal: stop and look, "
            "and measure play and seat before it is turned."
        )
    return tr("With what was entered, the new tip doesn't reach the terminal.")


OFFERED = SumOffered(
    id="rotor-gap",
    name=NAME,
    about=tr("How far the spark jumps inside the cap, old rotor against new."),
    kinds=("distributor-rotor", "distributor-cap"),
    fields=(
        SumField("terminal_radius", tr("terminal radius in the cap"), "mm", above=0.0,
                 help=tr("From the shaft's axis to the face of the terminal.")),
        SumField("old_tip_radius", tr("tip radius, old rotor"), "mm", above=0.0,
                 help=tr("From the shaft's axis to the tip.")),
        SumField("new_tip_radius", tr("tip radius, new rotor"), "mm", above=0.0,
                 help=tr("From the shaft's axis to the tip.")),
        SumField("shaft_play", tr("side play of the shaft"), "mm", default="0.10", least=0.0,
                 help=tr("Whole travel at the upper bushing, with a dial indicator.")),
        SumField("lever", tr("lever of that play at the tip"), "", default="1.6", least=0.0,
                 help=tr("Height of the tip over height of the bushing, from the lower bearing.")),
        SumField("bend", tr("shaft run-out, ±"), "mm", default="0.03", least=0.0,
                 help=tr("Half of what the indicator swings.")),
        SumField("cap_seat", tr("how far the cap may sit off centre, ±"), "mm", default="0.10",
                 least=0.0, help=tr("Half of what the cap can be pushed on its rim.")),
        doubt_field("reading_doubt", tr("one radius reading may be off by, ±"), "mm", "calliper"),
    ),
    work=_worked,
    caution=IGNITION_CAUTION,
)  # fmt: skip
