"""What was read once is not read again: in a column most cells have come before."""

from __future__ import annotations

from collections.abc import Callable, Hashable
from typing import Generic, TypeVar

_MOST = 50_000
_Cell = TypeVar("_Cell", bound=Hashable)
_Value = TypeVar("_Value")


class Remembered(dict[_Cell, _Value], Generic[_Cell, _Value]):
    """A dictionary that reads what it does not hold yet, and never grows beyond a bound."""

    def __init__(self, read: Callable[[_Cell], _Value]) -> None:
        super().__init__()
        self._read = read

    def __missing__(self, cell: _Cell) -> _Value:
        value = self._read(cell)
        if len(self) >= _MOST:
            self.clear()
        self[cell] = value
        return value
