"""Columns that grow row block by row block, without being copied in the end."""

from __future__ import annotations

from array import array
from collections.abc import Sequence
from typing import Any


class GrowingColumns:
    """Columns of whole numbers; `kinds` has a type code of `array` for each."""

    def __init__(self, kinds: str) -> None:
        self._columns: list[array[int]] = [array(kind) for kind in kinds]

    def add(self, *block: Sequence[int]) -> None:
        """Add a block of rows, one sequence of whole numbers a column."""
        for column, values in zip(self._columns, block, strict=True):
            column.extend(array(column.typecode, values))

    def add_arrays(self, *block: Any) -> None:
        """Add a block of rows, one numpy array of the column's own type a column."""
        for column, values in zip(self._columns, block, strict=True):
            column.frombytes(values.tobytes())

    def joined(self) -> list[Any]:
        """Return the columns as numpy arrays, which take over the memory."""
        import numpy as np

        return [np.frombuffer(column, dtype=np.dtype(column.typecode)) for column in self._columns]

    def joined_by_first(self) -> list[Any]:
        """Return the columns in the rising order of the first one."""
        import numpy as np

        found = self.joined()
        if (found[0][1:] < found[0][:-1]).any():
            order = np.argsort(found[0])
            found = [column[order] for column in found]
        return found
