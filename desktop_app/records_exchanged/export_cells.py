"""Values of the record as cells of a CSV file and back again, without loss.

Nothing is an empty cell. A text that a spreadsheet would take for a formula is guarded by an
apostrophe (`formula_text`). In a column that may hold nothing an empty text is a lone apostrophe,
so that the two stay apart, and a text of apostrophes alone gets one more.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from desktop_app.language import tr
from desktop_app.records_exchanged.formula_text import guarded, unguarded

MOST_WHOLE = 2**63 - 1
_WHOLE = re.compile(r"0|-?[1-9][0-9]{0,18}")
_APOSTROPHES = re.compile(r"'*")
# The texts of a column are looked at together: nearly always none of them needs a guard.
_BETWEEN = "\0"
_NEEDS_GUARD = re.compile(rf"{_BETWEEN}'*[=+\-@\t\r]")
_NEEDS_MARK = re.compile(rf"{_BETWEEN}'*(?:[=+\-@\t\r]|{_BETWEEN}|\Z)")


@dataclass(frozen=True, slots=True)
class CellRule:
    """How the values of one column are written, and whether one may be missing."""

    name: str
    kind: Literal["text", "whole", "number"]
    may_be_nothing: bool = False


def cells_of(rows: Sequence[Sequence[Any]], rules: Sequence[CellRule]) -> Iterable[Sequence[Any]]:
    """Return rows of values as the csv module writes them: None as nothing, floats as repr."""
    columns: list[Sequence[Any]] = list(zip(*rows, strict=True))
    for at, rule in enumerate(rules):
        if columns and rule.kind == "text":
            texts = columns[at]
            columns[at] = _marked_texts(texts) if rule.may_be_nothing else guarded_texts(texts)
    return zip(*columns, strict=True)


def guarded_texts(texts: Sequence[str]) -> Sequence[str]:
    """Return the texts of a column, each guarded where it needs to be."""
    if _NEEDS_GUARD.search(_BETWEEN + _BETWEEN.join(texts)):
        return [guarded(text) for text in texts]
    return texts


def _marked_texts(texts: Sequence[str | None]) -> Sequence[str | None]:
    said = (text for text in texts if text is not None)
    if _NEEDS_MARK.search(_BETWEEN + _BETWEEN.join(said)):
        return [None if text is None else _marked(text) for text in texts]
    return texts


def _marked(text: str) -> str:
    return f"'{text}" if _APOSTROPHES.fullmatch(text) else guarded(text)


def read_cell(cell: str, rule: CellRule) -> str | int | float | None:
    """Return the value that a cell stands for; a ValueError says what is accepted there."""
    if rule.may_be_nothing and not cell:
        return None
    if rule.kind == "text":
        if rule.may_be_nothing and _APOSTROPHES.fullmatch(cell):
            return cell[1:]
        return unguarded(cell)
    if rule.kind == "whole":
        if not _WHOLE.fullmatch(cell) or abs(int(cell)) > MOST_WHOLE:
            raise ValueError(tr("Accepted: a whole number."))
        return int(cell)
    try:
        number = float(cell) if cell.isascii() and "_" not in cell else math.nan
    except ValueError:
        number = math.nan
    if not math.isfinite(number):
        raise ValueError(tr("Accepted: a number such as 1.25."))
    return number
