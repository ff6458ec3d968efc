"""Which column of a file is which of ours, guessed from the headers and from what stands below."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

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


def guessed_columns(headers: Sequence[str], rows: Sequence[Sequence[str]]) -> Columns:
    """Return the columns that are understood; `rows` are the first rows below the headers.

    No column is taken twice, and a name that says it better goes first, wherever it stands.
    """
    names = [header_words(header) for header in headers]
    taken: Columns = {}
    free = set(range(len(names)))

    def take(field: str, *columns: int) -> None:
        taken[field] = columns
        free.difference_update(columns)

    if "vehicle" not in names:
        parts = [next((names.index(n) for n in part if n in names), None) for part in VEHICLE_PARTS]
        there = [column for column in parts if column is not None]
        if len(there) > 1:
            take("vehicle", *there)
    longest = max(len(known) for known in HEADERS.values())
    for rank in range(longest):
        for field in FIELDS:
            known = HEADERS[field]
            if field not in taken and rank < len(known) and known[rank] in names:
                column = names.index(known[rank])
                if column in free:
                    take(field, column)
    for field, looks in (("vin", _is_vin), ("codes", _is_codes), ("odometer", _is_distance)):
        if field not in taken:
            for column in sorted(free):
                if names[column] not in ("", "notes") and _mostly(looks, rows, column):
                    take(field, column)
                    break
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
