"""The bench sum for crossed leads: from a photo of the cap, or from what is dead and bangs."""

from __future__ import annotations

from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum, listed
from desktop_app.parts_compared.bench_sums.firing_order import FiringOrder, is_firing_order
from desktop_app.parts_compared.bench_sums.lead_swap import (
    EXHAUST,
    INTAKE,
    LeadSwap,
    every_swap,
    explaining_swaps,
    is_read_backwards,
    misplaced,
    turned_towers,
)
from desktop_app.parts_compared.bench_sums.sum_field import SumField
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import IGNITION_CAUTION, SumOffered

NAME = "Crossed leads"
LIMIT = (
    "Looks at swaps of two leads on one distributor, timing and valves in order. Several swaps "
    "can look alike, and so can another fault: follow each lead from tower to plug."
)
NO_BANG = "none heard or not known"


def _worked(filled: Filled) -> BenchSum:
    cylinders = filled.wholes("firing_order")
    if not is_firing_order(cylinders):
        raise filled.trouble(
            "firing_order",
            "it doesn't name each cylinder once.",
            "Accepted: the numbers from 1 up, each once, like 1-3-4-2.",
        )
    order, found, dead = FiringOrder(cylinders), filled.wholes("found"), filled.wholes("dead")
    if found and sorted(found) != sorted(cylinders):
        raise filled.trouble(
            "found",
            "it doesn't name each lead once.",
            f"Accepted: the {len(cylinders)} numbers, each once.",
        )
    if not set(dead) <= set(cylinders):
        raise filled.trouble(
            "dead",
            "a cylinder isn't in the firing order.",
            "Accepted: numbers of the firing order.",
        )
    bang = filled.choice("bang")
    if not found and not dead and bang == NO_BANG:
        raise filled.trouble(
            "dead",
            "neither the leads as found nor a sign is entered.",
            "Accepted: the leads at the towers, or the dead cylinders.",
        )
    count, sentence = (
        _from_leads(order, found)
        if found
        else _from_signs(order, dead, "" if bang == NO_BANG else bang)
    )
    return BenchSum(NAME, count, "n", None, sentence, LIMIT, filled.inputs())


def _from_leads(order: FiringOrder, found: tuple[int, ...]) -> tuple[int, str]:
    wrong = misplaced(order, found)
    if not wrong:
        return 0, "Every lead stands on its tower."
    said = []
    if len(wrong) == 2:
        said.append(f"The leads of {listed(wrong)} are crossed.")
    if is_read_backwards(order, found):
        said.append("The order is right but runs backwards: was it read against the rotor's turn?")
    steps = turned_towers(order, found)
    if steps:
        said.append(f"All leads stand {steps} tower{'s' * (steps > 1)} on, in the right order.")
    if not said:
        said.append(f"The leads of {listed(wrong)} stand on other towers: more than one swap.")
    return int(len(wrong) == 2), " Or: ".join(said)


def _from_signs(order: FiringOrder, dead: tuple[int, ...], bang: str) -> tuple[int, str]:
    swaps = explaining_swaps(order, dead, bang)
    signs = f"cylinder{'s' * (len(dead) > 1)} {listed(dead)} dead" if dead else ""
    signs += (" and " if signs else "") + f"a bang {bang}" if bang else ""
    total = len(every_swap(order))
    if not swaps:
        return 0, f"None of the {total} swaps of two leads explains {signs}: look elsewhere."
    if len(swaps) == 1:
        return 1, f"One swap of {total} explains {signs}: {_swap(swaps[0])}."
    which = "; ".join(_swap(swap) for swap in swaps[:6])
    more = f"; and {len(swaps) - 6} more" if len(swaps) > 6 else ""
    return len(swaps), f"{len(swaps)} swaps of {total} explain {signs}: {which}{more}."


def _swap(swap: LeadSwap) -> str:
    late = f"{swap.first_late:.0f}° and {swap.second_late:.0f}°"
    return f"{swap.first} with {swap.second} (sparks {late} of crank late)"


OFFERED = SumOffered(
    id="crossed-leads",
    name=NAME,
    about="Which two leads are crossed, from the cap as found or from the dead cylinders.",
    kinds=("distributor-rotor", "distributor-cap", "plug-wire"),
    fields=(
        SumField("firing_order", "firing order", "", "wholes", least=1, most=16,
                 help="From the vehicle maker, like 1-3-4-2."),
        SumField("found", "leads as found", "", "wholes", optional=True, least=1, most=16,
                 help="In the rotor's turning direction, beginning at the tower that should carry "
                 "the first of the firing order. May stay empty."),
        SumField("dead", "dead cylinders", "", "wholes", optional=True, least=1, most=16,
                 help="Those that don't pull. May stay empty."),
        SumField("bang", "it bangs", "", "choice", default=NO_BANG,
                 choices=(NO_BANG, INTAKE, EXHAUST)),
    ),
    work=_worked,
    caution=IGNITION_CAUTION,
)  # fmt: skip
