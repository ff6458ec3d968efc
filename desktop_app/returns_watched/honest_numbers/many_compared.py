"""Several groups compared at once: one of them often looks bad by luck."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import accumulate

from desktop_app.language import tr

ALARM = 0.05


def adjusted(p_values: Sequence[float]) -> tuple[float, ...]:
    """Return each p-value adjusted for there being several; at most 0.05 still stands out.

    Of those that stand out so, one in twenty is expected to be luck. Y. Benjamini and
    Y. Hochberg, Journal of the Royal Statistical Society B 57 (1995) 289-300. ValueError for a
    value outside 0 to 1.
    """
    if not all(0 <= p <= 1 for p in p_values):
        raise ValueError("A p-value lies outside 0 to 1")
    n = len(p_values)
    order = sorted(range(n), key=lambda i: p_values[i], reverse=True)
    stepped = (p_values[i] * n / (n - rank) for rank, i in enumerate(order))
    lowest = dict(zip(order, accumulate(stepped, min, initial=None), strict=True))
    return tuple(lowest[i] for i in range(n))


def chance_of_false_alarm(groups: int) -> float:
    """Return how likely luck alone makes one of so many like groups look bad, each at 1 in 20."""
    return 1 - (1 - ALARM) ** groups


def caution(groups: int) -> str | None:
    """Return the sentence that belongs beneath a comparison of several groups; None for one."""
    if groups < 2:
        return None
    return tr(
        "{groups} are compared at once. If all were alike, one of them would still "
        "look out of line by luck with a chance of {chance:.0%}.",
        groups=groups,
        chance=chance_of_false_alarm(groups),
    )
