"""Two ignition leads crossed: at which stroke each cylinder then gets the other's spark."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from itertools import combinations

from desktop_app.language import marked
from desktop_app.parts_compared.bench_sums.firing_order import FiringOrder

INTAKE, EXHAUST = marked("through the intake"), marked("in the exhaust")


@dataclass(frozen=True, slots=True)
class LeadSwap:
    """Two cylinders whose leads are crossed, and how many crank degrees late each then sparks."""

    first: int
    second: int
    first_late: float
    second_late: float

    def bangs(self) -> frozenset[str]:
        """Return where it may bang: a spark with a valve open, the mixture not yet burnt.

        Strokes in crank degrees after the firing top: burning to 180, exhaust to 360, intake to
        540, compression to 720. Their ends count to the open valve, as valves open early and
        close late (common practice, no source).
        """
        found = set()
        for late in (self.first_late, self.second_late):
            if 180.0 <= late < 360.0:
                found.add(EXHAUST)
            if 360.0 <= late <= 540.0:
                found.add(INTAKE)
        return frozenset(found)

    def explains(self, dead: Collection[int], bang: str) -> bool:
        """Whether the swap explains every dead cylinder, and the bang if one was heard.

        Both crossed cylinders run badly, but one may have gone unnoticed.
        """
        heard = not bang or bang in self.bangs()
        return set(dead) <= {self.first, self.second} and heard


def every_swap(order: FiringOrder) -> list[LeadSwap]:
    """Return every swap of two leads on this firing order."""
    return [
        LeadSwap(one, other, order.angle_between(one, other), order.angle_between(other, one))
        for one, other in combinations(sorted(order.cylinders), 2)
    ]


def explaining_swaps(order: FiringOrder, dead: Collection[int], bang: str = "") -> list[LeadSwap]:
    """Return the swaps that explain it all, those first in which each crossed one is dead."""
    found = [swap for swap in every_swap(order) if swap.explains(dead, bang)]
    both = [swap for swap in found if {swap.first, swap.second} == set(dead)]
    return both or found


def misplaced(order: FiringOrder, found: Sequence[int]) -> tuple[int, ...]:
    """Return the cylinders whose leads stand on another's tower.

    `found` lists the leads in the rotor's turning direction, from the tower of the order's first.
    """
    right = order.cylinders
    return tuple(sorted(lead for tower, lead in zip(right, found, strict=True) if tower != lead))


def turned_towers(order: FiringOrder, found: Sequence[int]) -> int:
    """Return by how many towers all leads are moved on together; 0 where that isn't it."""
    right = order.cylinders
    for steps in range(1, len(right)):
        if tuple(found) == right[-steps:] + right[:-steps]:
            return steps
    return 0


def is_read_backwards(order: FiringOrder, found: Sequence[int]) -> bool:
    """Whether the list is right but read against the rotor's direction."""
    right = order.cylinders
    return tuple(found) == right[:1] + right[:0:-1]
