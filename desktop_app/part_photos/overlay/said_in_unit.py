"""A sentence with lengths in millimetres, as a shop reads it that works in inches."""

from __future__ import annotations

import re

from desktop_app.language import tr
from desktop_app.part_photos.overlay.difference import said_length

_IN_MM = tr(", in mm,")
_LENGTH = re.compile(r"(\d+)(?:\.(\d+))? mm\b")


def said_in_unit(words: str, length_unit: str) -> str:
    """Return the sentence with each "0.06 mm" in "mm" or "inch"; an inch shows two digits more.

    "in mm" without a figure becomes "in inches".
    """
    if length_unit != "inch":
        return words

    def in_inches(found: re.Match[str]) -> str:
        figure = float(f"{found[1]}.{found[2] or 0}")
        return " ".join(said_length(figure, length_unit, len(found[2] or "") + 1))

    return _LENGTH.sub(in_inches, words).replace(_IN_MM, tr(", in inches,"))
