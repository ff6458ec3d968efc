"""A barcode that was read in a photo, and how a list of them goes from one process to another."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass

MOST_CODES = 12
MOST_LETTERS = 400  # no label says more in one code that is a number


@dataclass(frozen=True, slots=True)
class SeenCode:
    """One code: how it is printed ("Code 39", "EAN-13", ...) and the text in it."""

    print_form: str
    text: str


def listed(codes: Sequence[SeenCode]) -> bytes:
    """Return codes as bytes; what is beyond any label is left out."""
    short = [code for code in codes if 0 < len(code.text) <= MOST_LETTERS]
    return json.dumps([[code.print_form, code.text] for code in short[:MOST_CODES]]).encode()


def read_back(content: bytes) -> tuple[SeenCode, ...] | None:
    """Return what `listed` made, None for anything else: a picture may have turned who says it."""
    try:
        rows = json.loads(content)
    except (ValueError, RecursionError):
        return None
    if not isinstance(rows, list) or len(rows) > MOST_CODES:
        return None
    codes = []
    for row in rows:
        if not (isinstance(row, list) and len(row) == 2):
            return None
        print_form, text = row
        if not (isinstance(print_form, str) and isinstance(text, str)):
            return None
        if len(print_form) > MOST_LETTERS or len(text) > MOST_LETTERS:
            return None
        codes.append(SeenCode(print_form, text))
    return tuple(codes)
