"""Who misfires with whom: what the cylinders that stand out have in common."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import listed
from desktop_app.parts_compared.bench_sums.chi_square import chi_square, chi_square_beyond
from desktop_app.parts_compared.bench_sums.firing_order import FiringOrder

#: Fewer than this for each cylinder, and chi-square says nothing (usual rule for it).
FEWEST_EACH = 5
#: An uneven count comes by chance no more often than this.
EVEN = 0.05
#: A cylinder stands out by this many standard deviations of an even share.
STANDS_OUT = 2.0


@dataclass(frozen=True, slots=True)
class EngineMap:
    """How the cylinders hang together; what isn't known stays empty."""

    order: FiringOrder | None = None
    banks: tuple[tuple[int, ...], ...] = ()
    coils: tuple[tuple[int, ...], ...] = ()


@dataclass(frozen=True, slots=True)
class MisfirePattern:
    """Chi-square and its probability, and the cylinders (from 1) above and below the rest."""

    statistic: float
    probability: float
    enough: bool
    above: tuple[int, ...]
    below: tuple[int, ...]


def misfire_pattern(counters: Sequence[int]) -> MisfirePattern:
    """Hold the counters of cylinders 1, 2, 3 ... against even shares (Pearson's chi-square)."""
    total, count = sum(counters), len(counters)
    if total < FEWEST_EACH * count:
        return MisfirePattern(0.0, 1.0, False, (), ())
    statistic = chi_square(counters)
    probability = chi_square_beyond(statistic, count - 1)
    if probability > EVEN:
        return MisfirePattern(statistic, probability, True, (), ())
    share = total / count
    far = STANDS_OUT * math.sqrt(share * (1 - 1 / count))
    above = tuple(i for i, one in enumerate(counters, 1) if one > share + far)
    below = tuple(i for i, one in enumerate(counters, 1) if one < share - far)
    return MisfirePattern(statistic, probability, True, above, below)


def in_common(cylinders: Sequence[int], engine: EngineMap) -> list[str]:
    """Return what these two or more cylinders share, and where that points."""
    wanted, found = set(cylinders), []
    names = listed(tuple(cylinders))
    if any(wanted <= set(coil) for coil in engine.coils):
        found.append(
            tr(
                "{names} hang on one coil: look at that coil, its supply and its leads.",
                names=names,
            )
        )
    if engine.order is not None:
        found += _by_order(cylinders, names, engine.order)
    if any(wanted == set(bank) for bank in engine.banks):
        found.append(
            tr(
                "{names} are one whole bank: look at what the bank shares, air and fuel.",
                names=names,
            )
        )
    elif any(wanted <= set(bank) for bank in engine.banks):
        found.append(tr("{names} lie on one bank.", names=names))
    if len(cylinders) == 2 and _side_by_side(cylinders[0], cylinders[1], engine.banks):
        found.append(
            tr(
                "{names} lie side by side in the block, as far as their numbers tell: a "
                "gasket leak between them shows in compression.",
                names=names,
            )
        )
    return found


def _by_order(cylinders: Sequence[int], names: str, order: FiringOrder) -> list[str]:
    found = []
    if len(cylinders) == 2:
        one, other = cylinders
        companions = order.are_companions(one, other)
        neighbours = order.are_tower_neighbours(one, other)
        if companions:
            found.append(
                tr(
                    "{names} are a companion pair, 360° of crank apart: that points to a "
                    "paired coil where there is one.",
                    names=names,
                )
                if neighbours
                else tr(
                    "{names} are a companion pair, 360° of crank apart: that points to a "
                    "paired coil where there is one, not to tracking in a cap.",
                    names=names,
                )
            )
        if neighbours:
            found.append(
                tr(
                    "{names} stand side by side on a distributor cap: tracking between the "
                    "two towers, or their leads crossed.",
                    names=names,
                )
            )
    elif _is_run(cylinders, order):
        found.append(
            tr("{names} follow each other in the firing order: one side of a cap.", names=names)
        )
    return found


def _is_run(cylinders: Sequence[int], order: FiringOrder) -> bool:
    """Whether the cylinders stand in one unbroken row of towers."""
    pairs = sum(order.are_tower_neighbours(a, b) for a, b in combinations(cylinders, 2))
    return len(cylinders) < len(order.cylinders) and pairs == len(cylinders) - 1


def _side_by_side(one: int, other: int, banks: tuple[tuple[int, ...], ...]) -> bool:
    if not banks:
        return abs(one - other) == 1
    for bank in banks:
        if one in bank and other in bank:
            return abs(bank.index(one) - bank.index(other)) == 1
    return False
