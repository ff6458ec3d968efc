"""A share in per cent, with one decimal wherever it is said: on a page, in the week's workbook."""

from __future__ import annotations

from desktop_app.figures_shown import figure

SHARE_FORMAT = "0.0%"  # the same, as a workbook's cells are told it


def share_words(share: float) -> str:
    """Return a share from 0 upwards in per cent, like "45.6%"."""
    return figure(share, ".1%")
