"""A bench sum as it is offered: its name, with which part kinds, what it asks for."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField
from desktop_app.parts_compared.bench_sums.sum_filled import Filled


@dataclass(frozen=True, slots=True)
class SumOffered:
    """One sum. `kinds` are part-kind ids; none means with every kind.

    `caution` is shown beside the form where the work around the sum can hurt someone.
    """

    id: str
    name: str
    about: str
    kinds: tuple[str, ...]
    fields: tuple[SumField, ...]
    work: Callable[[Filled], BenchSum]
    caution: str = ""


IGNITION_CAUTION = tr(
    "Ignition voltage can injure or kill, above all people with a pacemaker: ignition "
    "off and key out before touching. Follow the vehicle maker's procedure and local "
    "rules."
)
ROAD_CAUTION = tr(
    "On the road the driver drives and someone else reads. The law and the vehicle "
    "maker's instructions come first; whether a road test may be made is a licensed "
    "person's decision."
)
BRAKE_CAUTION = tr(
    "Brakes and wheels: lift and support the car as its maker says. The maker's "
    "limits, local rules and licensed practice decide, not this sum."
)
BELT_CAUTION = tr("Engine off and key out before a hand comes near belts, pulleys or the fan.")
HOT_CAUTION = tr(
    "The engine runs for these readings: keep clear of hot and moving parts and of "
    "fuel. Follow the vehicle maker's procedure."
)
