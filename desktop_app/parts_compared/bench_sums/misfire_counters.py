"""The bench sum over misfire counters: one cylinder, some that share something, or all."""

from __future__ import annotations

from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum, chance, listed
from desktop_app.parts_compared.bench_sums.firing_order import FiringOrder, is_firing_order
from desktop_app.parts_compared.bench_sums.misfire_pattern import (
    FEWEST_EACH,
    EngineMap,
    MisfirePattern,
    in_common,
    misfire_pattern,
)
from desktop_app.parts_compared.bench_sums.sum_field import SumField
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import HOT_CAUTION, SumOffered

NAME = "Who misfires with whom"
LIMIT = (
    "Holds for counters of one run under one load that count misfires one by one. It says what "
    "the cylinders share, not which part is bad: swap, and see whether the fault follows."
)


def _worked(filled: Filled) -> BenchSum:
    counters = filled.wholes("counters")
    if not 2 <= len(counters) <= 16:
        raise filled.trouble(
            "counters", f"{len(counters)} counters.", "Accepted: one for each of 2 to 16 cylinders."
        )
    pattern = misfire_pattern(counters)
    sentence = _sentence(pattern, len(counters), _engine(filled, len(counters)))
    return BenchSum(NAME, pattern.probability, "", None, sentence, LIMIT, filled.inputs())


def _engine(filled: Filled, count: int) -> EngineMap:
    order = filled.wholes("firing_order")
    if order and not (is_firing_order(order) and len(order) == count):
        raise filled.trouble(
            "firing_order",
            "it doesn't name each counted cylinder once.",
            f"Accepted: the numbers 1 to {count}, each once.",
        )
    groups = {}
    for name in ("banks", "coils"):
        groups[name] = filled.groups(name)
        named = [one for group in groups[name] for one in group]
        if len(named) != len(set(named)) or not set(named) <= set(range(1, count + 1)):
            raise filled.trouble(
                name,
                "a cylinder is named twice or isn't counted.",
                f"Accepted: groups of the numbers 1 to {count}.",
            )
    return EngineMap(FiringOrder(order) if order else None, groups["banks"], groups["coils"])


def _sentence(pattern: MisfirePattern, count: int, engine: EngineMap) -> str:
    if not pattern.enough:
        return f"Too few to say: count on until there are {FEWEST_EACH * count} or more in all."
    said = f"(chi-square {pattern.statistic:.1f}, {chance(pattern.probability)})"
    if not pattern.above and not pattern.below:
        if pattern.probability > 0.05:
            return (
                f"No difference between the cylinders shows {said}. If it stays so on counting "
                "on, look for what all share, like rotor, coil, coil lead, supply or mixture."
            )
        return f"Uneven {said}, but no cylinder stands out: count on."
    if not pattern.above:
        few = listed(pattern.below)
        return f"All but {few} misfire {said}: look for what the others share and {few} doesn't."
    if len(pattern.above) == 1:
        one = pattern.above[0]
        return (
            f"Cylinder {one} stands out {said}: look at what it has alone, like its plug, lead or "
            "coil, injector and compression."
        )
    shared = in_common(pattern.above, engine)
    if not shared:
        known = engine.order or engine.banks or engine.coils
        missing = "" if known else " Enter the firing order, banks or coils."
        shared = [f"Nothing that was entered is common to them.{missing}"]
    return f"Cylinders {listed(pattern.above)} stand out {said}. {' '.join(shared)}"


OFFERED = SumOffered(
    id="misfire-pattern",
    name=NAME,
    about="From the misfire counters and the firing order to what the cylinders have in common.",
    kinds=("distributor-rotor", "distributor-cap", "ignition-coil", "plug-wire", "spark-plug",
           "injector"),
    fields=(
        SumField("counters", "misfires of cylinder 1, 2, 3 ...", "", "wholes", least=0,
                 help="From the scan tool, one run, one load: 14/11/9/16."),
        SumField("firing_order", "firing order", "", "wholes", optional=True, least=1, most=16,
                 help="From the vehicle maker: 1-3-4-2. May stay empty."),
        SumField("banks", "banks", "", "groups", optional=True,
                 help="In the order along the block: 1 2 3 / 4 5 6. May stay empty."),
        SumField("coils", "cylinders on one coil", "", "groups", optional=True,
                 help="Paired coils: 1 4 / 2 3. May stay empty."),
    ),
    work=_worked,
    caution=HOT_CAUTION,
)  # fmt: skip
