"""The sign beside each verdict on paper: the window's, as far as the printed font has it."""

from __future__ import annotations

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
SIDE_SIGNS = {"removed": "◆", "replacement": "●"}
