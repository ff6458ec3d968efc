"""Chances as they are said at the bench."""

from __future__ import annotations

from desktop_app.figures_shown import figure
from desktop_app.language import tr

#: A smaller share is not told apart from others.
RARE = 0.001


def of_cases(share: float) -> str:
    """Return a share of cases in words: "61 % of cases", "fewer than 1 of 1,000 cases"."""
    if share < RARE:
        return tr("fewer than 1 of {many:,} cases", many=round(1 / RARE))
    return tr("{percent} of cases", percent=percent(share))


def percent(share: float) -> str:
    """Return a share from 0 to 1 in per cent, like "61 %" or "below 0.1 %"."""
    if share < RARE:
        return tr("below {percent:g} %", percent=100 * RARE)
    return f"{figure(100 * share, '.2g')} %" if share < 0.095 else f"{figure(100 * share, '.0f')} %"
