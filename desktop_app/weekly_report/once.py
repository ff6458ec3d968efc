"""Work that several sheets of one book ask for is done once."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import TypeVar

Asked = TypeVar("Asked")
Found = TypeVar("Found")


def once(work: Callable[[Asked], Found]) -> Callable[[Asked], Found]:
    """Keep the last result, for as long as the very same figures are asked of.

    By identity: to compare a year of jobs value by value would cost as much as the work.
    """
    kept: list[tuple[Asked, Found]] = []

    @wraps(work)
    def found(asked: Asked) -> Found:
        for last, result in kept[:]:
            if last is asked:
                return result
        result = work(asked)
        kept[:] = [(asked, result)]
        return result

    return found
