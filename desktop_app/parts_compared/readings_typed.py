"""The readings of one side of one dimension, as they are typed into one field."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import TypeAlias

from desktop_app.figures_shown import without_groups
from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.typed_value import typed_value
from desktop_app.shop_record.trouble import ShopTrouble

_DECIMAL = re.compile(r"[-+−]?[0-9]+(?:[.,][0-9]+)?")
MOST_READINGS = 60
#: (value in the dimension's unit, or None; word, or None; as typed)
Typed: TypeAlias = tuple[float | None, str | None, str]


def split_readings(text: str) -> tuple[str, ...]:
    """Split a field into readings: by semicolons or new lines, and by spaces between numbers."""
    pieces: list[str] = []
    for piece in re.split(r"[;\n]", without_groups(text, spaced=False)):
        words = piece.split()
        numbers = len(words) > 1 and all(_DECIMAL.fullmatch(word) for word in words)
        pieces += words if numbers else [" ".join(words)] if words else []
    return tuple(pieces)


def read_readings(text: str, dimension: Dimension, length_unit: str) -> tuple[Typed, ...]:
    """Return (value in the dimension's unit, or None; word, or None; as typed) of each reading.

    A bare length is taken in the shop's `length_unit` (mm or inch). Raises a ShopTrouble that
    says what is accepted.
    """
    pieces = split_readings(text)
    if len(pieces) > MOST_READINGS:
        raise ShopTrouble(
            tr(
                "Those are {pieces} readings; {most_readings} at most are kept.",
                pieces=len(pieces),
                most_readings=MOST_READINGS,
            )
        )
    if dimension.role == "word":
        return tuple((None, word, word) for word in pieces)
    in_inches = length_unit == "inch" and dimension.unit == "mm"
    read = []
    for piece in pieces:
        bare = in_inches and re.fullmatch(r"[0-9.,/+ \-]+", piece)
        value = typed_value(f"{piece} in" if bare else piece, dimension.unit, spaced=False)
        read.append((value, None, f"{piece} in" if bare else piece))
    return tuple(read)


def split_from_marks(
    wanted: Sequence[Typed], marked: Sequence[str]
) -> tuple[list[bool], list[Typed]]:
    """Return which readings from marks still stand in the field, and what is typed beside them.

    `marked` are the readings from marks as they are kept. Each of them stands for one piece.
    """
    beside, stays = list(wanted), []
    for text in marked:
        # A shop that reads inches sees the millimetres of a mark with their unit.
        here = next((one for one in beside if one[2].removesuffix(" mm") == text), None)
        stays.append(here is not None)
        if here is not None:
            beside.remove(here)
    return stays, beside


def as_field(typed: Sequence[str]) -> str:
    """Return kept readings as the field shows them."""
    return "; ".join(typed)
