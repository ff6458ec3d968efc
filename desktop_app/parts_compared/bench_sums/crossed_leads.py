"""The bench sum for crossed leads: from a photo of the cap, or from what is dead and bangs."""

from __future__ import annotations

from desktop_app.language import marked, tr
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

NAME = tr("Crossed leads")
LIMIT = tr(
    "Looks at swaps of two leads on one distributor, timing and valves in order. "
    "Several swaps can look alike, and so can another fault: follow each lead from "
    "tower to plug."
)
NO_BANG = marked("none heard or not known")


def _worked(filled: Filled) -> BenchSum:
    cylinders = filled.wholes("firing_order")
    if not is_firing_order(cylinders):
        raise filled.trouble(
            "firing_order",
            tr("it doesn't name each cylinder once."),
            tr("Accepted: the numbers from 1 up, each once, like 1-3-4-2."),
        )
    order, found, dead = FiringOrder(cylinders), filled.wholes("found"), filled.wholes("dead")
    if found and sorted(found) != sorted(cylinders):
        raise filled.trouble(
            "found",
            tr("it doesn't name each lead once."),
            tr("Accepted: the {count} numbers, each once.", count=len(cylinders)),
        )
    if not set(dead) <= set(cylinders):
        raise filled.trouble(
            "dead",
            tr("a cylinder isn't in the firing order."),
            tr("Accepted: numbers of the firing order."),
        )
    bang = filled.choice("bang")
    if not found and not dead and bang == NO_BANG:
        raise filled.trouble(
            "dead",
            tr("neither the leads as found nor a sign is entered."),
            tr("Accepted: the leads at the towers, or the dead cylinders."),
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
        return 0, tr("Every lead stands on its tower.")
    said = []
    if len(wrong) == 2:
        said.append(tr("The leads of {cylinders} are crossed.", cylinders=listed(wrong)))
    if is_read_backwards(order, found):
        said.append(
            tr("The order is right but runs backwards: was it read against the rotor's turn?")
        )
    steps = turned_towers(order, found)
    if steps:
        said.append(
            tr("All leads stand 1 tower on, in the right order.")
            if steps == 1
            else tr("All leads stand {steps} towers on, in the right order.", steps=steps)
        )
    if not said:
        said.append(
            tr(
                "The leads of {cylinders} stand on other towers: more than one swap.",
                cylinders=listed(wrong),
            )
        )
    return int(len(wrong) == 2), tr(" Or: ").join(said)


def _from_signs(order: FiringOrder, dead: tuple[int, ...], bang: str) -> tuple[int, str]:
    swaps = explaining_swaps(order, dead, bang)
    signs = _signs(dead, bang)
    total = len(every_swap(order))
    if not swaps:
        return 0, tr(
            "None of the {total} swaps of two leads explains {signs}: look elsewhere.",
            total=total,
            signs=signs,
        )
    if len(swaps) == 1:
        return 1, tr(
            "One swap of {total} explains {signs}: {swap}.",
            total=total,
            signs=signs,
            swap=_swap(swaps[0]),
        )
    which = "; ".join(_swap(swap) for swap in swaps[:6])
    more = tr("; and {more} more", more=len(swaps) - 6) if len(swaps) > 6 else ""
    return len(swaps), tr(
        "{swaps} swaps of {total} explain {signs}: {which}{more}.",
        swaps=len(swaps),
        total=total,
        signs=signs,
        which=which,
        more=more,
    )


def _signs(dead: tuple[int, ...], bang: str) -> str:
    said = []
    if dead:
        named = listed(dead)
        said.append(
            tr("cylinder {cylinder} dead", cylinder=named)
            if len(dead) == 1
            else tr("cylinders {cylinders} dead", cylinders=named)
        )
    if bang:
        said.append(tr("a bang {where}", where=tr(bang)))
    return tr(" and ").join(said)


def _swap(swap: LeadSwap) -> str:
    return tr(
        "{first} with {second} (sparks {first_late:.0f}° and {second_late:.0f}° of crank late)",
        first=swap.first,
        second=swap.second,
        first_late=swap.first_late,
        second_late=swap.second_late,
    )


OFFERED = SumOffered(
    id="crossed-leads",
    name=NAME,
    about=tr("Which two leads are crossed, from the cap as found or from the dead cylinders."),
    kinds=("distributor-rotor", "distributor-cap", "plug-wire"),
    fields=(
        SumField("firing_order", tr("firing order"), "", "wholes", least=1, most=16,
                 help=tr("From the vehicle maker, like 1-3-4-2.")),
        SumField("found", tr("leads as found"), "", "wholes", optional=True, least=1, most=16,
                 help=tr(
                     "In the rotor's turning direction, beginning at the tower that should "
                     "carry the first of the firing order. May stay empty."
                 )),
        SumField("dead", tr("dead cylinders"), "", "wholes", optional=True, least=1, most=16,
                 help=tr("Those that don't pull. May stay empty.")),
        SumField("bang", tr("it bangs"), "", "choice", default=NO_BANG,
                 choices=(NO_BANG, INTAKE, EXHAUST)),
    ),
    work=_worked,
    caution=IGNITION_CAUTION,
)  # fmt: skip
