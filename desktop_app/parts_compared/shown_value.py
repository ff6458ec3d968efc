"""Numbers as a person reads them: rounded to their uncertainty, with their unit."""

from __future__ import annotations

import math

from desktop_app.figures_shown import figure, shown
from desktop_app.language import tr

_SIGNS = {"deg": "°", "kohm": "kΩ", "ohm": "Ω", "C": "°C"}


def decimals_for(uncertainty: float) -> int:
    """Return the decimals to show: one significant digit, two where the first is a 1."""
    if uncertainty <= 0 or not math.isfinite(uncertainty):
        return 6
    exponent = math.floor(math.log10(uncertainty))
    leading = uncertainty / 10**exponent
    return min(9, max(0, -exponent + (1 if leading < 1.5 else 0)))


def doubt_decimals(uncertainty: float, beside: int) -> int:
    """Return the decimals of a doubt beside others that are shown with `beside` decimals.

    As many as they have, but never more than two figures (JCGM 100:2008, 7.2.6), nor fewer than
    it has alone: a doubt of 1.8 that comes from two of 1.3 must not be read as 2.
    """
    alone = decimals_for(uncertainty)
    if uncertainty <= 0 or not math.isfinite(uncertainty):
        return alone
    two_figures = 1 - math.floor(math.log10(float(f"{uncertainty:.1e}")))
    return max(alone, min(beside, two_figures))


def number(value: float, uncertainty: float = 0.0, decimals: int | None = None) -> str:
    """Return the value rounded to its uncertainty; exact values lose only trailing zeros.

    `decimals` where it stands in a sum that must come out (shown_sum.py).
    """
    if uncertainty <= 0:
        return figure(value, ".6g")
    text = f"{value:.{decimals_for(uncertainty) if decimals is None else decimals}f}"
    return shown(text.removeprefix("-") if float(text) == 0 else text)


def amount(value: float, unit: str, uncertainty: float = 0.0, decimals: int | None = None) -> str:
    """Return value and unit, like "0.55 mm" or "35°"."""
    return number(value, uncertainty, decimals) + _unit(unit)


def doubt(uncertainty: float, unit: str = "", decimals: int | None = None) -> str:
    """Return the uncertainty in brackets, like " (± 0.04)", or nothing where there is none.

    With its unit where no amount before it says that.
    """
    said = number(uncertainty, uncertainty, decimals) + (_unit(unit) if unit else "")
    return f" (± {said})" if uncertainty > 0 else ""


def span_text(low: float | None, high: float | None, unit: str) -> str:
    """Return the span in words: "from 4 to 6 mm", "at least 4 mm", "at most 6 mm"."""
    if low is None and high is None:
        return tr("any value")
    if low is None:
        return tr("at most {amount}", amount=amount(high or 0.0, unit))
    if high is None:
        return tr("at least {amount}", amount=amount(low, unit))
    return tr("from {low} to {high}", low=number(low), high=amount(high, unit))


def _unit(unit: str) -> str:
    if unit in ("n", "word"):
        return ""
    sign = _SIGNS.get(unit, unit)
    return sign if unit == "deg" else f" {sign}"
