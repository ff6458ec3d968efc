"""The bench sum over misfire counters: one cylinder, some that share something, or all."""

from __future__ import annotations

from desktop_app.language import tr
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

NAME = tr("Who misfires with whom")
LIMIT = tr(
    "Holds for counters of one run under one load that count misfires one by one. It "
    "says what the cylinders share, not which part is bad: swap, and see whether the "
    "fault follows."
)


def _worked(filled: Filled) -> BenchSum:
    counters = filled.wholes("counters")
    if not 2 <= len(counters) <= 16:
        raise filled.trouble(
            "counters",
            tr("{count} counters.", count=len(counters)),
            tr("Accepted: one for each of 2 to 16 cylinders."),
        )
    pattern = misfire_pattern(counters)
    sentence = _sentence(pattern, len(counters), _engine(filled, len(counters)))
    return BenchSum(NAME, pattern.probability, "", None, sentence, LIMIT, filled.inputs())


def _engine(filled: Filled, count: int) -> EngineMap:
    order = filled.wholes("firing_order")
    if order and not (is_firing_order(order) and len(order) == count):
        raise filled.trouble(
            "firing_order",
            tr("it doesn't name each counted cylinder once."),
            tr("Accepted: the numbers 1 to {count}, each once.", count=count),
        )
    groups = {}
    for name in ("banks", "coils"):
        groups[name] = filled.groups(name)
        named = [one for group in groups[name] for one in group]
        if len(named) != len(set(named)) or not set(named) <= set(range(1, count + 1)):
            raise filled.trouble(
                name,
                tr("a cylinder is named twice or isn't counted."),
                tr("Accepted: groups of the numbers 1 to {count}.", count=count),
            )
    return EngineMap(FiringOrder(order) if order else None, groups["banks"], groups["coils"])


def _sentence(pattern: MisfirePattern, count: int, engine: EngineMap) -> str:
    if not pattern.enough:
        return tr(
            "Too few to say: count on until there are {fewest} or more in all.",
            fewest=FEWEST_EACH * count,
        )
    said = tr(
        "(chi-square {statistic:.1f}, {chance})",
        statistic=pattern.statistic,
        chance=chance(pattern.probability),
    )
    if not pattern.above and not pattern.below:
        if pattern.probability > 0.05:
            return tr(
                "No difference between the cylinders shows {said}. If it stays so on "
                "counting on, look for what all share, like rotor, coil, coil lead, "
                "supply or mixture.",
                said=said,
            )
        return tr("Uneven {said}, but no cylinder stands out: count on.", said=said)
    if not pattern.above:
        few = listed(pattern.below)
        return tr(
            "All but {few} misfire {said}: look for what the others share and {few} doesn't.",
            few=few,
            said=said,
        )
    if len(pattern.above) == 1:
        one = pattern.above[0]
        return tr(
            "Cylinder {one} stands out {said}: look at what it has alone, like its "
            "plug, lead or coil, injector and compression.",
            one=one,
            said=said,
        )
    shared = in_common(pattern.above, engine)
    if not shared:
        known = engine.order or engine.banks or engine.coils
        missing = "" if known else tr(" Enter the firing order, banks or coils.")
        shared = [tr("Nothing that was entered is common to them.{missing}", missing=missing)]
    return tr(
        "Cylinders {cylinders} stand out {said}. {shared}",
        cylinders=listed(pattern.above),
        said=said,
        shared=" ".join(shared),
    )


OFFERED = SumOffered(
    id="misfire-pattern",
    name=NAME,
    about=tr(
        "From the misfire counters and the firing order to what the cylinders have in "
        "common."
    ),
    kinds=("distributor-rotor", "distributor-cap", "ignition-coil", "plug-wire", "spark-plug",
           "injector"),
    fields=(
        SumField("counters", tr("misfires of cylinder 1, 2, 3 ..."), "", "wholes", least=0,
                 help=tr("From the scan tool, one run, one load: 14/11/9/16.")),
        SumField("firing_order", tr("firing order"), "", "wholes", optional=True, least=1, most=16,
                 help=tr("From the vehicle maker: 1-3-4-2. May stay empty.")),
        SumField("banks", tr("banks"), "", "groups", optional=True,
                 help=tr("In the order along the block: 1 2 3 / 4 5 6. May stay empty.")),
        SumField("coils", tr("cylinders on one coil"), "", "groups", optional=True,
                 help=tr("Paired coils: 1 4 / 2 3. May stay empty.")),
    ),
    work=_worked,
    caution=HOT_CAUTION,
)  # fmt: skip
