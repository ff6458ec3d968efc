"""What a road test without the fault is worth, when the fault comes only now and then."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, distance_unit_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import ROAD_CAUTION, SumOffered
from desktop_app.repair_jobs.chance_words import percent
from desktop_app.repair_jobs.road_test import CONVINCING, distance_needed, luck_left
from desktop_app.repair_jobs.road_test_words import LIMIT

NAME = tr("Worth of a road test")


def _worked(filled: Filled) -> BenchSum:
    driven, once_in = filled.number("driven"), filled.number("once_in")
    factor, unit = filled.number("factor"), tr(filled.choice("distance_unit"))
    luck = luck_left(driven, once_in)
    low, high = luck_left(driven, once_in / factor), luck_left(driven, once_in * factor)
    needed = distance_needed(once_in)
    sentence = tr(
        "If it came once in {once_in:g} {unit}, {driven:g} {unit} without it happen by "
        "luck in {luck} of cases with nothing repaired",
        once_in=once_in,
        unit=unit,
        driven=driven,
        luck=percent(luck),
    )
    if factor > 1:
        sentence += tr(
            " (from {low} to {high} if the customer is out by {factor:g})",
            low=percent(low),
            high=percent(high),
            factor=factor,
        )
    sentence += (
        tr(". That leaves little to luck.")
        if high <= CONVINCING
        else tr(
            ". About {needed:.0f} {unit} would leave {luck}{what_to_do}",
            needed=needed,
            unit=unit,
            luck=percent(CONVINCING),
            what_to_do=_who_drives(needed, driven),
        )
    )
    return BenchSum(NAME, 100 * luck, "%", None, sentence, LIMIT, filled.inputs())


def _who_drives(needed: float, driven: float) -> str:
    if needed > 4 * max(driven, 1.0):
        return tr(
            ": not to be proven on this drive; agree on a day to ask, and provoke it instead."
        )
    return "."


OFFERED = SumOffered(
    id="road-test-worth",
    name=NAME,
    about=tr("How much luck a quiet drive leaves, and how long it would have to be."),
    kinds=(),
    fields=(
        SumField("once_in", tr("it came about once in"), "", above=0.0,
                 help=tr("Miles or kilometres between two times, as the customer tells it.")),
        SumField("driven", tr("driven without it"), "", least=0.0,
                 help=tr("Distance under the same conditions since the repair.")),
        distance_unit_field(),
        SumField("factor", tr("the customer's word may be out by a factor of"), "", default="2",
                 least=1.0, most=100.0,
                 help=tr("2: half as often or twice as often (common practice, no source).")),
    ),
    work=_worked,
    caution=ROAD_CAUTION,
)  # fmt: skip
