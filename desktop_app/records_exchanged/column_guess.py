"""Which column of a file is which of ours, guessed from the headers and from what stands below."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Mapping, Sequence
from types import MappingProxyType

from desktop_app.records_exchanged.everyday_headers import (
    FIELDS,
    HEADERS,
    VEHICLE_PARTS,
    header_words,
)
from desktop_app.repair_jobs.trouble_code import codes_in

Columns = dict[str, tuple[int, ...]]  # a field, and the columns that it is read from

_VIN = re.compile(r"(?=.*[0-9])[A-HJ-NPR-Z0-9]{17}", re.IGNORECASE)
_DISTANCE = re.compile(r"[0-9][0-9., ]* ?(?:km|mi|miles)", re.IGNORECASE)
_ENOUGH = 0.6  # the share of a column's filled cells that must look like it


def guessed_columns(
    headers: Sequence[str],
    rows: Sequence[Sequence[str]],
    laid_down: Mapping[str, tuple[int, ...]] = MappingProxyType({}),
    left_out: Collection[int] = (),
) -> Columns:
    """Return the columns that are understood; `rows` are the first rows below the headers.

    What is laid down stays as it is, and what is left out is none. No other column is taken twice,
    and a name that says it better goes first, wherever it stands.
    """
    names = [header_words(header) for header in headers]
    taken: Columns = dict(laid_down)
    free = set(range(len(names))).difference(left_out, *laid_down.values())

    def take(field: str, *columns: int) -> None:
        taken[field] = columns
        free.difference_update(columns)

    def named(*wanted: str) -> int | None:
        return next((i for name in wanted for i in sorted(free) if names[i] == name), None)

    if "vehicle" not in taken and named("vehicle") is None:
        there = [column for part in VEHICLE_PARTS if (column := named(*part)) is not None]
        if len(there) > 1:
            take("vehicle", *there)
    longest = max(len(known) for known in HEADERS.values())
    for rank in range(longest):
        for field in FIELDS:
            known = HEADERS[field]
            if field not in taken and rank < len(known):
                column = named(known[rank])
                if column is not None:
                    take(field, column)
    for field, looks in (("vin", _is_vin), ("codes", _is_codes), ("odometer", _is_distance)):
        if field not in taken:
            for column in sorted(free):
                if names[column] not in ("", "notes", "why") and _mostly(looks, rows, column):
                    take(field, column)
                    break
    if "codes" not in laid_down:
        _several_code_columns(names, taken, free)
    return {field: taken[field] for field in FIELDS if field in taken}


def _several_code_columns(names: Sequence[str], taken: Columns, free: set[int]) -> None:
    """Add "Code 2", "DTC 3" to the column of the codes."""
    stems = {re.sub(r"s?( 1)?$", "", name) for name in HEADERS["codes"]}
    numbered = [i for i in sorted(free) if re.sub(r"s? [1-9]$", "", names[i]) in stems]
    if numbered:
        taken["codes"] = (*taken.get("codes", ()), *numbered)
        free.difference_update(numbered)


def _is_vin(cell: str) -> bool:
    return _VIN.fullmatch(cell) is not None


def _is_codes(cell: str) -> bool:
    return bool(codes_in(cell)) and len(cell) < 60


def _is_distance(cell: str) -> bool:
    return _DISTANCE.fullmatch(cell) is not None


def _mostly(looks: Callable[[str], bool], rows: Sequence[Sequence[str]], column: int) -> bool:
    """Whether most of a column's filled cells look so, of at least two."""
    cells = [row[column].strip() for row in rows if column < len(row) and row[column].strip()]
    return len(cells) >= 2 and sum(map(looks, cells)) >= _ENOUGH * len(cells)
