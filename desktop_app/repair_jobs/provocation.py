"""A fault that was made to happen on purpose: counted before the repair and again after it."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from desktop_app.repair_jobs.chance_words import of_cases
from desktop_app.shop_record.trouble import ShopTrouble

#: Below this a count is decisive, below `FAIR` it is fair; common practice, no source.
DECISIVE, FAIR = 0.001, 0.05
#: Under these words the count is kept among a job's proof checks.
PROVOKED = "made to happen on purpose"
_COUNTED = re.compile(
    r"([0-9]{1,4}) (?:times )?in ([0-9]{1,4}(?:[.,][0-9]{1,2})?) ?min(?:utes?)?"
    r"[ ,;]*(?:then|and|after:?)? *([0-9]{1,4}) (?:times )?in "
    r"([0-9]{1,4}(?:[.,][0-9]{1,2})?) ?min(?:utes?)?\.?",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Provoked:
    """So many times in so many minutes before the repair, and after it, provoked the same way."""

    before: int
    before_min: float
    after: int
    after_min: float

    def typed(self) -> str:
        """Return it as it is typed and kept."""
        return (
            f"{self.before} in {self.before_min:g} min, then {self.after} in {self.after_min:g} min"
        )


def read_provoked(text: str) -> Provoked:
    """Return what was counted from "37 in 10 min, then 0 in 10 min"; raises ShopTrouble."""
    found = _COUNTED.fullmatch(" ".join(text.split()))
    if found is None:
        raise ShopTrouble(
            f"“{text.strip()}” is no count before and after.",
            do="Type it like 37 in 10 min, then 0 in 10 min.",
        )
    counts = int(found[1]), int(found[3])
    minutes = float(found[2].replace(",", ".")), float(found[4].replace(",", "."))
    if not min(minutes) > 0:
        raise ShopTrouble(
            "In 0 minutes nothing can be counted.", do="Type for how many minutes it was tried."
        )
    return Provoked(counts[0], minutes[0], counts[1], minutes[1])


def luck_of(provoked: Provoked) -> float:
    """Return the chance of so few times after, had nothing changed.

    Conditional test of two Poisson counts (Przyborowski and Wilenski 1940, from memory): of all
    that came, the number after is binomial with the share of the minutes after.
    """
    every = provoked.before + provoked.after
    share = provoked.after_min / (provoked.before_min + provoked.after_min)
    logs = [_log_chance(count, every, share) for count in range(provoked.after + 1)]
    most = max(logs)
    return min(1.0, math.exp(most) * math.fsum(math.exp(one - most) for one in logs))


def provoked_sentence(provoked: Provoked) -> str:
    """Say what the two counts are worth, in words."""
    p = luck_of(provoked)
    counted = (
        f"Made to happen on purpose, it came {_times(provoked.before)} in "
        f"{provoked.before_min:g} min before and {_times(provoked.after)} in "
        f"{provoked.after_min:g} min after."
    )
    if provoked.before == 0:
        return f"{counted} What did not come before proves nothing by staying away."
    if provoked.after:
        change = "less often" if p < FAIR else "no less often than luck allows"
        return f"{counted} It still comes, {change}: it is not cured."
    worth = "decisive" if p < DECISIVE else "fair" if p < FAIR else "weak: count for longer"
    return f"{counted} By luck alone that happens in {of_cases(p)}; this is {worth}."


def _log_chance(count: int, every: int, share: float) -> float:
    ways = math.lgamma(every + 1) - math.lgamma(count + 1) - math.lgamma(every - count + 1)
    return ways + count * math.log(share) + (every - count) * math.log1p(-share)


def _times(count: int) -> str:
    return {0: "not once", 1: "once"}.get(count, f"{count} times")
