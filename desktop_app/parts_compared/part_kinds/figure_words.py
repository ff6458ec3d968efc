"""The words between figures in a field: as the language spoken has them, and in English as well.

What a field shows must mean the same when it is read again.
"""

from __future__ import annotations

import re

from desktop_app.language import tr


def two_figures(smallest: str, largest: str) -> str:
    """Return two figures as a field shows them, like "0.1 to 1.5"."""
    return tr("{smallest} to {largest}", smallest=smallest, largest=largest)


def lowest_figure(figure: str) -> str:
    """Return an open span from a figure upwards, like "at least 10"."""
    return tr("at least {figure}", figure=figure)


def highest_figure(figure: str) -> str:
    """Return an open span up to a figure, like "at most 20"."""
    return tr("at most {figure}", figure=figure)


#: (words before a figure in small letters, whether it is the lowest one)
ONE_END: tuple[tuple[str, bool], ...] = tuple(
    dict.fromkeys(
        (
            ("at least", True),
            ("at most", False),
            (lowest_figure("").strip().casefold(), True),
            (highest_figure("").strip().casefold(), False),
        )
    )
)
_TO = "|".join(map(re.escape, dict.fromkeys(("to", two_figures("", "").strip().casefold()))))
BETWEEN = re.compile(rf"\s+(?:{_TO})\s+|\.\.|\s+-\s+|;")
