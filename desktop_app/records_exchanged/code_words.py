"""Several trouble codes in one cell."""

from __future__ import annotations

import re

from desktop_app.language import tr
from desktop_app.records_exchanged.blank_words import says_nothing
from desktop_app.repair_jobs.trouble_code import codes_in

_PARTED = re.compile(r"[\s,;/|+&()]+")
# A code may carry the two figures of its failure type behind it (SAE J2012-DA; from memory).
_FAILURE_TYPE = re.compile(r"(?<=[0-9A-FO])[-:][0-9A-F]{2}(?![0-9A-Z])", re.IGNORECASE)
_NO_CODES = frozenset({"no codes", "no code", "no dtc", "no dtcs", "no faults", "none stored"})


def read_codes(text: str, words_kept: bool = False) -> tuple[str, ...]:
    """Return the codes of a cell, each once; a ValueError where something else stands there.

    With `words_kept` words beside the codes are passed over: the cell is kept elsewhere as well.
    """
    bare = text.strip()
    if says_nothing(bare) or bare.casefold() in _NO_CODES:
        return ()
    without = _FAILURE_TYPE.sub("", bare)
    codes = codes_in(without)
    if words_kept:
        return codes
    for word in _PARTED.split(without):
        if word and not codes_in(word):
            raise ValueError(
                tr(
                    "“{word}” is not a trouble code. One is P, C, B or U and four figures, "
                    "such as P0300; part several by spaces, commas or semicolons.",
                    word=word[:40],
                )
            )
    return codes
