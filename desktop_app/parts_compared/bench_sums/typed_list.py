"""Several numbers typed in one field: "14/11/9/16", "1-3-4-2", "4,1 4,2", "7.5 mm; 7.2 mm"."""

from __future__ import annotations

import re

from desktop_app.figures_shown import without_groups

_WHOLE = re.compile(r"\d{1,7}")
_WHOLES_PARTED = re.compile(r"[\s,;/+\-–]+")
_GROUPS_PARTED = re.compile(r"[/;|]")
MOST_PARTS = 64


def typed_wholes(text: str) -> tuple[int, ...] | None:
    """Return the whole numbers, parted by space, comma, slash or dash; None if not such a list."""
    bare = without_groups(text.strip(), spaced=False)
    parts = [part for part in _WHOLES_PARTED.split(bare) if part]
    if not 0 < len(parts) <= MOST_PARTS or not all(_WHOLE.fullmatch(part) for part in parts):
        return None
    return tuple(int(part) for part in parts)


def typed_groups(text: str) -> tuple[tuple[int, ...], ...] | None:
    """Return lists of whole numbers parted by a slash: "1 4 / 2 3"; None if it isn't that."""
    groups = [typed_wholes(part) for part in _GROUPS_PARTED.split(text)]
    whole = [group for group in groups if group is not None]
    return tuple(whole) if len(whole) == len(groups) else None


def list_parts(text: str) -> list[str]:
    """Return the single typed values of a list of measured values.

    A comma between two digits is a decimal comma, unless the list has decimal points as well.
    """
    bare = without_groups(text.strip(), spaced=False)
    if ";" in bare:
        parts = bare.split(";")
    elif re.search(r",\s", bare) or ("," in bare and "." in bare):
        parts = bare.split(",") if "." in bare else re.split(r",\s+", bare)
    elif re.search(r"[^\d\s.,+\-−]", bare):
        # A unit stands behind each number: part where a unit is followed by the next number.
        parts = re.split(r"(?<=[^\d\s.,+\-−/])\s+(?=[\d+\-−.,])", bare)
    else:
        parts = bare.split()
    return [part.strip() for part in parts if part.strip()]
