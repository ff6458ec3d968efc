"""What a road test without the fault is worth, when the fault comes only now and then."""

from __future__ import annotations

from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum, percent
from desktop_app.parts_compared.bench_sums.sum_field import SumField, distance_unit_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import ROAD_CAUTION, SumOffered
from desktop_app.repair_jobs.road_test import CONVINCING, distance_needed, luck_left
from desktop_app.repair_jobs.road_test_words import LIMIT

NAME = "Worth of a road test"


def _worked(filled: Filled) -> BenchSum:
    driven, once_in = filled.number("driven"), filled.number("once_in")
    factor, unit = filled.number("factor"), filled.choice("distance_unit")
    luck = luck_left(driven, once_in)
    low, high = luck_left(driven, once_in / factor), luck_left(driven, once_in * factor)
    needed = distance_needed(once_in)
    sentence = (
        f"If it came once in {once_in:g} {unit}, {driven:g} {unit} without it happen by luck in "
        f"{percent(luck)} of cases with nothing repaired"
    )
    if factor > 1:
        sentence += (
            f" (from {percent(low)} to {percent(high)} if the customer is out by {factor:g})"
        )
    sentence += (
        ". That leaves little to luck."
        if high <= CONVINCING
        else f". About {needed:.0f} {unit} would leave {percent(CONVINCING)}"
        f"{_who_drives(needed, driven)}"
    )
    return BenchSum(NAME, 100 * luck, "%", None, sentence, LIMIT, filled.inputs())


def _who_drives(needed: float, driven: float) -> str:
    if needed > 4 * max(driven, 1.0):
        return ": not to be proven on this drive; agree on a day to ask, and provoke it instead."
    return "."


OFFERED = SumOffered(
    id="road-test-worth",
    name=NAME,
    about="How much luck a quiet drive leaves, and how long it would have to be.",
    kinds=(),
    fields=(
        SumField("once_in", "it came about once in", "", above=0.0,
                 help="Miles or kilometres between two times, as the customer tells it."),
        SumField("driven", "driven without it", "", least=0.0,
                 help="Distance under the same conditions since the repair."),
        distance_unit_field(),
        SumField("factor", "the customer's word may be out by a factor of", "", default="2",
                 least=1.0, most=100.0, help="2: half as often or twice as often "
                 "(common practice, no source)."),
    ),
    work=_worked,
    caution=ROAD_CAUTION,
)  # fmt: skip
