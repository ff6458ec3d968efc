"""The signs of the verdicts: shapes that read in black and white, each beside its words."""

from __future__ import annotations

# One sign for each verdict on a dimension; the words always stand beside it.
DIMENSION_SIGNS = {
    "same": "=",
    "restored": "↥",
    "differs": "≠",
    "not restored": "↧",
    "worse than the old one": "⇓",
    "more than wear explains": "⇈",
    "within limits": "⊢⊣",
    "outside limits": "⊣⊢",
    "count off": "#≠",
    "turned": "↷",
    "too close to tell": "≈",
    "not measured": "◌",
    "explained": "✎",
}

PAIR_SIGNS = {"fits": "▣", "stop and look": "☞", "not enough measured": "◌"}
