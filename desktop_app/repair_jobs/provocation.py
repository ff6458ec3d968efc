"""A fault that was made to happen on purpose: counted before the repair and again after it."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from desktop_app.figures_shown import figure
from desktop_app.language import marked, tr
from desktop_app.repair_jobs.chance_words import of_cases
from desktop_app.shop_record.trouble import ShopTrouble

#: Below this a count is decisive, below `FAIR` it is fair; common practice, no source.
DECISIVE, FAIR = 0.001, 0.05
#: Under these words the count is kept among a job's proof checks; shown by tr().
PROVOKED = marked("made to happen on purpose")
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
        return self._with(f"{self.before_min:g}", f"{self.after_min:g}")

    def shown(self) -> str:
        """Return it as its field shows it."""
        return self._with(figure(self.before_min, "g"), figure(self.after_min, "g"))

    def _with(self, before_min: str, after_min: str) -> str:
        return f"{self.before} in {before_min} min, then {self.after} in {after_min} min"


def read_provoked(text: str) -> Provoked:
    """Return what was counted from "37 in 10 min, then 0 in 10 min"; raises ShopTrouble."""
    found = _COUNTED.fullmatch(" ".join(text.split()))
    if found is None:
        raise ShopTrouble(
            tr("“{text}” is no count before and after.", text=text.strip()),
            do=tr("Type it like 37 in 10 min, then 0 in 10 min."),
        )
    counts = int(found[1]), int(found[3])
    minutes = float(found[2].replace(",", ".")), float(found[4].replace(",", "."))
    if not min(minutes) > 0:
        raise ShopTrouble(
            tr("In 0 minutes nothing can be counted."),
            do=tr("Type for how many minutes it was tried."),
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
    counted = tr(
        "Made to happen on purpose, it came {times_before} in {before_min:g} min before and "
        "{times_after} in {after_min:g} min after.",
        times_before=_times(provoked.before),
        before_min=provoked.before_min,
        times_after=_times(provoked.after),
        after_min=provoked.after_min,
    )
    if provoked.before == 0:
        nothing = tr("What did not come before proves nothing by staying away.")
        return f"{counted} {nothing}"
    if provoked.after:
        still = (
            tr("It still comes, less often: it is not cured.")
            if p < FAIR
            else tr("It still comes, no less often than luck allows: it is not cured.")
        )
        return f"{counted} {still}"
    if p < DECISIVE:
        worth = tr("By luck alone that happens in {of_cases}; this is decisive.")
    elif p < FAIR:
        worth = tr("By luck alone that happens in {of_cases}; this is fair.")
    else:
        worth = tr("By luck alone that happens in {of_cases}; this is weak: count for longer.")
    return f"{counted} {worth.format(of_cases=of_cases(p))}"


def _log_chance(count: int, every: int, share: float) -> float:
    ways = math.lgamma(every + 1) - math.lgamma(count + 1) - math.lgamma(every - count + 1)
    return ways + count * math.log(share) + (every - count) * math.log1p(-share)


def _times(count: int) -> str:
    if count == 0:
        return tr("not once")
    return tr("once") if count == 1 else tr("{count} times", count=count)
