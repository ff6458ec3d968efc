"""What a set says about each of its pairs: parts that may touch stop both."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.part_sets.set_sentence import main_sentence
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison


def with_set_reasons(
    compared: PairComparison, sets: Iterable[SetComparison], length_unit: str = "mm"
) -> PairComparison:
    """Return the comparison of a pair, turned to "stop and look" by sets that speak against it.

    `sets` are those that the pair belongs to. A set that leaves room enough, or can't tell,
    changes nothing: it says so on its own.
    """
    against = tuple(main_sentence(one, length_unit) for one in sets if one.settled_against)
    if not against:
        return compared
    return replace(compared, verdict="stop and look", reasons=(*against, *compared.reasons))
