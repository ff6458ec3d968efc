"""Chances as they are said at the bench."""

from __future__ import annotations

from desktop_app.language import tr


def of_cases(share: float) -> str:
    """Return a share of cases in words: "61 % of cases", "fewer than 1 of 1,000 cases"."""
    if share < 0.001:
        return tr("fewer than 1 of 1,000 cases")
    return tr("{percent} of cases", percent=percent(share))


def percent(share: float) -> str:
    """Return a share from 0 to 1 in per cent, like "61 %" or "below 0.1 %"."""
    if share < 0.001:
        return tr("below 0.1 %")
    return f"{100 * share:.2g} %" if share < 0.095 else f"{100 * share:.0f} %"
