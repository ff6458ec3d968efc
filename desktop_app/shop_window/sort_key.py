"""How the cells of a table are put in order: amounts by their size, everything else as words."""

from __future__ import annotations

import re
from datetime import date

from desktop_app.figures_shown import GROUP, decimal_sign, with_point

# An amount, with what may stand before and behind it: $1,250.00, 37 %, 12,400 miles, -3; by the
# decimal sign of what is shown.
_AMOUNT = {
    ".": re.compile(r"[^\w-]{0,3}(-?\d[\d,]*(?:\.\d+)?)\D{0,20}"),
    ",": re.compile(rf"[^\w-]{{0,3}}(-?\d(?:{GROUP}?\d)*(?:,\d+)?)\D{{0,20}}"),
}
_BY_DAY = re.compile(r"\d{4}-\d\d-\d\d.*")


def sort_key(cell: object) -> tuple[int, float, str]:
    """Return what a cell is sorted by: nothing first, then amounts by size, then words."""
    if cell is None or cell == "":
        return (0, 0.0, "")
    if isinstance(cell, int | float):
        return (1, float(cell), "")
    if isinstance(cell, date):
        return (2, 0.0, cell.isoformat())
    words = str(cell).strip()
    amount = None if _BY_DAY.fullmatch(words) else _AMOUNT[decimal_sign()].fullmatch(words)
    if amount is not None:
        return (1, float(with_point(amount[1])), words)
    return (2, 0.0, _natural(words))


def _natural(words: str) -> str:
    """Let J-9 come before J-101: figures inside of words count by their size."""
    return re.sub(r"\d+", lambda found: found[0].zfill(12), words.casefold())
