"""The signs of the verdicts: shapes that read in black and white, each beside its words."""

from __future__ import annotations

from desktop_app.language import marked

# One sign for each verdict on a dimension; the words always stand beside it. They are kept and
# compared as they are here, and shown by tr().
DIMENSION_SIGNS = {
    marked("same"): "=",
    marked("restored"): "↥",
    marked("differs"): "≠",
    marked("not restored"): "↧",
    marked("worse than the old one"): "⇓",
    marked("more than wear explains"): "⇈",
    marked("within limits"): "⊢⊣",
    marked("outside limits"): "⊣⊢",
    marked("count off"): "#≠",
    marked("turned"): "↷",
    marked("too close to tell"): "≈",
    marked("not measured"): "◌",
    marked("explained"): "✎",
}

PAIR_SIGNS = {
    marked("fits"): "▣",
    marked("stop and look"): "☞",
    marked("not enough measured"): "◌",
}
